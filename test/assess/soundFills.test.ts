// What the fill makes without an error of its own has no fault by any rule, whatever the house: rules and fill come to the
// same by two ways.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wholeChecks } from "../../src/assess/wholeChecks.ts";
import type { Unit } from "../../src/plan/project.ts";
import { entryOf } from "../support/assessed.ts";
import { fillDocument, projectOf } from "../support/filled.ts";
import { houseArbitrary } from "../support/housePlan.ts";
import { networkArbitrary, networkWalls } from "../support/wallNetwork.ts";
import { unitOf } from "../support/walls.ts";

/** Which rules find a fault; those that only repeat what the fill calls an error are left out. */
function faultyKinds(unit: Unit): { readonly hasErrors: boolean; readonly kinds: readonly string[] } {
  const project = projectOf(unit);
  const entry = entryOf({ project, fill: fillDocument(project) });
  const kinds = wholeChecks(entry)
    .filter(({ status, kind }) => status === "over" && kind !== "nothing-open" && kind !== "first-out")
    .map(({ kind, reason }) => `${kind}: ${reason}`);
  return { hasErrors: entry.fill.problems.some(({ severity }) => severity === "error"), kinds };
}

it("a network of walls aslant has no fault where its fill has no error", () => {
  let sound = 0;
  fc.assert(
    fc.property(networkArbitrary(700), (network) => {
      const { hasErrors, kinds } = faultyKinds(unitOf(networkWalls(network)));
      if (hasErrors) return;
      sound += 1;
      expect(kinds).toEqual([]);
    }),
    { seed: 773, numRuns: 60 },
  );
  expect(sound).toBeGreaterThanOrEqual(5);
});

describe.each([
  { name: "on a grid", isMixed: false, isOnGrid: true, thicknesses: [100], seed: 771, least: 20 },
  {
    name: "off a grid",
    isMixed: true,
    isOnGrid: false,
    thicknesses: [100, 120, 150, 200],
    seed: 772,
    least: 8,
  },
])("a house $name", ({ isMixed, isOnGrid, thicknesses, seed, least }) => {
  it("has no fault where its fill has no error", () => {
    const houses = houseArbitrary({ columns: 2, rows: 2, thicknesses, isMixed, isOnGrid });
    let sound = 0;
    fc.assert(
      fc.property(houses, (unit) => {
        const { hasErrors, kinds } = faultyKinds(unit);
        if (hasErrors) return;
        sound += 1;
        expect(kinds).toEqual([]);
      }),
      { seed, numRuns: 40 },
    );
    expect(sound).toBeGreaterThanOrEqual(least);
  });
});
