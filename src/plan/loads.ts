// What a project says of the loads on its slabs, for the checks: which model, which figures, every default filled in.

import { andThen, failSaying, inside, number, oneOf, truth } from "../json/checker.ts";
import { object, optional, required } from "../json/members.ts";
import type { JsonObject } from "../json/value.ts";
import type { KiloNewtonPerCubicMetre, KiloPascal } from "../units.ts";
import { readStated, type StatedAnswer } from "./statedMember.ts";

export type SlabModel = "EN 12812" | "ACI 347";

/** How storeys are shored one over the other. */
export interface Shoring {
  /** Storeys on shores at once, and storeys on reshores below them. */
  readonly shores: number;
  readonly reshores: number;
  /** What comes out first after a pour. */
  readonly first: "shores" | "reshores";
  readonly storeys: number;
}

export interface Loads {
  readonly slabModel: SlabModel;
  /** Fresh reinforced concrete. */
  readonly concreteDensity: KiloNewtonPerCubicMetre;
  /** Weight of the forms on a square metre. */
  readonly formworkLoad: KiloPascal;
  /** Whether concrete is brought by motorised carts. Only ACI 347 has a load for them. */
  readonly motorisedCarts: boolean;
  /** How much more than its share a prop takes: 1 under panels that end on every line, 1.1 and 1.25 under bearers. */
  readonly continuity: number;
  /** How the strength of a prop is stated: for loads with their factor, or as they are. */
  readonly propStrength: "design" | "permissible";
  /** null: one storey, or nobody has said. */
  readonly shoring: Shoring | null;
}

/** Each model with the density of its own code; the one of the other would make neither's sum. */
const DENSITY: Readonly<Record<SlabModel, KiloNewtonPerCubicMetre>> = { "EN 12812": 25, "ACI 347": 24 };
/** Common practice, no source: light panels weigh a quarter to a half of it. */
const FORMWORK: KiloPascal = 0.5;

/** The range of every figure, both ends included. */
export const LOAD_RANGES = {
  concreteDensity: { least: 8, greatest: 40, unit: "kN/m³" },
  formworkLoad: { least: 0, greatest: 5, unit: "kPa" },
  continuity: { least: 1, greatest: 1.5 },
} as const;
/** Whole numbers of storeys. */
export const SHORING_RANGES = {
  shores: { least: 1, greatest: 6, whole: true },
  reshores: { least: 0, greatest: 6, whole: true },
  storeys: { least: 1, greatest: 60, whole: true },
} as const;
/** The words of every choice. */
export const LOAD_CHOICES = {
  slabModel: ["EN 12812", "ACI 347"],
  propStrength: ["design", "permissible"],
  first: ["shores", "reshores"],
} as const;

const shoring = andThen(
  object("the shoring", {
    shores: required(number(SHORING_RANGES.shores)),
    reshores: optional(number(SHORING_RANGES.reshores), 0),
    first: optional(oneOf(...LOAD_CHOICES.first), "shores"),
    storeys: required(number(SHORING_RANGES.storeys)),
  }),
  ({ extra: _extra, ...scheme }): Shoring => scheme,
);

const shape = {
  slabModel: optional(oneOf(...LOAD_CHOICES.slabModel), "EN 12812"),
  concreteDensity: optional(number(LOAD_RANGES.concreteDensity), null),
  formworkLoad: optional(number(LOAD_RANGES.formworkLoad), FORMWORK),
  motorisedCarts: optional(truth, false),
  continuity: optional(number(LOAD_RANGES.continuity), 1),
  propStrength: optional(oneOf(...LOAD_CHOICES.propStrength), "permissible"),
  shoring: optional(shoring, null),
};

// Reading never counts a stated load as nothing without a word.
const checker = andThen(
  object("the loads", shape),
  ({ extra: _extra, ...loads }, place): Loads | undefined => {
    if (!loads.motorisedCarts || loads.slabModel === "ACI 347")
      return { ...loads, concreteDensity: loads.concreteDensity ?? DENSITY[loads.slabModel] };
    const expected =
      'false with "EN 12812", which has no load for motorised carts, or the slabModel "ACI 347"';
    return failSaying(inside(place, "motorisedCarts"), expected, "true");
  },
);

const names = Object.keys(shape) as readonly (keyof typeof shape)[];

/** Reads the member `loads` of a project. */
export function readLoads(given: JsonObject): StatedAnswer<Loads> {
  return readStated(given, "loads", { checker, names });
}
