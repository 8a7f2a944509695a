// Random plans along the axes as they occur in housing: a grid of rooms with walls missing, so with L, T and X junctions;
// stubs, free-standing walls and columns; doors, windows and small boxed-out openings. Whole millimetres throughout.
//
//   ┌────┬────┐
//   │    │  ▪ │      spans 1500 to 4500, most of them on a grid of 50; a wall from each crossing to the next
//   ├─  ─┴─┬──┤
//   │      │  │

import fc from "fast-check";
import type { Opening, Position, Unit, Wall } from "../../src/plan/project.ts";
import { opening } from "./filled.ts";

export interface HouseWish {
  readonly columns: number;
  readonly rows: number;
  /** Thicknesses to draw from, even so that both sides are whole. */
  readonly thicknesses: readonly number[];
  /** Whether every wall may have a thickness of its own; else all of one line share one. */
  readonly isMixed: boolean;
  /** Whether all places are multiples of 50, so that nothing is left over. */
  readonly isOnGrid?: boolean;
}

interface Draft {
  readonly from: Position;
  readonly to: Position;
  readonly thickness: number;
  readonly wish: Wish;
}

const OPENINGS = {
  door: [900, 0, 2100],
  narrowDoor: [700, 0, 2000],
  window: [1200, 900, 2100],
  wide: [1500, 1000, 2200],
  high: [600, 1500, 2100],
  full: [900, 0, 2400],
  box: [400, 1200, 1600],
} as const;

const wish = fc.record({
  isDrawn: fc.integer({ min: 0, max: 4 }).map((n) => n > 0),
  isFlipped: fc.boolean(),
  thickness: fc.nat(20),
  hole: fc.constantFrom(
    null,
    null,
    null,
    ...(["door", "narrowDoor", "window", "wide", "high", "full", "box"] as const),
  ),
  at: fc.integer({ min: 0, max: 40 }),
  offGrid: fc.constantFrom(0, 0, 0, 0, 5, 20, 25, 37),
  stub: fc.constantFrom("none", "none", "none", "left", "right", "both", "staggered"),
});
type Wish = typeof wish extends fc.Arbitrary<infer W> ? W : never;

const span = fc
  .tuple(fc.integer({ min: 30, max: 90 }), fc.constantFrom(0, 0, 0, 0, 10, 25, 33))
  .map(([steps, off]) => steps * 50 + off);

const island = fc.constantFrom("none", "none", "column", "wall");

/** Units of up to `columns` × `rows` rooms. */
export function houseArbitrary(house: HouseWish): fc.Arbitrary<Unit> {
  const { columns, rows, thicknesses, isMixed, isOnGrid = false } = house;
  const grid = (spans: readonly number[]) =>
    isOnGrid ? spans.map((one) => Math.floor(one / 100) * 100) : spans;
  const most = columns * (rows + 1) + rows * (columns + 1);
  return fc
    .record({
      spansX: fc.array(span, { minLength: 1, maxLength: columns }),
      spansY: fc.array(span, { minLength: 1, maxLength: rows }),
      lines: fc.array(fc.constantFrom(...thicknesses), { minLength: 20, maxLength: 20 }),
      wishes: fc.array(isOnGrid ? wish.map((one) => ({ ...one, offGrid: 0 as const })) : wish, {
        minLength: most,
        maxLength: most,
      }),
      islands: fc.array(island, { minLength: columns * rows, maxLength: columns * rows }),
    })
    .map(({ spansX, spansY, lines, wishes, islands }) => {
      const [xs, ys] = [places(grid(spansX)), places(grid(spansY))];
      const thicknessOf = (line: number, one: Wish) =>
        isMixed ? lines[one.thickness % 20]! : lines[line % 20]!;
      const drafts: Draft[] = [];
      let next = 0;
      ys.forEach((y, k) => {
        for (let i = 0; i + 1 < xs.length; i++) {
          const one = wishes[next++]!;
          drafts.push({ from: [xs[i]!, y], to: [xs[i + 1]!, y], thickness: thicknessOf(k, one), wish: one });
        }
      });
      xs.forEach((x, k) => {
        for (let i = 0; i + 1 < ys.length; i++) {
          const one = wishes[next++]!;
          drafts.push({
            from: [x, ys[i]!],
            to: [x, ys[i + 1]!],
            thickness: thicknessOf(k + 7, one),
            wish: one,
          });
        }
      });
      return unitOfDrafts(
        drafts.filter(({ wish: { isDrawn } }) => isDrawn),
        islandsIn(xs, ys, islands),
      );
    })
    .filter(({ walls }) => walls.length > 0);
}

function places(spans: readonly number[]): number[] {
  const found = [0];
  for (const one of spans) found.push(found.at(-1)! + one);
  return found;
}

function unitOfDrafts(drafts: readonly Draft[], islands: readonly Wall[]): Unit {
  const walls: Wall[] = [...islands];
  const openings: Opening[] = [];
  for (const draft of drafts) {
    const id = `w${walls.length + 1}`;
    const { from, to, thickness, wish: one } = draft;
    const ends = one.isFlipped ? { from: to, to: from } : { from, to };
    walls.push({ id, ...ends, thickness, justify: "centre" });
    const length = to[0] - from[0] + to[1] - from[1];
    const hole = one.hole === null ? null : OPENINGS[one.hole];
    // Half of the greatest thickness and a leg stay free at either end.
    const room = hole === null ? -1 : length - hole[0] - 500;
    if (hole !== null && room >= 0) {
      const at = 250 + Math.min(room, one.at * 50 + one.offGrid);
      const formed = one.hole === "box" ? "box" : "band";
      openings.push(opening(`o${openings.length + 1}`, id, [at, hole[0], hole[1], hole[2]], { formed }));
    } else walls.push(...stubsOf(draft, walls.length));
  }
  return {
    id: "A",
    name: "A",
    walls,
    openings,
    rooms: [],
    slabs: [],
    slabOpenings: [],
    services: [],
    controlLines: [],
    pinned: [],
  };
}

// Walls that end free, from the drawn line of a wall into the room beside it.
function stubsOf({ from, to, thickness, wish: one }: Draft, before: number): Wall[] {
  const length = to[0] - from[0] + to[1] - from[1];
  if (one.stub === "none" || length < 1800) return [];
  const isAcross = from[1] === to[1];
  const reach = 400 + (one.at % 8) * 50;
  const found: Wall[] = [];
  const stub = (at: number, side: 1 | -1): void => {
    const foot: Position = isAcross ? [from[0] + at, from[1]] : [from[0], from[1] + at];
    const tip: Position = isAcross ? [foot[0], foot[1] + side * reach] : [foot[0] + side * reach, foot[1]];
    found.push({ id: `w${before + found.length + 1}`, from: foot, to: tip, thickness, justify: "centre" });
  };
  const at = 700 + (one.at % 8) * 50 + one.offGrid;
  if (one.stub !== "right") stub(at, 1);
  if (one.stub !== "left") stub(one.stub === "staggered" ? at + 50 + (one.at % 9) * 50 : at, -1);
  return found;
}

function islandsIn(xs: readonly number[], ys: readonly number[], islands: readonly string[]): Wall[] {
  const found: Wall[] = [];
  for (let i = 0; i + 1 < xs.length; i++) {
    for (let k = 0; k + 1 < ys.length; k++) {
      const kind = islands[i * (ys.length - 1) + k]!;
      const [width, depth] = [xs[i + 1]! - xs[i]!, ys[k + 1]! - ys[k]!];
      // Far from the walls, and from the tips of stubs, which reach 800 at most.
      if (kind === "none" || Math.min(width, depth) < 2600) continue;
      const x = xs[i]! + Math.floor(width / 2);
      const y = ys[k]! + Math.floor(depth / 2);
      const length = kind === "column" ? 150 : 300;
      const thickness = kind === "column" ? 200 : 100;
      found.push({
        id: `w${found.length + 1}`,
        from: [x - length, y],
        to: [x + length, y],
        thickness,
        justify: "centre",
      });
    }
  }
  return found;
}
