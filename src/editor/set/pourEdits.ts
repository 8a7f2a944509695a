// What the pours table does to the project, as the edits of one step each.

import { freshId, listed, type PlanDocument } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import { POUR_PREFIX } from "../../plan/editProject.ts";
import type { Storey } from "../../plan/project.ts";
import type { PourRow } from "./pourRows.ts";

/** Every unit one pour, in the order of the units: what a project without pours is taken for. */
export function listUnits({ units }: PlanDocument): readonly Edit[] {
  return listed(units).map(({ id }) => pourOf(id));
}

/** One pour more of a unit, after all others. */
export function addPour(unit: string): readonly Edit[] {
  return [pourOf(unit)];
}

function pourOf(unit: string): Edit {
  return { kind: "add-pour", pour: { name: "", unit, mirror: false, day: null, storey: null } };
}

/** The same pour again, behind the one it is like. */
export function duplicatePour({ pours }: PlanDocument, row: PourRow): readonly Edit[] {
  const all = listed(pours);
  const place = all.findIndex(({ id }) => id === row.id);
  const own = all[place];
  if (own === undefined) return [];
  const { id: _, rank: __, ...pour } = own;
  const copy = freshId(pours, POUR_PREFIX);
  const before = all[place + 1]?.id ?? null;
  return [
    { kind: "add-pour", pour },
    { kind: "move-pour", pour: copy, before },
  ];
}

/**
 * Puts a pour at another place of the working order; no edits where it stands there already.
 *
 * @param place - among all pours, from 0; beyond either end it is taken for the end
 */
export function movePour({ pours }: PlanDocument, pour: string, place: number): readonly Edit[] {
  const all = listed(pours);
  const others = all.filter(({ id }) => id !== pour);
  const to = Math.max(0, Math.min(others.length, place));
  if (all[to]?.id === pour || others.length === all.length) return [];
  return [{ kind: "move-pour", pour, before: others[to]?.id ?? null }];
}

/** One height of a pour's storey changed, null = the project's own. A storey like the project's is none of its own. */
export function changeStorey(
  { storey: usual }: PlanDocument,
  { id, storey }: PourRow,
  change: { readonly [K in "clearHeight" | "slab"]?: number | null },
): readonly Edit[] {
  const own = storey ?? usual;
  const { clearHeight = own.clearHeight, slab = own.slab } = change;
  const next: Storey = {
    ...own,
    clearHeight: clearHeight ?? usual.clearHeight,
    slab: slab ?? usual.slab,
  };
  const isUsual = next.clearHeight === usual.clearHeight && next.slab === usual.slab;
  return [{ kind: "change-pour", pour: id, set: { storey: isUsual ? null : next } }];
}

/** So many pieces of a code are owned; 0 takes it off the list. */
export function changeStock({ stock }: PlanDocument, code: string, count: number): readonly Edit[] {
  const { [code]: _, ...others } = stock;
  const next = count === 0 ? others : { ...others, [code]: count };
  return [{ kind: "change-project", set: { stock: next } }];
}
