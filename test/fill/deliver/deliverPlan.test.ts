// The delta lists of schemes by hand and at random, against a store where every single piece has a number.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type DeliverPlan,
  deliverPlan,
  deltasOf,
  type SetLine,
} from "../../../src/fill/deliver/deliverPlan.ts";
import type { PourNeed } from "../../../src/fill/deliver/pourNeeds.ts";
import { mirrorFill } from "../../../src/fill/mirror.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import { deliverKit, pourOf, room, schemes } from "../../support/pourNeeds.ts";
import { filled, sampleProject } from "../../support/samples.ts";

const RUNS = { seed: 20_261_127, numRuns: 80 };

interface Token {
  /** null = in the store. */
  at: { readonly pour: PourNeed; readonly place: number } | null;
  /** First day on which it may be taken from where it stands. */
  free: number;
}

/** Carries out every list with numbered pieces; throws where a list asks for a piece that is not there. */
function walked(plan: DeliverPlan, owned: (line: SetLine) => number): void {
  const stock = new Map<string, Token[]>();
  for (const line of plan.set) {
    const count = line.isConsumed ? 0 : owned(line);
    stock.set(
      line.item.key,
      Array.from({ length: count }, () => ({ at: null, free: 0 })),
    );
  }
  const stays = new Map(plan.set.map((line) => [line.item.key, line.stays]));
  const consumed = new Set(plan.set.filter((line) => line.isConsumed).map(({ item }) => item.key));
  plan.days.forEach(({ pours, standing, idle }, day) => {
    const free = (key: string) => day + stays.get(key)! + 1;
    const taken = new Set<Token>();
    const take = (key: string, from: Token["at"], count: number): Token[] => {
      const tokens = stock.get(key)!.filter((token) => {
        const isThere =
          from === null
            ? token.at === null
            : token.at !== null && token.at.pour === from.pour && token.at.place === from.place;
        return isThere && token.free <= day && !taken.has(token);
      });
      if (tokens.length < count)
        throw new Error(`${key} on day ${day}: ${count} asked, ${tokens.length} there`);
      const some = tokens.slice(0, count);
      for (const token of some) taken.add(token);
      return some;
    };
    for (const { moves, fetched, returned } of pours) {
      for (const { item, from, to, quantity } of moves)
        for (const token of take(item.key, from, quantity))
          Object.assign(token, { at: to, free: free(item.key) });
      for (const { item, at, quantity } of returned)
        for (const token of take(item.key, at, quantity)) Object.assign(token, { at: null, free: day + 1 });
      for (const { item, at, quantity } of fetched) {
        if (consumed.has(item.key)) {
          const fresh = Array.from(
            { length: quantity },
            (): Token => ({ at, free: Number.POSITIVE_INFINITY }),
          );
          stock.get(item.key)!.push(...fresh);
        } else
          for (const token of take(item.key, null, quantity))
            Object.assign(token, { at, free: free(item.key) });
      }
    }
    for (const { need } of pours) {
      for (const { item, byPlace } of need.lines) {
        byPlace.forEach((count, place) => {
          const there = stock.get(item.key)!.filter(({ at }) => at?.pour === need && at.place === place);
          expect([item.key, day, place, there.length]).toEqual([item.key, day, place, count]);
        });
      }
    }
    const inStore = (key: string) => stock.get(key)!.filter(({ at }) => at === null).length;
    for (const line of plan.set.filter((each) => !each.isConsumed)) {
      const { key } = line.item;
      const quantityOf = (lines: typeof idle) => lines.find(({ item }) => item.key === key)?.quantity ?? 0;
      expect(inStore(key)).toBe(quantityOf(idle) + owned(line) - line.needed);
      expect(stock.get(key)!.length - inStore(key)).toBe(quantityOf(standing));
    }
  });
}

describe("the lists of any scheme", () => {
  it("can be carried out with the set, piece by piece, and leave every pour complete", () => {
    fc.assert(
      fc.property(schemes, (days) => walked(deltasOf(days, deliverKit), ({ needed }) => needed)),
      RUNS,
    );
  });

  it("cannot with one piece fewer of any kind", () => {
    fc.assert(
      fc.property(schemes, (days) => {
        const plan = deltasOf(days, deliverKit);
        for (const short of plan.set.filter(({ isConsumed }) => !isConsumed)) {
          const owned = (line: SetLine) => line.needed - (line === short ? 1 : 0);
          expect(() => walked(plan, owned)).toThrow(short.item.key);
        }
      }),
      { ...RUNS, numRuns: 25 },
    );
  });

  it("balance: fetched less returned is what more stands than the day before", () => {
    fc.assert(
      fc.property(schemes, (days) => {
        const plan = deltasOf(days, deliverKit);
        for (const { item, isConsumed } of plan.set) {
          if (isConsumed) continue;
          const of = <T extends { readonly item: typeof item; readonly quantity: number }>(
            lines: readonly T[],
          ) => lines.filter((line) => line.item === item).reduce((sum, { quantity }) => sum + quantity, 0);
          plan.days.forEach(({ pours, standing }, day) => {
            const fetched = of(pours.flatMap((pour) => pour.fetched));
            const returned = of(pours.flatMap((pour) => pour.returned));
            expect(fetched - returned).toBe(of(standing) - of(plan.days[day - 1]?.standing ?? []));
          });
        }
      }),
      RUNS,
    );
  });

  it("name what comes into a pour once, and nothing else", () => {
    fc.assert(
      fc.property(schemes, (days) => {
        for (const { pours } of deltasOf(days, deliverKit).days) {
          for (const { need, moves, fetched } of pours) {
            for (const { item, quantity } of need.lines) {
              const come = [...moves, ...fetched].filter((line) => line.item.key === item.key);
              expect(come.reduce((sum, line) => sum + line.quantity, 0)).toBe(quantity);
            }
          }
        }
      }),
      RUNS,
    );
  });
});

const KITCHEN = [room("Kitchen", 8), room("Hall", 4)];

describe("pieces that stay", () => {
  const day = (k: number) => [pourOf({ pour: `p${k}`, day: k, rooms: KITCHEN }, { Prop: [3], Cap: [1] })];
  const plan = deltasOf([0, 1, 2, 3].map(day), deliverKit);
  const setOf = (code: string) => plan.set.find(({ item }) => item.code === code);

  it("need as many as stand in their window", () => {
    expect(setOf("Prop")?.needed).toBe(9); // its own pour and two more
    expect(setOf("Cap")?.needed).toBe(2);
  });

  it("come free after it, and go straight on to the pour of that day", () => {
    const [first, , , fourth] = plan.days.map(({ pours }) => pours[0]!);
    expect(first!.staying.map(({ item, quantity, freeOn }) => [item.code, quantity, freeOn])).toEqual([
      ["Cap", 1, 2],
      ["Prop", 3, 3],
    ]);
    const props = fourth!.moves.filter(({ item }) => item.code === "Prop");
    expect(props.map(({ from, quantity }) => [from.pour.pour, quantity])).toEqual([["p0", 3]]);
    expect(fourth!.fetched).toEqual([]);
  });

  it("are free for nobody when no pour comes after", () => {
    expect(plan.days[3]!.pours[0]!.staying.map(({ freeOn }) => freeOn)).toEqual([null, null]);
  });
});

describe("handed pieces", () => {
  const drawn = { "Brace-left": [2, 0], "Brace-right": [1, 1] };
  const image = { "Brace-left": [1, 1], "Brace-right": [2, 0] };
  const first = pourOf({ pour: "west", day: 0, rooms: KITCHEN }, drawn);
  const second = pourOf({ pour: "east", day: 1, mirror: true, rooms: KITCHEN }, image);

  it("swap rooms when the next pour is the mirror image", () => {
    const { swaps, moves } = deltasOf([[first], [second]], deliverKit).days[1]!.pours[0]!;
    expect(swaps).toEqual([
      { place: 0, left: "Brace-left", right: "Brace-right", before: [2, 1], after: [1, 2] },
      { place: 1, left: "Brace-left", right: "Brace-right", before: [0, 1], after: [1, 0] },
    ]);
    const crossed = moves.filter(({ kind }) => kind !== "own-room");
    expect(
      crossed.map(({ item, from, to, quantity }) => [item.code, from.place, to.place, quantity]),
    ).toEqual([
      ["Brace-left", 0, 1, 1],
      ["Brace-right", 1, 0, 1],
    ]);
  });

  it("are not spoken of between pours of one hand", () => {
    const again = pourOf({ pour: "west 2", day: 1, rooms: KITCHEN }, drawn);
    expect(deltasOf([[first], [again]], deliverKit).days[1]!.pours[0]!.swaps).toEqual([]);
  });
});

describe("the lists of the samples", () => {
  it.each(["row-of-three", "two-bedroom", "mirrored-pair", "awkward"])(
    "of %s count what the bills do",
    (name) => {
      const project = sampleProject(name);
      const fill = filled(project);
      const plan = deliverPlan(fill, demoKit, project);
      for (const { need } of plan.days.flatMap(({ pours }) => pours)) {
        const unit = fill.units[need.entry]!;
        const bill = (need.mirror ? mirrorFill(unit, demoKit) : unit).bill;
        const byCode = new Map<string, number>();
        for (const { item, quantity } of need.lines)
          byCode.set(item.code, (byCode.get(item.code) ?? 0) + quantity);
        expect(Object.fromEntries(byCode)).toEqual(
          Object.fromEntries(bill.map((line) => [line.code, line.quantity])),
        );
      }
      walked(plan, ({ needed }) => needed);
    },
  );

  it("carry nothing from room to room where one unit is poured again and again", () => {
    const project = sampleProject("two-bedroom");
    const { days } = deliverPlan(filled(project), demoKit, project);
    for (const { pours } of days.slice(1)) {
      expect(pours[0]!.moves.every(({ kind }) => kind === "own-room")).toBe(true);
      expect(pours[0]!.returned).toEqual([]);
    }
  });

  it("refuse a fill of another project", () => {
    const fill = filled(sampleProject("one-room"));
    expect(() => deliverPlan(fill, demoKit, sampleProject("two-bedroom"))).toThrow(RangeError);
  });
});
