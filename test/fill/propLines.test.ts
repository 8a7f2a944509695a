// Props over props: compared by hand-made soffits of two storeys.

import { describe, expect, it } from "vitest";
import type { Soffit } from "../../src/fill/result.ts";
import { checkPropLines } from "../../src/fill/soffit/propLines.ts";

function soffit(room: string, ...places: readonly (readonly [number, number])[]): Soffit {
  return {
    room,
    outline: [],
    holes: [],
    pieces: [],
    unfilled: [],
    props: places.map((at, k) => ({ piece: `p${k}`, code: "prop", at, area: 1 })),
    along: "x",
    height: 2400,
    counts: { closures: 0, fillers: 0, panels: 0, strips: 0 },
  };
}

describe("props of the storey above", () => {
  it.each([
    { why: "the same places", above: [soffit("A", [0, 0], [600, 0])], astray: [] },
    { why: "fewer than below", above: [soffit("A", [600, 0])], astray: [] },
    { why: "within the head that is below", above: [soffit("A", [675, 0], [0, 0])], astray: [] },
    { why: "beside every head below", above: [soffit("A", [0, 0], [676, 0], [0, 76])], astray: ["2 of 3"] },
    {
      why: "a room that is not below has nothing to stand on or beside",
      above: [soffit("B", [9, 9])],
      astray: [],
    },
  ])("$why", ({ above, astray }) => {
    const found = checkPropLines([soffit("A", [0, 0], [600, 0])], above);
    expect(found.map(({ message }) => /\d+ of \d+/.exec(message)?.[0])).toEqual(astray);
    for (const { severity, where } of found) expect([severity, where.room]).toEqual(["warning", "A"]);
  });
});
