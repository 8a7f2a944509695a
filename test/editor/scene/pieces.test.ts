// Pieces as they stand in the plan, held against the concrete itself and against the counts of the fill.

import { describe, expect, it } from "vitest";
import { scoresOf } from "../../../src/editor/live/scores.ts";
import { concreteRings } from "../../../src/editor/scene/concrete.ts";
import { tieEnds } from "../../../src/editor/scene/drawTies.ts";
import { swingSide } from "../../../src/editor/scene/openings.ts";
import { CUT, scenePieces } from "../../../src/editor/scene/pieces.ts";
import { roomNames } from "../../../src/editor/scene/rooms.ts";
import { isInside } from "../../../src/geom/ring.ts";
import { find } from "../../../src/plan/document.ts";
import type { Position } from "../../../src/plan/project.ts";
import { type Opened, openSample, sceneOf } from "./sampleScene.ts";

const SAMPLES = ["two-bedroom", "one-room", "mirrored-pair"] as const;
const opened = new Map(SAMPLES.map((name) => [name, openSample(name)] as const));
const sample = (name: (typeof SAMPLES)[number]): Opened => {
  const found = opened.get(name);
  if (found === undefined) throw new Error("no such sample");
  return found;
};

function middle(corners: readonly Position[]): Position {
  const sum = corners.reduce<Position>(([a, b], [x, y]) => [a + x, b + y], [0, 0]);
  return [sum[0] / corners.length, sum[1] / corners.length];
}

// Inside an odd number of rings: outer rings and voids alternate.
function isConcrete(rings: readonly (readonly Position[])[], at: Position): boolean {
  return rings.filter((ring) => isInside(ring, at)).length % 2 === 1;
}

describe.each(SAMPLES)("the pieces of %s", (name) => {
  const { live, unit } = sample(name);
  const { all, depth } = scenePieces(live);
  const rings = concreteRings(sceneOf({ ...sample(name) }));

  it("stand beside the concrete, never in it", () => {
    expect(all.length).toBeGreaterThan(20);
    const inside = all.filter(({ corners }) => isConcrete(rings, middle(corners)));
    expect(inside.map(({ id }) => id)).toEqual([]);
  });

  it("touch the concrete with their back: a hair behind it there is concrete", () => {
    for (const piece of all) {
      if (piece.kind === "outside-corner") continue;
      const [a, b, c, d] = piece.corners;
      const [back, front] = [middle([a, b]), middle([c, d])];
      const behind: Position = [
        back[0] + ((back[0] - front[0]) / depth) * 5,
        back[1] + ((back[1] - front[1]) / depth) * 5,
      ];
      expect(isConcrete(rings, behind), `${piece.id} on ${piece.face}`).toBe(true);
    }
  });

  it("are all that the cut meets or passes over, once for each face they stand on", () => {
    const drawn = ["wall-panel", "closure-strip", "inside-corner", "stop-end"];
    const expected = live.fill.faces.flatMap(({ pieces }) =>
      pieces.filter(({ family, z }) => drawn.includes(family) && z <= CUT).map(({ piece }) => piece),
    );
    const shown = all.filter(({ kind }) => kind !== "outside-corner" && kind !== "unfilled");
    expect(shown.map(({ id }) => id).sort()).toEqual(expected.sort());
  });

  it("show as many fillers of full height as the fill counts", () => {
    const fillers = all.filter(({ kind, isUnderCut }) => kind === "filler" && !isUnderCut);
    expect(fillers).toHaveLength(live.fill.totals.fillers);
    expect(all.filter(({ kind }) => kind === "closure")).toHaveLength(live.fill.totals.closures);
  });

  it("are counted by width as often as the fill counts panels", () => {
    const { widths, panels, sizes } = scoresOf(live);
    expect(widths.reduce((sum, { count }) => sum + count, 0)).toBe(panels);
    expect(sizes).toBe(new Set(widths.map(({ width }) => width)).size);
  });

  it("have ties that run from frame to frame across the concrete", () => {
    expect(live.fill.ties.length).toBeGreaterThan(0);
    for (const tie of live.fill.ties) {
      const [a, b] = tieEnds(live, tie);
      expect(isConcrete(rings, tie.at)).toBe(true);
      expect([isConcrete(rings, a), isConcrete(rings, b)]).toEqual([false, false]);
    }
  });

  it("stand round rooms whose names lie in no concrete", () => {
    const names = roomNames(sceneOf({ ...sample(name) }));
    expect(names).toHaveLength(live.fill.rooms.length);
    for (const { at, name: room } of names) expect(isConcrete(rings, at), room).toBe(false);
    expect(Object.keys(unit.walls).length).toBeGreaterThan(3);
  });
});

describe("doors", () => {
  const { unit, live } = sample("two-bedroom");
  const TABLE: readonly (readonly [door: string, way: Position, why: string])[] = [
    ["d3", [0, -1], "out of the hall into bedroom 1, which lies south of it"],
    ["d4", [0, -1], "out of the hall into bedroom 2"],
    ["d5", [0, 1], "out of the hall into the bathroom, which lies north of it"],
    ["d7", [0, 1], "out of the hall into the store"],
    ["d1", [-1, 0], "inwards: outside there is no room"],
  ];
  it.each(TABLE)("%s opens towards %j: %s", (door, way) => {
    const opening = find(unit.openings, door);
    const wall = opening && find(unit.walls, opening.wall);
    if (opening === undefined || wall === undefined) throw new Error("the sample has changed");
    const [dx, dy] = [Math.sign(wall.to[0] - wall.from[0]), Math.sign(wall.to[1] - wall.from[1])];
    const side = swingSide(unit, live, opening);
    expect([0 - dy * side + 0, dx * side + 0]).toEqual([...way]);
  });
});
