// The soffit of one room worked by hand: clear 3000 (x) by 3600 (y), a door of 900 × 2100 in its south wall, connectors
// 150 deep. Common practice, no source; every figure below is derived in place.
//
//   y ↑  ▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓    field 2700 × 3300 within the connectors; the slab panels lie along the longer side:
//        ▓ 600          ▓    3300 = 1200 + 150 + 1200 + 150 + 600, across 2700 = 4 · 600 + 300
//        ▓══●══●══●══●══▓    a head where four panels meet: 600, 1200, 1800, 2400 along each strip
//        ▓ 1200         ▓
//        ▓══●══●══●══●══▓
//        ▓ 1200         ▓
//        ▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓ → x

import { describe, expect, it } from "vitest";
import type { SoffitPiece } from "../../src/fill/result.ts";
import type { Position } from "../../src/plan/project.ts";
import { fillOne, opening } from "../support/filled.ts";
import { loadGeosUnion } from "../support/geosUnion.ts";
import { quantities } from "../support/runs.ts";
import { roundRoom, unitOf } from "../support/walls.ts";

const union = await loadGeosUnion();
const unit = {
  ...unitOf(roundRoom([-50, -50], [3050, 3650], 100)),
  openings: [opening("d1", "w1", [650, 900, 0, 2100])],
};
const fill = fillOne(unit);
const soffit = fill.soffits[0]!;

const of = (...families: readonly string[]) =>
  soffit.pieces.filter(({ family }) => families.includes(family));
const areaOf = (pieces: readonly SoffitPiece[]) => union(pieces.map(({ outline }) => outline)).area / 1e6;
const spanOf = (outline: readonly Position[], axis: 0 | 1) => {
  const places = outline.map((at) => at[axis]);
  return [Math.min(...places), Math.max(...places)];
};

describe("the soffit of the worked room", () => {
  it("takes the panels, strips and props worked by hand", () => {
    expect(quantities(fill)).toMatchObject({
      S600x1200: 8,
      S300x1200: 2,
      S600x600: 4,
      S300x600: 1,
      "Prop2000-3500": 8,
    });
    expect(of("slab-panel")).toHaveLength(15);
    expect(of("closure-strip")).toEqual([]);
    expect(soffit.unfilled).toEqual([]);
    expect(soffit.counts).toEqual({ closures: 0, fillers: 7, panels: 15, strips: 2 });
    expect(soffit.along).toBe("y");
  });

  // The door is in the south wall: the odd band, 600, lies at the north, where it is seen least.
  it("lays the bands 1200, 1200 and 600 from the door's wall on, two strips of 2.7 m between them", () => {
    const bands = new Set(of("slab-panel").map(({ outline }) => spanOf(outline, 1).join("..")));
    expect([...bands].sort()).toEqual(["150..1350", "1500..2700", "2850..3450"]);
    const lines = new Map<string, number>();
    for (const { outline } of of("shoring-strip")) {
      const [low = 0, high = 0] = spanOf(outline, 0);
      const line = spanOf(outline, 1).join("..");
      lines.set(line, (lines.get(line) ?? 0) + high - low);
    }
    expect([...lines].sort()).toEqual([
      ["1350..1500", 2700],
      ["2700..2850", 2700],
    ]);
  });

  it("stands a head under each place where four panels meet, on 600, 1200, 1800 and 2400 of either strip", () => {
    const along = (y: number) =>
      soffit.props
        .filter(({ at }) => at[1] === y)
        .map(({ at }) => at[0] - 150)
        .sort((a, b) => a - b);
    expect([along(1425), along(2775)]).toEqual([
      [600, 1200, 1800, 2400],
      [600, 1200, 1800, 2400],
    ]);
    expect(soffit.props).toHaveLength(8);
  });

  // Field 2.7 · 3.3 = 8.91 = panels 8.10 + strips 0.81; with the connectors 1.89 the room's 10.80.
  it("forms 10.80 m²: panels 8.10, strips 0.81, connectors 1.89", () => {
    expect(areaOf(of("slab-panel"))).toBeCloseTo(8.1, 9);
    expect(areaOf(of("shoring-strip"))).toBeCloseTo(0.81, 9);
    expect(areaOf(of("wall-slab-connector", "connector-corner"))).toBeCloseTo(1.89, 9);
    expect(areaOf(soffit.pieces)).toBeCloseTo(10.8, 9);
  });

  // A head between two carries 600 of strip and half of either band. South line: 1200/2 + 150 + 1200/2 = 1350, so
  // 0.81 m²; from the wall at 0 to 900 the first carries 900, to the wall at 2700 the last 600.
  it("loads a head of the south line with 0.81 m², the first with 1.215 m², one of the north line with 0.63 m²", () => {
    const areas = (y: number) => soffit.props.filter(({ at }) => at[1] === y).map(({ area }) => area);
    expect(areas(1425).sort()).toEqual([0.81, 0.81, 0.81, 1.215]);
    expect(areas(2775).sort()).toEqual([0.63, 0.63, 0.63, 0.945]);
  });

  it("gives a connector's leg on the face and its leg in the soffit one id", () => {
    const legs = of("wall-slab-connector", "connector-corner");
    // 8 of 1200, 2 of 600, 4 of 300 and the four corners.
    expect(legs).toHaveLength(18);
    const standing = new Map(
      fill.faces.flatMap(({ pieces }) => pieces.map(({ piece, code }) => [piece, code])),
    );
    for (const { piece, code } of legs) expect(standing.get(piece)).toBe(code);
  });
});

// Clear 4200 × 2100 with an arm of 1650 × 1500 upon it. Within the connectors the field is cut at x 1500, through the
// re-entrant corner at (1500, 1950):
//
//   left   1350 × 3300   along 1350 = 1200 + 150, its strip along the cut; across 3300 = 5 · 600 + 300
//   right  2550 × 1800   along 2550 = 1200 + 150 + 1200; across 1800 = 3 · 600
//
// Along y the lower field is 1800 = 1200 + 150 + 450 at best: a whole band of fillers, against one filler along x.
describe("the soffit of an L worked by hand", () => {
  const points = [
    [0, 0],
    [4200, 0],
    [4200, 2100],
    [1650, 2100],
    [1650, 3600],
    [0, 3600],
  ] as const;
  // Drawn counter-clockwise as the left sides of the walls: the room is what the points enclose.
  const walls = points.map(([x, y], k) => {
    const [a, b] = points[(k + 1) % points.length]!;
    return [x, y, a, b, 100, "left"] as const;
  });
  const [ell] = fillOne(unitOf(walls)).soffits;
  const codes = (family: string) =>
    ell!.pieces
      .filter((one) => one.family === family)
      .map(({ code }) => code)
      .sort();

  it("is cut through the re-entrant corner, with one filler and a strip along the cut", () => {
    expect(ell!.along).toBe("x");
    expect(ell!.counts).toEqual({ closures: 0, fillers: 1, panels: 12, strips: 2 });
    expect(codes("slab-panel")).toEqual(["S300x1200", ...Array<string>(11).fill("S600x1200")]);
    const strips = ell!.pieces.filter(({ family }) => family === "shoring-strip");
    expect([...new Set(strips.map(({ outline }) => spanOf(outline, 0).join("..")))].sort()).toEqual([
      "1350..1500",
      "2700..2850",
    ]);
  });

  // The cut's strip, y 150 to 3450: joints of the left panels at 750, 1350, 1950, 2550 and 3150, the third at the
  // re-entrant corner. The other, 150 to 1950: 750 and 1350.
  it("stands on a head at the re-entrant corner and under every place where panels meet", () => {
    const along = (x: number) =>
      ell!.props
        .filter(({ at }) => at[0] === x)
        .map(({ at }) => at[1])
        .sort((a, b) => a - b);
    expect([along(1425), along(2775)]).toEqual([
      [750, 1350, 1950, 2550, 3150],
      [750, 1350],
    ]);
  });
});
