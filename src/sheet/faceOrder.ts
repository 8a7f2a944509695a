// Letters of the faces, where the work starts and closes, and which way it runs along each face.
//
//        C →            Faces are lettered clockwise, A is the wall with the door. The ribbon is cut at the start
//    ┌───────┐ close    corner; from there the work runs both ways and meets at the closing corner, so that the
//  B │       │ D ←      closing piece is the filler there: last in, first out.
//    └───────┘
//  start  A ←

import type { FaceOpening, FilledFace } from "../fill/result.ts";
import { comparePoints, distance } from "../geom/point.ts";
import type { Position } from "../plan/project.ts";
import { type FaceRing, ringsOf, turnAt } from "./faceRing.ts";
import type { SheetInfo } from "./info.ts";
import { closesAt } from "./pieceKind.ts";
import { WORDS } from "./words.ts";

export interface SheetFace {
  readonly face: FilledFace;
  readonly letter: string;
  /** Which way the work runs along it, as the assembler sees it. */
  readonly direction: "right" | "left";
  /** Place in the order of work among the faces of its ring, from 0. */
  readonly rank: number;
}

export interface SheetCorner {
  /** Letters of the face on the left and of the face on the right. */
  readonly name: string;
  readonly at: Position;
  readonly turn: "inside" | "outside";
  readonly role: "start" | "close" | null;
  /** What stands over its head: the role in the words of the sheet. */
  readonly roleWord: string | null;
}

export interface SheetRing {
  /** Left to right as the assembler sees them, from the start corner. */
  readonly faces: readonly SheetFace[];
  /** `corners[i]` stands where `faces[i]` begins; null only at the loose end of faces that do not close. */
  readonly corners: readonly (SheetCorner | null)[];
  readonly isClosed: boolean;
}

// I and O are left out: beside digits they read as 1 and 0.
const LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

/** A to Z without I and O, then AA, BB and so on. */
export function faceLetter(index: number): string {
  return LETTERS[index % LETTERS.length]!.repeat(1 + Math.floor(index / LETTERS.length));
}

/** "AB", or "Z-AA" once letters are doubled. */
function cornerName(left: string, right: string): string {
  return left.length === 1 && right.length === 1 ? left + right : `${left}-${right}`;
}

/** Rings of the faces with letters given through: first the ring of the room, then columns and what stands free. */
export function sheetRings(faces: readonly FilledFace[], info: SheetInfo): readonly SheetRing[] {
  let letters = 0;
  return ringsOf(faces).map((ring) => {
    const first = letters;
    letters += ring.faces.length;
    return orderedRing(ring, first, info);
  });
}

function orderedRing(ring: FaceRing, firstLetter: number, info: SheetInfo): SheetRing {
  const count = ring.faces.length;
  const lettered = ring.isClosed ? rotated(ring.faces, doorFace(ring.faces)) : ring.faces;
  const letters = lettered.map((_, index) => faceLetter(firstLetter + index));
  const { start, close } = ring.isClosed ? startAndClose(lettered, info) : { start: 0, close: count };
  const faces: SheetFace[] = [];
  const corners: (SheetCorner | null)[] = [];
  for (let step = 0; step < count; step++) {
    const index = (start + step) % count;
    const before = (index + count - 1) % count;
    const isRight = step < close;
    faces.push({
      face: lettered[index]!,
      letter: letters[index]!,
      direction: isRight ? "right" : "left",
      rank: isRight ? rankOf(step, count - close) : rankOf(count - 1 - step, close, 1),
    });
    const role = !ring.isClosed || count < 3 ? null : step === 0 ? "start" : step === close ? "close" : null;
    corners.push(
      !ring.isClosed && step === 0
        ? null
        : {
            name: cornerName(letters[before]!, letters[index]!),
            at: lettered[index]!.from,
            turn: turnAt(lettered[before]!, lettered[index]!),
            role,
            roleWord: role === null ? null : WORDS[info.language][role],
          },
    );
  }
  return { faces, corners, isClosed: ring.isClosed };
}

/** Both sides take turns as long as both have faces left, the right one first. */
function rankOf(step: number, otherSide: number, turn: 0 | 1 = 0): number {
  return step + Math.min(otherSide, step + turn);
}

function rotated<T>(list: readonly T[], start: number): readonly T[] {
  return [...list.slice(start), ...list.slice(0, start)];
}

function isDoor(opening: FaceOpening): boolean {
  return opening.sill === 0;
}

/** Index of the face with a door (else with any opening, else of all) whose beginning has the least x, then y. */
function doorFace(faces: readonly FilledFace[]): number {
  const best = [
    (face: FilledFace) => face.openings.some(isDoor),
    (face: FilledFace) => face.openings.length > 0,
  ]
    .map((has) => faces.filter(has))
    .find((some) => some.length > 0);
  const first = [...(best ?? faces)].sort((a, b) => comparePoints(a.from, b.from))[0]!;
  return faces.indexOf(first);
}

/**
 * The start corner has the fewest closing ends beside it, is then the farthest from the nearest door, then has the
 * least x, then y. The closing corner has a closing end beside it, is then the farthest from the start along the ring,
 * then has the most closing ends, the least x, the least y. Given as index of the start and as faces from the start to the close.
 */
function startAndClose(
  faces: readonly FilledFace[],
  info: SheetInfo,
): { readonly start: number; readonly close: number } {
  const count = faces.length;
  const doors = faces.flatMap((face) => face.openings.filter(isDoor).map((door) => openingPlace(face, door)));
  const corners = faces.map((face, index) => ({
    index,
    at: face.from,
    closing:
      Number(closesAt(face, "from", info)) +
      Number(closesAt(faces[(index + count - 1) % count]!, "to", info)),
    toDoor: Math.min(...doors.map((door) => distance(door, face.from))),
  }));
  const farther = (a: number, b: number) => (a === b ? 0 : b - a); // both may be infinite
  const start = [...corners].sort(
    (a, b) => a.closing - b.closing || farther(a.toDoor, b.toDoor) || comparePoints(a.at, b.at),
  )[0]!.index;
  const walk = faces.map((_, step) => faces.slice(0, step)).map((passed) => length(passed)); // from face 0
  const perimeter = length(faces);
  const away = (index: number) => {
    const right = (walk[index]! - walk[start]! + perimeter) % perimeter;
    return Math.min(right, perimeter - right);
  };
  const close = corners
    .filter(({ index }) => index !== start)
    .sort(
      (a, b) =>
        Math.min(b.closing, 1) - Math.min(a.closing, 1) ||
        away(b.index) - away(a.index) ||
        b.closing - a.closing ||
        comparePoints(a.at, b.at),
    )[0];
  return { start, close: close === undefined ? count : (close.index - start + count) % count };
}

function length(faces: readonly FilledFace[]): number {
  return faces.reduce((sum, face) => sum + face.length, 0);
}

function openingPlace(face: FilledFace, opening: FaceOpening): Position {
  const share = face.length === 0 ? 0 : (opening.x + opening.width / 2) / face.length;
  return [
    face.from[0] + (face.to[0] - face.from[0]) * share,
    face.from[1] + (face.to[1] - face.from[1]) * share,
  ];
}
