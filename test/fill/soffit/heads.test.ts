// Where heads stand and where strips are jointed, by hand; pitch and reach are common practice, no source.

import { describe, expect, it } from "vitest";
import { type HeadRules, placeHeads, stripParts } from "../../../src/fill/soffit/heads.ts";
import { shoreStrips } from "../../../src/fill/soffit/shoring.ts";
import type { PanelTile } from "../../../src/fill/soffit/tiles.ts";

const RULES: HeadRules = { pitch: 1200, headWidth: 150, stripLengths: [1200, 600, 300] };

describe("heads", () => {
  it.each<{
    why: string;
    length: number;
    joints: readonly number[];
    corners?: readonly number[];
    rules?: Partial<HeadRules>;
    heads: readonly number[];
  }>([
    {
      why: "under every place where panels meet",
      length: 2700,
      joints: [600, 1200, 1800, 2400],
      heads: [600, 1200, 1800, 2400],
    },
    { why: "one amid joints of both sides that fit on it", length: 1300, joints: [600, 640], heads: [620] },
    { why: "on a whole millimetre where the middle is none", length: 1300, joints: [600, 625], heads: [612] },
    {
      why: "two where the joints are a head's width and more apart",
      length: 1300,
      joints: [600, 751],
      heads: [600, 751],
    },
    { why: "within the strip near its end", length: 800, joints: [40], heads: [75] },
    {
      why: "within a strip of an odd width, on a whole millimetre",
      length: 800,
      joints: [10],
      rules: { headWidth: 75 },
      heads: [38],
    },
    { why: "one amid a short strip without joints", length: 925, joints: [], heads: [462] },
    { why: "two 900 from the ends of a longer one", length: 2700, joints: [], heads: [900, 1800] },
    {
      why: "no further apart than the pitch",
      length: 5000,
      joints: [1000, 4000],
      heads: [900, 1000, 2000, 3000, 4000, 4100],
    },
    {
      why: "no further apart than a strip is long",
      length: 2000,
      joints: [],
      rules: { stripLengths: [700] },
      heads: [700, 1300],
    },
    {
      why: "one within 300 of a re-entrant corner",
      length: 2400,
      joints: [600, 1800],
      corners: [1150],
      heads: [600, 1150, 1800],
    },
    {
      why: "none more where one stands near the corner anyway",
      length: 2400,
      joints: [],
      corners: [1000],
      heads: [900, 1500],
    },
  ])("stand $why", ({ length, joints, corners = [], rules, heads }) => {
    expect(placeHeads(length, joints, corners, { ...RULES, ...rules })).toEqual(heads);
  });
});

describe("the strips of a line", () => {
  it.each<{ why: string; length: number; heads: readonly number[]; parts: readonly string[] }>([
    {
      why: "joints on heads, the longest first",
      length: 2700,
      heads: [600, 1200, 1800, 2400],
      parts: ["1200", "1200", "300"],
    },
    { why: "whole ones before fewer", length: 1500, heads: [300, 900], parts: ["300", "1200"] },
    { why: "one made to measure where none fits", length: 925, heads: [462], parts: ["925 cut"] },
  ])("are jointed: $why", ({ length, heads, parts }) => {
    const found = stripParts(length, heads, RULES.stripLengths);
    expect(found.map((one) => `${one.length}${one.isMadeToMeasure ? " cut" : ""}`)).toEqual(parts);
  });

  it("cannot be had where heads stand further apart than any strip is long", () => {
    expect(() => stripParts(4000, [1300, 2700], RULES.stripLengths)).toThrow(RangeError);
  });
});

const panel = (u0: number, u1: number, v0: number, v1: number): PanelTile => ({
  kind: "panel",
  code: "",
  standard: true,
  u0,
  u1,
  v0,
  v1,
});
const plank = (u0: number, u1: number, v0: number, v1: number) =>
  ({ kind: "plank", u0, u1, v0, v1, width: u1 - u0 }) as const;

describe("a strip with a plank beside it", () => {
  const shore = (tiles: Parameters<typeof shoreStrips>[1]) =>
    shoreStrips([{ u0: 100, u1: 200, v0: 0, v1: 500 }], tiles, [], { pitch: 1200, stripLengths: [1200] })[0]!;

  // The plank runs past both ends of the line. The joint beyond it at 200: a head. 500 · (100 + 10 + 600 / 2) = 205000.
  it("has a head where panels meet beyond the plank, and carries plank and half the panels", () => {
    const { heads } = shore([
      plank(90, 100, -300, 900),
      panel(-510, 90, -300, 200),
      panel(-510, 90, 200, 900),
    ]);
    expect(heads).toEqual([{ u: 150, v: 200, area: 205_000 }]);
  });

  // Two cells end in a plank each: beyond either only its own panels count. 500 · (100 + 10 + 300) again, not twice.
  it("counts beyond a plank only what ends on that plank", () => {
    const { heads } = shore([
      plank(90, 100, 0, 250),
      plank(90, 100, 250, 500),
      panel(-510, 90, 0, 250),
      panel(-510, 90, 250, 500),
    ]);
    expect(heads.reduce((sum, { area }) => sum + area, 0)).toBe(205_000);
  });

  // Nothing ends on the plank: it lies on the line and on a connector. 500 · (100 + 10 / 2) = 52500.
  it("carries half of a plank that lies between it and a connector", () => {
    const { heads } = shore([plank(90, 100, 0, 500)]);
    expect(heads.reduce((sum, { area }) => sum + area, 0)).toBe(52_500);
  });
});
