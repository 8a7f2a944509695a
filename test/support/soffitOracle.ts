// The best soffit of a rectangle or an L by trying everything: every row of panels across every length of band, every
// set of bands, a strip on either side of the cut. Too slow for rooms, too simple to be wrong.

import type { SmallKit } from "./soffitField.ts";

/** Area not built, closures, panels not standard, panels, lines of strips: the least comes first. */
export type Counts = readonly [
  unbuilt: number,
  closures: number,
  fillers: number,
  pieces: number,
  strips: number,
];

/** One direction: lengths along `along`, strips across. */
export function leastRectangle(along: number, across: number, kit: SmallKit): Counts {
  return leastOf([cell(along, across, kit, 0), unbuilt(along, across)])!;
}

/** The two cells of an L cut along a line across: `whole` × `high`, then `rest` × `low`. A cell left open carries nothing. */
export function leastEll(
  { whole, high, rest, low }: { whole: number; high: number; rest: number; low: number },
  kit: SmallKit,
): Counts {
  const ways: Counts[] = [add(unbuilt(whole, high), unbuilt(rest, low))];
  for (const [before, after] of [
    [1, 0],
    [0, 1],
    [1, 1],
  ] as const) {
    const [a, b] = [cell(whole, high, kit, before), cell(rest, low, kit, after)];
    if (a !== null && b !== null) ways.push(add(a, b));
    if (a !== null && before === 1) ways.push(add(a, unbuilt(rest, low)));
    if (b !== null && after === 1) ways.push(add(unbuilt(whole, high), b));
  }
  return leastOf(ways)!;
}

/** The better of several; the first of equals. */
export function leastOf(ways: readonly (Counts | null)[]): Counts | null {
  let best: Counts | null = null;
  for (const way of ways) if (way !== null && (best === null || isLess(way, best))) best = way;
  return best;
}

function isLess(a: Counts, b: Counts): boolean {
  const k = a.findIndex((count, index) => count !== b[index]);
  return k >= 0 && a[k]! < b[k]!;
}

function unbuilt(along: number, across: number): Counts {
  return [along * across, 0, 0, 0, 0];
}

function add(a: Counts, b: Counts): Counts {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2], a[3] + b[3], a[4] + b[4]];
}

// One cell with so many strips along its sides, null where nothing makes it up.
function cell(along: number, across: number, kit: SmallKit, sides: 0 | 1): Counts | null {
  const { strip } = kit;
  if (sides > 0 && strip === null) return null;
  const rest = along - sides * (strip ?? 0);
  if (rest < 0) return null;
  const borders: Counts = [0, 0, 0, 0, sides];
  if (rest === 0) return borders;
  const ways: (Counts | null)[] = [bands(rest, across, kit)];
  for (const width of closureWidths(kit)) {
    if (width > rest) continue;
    const beside = width === rest ? ([0, 0, 0, 0, 0] as const) : bands(rest - width, across, kit);
    if (beside !== null) ways.push(add(beside, [0, 1, 0, 0, 0]));
  }
  const best = leastOf(ways);
  return best === null ? null : add(best, borders);
}

function closureWidths({ closure }: SmallKit): number[] {
  if (closure === null) return [];
  return Array.from({ length: closure.greatest - closure.least + 1 }, (_, k) => closure.least + k);
}

// A first band of every length, and behind a strip the best of the rest.
function bands(along: number, across: number, kit: SmallKit): Counts | null {
  const ways: (Counts | null)[] = [];
  for (const length of new Set(kit.sizes.flatMap((one) => [one.length, one.width]))) {
    const row = rowAcross(length, across, kit);
    if (row === null || length > along) continue;
    if (length === along) ways.push(row);
    if (kit.strip === null) continue;
    const rest = along - length - kit.strip;
    const others = rest > 0 ? bands(rest, across, kit) : null;
    if (others !== null) ways.push(add(add(row, others), [0, 0, 0, 0, 1]));
  }
  return leastOf(ways);
}

// Panels across a band, turned ones among them, and at most one closure.
function rowAcross(length: number, across: number, kit: SmallKit): Counts | null {
  const widest = Math.max(...kit.sizes.map(({ width }) => width));
  const offers = new Map<number, boolean>();
  for (const one of kit.sizes) {
    if (one.width === length && one.length <= widest) offers.set(one.length, one.standard);
  }
  for (const one of kit.sizes) if (one.length === length) offers.set(one.width, one.standard);
  const panels = (left: number): Counts | null => {
    if (left === 0) return [0, 0, 0, 0, 0];
    const ways: (Counts | null)[] = [];
    for (const [width, standard] of offers) {
      const rest = width <= left ? panels(left - width) : null;
      if (rest !== null) ways.push(add(rest, [0, 0, standard ? 0 : 1, 1, 0]));
    }
    return leastOf(ways);
  };
  if (offers.size === 0) return null;
  const ways: (Counts | null)[] = [panels(across)];
  for (const width of closureWidths(kit)) {
    const rest = width <= across ? panels(across - width) : null;
    if (rest !== null) ways.push(add(rest, [0, 1, 0, 0, 0]));
  }
  return leastOf(ways);
}
