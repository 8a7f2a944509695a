// The limits of the common choice as the form changes them, and the pins of a set that was found, put into the plan.

import { find, listed, type PlanDocument } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import type { Limits, Pinned } from "../../plan/project.ts";

export const NO_LIMITS: Limits = { forbidden: [], mostWidths: null, greatestMass: null };

export function statesLimits({ forbidden, mostWidths, greatestMass }: Limits): boolean {
  return forbidden.length > 0 || mostWidths !== null || greatestMass !== null;
}

export function changeLimits({ limits = NO_LIMITS }: PlanDocument, change: Partial<Limits>): readonly Edit[] {
  return [{ kind: "change-project", set: { limits: { ...limits, ...change } } }];
}

/** Forbids a panel, or allows it again. */
export function toggleForbidden(document: PlanDocument, code: string): readonly Edit[] {
  const { forbidden } = document.limits ?? NO_LIMITS;
  const others = forbidden.filter((each) => each !== code);
  return changeLimits(document, {
    forbidden: others.length < forbidden.length ? others : [...forbidden, code],
  });
}

/** The pins of a set, by unit. */
export interface UnitPins {
  readonly unit: string;
  readonly pinned: readonly Pinned[];
}

/** Puts the pins of a set into the plan, in place of any earlier one's. */
export function keepPins(document: PlanDocument, pins: readonly UnitPins[]): readonly Edit[] {
  return pins
    .filter(({ unit, pinned }) => pinned.length > 0 || pinsInPlan(document, unit).length > 0)
    .map(({ unit, pinned }) => ({ kind: "set-pins", unit, pinned }));
}

/** Takes what a set has pinned out of the plan; no edits where there is nothing. */
export function dropPins(document: PlanDocument): readonly Edit[] {
  return listed(document.units)
    .filter(({ id }) => pinsInPlan(document, id).length > 0)
    .map(({ id }) => ({ kind: "set-pins", unit: id, pinned: [] }));
}

/** Whether the plan holds exactly the pins of this set. */
export function isKept(document: PlanDocument, pins: readonly UnitPins[]): boolean {
  const text = (all: readonly Pinned[]) =>
    all
      .map(({ wall, from, widths, closure, storey }) => JSON.stringify([wall, from, widths, closure, storey]))
      .sort()
      .join();
  return (
    pins.some(({ pinned }) => pinned.length > 0) &&
    pins.every(({ unit, pinned }) => text(pinned) === text(pinsInPlan(document, unit)))
  );
}

function pinsInPlan(document: PlanDocument, unit: string): readonly Pinned[] {
  const records = find(document.units, unit)?.pinned ?? {};
  return Object.values(records).filter(({ by }) => by === "set");
}
