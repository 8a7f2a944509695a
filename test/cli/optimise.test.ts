// The command `optimise`: where its result goes, what the person reads, and how it ends.

import { describe, expect, it, vi } from "vitest";
import { coreTools } from "../../src/cli/coreTools.ts";
import { main } from "../../src/cli/main.ts";
import { setSummary } from "../../src/cli/setSummary.ts";
import type { PanelSet } from "../../src/fill/result.ts";
import { memoryIo } from "../support/memoryIo.ts";
import { readInstance } from "../support/setInstance.ts";
import { drawnInstance } from "../support/setProject.ts";

vi.setConfig({ testTimeout: 60_000 });

const project = drawnInstance(readInstance("tiny-06"));

async function run(line: string, file: object = project) {
  const io = memoryIo({ "a.json": JSON.stringify(file), "-": JSON.stringify(file) });
  const code = await main(line.split(" "), io, coreTools);
  return { code, ...io.screen, files: io.files };
}

describe("optimise", () => {
  it("writes the fill with its set to standard output or into a file, the same bytes", async () => {
    const out = await run("optimise a.json");
    const file = await run("optimise - --json s.json");
    expect(out.code).toBe(0);
    expect(file.files.get("s.json")).toBe(out.out);
    expect(file.out).toBe("");
    const document = JSON.parse(out.out);
    expect(document).toMatchObject({
      format: "panelwright-fill",
      version: 1,
      set: { status: "optimal", cost: 1410 },
    });
    expect(Object.keys(document)).toEqual(["format", "version", "project", "units", "totals", "set"]);
  });

  it("says what the set costs, how sure that is and what it saves", async () => {
    const { err } = await run("optimise a.json");
    expect(err).toMatch(
      /Set for every pour: 1410\.00 EUR \(panels .*\)\.\nProven optimal: .*\n.*saved \d+\.\d\d EUR, [\d.]+ %\.\n/,
    );
  });

  it("says which sizes it needs more and less of, and why fillers stay", async () => {
    const { err } = await run("optimise a.json");
    expect(err).toMatch(
      /Changed against filling every wall by itself: \d+ intervals? of \d units?; needed P\d+ \d+ to \d+/,
    );
    expect(err).toMatch(/^ {2}\d+ fillers in \d+ intervals? spare the set P\d+/m);
  });

  it("writes the moves of walls beside the fill when asked, and says the first of them", async () => {
    // Its optimum has a closure, which a free end moved takes away.
    const closed = drawnInstance(readInstance("tiny-03"));
    const plain = await run("optimise a.json", closed);
    const { code, out, err, files } = await run("optimise a.json --nudges n.json", closed);
    const list = JSON.parse(files.get("n.json")!);
    expect(code).toBe(0);
    expect(out).toBe(plain.out);
    expect(list).toMatchObject({ format: "panelwright-nudges", version: 1, status: "done", cost: 2562 });
    expect(list.nudges.length).toBeGreaterThan(0);
    const [first] = list.nudges;
    expect(err).toMatch(/Moves of one wall by up to 25 mm: \d+ saves?, of \d+ walls and ends looked at/);
    expect(err).toContain(
      `  Unit ${first.unit}: the free end of wall ${first.walls[0]} ${first.by} mm ${first.way} saves ${first.saving.toFixed(2)} EUR.`,
    );
  });

  it("gives the moves to standard output where the fill has a file of its own", async () => {
    const { out, files } = await run("optimise a.json --json s.json --nudges -");
    expect(JSON.parse(out).format).toBe("panelwright-nudges");
    expect(JSON.parse(files.get("s.json")!).format).toBe("panelwright-fill");
  });

  it("leaves no amount without saying in what it is counted", async () => {
    const { kit } = structuredClone(project) as unknown as {
      kit: { currency?: string; pieces: { price?: number }[] };
    };
    delete kit.currency;
    expect((await run("optimise a.json", { ...project, kit })).err).toMatch(
      /the kit names no currency\.\nSet for every pour: 1410\.00 \(/,
    );
    delete kit.pieces[0]!.price;
    expect((await run("optimise a.json", { ...project, kit })).err).toMatch(
      /mass is counted instead, and the weights of `objective` as kg\.\nSet for every pour: [\d.]+ kg \(/,
    );
  });

  it.each([
    {
      why: "work ran out",
      proof: null,
      says: /^The work allowed ran out: within 0\.5 % .*, 199\.00 EUR\.$/m,
    },
    {
      why: "only the solver's word",
      proof: "search" as const,
      says: /within 0\.5 % .*own search came to its end/,
    },
    {
      why: "the share is rounded up, or it would not be within",
      proof: null,
      lowerBound: 199.9899,
      says: /within 0\.006 % \(at most/,
    },
  ])(
    "a bound that does not meet the cost is never called optimal: $why",
    ({ proof, says, lowerBound = 199 }) => {
      const set: PanelSet = {
        status: "gap",
        countedBy: "price",
        pieces: [],
        cost: 200,
        parts: { set: 200, handling: 0, closures: 0, distinctSizes: 0, fixed: 0 },
        lowerBound,
        proof,
        chosen: { widths: 8, fillers: 40 },
        wallByWall: 210,
      };
      const text = setSummary({ set }, "EUR");
      expect(text).toMatch(says);
      expect(text).not.toMatch(/optimal/);
    },
  );

  it("ends with 1 where no plan has pieces enough, and names them", async () => {
    const { code, out, err } = await run("optimise a.json", { ...project, stock: {}, buy: false });
    expect(code).toBe(1);
    expect(JSON.parse(out).set.status).toBe("infeasible");
    expect(err).toMatch(/No plan exists .*\nMissing: \d+ P\d+ \(pours? [^;]+; units? [^)]+\)/);
    for (const { pours, units } of JSON.parse(out).set.missing) {
      expect(pours.length).toBeGreaterThan(0);
      expect(units.length).toBeGreaterThan(0);
    }
  });

  it("fills with what there is where that is just enough, and with one piece fewer says what is short and where", async () => {
    const bought = JSON.parse((await run("optimise a.json")).out).set.pieces;
    const stock = Object.fromEntries(
      bought.map(({ code, needed }: { code: string; needed: number }) => [code, needed]),
    );
    const exact = await run("optimise a.json", { ...project, stock, buy: false });
    expect(JSON.parse(exact.out).set.pieces.every(({ toBuy }: { toBuy: number }) => toBuy === 0)).toBe(true);
    expect(exact.err).not.toMatch(/Missing|Short/);
    for (const code of Object.keys(stock).filter((each) => each.startsWith("P"))) {
      const { out } = await run("optimise a.json", {
        ...project,
        stock: { ...stock, [code]: stock[code] - 1 },
        buy: false,
      });
      const { set } = JSON.parse(out);
      const panels = set.pieces.filter(({ family }: { family: string }) => family === "wall-panel");
      const isHeld = panels.every(({ toBuy }: { toBuy: number }) => toBuy === 0);
      expect([code, set.status === "infeasible" || set.missing?.length > 0]).toEqual([code, !isHeld]);
    }
    const fewer = await run("optimise a.json", {
      ...project,
      stock: { ...stock, End: stock.End - 1 },
      buy: false,
    });
    expect(fewer.err).toMatch(/Short beside wall panels: 1 End \(pours? [^;]+; units? [^)]+\)\./);
  });

  it("stopped before it knows whether the panels are enough, it claims neither", async () => {
    const { code, out, err } = await run("optimise a.json --time-limit 0.001", {
      ...project,
      stock: {},
      buy: false,
    });
    const { set } = JSON.parse(out);
    expect(code).toBe(0);
    expect(set).toMatchObject({ status: "stopped", proof: null, wallByWall: null });
    expect(set.lowerBound).toBeLessThanOrEqual(set.cost);
    expect(set.missing.length).toBeGreaterThan(0);
    expect(err).toMatch(/before a plan was found/);
  });

  it("stopped by a time limit, it ends well and says so", async () => {
    const { code, out, err } = await run("optimise a.json --time-limit 0.001");
    expect(code).toBe(0);
    expect(JSON.parse(out).set.status).toBe("stopped");
    expect(err).toMatch(/Stopped: within [\d.]+ % /);
  });

  it.each([
    { why: "no number", line: "optimise a.json --time-limit soon", says: /takes SECONDS, not "soon"/ },
    { why: "nothing", line: "optimise a.json --time-limit 0", says: /takes SECONDS/ },
    { why: "over the project", line: "optimise a.json --json a.json", says: /it is the project being read/ },
    {
      why: "both to standard output",
      line: "optimise a.json --nudges -",
      says: /Only one result can go to standard output/,
    },
    {
      why: "both into one file",
      line: "optimise a.json --json b.json --nudges b.json",
      says: /two of --json, --keep, --curve and --nudges would both write it/,
    },
    {
      why: "moves over the project",
      line: "optimise a.json --nudges a.json",
      says: /the project being read/,
    },
    { why: "no project", line: "optimise", says: /optimise needs a PROJECT/ },
  ])("cannot: $why", async ({ line, says }) => {
    const { code, err } = await run(line);
    expect(code).toBe(2);
    expect(err).toMatch(says);
  });

  it("writes the project with the chosen covers as pins, and the curves, each into a file of its own", async () => {
    const { code, out, err, files } = await run("optimise a.json --keep k.json --curve c.json");
    expect(code).toBe(0);
    const set = JSON.parse(out).set;
    const kept = JSON.parse(files.get("k.json")!);
    expect(kept.units[0].pinned.length).toBeGreaterThan(0);
    for (const pin of kept.units[0].pinned) expect(pin.by).toBe("set");
    const curve = JSON.parse(files.get("c.json")!);
    expect(curve).toMatchObject({ format: "panelwright-curve", version: 1, countedBy: "price" });
    expect(curve.widths[0]).toMatchObject({ mostWidths: null, cost: set.cost, status: "optimal" });
    expect(err).toMatch(/Proven optimal/);
    const bill = (text: string) => JSON.parse(text).units.map((unit: { bill: object[] }) => unit.bill);
    expect(bill((await run("fill a.json", kept)).out)).toEqual(bill(out));
  });

  it.each([
    { line: "optimise a.json --keep -", says: "Only one result can go to standard output" },
    { line: "optimise a.json --json s.json --keep a.json", says: "it is the project being read" },
    { line: "optimise a.json --keep x.json --curve x.json", says: "would both write it" },
  ])("writes nothing for $line", async ({ line, says }) => {
    const { code, out, err, files } = await run(line);
    expect([code, out, files.size]).toEqual([2, "", 0]);
    expect(err).toContain(says);
  });

  it("gives the kept project to standard output where the fill has a file", async () => {
    const { code, out, files } = await run("optimise a.json --json s.json --keep -");
    expect(code).toBe(0);
    expect(JSON.parse(out).format).toBe("panelwright-project");
    expect([...files.keys()]).toEqual(["s.json"]);
  });

  it("ends with 1 and says so where no choice has as few widths as the limits allow", async () => {
    const strips = (project.kit as unknown as { pieces: { family: string }[] }).pieces;
    const kit = {
      ...(project.kit as object),
      pieces: strips.filter(({ family }) => family !== "closure-strip"),
    };
    const { code, out, err } = await run("optimise a.json", { ...project, kit, limits: { mostWidths: 1 } });
    expect(code).toBe(1);
    expect(JSON.parse(out).set).toMatchObject({ status: "infeasible", lacks: "widths" });
    expect(err).toMatch(/No choice does with as few widths as the limits say; this one takes \d/);
    expect(err).not.toMatch(/Missing/);
  });
});
