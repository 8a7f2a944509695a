// Checks a fill: gathers what each kind of check needs from project, kit and fill, and makes one document of them all.
//
//   fill, kit       ┐
//   loads, concrete ┴▶ an entry ─▶ every kind of check ─▶ CheckDocument ─▶ writeChecks
//                                  (formulas in src/check)
//
// A further kind of check is a function of an entry, added to KINDS with what it takes for granted.

import { CAUTIONS } from "../check/cautions.ts";
import { entryNames } from "../fill/entryNames.ts";
import type { FillDocument } from "../fill/result.ts";
import type { Kit } from "../kit/kit.ts";
import type { Concrete } from "../plan/concrete.ts";
import type { Loads } from "../plan/loads.ts";
import type { Project } from "../plan/project.ts";
import type { Check, CheckDocument, CheckStatus } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";
import { LIFT_ASSUMPTIONS, liftChecks, twoPersonPieces } from "./liftChecks.ts";
import { maturityPoints, strikingPrediction } from "./maturityTable.ts";
import { PANEL_ASSUMPTIONS, panelChecks, pressureTable } from "./panelChecks.ts";
import { PROP_ASSUMPTIONS, propChecks } from "./propChecks.ts";
import { ROW_ASSUMPTIONS, rowChecks } from "./rowChecks.ts";
import { SHORING_ASSUMPTIONS, shoringChecks, shoringRows } from "./shoringChecks.ts";
import { SPACING_ASSUMPTIONS, spacingChecks } from "./spacingChecks.ts";
import { STRIKING_ASSUMPTIONS, strikingChecks } from "./strikingChecks.ts";
import { strikingRows } from "./strikingRows.ts";
import { THRUST_ASSUMPTIONS, thrustChecks } from "./thrustChecks.ts";
import { TIE_ASSUMPTIONS, tieChecks } from "./tieChecks.ts";
import { WHOLE_ASSUMPTIONS, wholeChecks } from "./wholeChecks.ts";

interface Kind {
  readonly checks: (entry: CheckedEntry) => readonly Check[];
  readonly assumptions: readonly string[];
}

/** In the order of the document, entry by entry. */
const KINDS: readonly Kind[] = [
  { checks: panelChecks, assumptions: PANEL_ASSUMPTIONS },
  { checks: rowChecks, assumptions: ROW_ASSUMPTIONS },
  { checks: tieChecks, assumptions: TIE_ASSUMPTIONS },
  { checks: thrustChecks, assumptions: THRUST_ASSUMPTIONS },
  { checks: spacingChecks, assumptions: SPACING_ASSUMPTIONS },
  { checks: propChecks, assumptions: PROP_ASSUMPTIONS },
  { checks: liftChecks, assumptions: LIFT_ASSUMPTIONS },
  { checks: strikingChecks, assumptions: STRIKING_ASSUMPTIONS },
  { checks: shoringChecks, assumptions: SHORING_ASSUMPTIONS },
  { checks: wholeChecks, assumptions: WHOLE_ASSUMPTIONS },
];

export interface Assessed {
  readonly project: Pick<Project, "name" | "storey">;
  readonly kit: Kit;
  readonly fill: FillDocument;
  readonly loads: Loads;
  /** Members of `loads` that the project leaves out. */
  readonly defaults: readonly (keyof Loads)[];
  readonly concrete: Concrete;
  /** Members of `concrete` that the project leaves out. */
  readonly concreteDefaults: readonly (keyof Concrete)[];
}

/** Every check of a filled project, entries in the order of the fill. */
export function assessFill(given: Assessed): CheckDocument {
  const { project, kit, fill, loads, concrete } = given;
  const names = entryNames(fill);
  const entries = fill.units.map(
    (unit, index): CheckedEntry => ({
      name: names[index]!,
      fill: unit,
      storey: unit.storey ?? project.storey,
      kit,
      loads,
      concrete,
    }),
  );
  const checks = entries.flatMap((entry) => KINDS.flatMap((kind) => kind.checks(entry)));
  const count = (status: CheckStatus) => checks.filter((check) => check.status === status).length;
  return {
    format: "panelwright-check",
    version: 1,
    project: project.name,
    cautions: CAUTIONS,
    assumptions: KINDS.flatMap(({ assumptions }) => assumptions),
    loads,
    defaults: given.defaults,
    concrete,
    concreteDefaults: given.concreteDefaults,
    totals: {
      within: count("within"),
      over: count("over"),
      notChecked: count("not-checked"),
      notApplicable: count("not-applicable"),
    },
    pressure: entries.map(pressureTable).filter((table) => table !== null),
    twoPersons: entries.flatMap(twoPersonPieces),
    maturity: maturityPoints(concrete),
    predictions: entries.flatMap(strikingPrediction),
    striking: entries.flatMap(strikingRows),
    shoring: shoringRows(loads),
    checks,
  };
}
