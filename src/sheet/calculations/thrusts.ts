// The section on what pushes and lifts: the greatest thrust on a jamb, the greatest uplift of a sill and of a box, and what
// gets under the feet of the panels. Figures for the list before the pour; no limit is known for them.

import type { Check } from "../../assess/checkDocument.ts";
import { surfaceOf } from "../../assess/tieChecks.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { type Calculation, ofKind, worstOf } from "./calculation.ts";
import { carried, worked } from "./figures.ts";
import type { Step } from "./numbersIn.ts";
import { asProduct } from "./numbersIn.ts";
import { pressureSaid } from "./pressure.ts";
import { section, stepStrip } from "./strips.ts";
import { stripSteps } from "./tieSteps.ts";
import { inputsStrip, placeStrip, reasonStrips, sourceStrip, verdictStrip } from "./written.ts";

export const THRUST_KINDS: readonly string[] = ["jamb-thrust", "sill-uplift", "box-uplift", "base-uplift"];

export function thrustSections(calculation: Calculation): readonly Section[] {
  const { words, continued } = calculation;
  return THRUST_KINDS.flatMap((kind) => {
    const worst = worstOf(ofKind(calculation, kind));
    if (worst === null) return [];
    return [section(words.kindOf(kind), thrustRows(worst, calculation), { continued })];
  });
}

function thrustRows(check: Check, calculation: Calculation): readonly Strip[] {
  const { width } = calculation;
  return [
    placeStrip(check, calculation),
    ...stepsOf(check, calculation).map((step) => stepStrip(step, width)),
    verdictStrip(check, calculation),
    ...reasonStrips(check, calculation),
    ...inputsStrip(check.inputs, pressureSaid(calculation), calculation),
    sourceStrip(check.source.split("; ").slice(-2).join("; "), calculation),
  ];
}

function stepsOf(check: Check, calculation: Calculation): readonly Step[] {
  const { envelope, language } = calculation;
  const number = (name: string) => {
    const found = check.inputs.find((each) => each.sign === name || each.name === name)?.value;
    return typeof found === "number" ? found : null;
  };
  if (envelope === null || check.value === null) return [];
  const fig = (value: number) => carried(value, language);
  const result = `${worked(check.value, language)} ${check.unit}`;
  const [t, c, sill, head] = [number("t"), number("c"), number("sill"), number("head")];
  if (check.kind === "jamb-thrust") {
    if (t === null || c === null || sill === null || head === null) return [];
    const surface = surfaceOf(calculation.entry);
    const parts = [{ from: 0, to: surface, width: (t + c) * 1000 }];
    const line = { envelope, surface, rows: [], parts };
    return [
      { formula: "b = t + c", numbers: `${fig(t)} + ${fig(c)}`, result: `${worked(t + c, language)} m` },
      ...stripSteps(line, [sill * 1000, head * 1000], language),
    ];
  }
  if (check.kind === "base-uplift") {
    const d = number("d");
    if (d === null) return [];
    return [{ formula: "U = P_max·d", numbers: asProduct(`${fig(envelope.greatest)}·${fig(d)}`), result }];
  }
  const [p, width] = [number("p"), number("W")];
  if (p === null || t === null || width === null) return [];
  return [{ formula: "U = p·t·W", numbers: asProduct(`${fig(p)}·${fig(t)}·${fig(width)}`), result }];
}
