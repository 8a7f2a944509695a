// The points to stake out, numbered as they are walked: control points, then room by room, then round the outside.

import { distance } from "../../geom/point.ts";
import type { ControlLine, Position } from "../../plan/project.ts";
import { controlPoints } from "./controls.ts";
import type { OpeningMark } from "./openingMarks.ts";
import type { SetFace, SetRing } from "./setFace.ts";

export type PointKind = "control" | "corner" | "end" | "jamb" | "pin";

export interface StakePoint {
  /** At most eight characters. */
  readonly id: string;
  readonly kind: PointKind;
  readonly at: Position;
  /** The room it is seen from; null: from outside, or none. */
  readonly room: string | null;
  /** Into the open, away from the concrete, as whole steps −1, 0, 1 along x and y; 0, 0 for a control point. */
  readonly open: Position;
}

/**
 * Corners of every ring and jambs on the faces that are set first. Rooms come by the shortest way on from the last
 * point, each begun at its nearest corner; inside a room the walk turns as its faces do.
 */
export function stakePoints(
  rings: readonly SetRing[],
  openings: readonly OpeningMark[],
  lines: readonly ControlLine[],
): readonly StakePoint[] {
  const points: StakePoint[] = controlPoints(lines).map((at, k) => ({
    id: `K${k + 1}`,
    kind: "control",
    at,
    room: null,
    open: [0, 0],
  }));
  let number = 0;
  for (const { ring, start } of walked(rings)) {
    for (let k = 0; k < ring.faces.length; k++) {
      const index = (start + k) % ring.faces.length;
      const face = ring.faces[index]!;
      const before = ring.faces[(index + ring.faces.length - 1) % ring.faces.length]!;
      const open = openings.filter((one) => one.face === face.id && !one.isBoxed);
      const isEnd = face.isFreeEnd || before.isFreeEnd;
      if (!isFlush(before, face)) {
        number += 1;
        const kind = isEnd ? ("end" as const) : ("corner" as const);
        points.push({ id: `${number}`, kind, at: face.from, room: ring.room, open: openAt(before, face) });
      }
      for (const { near } of open) {
        for (const [side, at] of near.entries()) {
          number += 1;
          points.push({ id: `${number}`, kind: "jamb", at, room: ring.room, open: voidSide(face, side) });
        }
      }
    }
  }
  return points;
}

/** Rings in the order in which they are walked, each with the face it begins at. */
function walked(rings: readonly SetRing[]): readonly { ring: SetRing; start: number }[] {
  const left = {
    rooms: rings.filter(({ room, faces }) => room !== null && faces.length > 0),
    outside: rings.filter(({ room, faces }) => room === null && faces.length > 0),
  };
  const order: { ring: SetRing; start: number }[] = [];
  let last: Position | null = null;
  for (const list of [left.rooms, left.outside]) {
    const waiting = [...list];
    while (waiting.length > 0) {
      const next = nearestRing(waiting, last);
      waiting.splice(next.index, 1);
      order.push({ ring: next.ring, start: next.start });
      const end = next.ring.faces[(next.start + next.ring.faces.length - 1) % next.ring.faces.length]!;
      last = end.from;
    }
  }
  return order;
}

// Without a last point the walk begins at the least corner of all: x, then y.
function nearestRing(rings: readonly SetRing[], last: Position | null) {
  let best = { ring: rings[0]!, index: 0, start: 0, far: Number.POSITIVE_INFINITY, at: [0, 0] as Position };
  rings.forEach((ring, index) => {
    ring.faces.forEach(({ from }, start) => {
      const far = last === null ? 0 : distance(last, from);
      const isNearer = far < best.far - 1e-9;
      const isSame = !isNearer && far < best.far + 1e-9;
      const isLess = from[0] - best.at[0] || from[1] - best.at[1];
      if (isNearer || (isSame && isLess < 0)) best = { ring, index, start, far, at: from };
    });
  });
  return best;
}

function isFlush(before: SetFace, face: SetFace): boolean {
  const turn =
    (before.to[0] - before.from[0]) * (face.to[1] - face.from[1]) -
    (before.to[1] - before.from[1]) * (face.to[0] - face.from[0]);
  return Math.abs(turn) < 1e-6 * before.length * face.length;
}

// The open side of a face is its right; at a corner both open sides together.
function openAt(before: SetFace, face: SetFace): Position {
  const [a, b] = [rightOf(before), rightOf(face)];
  return [Math.sign(a[0] + b[0]) + 0, Math.sign(a[1] + b[1]) + 0];
}

function rightOf({ from, to, length }: SetFace): Position {
  return length === 0 ? [0, 0] : [(to[1] - from[1]) / length, (from[0] - to[0]) / length];
}

function voidSide(face: SetFace, side: number): Position {
  const towards = side === 0 ? 1 : -1;
  return [
    towards * Math.sign(Math.round(face.to[0] - face.from[0])) + 0,
    towards * Math.sign(Math.round(face.to[1] - face.from[1])) + 0,
  ];
}
