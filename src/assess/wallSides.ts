// Which face stands opposite which across the concrete, by geometry alone: without the ties that are to be judged by it.
//
//   ├──── a ────▶┤           concrete is on the left of either; a place along one is a place along the other
//   ◀──── b ─────

import type { FacePiece, FilledFace } from "../fill/result.ts";
import { alongLine, asideOfLine, type Line, lineThrough, pointAt } from "../geom/line.ts";
import type { Mm } from "../units.ts";

/** Two faces of one wall, over the stretch of `a` in which `b` is opposite. */
export interface WallSides {
  readonly a: FilledFace;
  readonly b: FilledFace;
  readonly thickness: Mm;
  readonly from: Mm;
  readonly to: Mm;
  /** The place along `b` opposite a place along `a`. */
  readonly across: (x: Mm) => Mm;
}

/** Thicker concrete is no wall that ties go through. */
const THICKEST: Mm = 600;
/** Sine of the angle up to which two faces count as parallel. */
const PARALLEL = 0.002;
const LEAST_OVERLAP: Mm = 20;
/** How far apart two places may be and count as one: the tie's tolerance and what settling moves. */
export const SAME_PLACE: Mm = 2.5;

/** Every pair once. Cost: the square of the number of faces. */
export function wallSides(faces: readonly FilledFace[]): readonly WallSides[] {
  const lined = faces.filter(({ length }) => length > 0).map((face) => ({ face, line: lineOf(face) }));
  const found: WallSides[] = [];
  lined.forEach(({ face: a, line }, k) => {
    for (const { face: b, line: other } of lined.slice(k + 1)) {
      if (line.ux * other.ux + line.uy * other.uy >= 0) continue;
      if (Math.abs(line.ux * other.uy - line.uy * other.ux) > PARALLEL) continue;
      const thickness = asideOfLine(line, [other.x, other.y]);
      if (thickness <= 0 || thickness > THICKEST) continue;
      const from = Math.max(0, alongLine(line, pointAt(other, b.length, 0)));
      const to = Math.min(a.length, alongLine(line, [other.x, other.y]));
      if (to - from < LEAST_OVERLAP) continue;
      const across = (x: Mm) => alongLine(other, pointAt(line, x, 0));
      found.push({ a, b, thickness, from, to, across });
    }
  });
  return found.filter((pair) => !found.some((nearer) => isBetween(nearer, pair)));
}

// Behind a void in the wall stands another face: the nearer one is opposite.
function isBetween(nearer: WallSides, pair: WallSides): boolean {
  if (nearer.a !== pair.a && nearer.b !== pair.b) return false;
  if (nearer.thickness >= pair.thickness) return false;
  if (nearer.a !== pair.a) return true;
  return Math.min(nearer.to, pair.to) - Math.max(nearer.from, pair.from) >= LEAST_OVERLAP;
}

/**
 * The line along which places of a face are measured. Along an axis its settled ends; aslant these lie beside it by up to
 * the rounding of two places, and the drawn ends are nearer.
 */
export function lineOf({ settled: [a, b], from, to }: FilledFace): Line {
  return a[0] === b[0] || a[1] === b[1] ? lineThrough(a, b) : lineThrough(from, to);
}

/** The pieces that end and begin at a place of a face at a height; a joint has both. */
export function piecesAt(
  face: FilledFace,
  x: Mm,
  z: Mm,
): { readonly before: FacePiece | undefined; readonly behind: FacePiece | undefined } {
  const there = face.pieces.filter((piece) => piece.z < z && z < piece.z + piece.height);
  return {
    before: there.find((piece) => Math.abs(piece.x + piece.width - x) <= SAME_PLACE),
    behind: there.find((piece) => Math.abs(piece.x - x) <= SAME_PLACE),
  };
}

/** Whether a place at a height is where a piece, an opening, the face or what stays open begins or ends. */
export function isEdge(face: FilledFace, x: Mm, z: Mm): boolean {
  const at = (place: Mm) => Math.abs(place - x) <= SAME_PLACE;
  if (at(0) || at(face.length)) return true;
  const { before, behind } = piecesAt(face, x, z);
  if (before !== undefined || behind !== undefined) return true;
  return face.openings.some((o) => at(o.x) || at(o.x + o.width));
}

/** Whether the face has no form of its own at a place: an opening, or what stays open. */
export function isOpenAt(face: FilledFace, x: Mm, z: Mm): boolean {
  const holds = (low: Mm, width: Mm, foot: Mm, top: Mm) =>
    low - SAME_PLACE <= x && x <= low + width + SAME_PLACE && foot <= z && z <= top;
  return (
    face.openings.some((o) => o.formed === "band" && holds(o.x, o.width, o.sill, o.head)) ||
    face.unfilled.some((u) => holds(u.x, u.width, u.z, u.z + u.height))
  );
}
