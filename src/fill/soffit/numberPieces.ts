// The pieces of a planned soffit with their numbers and codes: panels in the order of laying, then strips line by line,
// then the props under them.

import { closureStripOf } from "../../kit/closures.ts";
import { propOf } from "../../kit/fittings.ts";
import type { Kit, Prop } from "../../kit/kit.ts";
import { lengthsOf } from "../../kit/pieceLengths.ts";
import type { Position } from "../../plan/project.ts";
import { type Mm, roundTo } from "../../units.ts";
import { shortestHolding } from "../edgeCover.ts";
import { type EdgeOffers, edgeOffers } from "../edgeOffers.ts";
import type { PieceBook } from "../pieceBook.ts";
import type { SoffitPiece, SoffitProp } from "../result.ts";
import { type Rect, rectRing } from "./cells.ts";
import type { SoffitContext, SoffitField } from "./field.ts";
import type { StripPart } from "./heads.ts";
import { turned, turnedRing } from "./localFrame.ts";
import type { SoffitPlan } from "./planSoffit.ts";
import type { Head, ShoredStrip } from "./shoring.ts";
import type { ClosureTile, PanelTile } from "./tiles.ts";

export interface Numbered {
  readonly pieces: readonly SoffitPiece[];
  readonly props: readonly SoffitProp[];
}

type OutlineOf = (rect: Rect) => readonly Position[];

export function numberPieces(
  plan: SoffitPlan,
  { frame, height, room }: SoffitField,
  context: SoffitContext,
): Numbered {
  const { book } = context;
  const isTurned = plan.direction === "v";
  const outlineOf: OutlineOf = (rect) =>
    (isTurned ? turnedRing(rectRing(rect)) : rectRing(rect)).map(frame.toPlan);
  const tiles = plan.tiles.map((tile) => tilePiece(tile, outlineOf, context));
  const lines = plan.strips.map((strip) => ({ strip, pieces: linePieces(strip, outlineOf, context) }));
  const prop = plan.strips.length === 0 ? null : propFor(height, room, context);
  if (prop === null) return { pieces: [...tiles, ...lines.flatMap(({ pieces }) => pieces)], props: [] };
  const placeOf = ({ u, v }: Head): Position => frame.toPlan(isTurned ? turned([u, v]) : [u, v]);
  const stood = lines.map(({ strip, pieces }) => {
    const props = strip.heads.map(
      (head): SoffitProp => ({
        piece: book.nextId(),
        code: prop.code,
        at: placeOf(head),
        area: roundTo(head.area / 1e6, 4),
      }),
    );
    return { pieces: heldByProps(pieces, strip, props), props };
  });
  return {
    pieces: [...tiles, ...stood.flatMap(({ pieces }) => pieces)],
    props: stood.flatMap(({ props }) => props),
  };
}

function tilePiece(
  tile: PanelTile | ClosureTile,
  outlineOf: OutlineOf,
  { kit, book }: Pick<SoffitContext, "kit" | "book">,
): SoffitPiece {
  const piece = book.nextId();
  const outline = outlineOf(tile);
  if (tile.kind === "panel") {
    const reason = `${tile.v1 - tile.v0} × ${tile.u1 - tile.u0}: the standard sizes of the kit do not make up this field alone.`;
    const own = { piece, code: tile.code, family: "slab-panel" as const, outline };
    return tile.standard ? own : { ...own, reason };
  }
  return {
    piece,
    code: closureStripOf(kit, tile.width)?.code ?? "",
    family: "closure-strip",
    outline,
    reason: `A closure of ${tile.width} mm: no slab panels of the kit make up the rest.`,
  };
}

function linePieces(
  { line, parts }: ShoredStrip,
  outlineOf: OutlineOf,
  { kit, book }: Pick<SoffitContext, "kit" | "book">,
): readonly SoffitPiece[] {
  const offers = stripOffers(kit, line.u1 - line.u0);
  return parts.map((part): SoffitPiece => {
    const v0 = line.v0 + part.at;
    const own = {
      piece: book.nextId(),
      code: stripCode(part, offers, book),
      family: "shoring-strip" as const,
      outline: outlineOf({ ...line, v0, v1: v0 + part.length }),
    };
    return part.isMadeToMeasure ? { ...own, madeToMeasure: true } : own;
  });
}

/** Strips of one width by length. */
export function stripOffers(kit: Kit, width: Mm): EdgeOffers {
  return edgeOffers(kit, `strip ${width}`, () =>
    lengthsOf(kit, "shoring-strip", (strip) => strip.width === width).map((piece) => ({
      piece,
      length: piece.length,
    })),
  );
}

function stripCode({ length, isMadeToMeasure }: StripPart, { pieces }: EdgeOffers, book: PieceBook): string {
  const stock = isMadeToMeasure
    ? shortestHolding(pieces, length)
    : pieces.find((each) => each.length === length);
  if (stock === undefined) throw new RangeError("a line of strips has a part that no strip of the kit makes");
  return isMadeToMeasure ? book.cutTo(stock.piece, stock.length, length) : stock.piece.code;
}

// What reaches past the first or the last head hangs on it when the connectors have gone.
function heldByProps(
  pieces: readonly SoffitPiece[],
  { line, heads }: ShoredStrip,
  props: readonly SoffitProp[],
): readonly SoffitPiece[] {
  const last = pieces.length - 1;
  return pieces.map((piece, k) => {
    if (k === 0 && heads[0]!.v > line.v0) return { ...piece, heldBy: props[0]!.piece };
    return k === last ? { ...piece, heldBy: props[props.length - 1]!.piece } : piece;
  });
}

function propFor(height: Mm, room: string, { kit, log }: SoffitContext): Prop | null {
  const prop = propOf(kit, height);
  if (prop !== null) return prop;
  log.addOnce(`prop ${height}`, {
    severity: "error",
    kind: "missing-piece",
    message: `The kit has no prop that reaches ${height} mm: no soffit at that height stands on anything; add one to the kit.`,
    where: { room },
  });
  return null;
}
