// Mirroring, turning and pasting: a map of the plan that keeps lengths, applied to chosen things or to copies of them.
//
//   mirror        turn
//   L │ ⅃         L → ⅃ about a point
//
// A turn comes as its cosine and sine, so that quarter turns and the like (3/5, 4/5) are exact and nothing here
// needs an angle.

import type { Mm } from "../units.ts";
import { find, type ItemRef, put, type UnitDraft } from "./document.ts";
import { otherJustify, shifted, tidyPosition } from "./editAxis.ts";
import { type Clip, copyItems, pasteClip } from "./editClip.ts";
import { moveLoose } from "./editLoose.ts";
import { done, type EditOutcome, refused } from "./editOutcome.ts";
import type { Position, RoomLabel, Wall } from "./project.ts";

/** Mirrors things in the line through `from` and `to`, or puts mirrored copies beside them. Twice is the identity. */
export interface Mirror {
  readonly kind: "mirror";
  readonly unit: string;
  readonly items: readonly ItemRef[];
  readonly from: Position;
  readonly to: Position;
  readonly copy: boolean;
}

/** Turns things counter-clockwise about a point by the angle of this cosine and sine. */
export interface Turn {
  readonly kind: "turn";
  readonly unit: string;
  readonly items: readonly ItemRef[];
  readonly about: Position;
  readonly cosine: number;
  readonly sine: number;
  readonly copy: boolean;
}

/** Puts a clip into a unit, moved by (dx, dy). Openings copied without a wall need one near where they land. */
export interface Paste {
  readonly kind: "paste";
  readonly unit: string;
  readonly clip: Clip;
  readonly dx: Mm;
  readonly dy: Mm;
}

/** A map of the plan that keeps lengths. */
export interface Placement {
  readonly map: (place: Position) => Position;
  /** Whether it exchanges left and right. */
  readonly isMirror: boolean;
  /** Whether what lay along x lies along y afterwards, or nearer to it. */
  readonly swapsAxes: boolean;
}

const UNIT_CIRCLE = 1e-9; // cos² + sin² may miss 1 by the rounding of the two numbers, no more

export function mirror(unit: UnitDraft, edit: Mirror): EditOutcome {
  const placement = mirroring(edit.from, edit.to);
  return placement === null ? refused("bad-size") : transform(unit, edit.items, edit.copy, placement);
}

export function turn(unit: UnitDraft, edit: Turn): EditOutcome {
  const { cosine, sine } = edit;
  if (!(Math.abs(cosine * cosine + sine * sine - 1) <= UNIT_CIRCLE)) return refused("not-a-turn");
  return transform(unit, edit.items, edit.copy, turning(edit.about, cosine, sine));
}

export function paste(unit: UnitDraft, { clip, dx, dy }: Paste): EditOutcome {
  return pasteClip(
    unit,
    placeClip(clip, { map: (place) => shifted(place, dx, dy), isMirror: false, swapsAxes: false }),
  );
}

/** The reflection in the line through two points, or null where they coincide. Exact along an axis. */
function mirroring(from: Position, to: Position): Placement | null {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const square = dx * dx + dy * dy;
  if (!(square > 0)) return null;
  const map = ([x, y]: Position): Position => {
    if (dx === 0) return tidyPosition([2 * from[0] - x, y]);
    if (dy === 0) return tidyPosition([x, 2 * from[1] - y]);
    const share = (2 * ((x - from[0]) * dx + (y - from[1]) * dy)) / square;
    return tidyPosition([2 * from[0] + share * dx - x, 2 * from[1] + share * dy - y]);
  };
  return { map, isMirror: true, swapsAxes: Math.abs(2 * dx * dy) > Math.abs(dx * dx - dy * dy) };
}

/** The reflection x → sum − x, which exchanges two places whose x add up to `sum`. */
export function mirroringAcross(sum: Mm): Placement {
  return { map: ([x, y]) => tidyPosition([sum - x, y]), isMirror: true, swapsAxes: false };
}

/** The counter-clockwise turn about a point. */
function turning(about: Position, cosine: number, sine: number): Placement {
  const map = ([px, py]: Position): Position => {
    const x = px - about[0];
    const y = py - about[1];
    return tidyPosition([about[0] + x * cosine - y * sine, about[1] + x * sine + y * cosine]);
  };
  return { map, isMirror: false, swapsAxes: Math.abs(sine) > Math.abs(cosine) };
}

/** A wall carried by a placement. Openings and pins keep their measures: they run from the end that was carried. */
export function placeWall<W extends Wall>(wall: W, { map, isMirror }: Placement): W {
  const justify = isMirror ? otherJustify(wall.justify) : wall.justify;
  return { ...wall, from: map(wall.from), to: map(wall.to), justify };
}

/** A room's label carried by a placement, and with it the way its slab panels lie. */
function placeRoom<R extends RoomLabel>(room: R, { map, swapsAxes }: Placement): R {
  const { soffitAlong } = room;
  const placed = { ...room, at: map(room.at) };
  if (soffitAlong === undefined || !swapsAxes) return placed;
  return { ...placed, soffitAlong: soffitAlong === "x" ? "y" : "x" };
}

/** A clip carried by a placement. */
function placeClip(clip: Clip, placement: Placement): Clip {
  const { map } = placement;
  return {
    ...clip,
    walls: clip.walls.map((wall) => placeWall(wall, placement)),
    loose: clip.loose.map((opening) => ({ ...opening, centre: map(opening.centre) })),
    rooms: clip.rooms.map((room) => placeRoom(room, placement)),
    slabs: clip.slabs.map((slab) => ({ ...slab, outline: slab.outline.map(map) })),
    slabOpenings: clip.slabOpenings.map((hole) => ({ ...hole, outline: hole.outline.map(map) })),
    services: clip.services.map((service) => ({ ...service, path: service.path.map(map) })),
    controlLines: clip.controlLines.map((line) => ({ ...line, from: map(line.from), to: map(line.to) })),
  };
}

function transform(
  unit: UnitDraft,
  items: readonly ItemRef[],
  copy: boolean,
  placement: Placement,
): EditOutcome {
  const missing = items.find(({ bucket, id }) => find<unknown>(unit[bucket], id) === undefined);
  if (missing !== undefined) return refused("no-such-item", missing.id);
  if (copy) return pasteClip(unit, placeClip(copyItems(unit, items), placement));
  for (const item of items) {
    const wall = item.bucket === "walls" ? find(unit.walls, item.id) : undefined;
    const room = item.bucket === "rooms" ? find(unit.rooms, item.id) : undefined;
    if (wall !== undefined) put(unit.walls, placeWall(wall, placement));
    else if (room !== undefined) put(unit.rooms, placeRoom(room, placement));
    else moveLoose(unit, item, placement.map);
  }
  return done();
}
