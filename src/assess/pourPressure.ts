// With what does the concrete of a project press on the forms of one placing, by the method it names, and how fast may it
// be placed for a pressure?

import { ACI347_FORMULA, ACI347_SOURCE, aci347Pressure, aci347Rate } from "../check/aci347Pressure.ts";
import {
  ACI347_PSF_SOURCE,
  type Aci347PsfInput,
  aci347PressurePsf,
  aci347RatePsf,
} from "../check/aci347PressurePsf.ts";
import { CIRIA108_FORMULA, CIRIA108_SOURCE, ciria108, ciria108Rate } from "../check/ciria108.ts";
import { DIN18218_SOURCE, din18218, din18218Formula, din18218Rate } from "../check/din18218.ts";
import { ENVELOPE_FORMULA, ENVELOPE_SOURCE, type Envelope, envelopeOf } from "../check/envelope.ts";
import { HYDROSTATIC_FORMULA, HYDROSTATIC_SOURCE, hydrostatic } from "../check/hydrostatic.ts";
import { type Answer, computed } from "../check/range.ts";
import { ANY_RATE, NO_RATE, type RateLimit, upTo } from "../check/rateLimit.ts";
import type { Concrete } from "../plan/concrete.ts";
import type { KiloPascal, Mm } from "../units.ts";
import type { CheckInput } from "./checkDocument.ts";
import type { PouredMember } from "./columns.ts";
import { input } from "./judging.ts";

/** 1.5 on the pressure where the kit states design strengths (from memory of DIN 18218 and EN 12812). */
export const PRESSURE_FACTOR = 1.5;
export const FACTOR_SOURCE = "load factor 1.5 from memory of DIN 18218:2010-01 and EN 12812:2008";

export interface PourPressure {
  readonly envelope: Envelope;
  readonly inputs: readonly CheckInput[];
  readonly formula: string;
  readonly source: string;
}

const METRES_PER_FOOT = 0.3048;
const PCF_PER_KILONEWTON = 6.36588;
const KPA_PER_PSF = 0.0478803;

/** The pressure over a height from the floor to the free surface. Refused where the method does not hold. */
export function pourPressure(
  concrete: Concrete,
  height: Mm,
  member: PouredMember = "wall",
): Answer<PourPressure> {
  const start = {
    inputs: [
      input("", "method", concrete.pressureModel),
      input("w", "density of the concrete", concrete.density, "kN/m³"),
      input("H", "height from the floor to the top of the slab", height / 1000, "m"),
      ...(member === "column" ? [input("", "member", "column, no side over 2 m")] : []),
      ...methodInputs(concrete),
    ],
    source: ENVELOPE_SOURCE,
  };
  const answer = byMethod(concrete, height, member);
  if (answer.status === "refused") return answer;
  const { envelope, formula, source, more } = answer.value;
  return computed({
    envelope,
    inputs: [
      ...start.inputs,
      ...more,
      input("P_max", "greatest pressure", envelope.greatest, "kPa"),
      input("h_s", "depth of the knee", envelope.knee / 1000, "m"),
    ],
    formula: `${formula}; ${ENVELOPE_FORMULA}`,
    source: `${source}; ${start.source}`,
  });
}

interface ByMethod {
  readonly envelope: Envelope;
  readonly formula: string;
  readonly source: string;
  readonly more: readonly CheckInput[];
}

function byMethod(concrete: Concrete, height: Mm, member: PouredMember): Answer<ByMethod> {
  const { density, rate } = concrete;
  switch (concrete.pressureModel) {
    case "liquid head": {
      const answer = hydrostatic(density, height);
      if (answer.status === "refused") return answer;
      const words = { formula: HYDROSTATIC_FORMULA, source: HYDROSTATIC_SOURCE, more: [] };
      return computed({ envelope: answer.value, ...words });
    }
    case "ACI 347": {
      const answer = aci347Pressure({ ...aciInput(concrete, height, member), rate: rate ?? Number.NaN });
      if (answer.status === "refused") return answer;
      const { envelope, equation, weight, chemistry } = answer.value;
      const more = [input("C_w", "for the weight", weight), input("C_c", "for the setting", chemistry)];
      return computed({ envelope, formula: ACI347_FORMULA[equation], source: ACI347_SOURCE, more });
    }
    case "ACI 347 inch-pound": {
      const given = {
        ...psfInput(concrete, height, member),
        rateFeet: (rate ?? Number.NaN) / METRES_PER_FOOT,
      };
      const answer = aci347PressurePsf(given);
      if (answer.status === "refused") return answer;
      const { greatestPsf, equation, weight, chemistry } = answer.value;
      const envelope = envelopeOf(density, height, greatestPsf * KPA_PER_PSF);
      const more = [
        ...psfInputs(given),
        input("C_w", "for the weight", weight),
        input("C_c", "for the setting", chemistry),
        input("", "equation", equation),
        input("P_max", "greatest pressure, in psf", greatestPsf, "psf"),
      ];
      return computed({ envelope, formula: ACI347_PSF_FORMULA, source: ACI347_PSF_SOURCE, more });
    }
    case "CIRIA 108": {
      const answer = ciria108({ ...ciriaInput(concrete, height, member), rate: rate ?? Number.NaN });
      if (answer.status === "refused") return answer;
      const { envelope, c1, c2, k } = answer.value;
      const more = [
        input("h", "height of the placing, here that of the form", height / 1000, "m"),
        input("C1", `for ${member}s`, c1, "√(m·h)"),
        input("C2", "for the setting", c2, "√m"),
        input("K", "for the temperature", k),
      ];
      return computed({ envelope, formula: CIRIA108_FORMULA, source: CIRIA108_SOURCE, more });
    }
    case "DIN 18218": {
      const given = dinInput(concrete, height);
      const answer = din18218({ ...given, rate: rate ?? Number.NaN });
      if (answer.status === "refused") return answer;
      const formula = din18218Formula(given.consistence);
      return computed({ envelope: answer.value, formula, source: DIN18218_SOURCE, more: [] });
    }
  }
}

const ACI347_PSF_FORMULA =
  "E1 P_max = C_w·C_c·(150 + 9000·R/T), E2 C_w·C_c·(150 + 43400/T + 2800·R/T) psf, at least 600·C_w, at most w·H; head w·H";

/** Greatest rate, m/h, at which the concrete keeps a pressure. The full liquid head keeps it at any rate or at none. */
export function pourRate(
  concrete: Concrete,
  height: Mm,
  allowable: KiloPascal,
  member: PouredMember = "wall",
): Answer<RateLimit> {
  switch (concrete.pressureModel) {
    case "liquid head": {
      const answer = hydrostatic(concrete.density, height);
      if (answer.status === "refused") return answer;
      return computed(answer.value.greatest <= allowable ? ANY_RATE : NO_RATE);
    }
    case "ACI 347":
      return aci347Rate(aciInput(concrete, height, member), allowable);
    case "ACI 347 inch-pound": {
      const answer = aci347RatePsf(psfInput(concrete, height, member), allowable / KPA_PER_PSF);
      if (answer.status === "refused" || answer.value.kind !== "upTo") return answer;
      return computed(upTo(answer.value.rate * METRES_PER_FOOT));
    }
    case "CIRIA 108":
      return ciria108Rate(ciriaInput(concrete, height, member), allowable);
    case "DIN 18218":
      return din18218Rate(dinInput(concrete, height), allowable);
  }
}

// The reader has seen to it that what a method needs is there; without it the ranges refuse.
function memberOf({ temperature, cement, retarder }: Concrete, member: PouredMember) {
  return {
    temperature: temperature ?? Number.NaN,
    cement: cement ?? "slow-blend",
    isRetarded: retarder,
    isColumn: member === "column",
  } as const;
}

function aciInput(concrete: Concrete, height: Mm, member: PouredMember) {
  const { density, slump, vibrationDepth } = concrete;
  return { ...memberOf(concrete, member), density, height, slump: slump ?? Number.NaN, vibrationDepth };
}

function psfInput(concrete: Concrete, height: Mm, member: PouredMember) {
  const { temperature, ...wall } = memberOf(concrete, member);
  return {
    ...wall,
    densityPcf: concrete.density * PCF_PER_KILONEWTON,
    heightFeet: height / 1000 / METRES_PER_FOOT,
    temperatureF: temperature * 1.8 + 32,
    slumpInches: (concrete.slump ?? Number.NaN) / 25.4,
    vibrationFeet: concrete.vibrationDepth / 1000 / METRES_PER_FOOT,
  };
}

function ciriaInput(concrete: Concrete, height: Mm, member: PouredMember) {
  return { ...memberOf(concrete, member), density: concrete.density, formHeight: height, height };
}

function dinInput({ density, consistence, settingEnd }: Concrete, height: Mm) {
  return {
    density,
    height,
    consistence: consistence ?? "SCC",
    settingEnd: settingEnd ?? Number.NaN,
  };
}

// The figures of the project as the inch-pound equations take them.
function psfInputs(given: Aci347PsfInput): readonly CheckInput[] {
  return [
    input("w", "density of the concrete, in pcf", given.densityPcf, "pcf"),
    input("H", "height, in feet", given.heightFeet, "ft"),
    input("R", "rate of placing, in feet", given.rateFeet, "ft/h"),
    input("T", "temperature of the concrete, in °F", given.temperatureF, "°F"),
  ];
}

function methodInputs(concrete: Concrete): readonly CheckInput[] {
  const { pressureModel, rate, temperature, cement, retarder, slump, vibrationDepth } = concrete;
  if (pressureModel === "liquid head") return [];
  const placing = [input("R", "rate of placing", rate ?? "", "m/h")];
  if (pressureModel === "DIN 18218") {
    return [
      ...placing,
      input("", "consistence", concrete.consistence ?? ""),
      input("t_E", "end of setting", concrete.settingEnd ?? "", "h"),
    ];
  }
  const setting = [
    input("T", "temperature of the concrete", temperature ?? "", "°C"),
    input("", "cement", cement ?? ""),
    input("", "retarder", retarder ? "yes" : "no"),
  ];
  if (pressureModel === "CIRIA 108") return [...placing, ...setting];
  return [
    ...placing,
    ...setting,
    input("", "slump", slump ?? "", "mm"),
    input("", "depth of vibration", vibrationDepth, "mm"),
  ];
}
