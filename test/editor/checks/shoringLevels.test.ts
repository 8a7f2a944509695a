// The picture of shoring against the states from which the steps were worked out, and the rules put side by side.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { StrikingRow } from "../../../src/assess/checkDocument.ts";
import { shoringCycle } from "../../../src/check/shoringCycle.ts";
import { BARE_GROUND, type ShoringState, shoringAfter } from "../../../src/check/shoringSteps.ts";
import { rulesTable } from "../../../src/editor/checks/rulesTable.ts";
import { levelsAfter, peakOf, stepName, tellingLevels } from "../../../src/editor/checks/shoringLevels.ts";

const schemes = fc.record({
  shores: fc.integer({ min: 1, max: 3 }),
  reshores: fc.integer({ min: 0, max: 2 }),
  first: fc.constantFrom("shores" as const, "reshores" as const),
  storeys: fc.integer({ min: 1, max: 8 }),
});

describe("the storeys after a step", () => {
  it("stand on what the steps have put there", () => {
    fc.assert(
      fc.property(schemes, (scheme) => {
        const cycle = shoringCycle(scheme);
        if (cycle.status === "refused") return;
        const { records } = cycle.value;
        let state: ShoringState = BARE_GROUND;
        for (const [index, { step }] of records.entries()) {
          const name = stepName(step)!;
          state = shoringAfter(
            state,
            name.kind === "pour" ? { kind: "pour" } : { kind: name.kind, level: name.level },
          );
          const levels = levelsAfter(records, index);
          expect(levels.map(({ support }) => support)).toEqual(state.supports);
          expect(levels.map(({ slab }) => slab)).toEqual(state.slabs);
        }
      }),
      { seed: 10 },
    );
  });

  it("have the peaks of the cycle", () => {
    fc.assert(
      fc.property(schemes, (scheme) => {
        const cycle = shoringCycle(scheme);
        if (cycle.status === "refused") return;
        const { records, peakSlab, peakShore } = cycle.value;
        expect(peakOf(records, "slabs")?.ratio ?? 0).toBeCloseTo(peakSlab.ratio, 9);
        expect(peakOf(records, "shores")?.ratio ?? 0).toBeCloseTo(peakShore.ratio, 9);
      }),
      { seed: 11 },
    );
  });

  it("are told from the top down to the first that carries itself alone", () => {
    const level = (number: number, slab: number, support: "shores" | "none") => ({
      level: number,
      slab,
      shore: support === "none" ? 0 : 1,
      support,
    });
    const levels = [level(1, 1, "none"), level(2, 1, "none"), level(3, 1.5, "none"), level(4, 0, "shores")];
    expect(tellingLevels(levels).map(({ level: number }) => number)).toEqual([4, 3, 2]);
  });

  it("are not read from a step of another name", () => {
    expect(stepName("rest 3")).toBeNull();
    expect(stepName("pour")).toBeNull();
    expect(stepName("reshore 12")).toEqual({ kind: "reshore", level: 12 });
  });
});

describe("the striking rules side by side", () => {
  const row = (room: string, rule: string, hours: number | null, note = ""): StrikingRow => ({
    unit: "A",
    room,
    rule,
    part: room === "" ? "walls" : "props",
    hours,
    strength: null,
    source: `source of ${rule}`,
    note,
  });
  const rows = [
    row("", "BS 8110", 12),
    row("Hall", "ACI 347", 96, "span 2000 mm"),
    row("Bath", "ACI 347", 96, "span 1500 mm"),
    row("Living", "ACI 347", 168, "span 4000 mm"),
    { ...row("Hall", "ACI 347", 1), unit: "B" },
  ];

  it("have one column for the rooms that agree, and the walls' figure in each", () => {
    const { columns, lines } = rulesTable(rows, "A");
    expect(columns).toEqual([["Hall", "Bath"], ["Living"]]);
    expect(lines.map(({ rule, cells }) => [rule, cells.map((cell) => cell?.hours)])).toEqual([
      ["BS 8110", [12, 12]],
      ["ACI 347", [96, 168]],
    ]);
    expect(lines[1]?.notes).toEqual(["span 2000 mm", "span 1500 mm", "span 4000 mm"]);
  });

  it("are there for walls alone, and none for a unit without", () => {
    expect(rulesTable(rows.slice(0, 1), "A").lines[0]?.cells).toEqual([{ hours: 12, strength: null }]);
    expect(rulesTable(rows, "C").lines).toEqual([]);
  });
});
