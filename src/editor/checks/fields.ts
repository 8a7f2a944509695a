// The fields of the forms: which members of loads and concrete there are, what each takes, what stands for it by default.
// Ranges, choices and defaults are those of the reader.

import type { JsonObject } from "../../json/value.ts";
import {
  CONCRETE_CHOICES,
  CONCRETE_RANGES,
  MODEL_NEEDS,
  type PressureModel,
  readConcrete,
} from "../../plan/concrete.ts";
import { LOAD_CHOICES, LOAD_RANGES, readLoads, SHORING_RANGES } from "../../plan/loads.ts";

export interface Range {
  readonly least: number;
  readonly greatest: number;
  readonly unit?: string;
  /** Whether it takes whole numbers only. */
  readonly whole?: boolean;
}

export type Takes =
  | ({ readonly kind: "number" } & Range)
  | { readonly kind: "choice"; readonly choices: readonly string[] }
  | { readonly kind: "truth" };

type RangeName = keyof typeof CONCRETE_RANGES;
type ChoiceName = keyof typeof CONCRETE_CHOICES;
export type ConcreteField = RangeName | ChoiceName | "retarder";
export type LoadField = keyof typeof LOAD_RANGES | "slabModel" | "propStrength" | "motorisedCarts";
export type ShoringField = keyof typeof SHORING_RANGES;

const TRUTH: Takes = { kind: "truth" };
const choice = (choices: readonly string[]): Takes => ({ kind: "choice", choices });
const range = (given: Range): Takes => ({ kind: "number", ...given });

export function concreteTakes(name: ConcreteField): Takes {
  if (name === "retarder") return TRUTH;
  return isChoice(name) ? choice(CONCRETE_CHOICES[name]) : range(CONCRETE_RANGES[name]);
}

function isChoice(name: RangeName | ChoiceName): name is ChoiceName {
  return Object.hasOwn(CONCRETE_CHOICES, name);
}

export function loadTakes(name: LoadField): Takes {
  switch (name) {
    case "motorisedCarts":
      return TRUTH;
    case "slabModel":
    case "propStrength":
      return choice(LOAD_CHOICES[name]);
    default:
      return range(LOAD_RANGES[name]);
  }
}

export function shoringTakes(name: ShoringField): Takes {
  return range(SHORING_RANGES[name]);
}

/** What stands for a field that nobody has said; null = nothing does. */
export type Fallback = number | string | boolean | null;

const concrete = readConcrete({});

export function concreteFallback(name: ConcreteField): Fallback {
  return concrete.status === "ok" ? concrete.value[name] : null;
}

/** The default of the density goes with the model of the slab's loads. */
export function loadFallback(name: LoadField, given: JsonObject): Fallback {
  const { slabModel } = given;
  const read = readLoads(slabModel === undefined ? {} : { slabModel });
  return read.status === "ok" ? read.value[name] : null;
}

/** The fields of the pressure that a method asks for, in the order of the form. */
export function pressureFields(model: PressureModel): readonly ConcreteField[] {
  const own: readonly ConcreteField[] = [
    "rate",
    "temperature",
    "cement",
    "slump",
    "consistence",
    "settingEnd",
  ];
  const asked = own.filter((name) => MODEL_NEEDS[model].includes(name));
  const isAci = model === "ACI 347" || model === "ACI 347 inch-pound";
  return [
    "pressureModel",
    "density",
    ...asked,
    ...(isAci || model === "CIRIA 108" ? ["retarder" as const] : []),
    ...(isAci ? ["vibrationDepth" as const] : []),
    "formStrength",
    "bottomTie",
  ];
}

export const STRENGTH_FIELDS: readonly ConcreteField[] = [
  "cylinderStrength",
  "cubeStrength",
  "serviceLoad",
  "strikingLoad",
  "strikeAt",
  "measuredStrength",
  "cementClass",
  "datum",
];

/** How many sets of props turn over. */
export const TURN_FIELDS: readonly ConcreteField[] = ["propRetention", "cycle"];

export const LOAD_FIELDS: readonly LoadField[] = [
  "slabModel",
  "concreteDensity",
  "formworkLoad",
  "motorisedCarts",
  "continuity",
  "propStrength",
];

export const SHORING_FIELDS: readonly ShoringField[] = ["shores", "reshores", "storeys"];

/** The model a project names; the full liquid head where it names none that is known. */
export function modelOf({ pressureModel }: JsonObject): PressureModel {
  return CONCRETE_CHOICES.pressureModel.find((each) => each === pressureModel) ?? "liquid head";
}
