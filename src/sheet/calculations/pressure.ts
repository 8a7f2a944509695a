// The section on the pressure of fresh concrete: method, equation with numbers, picture over the height, and what the
// panels bear; then how fast the concrete may rise.

import type { Check, CheckInput } from "../../assess/checkDocument.ts";
import { pourPressure } from "../../assess/pourPressure.ts";
import { surfaceOf } from "../../assess/tieChecks.ts";
import { type Envelope, pressureAt } from "../../check/envelope.ts";
import { ruleValue } from "../../kit/kit.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { type Calculation, ofKind } from "./calculation.ts";
import { carried, stated, worked } from "./figures.ts";
import { asProduct, formulaParts, type Step, stepOf } from "./numbersIn.ts";
import { type PictureRow, pressurePicture } from "./pressurePicture.ts";
import { fixedStrip, gapStrip, section, stepStrip } from "./strips.ts";
import {
  inputKey,
  inputsStrip,
  NOTHING_SAID,
  reasonStrips,
  type Said,
  sourceStrip,
  verdictStrip,
  writtenStrips,
} from "./written.ts";

/** What this section says, so that the others need not say it again. */
export function pressureSaid(calculation: Calculation): Said {
  const pressure = pourPressure(calculation.entry.concrete, surfaceOf(calculation.entry));
  if (pressure.status === "refused") return NOTHING_SAID;
  return {
    parts: new Set(formulaParts(pressure.value.formula)),
    inputs: new Set(pressure.value.inputs.map(inputKey)),
  };
}

export function pressureSections(calculation: Calculation): readonly Section[] {
  const [check] = ofKind(calculation, "panel-pressure");
  if (check === undefined) return [];
  const { words, width, language, continued } = calculation;
  const { envelope } = calculation;
  const surface = surfaceOf(calculation.entry);
  const picture =
    envelope === null
      ? null
      : pressurePicture({ ...rowPressures(envelope, calculation), envelope, surface, width, language });
  const said = pressureSaid(calculation);
  const rows: readonly Strip[] = [
    ...methodSteps(check, calculation).map((step) => stepStrip(step, width)),
    ...(picture === null ? [] : [fixedStrip(picture.marks, picture.height)]),
    verdictStrip(check, calculation),
    ...reasonStrips(check, calculation),
    ...inputsStrip(check.inputs, NOTHING_SAID, calculation),
    sourceStrip(check.source, calculation),
  ];
  // Of columns beside walls, by equations of their own.
  const others = ofKind(calculation, "panel-pressure")
    .slice(1)
    .flatMap((other) => [gapStrip(1), ...writtenStrips(other, said, calculation)]);
  const rates = ofKind(calculation, "placing-rate").flatMap((rate) => [
    gapStrip(1),
    ...writtenStrips(rate, said, calculation),
  ]);
  return [
    section(words.pressure, [...rows, ...others], { continued }),
    ...(rates.length === 0 ? [] : [section(words.kindOf("placing-rate"), rates, { continued })]),
  ];
}

/** The pressure at the floor and at every tie row of the kit. */
function rowPressures(envelope: Envelope, { entry, words, language }: Calculation) {
  const surface = surfaceOf(entry);
  const rows = (ruleValue(entry.kit, "tieRows") ?? []).filter((z) => z < surface);
  return {
    heads: [words.heightMm, "p, kPa"],
    rows: rows.map((row): PictureRow => {
      const cells = [stated(row, language), worked(pressureAt(envelope, surface - row), language)];
      return { row, from: row, to: row, cells, isStrong: false };
    }),
  };
}

/** The method's own equation, the full head, and the depth of the knee. */
function methodSteps(check: Check, calculation: Calculation): readonly Step[] {
  const { language, entry, envelope } = calculation;
  if (envelope === null) return [];
  const { density, pressureModel } = entry.concrete;
  const height = envelope.height / 1000;
  const head: Step = {
    formula: "w·H",
    numbers: asProduct(`${stated(density, language)}·${stated(height, language)}`),
    result: `${worked(density * height, language)} kPa`,
  };
  const knee: Step = {
    formula: "h_s = P_max/w",
    numbers: `${carried(envelope.greatest, language)}/${stated(density, language)}`,
    result: `${worked(envelope.knee / 1000, language)} m`,
  };
  if (pressureModel === "liquid head") return [{ ...head, formula: "P_max = w·H" }, knee];
  const own =
    pressureModel === "ACI 347 inch-pound"
      ? inchPoundSteps(check, calculation)
      : formulaParts(check.formula)
          .filter((part) => /^(?:P_max|K) = /u.test(part))
          .map((part) => stepOf(pressureModel === "CIRIA 108" ? withCeiling(part) : part, check, language));
  return [head, ...own, knee];
}

// The ceiling stands behind the last equation of CIRIA 108 and holds for the first.
function withCeiling(part: string): string {
  const [own = part] = part.split(", at most");
  return own.startsWith("P_max") ? `${own}, at most w·H` : own;
}

const PSF_EQUATIONS: Readonly<Record<string, string>> = {
  E1: "C_w·C_c·(150 + 9000·R/T)",
  E2: "C_w·C_c·(150 + 43400/T + 2800·R/T)",
  head: "w·H",
};
const PSF_UNITS: readonly string[] = ["pcf", "ft", "ft/h", "°F", "psf"];
const KPA_PER_PSF = 0.0478803;

function inchPoundSteps(check: Check, { language }: Calculation): readonly Step[] {
  const isOwn = ({ sign, unit }: CheckInput) => PSF_UNITS.includes(unit) || sign.startsWith("C_");
  const equation = check.inputs.find(({ name }) => name === "equation")?.value;
  const right = PSF_EQUATIONS[`${equation}`];
  const psf = check.inputs.find(({ unit }) => unit === "psf")?.value;
  if (right === undefined || typeof psf !== "number") return [];
  const inputs = check.inputs.filter(isOwn);
  return [
    stepOf(`P_max = ${right}, at least 600·C_w, at most w·H`, { ...check, inputs }, language),
    {
      formula: "P_max",
      numbers: `${stated(psf, language)} × ${stated(KPA_PER_PSF, language)}`,
      result: `${worked(psf * KPA_PER_PSF, language)} kPa`,
    },
  ];
}
