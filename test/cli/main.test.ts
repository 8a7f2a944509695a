import { describe, expect, it } from "vitest";
import packageFile from "../../package.json" with { type: "json" };
import type { FillTools } from "../../src/cli/fillTools.ts";
import { main } from "../../src/cli/main.ts";
import type { FillDocument } from "../../src/fill/result.ts";
import { writeFillDocument } from "../../src/fill/writeFill.ts";
import type { Kit } from "../../src/kit/kit.ts";
import type { Project } from "../../src/plan/project.ts";
import type { Sheet } from "../../src/sheet/mark.ts";
import { paperMm } from "../../src/units.ts";
import { everything, fillDocument, unitEntry } from "../support/fillDocument.ts";
import { memoryIo } from "../support/memoryIo.ts";

const clean = fillDocument(
  unitEntry({ bill: [{ code: "P", family: "wall-panel", quantity: 2, mass: 59.4, area: 2.7 }] }),
);

/** A core that gives `fill` for every project but the text "bad". */
function core(fill: FillDocument, members: Partial<FillTools> = {}): FillTools {
  const kit: Kit = { name: "K", currency: null, pieces: [], rules: {} };
  return {
    readProject: (text) =>
      text === "bad"
        ? { status: "invalid", faults: ["units[0].walls[3].thickness: expected a number, found text."] }
        : {
            status: "ok",
            value: { kit: "demo", loads: {}, concrete: {} } as unknown as Project,
            warnings: [],
          },
    readKit: () => ({ status: "ok", value: kit, warnings: [] }),
    fill: () => Promise.resolve(fill),
    optimise: () => Promise.resolve(fill),
    tradeOff: () => Promise.reject(new Error("not asked for")),
    keep: () => Promise.reject(new Error("not asked for")),
    optimiseWithNudges: () => Promise.reject(new Error("not asked for")),
    stock: () => Promise.reject(new Error("no list is read")),
    fonts: () => Promise.reject(new Error("no font is asked for")),
    tables: () => [{ name: "bill.csv", text: "" }],
    sheets: () => Promise.resolve([{ name: "a", sheets: ["A Kitchen", "A kitchen", "../../A"].map(sheet) }]),
    ...members,
  };
}

function sheet(name: string): Sheet {
  return { name, width: paperMm(297), height: paperMm(210), title: name, description: "", marks: [] };
}

async function run(line: string, tools = core(clean), members: Parameters<typeof memoryIo>[1] = {}) {
  const io = memoryIo({ "a.json": "{}", "bad.json": "bad", "-": "{}" }, members);
  const code = await main(line === "" ? [] : line.split(" "), io, tools);
  return { code, ...io.screen, files: io.files };
}

const json = writeFillDocument(clean);

describe("where things go", () => {
  it.each([
    { why: "the result to standard output", line: "fill a.json", out: json, files: [] },
    { why: "from standard input", line: "fill -", out: json, files: [] },
    { why: "a dash is standard output", line: "fill a.json --json -", out: json, files: [] },
    { why: "to a file and nowhere else", line: "fill a.json --json r.json", out: "", files: ["r.json"] },
    {
      why: "bill and sheets, the result still to standard output",
      line: "fill a.json --out o",
      out: json,
      files: ["o/bill.csv", "o/A-Kitchen.svg", "o/A-kitchen-2.svg", "o/A.svg"],
    },
    {
      why: "all of it to files",
      line: "fill - --out=o --json o/fill.json",
      out: "",
      files: ["o/bill.csv", "o/A-Kitchen.svg", "o/A-kitchen-2.svg", "o/A.svg", "o/fill.json"],
    },
  ])("$why", async ({ line, out, files }) => {
    const ran = await run(line);
    expect(ran.code).toBe(0);
    expect(ran.out).toBe(out);
    expect([...ran.files.keys()]).toEqual(files);
    expect(ran.folder).toBe(line.includes("--out") ? "o" : null);
    if (ran.files.has("r.json")) expect(ran.files.get("r.json")).toBe(json);
    expect(ran.err).toBe("Sample: closures 1, fillers 3, zones 4, panels 5, mass of all pieces 59.4 kg.\n");
  });

  it("gives every sheet its own text", async () => {
    const { files } = await run("fill a.json --out o");
    expect(files.get("o/A-kitchen-2.svg")).toContain('<title id="a-kitchen-title">A kitchen</title>');
  });
});

describe("help and version go to standard output", () => {
  it.each([
    { line: "--help", out: /^Usage: panelwright COMMAND/ },
    { line: "fill --help", out: /^Usage: panelwright fill PROJECT \[--out DIR\] \[--json FILE\]\n/ },
    { line: "--version", out: new RegExp(`^${packageFile.version.replaceAll(".", "\\.")}\n$`) },
  ])("$line", async ({ line, out }) => {
    expect(await run(line)).toMatchObject({ code: 0, out: expect.stringMatching(out), err: "" });
  });
});

describe("what cannot be done says so on standard error, writes nothing and ends with 2", () => {
  it.each([
    { line: "", err: /^No command given\.\nUsage: panelwright COMMAND …\n$/ },
    { line: "fill", err: /^fill needs a PROJECT\.\nUsage: / },
    { line: "fill a.json --ouy o", err: /^Unknown option --ouy; did you mean --out\?\nUsage: / },
    { line: "optimise", err: /^optimise needs a PROJECT\.\nUsage: / },
    { line: "check", err: /^check needs a PROJECT\.\nUsage: / },
    { line: "check no.json", err: /^Cannot read no\.json: there is no such file\.\n$/ },
    { line: "check bad.json", err: /^bad\.json is not a project that can be checked:\n {2}units/ },
    { line: "check a.json --json a.json", err: /^Cannot write a\.json: it is the project being read\.\n$/ },
    { line: "import a.dxf --out a.json", err: /^"import" is not built yet/ },
    { line: "export a.json --format csv --out o", err: /^"export" is not built yet/ },
    { line: "fill no.json", err: /^Cannot read no\.json: there is no such file\.\n$/ },
    {
      line: "fill bad.json --out o",
      err: /^bad\.json is not a project that can be filled:\n {2}units\[0\]\.walls\[3\]\.thickness: .*\n$/,
    },
    { line: "fill a.json --json a.json", err: /^Cannot write a\.json: it is the project being read\.\n$/ },
    {
      line: "fill a.json --out -",
      err: /^--out needs a DIR; it writes several files, and "-" is none\.\nUsage: /,
    },
    { line: "fill a.json --json ./a.json", err: /it is the project being read/ },
    { line: "fill a.json --out o --json o/bill.csv", err: /--out and --json would both write it\.\n$/ },
  ])("$line", async ({ line, err }) => {
    const ran = await run(line);
    expect(ran).toMatchObject({ code: 2, out: "", err: expect.stringMatching(err) });
    expect(ran.files.size).toBe(0);
  });

  it("names a fault of the kit by its path in the project", async () => {
    const faults = ["kit.pieces[3].width: expected a number above 0, found −5."];
    const ran = await run("fill a.json", core(clean, { readKit: () => ({ status: "invalid", faults }) }));
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(`\n  ${faults[0]}\n`);
  });

  it.each([
    { count: 49, lines: 1 + 49 },
    { count: 50, lines: 1 + 50 + 1 },
  ])("says that there may be more than $count faults where reading stops", async ({ count, lines }) => {
    const faults = Array.from({ length: count }, (_, index) => `fault ${index}.`);
    const ran = await run("fill a.json", core(clean, { readProject: () => ({ status: "invalid", faults }) }));
    expect(ran.err.trimEnd().split("\n")).toHaveLength(lines);
  });

  it("asks for UTF-8 where the bytes are not", async () => {
    const read = () =>
      Promise.resolve({ status: "read", bytes: Uint8Array.of(0xff, 0xfe, 0x7b, 0) } as const);
    expect((await run("fill a.json", core(clean), { read })).err).toContain("it is not UTF-8 text");
  });

  it.each(["fill a.json --out o", "fill a.json --json r.json"])("a disk that is full: %s", async (line) => {
    const write = () =>
      Promise.resolve({ status: "failed", path: "o/x", reason: "the disk is full" } as const);
    expect(await run(line, core(clean), { write })).toMatchObject({
      code: 2,
      out: "",
      err: "Cannot write o/x: the disk is full.\n",
    });
  });

  it("standard output that cannot take it", async () => {
    const out = () =>
      Promise.resolve({ status: "failed", path: "standard output", reason: "the disk is full" } as const);
    for (const line of ["fill a.json", "--version"]) {
      const ran = await run(line, core(clean), { out });
      expect(ran).toMatchObject({ code: 2, err: "Cannot write standard output: the disk is full.\n" });
    }
  });

  it.each([
    {
      isDebug: false,
      err: /^.*fault of the program itself: two lines \(PANELWRIGHT_DEBUG=1 shows where\)\.\n$/,
    },
    { isDebug: true, err: /fault of the program itself: two lines\.\nError: two\nlines\n +at / },
  ])("a fault of the program itself, shown in full: $isDebug", async ({ isDebug, err }) => {
    const broken = () => Promise.reject(new Error("two\nlines"));
    const ran = await run("fill a.json --out o", core(clean, { fill: broken }), { isDebug });
    expect(ran).toMatchObject({ code: 2, out: "", err: expect.stringMatching(err) });
    expect(ran.files.size).toBe(0);
  });

  it("a fault in the last sheet leaves no file", async () => {
    const sheets = () => {
      throw new Error("no room for the title");
    };
    const ran = await run("fill a.json --out o --json r.json", core(clean, { sheets }));
    expect(ran.code).toBe(2);
    expect(ran.files.size).toBe(0);
  });
});

describe("findings", () => {
  const warned = fillDocument(
    unitEntry({ problems: [{ severity: "warning", kind: "settled", message: "Moved.", where: {} }] }),
  );

  it("an error in the result ends with 1, and the result is written all the same", async () => {
    const ran = await run("fill a.json", core(everything));
    expect(ran.code).toBe(1);
    expect(ran.out).toBe(writeFillDocument(everything));
  });

  it("a warning ends with 0", async () => {
    expect((await run("fill a.json", core(warned))).code).toBe(0);
  });

  it("warnings of the reader stand before the counts", async () => {
    const readProject = () =>
      ({
        status: "ok",
        value: { kit: "demo", loads: {}, concrete: {} } as unknown as Project,
        warnings: ["colour: not known."],
      }) as const;
    const ran = await run("fill a.json", core(clean, { readProject }));
    expect(ran.code).toBe(0);
    expect(ran.err).toMatch(/^Warning: colour: not known\.\nSample: closures 1/);
  });

  it("control characters of a name do not reach the terminal", async () => {
    const fill = { ...clean, project: "a\u001b[2Jb\u202ec" };
    const ran = await run("fill a.json", core(fill));
    expect(ran.err).toMatch(/^a\\u001b\[2Jb\\u202ec: closures/);
    expect(JSON.parse(ran.out).project).toBe(fill.project);
  });
});
