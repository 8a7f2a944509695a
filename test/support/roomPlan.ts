// One room of 3000 × 2000 clear, its soffit dropped by so much, as a unit ready to be filled.

import type { Unit, Wall } from "../../src/plan/project.ts";

const wall = (id: string, from: readonly [number, number], to: readonly [number, number]): Wall => ({
  id,
  from,
  to,
  thickness: 100,
  justify: "centre",
});

export function roomPlan(soffitDrop: number): Unit {
  return {
    id: "A",
    name: "",
    walls: [
      wall("w1", [0, 0], [3100, 0]),
      wall("w2", [3100, 0], [3100, 2100]),
      wall("w3", [3100, 2100], [0, 2100]),
      wall("w4", [0, 2100], [0, 0]),
    ],
    openings: [],
    rooms: [{ name: "Bath", at: [1500, 1000], kind: "room", soffitDrop }],
    slabs: [],
    slabOpenings: [],
    services: [],
    controlLines: [],
    pinned: [],
  };
}
