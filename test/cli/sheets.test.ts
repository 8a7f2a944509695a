// The command `sheets`: which files it writes, in which format, and that it writes all of them or none.

import { describe, expect, it, vi } from "vitest";
import { coreTools } from "../../src/cli/coreTools.ts";
import type { FillTools } from "../../src/cli/fillTools.ts";
import { main } from "../../src/cli/main.ts";
import { memoryIo } from "../support/memoryIo.ts";
import { oneRoom } from "../support/oneRoom.ts";

// A busy machine takes its time over many sheets, and that is no fault of theirs.
vi.setConfig({ testTimeout: 60_000 });

const pours = [
  { id: "p1", name: "West", unit: "A" },
  { id: "p2", name: "East", unit: "A", mirror: true },
  { id: "p3", name: "Roof", unit: "A", storey: { clearHeight: 2700, slab: 100 } },
];

/** Beside the sheets, for a spreadsheet. */
const TABLES = ["o/bill.csv", "o/packing.csv", "o/accessories.csv", "o/shortage.csv"];
/** Where pours follow one another. */
const DELTAS = "o/deltas.csv";
const POINTS = ["a", "a-mirrored", "a-storey-2"].map((name) => `o/${name}-stake-out.csv`);

async function run(
  line: string,
  { project = { ...oneRoom, pours } as object, tools = {} as Partial<FillTools> } = {},
) {
  const io = memoryIo({ "a.json": JSON.stringify(project), "-": JSON.stringify(project) });
  const code = await main(line.split(" "), io, { ...coreTools, ...tools });
  return { code, ...io.screen, files: io.files, names: [...io.files.keys()] };
}

describe("sheets", () => {
  it("writes one PDF for each unit, storey and hand, and the list of codes", async () => {
    const { code, names, files, out, err, folder } = await run("sheets a.json --out o --date 2026-02-17");
    expect({ code, out, folder }).toEqual({ code: 0, out: "", folder: "o" });
    expect(names).toEqual([
      "o/sheets.csv",
      "o/a.pdf",
      "o/a-mirrored.pdf",
      "o/a-storey-2.pdf",
      ...TABLES,
      DELTAS,
      ...POINTS,
    ]);
    for (const name of names.filter((some) => some.endsWith(".pdf"))) {
      expect(files.get(name)).toMatch(/^%PDF-1\.7\n[\s\S]*%%EOF\n$/);
      expect(files.get(name)).toContain("(D:20260217)");
    }
    expect(err).toMatch(/\n\d+ sheets in 3 files, their codes in sheets\.csv\.\n$/);
  });

  it("lists every page of every file with a code of its own", async () => {
    const { files } = await run("sheets - --out o");
    const rows = files.get("o/sheets.csv")!.trimEnd().split("\r\n").slice(1);
    const pages = (name: string) => rows.filter((row) => row.startsWith(`${name},`)).length;
    for (const name of ["a.pdf", "a-mirrored.pdf", "a-storey-2.pdf"]) {
      expect([...files.get(`o/${name}`)!.matchAll(/\/Type \/Page /g)]).toHaveLength(pages(name));
    }
    const codes = rows.map((row) => row.split(",").at(-1));
    expect(new Set(codes).size).toBe(codes.length);
  });

  it("writes HTML that needs nothing beside it", async () => {
    const { names, files } = await run("sheets a.json --out o --format html");
    expect(names).toEqual([
      "o/sheets.csv",
      "o/a.html",
      "o/a-mirrored.html",
      "o/a-storey-2.html",
      ...TABLES,
      DELTAS,
      ...POINTS,
    ]);
    const addresses = [...files.get("o/a.html")!.matchAll(/(?:src|href|url\()\s*[=]?"?([a-z]+):/g)].map(
      ([, scheme]) => scheme,
    );
    expect(new Set(addresses)).toEqual(new Set(["data"]));
  });

  it("writes one SVG a sheet, the same as `fill --out` does", async () => {
    const [sheets, fill] = await Promise.all([
      run("sheets a.json --out o --format=svg"),
      run("fill a.json --out o"),
    ]);
    const drawings = sheets.names.filter((name) => name.endsWith(".svg"));
    expect(drawings.length).toBeGreaterThan(6);
    expect(drawings).toEqual(fill.names.filter((name) => name.endsWith(".svg")));
    for (const name of drawings) expect(sheets.files.get(name)).toBe(fill.files.get(name));
  });

  it.each([
    { paper: "", width: 'width="297mm" height="210mm"' },
    { paper: " --paper A4", width: 'width="297mm" height="210mm"' },
    { paper: " --paper Letter", width: 'width="279.4mm" height="215.9mm"' },
  ])("draws on the paper asked for:$paper", async ({ paper, width }) => {
    const { files, names } = await run(`sheets a.json --out o --format svg${paper}`);
    const rooms = names.filter((name) => name.startsWith("o/a-01-"));
    expect(rooms.length).toBeGreaterThan(0);
    for (const name of rooms) expect(files.get(name)).toContain(width);
  });

  it("puts the date into the title block, and leaves it open without one", async () => {
    const first = async (line: string) => {
      const { files } = await run(line);
      return [...files].find(([name]) => name.endsWith(".svg"))![1];
    };
    expect(await first("sheets a.json --out o --format svg --date 2026-02-17")).toContain(">2026-02-17<");
    expect(await first("sheets a.json --out o --format svg")).not.toMatch(/>\d{4}-\d{2}-\d{2}</);
  });

  it("ends with 1 where the result holds an error, and writes the sheets all the same", async () => {
    const bare = {
      name: "K",
      pieces: [{ family: "wall-panel", mass: 10, code: "P", standard: true, width: 500, height: 2250 }],
      rules: {},
    };
    const { code, names } = await run("sheets a.json --out o", { project: { ...oneRoom, kit: bare } });
    expect({ code, names }).toEqual({
      code: 1,
      names: ["o/sheets.csv", "o/a.pdf", ...TABLES, "o/stake-out.csv"],
    });
  });

  it.each([
    { why: "a project that is none", project: { format: "x" }, err: /is not a project that can be filled/ },
  ])("writes nothing for $why", async ({ project, err }) => {
    const ran = await run("sheets a.json --out o", { project });
    expect(ran).toMatchObject({ code: 2, names: [], err: expect.stringMatching(err) });
  });

  it("writes nothing where the typeface is missing", async () => {
    const tools = { fonts: () => Promise.reject(new Error("no typeface")) };
    expect(await run("sheets a.json --out o", { tools })).toMatchObject({ code: 2, names: [] });
  });
});
