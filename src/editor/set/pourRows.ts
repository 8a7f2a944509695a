// The rows of the pours table: what is poured when, which pours share a day, which units nobody pours.

import { find, listed, type PlanDocument } from "../../plan/document.ts";
import type { Storey } from "../../plan/project.ts";

/** How a row stands to the other pours of its day. */
export interface SharedDay {
  /** Number of the pour at whose place all of them count. */
  readonly first: number;
  readonly size: number;
  /** Where it stands in the block of rows of that day that lie together. "apart": it lies alone, away from the others. */
  readonly place: "start" | "middle" | "end" | "apart";
}

export interface PourRow {
  readonly id: string;
  /** In working order, from 1. */
  readonly number: number;
  readonly name: string;
  readonly unit: string;
  readonly mirror: boolean;
  readonly day: number | null;
  /** Null: the project's. */
  readonly storey: Storey | null;
  /** Null: a day of its own. */
  readonly shared: SharedDay | null;
}

export function pourRows({ pours }: PlanDocument): readonly PourRow[] {
  const all = listed(pours);
  return all.map(({ id, name, unit, mirror, day, storey }, k): PourRow => {
    const isSame = (at: number) => day !== null && all[at]?.day === day;
    const size = day === null ? 1 : all.filter((pour) => pour.day === day).length;
    const first = 1 + all.findIndex((pour) => pour.day === day);
    const place = isSame(k - 1) ? (isSame(k + 1) ? "middle" : "end") : isSame(k + 1) ? "start" : "apart";
    const shared = size > 1 ? ({ first, size, place } as const) : null;
    return { id, number: k + 1, name, unit, mirror, day, storey, shared };
  });
}

/** Units with something drawn that stand in no pour, by id; none where no pours are listed. */
export function unpoured({ pours, units }: PlanDocument): readonly string[] {
  const all = listed(pours);
  if (all.length === 0) return [];
  return listed(units)
    .filter(({ id, walls }) => Object.keys(walls).length > 0 && !all.some(({ unit }) => unit === id))
    .map(({ id }) => id);
}

/** What a unit is called: its name, or its id where it has none. */
export function unitTitle({ units }: PlanDocument, id: string): string {
  const name = find(units, id)?.name ?? "";
  return name === "" ? id : name;
}
