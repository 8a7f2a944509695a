// What every day of work needs of each code: the bills of its pours added up, and the most that stands at once.
//
// The set, the delta lists and the shortage list all count from here.

import type { Family, Kit, Piece } from "../kit/kit.ts";
import type { Project } from "../plan/project.ts";
import type { Casting, Casts } from "./castings.ts";
import { codeSwap } from "./mirror.ts";
import type { BillLine } from "./result.ts";

export interface DayNeeds {
  /** One line for each code that any day needs, in no order; its quantity, mass and area say nothing. */
  readonly lines: readonly Pick<BillLine, "code" | "family">[];
  /** By day: number by code. */
  readonly byDay: readonly ReadonlyMap<string, number>[];
}

/** @param bills - by casting, as drawn: handed pieces of a mirrored pour are swapped here */
export function dayNeeds(
  bills: readonly (readonly BillLine[])[],
  days: readonly (readonly Casts[])[],
  kit: Kit,
): DayNeeds {
  const swap = codeSwap(kit);
  const lines = new Map<string, Pick<BillLine, "code" | "family">>();
  const byDay = days.map((casts) => {
    const counts = new Map<string, number>();
    for (const { casting, mirror } of casts) {
      for (const line of bills[casting]!) {
        const code = mirror ? swap(line.code) : line.code;
        lines.set(code, { code, family: line.family });
        counts.set(code, (counts.get(code) ?? 0) + line.quantity);
      }
    }
    return counts;
  });
  return { lines: [...lines.values()], byDay };
}

/** The most of a code that stands at once where each piece stays for `stays` days after its own. */
export function greatestNeed({ byDay }: Pick<DayNeeds, "byDay">, code: string, stays: number): number {
  return windowNeeds({ byDay }, code, stays).reduce((most, need) => Math.max(most, need), 0);
}

/** By day: what stands when it is poured, with what stays of the `stays` days before. */
export function windowNeeds(
  { byDay }: Pick<DayNeeds, "byDay">,
  code: string,
  stays: number,
): readonly number[] {
  return byDay.map((_, day) =>
    byDay.slice(Math.max(0, day - stays), day + 1).reduce((sum, counts) => sum + (counts.get(code) ?? 0), 0),
  );
}

/**
 * The piece of the kit that a code names: one cut to a length of its own, "Cap250x1200/1000", by the piece it was cut from.
 */
export function pieceFinder(kit: Kit): (code: string) => Piece | undefined {
  const pieces = new Map(kit.pieces.map((piece) => [piece.code, piece]));
  return (code) => {
    const stroke = code.lastIndexOf("/");
    return pieces.get(code) ?? (stroke < 0 ? undefined : pieces.get(code.slice(0, stroke)));
  };
}

/** Stays in the concrete: each pour needs new ones. */
export function isConsumed(family: Family): boolean {
  return family === "tie-sleeve";
}

/** For how many days after its own a piece cannot be had again; without end where it stays in the concrete. */
export function daysTaken(family: Family, piece: Pick<Piece, "stays"> | undefined): number {
  return isConsumed(family) ? Number.POSITIVE_INFINITY : (piece?.stays ?? 0);
}

/** Pieces of this code there are already. */
export function ownedOf({ stock }: Pick<Project, "stock">, code: string): number {
  return Object.hasOwn(stock, code) ? stock[code]! : 0;
}

/** Pours and units, in working order and each once. In a project without pours there are units only. */
export interface Where {
  readonly pours: readonly string[];
  readonly units: readonly string[];
}

/** The pours of the days on which more of a code stands than there are. */
export function whereShort(
  needs: readonly number[],
  owned: number,
  days: readonly (readonly Casts[])[],
  castings: readonly Casting[],
): Where {
  const casts = needs.flatMap((need, day) => (need > owned ? days[day]! : []));
  return {
    pours: casts.flatMap(({ pour }) => pour ?? []),
    units: [...new Set(casts.map(({ casting }) => castings[casting]!.unit.id))],
  };
}
