// The lines of the lists: the bill of a unit, line by line, with what a store keeper must know to tell the piece.
//
// Quantities, masses and areas are the bill's own; the pieces only say how a line looks, where it goes, and which
// widths stand under one code where a piece is made to measure.

import { compareNaturally } from "../../fill/bill.ts";
import { placesOf } from "../../fill/placedPieces.ts";
import type { BillLine, UnitFill } from "../../fill/result.ts";
import { FAMILIES, type Family } from "../../kit/kit.ts";
import { type Kg, type Mm, roundTo, type SquareMetre } from "../../units.ts";
import type { SheetInfo } from "../info.ts";
import { type PieceLook, plainLook } from "../pieceMark.ts";
import { type DrawnPiece, drawnPieces } from "./places.ts";

/** What a wall panel or a piece made to measure is on a list; other families are neither. */
export type ItemKind = "standard" | "filler" | "zone" | "filler-and-zone" | "made" | "plain";

export interface ListItem {
  readonly code: string;
  readonly family: Family;
  /** As it reads on a list, mm: "600 × 2250"; empty where nobody says. */
  readonly size: string;
  readonly kind: ItemKind;
  /** As on the wall, mm; 0 = not known. */
  readonly width: Mm;
  readonly height: Mm;
  readonly look: PieceLook;
  /** Of one piece. */
  readonly mass: Kg;
  readonly quantity: number;
  /** Of all of them. */
  readonly area: SquareMetre;
  /** How many go to each place; they sum to the quantity. */
  readonly byPlace: readonly number[];
}

/** Ties and what goes with the joints are counted apart from the pieces that have a place of their own. */
export function isCountedApart(family: Family): boolean {
  return family === "tie" || family === "tie-sleeve" || family === "pin" || family === "wedge";
}

/** The pieces of one line that read alike. */
interface Alike {
  readonly size: string;
  readonly pieces: DrawnPiece[];
}

/** Items by family, then from tall to low and wide to narrow. They sum to the bill, code by code, exactly. */
export function listItems(unit: UnitFill, info: SheetInfo): readonly ListItem[] {
  const places = placesOf(unit).length;
  const known = new Map(Object.entries(info.pieces));
  const byCode = new Map<string, DrawnPiece[]>();
  for (const piece of drawnPieces(unit, info)) {
    const same = byCode.get(piece.code);
    if (same === undefined) byCode.set(piece.code, [piece]);
    else same.push(piece);
  }
  return unit.bill
    .filter(({ quantity }) => quantity > 0)
    .flatMap((line) => {
      const piece = known.get(line.code);
      const mass = piece?.mass ?? line.mass / line.quantity;
      const kitSize = (piece?.size ?? cutSize(line.code, known))?.replace(" to ", "–");
      const groups = alike(byCode.get(line.code) ?? [], kitSize);
      return shared(line, groups, places).map(({ size, pieces, quantity, area, byPlace }): ListItem => {
        const { code, family } = line;
        // What the kit gives no size can be set to any: the places it stands at say nothing about it.
        const { width, height } = size === "" ? { width: 0, height: 0 } : widest(pieces);
        const look = lookOfAll(pieces) ?? plainLook(family, code, info);
        const kind = kindOf(family, pieces, piece?.standard);
        return { code, family, size, kind, width, height, look, mass, quantity, area, byPlace };
      });
    })
    .sort(compareItems);
}

function compareItems(a: ListItem, b: ListItem): number {
  return (
    FAMILIES.indexOf(a.family) - FAMILIES.indexOf(b.family) ||
    b.height - a.height ||
    b.width - a.width ||
    compareNaturally(a.code, b.code) ||
    compareNaturally(a.size, b.size)
  );
}

/** A closure strip reads by its own measure, everything else as the kit has it, if the kit has it. */
function alike(pieces: readonly DrawnPiece[], kitSize: string | undefined): readonly Alike[] {
  const groups = new Map<string, Alike>();
  for (const piece of pieces) {
    const own = piece.height === 0 ? `${piece.width}` : `${piece.width} × ${piece.height}`;
    const isStrip = piece.family === "closure-strip";
    const size =
      isStrip || (piece.isMade && kitSize === undefined) ? own : (kitSize ?? (piece.width === 0 ? "" : own));
    const group = groups.get(size) ?? { size, pieces: [] };
    group.pieces.push(piece);
    groups.set(size, group);
  }
  const groupSize = ({ pieces: [piece] }: Alike) => piece!.width;
  return groups.size === 0
    ? [{ size: kitSize ?? "", pieces: [] }]
    : [...groups.values()].sort((a, b) => groupSize(b) - groupSize(a) || (a.size < b.size ? -1 : 1));
}

/**
 * The size of a piece that is cut from one of the kit, "150 × 150 × 1000" from "150 × 150 × 1200": its code is that of
 * the whole piece, a stroke and its length, and the kit says the length last. Undefined for any other code.
 */
function cutSize(code: string, known: ReadonlyMap<string, { readonly size: string }>): string | undefined {
  const stroke = code.lastIndexOf("/");
  const whole = stroke < 0 ? undefined : known.get(code.slice(0, stroke))?.size;
  const length = code.slice(stroke + 1);
  return whole === undefined || !/^\d+$/.test(length) ? undefined : whole.replace(/\d+$/, length);
}

interface Share extends Alike {
  readonly quantity: number;
  readonly area: SquareMetre;
  readonly byPlace: readonly number[];
}

/** Deals the bill's line out to its groups and places; what no piece accounts for is shared by all. */
function shared(line: BillLine, groups: readonly Alike[], places: number): readonly Share[] {
  let left = line.quantity;
  let areaLeft = line.area;
  return groups
    .map((group, index) => {
      const byPlace: number[] = Array.from({ length: places }, () => 0);
      for (const { place, quantity } of group.pieces) {
        const given = Math.min(quantity, left);
        byPlace[place]! += given;
        left -= given;
      }
      const isLast = index === groups.length - 1;
      if (isLast) {
        byPlace[places - 1]! += left;
        left = 0;
      }
      const own = group.pieces.reduce((sum, piece) => sum + piece.area, 0);
      const area = isLast ? areaLeft : Math.min(areaLeft, roundTo(own / 1e6, 4));
      areaLeft = roundTo(areaLeft - area, 4);
      return { ...group, area, byPlace, quantity: byPlace.reduce((sum, some) => sum + some, 0) };
    })
    .filter(({ quantity }) => quantity > 0);
}

function widest(pieces: readonly DrawnPiece[]): { readonly width: Mm; readonly height: Mm } {
  return pieces.reduce(
    (most, { width, height }) =>
      width > most.width || (width === most.width && height > most.height) ? { width, height } : most,
    { width: 0, height: 0 },
  );
}

/** Shown with the deepest tone among them, dotted only if all of them stand opposite a corner. */
function lookOfAll(pieces: readonly DrawnPiece[]): PieceLook | undefined {
  const [first] = pieces;
  if (first === undefined) return undefined;
  const tone = pieces
    .map(({ look }) => look.tone)
    .sort()
    .at(-1)!; // the deepest: "tone5" stands after "paper"
  return { ...first.look, tone, isZone: pieces.every(({ isZone }) => isZone) };
}

function kindOf(family: Family, pieces: readonly DrawnPiece[], standard: boolean | undefined): ItemKind {
  if (pieces.some(({ isMade }) => isMade)) return "made";
  if (family !== "wall-panel" || standard === undefined) return "plain";
  if (standard) return "standard";
  if (pieces.length > 0 && pieces.every(({ isZone }) => isZone)) return "zone";
  return pieces.some(({ isZone }) => isZone) ? "filler-and-zone" : "filler";
}
