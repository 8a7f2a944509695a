// What a pour is called in sentences, and how much it adds in all.

import type { AddedPiece } from "../../fill/optimise/pourAdds.ts";
import type { Family } from "../../kit/kit.ts";
import type { PourRow } from "./pourRows.ts";
import type { SayOfSet } from "./useSetWords.ts";

export function pourTitle({ number, name }: Pick<PourRow, "number" | "name">, w: SayOfSet): string {
  return name === "" ? w("pour-number", { number }) : w("pour-named", { number, name });
}

/** Small parts: counted by the thousand and kept in boxes, so that they would hide every other count. */
const SMALL: ReadonlySet<Family> = new Set(["tie", "tie-sleeve", "pin", "wedge"]);

export interface AddedSums {
  /** Of all families but the small parts. */
  readonly pieces: number;
  /** Ties, sleeves, pins and wedges. */
  readonly small: number;
  /** What is to buy of all of them, as far as the kit has prices. */
  readonly cost: number;
}

/** What a pour adds, in three figures. */
export function addedSums(adds: readonly AddedPiece[]): AddedSums {
  let [pieces, small, cost] = [0, 0, 0];
  for (const { family, count, toBuy, price } of adds) {
    if (SMALL.has(family)) small += count;
    else pieces += count;
    cost += toBuy * (price ?? 0);
  }
  return { pieces, small, cost };
}

/** By what the bars of all pours are drawn: money where any of them costs something, else pieces. */
export function barScale(pours: readonly { readonly adds: readonly AddedPiece[] }[]): BarScale {
  const sums = pours.map(({ adds }) => addedSums(adds));
  const by = sums.some(({ cost }) => cost > 0) ? "cost" : "pieces";
  return { by, greatest: sums.reduce((most, sum) => Math.max(most, sum[by]), 1) };
}

export interface BarScale {
  readonly by: "cost" | "pieces";
  readonly greatest: number;
}
