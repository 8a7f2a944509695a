// When are two edges of the outline one straight face?

import { asideOfLine, type Line, lineThrough } from "../geom/line.ts";
import { cross, type Point } from "../geom/point.ts";
import type { Mm } from "../units.ts";
import { ROUNDING, TIE_TOLERANCE } from "./tolerance.ts";

/** A piece of outline, concrete on its left, and the exact line it was drawn on. */
export interface Edge {
  readonly from: Point;
  readonly to: Point;
  readonly line: Line;
  /** How much the line counts where two edges become one, mm. */
  readonly weight: Mm;
  /** Position of the body edge that gave the line, −1 where the line is that of the union itself. */
  readonly source: number;
  /** Whether drawing hairs were taken out of it: then its ends are good to the tolerance only. */
  readonly isMerged: boolean;
}

const LEAST_SLOPE = 0.1; // beyond about 6° two edges are a corner, however short they are

const HAIR_SLOPE = 0.002; // about 0.1°: a bend nobody draws on purpose

/**
 * The two edges as one on the line that counts more, or null where they do not run the same way within the tolerance.
 */
export function joinStraight(a: Edge, b: Edge): Edge | null {
  const turn = cross(a.line.ux, a.line.uy, b.line.ux, b.line.uy);
  if (Math.abs(turn) > LEAST_SLOPE || a.line.ux * b.line.ux + a.line.uy * b.line.uy < 0) return null;
  const isFirst = a.weight > b.weight || (a.weight === b.weight && a.source <= b.source);
  const [long, short] = isFirst ? [a, b] : [b, a];
  const offsets = [short.from, short.to].map((point) => Math.abs(asideOfLine(long.line, point)));
  const aside = Math.max(...offsets);
  if (aside > TIE_TOLERANCE + ROUNDING) return joinOnChord(a, b);
  const isMerged = a.isMerged || b.isMerged || aside > ROUNDING;
  return { from: a.from, to: b.to, line: long.line, weight: long.weight, source: long.source, isMerged };
}

// Two long walls that bend by a hair leave each other's line at their far ends, but not the line between these.
function joinOnChord(a: Edge, b: Edge): Edge | null {
  const turn = Math.abs(cross(a.line.ux, a.line.uy, b.line.ux, b.line.uy));
  const line = turn > HAIR_SLOPE ? null : lineThrough(a.from, b.to);
  if (line === null) return null;
  const aside = Math.max(Math.abs(asideOfLine(line, a.to)), Math.abs(asideOfLine(line, b.from)));
  if (aside > TIE_TOLERANCE + ROUNDING) return null;
  return { from: a.from, to: b.to, line, weight: a.weight + b.weight, source: -1, isMerged: true };
}

/** How far the joining of two edges moves the shorter of them sideways, mm. */
export function movedAside(joined: Edge, part: Edge): number {
  return Math.max(Math.abs(asideOfLine(joined.line, part.from)), Math.abs(asideOfLine(joined.line, part.to)));
}
