// The bundles of a unit: which pieces are strapped together, how many, for which rooms, and in which order they load.
//
//   ▤▤▤▤   A layer holds one size, side by side as far as 600 goes; a bundle has 20 layers or 600 kg at most and
//   ▤▤▤▤   holds one family and height. Bundle 1 is needed first, so it is loaded last.
//
// The limits here are common practice, no source: a stack that stands by itself.

import { placesOf } from "../../fill/placedPieces.ts";
import type { UnitFill } from "../../fill/result.ts";
import type { Family } from "../../kit/kit.ts";
import { type Kg, type Mm, roundTo } from "../../units.ts";
import type { SheetInfo } from "../info.ts";
import { boxedBundles, isBoxed } from "./boxes.ts";
import { BUNDLE_MASS, type BundleRow, gramsOf, type LooseBundle, type Packing } from "./bundle.ts";
import { type ListItem, listItems } from "./listItems.ts";
import { stageOf } from "./stages.ts";

export const STACK_LAYERS = 20;
export const STACK_WIDTH: Mm = 600;
/** Heights of one family that weigh less share a bundle. Common practice, no source. */
const LIGHT_GROUP: Kg = 100;
/** What is not worth a bundle of its own. */
const SCRAP_LAYERS = 2;
const SCRAP_MASS: Kg = 60;

/** The packing of a unit. Its bundles sum to the bill, code by code; the same fill gives the same bundles. */
export function packingOf(unit: UnitFill, info: SheetInfo): Packing {
  const places = placesOf(unit);
  const items = listItems(unit, info);
  const families = [...new Set(items.map(({ family }) => family))].sort((a, b) => stageOf(a) - stageOf(b));
  const bundles = families.flatMap((family) => {
    const own = items.filter((item) => item.family === family);
    const stacked = own.filter((item) => !isBoxed(item));
    return [
      ...own.filter(isBoxed).flatMap((item) => boxedBundles(item, info)),
      ...groupsOf(stacked).flatMap((group) => stackedBundles(group, family, info)),
    ];
  });
  return { places, bundles: bundles.map((bundle, index) => ({ number: index + 1, ...bundle })) };
}

/** Items of one height together, the tallest first; heights that weigh little come together at the end. */
function groupsOf(items: readonly ListItem[]): readonly (readonly ListItem[])[] {
  const byHeight = new Map<Mm, ListItem[]>();
  for (const item of items) {
    const group = byHeight.get(heightOf(item)) ?? [];
    group.push(item);
    byHeight.set(heightOf(item), group);
  }
  const sorted = [...byHeight].sort(([a], [b]) => b - a).map(([, group]) => group);
  const massOf = (group: readonly ListItem[]) =>
    group.reduce((sum, { mass, quantity }) => sum + mass * quantity, 0);
  const heavy = sorted.filter((group) => massOf(group) >= LIGHT_GROUP);
  const light = sorted.filter((group) => massOf(group) < LIGHT_GROUP).flat();
  return light.length === 0 ? heavy : [...heavy, light];
}

function heightOf({ width, height }: ListItem): Mm {
  return height === 0 ? width : height;
}

/** How many of one item lie side by side in a layer; a piece without a known side lies alone. */
export function perLayer(item: Pick<ListItem, "width" | "height">, frameDepth: Mm | null): number {
  const short = item.height === 0 ? frameDepth : Math.min(item.width, item.height);
  if (item.width === 0 || short === null || short <= 0) return 1;
  return Math.max(1, Math.floor(STACK_WIDTH / short));
}

interface Stack {
  readonly counts: Map<ListItem, number[]>;
  grams: number;
  layers: number;
}

/** Fills stack after stack, place after place, wide before narrow. */
function stackedBundles(group: readonly ListItem[], family: Family, info: SheetInfo): readonly LooseBundle[] {
  const places = group[0]!.byPlace.length;
  const stacks: Stack[] = [emptyStack()];
  for (let place = 0; place < places; place++) {
    const wanted = group.filter(({ byPlace }) => byPlace[place]! > 0);
    if (wanted.length === 0) continue;
    if (startsAnew(stacks.at(-1)!, wanted, place, info)) stacks.push(emptyStack());
    for (const item of wanted) {
      for (let left = item.byPlace[place]!; left > 0; left--) {
        if (!takes(stacks.at(-1)!, item, info)) stacks.push(emptyStack());
        put(stacks.at(-1)!, item, place, info);
      }
    }
  }
  return withoutScrap(stacks, info).map((stack) => finished(stack, group, family));
}

/** A last bundle of a piece or two goes on the bundles before it, if they have room for all of it. */
function withoutScrap(stacks: readonly Stack[], info: SheetInfo): readonly Stack[] {
  const last = stacks.at(-1)!;
  if (stacks.length === 1 || last.layers > SCRAP_LAYERS || last.grams > SCRAP_MASS * 1000) return stacks;
  const others = stacks.slice(0, -1).map(copied);
  for (const [item, counts] of last.counts) {
    for (const [place, count] of counts.entries()) {
      for (let left = count; left > 0; left--) {
        const home = others.findLast((stack) => takes(stack, item, info));
        if (home === undefined) return stacks;
        put(home, item, place, info);
      }
    }
  }
  return others;
}

function emptyStack(): Stack {
  return { counts: new Map(), grams: 0, layers: 0 };
}

/** A room whose pieces would fit one bundle is not dealt out over two, unless that leaves a bundle half empty. */
function startsAnew(stack: Stack, wanted: readonly ListItem[], place: number, info: SheetInfo): boolean {
  const isHalfFull = stack.grams >= (BUNDLE_MASS * 1000) / 2 || stack.layers >= STACK_LAYERS / 2;
  return (
    isHalfFull && !takesAll(copied(stack), wanted, place, info) && takesAll(emptyStack(), wanted, place, info)
  );
}

function copied(stack: Stack): Stack {
  return { ...stack, counts: new Map([...stack.counts].map(([item, counts]) => [item, [...counts]])) };
}

/** Puts all it can in the stack it is given. */
function takesAll(stack: Stack, wanted: readonly ListItem[], place: number, info: SheetInfo): boolean {
  for (const item of wanted) {
    for (let left = item.byPlace[place]!; left > 0; left--) {
      if (!takes(stack, item, info)) return false;
      put(stack, item, place, info);
    }
  }
  return true;
}

/** Layers that `count` of one item need. */
function layersOf(item: ListItem, count: number, info: SheetInfo): number {
  return Math.ceil(count / perLayer(item, info.frameDepth));
}

function countIn(stack: Stack, item: ListItem): number {
  return (stack.counts.get(item) ?? []).reduce((sum, some) => sum + some, 0);
}

function layersWith(stack: Stack, item: ListItem, info: SheetInfo): number {
  const count = countIn(stack, item);
  return stack.layers - layersOf(item, count, info) + layersOf(item, count + 1, info);
}

/** An empty stack takes any piece. */
function takes(stack: Stack, item: ListItem, info: SheetInfo): boolean {
  if (stack.counts.size === 0) return true;
  return stack.grams + gramsOf(item) <= BUNDLE_MASS * 1000 && layersWith(stack, item, info) <= STACK_LAYERS;
}

function put(stack: Stack, item: ListItem, place: number, info: SheetInfo): void {
  stack.layers = layersWith(stack, item, info);
  stack.grams += gramsOf(item);
  const counts = stack.counts.get(item) ?? item.byPlace.map(() => 0);
  counts[place]! += 1;
  stack.counts.set(item, counts);
}

function finished(stack: Stack, group: readonly ListItem[], family: Family): LooseBundle {
  const rows = group.flatMap((item): readonly BundleRow[] => {
    const byPlace = stack.counts.get(item);
    return byPlace === undefined ? [] : [{ item, byPlace, quantity: countIn(stack, item) }];
  });
  const heights = new Set(rows.map(({ item }) => heightOf(item)));
  const [height] = heights;
  return {
    family,
    height: heights.size === 1 && height !== undefined && height > 0 ? height : null,
    rows,
    quantity: rows.reduce((sum, { quantity }) => sum + quantity, 0),
    mass: roundTo(stack.grams / 1000, 2),
    layers: stack.layers,
    boxes: null,
    isOver: stack.grams > BUNDLE_MASS * 1000,
  };
}
