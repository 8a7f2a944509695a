// Where the pieces of a unit go: its rooms in the order of the fill, then the outside, then what all of them share.
//
// A piece falls to the place whose room sheet lists it, so that the crew of a room finds in its bundles and on its lists
// what its sheet counts. What has no place of its own (pins, wedges, sleeves) is shared.

import type { Family } from "../kit/kit.ts";
import type { Mm, SquareMetre } from "../units.ts";
import type { FacePiece, UnitFill } from "./result.ts";
import { type RoomParts, roomPartsOf } from "./roomParts.ts";

export interface Place {
  readonly kind: "room" | "outside" | "shared";
  /** As drawn; empty for the outside and the shared, and for a room without a name. */
  readonly name: string;
  /** Of the room's floor, m²; 0 for the others. */
  readonly area: SquareMetre;
}

/** One piece, or some of one code at one place, as it stands there. */
export interface PlacedPiece {
  readonly code: string;
  readonly family: Family;
  readonly quantity: number;
  /** Index of its place. */
  readonly place: number;
  /** Across and up, as on the wall; a long thing by its length and 0; 0 and 0 = not known. */
  readonly width: Mm;
  readonly height: Mm;
  /** Concrete it forms, mm²; a corner on two faces says each face's part. */
  readonly area: number;
  readonly isMade: boolean;
  readonly isZone: boolean;
  /** As the face lists it; null = it is listed elsewhere. */
  readonly onFace: FacePiece | null;
}

/** The places of a unit; the last but one is the outside, the last is shared by all. */
export function placesOf(unit: UnitFill): readonly Place[] {
  return placesOfParts(roomPartsOf(unit));
}

function placesOfParts(all: readonly RoomParts[]): readonly Place[] {
  const rooms = all.filter(({ isOutside }) => !isOutside);
  return [
    ...rooms.map(({ name, area }): Place => ({ kind: "room", name, area })),
    { kind: "outside", name: "", area: 0 },
    { kind: "shared", name: "", area: 0 },
  ];
}

/** Everything that a unit's fill gives a place, a piece once; the second face of a corner adds its area alone. */
export function placedPieces(unit: UnitFill): readonly PlacedPiece[] {
  const all = roomPartsOf(unit);
  const outside = all.filter(({ isOutside }) => !isOutside).length;
  const seen = new Set<string>();
  const found: PlacedPiece[] = [];
  const add: Add = (piece, size) => {
    const { code, family } = piece;
    const isAgain = piece.piece !== undefined && seen.has(piece.piece);
    if (piece.piece !== undefined) seen.add(piece.piece);
    found.push({
      code,
      family,
      quantity: isAgain ? 0 : (piece.quantity ?? 1),
      width: size.width,
      height: size.height,
      area: piece.area ?? 0,
      isMade: piece.madeToMeasure === true || family === "closure-strip",
      isZone: piece.zone === true,
      onFace: piece.onFace ?? null,
      place: size.place,
    });
  };
  all.forEach((parts, index) => {
    const place = parts.isOutside ? outside : index;
    addFaces(parts, place, add);
    addOthers(parts, place, add);
  });
  // When all faces are counted: what hangs on two of them falls to the first.
  all.forEach((parts, index) => {
    addSoffits(parts, parts.isOutside ? outside : index, add);
  });
  return found;
}

interface Given {
  readonly piece?: string;
  readonly code: string;
  readonly family: Family;
  readonly quantity?: number;
  readonly area?: number;
  readonly madeToMeasure?: true;
  readonly zone?: true;
  readonly onFace?: FacePiece;
}

type Add = (piece: Given, size: { readonly width: Mm; readonly height: Mm; readonly place: number }) => void;

function addFaces(parts: RoomParts, place: number, add: Add): void {
  for (const face of parts.faces) {
    for (const piece of face.pieces) {
      const { width, height } = piece;
      add({ ...piece, area: width * height, onFace: piece }, { width, height, place });
    }
  }
}
function addOthers(parts: RoomParts, place: number, add: Add): void {
  for (const edge of parts.edges) add(edge, { width: edgeLength(edge.from, edge.to), height: 0, place });
  for (const reveal of parts.reveals) {
    for (const piece of reveal.pieces) {
      // A stop-end stands in a jamb as on a free end: its thickness across, its length upright.
      const isUpright = piece.family === "stop-end";
      const [width, height] = isUpright ? [piece.width, piece.length] : [piece.length, piece.width];
      add({ ...piece, area: piece.length * piece.width }, { width, height, place });
    }
  }
  for (const { code, heights } of parts.ownTies) {
    add({ code, family: "tie", quantity: heights.length }, { width: 0, height: 0, place });
  }
  for (const fitting of parts.fittings) add(fitting, { width: fitting.length ?? 0, height: 0, place });
}

function addSoffits(parts: RoomParts, place: number, add: Add): void {
  for (const { pieces, props } of parts.soffits) {
    for (const piece of pieces) add(piece, { ...extent(piece.outline), place });
    for (const { piece, code } of props) add({ piece, code, family: "prop" }, { width: 0, height: 0, place });
  }
}

/** The shorter side across, the longer one up, of the upright rectangle round an outline: as the kit says a slab panel. */
function extent(outline: readonly (readonly [Mm, Mm])[]): { readonly width: Mm; readonly height: Mm } {
  const side = (axis: 0 | 1) => {
    const values = outline.map((point) => point[axis]);
    return values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);
  };
  const [x, y] = [Math.round(side(0)), Math.round(side(1))];
  return { width: Math.min(x, y), height: Math.max(x, y) };
}

function edgeLength(a: readonly [Mm, Mm, Mm], b: readonly [Mm, Mm, Mm]): Mm {
  const [x, y, z] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  return Math.round(Math.sqrt(x * x + y * y + z * z));
}
