// Where a row that is dragged would come to stand.

/**
 * The place among the other rows, from 0: behind all whose middle is above the hand.
 *
 * @param rows - the other rows in their order, px
 */
export function dropPlace(
  rows: readonly { readonly top: number; readonly bottom: number }[],
  hand: number,
): number {
  const place = rows.findIndex(({ top, bottom }) => hand < (top + bottom) / 2);
  return place < 0 ? rows.length : place;
}
