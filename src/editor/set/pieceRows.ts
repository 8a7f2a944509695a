// The rows of the table of pieces: what the pours need wall by wall, what they need of the set that was chosen, what is
// owned, what is short; which are shown and in which order.

import { compareLines } from "../../fill/bill.ts";
import { isConsumed } from "../../fill/dayNeeds.ts";
import type { NeededPiece } from "../../fill/optimise/pourAdds.ts";
import type { SetPiece } from "../../fill/result.ts";
import type { Family, Kit } from "../../kit/kit.ts";

export interface PieceRow {
  readonly code: string;
  readonly family: Family;
  readonly owned: number;
  /** Filling every wall by itself. */
  readonly wallByWall: number;
  /** With the set that was chosen; null where there is none. */
  readonly chosen: number | null;
  /** Of the set that counts: the chosen one where there is one. */
  readonly toBuy: number;
  /** Of one; null where the kit does not say. */
  readonly price: number | null;
}

/** "panels": wall panels in use, which the choice is about. "used": everything in use. "kit": all that the kit has. */
export type Shown = "panels" | "used" | "kit";

export type Order = "piece" | "owned" | "wallByWall" | "chosen" | "change" | "toBuy" | "cost";

/** How a table is sorted. */
export interface Sorting {
  readonly by: Order;
  /** True: the other way round than a column is sorted at first. */
  readonly isTurned: boolean;
}

export interface PieceSource {
  readonly needed: readonly NeededPiece[];
  readonly chosen: readonly SetPiece[] | null;
  readonly stock: Readonly<Record<string, number>>;
  readonly kit: Kit;
}

/** One row a code, in the order of bills: whatever is needed, owned, or in the kit. */
export function pieceRows({ needed, chosen, stock, kit }: PieceSource): readonly PieceRow[] {
  const before = new Map(needed.map((piece) => [piece.code, piece]));
  const after = new Map((chosen ?? []).map((piece) => [piece.code, piece]));
  const ofKit = new Map(kit.pieces.map((piece) => [piece.code, piece]));
  const families = new Map<string, Family>();
  for (const { code, family } of [...kit.pieces, ...needed, ...(chosen ?? [])]) families.set(code, family);
  return [...families]
    .map(([code, family]): PieceRow => {
      const owned = Object.hasOwn(stock, code) ? stock[code]! : 0;
      const wallByWall = before.get(code)?.needed ?? 0;
      // What stays in the concrete is counted over all pours, which the set does not tell.
      const counted = isConsumed(family) ? wallByWall : (after.get(code)?.needed ?? 0);
      const own = chosen === null ? null : counted;
      const toBuy = Math.max(0, (own ?? wallByWall) - owned);
      return { code, family, owned, wallByWall, chosen: own, toBuy, price: ofKit.get(code)?.price ?? null };
    })
    .sort(compareLines);
}

export function shownRows(rows: readonly PieceRow[], shown: Shown): readonly PieceRow[] {
  if (shown === "kit") return rows;
  return rows.filter(
    (row) =>
      (row.owned > 0 || row.wallByWall > 0 || (row.chosen ?? 0) > 0) &&
      (shown === "used" || row.family === "wall-panel"),
  );
}

/** Figures greatest first, pieces in the order of bills; turned, the other way round. Equals stay in the order of bills. */
export function sortedRows(rows: readonly PieceRow[], { by, isTurned }: Sorting): readonly PieceRow[] {
  const way = isTurned ? -1 : 1;
  return [...rows].sort(
    (a, b) =>
      way * (by === "piece" ? compareLines(a, b) : figureOf(b, by) - figureOf(a, by)) || compareLines(a, b),
  );
}

function figureOf(row: PieceRow, by: Exclude<Order, "piece">): number {
  switch (by) {
    case "change":
      return changeOf(row) ?? 0;
    case "cost":
      return costOf(row) ?? 0;
    default:
      return row[by] ?? 0;
  }
}

/** Pieces needed more than wall by wall; null without a chosen set. */
export function changeOf({ chosen, wallByWall }: PieceRow): number | null {
  return chosen === null ? null : chosen - wallByWall;
}

/** What is to buy costs; null where the kit has no price and something is to buy. */
export function costOf({ toBuy, price }: PieceRow): number | null {
  if (toBuy === 0) return 0;
  return price === null ? null : toBuy * price;
}

export interface PieceSums {
  readonly owned: number;
  readonly wallByWall: number;
  readonly chosen: number | null;
  readonly toBuy: number;
  readonly cost: number;
  /** Kinds of pieces to buy that the kit does not price, so that they are not in the cost. */
  readonly unpriced: number;
}

export function sumsOf(rows: readonly PieceRow[]): PieceSums {
  const sum = (figure: (row: PieceRow) => number) => rows.reduce((total, row) => total + figure(row), 0);
  return {
    owned: sum(({ owned }) => owned),
    wallByWall: sum(({ wallByWall }) => wallByWall),
    chosen: rows.some(({ chosen }) => chosen !== null) ? sum(({ chosen }) => chosen ?? 0) : null,
    toBuy: sum(({ toBuy }) => toBuy),
    cost: sum((row) => costOf(row) ?? 0),
    unpriced: rows.filter((row) => costOf(row) === null).length,
  };
}

/** Wall panels of a set: how many, and in how many sizes. */
export interface PanelCount {
  readonly panels: number;
  readonly sizes: number;
}

export function panelCount(pieces: readonly Pick<SetPiece, "family" | "needed">[]): PanelCount {
  const panels = pieces.filter(({ family, needed }) => family === "wall-panel" && needed > 0);
  return { panels: panels.reduce((sum, { needed }) => sum + needed, 0), sizes: panels.length };
}
