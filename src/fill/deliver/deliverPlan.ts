// From pour to pour: what each day fetches from the store, what goes on from room to room, what goes back, what stays where
// it stands, and what of the set lies idle.
//
//   store ──fetched──▶ pour of the day ──moves──▶ a later pour ──…──▶ returned ──▶ store
//
// A piece goes on when its pour is struck: to the pours of the next day, or, if it stays, of so many days later. Of every
// kind: fetched − returned = what stands today − what stood yesterday.

import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import { greatestNeed, isConsumed, pieceFinder, windowNeeds } from "../dayNeeds.ts";
import type { FillDocument } from "../result.ts";
import { type HandedSwap, handedSwaps } from "./handedSwaps.ts";
import { followers, ownPlaces, type Spot, sizeClass } from "./homes.ts";
import { compareItems, type DeliverItem, type NeedLine, type PourNeed, pourNeeds } from "./pourNeeds.ts";
import { sparesOf } from "./spares.ts";
import { type MoveKind, transfer } from "./transfer.ts";

/** A place of a pour that any list can name. */
export interface PourPlace {
  readonly pour: PourNeed;
  /** Index of its place. */
  readonly place: number;
}

export interface CarriedLine {
  readonly item: DeliverItem;
  readonly quantity: number;
}

export interface MovedLine extends CarriedLine {
  readonly from: PourPlace;
  readonly to: PourPlace;
  readonly kind: MoveKind;
}

/** Between the store and a place. */
export interface StoreLine extends CarriedLine {
  readonly at: PourPlace;
}

/** What stays in place when its pour is struck. */
export interface StayingLine extends CarriedLine {
  /** First day, from 0, whose pours can have it; null: none is left. */
  readonly freeOn: number | null;
}

/** One pour and how it gets its pieces. */
export interface PourDelta {
  readonly need: PourNeed;
  readonly moves: readonly MovedLine[];
  readonly fetched: readonly StoreLine[];
  /** From pours that hand on to this one: what no pour of the day needs. */
  readonly returned: readonly StoreLine[];
  /** Pours that hand on to this one, the last first. */
  readonly after: readonly PourNeed[];
  /** Where this pour is the mirror image of the one before it. */
  readonly swaps: readonly HandedSwap[];
  /** Of this pour's own pieces. */
  readonly staying: readonly StayingLine[];
}

export interface DayDelta {
  readonly pours: readonly PourDelta[];
  /** What stands, with what stays of the days before. */
  readonly standing: readonly CarriedLine[];
  /** In the store: of the set without its spares, what does not stand. */
  readonly idle: readonly CarriedLine[];
}

/** A kind of piece in the set that all pours need. */
export interface SetLine {
  readonly item: DeliverItem;
  /** The most that stands at once; of what stays in the concrete, the most of a day. */
  readonly needed: number;
  readonly spare: number;
  /** Days it stays after its own. */
  readonly stays: number;
  readonly isConsumed: boolean;
}

export interface DeliverPlan {
  readonly days: readonly DayDelta[];
  /** In the order of bills. */
  readonly set: readonly SetLine[];
}

/**
 * The delta lists of a fill, by any way it was made.
 *
 * @throws {RangeError} if the fill is of another project
 */
export function deliverPlan(fill: FillDocument, kit: Kit, project: Project): DeliverPlan {
  return deltasOf(pourNeeds(fill, kit, project), kit);
}

/** The delta lists of pours, day by day; a pour's `day` is its place in the list. */
export function deltasOf(days: readonly (readonly PourNeed[])[], kit: Kit): DeliverPlan {
  const byDay = days.map(countsOf);
  const find = pieceFinder(kit);
  const items = new Map(
    days.flat().flatMap(({ lines }) => lines.map(({ item }) => [item.key, item] as const)),
  );
  const set = [...items.values()].sort(compareItems).map((item): SetLine => {
    const stays = isConsumed(item.family) ? 0 : (find(item.code)?.stays ?? 0);
    const needed = greatestNeed({ byDay }, item.key, stays);
    const spare = sparesOf(item.family, needed);
    return { item, needed, spare, stays, isConsumed: isConsumed(item.family) };
  });
  const windows = set.map(({ item, stays }) => windowNeeds({ byDay }, item.key, stays));
  const lines = (count: (k: number) => number) =>
    set.flatMap(({ item, isConsumed }, k) => {
      const quantity = count(k);
      return quantity === 0 || isConsumed ? [] : [{ item, quantity }];
    });
  const fates = days.map((_, day) => dayFate(days, day, set));
  return {
    set,
    days: days.map((pours, day): DayDelta => {
      const { moves, fetched, returned, next } = fates[day]!;
      return {
        pours: pours.map((need, pour): PourDelta => {
          const after = next.filter(({ to }) => to === need).map(({ from }) => from);
          return {
            need,
            moves: moves.filter(({ to }) => to.pour === need),
            fetched: fetched.filter(({ at }) => at.pour === need),
            returned: returned.filter(({ at }) => handsOnTo(at.pour, next, pours) === pour),
            after,
            swaps: after[0] === undefined ? [] : handedSwaps(after[0], need, kit),
            staying: stayingOf(need, set, days.length),
          };
        }),
        standing: lines((k) => windows[k]![day]!),
        idle: lines((k) => set[k]!.needed - windows[k]![day]!),
      };
    }),
  };
}

function countsOf(pours: readonly PourNeed[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { lines } of pours) {
    for (const { item, quantity } of lines) counts.set(item.key, (counts.get(item.key) ?? 0) + quantity);
  }
  return counts;
}

interface Handover {
  readonly from: PourNeed;
  readonly to: PourNeed;
}

interface DayFate {
  readonly moves: readonly MovedLine[];
  readonly fetched: readonly StoreLine[];
  readonly returned: readonly StoreLine[];
  /** Of every pour whose pieces come free this day; those of the day before stand first. */
  readonly next: readonly Handover[];
}

function handsOnTo(from: PourNeed, next: readonly Handover[], pours: readonly PourNeed[]): number {
  const handover = next.find((each) => each.from === from);
  return handover === undefined ? -1 : pours.indexOf(handover.to);
}

// Kinds that stay as long come free together, from the pours of one day.
function dayFate(days: readonly (readonly PourNeed[])[], day: number, set: readonly SetLine[]): DayFate {
  const after = days[day]!;
  const moves: MovedLine[] = [];
  const fetched: StoreLine[] = [];
  const returned: StoreLine[] = [];
  const next: Handover[] = [];
  const lags = [...new Set(set.map(({ stays }) => stays + 1))].sort((a, b) => a - b);
  for (const lag of lags) {
    const before = days[day - lag] ?? [];
    const to = followers(before, after);
    const own = before.map((pour, k) => ownPlaces(pour, after[to[k]!]!));
    for (const [k, from] of before.entries()) next.push({ from, to: after[to[k]!]! });
    for (const { item, stays, isConsumed } of set) {
      if (stays + 1 !== lag) continue;
      const supply = isConsumed ? [] : heapsOf(before, item);
      const done = transfer(supply, heapsOf(after, item), {
        ownOf: ({ pour, place }) => {
          const at = own[pour]![place]!;
          return at < 0 ? null : { pour: to[pour]!, place: at };
        },
        isEqual: (a, b) => {
          const size = sizeClass(before[a.pour]!, a.place);
          return size !== null && size === sizeClass(after[b.pour]!, b.place);
        },
      });
      const at = (pours: readonly PourNeed[], { pour, place }: Spot) => ({ pour: pours[pour]!, place });
      for (const { from, to: goal, count, kind } of done.moves)
        moves.push({ item, quantity: count, from: at(before, from), to: at(after, goal), kind });
      for (const heap of done.fetched) fetched.push({ item, quantity: heap.count, at: at(after, heap) });
      for (const heap of done.returned) returned.push({ item, quantity: heap.count, at: at(before, heap) });
    }
  }
  return { moves, fetched, returned, next };
}

function heapsOf(pours: readonly PourNeed[], item: DeliverItem) {
  return pours.flatMap((need, pour) => {
    const line = lineOf(need, item);
    if (line === undefined) return [];
    return line.byPlace.flatMap((count, place) => (count === 0 ? [] : [{ pour, place, count }]));
  });
}

// Looked up once for each pour, day and kind: a scheme has many.
const byKey = new WeakMap<readonly NeedLine[], ReadonlyMap<string, NeedLine>>();

function lineOf({ lines }: PourNeed, item: DeliverItem): NeedLine | undefined {
  const known = byKey.get(lines) ?? new Map(lines.map((line) => [line.item.key, line]));
  byKey.set(lines, known);
  return known.get(item.key);
}

function stayingOf(need: PourNeed, set: readonly SetLine[], days: number): readonly StayingLine[] {
  return set.flatMap(({ item, stays }) => {
    const quantity = lineOf(need, item)?.quantity ?? 0;
    if (stays === 0 || quantity === 0) return [];
    const free = need.day + stays + 1;
    return [{ item, quantity, freeOn: free < days ? free : null }];
  });
}
