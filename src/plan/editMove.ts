// Moving things while what is joined to them goes along.
//
//   ●──────── moved ────────●        ends that share a joint with a moved wall go with that joint;
//   │           │           │        a wall that ends on the moved line stretches along its own line
//   │           │ stretches │
//
// Every place is worked out from the document as it stands before anything is written.

import { alongLine, asideOfLine, intersectLines, lineThrough, offsetLine } from "../geom/line.ts";
import { cross, isNear } from "../geom/point.ts";
import type { Mm } from "../units.ts";
import { type Entry, find, type ItemRef, put, type UnitDraft } from "./document.ts";
import {
  isOnWall,
  JOINT_REACH,
  LEAST_WALL,
  shifted,
  spanLength,
  tidyPosition,
  type WallEnd,
  wallLine,
} from "./editAxis.ts";
import { moveLoose } from "./editLoose.ts";
import { done, type EditOutcome, refused } from "./editOutcome.ts";
import { keptAt, setWallEnds, type WallEnds } from "./editWalls.ts";
import type { Position, Wall } from "./project.ts";

/** Moves things by (dx, dy). Without `stretch` the moved walls part from what they were joined to. */
export interface Move {
  readonly kind: "move";
  readonly unit: string;
  readonly items: readonly ItemRef[];
  readonly dx: Mm;
  readonly dy: Mm;
  readonly stretch: boolean;
}

/** Moves every wall end within 2 mm of `at`, each by the same amount, to `to`. */
export interface MoveJoint {
  readonly kind: "move-joint";
  readonly unit: string;
  readonly at: Position;
  readonly to: Position;
}

type Moved = Map<string, WallEnds>;

export function move(unit: UnitDraft, edit: Move): EditOutcome {
  const { items, dx, dy } = edit;
  const missing = items.find(({ bucket, id }) => find<unknown>(unit[bucket], id) === undefined);
  if (missing !== undefined) return refused("no-such-item", missing.id);
  const moved: Moved = new Map();
  for (const wall of Object.values(unit.walls)) {
    if (!items.some(({ bucket, id }) => bucket === "walls" && id === wall.id)) continue;
    moved.set(wall.id, { from: shifted(wall.from, dx, dy), to: shifted(wall.to, dx, dy) });
  }
  if (edit.stretch) carryJoints(unit, moved);
  const slides = items.filter(({ bucket, id }) => bucket === "openings" && canSlide(unit, id, edit, moved));
  const outcome = writeMoved(unit, moved);
  if (outcome.status === "refused") return outcome;
  for (const { id } of slides) slideOpening(unit, id, edit);
  for (const item of items) {
    moveLoose(unit, item, ([x, y]) => shifted([x, y], dx, dy));
  }
  return done();
}

export function moveJoint(unit: UnitDraft, edit: MoveJoint): EditOutcome {
  const dx = edit.to[0] - edit.at[0];
  const dy = edit.to[1] - edit.at[1];
  const moved: Moved = new Map();
  for (const wall of Object.values(unit.walls)) {
    const [from, to] = [wall.from, wall.to].map((end) =>
      isNear(end, edit.at, JOINT_REACH) ? shifted(end, dx, dy) : end,
    );
    if (from === undefined || to === undefined) continue;
    if (from !== wall.from || to !== wall.to) moved.set(wall.id, { from, to });
  }
  if (moved.size === 0) return refused("no-wall-here");
  carryStems(unit, moved);
  return writeMoved(unit, moved);
}

// Ends that coincide with an end of a moved wall go with it; then the stems follow.
function carryJoints(unit: UnitDraft, moved: Moved): void {
  const joints: { readonly at: Position; readonly to: Position }[] = [];
  for (const [id, ends] of moved) {
    const wall = find(unit.walls, id);
    if (wall !== undefined) joints.push({ at: wall.from, to: ends.from }, { at: wall.to, to: ends.to });
  }
  for (const wall of Object.values(unit.walls)) {
    if (moved.has(wall.id)) continue;
    const [from, to] = [wall.from, wall.to].map((end) => {
      const joint = joints.find(({ at }) => isNear(at, end, JOINT_REACH));
      return joint === undefined ? end : shifted(end, joint.to[0] - joint.at[0], joint.to[1] - joint.at[1]);
    });
    if (from === undefined || to === undefined) continue;
    if (from !== wall.from || to !== wall.to) moved.set(wall.id, { from, to });
  }
  carryStems(unit, moved);
}

// A wall that ends on the line of another whose line has moved is stretched to the new line. That may move a line in
// turn (when both its ends are carried), so the queue grows; each end is carried once at most.
function carryStems(unit: UnitDraft, moved: Moved): void {
  const queue = [...moved.keys()];
  const carried = new Set<string>();
  for (const id of moved.keys()) carried.add(`${id} from`).add(`${id} to`);
  for (const [id, ends] of moved) {
    const wall = find(unit.walls, id);
    if (wall === undefined) continue;
    if (ends.from === wall.from) carried.delete(`${id} from`);
    if (ends.to === wall.to) carried.delete(`${id} to`);
  }
  for (const id of queue) {
    const through = find(unit.walls, id);
    const ends = moved.get(id);
    if (through === undefined || ends === undefined || !(spanLength(ends.from, ends.to) >= LEAST_WALL))
      continue;
    for (const stem of Object.values(unit.walls)) {
      if (stem.id === id) continue;
      for (const end of ["from", "to"] as const) {
        const key = `${stem.id} ${end}`;
        if (carried.has(key) || !isOnWall(through, stem[end])) continue;
        const far = (moved.get(stem.id) ?? stem)[end === "from" ? "to" : "from"];
        const place = slideOnto({ stem, end, far }, through, ends);
        if (isNear(place, stem[end], 0)) continue;
        carried.add(key);
        moved.set(stem.id, { ...(moved.get(stem.id) ?? { from: stem.from, to: stem.to }), [end]: place });
        queue.push(stem.id);
      }
    }
  }
}

const SAME_DIRECTION = 1e-9; // sine; rounding noise
const LEAST_SINE = 0.1; // under about 6° a stem would shoot along its own line: it is carried sideways instead

// Where the end of a stem comes to lie when the wall it ends on is redrawn: on its own line, drawn through wherever
// its far end has got to, and as far from the new line as it was from the old one.
function slideOnto(
  { stem, end, far }: { readonly stem: Wall; readonly end: WallEnd; readonly far: Position },
  old: Wall,
  ends: WallEnds,
): Position {
  const place = stem[end];
  const before = wallLine(old);
  const after = lineThrough(ends.from, ends.to);
  const own = { ...wallLine(stem), x: far[0], y: far[1] };
  const sine = cross(own.ux, own.uy, after.ux, after.uy);
  const crossing = intersectLines(own, offsetLine(after, asideOfLine(before, place)));
  if (crossing !== null && Math.abs(sine) >= LEAST_SINE) return tidyPosition(crossing);
  const share = alongLine(before, place) / spanLength(old.from, old.to);
  const [dx, dy] = [0, 1].map((axis) => {
    const start = (ends.from[axis] ?? 0) - (old.from[axis] ?? 0);
    return start + ((ends.to[axis] ?? 0) - (old.to[axis] ?? 0) - start) * share;
  });
  return shifted(place, dx ?? 0, dy ?? 0);
}

function writeMoved(unit: UnitDraft, moved: Moved): EditOutcome {
  for (const [id, ends] of moved) {
    if (!(spanLength(ends.from, ends.to) >= LEAST_WALL)) return refused("wall-vanishes", id);
  }
  for (const [id, ends] of moved) {
    const wall: Entry<Wall> | undefined = find(unit.walls, id);
    if (wall !== undefined) setWallEnds(unit, wall, ends);
  }
  return done();
}

// An opening whose wall is moved too has gone with it already; one whose wall is turned keeps its measure.
function canSlide(unit: UnitDraft, id: string, edit: Move, moved: Moved): boolean {
  const opening = find(unit.openings, id);
  const wall = opening && find(unit.walls, opening.wall);
  if (wall === undefined) return false;
  if (edit.items.some((item) => item.bucket === "walls" && item.id === wall.id)) return false;
  const ends = moved.get(wall.id);
  if (ends === undefined || !(spanLength(ends.from, ends.to) >= LEAST_WALL)) return true;
  const before = wallLine(wall);
  const after = lineThrough(ends.from, ends.to);
  return Math.abs(cross(before.ux, before.uy, after.ux, after.uy)) < SAME_DIRECTION;
}

function slideOpening(unit: UnitDraft, id: string, edit: Move): void {
  const opening = find(unit.openings, id);
  const wall = opening && find(unit.walls, opening.wall);
  if (opening === undefined || wall === undefined) return;
  const { ux, uy } = wallLine(wall);
  const at = keptAt(wall, opening.at + edit.dx * ux + edit.dy * uy, opening.width);
  put(unit.openings, { ...opening, at });
}
