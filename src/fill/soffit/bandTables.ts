// What a kit makes of one cell of soffit: which panel lengths along it, which widths across each band.
//
//   |<------------------ along ------------------>|
//   |    1200    |s|    1200    |s|   600   |c|         along = sum of lengths + (bands − 1) strips + closure
//
// Least first: closures, panels not standard, panels, strips; then the fewest distinct lengths, the narrowest closure,
// and the lengths, longest first, lexicographically greatest. Whole millimetres: proven, not approximated.

import type { Kit } from "../../kit/kit.ts";
import { type SlabOffer, slabBandLengths, slabOffersAt } from "../../kit/slabPanels.ts";
import type { Mm } from "../../units.ts";
import { type Covered, coverInterval } from "../cover.ts";
import { type ClosureRange, type CoverTable, createCoverTable } from "../coverTable.ts";
import { closureRange } from "../kitTables.ts";
import { createWidthTable, type WidthTable } from "../widthTable.ts";

/** The counts a layout is judged by, in this order. */
export interface SoffitCost {
  readonly closures: number;
  /** Slab panels that are not standard. */
  readonly fillers: number;
  /** Slab panels. */
  readonly pieces: number;
  /** Lines of strips. */
  readonly strips: number;
}

/** The bands of one cell: lengths longest first, and the closure that makes up the rest along, if any. */
export interface Bands {
  readonly lengths: readonly Mm[];
  readonly closure: Mm | null;
  /** Strips between the bands only. */
  readonly cost: SoffitCost;
}

/** The band tables of one kit and one width of strip; null = the kit has no strips, a cell is then one band. */
export interface BandTables {
  readonly stripWidth: Mm | null;
  /** The best cover across a band of this length; null where there is none. */
  readonly across: (length: Mm, width: Mm) => Covered | null;
  /** The best bands that make up exactly `along`, each of them `width` across; null where there are none. */
  readonly bands: (along: Mm, width: Mm) => Bands | null;
  readonly offers: (length: Mm) => readonly SlabOffer[];
}

const NO_COST: SoffitCost = { closures: 0, fillers: 0, pieces: 0, strips: 0 };
/** Bands are looked for in cells up to this long, mm. */
const LONGEST = 2 ** 17;

const remembered = new WeakMap<Kit, Map<string, BandTables>>();

/** The tables of a kit, kept as long as the kit object lives. */
export function bandTablesOf(kit: Kit, stripWidth: Mm | null): BandTables {
  const known = remembered.get(kit) ?? new Map<string, BandTables>();
  remembered.set(kit, known);
  const key = String(stripWidth);
  const before = known.get(key);
  if (before !== undefined) return before;
  const tables = createBandTables(kit, stripWidth);
  known.set(key, tables);
  return tables;
}

function createBandTables(kit: Kit, stripWidth: Mm | null): BandTables {
  const closure = closureRange(kit);
  const lengths = slabBandLengths(kit);
  const offers = new Map(lengths.map((length) => [length, slabOffersAt(kit, length)]));
  // Narrow panels are not counted apart in a soffit: nothing narrower than any other hangs in the way of a tie.
  const covers = new Map<Mm, CoverTable>();
  for (const [length, widths] of offers) covers.set(length, createCoverTable(widths, closure, 0));
  const acrossKnown = new Map<string, Covered | null>();
  const across = (length: Mm, width: Mm): Covered | null => {
    const key = `${length} ${width}`;
    const before = acrossKnown.get(key);
    if (before !== undefined) return before;
    const table = covers.get(length);
    const cover = table === undefined ? null : coverInterval(width, table);
    const covered = cover?.status === "covered" ? cover : null;
    acrossKnown.set(key, covered);
    return covered;
  };
  const equations = new Map<Mm, Equation>();
  const equationFor = (width: Mm): Equation => {
    const before = equations.get(width);
    if (before !== undefined) return before;
    const equation = createEquation(
      lengths.flatMap((length) => {
        const cover = across(length, width);
        return cover === null ? [] : [{ length, cover }];
      }),
      stripWidth,
      closure,
    );
    equations.set(width, equation);
    return equation;
  };
  const bandsKnown = new Map<string, Bands | null>();
  return {
    stripWidth,
    across,
    bands(along, width) {
      if (along === 0) return { lengths: [], closure: null, cost: NO_COST };
      const key = `${along} ${width}`;
      const before = bandsKnown.get(key);
      if (before !== undefined) return before;
      const found = equationFor(width)(along);
      bandsKnown.set(key, found);
      return found;
    },
    offers: (length) => offers.get(length) ?? [],
  };
}

type Equation = (along: Mm) => Bands | null;

interface Option {
  readonly length: Mm;
  readonly cover: Covered;
}

/** Solves along = Σ lengths + (bands − 1) · strip + closure for one width across. */
function createEquation(options: readonly Option[], strip: Mm | null, range: ClosureRange): Equation {
  const byLength = new Map(options.map((option) => [option.length, option]));
  const priced = priceOptions(options, strip ?? 0);
  const table = strip === null ? null : createWidthTable(priced.widths, 1);

  function exactly(sum: Mm): { readonly lengths: readonly Mm[]; readonly price: number } | null {
    if (sum <= 0 || sum > priced.longest) return null;
    if (table === null || strip === null) {
      const option = priced.widths.find(({ width }) => width === sum);
      return option === undefined ? null : { lengths: [sum], price: option.cost };
    }
    const price = table.costOf(sum + strip);
    if (!Number.isFinite(price)) return null;
    return { price, lengths: lengthsOf(table, sum + strip, strip) };
  }

  return (along) => {
    let best = exactly(along);
    let closure: Mm | null = null;
    for (let width = range?.least ?? 1; width <= Math.min(range?.greatest ?? 0, along); width++) {
      // A cell as narrow as a closure is closed by it alone.
      const rest = width === along ? { lengths: [], price: 0 } : exactly(along - width);
      if (rest === null) continue;
      const price = rest.price + priced.closure;
      if (best !== null && price >= best.price) continue;
      best = { ...rest, price };
      closure = width;
    }
    return best === null ? null : countBands(best.lengths, closure, byLength);
  };
}

function lengthsOf(table: WidthTable, sum: Mm, strip: Mm): readonly Mm[] {
  return table.widthsOf(sum).map((width) => width - strip);
}

// One whole number for the counts of a band, most important first: closures | fillers | panels | bands | distinct.
function priceOptions(options: readonly Option[], strip: Mm) {
  const shortest = options.reduce((least, { length }) => Math.min(least, length), LONGEST);
  const most = options.reduce((greatest, { cover }) => Math.max(greatest, cover.key.pieces), 1);
  let longest = LONGEST;
  let bases = basesFor(longest, shortest + strip, most, options.length);
  while (bases.total > Number.MAX_SAFE_INTEGER && longest > 1) {
    longest = Math.floor(longest / 2);
    bases = basesFor(longest, shortest + strip, most, options.length);
  }
  const { panels, bands, distinct } = bases;
  const unit = panels * panels * bands * distinct;
  const widths = options.map(({ length, cover: { key } }) => ({
    width: length + strip,
    cost: key.closures * unit + ((key.fillers * panels + key.pieces) * bands + 1) * distinct,
  }));
  return { widths, closure: unit, longest };
}

function basesFor(longest: Mm, shortest: Mm, mostAcross: number, lengths: number) {
  const bands = Math.floor(longest / shortest) + 2;
  const panels = bands * mostAcross + 1;
  const distinct = lengths + 1;
  return { bands, panels, distinct, total: (bands + 1) * panels * panels * bands * distinct };
}

function countBands(lengths: readonly Mm[], closure: Mm | null, options: ReadonlyMap<Mm, Option>): Bands {
  let [closures, fillers, pieces] = [closure === null ? 0 : 1, 0, 0];
  for (const length of lengths) {
    const { key } = options.get(length)!.cover;
    closures += key.closures;
    fillers += key.fillers;
    pieces += key.pieces;
  }
  return { lengths, closure, cost: { closures, fillers, pieces, strips: Math.max(0, lengths.length - 1) } };
}
