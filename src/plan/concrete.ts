// What a project says of its concrete, for the checks: how it is placed, what it presses with, how it gains strength.
//
// Without a word the concrete presses with its full liquid head, for hand-set forms are filled in one go with concrete
// that flows; a method that gives less has to be named, with everything it goes by.

import {
  andThen,
  failSaying,
  inside,
  list,
  number,
  oneOf,
  type Place,
  pair,
  truth,
} from "../json/checker.ts";
import { object, optional } from "../json/members.ts";
import type { JsonObject } from "../json/value.ts";
import type {
  Celsius,
  Day,
  Hour,
  KiloNewtonPerCubicMetre,
  KiloPascal,
  MegaPascal,
  MetrePerHour,
  Mm,
} from "../units.ts";
import { readStated, type StatedAnswer } from "./statedMember.ts";

export type PressureModel = "liquid head" | "ACI 347" | "ACI 347 inch-pound" | "CIRIA 108" | "DIN 18218";

/** A reading of the temperature: hours since placing, °C. */
export type Reading = readonly [hour: Hour, temperature: Celsius];

/** A test of the mix: maturity over the datum, °C·h, and the strength it had, of cubes where `cubeStrength` is given. */
export type TestedStrength = readonly [maturity: number, strength: MegaPascal];

export interface Concrete {
  readonly pressureModel: PressureModel;
  /** Fresh reinforced concrete in the walls. */
  readonly density: KiloNewtonPerCubicMetre;
  /** How fast it rises, the highest rate of the placing. */
  readonly rate: MetrePerHour | null;
  /** Of the concrete as placed. */
  readonly temperature: Celsius | null;
  readonly cement: "portland" | "blend" | "slow-blend" | null;
  readonly retarder: boolean;
  readonly slump: Mm | null;
  readonly vibrationDepth: Mm;
  readonly consistence: "F1" | "F2" | "F3" | "F4" | "F5" | "F6" | "SCC" | null;
  readonly settingEnd: Hour | null;
  /** How the kit states what ties and panels bear: for loads as they are, or for loads with their factor. */
  readonly formStrength: "permissible" | "design";
  /** Whether the lowest tie takes all down to the floor, or half of it. */
  readonly bottomTie: "whole" | "half";
  /** Characteristic strengths at 28 days, of cylinders and of cubes. */
  readonly cylinderStrength: MegaPascal | null;
  readonly cubeStrength: MegaPascal | null;
  /** How fast the cement gains strength: slow, normal, rapid. */
  readonly cementClass: "S" | "N" | "R" | null;
  /** When slab panels are to come down, hours after placing; props stay. */
  readonly strikeAt: Hour | null;
  /** Measured then, by cubes where `cubeStrength` is given, else by cylinders, cured as the slab. */
  readonly measuredStrength: MegaPascal | null;
  /** Readings of the slab's own coldest point, by time. */
  readonly log: readonly Reading[];
  /** Tests of the mix by maturity over `datum`, both rising: none, or two and more. */
  readonly strengthTests: readonly TestedStrength[];
  /** Temperature at which concrete gains nothing. */
  readonly datum: Celsius;
  /** Load on the slab when it is struck beside its own weight, and what it is designed for in all, unfactored. */
  readonly strikingLoad: KiloPascal;
  readonly serviceLoad: KiloPascal | null;
  /** How long props stay under a slab, and from one day of pouring to the next: how many sets of props turn over. */
  readonly propRetention: Day;
  readonly cycle: Day;
}

/** A log holds no more readings: four an hour over three weeks. */
export const MOST_READINGS = 2000;
export const LOG_RANGES = {
  hour: { least: 0, greatest: 10_000, unit: "h" },
  temperature: { least: -40, greatest: 100, unit: "°C" },
} as const;
/** Common practice, no source: people and tools while forms come down. */
const STRIKING_LOAD: KiloPascal = 0.75;
/** @see IS 456:2000, 11.3.1, read at dreamhomeguide.in: props of slabs that span up to 4.5 m */
const PROP_RETENTION: Day = 7;
/** Common practice, no source: a unit a day. */
const CYCLE: Day = 1;
/** The depth to which the equations of ACI 347 hold. */
const VIBRATION_DEPTH: Mm = 1200;

const reading = pair("a reading [hours, °C]", number(LOG_RANGES.hour), number(LOG_RANGES.temperature));
const log = andThen(
  list(reading, { what: "a list of readings", greatest: MOST_READINGS }),
  (readings, place) => {
    const at = readings.findIndex(([hour], k) => k > 0 && hour <= readings[k - 1]![0]);
    if (at < 0) return readings;
    const before = readings[at - 1]![0];
    return failSaying(inside(place, at), `a reading later than ${before} h`, `one at ${readings[at]![0]} h`);
  },
);

const MOST_TESTS = 50;
export const TEST_RANGES = {
  maturity: { least: 1, greatest: 100_000, unit: "°C·h" },
  strength: { least: 0.1, greatest: 120, unit: "MPa" },
} as const;
const tested = pair("a test [°C·h, MPa]", number(TEST_RANGES.maturity), number(TEST_RANGES.strength));
const strengthTests = andThen(
  list(tested, { what: "a list of tests", greatest: MOST_TESTS }),
  (tests, place) => {
    if (tests.length === 1) return failSaying(place, "two tests or more, or none", "one");
    for (const [k, [maturity, strong]] of tests.entries()) {
      const before = tests[k - 1];
      if (before === undefined || (maturity > before[0] && strong > before[1])) continue;
      const expected = `a test after ${before[0]} °C·h and stronger than ${before[1]} MPa`;
      return failSaying(inside(place, k), expected, `${strong} MPa at ${maturity} °C·h`);
    }
    return tests;
  },
);

const STRENGTH = { least: 5, greatest: 120, unit: "MPa" } as const;

/** The range of every figure, both ends included. */
export const CONCRETE_RANGES = {
  density: { least: 8, greatest: 40, unit: "kN/m³" },
  rate: { least: 0.01, greatest: 50, unit: "m/h" },
  temperature: { least: -10, greatest: 60, unit: "°C" },
  slump: { least: 0, greatest: 300, unit: "mm" },
  vibrationDepth: { least: 0, greatest: 10_000, unit: "mm" },
  settingEnd: { least: 1, greatest: 72, unit: "h" },
  cylinderStrength: STRENGTH,
  cubeStrength: STRENGTH,
  strikeAt: { least: 0.5, greatest: 2000, unit: "h" },
  measuredStrength: { least: 0, greatest: 120, unit: "MPa" },
  datum: { least: -12, greatest: 5, unit: "°C" },
  strikingLoad: { least: 0, greatest: 20, unit: "kPa" },
  serviceLoad: { least: 0.5, greatest: 100, unit: "kPa" },
  propRetention: { least: 0.5, greatest: 120, unit: "d" },
  cycle: { least: 0.25, greatest: 120, unit: "d" },
} as const;

/** The words of every choice. */
export const CONCRETE_CHOICES = {
  pressureModel: ["liquid head", "ACI 347", "ACI 347 inch-pound", "CIRIA 108", "DIN 18218"],
  cement: ["portland", "blend", "slow-blend"],
  consistence: ["F1", "F2", "F3", "F4", "F5", "F6", "SCC"],
  formStrength: ["permissible", "design"],
  bottomTie: ["whole", "half"],
  cementClass: ["S", "N", "R"],
} as const;

const figure = (name: keyof typeof CONCRETE_RANGES) => number(CONCRETE_RANGES[name]);

const shape = {
  pressureModel: optional(oneOf(...CONCRETE_CHOICES.pressureModel), "liquid head"),
  density: optional(figure("density"), 25),
  rate: optional(figure("rate"), null),
  temperature: optional(figure("temperature"), null),
  cement: optional(oneOf(...CONCRETE_CHOICES.cement), null),
  retarder: optional(truth, true),
  slump: optional(figure("slump"), null),
  vibrationDepth: optional(figure("vibrationDepth"), VIBRATION_DEPTH),
  consistence: optional(oneOf(...CONCRETE_CHOICES.consistence), null),
  settingEnd: optional(figure("settingEnd"), null),
  formStrength: optional(oneOf(...CONCRETE_CHOICES.formStrength), "permissible"),
  bottomTie: optional(oneOf(...CONCRETE_CHOICES.bottomTie), "whole"),
  cylinderStrength: optional(figure("cylinderStrength"), null),
  cubeStrength: optional(figure("cubeStrength"), null),
  cementClass: optional(oneOf(...CONCRETE_CHOICES.cementClass), null),
  strikeAt: optional(figure("strikeAt"), null),
  measuredStrength: optional(figure("measuredStrength"), null),
  log: optional(log, []),
  strengthTests: optional(strengthTests, []),
  datum: optional(figure("datum"), 0),
  strikingLoad: optional(figure("strikingLoad"), STRIKING_LOAD),
  serviceLoad: optional(figure("serviceLoad"), null),
  propRetention: optional(figure("propRetention"), PROP_RETENTION),
  cycle: optional(figure("cycle"), CYCLE),
};

/** What each method cannot do without. */
export const MODEL_NEEDS: Readonly<Record<PressureModel, readonly (keyof Concrete)[]>> = {
  "liquid head": [],
  "ACI 347": ["rate", "temperature", "cement", "slump"],
  "ACI 347 inch-pound": ["rate", "temperature", "cement", "slump"],
  "CIRIA 108": ["rate", "temperature", "cement"],
  "DIN 18218": ["rate", "consistence", "settingEnd"],
};

const checker = andThen(object("the concrete", shape), ({ extra: _extra, ...concrete }, place) => {
  const missing = MODEL_NEEDS[concrete.pressureModel].filter((name) => concrete[name] === null);
  for (const name of missing) lacking(place, name, concrete.pressureModel);
  return missing.length === 0 ? concrete : undefined;
});

function lacking(place: Place, name: string, model: PressureModel): void {
  failSaying(inside(place, name), `a value: "${model}" gives no pressure without it`, "nothing");
}

const names = Object.keys(shape) as readonly (keyof typeof shape)[];

/** Reads the member `concrete` of a project. */
export function readConcrete(given: JsonObject): StatedAnswer<Concrete> {
  return readStated(given, "concrete", { checker, names });
}
