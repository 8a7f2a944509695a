// Spares, litres and sleeves by arithmetic made apart from the program; what is handed out against the bill.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Family } from "../../../src/kit/kit.ts";
import { accessorySchedule, consumablesOf } from "../../../src/sheet/lists/accessoryRows.ts";
import { type ListItem, listItems } from "../../../src/sheet/lists/listItems.ts";
import { type Listed, listedHouses, listedSample } from "../../support/listFills.ts";

const SAMPLES = ["one-room", "two-bedroom", "row-of-three", "mirrored-pair"];
const all = SAMPLES.flatMap((name) => listedSample(name).map((listed) => ({ name, listed })));

/** Percent of spares by family: common practice, no source. */
const PERCENT: { readonly [F in Family]?: number } = { pin: 5, wedge: 8, tie: 5, "tie-sleeve": 5 };
const HANDED_OUT: readonly Family[] = [
  "pin",
  "wedge",
  "tie",
  "tie-sleeve",
  "wall-bracket",
  "alignment-ledger",
  "brace",
  "opening-brace",
  "facade-aligner",
  "prop",
  "shoring-strip",
];

function item(family: Family, quantity: number, area = 0): ListItem {
  const look = { family, tone: "paper", isZone: false, isTwoPerson: false } as const;
  const plain = { kind: "plain", width: 0, height: 0, mass: 1, look, byPlace: [quantity] } as const;
  return { code: family, family, size: "", quantity, area, ...plain };
}

describe("spares", () => {
  it.each([
    { why: "5 % of 100", family: "pin", needed: 100, spare: 5 },
    { why: "a part of one is one", family: "pin", needed: 101, spare: 6 },
    { why: "5 % of 4159 is 207.95", family: "pin", needed: 4159, spare: 208 },
    { why: "8 % of 4159 is 332.72", family: "wedge", needed: 4159, spare: 333 },
    { why: "5 % of 1", family: "tie", needed: 1, spare: 1 },
    { why: "a spare tie needs its sleeve", family: "tie-sleeve", needed: 40, spare: 2 },
    { why: "none of what is not lost", family: "brace", needed: 500, spare: 0 },
  ] as const)("$family $needed: $why", ({ family, needed, spare }) => {
    const [row] = accessorySchedule([item(family, needed)]).rows;
    expect(row).toMatchObject({ needed, spare, issue: needed + spare });
  });

  it("are never a piece short and never a piece too many", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1_000_000 }),
        fc.constantFrom("pin", "wedge", "tie"),
        (needed, family) => {
          const { spare } = accessorySchedule([item(family, needed)]).rows[0]!;
          const hundredths = needed * PERCENT[family]!;
          expect(spare * 100).toBeGreaterThanOrEqual(hundredths);
          expect((spare - 1) * 100).toBeLessThan(hundredths);
        },
      ),
      { seed: 7, numRuns: 200 },
    );
  });

  it.each([
    { why: "19 of a size have none", needed: 19, spares: [] },
    { why: "20 have one", needed: 20, spares: [1] },
    { why: "100 have one", needed: 100, spares: [1] },
    { why: "101 have two", needed: 101, spares: [2] },
  ])("of panels: $why", ({ needed, spares }) => {
    const { rows, sparePanels } = accessorySchedule([item("wall-panel", needed)]);
    expect(rows).toEqual([]);
    expect(sparePanels.map(({ spare }) => spare)).toEqual(spares);
    expect(sparePanels.map(({ issue }) => issue)).toEqual(spares); // the rest goes out in the bundles
  });
});

describe("the accessory schedule", () => {
  const needs = ({ unit, info }: Listed) =>
    accessorySchedule(listItems(unit, info))
      .rows.map(({ item: { code }, needed }) => [code, needed] as const)
      .sort();
  const bills = ({ unit }: Listed) =>
    unit.bill
      .filter(({ family }) => HANDED_OUT.includes(family))
      .map(({ code, quantity }) => [code, quantity] as const)
      .sort();

  it.each(all)("of $name lists what the bill counts, code by code", ({ listed }) => {
    expect(needs(listed)).toEqual(bills(listed));
  });

  it("of any house lists what its bill counts", () => {
    fc.assert(
      fc.property(listedHouses, (listed) => {
        expect(needs(listed)).toEqual(bills(listed));
      }),
      { seed: 11, numRuns: 20 },
    );
  });
});

describe("what is used up", () => {
  it.each([
    { why: "nothing to oil", area: 0, litres: 0 },
    { why: "a wet rag", area: 0.1, litres: 1 },
    { why: "35 m² take one litre", area: 35, litres: 1 },
    { why: "the next m² opens the next", area: 35.1, litres: 2 },
    { why: "260 m² take 6 to 10 litres by rule of thumb; at 35 m² a litre 7.43", area: 260, litres: 8 },
  ])("release agent: $why", ({ area, litres }) => {
    const items = [item("wall-panel", 1, area)];
    expect(consumablesOf(items, accessorySchedule(items)).agent).toBe(litres);
  });

  it("oils all of the room worked out by hand: inner 29.79, outer 33.11, soffit 10.80, reveals 0.51 m²", () => {
    const { unit, info } = all[0]!.listed;
    const area = listItems(unit, info).reduce((sum, { area: own }) => sum + own, 0);
    expect(area).toBeCloseTo(74.21, 2);
  });

  it("needs a sleeve for each tie, and spares", () => {
    const { unit, info } = all[1]!.listed;
    const items = listItems(unit, info);
    const ties = unit.ties.flatMap(({ length, heights }) => heights.map(() => length));
    const expected = [...new Set(ties)].reduce((sum, length) => {
      const needed = ties.filter((one) => one === length).length;
      return sum + needed + Math.floor((needed * 5 + 99) / 100);
    }, 0);
    expect(consumablesOf(items, accessorySchedule(items)).sleeves).toBe(expected);
  });
});
