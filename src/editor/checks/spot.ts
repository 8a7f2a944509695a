// Where in the plan is what a check is about? A tie, a piece on a face, an opening, a prop or a piece of the soffit, a room.

import type { CheckPlace } from "../../assess/checkDocument.ts";
import type { FilledFace, UnitFill } from "../../fill/result.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import type { FaceSpot, Spot } from "./checkList.ts";

type Place = Pick<CheckPlace, "room" | "piece" | "code" | "at" | "face" | "x" | "z" | "opening">;

/** The spot of a place of an entry; null where it is of the whole unit and nothing of it can be pointed at. */
export function spotOf(where: Place, fill: UnitFill): Spot | null {
  const start: Spot = {
    unit: fill.unit,
    at: where.at,
    face: null,
    opening: where.opening ?? "",
    room: where.room,
    overhead: "no",
  };
  const face = fill.faces.find(({ id }) => id === where.face);
  if (face !== undefined) return { ...start, ...onFace(where, face, fill) };
  const isProp = fill.soffits.some(({ props }) => props.some(({ piece }) => piece === where.piece));
  if (isProp) return { ...start, overhead: "prop" };
  if (start.at !== null || start.opening !== "" || start.room !== "") return start;
  return where.code === "" ? null : firstOfCode(where.code, fill, start);
}

function onFace(where: Place, face: FilledFace, fill: UnitFill): Pick<Spot, "at" | "face"> {
  const z = where.z ?? 0;
  const x = where.x ?? (where.at === null ? 0 : alongFace(face, where.at));
  const tie = fill.ties.find(
    ({ faces, at, code }) => faces.includes(face.id) && code === where.code && isSame(at, where.at),
  );
  const level = tie !== undefined ? "tie" : face.pieces.some(holds(x, z)) ? "piece" : "face";
  return { at: where.at ?? placeOn(face, x), face: faceSpot(face, { fill, level, x, z }) };
}

function faceSpot(
  face: FilledFace,
  given: Pick<FaceSpot, "level" | "x" | "z"> & { readonly fill: UnitFill },
): FaceSpot {
  const { fill, level, x, z } = given;
  // A later storey of a unit has its number in the ids; the plan shows the unit once.
  const id = `${fill.unit}${face.id.slice(face.id.lastIndexOf("/"))}`;
  return { id, walls: face.walls, level, x: Math.round(x), z };
}

function holds(x: Mm, z: Mm) {
  return (piece: { readonly x: Mm; readonly z: Mm; readonly width: Mm; readonly height: Mm }) =>
    piece.x <= x && x < piece.x + piece.width && piece.z <= z && z < piece.z + piece.height;
}

// A check of all pieces of a code shows the first of them.
function firstOfCode(code: string, fill: UnitFill, start: Spot): Spot | null {
  for (const face of fill.faces) {
    const piece = face.pieces.find((each) => each.code === code);
    if (piece !== undefined) {
      const at = placeOn(face, piece.x + piece.width / 2);
      return { ...start, at, face: faceSpot(face, { fill, level: "piece", x: piece.x, z: piece.z }) };
    }
  }
  for (const { pieces } of fill.soffits) {
    const piece = pieces.find((each) => each.code === code);
    if (piece !== undefined) return { ...start, at: middleOf(piece.outline), overhead: "piece" };
  }
  const edge = fill.corners.find((each) => each.code === code);
  return edge === undefined ? null : { ...start, at: [edge.from[0], edge.from[1]] };
}

function middleOf(outline: readonly Position[]): Position {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}

function alongFace({ from, to }: FilledFace, at: Position): Mm {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const drawn = Math.sqrt(dx * dx + dy * dy);
  return drawn === 0 ? 0 : ((at[0] - from[0]) * dx + (at[1] - from[1]) * dy) / drawn;
}

function placeOn({ from, to, length }: FilledFace, x: Mm): Position {
  const part = length === 0 ? 0 : x / length;
  return [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part];
}

function isSame(a: Position, b: Position | null): boolean {
  return b !== null && a[0] === b[0] && a[1] === b[1];
}
