// What a project says of the loads on its slabs, for the checks: which model, which figures, every default filled in.
//
// The member `loads` is passed on unread when a project is opened, so that a slip in it keeps nobody from drawing; it is
// read here when something is to be checked.

import { andThen, emptyReport, failSaying, inside, number, oneOf, top, truth } from "../json/checker.ts";
import type { Issue } from "../json/issue.ts";
import { object, optional, required } from "../json/members.ts";
import type { JsonObject } from "../json/value.ts";
import type { KiloNewtonPerCubicMetre, KiloPascal } from "../units.ts";

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

/** `defaults`: the members that the project leaves out. "invalid": every mistake, its path beginning with `loads`. */
export type LoadsAnswer =
  | {
      readonly status: "ok";
      readonly loads: Loads;
      readonly defaults: readonly (keyof Loads)[];
      readonly warnings: readonly Issue[];
    }
  | { readonly status: "invalid"; readonly issues: readonly Issue[] };

/** Each model with the density of its own code; the one of the other would make neither's sum. */
const DENSITY: Readonly<Record<SlabModel, KiloNewtonPerCubicMetre>> = { "EN 12812": 25, "ACI 347": 24 };
/** Common practice, no source: light panels weigh a quarter to a half of it. */
const FORMWORK: KiloPascal = 0.5;

const whole = (least: number, greatest: number) => number({ least, greatest, whole: true });
const shoring = andThen(
  object("the shoring", {
    shores: required(whole(1, 6)),
    reshores: optional(whole(0, 6), 0),
    first: optional(oneOf("shores", "reshores"), "shores"),
    storeys: required(whole(1, 60)),
  }),
  ({ shores, reshores, first, storeys }): Shoring => ({ shores, reshores, first, storeys }),
);

const shape = {
  slabModel: optional(oneOf("EN 12812", "ACI 347"), "EN 12812"),
  concreteDensity: optional(number({ least: 8, greatest: 40, unit: "kN/m³" }), null),
  formworkLoad: optional(number({ least: 0, greatest: 5, unit: "kPa" }), FORMWORK),
  motorisedCarts: optional(truth, false),
  continuity: optional(number({ least: 1, greatest: 1.5 }), 1),
  propStrength: optional(oneOf("design", "permissible"), "permissible"),
  shoring: optional(shoring, null),
};

// Reading never counts a stated load as nothing without a word.
const checker = andThen(object("the loads", shape), (read, place) => {
  if (!read.motorisedCarts || read.slabModel === "ACI 347") return read;
  const expected = 'false with "EN 12812", which has no load for motorised carts, or the slabModel "ACI 347"';
  return failSaying(inside(place, "motorisedCarts"), expected, "true");
});

const NAMES: readonly (keyof Loads)[] = [
  "slabModel",
  "concreteDensity",
  "formworkLoad",
  "motorisedCarts",
  "continuity",
  "propStrength",
  "shoring",
];

/** Reads the member `loads` of a project. */
export function readLoads(given: JsonObject): LoadsAnswer {
  const report = emptyReport();
  const read = checker.read(given, inside(top(report), "loads"));
  if (read === undefined) return { status: "invalid", issues: report.issues };
  const { slabModel, concreteDensity, formworkLoad, motorisedCarts, continuity, propStrength } = read;
  return {
    status: "ok",
    loads: {
      slabModel,
      concreteDensity: concreteDensity ?? DENSITY[slabModel],
      formworkLoad,
      motorisedCarts,
      continuity,
      propStrength,
      shoring: read.shoring,
    },
    defaults: NAMES.filter((name) => !Object.hasOwn(given, name)),
    warnings: report.warnings,
  };
}
