// The program as it is started: `bin.ts` as a process of its own, with real streams and files.

import { spawn } from "node:child_process";
import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { coreTools } from "../../src/cli/coreTools.ts";
import { main } from "../../src/cli/main.ts";
import { memoryIo } from "../support/memoryIo.ts";
import { oneRoom } from "../support/oneRoom.ts";

const ROOT = join(import.meta.dirname, "..", "..");

const panel = { family: "wall-panel", mass: 10, standard: true, height: 2250 };
const badKit = {
  name: "K",
  pieces: [300, 400, 500, -600].map((width) => ({ ...panel, code: `P${width}`, width })),
  rules: {},
};

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "panelwright-process-"));
  await writeFile(join(folder, "room.json"), JSON.stringify(oneRoom));
  await writeFile(join(folder, "kit.json"), JSON.stringify({ ...oneRoom, kit: badKit }));
  // A kit without corners and panels cannot close a room: done, with errors in the result.
  const bare = { ...badKit, pieces: badKit.pieces.slice(0, 3) };
  await writeFile(join(folder, "bare.json"), JSON.stringify({ ...oneRoom, kit: bare }));
});
afterAll(() => rm(folder, { recursive: true }));

interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

function run(words: readonly string[], { input = "", isDeaf = false } = {}): Promise<Ran> {
  return new Promise((settle, fail) => {
    const child = spawn(
      process.execPath,
      [
        "--import",
        "tsx",
        join(ROOT, "src/cli/bin.ts"),
        ...words.map((word) => word.replace("@", `${folder}/`)),
      ],
      { cwd: ROOT },
    );
    const told = { out: "", err: "" };
    if (isDeaf) child.stdout.destroy();
    else child.stdout.setEncoding("utf8").on("data", (text: string) => (told.out += text));
    child.stderr.setEncoding("utf8").on("data", (text: string) => (told.err += text));
    child.stdin.end(input);
    child.on("error", fail);
    child.on("close", (code) => settle({ code, ...told }));
  });
}

describe("the process", () => {
  it("gives the same bytes from a file, from standard input and into a file", async () => {
    const [file, stdin, json] = await Promise.all([
      run(["fill", "@room.json"]),
      run(["fill", "-"], { input: JSON.stringify(oneRoom) }),
      run(["fill", "@room.json", "--json", "@fill.json"]),
    ]);
    expect(file).toMatchObject({ code: 0, err: expect.stringMatching(/^One room: closures 0/) });
    expect(JSON.parse(file.out)).toMatchObject({
      format: "panelwright-fill",
      version: 1,
      project: "One room",
    });
    expect(stdin).toEqual(file);
    expect(json).toMatchObject({ code: 0, out: "" });
    expect(await readFile(join(folder, "fill.json"), "utf8")).toBe(file.out);
  });

  it("writes a bill and the sheets into a folder, and stays inside it", async () => {
    const ran = await run(["fill", "@room.json", "--out", "@out"]);
    expect(ran.code).toBe(0);
    const names = (await readdir(join(folder, "out"))).sort();
    const tables = names.filter((name) => name.endsWith(".csv"));
    expect(tables).toEqual(["accessories.csv", "bill.csv", "packing.csv", "shortage.csv", "stake-out.csv"]);
    const sheets = names.filter((name) => !tables.includes(name));
    expect(sheets.length).toBeGreaterThan(0);
    for (const name of sheets) {
      expect(name).toMatch(/^a-[^./]*\.svg$/);
      expect(await readFile(join(folder, "out", name), "utf8")).toMatch(/^<svg [\s\S]*<\/svg>\n$/);
    }
    const bill = await readFile(join(folder, "out", "bill.csv"), "utf8");
    const { units } = JSON.parse(ran.out);
    expect(bill.trimEnd().split("\r\n")).toHaveLength(1 + units[0].bill.length);
    expect((await readdir(folder)).filter((name) => name.startsWith("Kitchen"))).toEqual([]);
  });

  it("writes a PDF byte for byte, as the core makes it", async () => {
    const ran = await run(["sheets", "@room.json", "--out", "@pdf"]);
    expect(ran).toMatchObject({ code: 0, out: "" });
    const io = memoryIo({ "room.json": JSON.stringify(oneRoom) });
    await main(["sheets", "room.json", "--out", "o"], io, coreTools);
    for (const [path, content] of io.files) {
      const written = await readFile(join(folder, "pdf", path.slice(2)));
      expect(written.toString(path.endsWith(".pdf") ? "latin1" : "utf8")).toBe(content);
    }
    expect((await readdir(join(folder, "pdf"))).sort()).toEqual([
      "a.pdf",
      "accessories.csv",
      "bill.csv",
      "packing.csv",
      "sheets.csv",
      "shortage.csv",
      "stake-out.csv",
    ]);
  });

  it("stays quiet when nobody reads its output", async () => {
    const ran = await run(["fill", "@room.json"], { isDeaf: true });
    expect(ran.code).toBe(0);
    expect(ran.err).not.toMatch(/EPIPE|Error:|\bat /);
  });

  it("ends with 1 where the result holds an error, and with 2 where the file does", async () => {
    const [bare, kit] = await Promise.all([run(["fill", "@bare.json"]), run(["fill", "@kit.json"])]);
    expect(bare).toMatchObject({ code: 1, err: expect.stringMatching(/^Error in unit A, /m) });
    expect(JSON.parse(bare.out).format).toBe("panelwright-fill");
    expect(kit).toMatchObject({
      code: 2,
      out: "",
      err: expect.stringMatching(/^ {2}kit\.pieces\[3\]\.width: expected .*, found -600\.$/m),
    });
  });
});
