// Small things in boxes: pins, wedges, ties, sleeves and brackets, one code to a box, a round number in each.
//
// A box is what one person carries: the kit's limit, or 25 kg where it states none. Round numbers (1, 2, 5, 10 …) are
// counted quickly on the way out and back. Common practice, no source.

import { type Kg, roundTo } from "../../units.ts";
import type { SheetInfo } from "../info.ts";
import { BUNDLE_MASS, gramsOf, type LooseBundle } from "./bundle.ts";
import { isCountedApart, type ListItem } from "./listItems.ts";

const BOX_MASS: Kg = 25;
/** Heaviest thing without a size that is put in a box rather than strapped. */
const BOXED_PIECE: Kg = 5;
const MOST_IN_A_BOX = 1000;

export function isBoxed({ family, width, mass }: ListItem): boolean {
  return isCountedApart(family) || (width === 0 && mass <= BOXED_PIECE);
}

/** The greatest of 1, 2, 5, 10, 20, 50 … that a box holds; 1 of what is too heavy for a box. */
export function boxCount(item: Pick<ListItem, "mass">, limit: Kg): number {
  const fits = (count: number) => count * item.mass <= limit;
  let best = 1;
  for (let decade = 1; decade <= MOST_IN_A_BOX; decade *= 10) {
    for (const count of [decade, 2 * decade, 5 * decade]) {
      if (count <= MOST_IN_A_BOX && fits(count)) best = Math.max(best, count);
    }
  }
  return best;
}

/** Whole boxes of one item on pallets of at most {@link BUNDLE_MASS}; a box that is heavier alone has a pallet of its own. */
export function boxedBundles(item: ListItem, info: SheetInfo): readonly LooseBundle[] {
  const each = boxCount(item, info.personLimit ?? BOX_MASS);
  const grams = gramsOf(item);
  const boxes =
    grams === 0 ? Math.ceil(item.quantity / each) : Math.floor((BUNDLE_MASS * 1000) / (grams * each));
  const perPallet = Math.max(1, boxes) * each;
  const left = [...item.byPlace];
  const bundles: LooseBundle[] = [];
  for (let start = 0; start < item.quantity; start += perPallet) {
    const quantity = Math.min(perPallet, item.quantity - start);
    const mass = (grams * quantity) / 1000;
    const full = Math.floor(quantity / each);
    bundles.push({
      family: item.family,
      height: null,
      rows: [{ item, quantity, byPlace: taken(left, quantity) }],
      quantity,
      mass: roundTo(mass, 2),
      layers: 0,
      boxes: { full, each, rest: quantity - full * each },
      isOver: mass > BUNDLE_MASS,
    });
  }
  return bundles;
}

/** Takes `quantity` from what is left for each place, the first places first. */
function taken(left: number[], quantity: number): readonly number[] {
  let wanted = quantity;
  return left.map((some, place) => {
    const given = Math.min(some, wanted);
    left[place] = some - given;
    wanted -= given;
    return given;
  });
}
