// How far may the struck concrete of a storey be from what was drawn, by several standards side by side?
//
// Which of them holds is for the contract to say. How far a form bends uses up a part of each.

import {
  ACI117_MEMORY_SOURCE,
  ACI117_PLUMB_SOURCE,
  aci117Plumb,
  aci117Thickness,
  type Deviation,
  EN13670_SOURCE,
  EUROCODE_SECTION_SOURCE,
  en13670Plumb,
  en13670Section,
  eurocodeSection,
} from "../check/concreteTolerances.ts";
import { DIN18202_SOURCE, din18202Flatness } from "../check/din18202Flatness.ts";
import { type Answer, computed, refusalText } from "../check/range.ts";
import { ruleValue } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import type { ToleranceRow } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";

/** Length of the straightedge of everyday practice. */
const STRAIGHTEDGE: Mm = 2000;

/** Rows of one entry: plumb, thicknesses as they occur, flatness, openings, ties. */
export function toleranceRows(entry: CheckedEntry): readonly ToleranceRow[] {
  const { fill, storey, kit, name: unit } = entry;
  if (fill.faces.length === 0) return [];
  const row = (what: string, rule: string, limit: Answer<Mm | Deviation>, source: string): ToleranceRow => ({
    unit,
    what,
    rule,
    ...deviationOf(limit),
    source,
    note: limit.status === "refused" ? refusalText(limit) : "",
  });
  const height = storey.clearHeight;
  const thicknesses = [...new Set(fill.ties.map(({ length }) => length))].sort((a, b) => a - b);
  const offset = ruleValue(kit, "tieTolerance");
  return [
    row("plumb of a wall over the storey", "ACI 117", aci117Plumb(height), ACI117_PLUMB_SOURCE),
    row("plumb of a wall over the storey", "EN 13670", en13670Plumb(height), EN13670_SOURCE),
    ...thicknesses.flatMap((thickness) => {
      const what = `thickness of walls of ${thickness} mm`;
      return [
        row(what, "ACI 117", aci117Thickness(thickness), ACI117_MEMORY_SOURCE),
        row(what, "EN 13670", en13670Section(thickness), EN13670_SOURCE),
        row(what, "Eurocode 2", eurocodeSection(thickness), EUROCODE_SECTION_SOURCE),
      ];
    }),
    row(FLATNESS, "DIN 18202, line 5", din18202Flatness(5, STRAIGHTEDGE), DIN18202_SOURCE),
    row(FLATNESS, "DIN 18202, line 6, finished", din18202Flatness(6, STRAIGHTEDGE), DIN18202_SOURCE),
    row("width and height of an opening", "ACI 117", computed(OPENING), ACI117_MEMORY_SOURCE),
    ...(offset === undefined
      ? []
      : [
          row(
            "joints that face one another at a tie",
            "kit",
            computed(offset),
            kit.rules.tieTolerance!.origin,
          ),
        ]),
  ];
}

const FLATNESS = `flatness of walls and soffits under ${STRAIGHTEDGE / 1000} m`;
const OPENING: Deviation = { less: 6, more: 25 };

function deviationOf(limit: Answer<Mm | Deviation>): Pick<ToleranceRow, "less" | "more"> {
  if (limit.status === "refused") return { less: null, more: null };
  return typeof limit.value === "number" ? { less: limit.value, more: limit.value } : limit.value;
}
