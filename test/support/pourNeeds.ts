// Pours for tests of the delta lists: made by hand, and at random, without a plan behind them.

import fc from "fast-check";
import type { NeedLine, PourNeed } from "../../src/fill/deliver/pourNeeds.ts";
import type { Place } from "../../src/fill/placedPieces.ts";
import type { Family } from "../../src/kit/kit.ts";
import { kitOf, panel, piece } from "./kits.ts";

/** Pieces that leave with the forms, that stay one day and two, that stay in the concrete, and a pair of hands. */
export const deliverKit = kitOf([
  panel(600, 2250, { code: "P600" }),
  panel(450, 2250, { code: "P450" }),
  piece({ family: "slab-edge-cap", code: "Cap", height: 250, length: 1200, stays: 1 }),
  piece({ family: "prop", code: "Prop", least: 2000, greatest: 3500, class: null, stays: 2 }),
  piece({ family: "tie-sleeve", code: "Sleeve", length: 100 }),
  piece({ family: "brace", code: "Brace-left", length: 1500, hand: "left" }),
  piece({ family: "brace", code: "Brace-right", length: 1500, hand: "right" }),
]);

export const familyOf = (code: string): Family =>
  deliverKit.pieces.find((each) => each.code === code)!.family;

export function room(name: string, area: number): Place {
  return { kind: "room", name, area };
}

const AROUND: readonly Place[] = [
  { kind: "outside", name: "", area: 0 },
  { kind: "shared", name: "", area: 0 },
];

/** @param counts - by code, then by place: rooms, outside, shared; what is left out is 0 */
export function pourOf(
  given: Partial<PourNeed> & { readonly rooms: readonly Place[] },
  counts: { readonly [code: string]: readonly number[] },
): PourNeed {
  const { rooms, ...rest } = given;
  const places = [...rooms, ...AROUND];
  const lines = Object.entries(counts).flatMap(([code, some]): readonly NeedLine[] => {
    const byPlace = places.map((_, place) => some[place] ?? 0);
    const quantity = byPlace.reduce((sum, each) => sum + each, 0);
    const item = { key: code, code, family: familyOf(code), cut: null };
    return quantity === 0 ? [] : [{ item, quantity, byPlace }];
  });
  return { pour: "p", entry: 0, name: "A", unit: "A", mirror: false, day: 0, ...rest, places, lines };
}

const UNITS = [
  { unit: "A", rooms: [room("Kitchen", 8), room("Hall", 4), room("Bath", 4)] },
  { unit: "B", rooms: [room("Hall", 6), room("Bedroom", 8), room("Store", 2), room("Kitchen", 4)] },
];

const CODES = ["P600", "P450", "Cap", "Prop", "Sleeve"];

/** Schemes of up to six days with one to three pours each; a unit needs the same in each of its pours. */
export const schemes: fc.Arbitrary<readonly (readonly PourNeed[])[]> = fc
  .record({
    needs: fc.tuple(...UNITS.map(({ rooms }) => countsFor(rooms.length + 2))),
    days: fc.array(fc.array(fc.integer({ min: 0, max: UNITS.length - 1 }), { minLength: 1, maxLength: 3 }), {
      minLength: 1,
      maxLength: 6,
    }),
  })
  .map(({ needs, days }) =>
    days.map((units, day) =>
      units.map((entry, k) => {
        const { unit, rooms } = UNITS[entry]!;
        return pourOf({ pour: `${day}.${k}`, entry, name: unit, unit, day, rooms }, needs[entry]!);
      }),
    ),
  );

function countsFor(places: number): fc.Arbitrary<{ [code: string]: number[] }> {
  const some = fc.array(fc.integer({ min: 0, max: 4 }), { minLength: places, maxLength: places });
  return fc
    .tuple(...CODES.map(() => some))
    .map((all) => Object.fromEntries(all.map((counts, k) => [CODES[k]!, counts])));
}
