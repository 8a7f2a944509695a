// Sets of props by retention, and spares, against figures worked out by hand.

import { describe, expect, it } from "vitest";
import { propSets } from "../../../src/fill/deliver/propSets.ts";
import { sparesOf } from "../../../src/fill/deliver/spares.ts";
import { deliverKit } from "../../support/pourNeeds.ts";

describe("sets of props", () => {
  // sets = ceil(retention / cycle) + 1: common practice, no source.
  it.each([
    {
      retention: 7,
      cycle: 1,
      sets: 8,
      needed: 40,
      why: "a pour a day: a week of slabs and the pour in hand",
    },
    { retention: 7, cycle: 4, sets: 3, needed: 27, why: "a floor in four days" },
    {
      retention: 7,
      cycle: 7,
      sets: 2,
      needed: 18,
      why: "free on the day of the next pour, and one set more",
    },
    { retention: 8, cycle: 7, sets: 3, needed: 27, why: "a day over" },
    { retention: 0.5, cycle: 1, sets: 2, needed: 18, why: "never fewer than two" },
  ])("$why: $retention days at $cycle", ({ retention, cycle, sets, needed }) => {
    const byDay = [5, 5, 9, 9, 9, 3].map(
      (count) =>
        new Map([
          ["Prop", count],
          ["P600", 50],
        ]),
    );
    const lines = [
      { code: "P600", family: "wall-panel" },
      { code: "Prop", family: "prop" },
    ] as const;
    const found = propSets({ lines, byDay }, deliverKit, { retention, cycle });
    expect(found.sets).toBe(sets);
    expect(found.lines).toEqual([{ code: "Prop", family: "prop", perDay: 9, needed, kitSets: 3 }]);
  });
});

describe("spares", () => {
  // Pins 5 %, panels 1 % of sizes with 20 or more: common practice, no source.
  it.each([
    { family: "pin", needed: 4159, spare: 208, why: "five in a hundred, a part counts whole" },
    { family: "wedge", needed: 100, spare: 8, why: "wedges are lost more" },
    { family: "wall-panel", needed: 19, spare: 0, why: "a rare size has none" },
    { family: "wall-panel", needed: 20, spare: 1, why: "from twenty on" },
    { family: "slab-panel", needed: 101, spare: 2, why: "panels overhead likewise" },
    { family: "inside-corner", needed: 500, spare: 0, why: "nothing is said of corners" },
    { family: "pin", needed: 0, spare: 0, why: "none of nothing" },
  ] as const)("$needed of $family: $why", ({ family, needed, spare }) => {
    expect(sparesOf(family, needed)).toBe(spare);
  });
});
