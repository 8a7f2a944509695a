// A unit drawn as its mirror image, x → −x, by hand as a person would draw it: every point moved, sides swapped.

import type { Justify, Position, Unit } from "../../src/plan/project.ts";

const SWAPPED: Readonly<Record<Justify, Justify>> = { centre: "centre", left: "right", right: "left" };

/** Openings and pins stay as they are: they are measured along their wall, which keeps its direction. */
export function reflected(unit: Unit): Unit {
  return {
    ...unit,
    walls: unit.walls.map((wall) => ({
      ...wall,
      from: acrossAxis(wall.from),
      to: acrossAxis(wall.to),
      justify: SWAPPED[wall.justify],
    })),
    rooms: unit.rooms.map((room) => ({ ...room, at: acrossAxis(room.at) })),
    slabs: unit.slabs.map((slab) => ({ ...slab, outline: slab.outline.map(acrossAxis) })),
    slabOpenings: unit.slabOpenings.map((hole) => ({ ...hole, outline: hole.outline.map(acrossAxis) })),
    services: unit.services.map((service) => ({ ...service, path: service.path.map(acrossAxis) })),
    controlLines: unit.controlLines.map((line) => ({
      ...line,
      from: acrossAxis(line.from),
      to: acrossAxis(line.to),
    })),
  };
}

function acrossAxis([x, y]: Position): Position {
  return [-x, y];
}
