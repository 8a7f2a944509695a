// Which left and right pieces change rooms when the next pour is the mirror image of the one before.
//
// In the mirror a left piece stands where a right one stood. In each room as many of the one are too many as are
// lacking of the other; what differs is carried, the rest changes corners in its own room.

import { partnerOf } from "../../kit/handed.ts";
import type { Kit } from "../../kit/kit.ts";
import { pieceFinder } from "../dayNeeds.ts";
import { codeSwap } from "../mirror.ts";
import type { PourNeed } from "./pourNeeds.ts";

export interface HandedSwap {
  /** Index of the room, the same in both pours. */
  readonly place: number;
  readonly left: string;
  readonly right: string;
  /** Left and right pieces that stood there, and that stand there next. */
  readonly before: readonly [left: number, right: number];
  readonly after: readonly [left: number, right: number];
}

/** Room by room; empty where the second pour is no mirror image of the first. */
export function handedSwaps(before: PourNeed, after: PourNeed, kit: Kit): readonly HandedSwap[] {
  if (before.entry !== after.entry || before.mirror === after.mirror) return [];
  const find = pieceFinder(kit);
  const swap = codeSwap(kit);
  const lefts = new Set<string>();
  for (const { item } of [...before.lines, ...after.lines]) {
    const piece = find(item.code);
    if (piece?.hand == null || partnerOf(kit, piece) === null) continue;
    lefts.add(piece.hand === "left" ? item.code : swap(item.code));
  }
  return before.places.flatMap((_, place) =>
    [...lefts].sort(compareCodes).flatMap((left): readonly HandedSwap[] => {
      const right = swap(left);
      const was = [countOf(before, left, place), countOf(before, right, place)] as const;
      const is = [countOf(after, left, place), countOf(after, right, place)] as const;
      return was[0] + was[1] === 0 ? [] : [{ place, left, right, before: was, after: is }];
    }),
  );
}

function countOf({ lines }: PourNeed, code: string, place: number): number {
  return lines.find(({ item }) => item.code === code)?.byPlace[place] ?? 0;
}

function compareCodes(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
