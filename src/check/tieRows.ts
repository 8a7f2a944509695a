// What does each row of one line of ties carry? The pressure over the strip of form that the line holds.
//
//   surface ─┐ \            two answers for each row:
//    row 3 ──●   \          · tributary: the strip halfway to the rows above and below;
//    row 2 ──●     \          the last row takes all to the surface, the first all to the foot
//    row 1 ──●       \      · as the support of a stiff beam over the rows, free at both ends (three-moment equation)
//     foot ──┴────────\
//
// The strip may be narrower or wider at other heights, where openings and neighbours come and go.

import type { KiloNewton, Mm } from "../units.ts";
import { type Envelope, pressureAt } from "./envelope.ts";
import { type LinearLoad, linearBeamReactions, loadAt } from "./linearBeam.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

/** A piece of the strip with one width: `from` and `to` are heights above the floor. */
export interface StripPart {
  readonly from: Mm;
  readonly to: Mm;
  readonly width: Mm;
}

export interface TieLineInput {
  readonly envelope: Envelope;
  /** Height of the free surface above the floor. */
  readonly surface: Mm;
  /** Heights of the ties above the floor, rising. */
  readonly rows: readonly Mm[];
  /** Of the strip, rising, without gaps. */
  readonly parts: readonly StripPart[];
}

export interface RowLoad {
  readonly row: Mm;
  /** The strip of the row. */
  readonly from: Mm;
  readonly to: Mm;
  /** Of the strip, m². */
  readonly area: number;
  readonly tributary: KiloNewton;
  readonly beam: KiloNewton;
}

/** What a tie counts as carrying: the greater of its strip and its share as a support of the beam. */
export function forceOf({ tributary, beam }: RowLoad): KiloNewton {
  return Math.max(tributary, beam);
}

export const TIE_ROWS_FORMULA =
  "F = greater of ∫ p·b dz over the tie's strip and its reaction as support of a stiff beam over the rows of its line";
export const TIE_ROWS_SOURCE =
  "tributary area: US Army EN5151 part C and Univ. of Washington CM 420 lecture 6; beam: three-moment equation, statics";

const ROW = { input: "height of a tie row", least: 0, greatest: 12_000, unit: "mm" } as const;
const SURFACE = { input: "height of the free surface", least: 1, greatest: 12_000, unit: "mm" } as const;
const EDGE = { input: "height of an edge of the strip", least: 0, greatest: 12_000, unit: "mm" } as const;
const WIDTH = { input: "width held by the tie", least: 0, greatest: 20_000, unit: "mm" } as const;

/** Loads row by row, upward; none where the line has no rows. Without a load factor. */
export function tieRowLoads(input: TieLineInput): Answer<readonly RowLoad[]> {
  const { rows, parts } = input;
  const refusal = refusalOf(
    ...rows.map((row) => [row, ROW] as const),
    [input.surface, SURFACE],
    ...parts.flatMap(({ from, to, width }) => [
      [from, EDGE] as const,
      [to, EDGE] as const,
      [width, WIDTH] as const,
    ]),
  );
  if (refusal !== null) return refusal;
  const first = parts[0];
  const last = parts[parts.length - 1];
  if (first === undefined || last === undefined) return computed([]);
  const loads = tieLineLoads(input);
  const beam = linearBeamReactions(
    rows.map((row) => row / 1000),
    loads,
  );
  return computed(
    rows.map((row, k) => {
      const from = k === 0 ? first.from : (rows[k - 1]! + row) / 2;
      const to = k === rows.length - 1 ? last.to : (row + rows[k + 1]!) / 2;
      return {
        row,
        from,
        to,
        area: areaBetween(parts, from, to),
        tributary: loadBetween(loads, from / 1000, to / 1000),
        beam: beam[k]!,
      };
    }),
  );
}

/** Loads on the form of a line, kN/m and m. Where the pressure has its knee or the surface, a piece ends: in between the load is a straight line. */
export function tieLineLoads({ envelope, surface, parts }: TieLineInput): readonly LinearLoad[] {
  const breaks = [surface - envelope.knee, surface];
  return parts.flatMap(({ from, to, width }) => {
    const heights = [from, ...breaks.filter((z) => z > from && z < to), to];
    return heights.slice(1).map((top, k): LinearLoad => {
      const foot = heights[k]!;
      return {
        from: foot / 1000,
        to: top / 1000,
        atFrom: (pressureAt(envelope, surface - foot) * width) / 1000,
        atTo: (pressureAt(envelope, surface - top) * width) / 1000,
      };
    });
  });
}

function loadBetween(loads: readonly LinearLoad[], from: number, to: number): KiloNewton {
  let sum = 0;
  for (const load of loads) {
    const low = Math.max(from, load.from);
    const high = Math.min(to, load.to);
    if (high > low) sum += ((loadAt(load, low) + loadAt(load, high)) / 2) * (high - low);
  }
  return sum;
}

function areaBetween(parts: readonly StripPart[], from: Mm, to: Mm): number {
  let sum = 0;
  for (const part of parts) {
    const height = Math.min(to, part.to) - Math.max(from, part.from);
    if (height > 0) sum += (height * part.width) / 1e6;
  }
  return sum;
}
