// Cutting one wall into two pieces of the same line, and making one wall of pieces in line. Split and join are each
// other's inverse: openings and pins stay where they are in the plan.
//
//   from ●━━[ door ]━━━━━━━━━━━━━━━● to        w1
//   from ●━━[ door ]━━━● ●━━━━━━━━━● to        w1, w4

import { alongLine } from "../geom/line.ts";
import type { Mm } from "../units.ts";
import {
  drop,
  type Entry,
  find,
  freshId,
  ID_PREFIX,
  listed,
  nextRank,
  put,
  type UnitDraft,
} from "./document.ts";
import {
  endAt,
  isCollinear,
  LEAST_WALL,
  otherJustify,
  placeOnWall,
  tidy,
  type WallEnd,
  wallLength,
  wallLine,
} from "./editAxis.ts";
import { done, type EditOutcome, madeOne, refused } from "./editOutcome.ts";
import { flipWall, openingsOf, pinsOf } from "./editWalls.ts";
import type { Position, Wall } from "./project.ts";

/** Cuts a wall `at` along its line. The piece at `from` keeps the id. */
export interface SplitWall {
  readonly kind: "split-wall";
  readonly unit: string;
  readonly wall: string;
  readonly at: Mm;
}

/** Makes one wall of pieces that meet in line with equal bodies. The first in the order of the file keeps its id. */
export interface JoinWalls {
  readonly kind: "join-walls";
  readonly unit: string;
  readonly walls: readonly string[];
}

export function splitWall(unit: UnitDraft, edit: SplitWall): EditOutcome {
  const wall = find(unit.walls, edit.wall);
  if (wall === undefined) return refused("no-such-item", edit.wall);
  const { at } = edit;
  if (!(at >= LEAST_WALL && at <= wallLength(wall) - LEAST_WALL)) return refused("wall-vanishes", wall.id);
  const cut = openingsOf(unit, wall.id).find((opening) => opening.at < at && opening.at + opening.width > at);
  if (cut !== undefined) return refused("opening-in-the-way", cut.id);

  const place = placeOnWall(wall, at);
  const id = freshId(unit.walls, ID_PREFIX.walls);
  put(unit.walls, { ...wall, id, rank: nextRank(unit.walls), from: place });
  put(unit.walls, { ...wall, to: place });
  for (const opening of openingsOf(unit, wall.id)) {
    if (opening.at >= at) put(unit.openings, { ...opening, wall: id, at: tidy(opening.at - at) });
  }
  for (const pin of pinsOf(unit, wall.id)) {
    if (pin.from >= at) put(unit.pinned, { ...pin, wall: id, from: tidy(pin.from - at) });
  }
  return madeOne("walls", id);
}

export function joinWalls(unit: UnitDraft, edit: JoinWalls): EditOutcome {
  const wanted = new Set(edit.walls);
  const pieces = listed(unit.walls).filter((wall) => wanted.has(wall.id));
  const [kept, ...rest] = pieces;
  if (kept === undefined || rest.length === 0 || pieces.length < wanted.size) return refused("not-in-line");
  const order = chained(kept, rest);
  if (order === null) return refused("not-in-line", kept.id);
  for (const id of order) append(unit, kept.id, id);
  return done();
}

// The pieces in an order in which each carries on what has been joined before it, or null where that fails.
function chained(kept: Entry<Wall>, rest: readonly Entry<Wall>[]): string[] | null {
  const order: string[] = [];
  const left = [...rest];
  let grown: Wall = kept;
  while (left.length > 0) {
    const index = left.findIndex((piece) => jointOf(grown, piece) !== null);
    const [piece] = index < 0 ? [] : left.splice(index, 1);
    const joint = piece && jointOf(grown, piece);
    if (!piece || !joint) return null;
    grown = { ...grown, [joint.own]: joint.other === "from" ? piece.to : piece.from };
    order.push(piece.id);
  }
  return order;
}

interface Joint {
  readonly own: WallEnd;
  readonly other: WallEnd;
}

// The ends at which `b` carries `a` straight on with the same body, or null.
function jointOf(a: Wall, b: Wall): Joint | null {
  if (a.thickness !== b.thickness || !isCollinear(a, b)) return null;
  for (const own of ["from", "to"] as const) {
    const other = endAt(b, a[own]);
    if (other === null) continue;
    const isSameWay = own !== other;
    if (a.justify !== (isSameWay ? b.justify : otherJustify(b.justify))) continue;
    const [ax, ay] = outward(a, own);
    const [bx, by] = outward(b, other);
    if (ax * bx + ay * by < 0) return { own, other };
  }
  return null;
}

// The direction in which a wall leaves at one of its ends.
function outward(wall: Wall, end: WallEnd): Position {
  const { ux, uy } = wallLine(wall);
  return end === "to" ? [ux, uy] : [-ux, -uy];
}

// Puts the piece `id` on the end of the kept wall that it meets.
function append(unit: UnitDraft, keptId: string, id: string): void {
  const kept = find(unit.walls, keptId);
  const drawn = find(unit.walls, id);
  const joint = kept && drawn && jointOf(kept, drawn);
  if (kept === undefined || !joint) return;
  if (joint.own === joint.other) flipWall(unit, id);
  const piece = find(unit.walls, id);
  if (piece === undefined) return;
  const grown = joint.own === "to" ? { ...kept, to: piece.to } : { ...kept, from: piece.from };
  const line = wallLine(grown);
  remeasure(unit, keptId, { wall: keptId, shift: alongLine(line, kept.from) });
  remeasure(unit, id, { wall: keptId, shift: alongLine(line, piece.from) });
  put(unit.walls, grown);
  drop(unit.walls, id);
}

function remeasure(unit: UnitDraft, from: string, to: { readonly wall: string; readonly shift: Mm }): void {
  for (const opening of openingsOf(unit, from)) {
    put(unit.openings, { ...opening, wall: to.wall, at: tidy(opening.at + to.shift) });
  }
  for (const pin of pinsOf(unit, from)) {
    put(unit.pinned, { ...pin, wall: to.wall, from: tidy(pin.from + to.shift) });
  }
}
