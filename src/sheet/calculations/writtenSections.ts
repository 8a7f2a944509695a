// What is written out in full, in the order in which an engineer goes through it: inputs, pressure, ties, thrusts, spacing,
// slab and props, lifting, striking, shoring, completeness. A kind of check that nobody foresaw is written out plainly.

import type { Section } from "../lists/flow.ts";
import { type Calculation, isTicked, ofKind, worstOf } from "./calculation.ts";
import { completenessSections } from "./completeness.ts";
import { inputSections } from "./inputs.ts";
import { liftSections } from "./lifting.ts";
import { predictionSections } from "./prediction.ts";
import { pressureSaid, pressureSections } from "./pressure.ts";
import { shoringSections } from "./shoring.ts";
import { strikingSections } from "./striking.ts";
import { section } from "./strips.ts";
import { kindsOf, summarySection } from "./summary.ts";
import { THRUST_KINDS, thrustSections } from "./thrusts.ts";
import { tieSections } from "./ties.ts";
import { writtenStrips } from "./written.ts";

/** Kinds that sections of their own write out. */
const OWN: readonly string[] = [
  "panel-pressure",
  "placing-rate",
  ...THRUST_KINDS,
  "lift",
  "striking-strength",
  "shoring-slab",
  "shoring-prop",
];
const WITH_TIES: readonly string[] = ["tie-load", "tie-left-out"];
const SPACING: readonly string[] = [
  "tie-spacing",
  "wall-bracket-spacing",
  "ledger-cover",
  "brace-spacing",
  "facade-aligner-spacing",
];

const BRACING: readonly string[] = ["slab-horizontal", "brace-load"];

export function writtenSections(calculation: Calculation): readonly Section[] {
  const model = calculation.ties;
  const own = [...OWN, ...(model === null ? [] : WITH_TIES)];
  const known = ["tie-rows", "base-seal", ...SPACING, "prop-load", ...BRACING];
  const others = kindsOf(calculation).filter(
    (kind) => !own.includes(kind) && !known.includes(kind) && !ofKind(calculation, kind).every(isTicked),
  );
  return [
    summarySection(calculation),
    ...inputSections(calculation),
    ...pressureSections(calculation),
    ...tieSections(calculation, model),
    ...plain(["tie-rows"], calculation),
    ...thrustSections(calculation),
    ...plain(["base-seal"], calculation),
    ...plain(SPACING, calculation),
    ...plain(["prop-load", ...BRACING], calculation),
    ...liftSections(calculation),
    ...strikingSections(calculation),
    ...predictionSections(calculation),
    ...shoringSections(calculation),
    ...plain(others, calculation),
    ...completenessSections(calculation),
  ];
}

function plain(kinds: readonly string[], calculation: Calculation): readonly Section[] {
  const { words, continued } = calculation;
  const said = pressureSaid(calculation);
  return kinds.flatMap((kind) => {
    const worst = worstOf(ofKind(calculation, kind));
    if (worst === null) return [];
    return [section(words.kindOf(kind), writtenStrips(worst, said, calculation), { continued })];
  });
}
