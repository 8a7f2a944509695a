// The choices an engineer has on one free interval or zone: other exact covers with what each costs, another order of
// the same pieces, and the pin that keeps any of them.
//
//   in use     │100│ 600 │ 600 │ 600 │        1 filler, 4 pieces
//   on offer   │ 250 │ 450 │ 600 │ 600 │      1 filler, 4 pieces, one size more in the unit

import type { Kit } from "../kit/kit.ts";
import type { FillerPlace, Pinned, Unit } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import { coversOf } from "./alternatives.ts";
import { closingEnd, startCorners, zoneClosureSide } from "./closingEnd.ts";
import { type CoverKey, keyOf } from "./cover.ts";
import type { CoverTable } from "./coverTable.ts";
import type { FilledUnit } from "./fillWalls.ts";
import { tableOf } from "./kitTables.ts";
import { placeOf } from "./lines.ts";
import { type OrderedPiece, orderFromClosingEnd } from "./order.ts";
import { pinOnWall } from "./pinOnWall.ts";
import type { Stretch } from "./stretches.ts";
import { lowToHigh, type SeenStretch } from "./stretchPieces.ts";

/** A fill and what it was made from. */
export interface FilledWith {
  readonly filled: FilledUnit;
  readonly unit: Unit;
  readonly kit: Kit;
  readonly fillers: FillerPlace;
}

/** A sequence that could stand on a stretch. */
export interface Choice {
  /** Left to right as the person facing it sees it. */
  readonly pieces: readonly OrderedPiece[];
  readonly key: CoverKey;
  /** Against the sequence in use: less than 0 is better. `sizes` counts the widths in use in the whole unit. */
  readonly change: CoverKey & { readonly sizes: number };
  readonly isInUse: boolean;
  /** Makes it the engineer's own; null where a pin could not say it. */
  readonly pinned: Pinned | null;
}

/** The widths of a stretch's panels and closure, by the heights of the faces that share it. */
export function tableFor({ filled, kit }: FilledWith, stretch: Stretch): CoverTable {
  const own = filled.drafts[stretch.face]!.profile.heights;
  const other = stretch.opposite === null ? [] : filled.drafts[stretch.opposite]!.profile.heights;
  return tableOf(kit, [...own, ...other]);
}

/**
 * The sequence in use, then the best covers in another order or of other widths, best first, `limit` in all. The
 * same pieces in another order are no cover of their own: see {@link withNextSwapped}.
 */
export function choicesOf(seen: SeenStretch, given: FilledWith, limit: number): readonly Choice[] {
  const { stretch } = seen;
  const table = tableFor(given, stretch);
  const inUse = seen.pieces.map(({ width, kind }): OrderedPiece => ({ width, kind }));
  const choose = chooser(seen, inUse, table, given);
  const used = inUse.length === 0 ? [] : [choose(inUse)];
  const known = new Set([multiset(inUse)]);
  const covers = seen.isZone
    ? zoneCovers(seen.length, table)
    : coversOf(seen.length, table, limit + 1).map(({ widths, closure }) => ({ widths, closure }));
  const others = covers
    // A closure of a width that a panel has would be read from the pin as that panel.
    .filter(({ closure }) => closure === null || !table.widths.some(({ width }) => width === closure))
    .map((cover) => lowToHighOf(cover, stretch, table, given))
    .map((sequence) => lowToHigh(given.filled.drafts[stretch.face]!.settled, sequence))
    .filter((pieces) => !known.has(multiset(pieces)))
    .map(choose)
    .filter(({ pinned }) => pinned !== null);
  return [...used, ...others].slice(0, limit);
}

/** The sequence in use with piece `index`, counted from the left, and the one to its right changed about. */
export function withNextSwapped(seen: SeenStretch, index: number): readonly OrderedPiece[] | null {
  const pieces = seen.pieces.map(({ width, kind }): OrderedPiece => ({ width, kind }));
  const own = pieces[index];
  const next = pieces[index + 1];
  if (own === undefined || next === undefined || own.width === next.width) return null;
  return pieces.with(index, next).with(index + 1, own);
}

/**
 * The pin that keeps `pieces` (left to right) from `x` on: a whole sequence, or some neighbouring pieces of it.
 *
 * @returns null where no wall of the face has its drawn line there, or a closure is as wide as a panel of the kit
 */
export function pinOf(
  seen: SeenStretch,
  { x, pieces }: { readonly x: Mm; readonly pieces: readonly OrderedPiece[] },
  given: FilledWith,
): Pinned | null {
  const { stretch } = seen;
  const table = tableFor(given, stretch);
  const isAmbiguous = ({ width, kind }: OrderedPiece) =>
    kind === "closure" && table.widths.some((offer) => offer.width === width);
  if (pieces.length === 0 || pieces.some(isAmbiguous)) return null;
  const { settled } = given.filled.drafts[stretch.face]!;
  const length = pieces.reduce((sum, { width }) => sum + width, 0);
  const low = settled.isReversed ? settled.high - x - length : settled.low + x;
  const widths = lowToHigh(settled, pieces).map(({ width }) => width);
  return pinOnWall({ low, high: low + length, widths }, stretch, given);
}

/** Which of the unit's pins lie on a stretch, in whole or in part, as places in its list. */
export function pinsOn({ stretch }: SeenStretch, { filled, unit }: FilledWith): readonly number[] {
  const { settled } = filled.drafts[stretch.face]!;
  const walls = new Set(
    filled.drafts
      .filter((draft) => draft.settled.line === settled.line)
      .flatMap((draft) => draft.settled.formed.walls),
  );
  const { direction } = settled;
  return unit.pinned.flatMap((pin, index) => {
    const wall = walls.has(pin.wall) ? unit.walls.find(({ id }) => id === pin.wall) : undefined;
    if (wall === undefined) return [];
    const isAlong = placeOf(direction, wall.to) > placeOf(direction, wall.from);
    const length = pin.widths.reduce((sum, width) => sum + width, 0);
    const start = placeOf(direction, wall.from) + (isAlong ? pin.from : -pin.from);
    const [low, high] = isAlong ? [start, start + length] : [start - length, start];
    return low < stretch.high && high > stretch.low ? [index] : [];
  });
}

function chooser(
  seen: SeenStretch,
  inUse: readonly OrderedPiece[],
  table: CoverTable,
  given: FilledWith,
): (pieces: readonly OrderedPiece[]) => Choice {
  const faces = seen.isZone ? 1 : 2;
  const counts = sizesInUse(given.filled);
  const before = keyOfPieces(inUse, table);
  const sizesWith = (pieces: readonly OrderedPiece[]) => {
    const after = new Map(counts);
    for (const width of panelWidths(inUse)) after.set(width, (after.get(width) ?? 0) - faces);
    for (const width of panelWidths(pieces)) after.set(width, (after.get(width) ?? 0) + faces);
    return [...after.values()].filter((count) => count > 0).length;
  };
  const sizes = sizesWith(inUse);
  return (pieces) => {
    const key = keyOfPieces(pieces, table);
    return {
      pieces,
      key,
      change: {
        closures: key.closures - before.closures,
        narrow: key.narrow - before.narrow,
        fillers: key.fillers - before.fillers,
        pieces: key.pieces - before.pieces,
        distinct: key.distinct - before.distinct,
        sizes: sizesWith(pieces) - sizes,
      },
      isInUse: pieces === inUse,
      pinned: pinOf(seen, { x: seen.x, pieces }, given),
    };
  };
}

/** How many full-height columns there are of each width, on all faces. */
export function sizesInUse({ drafts }: FilledUnit): ReadonlyMap<Mm, number> {
  const counts = new Map<Mm, number>();
  for (const { parts } of drafts) {
    for (const { kind, low, high } of parts) {
      if (kind === "panel") counts.set(high - low, (counts.get(high - low) ?? 0) + 1);
    }
  }
  return counts;
}

interface WidthsAndClosure {
  readonly widths: readonly Mm[];
  readonly closure: Mm | null;
}

// One piece, or one and a closure, the narrowest first: what a zone may carry.
function zoneCovers(length: Mm, { widths, closure }: CoverTable): readonly WidthsAndClosure[] {
  const whole = widths.filter(({ width }) => width === length).map(({ width }) => ({ width, strip: null }));
  const parted = widths
    .map(({ width }) => ({ width, strip: length - width }))
    .filter(({ strip }) => closure !== null && strip >= closure.least && strip <= closure.greatest);
  return [...whole, ...parted].map(({ width, strip }) => ({ widths: [width], closure: strip }));
}

// The order the fill itself would give these pieces.
function lowToHighOf(
  cover: WidthsAndClosure,
  stretch: Stretch,
  table: CoverTable,
  { filled, fillers }: FilledWith,
): readonly OrderedPiece[] {
  const faces = filled.drafts.map(({ settled }) => settled);
  const formed = faces.map((face) => face.formed);
  const end = closingEnd(stretch, startCorners(filled.outline, formed, faces));
  const isZone = stretch.opposite === null;
  const side = isZone ? zoneClosureSide(stretch) : end.side;
  const options = { cornerAtClosingEnd: isZone || end.hasCorner, fillers };
  const sequence = orderFromClosingEnd(cover, table.isStandard, options);
  return side === "low" ? sequence : [...sequence].reverse();
}

function keyOfPieces(pieces: readonly OrderedPiece[], table: CoverTable): CoverKey {
  const closure = pieces.find(({ kind }) => kind === "closure");
  return keyOf(panelWidths(pieces), closure?.width ?? null, table);
}

function panelWidths(pieces: readonly OrderedPiece[]): readonly Mm[] {
  return pieces.filter(({ kind }) => kind === "panel").map(({ width }) => width);
}

function multiset(pieces: readonly OrderedPiece[]): string {
  return pieces
    .map(({ width, kind }) => `${width} ${kind}`)
    .sort()
    .join(", ");
}
