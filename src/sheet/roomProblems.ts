// Which of a unit's problems belong on which sheet.

import type { Problem, UnitFill } from "../fill/result.ts";
import { alongFace, type RoomParts } from "../fill/roomParts.ts";

/** A problem with the number it carries on every sheet and on the screen: its place in the fill, from 1. */
export interface NumberedProblem {
  readonly number: number;
  readonly problem: Problem;
}

/** Farthest from a face that a place in the plan is still about it, mm: the thickness of a stout wall. */
const NEAR_FACE = 400;

/** The problems of one room or the outside, errors first. What points at no place of any sheet is on every sheet. */
export function problemsOf(
  parts: RoomParts,
  all: readonly RoomParts[],
  unit: UnitFill,
): readonly NumberedProblem[] {
  const numbered = unit.problems.map((problem, index) => ({ number: index + 1, problem }));
  const isHere = ({ number, problem }: NumberedProblem) =>
    concerns(parts, problem, number) || !all.some((other) => concerns(other, problem, number));
  const rank = { error: 0, warning: 1 };
  return numbered
    .filter(isHere)
    .sort((a, b) => rank[a.problem.severity] - rank[b.problem.severity] || a.number - b.number);
}

function concerns(parts: RoomParts, { where }: Problem, number: number): boolean {
  const { faces } = parts;
  if (where.room !== undefined && !parts.isOutside && where.room === parts.name) return true;
  const at = where.at;
  // A mass concerns whoever lifts the piece.
  if (where.code !== undefined && placeless(where)) return holds(parts, where.code);
  return faces.some(
    (face) =>
      face.id === where.face ||
      face.unfilled.some((gap) => gap.problem === number - 1) ||
      (where.wall !== undefined && face.walls.includes(where.wall)) ||
      (where.opening !== undefined && face.openings.some(({ id }) => id === where.opening)) ||
      (at !== undefined && isNear(face, at)),
  );
}

function isNear(face: RoomParts["faces"][number], at: readonly [number, number]): boolean {
  const { x, off } = alongFace(face, at);
  return off <= NEAR_FACE && x >= -NEAR_FACE && x <= face.length + NEAR_FACE;
}

function placeless({ face, room, wall, opening, at }: Problem["where"]): boolean {
  return [face, room, wall, opening, at].every((place) => place === undefined);
}

function holds(parts: RoomParts, code: string): boolean {
  const pieces = [
    ...parts.faces.flatMap((face) => face.pieces),
    ...parts.reveals.flatMap((reveal) => reveal.pieces),
  ];
  return [...pieces, ...parts.edges, ...parts.fittings].some((piece) => piece.code === code);
}
