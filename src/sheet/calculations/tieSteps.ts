// What one row of one line of ties carries, written out: the strip piece by piece, then the row as a support of a beam.

import { type Envelope, pressureAt } from "../../check/envelope.ts";
import { linearBeam } from "../../check/linearBeam.ts";
import { type StripPart, type TieLineInput, tieLineLoads } from "../../check/tieRows.ts";
import type { Language } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { carried, stated, worked } from "./figures.ts";
import type { Step } from "./numbersIn.ts";

/** A piece of a strip in which width and slope of the pressure stay the same. */
interface StripPiece {
  readonly from: Mm;
  readonly to: Mm;
  readonly width: Mm;
}

/** The strip between two heights, cut where the width changes and at the knee. */
function stripPieces(
  parts: readonly StripPart[],
  [low, high]: readonly [Mm, Mm],
  knee: Mm,
): readonly StripPiece[] {
  return parts.flatMap(({ from, to, width }): readonly StripPiece[] => {
    const [a, b] = [Math.max(from, low), Math.min(to, high)];
    if (b <= a) return [];
    const places = [a, ...(knee > a && knee < b ? [knee] : []), b];
    return places.slice(1).map((end, k) => ({ from: places[k]!, to: end, width }));
  });
}

/** F = b·(p_1 + p_2)/2·∆z, piece by piece upward, and their sum. */
export function stripSteps(
  line: TieLineInput,
  [from, to]: readonly [Mm, Mm],
  language: Language,
): readonly Step[] {
  const { envelope, surface, parts } = line;
  const fig = (value: number) => carried(value, language);
  const pieces = stripPieces(parts, [from, to], surface - envelope.knee);
  const forces = pieces.map((piece) => pieceForce(piece, envelope, surface));
  const isCapped = envelope.knee < surface - 0.5;
  const steps = pieces.flatMap((piece, index): readonly Step[] => [
    ...(index === 0
      ? [{ formula: `p = ${isCapped ? "min(w·(H − z); P_max)" : "w·(H − z)"}; F = b·(p_1 + p_2)/2·∆z` }]
      : []),
    pressureStep(piece, 1, { envelope, surface, language }),
    pressureStep(piece, 2, { envelope, surface, language }),
    {
      formula: pieces.length === 1 ? "F" : `F_${index + 1}`,
      numbers: `${fig(piece.width / 1000)} × (${fig(at(piece.from, envelope, surface))} + ${fig(at(piece.to, envelope, surface))})/2 × ${fig((piece.to - piece.from) / 1000)}`,
      result: `${worked(forces[index]!, language)} kN`,
    },
  ]);
  if (pieces.length < 2) return steps;
  const sum = forces.reduce((total, force) => total + force, 0);
  const numbers = forces.map((force) => worked(force, language)).join(" + ");
  return [...steps, { formula: "F", numbers, result: `${worked(sum, language)} kN` }];
}

function at(z: Mm, envelope: Envelope, surface: Mm): number {
  return pressureAt(envelope, surface - z);
}

function pieceForce({ from, to, width }: StripPiece, envelope: Envelope, surface: Mm): number {
  return (
    (((width / 1000) * (at(from, envelope, surface) + at(to, envelope, surface))) / 2) * ((to - from) / 1000)
  );
}

function pressureStep(
  piece: StripPiece,
  end: 1 | 2,
  {
    envelope,
    surface,
    language,
  }: { readonly envelope: Envelope; readonly surface: Mm; readonly language: Language },
): Step {
  const fig = (value: number) => carried(value, language);
  const z = end === 1 ? piece.from : piece.to;
  const depth = `(${fig(surface / 1000)} − ${fig(z / 1000)})`;
  const liquid = `${fig(envelope.density)} × ${depth}`;
  const isCapped = envelope.knee < surface - 0.5;
  return {
    formula: `p_${end}`,
    numbers: isCapped ? `min(${liquid}; ${fig(envelope.greatest)})` : liquid,
    result: `${worked(at(z, envelope, surface), language)} kPa`,
  };
}

/** Moments and reactions of the beam over all rows of a line, upward: kN·m and kN. */
export interface BeamTable {
  readonly rows: readonly {
    readonly row: Mm;
    /** From the simple spans on both sides, with all of an overhang. */
    readonly simple: number;
    readonly moment: number;
    readonly reaction: number;
  }[];
}

export function beamTable(line: TieLineInput): BeamTable {
  const supports = line.rows.map((row) => row / 1000);
  const { moments, reactions } = linearBeam(supports, tieLineLoads(line));
  return {
    rows: line.rows.map((row, k) => ({
      row,
      moment: moments[k]!,
      reaction: reactions[k]!,
      simple: reactions[k]! - tilt(supports, moments, k),
    })),
  };
}

/** What the moments at its neighbours add to a support. */
function tilt(supports: readonly number[], moments: readonly number[], k: number): number {
  const side = (other: number) => {
    const [z, moment] = [supports[other], moments[other]];
    return z === undefined || moment === undefined ? 0 : (moment - moments[k]!) / Math.abs(z - supports[k]!);
  };
  return side(k - 1) + side(k + 1);
}

/** R = V + (M_below − M)/L + (M_above − M)/L of one row. */
export function reactionStep({ rows }: BeamTable, k: number, language: Language): Step {
  const fig = (value: number) => worked(value, language);
  const own = rows[k]!;
  const side = (other: number) => {
    const next = rows[other];
    if (next === undefined) return "";
    const length = stated(Math.abs(next.row - own.row) / 1000, language);
    return ` + (${fig(next.moment)} − ${bracketed(own.moment, language)})/${length}`;
  };
  return {
    formula: "R = V + ∑ (M_i − M)/L",
    numbers: `${fig(own.simple)}${side(k - 1)}${side(k + 1)}`,
    result: `${fig(own.reaction)} kN`,
  };
}

function bracketed(value: number, language: Language): string {
  const text = worked(value, language);
  return value < 0 ? `(${text})` : text;
}
