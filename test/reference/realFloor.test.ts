// The concrete walls of a real apartment floor, drawn by nobody here, filled. Source and licence: test/data/concrete-floor-302.
//
// They are 160 thick, traced as rectangles that abut and overlap, without openings and without a closed room.

import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { fillUnit } from "../../src/fill/fillUnit.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit, Piece } from "../../src/kit/kit.ts";
import type { Wall } from "../../src/plan/project.ts";
import { tilingFaults } from "../support/audit/tiling.ts";
import { measureRectangles, type Rectangle } from "../support/orthogonalPlan.ts";
import { unitOfWalls } from "../support/walls.ts";

interface Traced {
  readonly walls: readonly Pick<Wall, "id" | "from" | "to" | "thickness">[];
}

const file = new URL("../data/concrete-floor-302/walls.json", import.meta.url);
const traced: Traced = JSON.parse(readFileSync(file, "utf8"));
const walls = traced.walls.map(
  ({ id, from, to, thickness }): Wall => ({ id, from, to, thickness, justify: "centre" }),
);
const union = await loadUnion();

const storey = { clearHeight: 2400, slab: 100 };

function fillWith(kit: Kit) {
  return fillUnit({ unit: unitOfWalls(walls), storey, kit, union, prefix: "A", fillers: "corner" }).fill;
}

/** The kit with copies of the pieces that `pick` makes something of. */
function extended(kit: Kit, pick: (piece: Piece) => readonly Piece[]): Kit {
  return { ...kit, pieces: [...kit.pieces, ...kit.pieces.flatMap(pick)] };
}

const demo = fillWith(demoKit);

describe("the floor as traced, with the demo kit", () => {
  it("is formed along the whole outline, floor to the top of the slab", () => {
    const rectangles = walls.map(({ from, to, thickness }): Rectangle => {
      const [x, y] = from[0] === to[0] ? [thickness / 2, 0] : [0, thickness / 2];
      return [
        Math.min(from[0], to[0]) - x,
        Math.min(from[1], to[1]) - y,
        Math.max(from[0], to[0]) + x,
        Math.max(from[1], to[1]) + y,
      ];
    });
    const area = demo.faces.reduce((sum, { length, height }) => sum + length * height, 0);
    expect(area).toBe(measureRectangles(rectangles).perimeter * (2400 + 100));
  });

  it("has every face tiled exactly, or says what is missing", () => {
    expect(demo.faces.flatMap((face) => tilingFaults(face, demo.problems))).toEqual([]);
    const errors = demo.problems.filter(({ severity }) => severity === "error");
    // The demo kit goes from 150 to 200: nothing as wide as these walls are thick.
    expect(errors.map(({ kind, message }) => `${kind}: ${message}`)).toEqual([
      expect.stringMatching(/^missing-piece: .*no stop-end 160 mm wide/),
      expect.stringMatching(/^missing-piece: .*no tie 160 mm long/),
    ]);
  });

  it("leaves nothing open but the ends of walls", () => {
    const open = demo.faces.filter(({ unfilled }) => unfilled.length > 0);
    expect(open.length).toBeGreaterThan(0);
    expect(new Set(open.map(({ length }) => length))).toEqual(new Set([160]));
  });

  it("says of its zones what makes them close with strips, and what would end it", () => {
    // ta + c = 160 + 150, 2c + t = 300 + 160
    const cause = demo.causes.find(({ widths }) => widths.length > 0);
    expect(cause?.widths).toEqual([310, 460]);
    expect(cause?.message).toMatch(/^Wall 160 with a 150 leg asks for 310 and 460 at 53 /);
    expect(cause?.closures).toBe(zoneStrips(demo));
  });
});

describe("the floor with what the program asks for", () => {
  const withWidths = extended(demoKit, (piece) =>
    piece.family === "wall-panel" && piece.width === 300
      ? [310, 460].map((width) => ({ ...piece, width, code: `W${width}x${piece.height}` }))
      : [],
  );
  const whole = extended(withWidths, (piece) => {
    if (piece.family === "stop-end" && piece.width === 150)
      return [{ ...piece, width: 160, code: `End160x${piece.height}` }];
    return piece.family === "tie" && piece.length === 150 ? [{ ...piece, length: 160, code: "Tie160" }] : [];
  });

  it("has no closure left in a zone once there are panels of 310 and 460", () => {
    expect(zoneStrips(demo)).toBeGreaterThan(0);
    expect(zoneStrips(fillWith(withWidths))).toBe(0);
  });

  it("has no error left once there are stop-ends and ties for 160 too", () => {
    const fill = fillWith(whole);
    expect(fill.problems.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(fill.faces.flatMap(({ unfilled }) => unfilled)).toEqual([]);
    expect(fill.faces.flatMap((face) => tilingFaults(face, fill.problems))).toEqual([]);
    expect(new Set(fill.ties.map(({ length }) => length))).toEqual(new Set([160]));
  });
});

function zoneStrips({ faces }: Pick<typeof demo, "faces">): number {
  return faces
    .flatMap(({ pieces }) => pieces)
    .filter(({ family, zone }) => family === "closure-strip" && zone).length;
}
