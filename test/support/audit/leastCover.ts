// The least cover of a length by widths on offer, by a table over every millimetre and then by listing every multiset
// that reaches the least counts. Written from the definition of "best"; it shares no code with the program.

export interface Offer {
  readonly widths: readonly { readonly width: number; readonly standard: boolean }[];
  readonly closure: { readonly least: number; readonly greatest: number } | null;
  readonly narrowUnder: number;
}

/** `widths` widest first. */
export interface LeastCover {
  readonly widths: readonly number[];
  readonly closure: number | null;
}

const NARROW = 1e8;
const FILLER = 1e4;
const PIECE = 1;

function weightOf({ width, standard }: Offer["widths"][number], narrowUnder: number): number {
  return (width < narrowUnder ? NARROW : 0) + (standard ? 0 : FILLER) + PIECE;
}

const tables = new Map<string, number[]>();

// least[x]: narrow pieces, fillers and pieces of the best cover of x without a closure, as one number.
function tableFor(offer: Offer, length: number): number[] {
  const name = JSON.stringify([offer.widths, offer.narrowUnder]);
  const known = tables.get(name) ?? [0];
  for (let x = known.length; x <= length; x++) {
    let least = Number.POSITIVE_INFINITY;
    for (const one of offer.widths) {
      if (one.width <= x) least = Math.min(least, known[x - one.width]! + weightOf(one, offer.narrowUnder));
    }
    known.push(least);
  }
  tables.set(name, known);
  return known;
}

/** The best cover of an interval: fewest closures, narrow pieces, fillers, pieces, then the ties; null if there is none. */
export function leastCover(length: number, offer: Offer): LeastCover | null {
  const least = tableFor(offer, length);
  if (Number.isFinite(least[length])) return bestOf(everyLeast(length, offer, null));
  if (offer.closure === null) return null;
  let best = Number.POSITIVE_INFINITY;
  const { closure } = offer;
  for (let c = closure.least; c <= Math.min(closure.greatest, length); c++)
    best = Math.min(best, least[length - c]!);
  if (!Number.isFinite(best)) return null;
  const covers: LeastCover[] = [];
  for (let c = closure.least; c <= Math.min(closure.greatest, length); c++) {
    if (least[length - c] === best) covers.push(...everyLeast(length - c, offer, c));
  }
  return bestOf(covers);
}

function everyLeast(length: number, offer: Offer, closure: number | null): LeastCover[] {
  const least = tableFor(offer, length);
  const offered = [...offer.widths].sort((a, b) => b.width - a.width);
  const found: LeastCover[] = [];
  const go = (left: number, from: number, taken: readonly number[], budget: number): void => {
    if (left === 0) found.push({ widths: taken, closure });
    for (let k = from; k < offered.length; k++) {
      const one = offered[k]!;
      const rest = budget - weightOf(one, offer.narrowUnder);
      if (one.width <= left && least[left - one.width]! <= rest)
        go(left - one.width, k, [...taken, one.width], rest);
    }
  };
  go(length, 0, [], least[length]!);
  return found;
}

function bestOf(covers: readonly LeastCover[]): LeastCover {
  return [...covers].sort((a, b) => {
    const distinct = new Set(a.widths).size - new Set(b.widths).size;
    if (distinct !== 0) return distinct;
    if (a.closure !== b.closure) return (a.closure ?? 0) - (b.closure ?? 0);
    for (const [k, width] of a.widths.entries()) {
      if (width !== b.widths[k]) return (b.widths[k] ?? 0) - width;
    }
    return 0;
  })[0]!;
}

/** The best cover of a zone: one piece, or one piece and one closure; null if there is neither. */
export function leastZone(length: number, offer: Offer): LeastCover | null {
  const found: { cover: LeastCover; key: readonly number[] }[] = [];
  for (const one of offer.widths) {
    const closure = length - one.width;
    const isClosure =
      offer.closure !== null && closure >= offer.closure.least && closure <= offer.closure.greatest;
    if (closure !== 0 && !isClosure) continue;
    const cover = { widths: [one.width], closure: closure === 0 ? null : closure };
    found.push({ cover, key: [closure === 0 ? 0 : 1, weightOf(one, offer.narrowUnder), closure] });
  }
  found.sort((a, b) => a.key[0]! - b.key[0]! || a.key[1]! - b.key[1]! || a.key[2]! - b.key[2]!);
  return found[0]?.cover ?? null;
}
