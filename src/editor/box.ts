// Boxes round the things of a plan, for the index and for selecting by window.

import { alongLine, asideOfLine } from "../geom/line.ts";
import type { UnitDocument } from "../plan/document.ts";
import { find, type ItemRef } from "../plan/document.ts";
import { bodySpan, placeOnWall, wallLength, wallLine } from "../plan/editAxis.ts";
import type { Position, Wall } from "../plan/project.ts";
import type { Mm } from "../units.ts";

/** A rectangle along the axes, mm. */
export interface Box {
  readonly minX: Mm;
  readonly minY: Mm;
  readonly maxX: Mm;
  readonly maxY: Mm;
}

/** The least box round some places. Without any it is inside out and meets nothing. */
export function boxAround(places: readonly Position[]): Box {
  let [minX, minY] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [maxX, maxY] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const [x, y] of places) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
}

/** The box `by` larger on all sides. */
export function grownBox(box: Box, by: Mm): Box {
  return { minX: box.minX - by, minY: box.minY - by, maxX: box.maxX + by, maxY: box.maxY + by };
}

export function boxesMeet(a: Box, b: Box): boolean {
  return a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
}

/** Whether `inner` lies wholly within `outer`. */
export function isBoxWithin(outer: Box, inner: Box): boolean {
  return (
    inner.minX >= outer.minX &&
    inner.maxX <= outer.maxX &&
    inner.minY >= outer.minY &&
    inner.maxY <= outer.maxY
  );
}

/** Whether any stretch of a path lies in or crosses a box. */
export function pathMeetsBox(path: readonly Position[], box: Box): boolean {
  if (path.length === 1) return path.some((place) => isBoxWithin(box, boxAround([place])));
  return path.some((place, index) => index > 0 && stretchMeetsBox(path[index - 1] ?? place, place, box));
}

// The part of a stretch between the two upright sides, then between the two level ones; none left means no meeting.
function stretchMeetsBox(a: Position, b: Position, box: Box): boolean {
  let [start, end] = [0, 1];
  const sides: readonly (readonly [origin: Mm, step: Mm, least: Mm, greatest: Mm])[] = [
    [a[0], b[0] - a[0], box.minX, box.maxX],
    [a[1], b[1] - a[1], box.minY, box.maxY],
  ];
  for (const [origin, step, least, greatest] of sides) {
    if (step === 0) {
      if (origin < least || origin > greatest) return false;
      continue;
    }
    const [p, q] = [(least - origin) / step, (greatest - origin) / step];
    start = Math.max(start, Math.min(p, q));
    end = Math.min(end, Math.max(p, q));
  }
  return start <= end;
}

/** The four corners of a wall's body from `start` to `end` along it, before it is carried to its neighbours. */
export function bodyCorners(wall: Wall, start: Mm, end: Mm): readonly Position[] {
  const { ux, uy } = wallLine(wall);
  const [right, left] = bodySpan(wall);
  const corner = ([x, y]: Position, aside: Mm): Position => [x - uy * aside, y + ux * aside];
  const [a, b] = [placeOnWall(wall, start), placeOnWall(wall, end)];
  return [corner(a, right), corner(b, right), corner(b, left), corner(a, left)];
}

/** How far a place is from a wall's body; 0 inside it. */
export function distanceToBody(wall: Wall, place: Position): Mm {
  const line = wallLine(wall);
  const along = alongLine(line, place);
  const aside = asideOfLine(line, place);
  const [right, left] = bodySpan(wall);
  const beyond = Math.max(0 - along, along - wallLength(wall), 0);
  const beside = Math.max(right - aside, aside - left, 0);
  return Math.sqrt(beyond * beyond + beside * beside);
}

/** The places that outline a thing or lie on it; none where it is not there any more. */
export function placesOf(unit: UnitDocument, { bucket, id }: ItemRef): readonly Position[] {
  switch (bucket) {
    case "walls": {
      const wall = find(unit.walls, id);
      return wall === undefined ? [] : bodyCorners(wall, 0, wallLength(wall));
    }
    case "openings": {
      const opening = find(unit.openings, id);
      const wall = opening && find(unit.walls, opening.wall);
      return opening && wall ? bodyCorners(wall, opening.at, opening.at + opening.width) : [];
    }
    case "rooms": {
      const room = find(unit.rooms, id);
      return room === undefined ? [] : [room.at];
    }
    case "slabs":
    case "slabOpenings":
      return find(unit[bucket], id)?.outline ?? [];
    case "services":
      return find(unit.services, id)?.path ?? [];
    case "controlLines": {
      const line = find(unit.controlLines, id);
      return line === undefined ? [] : [line.from, line.to];
    }
    case "pinned": {
      const pin = find(unit.pinned, id);
      const wall = pin && find(unit.walls, pin.wall);
      const length = pin?.widths.reduce((sum, width) => sum + width, 0) ?? 0;
      return pin && wall ? bodyCorners(wall, pin.from, pin.from + length) : [];
    }
    default:
      return bucket satisfies never;
  }
}
