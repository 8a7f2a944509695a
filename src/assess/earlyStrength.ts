// How strong is the slab when its panels are to come down? Measured, or estimated from the log of its temperature.

import {
  equivalentAge,
  eurocodeAge,
  type Interval,
  intervalsUpTo,
  nurseSaul,
  sadgroveAge,
} from "../check/maturity.ts";
import { type Answer, refusalText } from "../check/range.ts";
import { ACI209_FROM_DAYS, aci209Gain, daysOf, PLOWMAN_DATUM, plowmanGain } from "../check/strengthGain.ts";
import { MATURITY_MARGIN } from "../check/strikingStrength.ts";
import type { Concrete } from "../plan/concrete.ts";
import type { Hour, MegaPascal } from "../units.ts";
import type { CheckInput } from "./checkDocument.ts";
import { input } from "./judging.ts";
import { NO_MODEL, type StrengthModel, strengthAt28, strengthModel } from "./strengthModel.ts";

/** `strength` counts against what is required: measured, or estimated less its margin. null: `reason` says why. */
export interface EarlyStrength {
  readonly strength: MegaPascal | null;
  readonly inputs: readonly CheckInput[];
  readonly formula: string;
  readonly source: string;
  readonly reason: string;
}

const MEASURED: Omit<EarlyStrength, "strength" | "inputs"> = {
  formula: "strength as measured",
  source: "the project's own test",
  reason: "",
};
/** The strength of the slab at the hour at which it is to be struck. */
export function earlyStrength(concrete: Concrete): EarlyStrength {
  const { measuredStrength, strikeAt } = concrete;
  if (measuredStrength !== null) {
    const inputs = [input("f_c", "strength measured", measuredStrength, "MPa")];
    return { ...MEASURED, strength: measuredStrength, inputs };
  }
  const model = strengthModel(concrete);
  const unknown = (reason: string, inputs: readonly CheckInput[] = []): EarlyStrength => ({
    formula: model?.formula ?? NO_MODEL.formula,
    source: model?.source ?? NO_MODEL.source,
    strength: null,
    inputs,
    reason,
  });
  if (strikeAt === null)
    return unknown(
      "the project does not say when the slab is struck (concrete.strikeAt), nor what strength was measured",
    );
  if (concrete.log.length === 0)
    return unknown("the project gives no strength measured and no log of the slab's temperature");
  const intervals = intervalsUpTo(concrete.log, strikeAt);
  if (intervals === null)
    return unknown("the log of the temperature ends before the slab is struck; nothing is guessed");
  const maturity = nurseSaul(intervals, concrete.datum);
  const age = equivalentAge(intervals, "variable");
  if (maturity.status === "refused") return unknown(refusalText(maturity));
  if (age.status === "refused") return unknown(refusalText(age));
  const inputs = [
    input("", "struck after", strikeAt, "h"),
    input("T_0", "datum temperature", concrete.datum, "°C"),
    input("M", "maturity", maturity.value, "°C·h"),
    input("t_e", "equivalent age at 20 °C", age.value, "h"),
    ...otherMeasures(concrete, intervals, age.value),
  ];
  if (model === null)
    return unknown(
      "the project gives no tests of the mix (concrete.strengthTests), and no class of cement (concrete.cementClass) or no strength at 28 days (concrete.cubeStrength or cylinderStrength)",
      inputs,
    );
  return estimated({ model, intervals, characteristic: strengthAt28(concrete) }, inputs, unknown);
}

// Beside the figure that counts, what the other measures and models say: how far they are apart is how little is known.
function otherMeasures(
  { cylinderStrength }: Concrete,
  intervals: readonly Interval[],
  age: Hour,
): readonly CheckInput[] {
  const told = (sign: string, name: string, answer: Answer<number>, unit: string) =>
    answer.status === "refused" ? [] : [input(sign, name, answer.value, unit)];
  const plowman = nurseSaul(intervals, PLOWMAN_DATUM);
  return [
    ...told("t_e", "equivalent age by Eurocode 2, annex B", eurocodeAge(intervals), "h"),
    ...told("t_e", "equivalent age by Sadgrove", sadgroveAge(intervals), "h"),
    ...told(
      "",
      `part of the strength by ACI 209, type I, holds from ${ACI209_FROM_DAYS} day`,
      aci209Gain(daysOf(age), "I"),
      "",
    ),
    ...(plowman.status === "refused"
      ? []
      : told(
          "",
          `part of the strength by Plowman, datum ${PLOWMAN_DATUM} °C`,
          plowmanGain(plowman.value, cylinderStrength ?? Number.NaN),
          "",
        )),
  ];
}

function estimated(
  {
    model,
    intervals,
    characteristic,
  }: {
    readonly model: StrengthModel;
    readonly intervals: readonly Interval[];
    readonly characteristic: MegaPascal | null;
  },
  inputs: readonly CheckInput[],
  unknown: (reason: string, inputs: readonly CheckInput[]) => EarlyStrength,
): EarlyStrength {
  const measured = model.measure(intervals);
  if (measured.status === "refused") return unknown(refusalText(measured), inputs);
  const gained = model.strengthOf(measured.value);
  const isYounger = measured.value < model.holdsFrom;
  if (gained.status === "refused") return unknown(isYounger ? model.younger : refusalText(gained), inputs);
  const part =
    characteristic === null
      ? []
      : [input("", "estimate over the strength at 28 days", gained.value / characteristic)];
  const known = [
    ...inputs,
    input("f_cm(t)", "mean strength estimated", gained.value, "MPa"),
    ...part,
    input("", "margin of an estimate", MATURITY_MARGIN, "MPa"),
  ];
  if (isYounger) return unknown(model.younger, known);
  const { formula, source } = model;
  return {
    formula,
    source,
    strength: Math.max(0, gained.value - MATURITY_MARGIN),
    inputs: known,
    reason: "",
  };
}
