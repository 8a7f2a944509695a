// Random house plans with services through and along their walls, and control lines.

import fc from "fast-check";
import type { ControlLine, Position, Service, Unit } from "../../src/plan/project.ts";
import { houseArbitrary } from "./housePlan.ts";

export const emptyUnit: Unit = {
  id: "A",
  name: "A",
  walls: [],
  openings: [],
  rooms: [],
  slabs: [],
  slabOpenings: [],
  services: [],
  controlLines: [],
  pinned: [],
};

const place = fc.tuple(fc.integer({ min: -500, max: 9000 }), fc.integer({ min: -500, max: 9000 }));

const service = fc
  .record({
    start: place,
    steps: fc.array(fc.integer({ min: -4000, max: 4000 }), { minLength: 1, maxLength: 4 }),
    isSquare: fc.boolean(),
    clearance: fc.constantFrom(0, 30, 60, 60, 120),
  })
  .map(({ start, steps, isSquare, clearance }): Omit<Service, "id"> => {
    const path: Position[] = [start];
    steps.forEach((step, k) => {
      const [x, y] = path.at(-1)!;
      const aside = isSquare ? 0 : Math.floor(step / 3);
      path.push(k % 2 === 0 ? [x + step, y + aside] : [x + aside, y + step]);
    });
    return { path, clearance };
  });

/** Services that run along a wall, where no pin of a face can stand. */
const along = fc.record({ wall: fc.nat(30), aside: fc.integer({ min: -120, max: 120 }) });

const control = fc.record({ isUpright: fc.boolean(), at: fc.integer({ min: -1500, max: 6000 }) });

export function withServices(house: { readonly columns: number; readonly rows: number }): fc.Arbitrary<Unit> {
  return fc
    .record({
      unit: houseArbitrary({ ...house, thicknesses: [100, 120, 200], isMixed: false }),
      services: fc.array(service, { maxLength: 4 }),
      alongs: fc.array(along, { maxLength: 2 }),
      controls: fc.array(control, { maxLength: 4 }),
    })
    .map(({ unit, services, alongs, controls }) => ({
      ...unit,
      services: [
        ...services,
        ...alongs.map(({ wall, aside }): Omit<Service, "id"> => {
          const { from, to } = unit.walls[wall % unit.walls.length]!;
          const isLevel = from[1] === to[1];
          const moved = ([x, y]: Position): Position => (isLevel ? [x, y + aside] : [x + aside, y]);
          return { path: [moved(from), moved(to)], clearance: 60 };
        }),
      ].map((one, k) => ({ ...one, id: `s${k + 1}` })),
      controlLines: controls.map(({ isUpright, at }, k): ControlLine => {
        const id = `${isUpright ? "X" : "Y"}${k + 1}`;
        return isUpright
          ? { id, from: [at, -900], to: [at, 9000] }
          : { id, from: [-900, at], to: [9000, at] };
      }),
    }));
}
