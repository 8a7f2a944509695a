// How strong is the slab when its panels are to come down? Measured, or estimated from the log of its temperature.

import {
  EQUIVALENT_AGE_FORMULA,
  EQUIVALENT_AGE_SOURCE,
  equivalentAge,
  eurocodeAge,
  type Interval,
  intervalsUpTo,
  NURSE_SAUL_FORMULA,
  NURSE_SAUL_SOURCE,
  nurseSaul,
  sadgroveAge,
} from "../check/maturity.ts";
import { type Answer, refusalText } from "../check/range.ts";
import {
  ACI209_FROM_DAYS,
  aci209Gain,
  type CementClass,
  daysOf,
  EUROCODE_FROM_DAYS,
  EUROCODE_GAIN_FORMULA,
  EUROCODE_GAIN_SOURCE,
  eurocodeGain,
  MEAN_OVER_CHARACTERISTIC,
  PLOWMAN_DATUM,
  plowmanGain,
} from "../check/strengthGain.ts";
import { MATURITY_MARGIN, MATURITY_MARGIN_SOURCE } from "../check/strikingStrength.ts";
import type { Concrete } from "../plan/concrete.ts";
import type { Hour, MegaPascal } from "../units.ts";
import type { CheckInput } from "./checkDocument.ts";
import { input } from "./judging.ts";

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
const ESTIMATED = {
  formula: `${EQUIVALENT_AGE_FORMULA}; ${NURSE_SAUL_FORMULA}; ${EUROCODE_GAIN_FORMULA}; less ${MATURITY_MARGIN} MPa`,
  source: `${EQUIVALENT_AGE_SOURCE}; ${NURSE_SAUL_SOURCE}; ${EUROCODE_GAIN_SOURCE}; ${MATURITY_MARGIN_SOURCE}`,
};

/** Cubes gain as cylinders do: what is asked of cubes is answered by cubes, where their strength is given. */
export function strengthAt28({ cubeStrength, cylinderStrength }: Concrete): MegaPascal | null {
  return cubeStrength ?? cylinderStrength;
}

/** The strength of the slab at the hour at which it is to be struck. */
export function earlyStrength(concrete: Concrete): EarlyStrength {
  const { measuredStrength, strikeAt } = concrete;
  if (measuredStrength !== null) {
    const inputs = [input("f_c", "strength measured", measuredStrength, "MPa")];
    return { ...MEASURED, strength: measuredStrength, inputs };
  }
  const unknown = (reason: string, inputs: readonly CheckInput[] = []): EarlyStrength => ({
    ...ESTIMATED,
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
  const { cementClass } = concrete;
  const characteristic = strengthAt28(concrete);
  if (cementClass === null || characteristic === null)
    return unknown(
      "the project gives no class of cement (concrete.cementClass) or no strength at 28 days (concrete.cubeStrength or cylinderStrength)",
      inputs,
    );
  return estimated({ cementClass, characteristic, age: age.value }, inputs, unknown);
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
    cementClass,
    characteristic,
    age,
  }: { readonly cementClass: CementClass; readonly characteristic: MegaPascal; readonly age: Hour },
  inputs: readonly CheckInput[],
  unknown: (reason: string, inputs: readonly CheckInput[]) => EarlyStrength,
): EarlyStrength {
  const gain = eurocodeGain(daysOf(age), cementClass);
  if (gain.status === "refused") return unknown(refusalText(gain), inputs);
  const strength = gain.value * (characteristic + MEAN_OVER_CHARACTERISTIC);
  const known = [
    ...inputs,
    input("β_cc", "part of the strength at 28 days", gain.value),
    input("f_cm(t)", "mean strength estimated", strength, "MPa"),
    input("", "margin of an estimate", MATURITY_MARGIN, "MPa"),
  ];
  if (daysOf(age) < EUROCODE_FROM_DAYS)
    return unknown(
      `the model of strength holds from ${EUROCODE_FROM_DAYS} days at 20 °C on and the slab is younger: test it`,
      known,
    );
  return {
    ...ESTIMATED,
    strength: Math.max(0, strength - MATURITY_MARGIN),
    inputs: known,
    reason: "",
  };
}
