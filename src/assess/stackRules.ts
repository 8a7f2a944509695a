// Do the pieces of a face tile it with no overlap, and are their level joints as high on both faces of a wall?

import type { FacePiece, FilledFace } from "../fill/result.ts";
import type { Mm } from "../units.ts";
import type { CheckedEntry } from "./entry.ts";
import { SAME_PLACE, wallSides } from "./wallSides.ts";
import { type Finding, nothingToCheck, type WholeRule } from "./wholeRule.ts";

export const STACK_RULES: readonly WholeRule[] = [
  {
    kind: "faces-tiled",
    rule: "pieces, openings and open places make up each face exactly, none over another",
    find: ({ fill }) => fill.faces.filter((face) => !isTiled(face)).map(({ id }) => `face ${id}`),
  },
  {
    kind: "joint-levels",
    rule: "level joints between panels are as high on both faces of a wall, as far up as both have panels",
    find: jointLevels,
  },
  {
    kind: "joints-opposite",
    rule: "wherever both faces of a wall carry panels a joint of one faces a joint of the other, 2.5 mm at most beside it",
    find: lonelyJoints,
  },
];

interface Rectangle {
  readonly x: Mm;
  readonly z: Mm;
  readonly width: Mm;
  readonly height: Mm;
}

function isTiled({ length, height, pieces, unfilled, openings }: FilledFace): boolean {
  const bands = openings
    .filter(({ formed }) => formed === "band")
    .map(({ x, width, sill, head }) => ({ x, z: sill, width, height: Math.min(head, height) - sill }));
  const parts: readonly Rectangle[] = [...pieces, ...unfilled, ...bands];
  const area = parts.reduce((sum, each) => sum + each.width * each.height, 0);
  if (area !== length * height) return false;
  const sorted = [...parts].sort((a, b) => a.x - b.x);
  return sorted.every(
    (a, k) =>
      a.x >= 0 &&
      a.z >= 0 &&
      a.x + a.width <= length &&
      a.z + a.height <= height &&
      !sorted.slice(k + 1).some((b) => overlaps(a, b)),
  );
}

function overlaps(a: Rectangle, b: Rectangle): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.z < b.z + b.height && b.z < a.z + a.height;
}

function jointLevels({ fill }: CheckedEntry): Finding {
  const sides = wallSides(fill.faces);
  if (sides.length === 0) return nothingToCheck("no wall has two faces opposite one another");
  const known = new Map<FilledFace, Levels>();
  const levelsOf = (face: FilledFace) => {
    const levels = known.get(face) ?? levelsIn(face);
    known.set(face, levels);
    return levels;
  };
  return sides.flatMap(({ a, b }) => {
    const [one, other] = [levelsOf(a), levelsOf(b)];
    const top = Math.min(one.top, other.top);
    const differing = [...one.joints, ...other.joints].filter(
      (z) => z < top && one.joints.has(z) !== other.joints.has(z),
    );
    return differing.map((z) => `faces ${a.id} and ${b.id} at ${z} mm`);
  });
}

interface Levels {
  readonly joints: ReadonlySet<Mm>;
  /** Of the panels, under connector or cap. */
  readonly top: Mm;
}

// Over and under openings panels have heights of their own: whole columns alone tell the stack.
function levelsIn({ pieces, openings }: FilledFace): Levels {
  const columns = pieces.filter(
    ({ family, x, width }) =>
      (family === "wall-panel" || family === "closure-strip") &&
      !openings.some((o) => o.formed === "band" && o.x < x + width && x < o.x + o.width),
  );
  const tops = columns.map(({ z, height }) => z + height);
  return { joints: new Set(tops), top: Math.max(0, ...tops) };
}

function lonelyJoints({ fill }: CheckedEntry): Finding {
  const sides = wallSides(fill.faces);
  if (sides.length === 0) return nothingToCheck("no wall has two faces opposite one another");
  return sides.flatMap(({ a, b, across }) => {
    // The faces are walked against one another: the way across is its own inverse.
    const back = across(0);
    return [...lonely(a, b, across), ...lonely(b, a, (x) => back - x)];
  });
}

function lonely(from: FilledFace, to: FilledFace, across: (x: Mm) => Mm): readonly string[] {
  const panels = from.pieces.filter(isPanel);
  const opposite = to.pieces.filter(isPanel);
  return panels.flatMap((piece) => {
    const z = piece.z + piece.height / 2;
    const isJoint = panels.some(
      (other) => Math.abs(other.x + other.width - piece.x) <= SAME_PLACE && isAt(other, z),
    );
    const place = across(piece.x);
    const over = opposite.find(
      ({ x, width, ...rest }) => x + SAME_PLACE < place && place < x + width - SAME_PLACE && isAt(rest, z),
    );
    return isJoint && over !== undefined
      ? [`face ${from.id} at ${piece.x} mm, before the middle of ${over.piece} on ${to.id}`]
      : [];
  });
}

function isPanel({ family }: FacePiece): boolean {
  return family === "wall-panel" || family === "closure-strip";
}

function isAt({ z, height }: Pick<FacePiece, "z" | "height">, at: Mm): boolean {
  return z < at && at < z + height;
}
