// Which walls of a unit can be moved, and how the lengths of its free intervals follow the move.
//
// What forces a joint says which intervals its move makes longer; where that is promising, one move of a millimetre, tried
// out, says it exactly. From there on a move of any size is looked up, not filled.

import { find, type PlanDraft } from "../../plan/document.ts";
import { documentToUnit, projectToDocument, unitToDocument } from "../../plan/documentProject.ts";
import { applyEdit, type Edit } from "../../plan/edit.ts";
import { bodySpan, straightChain, wallLine } from "../../plan/editAxis.ts";
import type { Position, Project, Unit, Wall } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { type Movable, moversOf, nameOf } from "../movers.ts";
import { placeKey } from "../optimise/chosen.ts";
import type { FreeInterval } from "../solve.ts";
import { stretchesSeen } from "../stretchPieces.ts";
import { isSameKeys } from "./keyed.ts";
import { type Refilled, type RefillTools, refill } from "./refill.ts";

export type WallMover = Exclude<Movable["mover"], { readonly kind: "opening" }>;

/** A wall, with all that carries it straight on, or the free end of one. */
export interface Candidate {
  readonly unit: string;
  readonly mover: WallMover;
  /** The way of a positive shift, unit vector. */
  readonly direction: Position;
  readonly editOf: (shift: Mm) => Edit;
  /** How the intervals follow it by what forces their joints. */
  readonly guess: readonly Follow[];
}

/** By how much an interval grows for each millimetre of the move. */
export interface Follow {
  readonly interval: FreeInterval;
  readonly growth: number;
}

/** The walls and free ends whose move changes the length of a free interval, in the order of the faces, each once. */
export function candidatesOf(castings: readonly Refilled[]): readonly Candidate[] {
  const found = new Map<string, Candidate & { readonly guess: Follow[] }>();
  for (const { casting, filled, intervals } of castings) {
    const { unit } = casting;
    const free = new Map([...intervals.values()].map((each) => [placeKey(each.stretch), each]));
    filled.drafts.forEach(({ settled: { direction } }, face) => {
      for (const seen of stretchesSeen(filled, face)) {
        const interval = free.get(placeKey(seen.stretch));
        if (interval === undefined) continue;
        for (const { mover, lengthens, editOf } of moversOf(seen, { filled, unit })) {
          if (mover.kind === "opening") continue;
          const key = `${direction.join(" ")} ${nameOf(mover)}`;
          const own = found.get(key) ?? { unit: unit.id, mover, direction, editOf, guess: [] };
          found.set(key, own);
          own.guess.push({ interval, growth: lengthens });
        }
      }
    });
  }
  return [...found.values()];
}

/** The unit with an edit made; null where the plan refuses it. */
export function movedUnit(project: Project, unit: string, edit: Edit): Unit | null {
  const draft: PlanDraft = projectToDocument(project);
  if (applyEdit(draft, edit).status === "refused") return null;
  const after = find(draft.units, unit);
  return after === undefined ? null : documentToUnit(after);
}

/**
 * How the intervals of all castings of the unit follow a move; null where a move of a millimetre is refused, or changes which
 * faces and intervals there are.
 */
export function followsOf(
  candidate: Candidate,
  before: readonly Refilled[],
  tools: RefillTools,
): readonly Follow[] | null {
  const unit = movedUnit(tools.project, candidate.unit, candidate.editOf(1));
  if (unit === null) return null;
  const follows: Follow[] = [];
  for (const was of before) {
    const is = refill(was.casting, unit, tools);
    if (!isSameKeys(was.intervals, is.intervals) || !isSameKeys(was.faces, is.faces)) return null;
    for (const [key, interval] of was.intervals) {
      const growth = lengthOf(is.intervals.get(key)!) - lengthOf(interval);
      if (growth !== 0) follows.push({ interval, growth });
    }
  }
  return follows;
}

const ACROSS = 1e-6; // cosine; rounding noise

/**
 * The shifts that bring a side of the wall flush with a side of another, mm, not 0. There a step goes away, which no move of
 * a millimetre tells of.
 */
export function flushShifts({ mover, direction }: Candidate, unit: Unit, greatest: Mm): readonly Mm[] {
  if (mover.kind !== "wall") return [];
  const across = unit.walls.filter((wall) => {
    const { ux, uy } = wallLine(wall);
    return Math.abs(ux * direction[0] + uy * direction[1]) < ACROSS;
  });
  const chain = new Set(straightChain(unitToDocument(unit, 0).walls, mover.wall).map(({ id }) => id));
  const own = across.find(({ id }) => id === mover.wall);
  if (own === undefined) return [];
  const shifts = new Set<Mm>();
  for (const wall of across) {
    if (chain.has(wall.id)) continue;
    const sides = sidesOf(wall, direction);
    sidesOf(own, direction).forEach((side, k) => {
      const shift = Math.round(sides[k]! - side);
      if (shift !== 0 && Math.abs(shift) <= greatest) shifts.add(shift);
    });
  }
  return [...shifts].sort((a, b) => Math.abs(a) - Math.abs(b) || b - a);
}

// The two sides of a wall, the lower first.
function sidesOf(wall: Wall, direction: Position): readonly [Mm, Mm] {
  const { ux, uy } = wallLine(wall);
  const place = wall.from[0] * direction[0] + wall.from[1] * direction[1];
  const [right, left] = bodySpan(wall);
  const isLeftHigher = direction[1] * ux - direction[0] * uy > 0;
  return isLeftHigher ? [place + right, place + left] : [place - left, place - right];
}

export function lengthOf({ stretch }: FreeInterval): Mm {
  return stretch.high - stretch.low;
}
