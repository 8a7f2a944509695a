// What the choice of a set depends on, as one text: two states of a project with the same text have the same set, so that a
// result is current again when a change is taken back.

import { withoutSetPins } from "../../fill/setPins.ts";
import type { PlanDocument } from "../../plan/document.ts";
import { documentToProject } from "../../plan/documentProject.ts";
import { NO_LIMITS, statesLimits } from "./limitEdits.ts";

/** What the curves were drawn of. */
export interface CurveInputs {
  /** All but the two below: see {@link inputsOf}. */
  readonly others: string;
  readonly mostWidths: number | null;
  readonly filler: number;
}

/** The same for the curves, which go through widths and charges for fillers themselves. */
export function curveInputsOf(document: PlanDocument): CurveInputs {
  const { objective, limits = NO_LIMITS } = document;
  const { filler = 0, ...weights } = objective;
  const others = written({ ...document, objective: weights, limits: { ...limits, mostWidths: null } });
  return { others, mostWidths: limits.mostWidths, filler };
}

const known = new WeakMap<PlanDocument, string>();

export function inputsOf(document: PlanDocument): string {
  const found = known.get(document) ?? written(document);
  known.set(document, found);
  return found;
}

// Names are for people, loads and concrete for the checks; what an earlier choice pinned is free in the next.
function written(document: PlanDocument): string {
  const { name, revision, language, concrete, loads, extra, units, pours, limits, ...rest } = withoutSetPins(
    documentToProject(document),
  );
  return JSON.stringify({
    ...rest,
    ...(limits !== undefined && statesLimits(limits) && { limits }),
    units: units.map(({ name: _, underlay: __, ...unit }) => unit),
    pours: pours.map(({ name: _, ...pour }) => pour),
  });
}
