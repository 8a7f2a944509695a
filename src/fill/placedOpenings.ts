// Puts the openings of a unit on the two faces they pierce, and reports those that have no place there.
//
// An opening counts only where its whole width lies on one face on either side of its wall; one that runs into a
// corner or a joining wall is left out of the fill with an error, never squeezed in.

import type { Opening, Position, Unit, Wall } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { FormedFace } from "./formedFace.ts";
import { type LineOfWall, placeOf } from "./lines.ts";
import { lengthText, type ProblemLog } from "./problems.ts";

/** An opening on its line of wall, jambs as drawn. */
export interface PlacedOpening {
  readonly opening: Opening;
  readonly line: number;
  readonly low: Mm;
  readonly high: Mm;
  /** The formed faces it pierces: on the wall's left and on its right. */
  readonly faces: readonly [number, number];
}

const SLACK = 2; // mm: a jamb may overrun the end of its face by the tie tolerance; settling brings it back

export interface OpeningContext {
  readonly unit: Unit;
  readonly faces: readonly FormedFace[];
  readonly lines: readonly LineOfWall[];
  readonly lineOfFace: readonly number[];
  /** Floor to soffit before a face: less where the room's soffit is dropped. */
  readonly clearHeightAt: (face: number) => Mm;
  readonly log: ProblemLog;
}

/** The openings that can be formed, by line and place along it. */
export function placeOpenings(context: OpeningContext): readonly PlacedOpening[] {
  const { unit, faces } = context;
  const walls = new Map(unit.walls.map((wall) => [wall.id, wall]));
  const sides = facesBySide(faces, unit);
  const placed: PlacedOpening[] = [];
  for (const opening of unit.openings) {
    const wall = walls.get(opening.wall);
    if (wall === undefined) continue; // the reader of the file refuses it
    const found = placeOne(opening, wall, sides, context);
    if (found !== null) placed.push(found);
  }
  placed.sort((a, b) => a.line - b.line || a.low - b.low || b.high - a.high || a.faces[0] - b.faces[0]);
  return withoutOverlaps(placed, context.log);
}

type Sides = ReadonlyMap<string, { readonly left: readonly number[]; readonly right: readonly number[] }>;

function facesBySide(faces: readonly FormedFace[], unit: Unit): Sides {
  const sides = new Map<string, { left: number[]; right: number[] }>();
  if (unit.openings.length === 0) return sides;
  for (const face of faces) {
    for (const part of face.outlineFace.walls) {
      if (part.side !== "left" && part.side !== "right") continue;
      const entry = sides.get(part.wall) ?? { left: [], right: [] };
      entry[part.side].push(face.index);
      sides.set(part.wall, entry);
    }
  }
  return sides;
}

function placeOne(
  opening: Opening,
  wall: Wall,
  sides: Sides,
  { faces, lines, lineOfFace, clearHeightAt, log }: OpeningContext,
): PlacedOpening | null {
  const where = { wall: wall.id, opening: opening.id };
  const dx = wall.to[0] - wall.from[0];
  const dy = wall.to[1] - wall.from[1];
  const length = Math.sqrt(dx * dx + dy * dy);
  const [before, beyond] = [-opening.at, opening.at + opening.width - length];
  const over = Math.max(before, beyond);
  if (over > SLACK) {
    const message =
      `Opening ${opening.id} reaches ${lengthText(over)} mm beyond the ${before > beyond ? "start" : "end"} of wall ` +
      `${wall.id}, which is ${lengthText(length)} mm long: move it along the wall or make it narrower. It is left out of the fill.`;
    log.add("error", "opening-outside-wall", message, where);
    return null;
  }
  const at = (distance: Mm): Position => [
    wall.from[0] + (dx * distance) / length,
    wall.from[1] + (dy * distance) / length,
  ];
  const jambs = [at(opening.at), at(opening.at + opening.width)] as const;
  const candidates = sides.get(wall.id);
  const left = holding(candidates?.left ?? [], jambs, faces);
  const right = holding(candidates?.right ?? [], jambs, faces);
  if (left === null || right === null || lineOfFace[left] !== lineOfFace[right]) {
    const side = left === null ? "left" : "right";
    const message =
      `Opening ${opening.id} in wall ${wall.id} runs into a corner or a joining wall on the wall's ${side} side: ` +
      `move it along the wall. It is left out of the fill.`;
    log.add("error", "opening-at-corner", message, { ...where, at: jambs[0] });
    return null;
  }
  const clearHeight = Math.min(clearHeightAt(left), clearHeightAt(right));
  if (opening.head > clearHeight) {
    const message =
      `Opening ${opening.id} in wall ${wall.id} reaches ${lengthText(opening.head)} mm above the floor; the soffit there is ` +
      `at ${lengthText(clearHeight)} mm: lower its head. It is left out of the fill.`;
    log.add("error", "opening-outside-wall", message, where);
    return null;
  }
  const line = lineOfFace[left]!;
  const a = placeOf(lines[line]!.direction, jambs[0]);
  const b = placeOf(lines[line]!.direction, jambs[1]);
  return { opening, line, low: Math.min(a, b), high: Math.max(a, b), faces: [left, right] };
}

// The face that holds both jambs, or null. A face's own length is the measure, so that oblique walls need no angle.
function holding(
  candidates: readonly number[],
  jambs: readonly [Position, Position],
  faces: readonly FormedFace[],
): number | null {
  for (const index of candidates) {
    const face = faces[index]!;
    const dx = face.to[0] - face.from[0];
    const dy = face.to[1] - face.from[1];
    const length = Math.sqrt(dx * dx + dy * dy);
    if (length === 0) continue;
    const inside = jambs.every((p) => {
      const distance = ((p[0] - face.from[0]) * dx + (p[1] - face.from[1]) * dy) / length;
      return distance >= -SLACK && distance <= length + SLACK;
    });
    if (inside) return index;
  }
  return null;
}

// Of two that overlap the wider stays, of equals the one that begins first: a choice by geometry, not by name.
function withoutOverlaps(placed: readonly PlacedOpening[], log: ProblemLog): readonly PlacedOpening[] {
  const byFace = new Map<number, PlacedOpening[]>();
  const kept = new Set<PlacedOpening>();
  const widestFirst = [...placed].sort(
    (a, b) => b.high - b.low - (a.high - a.low) || a.line - b.line || a.low - b.low,
  );
  for (const next of widestFirst) {
    const others = next.faces.flatMap((face) => byFace.get(face) ?? []);
    const same = others.find((other) => other.high > next.low + SLACK && next.high > other.low + SLACK);
    if (same !== undefined) {
      reportOverlap(same, next, log);
      continue;
    }
    kept.add(next);
    for (const face of next.faces) {
      const list = byFace.get(face);
      if (list === undefined) byFace.set(face, [next]);
      else list.push(next);
    }
  }
  return placed.filter((each) => kept.has(each));
}

function reportOverlap(same: PlacedOpening, next: PlacedOpening, log: ProblemLog): void {
  const by = Math.min(same.high, next.high) - Math.max(same.low, next.low);
  const message =
    `Openings ${same.opening.id} and ${next.opening.id} overlap by ${lengthText(by)} mm in wall ${next.opening.wall}: ` +
    `move one of them. ${next.opening.id} is left out of the fill.`;
  log.add("error", "openings-overlap", message, { wall: next.opening.wall, opening: next.opening.id });
}
