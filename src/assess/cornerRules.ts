// Does each face answer the corners and joining walls of the other: the outer run the inner one, one piece each stem?
//
//      v ┬─ e + leg ─┬──────            ───────┬── leg + t + leg ──┬───────
//        │  (e = ta) │                         │    one piece      │
//        │   p ┬─leg─┼──────            ───────┴─leg┐  stem  ┌─leg─┴───────
//
// At a corner the outer piece is as much longer than the inner leg as the corner v lies beyond the corner p.

import type { FilledFace, UnitFill } from "../fill/result.ts";
import { alongLine, asideOfLine } from "../geom/line.ts";
import { ruleValue } from "../kit/kit.ts";
import type { Position } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { CheckedEntry } from "./entry.ts";
import { isEdge, isOpenAt, lineOf, SAME_PLACE } from "./wallSides.ts";
import { type Finding, kitFigure, nothingToCheck, type WholeRule } from "./wholeRule.ts";

export const CORNER_RULES: readonly WholeRule[] = [
  {
    kind: "outer-runs",
    rule: "opposite the leg end of each inside corner the outer face has a joint: its run is the inner one and the adjoining wall",
    find: outerRuns,
  },
  {
    kind: "joining-pieces",
    rule: "opposite each joining wall stand one piece, or one and a closure, from leg end to leg end, no wider than the kit's rule tieSpacing",
    find: joiningPieces,
    inputs: ({ kit }) => kitFigure("greatest width (tieSpacing)", ruleValue(kit, "tieSpacing"), "mm"),
  },
];

/** Walls meet within this of one another, mm: no outer corner farther off belongs to an inner one. */
const NEAR: Mm = 1200;
/** Sine of the angle up to which two faces count as parallel. */
const PARALLEL = 0.002;

/** An inside corner: `before` ends in it, `behind` begins in it. */
interface InsideCorner {
  readonly at: Position;
  readonly before: FilledFace;
  readonly behind: FilledFace;
  readonly legBefore: Mm;
  readonly legBehind: Mm;
  /** Half way up the lowest corner piece. */
  readonly z: Mm;
}

function insideCorners(fill: UnitFill): readonly InsideCorner[] {
  const found = new Map<string, { before?: Side; behind?: Side }>();
  for (const face of fill.faces) {
    for (const { family, piece, x, z, width, height } of face.pieces) {
      if (family !== "inside-corner" || z !== 0) continue;
      const sides = found.get(piece) ?? {};
      const side = { face, leg: width, z: z + height / 2 };
      found.set(piece, x === 0 ? { ...sides, behind: side } : { ...sides, before: side });
    }
  }
  return [...found.values()].flatMap(({ before, behind }): readonly InsideCorner[] => {
    if (before === undefined || behind === undefined) return [];
    const at = behind.face.settled[0];
    const legs = { legBefore: before.leg, legBehind: behind.leg };
    return [{ at, before: before.face, behind: behind.face, ...legs, z: before.z }];
  });
}

interface Side {
  readonly face: FilledFace;
  readonly leg: Mm;
  readonly z: Mm;
}

function outerRuns({ fill }: CheckedEntry): Finding {
  const corners = insideCorners(fill);
  if (corners.length === 0) return nothingToCheck("the fill has no inside corners");
  const ends = outerCorners(fill);
  return corners.flatMap((corner): readonly string[] => {
    const outer = ends.find((each) => answers(corner, each));
    if (outer === undefined) return [];
    const { at, before, behind, legBefore, legBehind, z } = corner;
    // How far the outer corner lies beyond the inner one, along either face.
    const beyondBehind = -alongLine(lineOf(behind), outer.at);
    const beyondBefore = alongLine(lineOf(before), outer.at) - alongLine(lineOf(before), at);
    const wanted = [
      { face: outer.before, x: outer.before.length - beyondBehind - legBehind, inner: behind },
      { face: outer.behind, x: beyondBefore + legBefore, inner: before },
    ];
    return (
      wanted
        .filter(({ face, x }) => x > 0 && x < face.length && !isEdge(face, x, z) && !isOpenAt(face, x, z))
        // A leg of the outer face's own corner stands there: another wall joins, and forces its own joints.
        .filter(({ face, x }) => !isInLeg(face, x, z))
        .map(
          ({ face, x, inner }) =>
            `face ${face.id} at ${Math.round(x)} mm, opposite the corner of ${inner.id}`,
        )
    );
  });
}

function isInLeg({ pieces }: FilledFace, at: Mm, height: Mm): boolean {
  return pieces.some(
    ({ family, x, z, width, height: tall }) =>
      family === "inside-corner" && x < at && at < x + width && z < height && height < z + tall,
  );
}

interface OuterCorner {
  readonly at: Position;
  readonly before: FilledFace;
  readonly behind: FilledFace;
}

/** Corners at which the concrete is convex. */
function outerCorners({ faces }: UnitFill): readonly OuterCorner[] {
  const starts = new Map<string, FilledFace[]>();
  const keyOf = ([x, y]: Position) => `${Math.round(x)} ${Math.round(y)}`;
  for (const face of faces) {
    if (face.length === 0) continue;
    const key = keyOf(face.settled[0]);
    starts.set(key, [...(starts.get(key) ?? []), face]);
  }
  return faces
    .filter(({ length }) => length > 0)
    .flatMap((before) =>
      (starts.get(keyOf(before.settled[1])) ?? [])
        .filter((behind) => turn(before, behind) > PARALLEL)
        .map((behind) => ({ at: before.settled[1], before, behind })),
    );
}

/** Sine of the turn to the left from one face to the next. */
function turn(a: FilledFace, b: FilledFace): number {
  const [u, v] = [lineOf(a), lineOf(b)];
  return u.ux * v.uy - u.uy * v.ux;
}

function answers({ at, before, behind }: InsideCorner, outer: OuterCorner): boolean {
  const apart = Math.max(Math.abs(outer.at[0] - at[0]), Math.abs(outer.at[1] - at[1]));
  if (apart > NEAR || !isOpposed(behind, outer.before) || !isOpposed(before, outer.behind)) return false;
  return asideOfLine(lineOf(before), outer.at) > 0 && asideOfLine(lineOf(behind), outer.at) > 0;
}

function isOpposed(a: FilledFace, b: FilledFace): boolean {
  const [u, v] = [lineOf(a), lineOf(b)];
  return u.ux * v.ux + u.uy * v.uy < 0 && Math.abs(turn(a, b)) <= PARALLEL;
}

function joiningPieces({ fill, kit }: CheckedEntry): Finding {
  const corners = insideCorners(fill);
  const stems = corners.flatMap((left) =>
    corners.flatMap((right) => (isStem(left, right) ? [{ left, right }] : [])),
  );
  if (stems.length === 0) return nothingToCheck("no wall joins another between its ends");
  const greatest = ruleValue(kit, "tieSpacing") ?? Number.POSITIVE_INFINITY;
  return stems.flatMap(({ left, right }) => {
    const through = lineOf(left.before);
    const from = alongLine(through, left.at) - left.legBefore;
    const to = alongLine(through, right.at) + right.legBehind;
    return fill.faces
      .filter((face) => isOpposed(left.before, face) && face.length > 0)
      .flatMap((face): readonly string[] => {
        const aside = asideOfLine(through, face.settled[0]);
        if (aside <= 0 || aside > NEAR / 2) return [];
        // The far face is walked the other way.
        const low = alongLine(lineOf(face), pointOf(through, to));
        const high = low + (to - from);
        if (low < -SAME_PLACE || high > face.length + SAME_PLACE) return [];
        return isOnePiece(face, { low, high, z: left.z, greatest })
          ? []
          : [`face ${face.id} from ${Math.round(low)} to ${Math.round(high)} mm`];
      });
  });
}

function pointOf(line: ReturnType<typeof lineOf>, along: Mm): Position {
  return [line.x + line.ux * along, line.y + line.uy * along];
}

// The through wall's near face ends at the left of the stem and goes on at its right.
function isStem(left: InsideCorner, right: InsideCorner): boolean {
  if (left === right || !isOpposed(left.behind, right.before)) return false;
  const through = lineOf(left.before);
  const gap = alongLine(through, right.at) - alongLine(through, left.at);
  if (gap <= 0 || gap > NEAR / 2 || Math.abs(asideOfLine(through, right.at)) > SAME_PLACE) return false;
  return (
    Math.abs(turn(left.before, right.behind)) <= PARALLEL && asideOfLine(lineOf(left.behind), right.at) > 0
  );
}

function isOnePiece(
  face: FilledFace,
  { low, high, z, greatest }: { readonly low: Mm; readonly high: Mm; readonly z: Mm; readonly greatest: Mm },
): boolean {
  const pieces = face.pieces.filter(
    (piece) =>
      piece.z < z &&
      z < piece.z + piece.height &&
      piece.x + piece.width > low + SAME_PLACE &&
      piece.x < high - SAME_PLACE,
  );
  // A wall that joins on this side too, an opening, or what stays open: no piece is asked for here.
  const middle = (low + high) / 2;
  if (pieces.some(({ family }) => family === "inside-corner") || isOpenAt(face, middle, z)) return true;
  if (isOpenAt(face, low + SAME_PLACE, z) || isOpenAt(face, high - SAME_PLACE, z)) return true;
  const panels = pieces.filter(({ family }) => family !== "closure-strip");
  const width = pieces.reduce((sum, piece) => sum + piece.width, 0);
  const fits = pieces.every(
    (piece) => piece.x >= low - SAME_PLACE && piece.x + piece.width <= high + SAME_PLACE,
  );
  return panels.length <= 1 && pieces.length - panels.length <= 1 && width <= greatest && fits;
}
