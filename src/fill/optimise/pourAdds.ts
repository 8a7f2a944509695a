// What each pour adds to the set: by how many pieces the greatest need of any day grows when it is taken into the working
// order, and what those cost beyond the pieces owned. The sum over all pours is the set.
//
//   pour 1   H            W600 110   set 110      +110
//   pour 2   H mirrored   W600 110   set 110        ±0   it finds everything there
//   pour 3   T, same day  W600  42   set 152       +42   pours of one day add up

import type { Kit, Piece } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import { compareLines } from "../bill.ts";
import type { Casting } from "../castings.ts";
import { daysTaken, ownedOf, pieceFinder } from "../dayNeeds.ts";
import { codeSwap } from "../mirror.ts";
import type { BillLine, SetPiece } from "../result.ts";

/** Pieces of one code that a pour adds. */
export type AddedPiece = Pick<SetPiece, "code" | "family"> & {
  readonly count: number;
  /** Those of them that are not owned. */
  readonly toBuy: number;
  /** Of one; null where the kit does not say. */
  readonly price: number | null;
};

export interface PourAdds {
  /** Its id; null where the project lists no pours and each unit is one. */
  readonly pour: string | null;
  readonly unit: string;
  /** In the order of bills; empty where the pour finds everything there. */
  readonly adds: readonly AddedPiece[];
}

/** What is needed of a piece over all pours. */
export type NeededPiece = Omit<SetPiece, "toBuy">;

export interface PoursAdd {
  /** In working order. */
  readonly pours: readonly PourAdds[];
  /** The set, in the order of bills. */
  readonly pieces: readonly NeededPiece[];
}

/**
 * Counts the pours in their working order.
 *
 * @param bills - of each casting, in the order of `castings`
 */
export function pourAdds(
  project: Project,
  kit: Kit,
  castings: readonly Casting[],
  bills: readonly (readonly BillLine[])[],
): PoursAdd {
  const pieces = new Map(kit.pieces.map((piece) => [piece.code, piece]));
  const swap = codeSwap(kit);
  const growing = growingSet(pieceFinder(kit));
  const pours = placedPours(project, castings).map(({ pour, unit, casting, mirror, day }): PourAdds => {
    const adds: AddedPiece[] = [];
    for (const line of bills[casting]!) {
      const code = mirror ? swap(line.code) : line.code;
      const [before, after] = growing.take(day, { ...line, code });
      const owned = ownedOf(project, code);
      if (after > before)
        adds.push({
          code,
          family: line.family,
          count: after - before,
          toBuy: Math.max(0, after - owned) - Math.max(0, before - owned),
          price: pieces.get(code)?.price ?? null,
        });
    }
    return { pour, unit, adds: adds.sort(compareLines) };
  });
  const needed = growing.needed().map(
    ({ code, family, needed: count }): NeededPiece => ({
      code,
      family,
      needed: count,
      owned: ownedOf(project, code),
      price: pieces.get(code)?.price ?? null,
    }),
  );
  return { pours, pieces: needed };
}

interface PlacedPour {
  readonly pour: string | null;
  readonly unit: string;
  readonly casting: number;
  readonly mirror: boolean;
  /** Its day, counted from 0 in working order: pours of one day stand at the place of the first of them. */
  readonly day: number;
}

function placedPours(project: Project, castings: readonly Casting[]): readonly PlacedPour[] {
  if (project.pours.length === 0)
    return castings.map(({ unit }, k) => ({ pour: null, unit: unit.id, casting: k, mirror: false, day: k }));
  const placeOf = new Map(castings.flatMap(({ pours }, casting) => pours.map((id) => [id, casting])));
  const days = new Map<number, number>();
  let count = 0;
  return project.pours.map(({ id, unit, mirror, day: stated }) => {
    const day = (stated === null ? undefined : days.get(stated)) ?? count++;
    if (stated !== null) days.set(stated, day);
    return { pour: id, unit, casting: placeOf.get(id)!, mirror, day };
  });
}

interface Grown {
  readonly line: Pick<BillLine, "code" | "family">;
  /** By day. */
  readonly counts: number[];
  needed: number;
}

interface GrowingSet {
  /** Puts pieces on a day; what was needed of them before, and what is. */
  readonly take: (day: number, line: BillLine) => readonly [before: number, after: number];
  readonly needed: () => readonly {
    readonly code: string;
    readonly family: BillLine["family"];
    needed: number;
  }[];
}

// A piece that stays for so many pours is needed as often as it stands in any window of so many days and one.
function growingSet(cutFrom: (code: string) => Piece | undefined): GrowingSet {
  const grown = new Map<string, Grown>();
  const ofCode = (line: BillLine): Grown => {
    const known = grown.get(line.code) ?? { line, counts: [], needed: 0 };
    grown.set(line.code, known);
    return known;
  };
  return {
    take: (day, line) => {
      const own = ofCode(line);
      const before = own.needed;
      own.counts[day] = (own.counts[day] ?? 0) + line.quantity;
      const stays = daysTaken(line.family, cutFrom(line.code));
      for (let first = Math.max(0, day - stays); first <= day; first++) {
        let sum = 0;
        for (let k = first; k <= Math.min(first + stays, own.counts.length - 1); k++)
          sum += own.counts[k] ?? 0;
        own.needed = Math.max(own.needed, sum);
      }
      return [before, own.needed];
    },
    needed: () =>
      [...grown.values()]
        .map(({ line: { code, family }, needed }) => ({ code, family, needed }))
        .sort(compareLines),
  };
}
