// Typing a clear width: one wall moves across its line until the free distance to a parallel wall is what was asked.
//
//   ▓▓▓ from ▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓
//        ▲ distance, face to face
//        ▼
//   ▓▓▓ wall ▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓  moves, with all that carries it straight on and all that ends on it

import { asideOfLine, pointAt } from "../geom/line.ts";
import { cross } from "../geom/point.ts";
import type { Mm } from "../units.ts";
import { find, type UnitDraft } from "./document.ts";
import { bodySpan, straightChain, wallLine } from "./editAxis.ts";
import { move } from "./editMove.ts";
import { type EditOutcome, refused } from "./editOutcome.ts";
import type { Wall } from "./project.ts";

/** Moves `wall` so that its face stands `distance` from the face of the parallel wall `from`, which stays. */
export interface SetClear {
  readonly kind: "set-clear";
  readonly unit: string;
  readonly wall: string;
  readonly from: string;
  readonly distance: Mm;
}

const PARALLEL = 1e-3; // 1 mm in 1 m, sine

/** The free distance between the facing sides of two parallel walls and the way from the first to the second. */
export interface Clear {
  readonly distance: Mm;
  /** Unit direction across the walls, from the first to the second. */
  readonly ux: number;
  readonly uy: number;
}

/** Measures face to face, or null where the walls are not parallel. Negative where the bodies overlap. */
export function clearBetween(first: Wall, second: Wall): Clear | null {
  const line = wallLine(first);
  const other = wallLine(second);
  if (Math.abs(cross(line.ux, line.uy, other.ux, other.uy)) > PARALLEL) return null;
  const way = line.ux * other.ux + line.uy * other.uy > 0 ? 1 : -1;
  const aside = asideOfLine(line, pointAt(other, 0, 0));
  const [right, left] = bodySpan(first);
  const [otherRight, otherLeft] = bodySpan(second);
  const lower = aside + (way > 0 ? otherRight : -otherLeft);
  const upper = aside + (way > 0 ? otherLeft : -otherRight);
  const isLeft = lower + upper > right + left;
  const distance = isLeft ? lower - left : right - upper;
  return isLeft ? { distance, ux: 0 - line.uy, uy: line.ux } : { distance, ux: line.uy, uy: 0 - line.ux };
}

export function setClear(unit: UnitDraft, edit: SetClear): EditOutcome {
  const wall = find(unit.walls, edit.wall);
  const fixed = find(unit.walls, edit.from);
  if (wall === undefined) return refused("no-such-item", edit.wall);
  if (fixed === undefined) return refused("no-such-item", edit.from);
  if (!(edit.distance >= 0)) return refused("bad-size");
  const chain = straightChain(unit.walls, wall.id);
  const clear = clearBetween(fixed, wall);
  if (clear === null || chain.some(({ id }) => id === fixed.id)) return refused("not-parallel", fixed.id);
  const shift = edit.distance - clear.distance;
  return move(unit, {
    kind: "move",
    unit: edit.unit,
    items: chain.map(({ id }) => ({ bucket: "walls", id })),
    dx: clear.ux * shift,
    dy: clear.uy * shift,
    stretch: true,
  });
}
