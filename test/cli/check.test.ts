// The command `check`: where its result goes, what the person reads, and how it ends.

import { describe, expect, it } from "vitest";
import { CAUTIONS } from "../../src/check/cautions.ts";
import type { FillTools } from "../../src/cli/fillTools.ts";
import { main } from "../../src/cli/main.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { memoryIo } from "../support/memoryIo.ts";
import { type Given, PROPS, propped } from "../support/proppedFill.ts";

async function run(line: string, given: Given = {}, change: Partial<FillTools> = {}) {
  const { project, fill } = propped(given);
  const tools: FillTools = {
    readProject: () => ({ status: "ok", value: project, warnings: ["colour: not known."] }),
    readKit: () => ({ status: "ok", value: demoKit, warnings: [] }),
    fill: () => Promise.resolve(fill),
    optimise: () => Promise.resolve(fill),
    tradeOff: () => Promise.reject(new Error("not asked for")),
    keep: () => Promise.reject(new Error("not asked for")),
    optimiseWithNudges: () => Promise.reject(new Error("not asked for")),
    sheets: () => Promise.resolve([]),
    tables: () => [],
    stock: () => Promise.reject(new Error("no list is read")),
    fonts: () => Promise.reject(new Error("no font is asked for")),
    ...change,
  };
  const io = memoryIo({ "a.json": "{}", "-": "{}" });
  const code = await main(line.split(" "), io, tools);
  return { code, ...io.screen, files: io.files };
}

const HEAVY: Given = { storey: { clearHeight: 2400, slab: 800 }, loads: { continuity: 1.5 } };

describe("check", () => {
  it("writes the checks to standard output or into a file, the same bytes", async () => {
    const [out, dash, file] = [
      await run("check a.json"),
      await run("check - --json -"),
      await run("check a.json --json c.json"),
    ];
    expect(out.code).toBe(0);
    expect(JSON.parse(out.out)).toMatchObject({
      format: "panelwright-check",
      totals: { within: 2, over: 0, notChecked: 0 },
    });
    expect(dash.out).toBe(out.out);
    expect(file).toMatchObject({ code: 0, out: "" });
    expect(file.files.get("c.json")).toBe(out.out);
  });

  it("tells counts, loads with their defaults, the most used prop and every caution", async () => {
    const { err } = await run("check a.json", { loads: { concreteDensity: 25 } });
    const lines = err.split("\n");
    expect(lines.slice(0, 5)).toEqual([
      "Warning: colour: not known.",
      "test: 2 checks: 2 within the stated limit, 0 over, 0 not checked.",
      "Loads: EN 12812 (default), concrete 25 kN/m³, formwork 0.5 kPa (default), no motorised carts (default), " +
        "continuity 1 (default), permissible strength of props (default).",
      "Concrete: liquid head (default), 25 kN/m³ (default), permissible strength of ties and panels (default), " +
        "lowest tie takes the whole gap under it (default).",
      "Most used, prop-load: unit A, room Bath, Prop2000-3500 at (1000, 1000) mm: 8.28 kN of 25.0421 kN (33.1 %).",
    ]);
    for (const caution of CAUTIONS) expect(lines).toContain(`  - ${caution}`);
    expect(err).toMatch(/clear height of its room.*conservative side/);
  });

  it("ends with 1 where a prop is over its limit", async () => {
    const ran = await run("check a.json", HEAVY);
    expect(ran.code).toBe(1);
    // 23 kPa · 1.44 m² · 1.5 = 49.68 kN
    expect(ran.err).toContain(
      "Over the stated limit: unit A, room Bath, Prop2000-3500 at (1000, 1000) mm: prop-load 49.68 kN of 25.0421 kN (198.4 %).",
    );
    expect(JSON.parse(ran.out).totals).toMatchObject({ within: 1, over: 1 });
  });

  it("ends with 0 where a prop is not checked, and says why", async () => {
    const ran = await run("check a.json", { props: [{ ...PROPS[0]!, code: "other" }] });
    expect(ran.code).toBe(0);
    expect(ran.err).toContain(
      "Not checked: unit A, room Bath, other at (1000, 1000) mm: the kit has no prop other.",
    );
  });

  it("ends with 1 where the fill has an error: what is not there was not checked", async () => {
    const { fill } = propped();
    const [unit] = fill.units;
    const problems = [{ severity: "error", kind: "no-stack", message: "M.", where: {} }] as const;
    const faulty = { ...fill, units: [{ ...unit!, problems }] };
    const ran = await run("check a.json", {}, { fill: () => Promise.resolve(faulty) });
    expect(ran.code).toBe(1);
    expect(ran.err).toContain('The fill has 1 error; "fill" lists them.');
  });

  it("says so where there are no props", async () => {
    const ran = await run("check a.json", { props: [] });
    expect(ran).toMatchObject({ code: 0, err: expect.stringContaining("nothing to check") });
  });

  it("shows twenty lines of a sort and counts the rest", async () => {
    const props = Array.from({ length: 25 }, (_, index) => ({ ...PROPS[0]!, piece: `A/p${index}` }));
    const { err } = await run("check a.json", { ...HEAVY, props });
    expect(err.match(/^Over the stated limit/gm)).toHaveLength(20);
    expect(err).toContain("… and 5 more, all of them in the result.");
  });

  it("cannot go by loads that say nothing it knows, and names their place", async () => {
    const ran = await run("check a.json --json c.json", { loads: { slabModel: "EN" } });
    expect(ran).toMatchObject({
      code: 2,
      out: "",
      err: expect.stringMatching(
        /^a\.json is not a project that can be checked:\n {2}loads\.slabModel: .*\n$/,
      ),
    });
    expect(ran.files.size).toBe(0);
  });

  it("cannot go by a concrete that says too little, and names both mistakes at once", async () => {
    const { project } = propped({ loads: { slabModel: "EN" } });
    const given = { ...project, concrete: { pressureModel: "DIN 18218", rate: 2 } };
    const ran = await run(
      "check a.json",
      {},
      {
        readProject: () => ({ status: "ok", value: given, warnings: [] }),
      },
    );
    expect(ran.code).toBe(2);
    expect(ran.err).toMatch(
      /loads\.slabModel: .*\n {2}concrete\.consistence: expected a value.*\n {2}concrete\.settingEnd: /,
    );
  });

  it("gathers checks that cannot be made for one reason in one line", async () => {
    const props = Array.from({ length: 25 }, (_, index) => ({
      ...PROPS[0]!,
      piece: `A/p${index}`,
      code: "other",
    }));
    const { err } = await run("check a.json", { props });
    expect(err.match(/^Not checked/gm)).toHaveLength(1);
    expect(err).toContain(
      "Not checked: 25 of prop-load, most at unit A, room Bath, other at (1000, 1000) mm, 8.28 kN: ",
    );
  });

  it("warns of a member of the loads it does not know", async () => {
    const { err } = await run("check a.json", { loads: { colour: "red" } });
    expect(err).toContain("Warning: loads.colour: expected a member this version knows");
  });

  it("keeps control characters of a name off the terminal", async () => {
    const { err } = await run("check a.json", { room: "a\u001b[2Jb" });
    expect(err).toContain("room a\\u001b[2Jb");
  });
});
