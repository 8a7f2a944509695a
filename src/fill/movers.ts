// What can be moved to move a joint of a stretch, and the edit that does it.
//
//   wall across   moves sideways with all that carries it straight on; walls that end on it stretch
//   opening       slides along its wall
//   free end      is drawn out or in

import { unitToDocument } from "../plan/documentProject.ts";
import type { Edit } from "../plan/edit.ts";
import { shifted, straightChain, type WallEnd } from "../plan/editAxis.ts";
import type { Position, Unit } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { FilledWith } from "./choices.ts";
import { placeOf } from "./lines.ts";
import type { FaceJoint, JointCause, SeenStretch } from "./stretchPieces.ts";

export type Mover =
  | { readonly kind: "wall"; readonly wall: string }
  | { readonly kind: "opening"; readonly opening: string }
  | { readonly kind: "free-end"; readonly wall: string; readonly end: WallEnd };

export interface Movable {
  readonly mover: Mover;
  /** 1 where a move along the line of wall makes the stretch longer, −1 where it makes it shorter. */
  readonly lengthens: 1 | -1;
  /** The edit that moves it by `shift` along the line of wall. */
  readonly editOf: (shift: Mm) => Edit;
}

/** What forces the two joints of a stretch, each mover once, those of the lower place first. */
export function moversOf(
  seen: SeenStretch,
  { filled, unit }: Pick<FilledWith, "filled" | "unit">,
): readonly Movable[] {
  const { settled } = filled.drafts[seen.stretch.face]!;
  const [low, high] = settled.isReversed ? [seen.right, seen.left] : [seen.left, seen.right];
  const at = (joint: FaceJoint, lengthens: 1 | -1) =>
    joint.causes.flatMap((cause): readonly Movable[] => {
      const move = moverOf(cause, { joint, direction: settled.direction, unit });
      return move === null ? [] : [{ ...move, lengthens }];
    });
  const all = [...at(low, -1), ...at(high, 1)];
  // Something that forces both joints moves them together and changes nothing.
  const isAtBoth = ({ mover }: Movable) =>
    new Set(all.filter((other) => isSameMover(other.mover, mover)).map(({ lengthens }) => lengthens)).size >
    1;
  return all.filter(
    (each, k) => !isAtBoth(each) && all.findIndex(({ mover }) => isSameMover(mover, each.mover)) === k,
  );
}

interface Around {
  readonly joint: FaceJoint;
  readonly direction: Position;
  readonly unit: Unit;
}

function moverOf(cause: JointCause, around: Around): Omit<Movable, "lengthens"> | null {
  switch (cause.kind) {
    case "jamb":
      return slide(cause.opening, around);
    case "free-end":
      return drawOut(cause.wall, around);
    case "leg":
    case "end":
      return moveAcross(cause.walls[0], around);
    default:
      return cause satisfies never;
  }
}

function slide(opening: string, { unit, direction }: Around): Omit<Movable, "lengthens"> | null {
  const own = unit.openings.find(({ id }) => id === opening);
  const wall = unit.walls.find(({ id }) => id === own?.wall);
  if (own === undefined || wall === undefined) return null;
  const along = (wall.to[0] - wall.from[0]) * direction[0] + (wall.to[1] - wall.from[1]) * direction[1];
  const sign = along > 0 ? 1 : -1;
  return {
    mover: { kind: "opening", opening },
    editOf: (shift) => ({
      kind: "change-opening",
      unit: unit.id,
      opening,
      set: { at: own.at + sign * shift },
    }),
  };
}

function drawOut(id: string, { unit, direction, joint }: Around): Omit<Movable, "lengthens"> | null {
  const wall = unit.walls.find((each) => each.id === id);
  if (wall === undefined) return null;
  const off = (end: Position) => Math.abs(placeOf(direction, end) - joint.at);
  const end: WallEnd = off(wall.from) < off(wall.to) ? "from" : "to";
  const at = wall[end];
  return {
    mover: { kind: "free-end", wall: id, end },
    editOf: (shift) => ({
      kind: "move-joint",
      unit: unit.id,
      at,
      to: shifted(at, direction[0] * shift, direction[1] * shift),
    }),
  };
}

function moveAcross(id: string | undefined, { unit, direction }: Around): Omit<Movable, "lengthens"> | null {
  if (id === undefined) return null;
  const chain = straightChain(unitToDocument(unit, 0).walls, id);
  const [first] = chain;
  if (first === undefined) return null;
  return {
    mover: { kind: "wall", wall: first.id },
    editOf: (shift) => ({
      kind: "move",
      unit: unit.id,
      items: chain.map((wall) => ({ bucket: "walls", id: wall.id })),
      dx: direction[0] * shift,
      dy: direction[1] * shift,
      stretch: true,
    }),
  };
}

function isSameMover(a: Mover, b: Mover): boolean {
  return nameOf(a) === nameOf(b);
}

/** Equal for what moves together. */
export function nameOf(mover: Mover): string {
  if (mover.kind === "opening") return `opening ${mover.opening}`;
  return mover.kind === "wall" ? `wall ${mover.wall}` : `free end ${mover.end} of ${mover.wall}`;
}
