// What each pour needs, place by place: the bill of its unit in its hand, dealt out to rooms, the outside and the shared.

import { FAMILIES, type Family, type Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import { compareNaturally } from "../bill.ts";
import { type Casts, castingsOf, pourDays } from "../castings.ts";
import { entryNames } from "../entryNames.ts";
import { mirrorFill } from "../mirror.ts";
import { type Place, placedPieces, placesOf } from "../placedPieces.ts";
import type { FillDocument, UnitFill } from "../result.ts";

/** What is counted as one kind: a code, and of closures, which are cut for one place, a code in one size. */
export interface DeliverItem {
  /** Tells kinds apart. */
  readonly key: string;
  readonly code: string;
  readonly family: Family;
  /** Of a closure, mm: "37 × 2250"; null = the code says all. */
  readonly cut: string | null;
}

export interface NeedLine {
  readonly item: DeliverItem;
  readonly quantity: number;
  /** By place of the pour; they sum to the quantity. */
  readonly byPlace: readonly number[];
}

export interface PourNeed {
  /** Id of the pour; null in a project without pours. */
  readonly pour: string | null;
  /** Place of its entry in the fill, and what that entry is called: "A", "A@2". */
  readonly entry: number;
  readonly name: string;
  readonly unit: string;
  readonly mirror: boolean;
  /** Place of its day in the order of work, from 0. */
  readonly day: number;
  readonly places: readonly Place[];
  readonly lines: readonly NeedLine[];
}

/**
 * The pours of each day in working order. Lines are in the order of bills.
 *
 * @throws {RangeError} if the fill is of another project
 */
export function pourNeeds(fill: FillDocument, kit: Kit, project: Project): readonly (readonly PourNeed[])[] {
  const castings = castingsOf(project);
  const isOther = castings.some(({ unit }, k) => fill.units[k]?.unit !== unit.id);
  if (isOther || castings.length !== fill.units.length)
    throw new RangeError("the fill is not of this project");
  const names = entryNames(fill);
  const known = new Map<string, Dealt>();
  const dealtOf = ({ casting, mirror }: Casts): Dealt => {
    const key = `${casting} ${mirror}`;
    const unit = fill.units[casting]!;
    const dealt = known.get(key) ?? deal(mirror ? mirrorFill(unit, kit) : unit);
    known.set(key, dealt);
    return dealt;
  };
  return pourDays(project, castings).map((casts, day) =>
    casts.map((cast) => ({
      pour: cast.pour,
      entry: cast.casting,
      name: names[cast.casting]!,
      unit: fill.units[cast.casting]!.unit,
      mirror: cast.mirror,
      day,
      ...dealtOf(cast),
    })),
  );
}

type Dealt = Pick<PourNeed, "places" | "lines">;

function deal(unit: UnitFill): Dealt {
  const places = placesOf(unit);
  const lines = new Map<string, { readonly item: DeliverItem; readonly byPlace: number[] }>();
  const left = new Map(unit.bill.map(({ code, quantity }) => [code, quantity]));
  const add = (item: DeliverItem, place: number, quantity: number) => {
    const given = Math.min(quantity, left.get(item.code) ?? 0);
    if (given === 0) return;
    left.set(item.code, left.get(item.code)! - given);
    const line = lines.get(item.key) ?? { item, byPlace: places.map(() => 0) };
    line.byPlace[place]! += given;
    lines.set(item.key, line);
  };
  for (const { code, family, width, height, place, quantity } of placedPieces(unit)) {
    add(itemOf(code, family, width, height), place, quantity);
  }
  // What has no place of its own is shared by all.
  for (const { code, family, quantity } of unit.bill) {
    add(itemOf(code, family, 0, 0), places.length - 1, quantity);
  }
  const counted = [...lines.values()].map(({ item, byPlace }) => ({
    item,
    byPlace,
    quantity: byPlace.reduce((sum, some) => sum + some, 0),
  }));
  return { places, lines: counted.sort((a, b) => compareItems(a.item, b.item)) };
}

function itemOf(code: string, family: Family, width: number, height: number): DeliverItem {
  const isCut = family === "closure-strip" && width > 0;
  const cut = isCut ? (height === 0 ? `${width}` : `${width} × ${height}`) : null;
  return { key: cut === null ? code : `${code}\n${cut}`, code, family, cut };
}

/** In the order of bills. */
export function compareItems(a: DeliverItem, b: DeliverItem): number {
  return (
    FAMILIES.indexOf(a.family) - FAMILIES.indexOf(b.family) ||
    compareNaturally(a.code, b.code) ||
    compareNaturally(a.cut ?? "", b.cut ?? "")
  );
}
