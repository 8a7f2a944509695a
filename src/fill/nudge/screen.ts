// What a move could save at most, looked up: at the day prices of the bound every interval has a cheapest cover, and the
// bound of the plan after the move is the bound before with the changed lengths priced anew. See optimise/bound.ts.

import type { Mm } from "../../units.ts";
import { type Bound, boundOf, type DayPrices, longestOf } from "../optimise/bound.ts";
import { cheapestFor, cheapestTable } from "../optimise/cheapest.ts";
import type { StatedProblem } from "../optimise/problemOf.ts";
import { FINE } from "../optimise/setProblem.ts";
import type { FreeInterval } from "../solve.ts";
import { type Candidate, type Follow, lengthOf } from "./candidates.ts";

/** The greatest move on offer, mm: further than this it is another plan. Common practice, no source. */
export const GREATEST_MOVE: Mm = 25;

/** A move that may pay. */
export interface Prospect {
  readonly candidate: Candidate;
  /** Along the candidate's direction, mm, not 0. */
  readonly shift: Mm;
  /** It saves no more, units: a multiple of the step. */
  readonly most: number;
}

export interface Screen {
  /** What each shift of a candidate could save, those that cannot left out. */
  readonly prospects: (candidate: Candidate, follows: readonly Follow[]) => readonly Prospect[];
  /** The same of a project with the move made, units; 0 for no prospect, the cost where its panels are of other codes. */
  readonly mostOf: (after: StatedProblem) => number;
}

/**
 * Only what makes the bound itself less is a prospect: a plan after the move that is cheaper than the plan before and not than
 * its bound could as well have been luck.
 *
 * @param cost - of the plan, units
 * @param least - no plan costs less, units
 */
export function createScreen(
  stated: StatedProblem,
  prices: DayPrices,
  { cost, least }: { readonly cost: number; readonly least: number },
): Screen {
  const { problem } = stated;
  const bound: Bound = boundOf(problem, prices);
  const longest = longestOf(problem);
  const offerOf = new Map<FreeInterval, number>();
  stated.runs.forEach(({ intervals }, run) => {
    for (const interval of intervals) offerOf.set(interval, problem.runs[run]!.offer);
  });
  const tables = problem.offers.map((offer, k) =>
    cheapestTable(offer, bound.columnCosts[k]!, longest[k]! + GREATEST_MOVE),
  );
  const priceOf = (offer: number, length: Mm): number =>
    length < 0
      ? Number.POSITIVE_INFINITY
      : (cheapestFor(problem.offers[offer]!, tables[offer]!, length, FINE)?.cost ?? Number.POSITIVE_INFINITY);
  return {
    prospects(candidate, follows) {
      const found: Prospect[] = [];
      for (const shift of SHIFTS) {
        let fine = bound.fine;
        for (const { interval, growth } of follows) {
          const offer = offerOf.get(interval);
          if (offer === undefined) continue;
          const length = lengthOf(interval);
          fine += priceOf(offer, length + growth * shift) - priceOf(offer, length);
        }
        const after = Math.ceil(fine / (problem.step * FINE)) * problem.step;
        if (least - after >= problem.step) found.push({ candidate, shift, most: cost - after });
      }
      return found;
    },
    mostOf(after) {
      const isAlike =
        after.codes.join(" ") === stated.codes.join(" ") && after.amounts.scale === stated.amounts.scale;
      const bound = isAlike ? boundOf(after.problem, prices).value : 0;
      return bound < least ? cost - bound : 0;
    },
  };
}

/** Every whole millimetre, the small ones first: walls are set out to the millimetre. */
const SHIFTS: readonly Mm[] = Array.from({ length: GREATEST_MOVE }, (_, k) => [k + 1, -k - 1]).flat();
