// What a bundle is: pieces strapped together, or boxes on a pallet, with a number, a mass and a target.

import type { Place } from "../../fill/placedPieces.ts";
import type { Family } from "../../kit/kit.ts";
import { type Kg, type Mm, roundTo } from "../../units.ts";
import type { ListItem } from "./listItems.ts";

/** Most that a bundle of more than one piece weighs. Common practice, no source: a small fork lifts it. */
export const BUNDLE_MASS: Kg = 600;

/** Mass of one, in whole grams, so that sums do not hang on the order of their parts. */
export function gramsOf({ mass }: ListItem): number {
  return roundTo(mass * 1000, 0);
}

export interface Boxes {
  /** Boxes that are full, and how many are in each. */
  readonly full: number;
  readonly each: number;
  /** In the last box, which is not full; 0 = there is none. */
  readonly rest: number;
}

/** How many of one item lie in a bundle, and for which places. */
export interface BundleRow {
  readonly item: ListItem;
  readonly quantity: number;
  readonly byPlace: readonly number[];
}

export interface Bundle {
  /** From 1, in the order of need; loaded in the opposite order. */
  readonly number: number;
  readonly family: Family;
  /** Of its pieces, or the length of long things, mm; null = various or not known. */
  readonly height: Mm | null;
  readonly rows: readonly BundleRow[];
  readonly quantity: number;
  /** Without straps and timber. */
  readonly mass: Kg;
  /** Layers of the stack; 0 = in boxes. */
  readonly layers: number;
  readonly boxes: Boxes | null;
  /** One piece that alone is over the limit of mass: it needs a lift of its own. */
  readonly isOver: boolean;
}

export interface Packing {
  readonly places: readonly Place[];
  readonly bundles: readonly Bundle[];
}

export type LooseBundle = Omit<Bundle, "number">;
