// The count of a room: how many of each code its sheet shows, so that a person can tick them off.
//
// Counted from the parts the sheet draws, each piece id once. The sum over all sheets of a unit is the unit's bill,
// less what has no place of its own (pins, wedges, sleeves).

import type { RoomParts } from "../fill/roomParts.ts";
import { FAMILIES, type Family } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import type { SheetInfo } from "./info.ts";
import { lookOf, type PieceLook, plainLook } from "./pieceMark.ts";
import { overheadLook, sidesOf } from "./soffit/overheadPiece.ts";
import { WORDS } from "./words.ts";

export interface CountRow {
  readonly code: string;
  readonly family: Family;
  /** As it stands on the list: "600 × 2250"; what is made to measure by its own measure. */
  readonly size: string;
  readonly look: PieceLook;
  /** Made to measure, so its measure names it rather than its code. */
  readonly isMade: boolean;
  /** For the symbol and the order, mm; 0 = not known. */
  readonly width: Mm;
  readonly height: Mm;
  readonly quantity: number;
  /** False for ties that the neighbour sets: they are not this crew's to count. */
  readonly isOwn: boolean;
}

type Item = Omit<CountRow, "quantity">;

/** Those of the walls, which stand on the front of a room sheet, and those of the soffit, which stand on its back. */
export function wallRows(parts: RoomParts, info: SheetInfo): readonly CountRow[] {
  return countRows({ ...parts, overhead: [], soffits: [] }, info);
}

export function overheadRows(parts: RoomParts, info: SheetInfo): readonly CountRow[] {
  return countRows(
    { ...parts, faces: [], edges: [], reveals: [], fittings: [], ownTies: [], otherTies: [] },
    info,
  );
}

/** Rows by family, then from wide to narrow and tall to low; codes decide only between equals. */
export function countRows(parts: RoomParts, info: SheetInfo): readonly CountRow[] {
  const rows = new Map<string, CountRow>();
  for (const [item, quantity] of itemsOf(parts, info)) {
    const key = JSON.stringify([item.code, item.family, item.size, item.isOwn]);
    const known = rows.get(key);
    const shown = known === undefined ? item : asOne(known, item);
    rows.set(key, { ...shown, quantity: (known?.quantity ?? 0) + quantity });
  }
  return [...rows.values()].sort(
    (a, b) =>
      FAMILIES.indexOf(a.family) - FAMILIES.indexOf(b.family) ||
      Number(b.isOwn) - Number(a.isOwn) ||
      b.width - a.width ||
      b.height - a.height ||
      (a.code < b.code ? -1 : a.code > b.code ? 1 : 0),
  );
}

/** What any piece of a sheet has, wherever it stands. */
interface Counted {
  readonly code: string;
  readonly family: Family;
  readonly madeToMeasure?: true;
}

/** Pieces of one code that look different here and there: shown the wider way, dotted only if they all are. */
function asOne(a: Item, b: Item): Item {
  const wider = b.width > a.width || (b.width === a.width && b.height > a.height) ? b : a;
  const tone = [a.look.tone, b.look.tone].sort().at(-1)!; // the deepest: "tone5" stands after "tone1" and "paper"
  return { ...wider, look: { ...wider.look, tone, isZone: a.look.isZone && b.look.isZone } };
}

function itemsOf(parts: RoomParts, info: SheetInfo): readonly (readonly [Item, number])[] {
  const facePieces = new Map(parts.faces.flatMap((face) => face.pieces).map((piece) => [piece.piece, piece]));
  const item = (piece: Counted, own: string, width: Mm, height: Mm): Item => {
    const { code, family } = piece;
    const isMade = piece.madeToMeasure === true || family === "closure-strip";
    const size = isMade ? own : (info.pieces[code]?.size ?? own);
    return { code, family, size, isMade, width, height, isOwn: true, look: plainLook(family, code, info) };
  };
  const ties = [...parts.ownTies, ...parts.otherTies].map((tie): readonly [Item, number] => {
    const counted = item({ code: tie.code, family: "tie" }, `${tie.length}`, tie.length, 0);
    const isOwn = parts.ownTies.includes(tie);
    return [isOwn ? counted : { ...counted, size: WORDS[info.language].tieThere, isOwn }, tie.heights.length];
  });
  const pieces = [
    ...[...facePieces.values()].map((piece) => {
      const { width, height } = piece;
      return { ...item(piece, `${width} × ${height}`, width, height), look: lookOf(piece, info) };
    }),
    ...parts.edges.map((edge) => {
      const length = edgeLength(edge.from, edge.to);
      return item(edge, `${length}`, length, 0);
    }),
    ...parts.reveals.flatMap((reveal) =>
      reveal.pieces.map((piece) =>
        item(piece, `${piece.width} × ${piece.length}`, piece.length, piece.width),
      ),
    ),
    ...parts.fittings.map((fitting) =>
      item(fitting, fitting.length === undefined ? "" : `${fitting.length}`, fitting.length ?? 0, 0),
    ),
    ...parts.overhead.map((piece) => {
      const { short, long } = sidesOf(piece.outline);
      const own = piece.family === "shoring-strip" ? `${long}` : `${short} × ${long}`;
      return { ...item(piece, own, short, long), look: overheadLook(piece, info) };
    }),
    ...parts.soffits.flatMap(({ props }) =>
      props.map(({ code }) => item({ code, family: "prop" }, "", 0, 0)),
    ),
  ];
  return [...pieces.map((piece) => [piece, 1] as const), ...ties];
}

function edgeLength(a: readonly [Mm, Mm, Mm], b: readonly [Mm, Mm, Mm]): Mm {
  const [x, y, z] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  return Math.round(Math.sqrt(x * x + y * y + z * z));
}
