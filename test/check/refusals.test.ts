// Bad input to every formula of the folder: a figure outside the range is refused with the range, never carried on.
//
// The list of formulas is made from the files, so that a new one without a row here is a failure. Every number in the
// sound arguments of a row is spoiled in turn: no number, endless, far below, far above.

import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { refusalText } from "../../src/check/range.ts";

const FOLDER = join(import.meta.dirname, "../../src/check");
const files = readdirSync(FOLDER)
  .filter((file) => file.endsWith(".ts"))
  .sort();

type Formula = (...given: readonly unknown[]) => unknown;
interface Row {
  /** Sound arguments: with them there is a figure. */
  readonly args: readonly unknown[];
  /** Numbers that need no range, as paths into the arguments, each with why. */
  readonly free?: Readonly<Record<string, string>>;
}

const ACI = {
  density: 23.5,
  height: 4000,
  temperature: 20,
  rate: 2,
  cement: "portland",
  isRetarded: false,
  slump: 100,
  vibrationDepth: 1000,
  isColumn: false,
};
const { rate: _aciRate, ...ACI_AT_ANY } = ACI;
const PSF = {
  densityPcf: 150,
  heightFeet: 14,
  temperatureF: 60,
  rateFeet: 3,
  cement: "portland",
  isRetarded: false,
  slumpInches: 4,
  vibrationFeet: 4,
  isColumn: false,
};
const { rateFeet: _psfRate, ...PSF_AT_ANY } = PSF;
const CIRIA = {
  density: 25,
  formHeight: 4000,
  height: 4000,
  temperature: 15,
  rate: 2,
  cement: "portland",
  isRetarded: false,
  isColumn: false,
};
const { rate: _ciriaRate, ...CIRIA_AT_ANY } = CIRIA;
const DIN = { density: 25, height: 4000, rate: 2, consistence: "F3", settingEnd: 7 };
const { rate: _dinRate, ...DIN_AT_ANY } = DIN;
const SLAB = { thickness: 150, density: 25, formwork: 0.5 };
const SLAB_PSF = { thicknessInches: 6, densityPcf: 150, formworkPsf: 5 };
const HOURS = [{ hours: 12, temperature: 20 }];
const TESTS = [
  [200, 4],
  [400, 11],
];
const MEMBER = { load: 500, bendingStress: 1500, sectionModulus: 3, modulus: 1.4e6, inertia: 5 };
const STRIP = {
  envelope: { density: 25, height: 2500, greatest: 62.5, knee: 2500 },
  surface: 2500,
  width: 600,
};
const METHODS = "an envelope comes from a method of pressure, which has the ranges";
const OF_ENVELOPE = {
  "0.envelope.density": METHODS,
  "0.envelope.height": METHODS,
  "0.envelope.greatest": METHODS,
  "0.envelope.knee": METHODS,
};
const LATER = "the sum is the caller's own; each part of it has its range";
const OWN_TESTS = "the project's own tests, whose order and ranges the reader holds";

/** By file, then by function. */
const ROWS: Readonly<Record<string, Readonly<Record<string, Row>>>> = {
  "aci347Horizontal.ts": { aci347Horizontal: { args: [100, 10] }, aci347WallBrace: { args: [2500, 2400] } },
  "aci347Pressure.ts": { aci347Pressure: { args: [ACI] }, aci347Rate: { args: [ACI_AT_ANY, 50] } },
  "aci347PressurePsf.ts": {
    aci347PressurePsf: { args: [PSF] },
    aci347RatePsf: { args: [PSF_AT_ANY, 800] },
    aci347BasePsf: { args: ["E1", { rateFeet: 3, temperatureF: 60 }] },
  },
  "aci347SlabLoad.ts": { aci347SlabLoad: { args: [SLAB, false] } },
  "aci347SlabLoadPsf.ts": { aci347SlabLoadPsf: { args: [SLAB_PSF, false] } },
  "aci347Striking.ts": {
    aci347Striking: {
      args: [{ member: "one-way-slab", span: 4000, isLiveGreater: false, shoresUndisturbed: false }],
    },
  },
  "backprops.ts": { backpropped: { args: [5.75, 2] } },
  "bs8110Striking.ts": { bs8110Striking: { args: ["vertical", 15] } },
  "ciria108.ts": { ciria108: { args: [CIRIA] }, ciria108Rate: { args: [CIRIA_AT_ANY, 60] } },
  "concreteTolerances.ts": {
    aci117Plumb: { args: [2400] },
    aci117Thickness: { args: [100] },
    en13670Plumb: { args: [2400] },
    en13670Section: { args: [100] },
    eurocodeSection: { args: [100] },
  },
  "deflectionLimit.ts": { deflectionLimit: { args: [1200, 270] } },
  "din18202Flatness.ts": {
    din18202Flatness: { args: [5, 2000], free: { "0": "a line of the table, a word written as a number" } },
  },
  "din18218.ts": { din18218: { args: [DIN] }, din18218Rate: { args: [DIN_AT_ANY, 60] } },
  "en1065Limit.ts": { propLimit: { args: [20, "design"] } },
  "en1065Strength.ts": {
    en1065Strength: {
      args: [{ class: "B", least: 2000, greatest: 3500, extension: 2400 }],
    },
  },
  "en12812Heaping.ts": { en12812Heaping: { args: [5] } },
  "en12812Horizontal.ts": { en12812Horizontal: { args: [100] } },
  "en12812SlabLoad.ts": { en12812SlabLoad: { args: [SLAB] } },
  "gridLoadPounds.ts": {
    gridLoadPounds: { args: [600, 24, 36] },
    lineLoadPounds: { args: [600, 24] },
    tieSpacingInches: { args: [3000, 1200] },
  },
  "hourReached.ts": {
    hourReached: {
      args: [
        [
          [0, 20],
          [24, 20],
        ],
        100,
        (given: unknown) => FORMULAS.get("maturity.ts nurseSaul")!(given, 0),
      ],
      free: { "1": LATER, "0.0.0": LATER, "0.1.0": LATER, "0.0.1": LATER, "0.1.1": LATER },
    },
  },
  "hydrostatic.ts": { hydrostatic: { args: [25, 2500] } },
  "is456Striking.ts": { is456Striking: { args: ["slab-props", 4000] } },
  "maturity.ts": {
    nurseSaul: { args: [HOURS, 0] },
    equivalentAge: { args: [HOURS, "variable"] },
    astmAge: { args: [HOURS, 23] },
    eurocodeAge: { args: [HOURS] },
    sadgroveAge: { args: [HOURS] },
  },
  "memberSpans.ts": {
    memberSpans: { args: [MEMBER] },
    rollingShearSpan: { args: [57, 6.762, 158] },
    shearSpan: { args: [218, { width: 1.5, depth: 3.5 }, 500] },
  },
  "memberSpansMetric.ts": {
    memberSpansMetric: {
      args: [{ load: 11.39, moment: 2, shear: 12.8, stiffness: 119, deflection: 0.004, part: 360 }],
    },
  },
  "nioshLift.ts": {
    nioshLimit: {
      args: [{ reach: 350, height: 750, travel: 250, twist: 30, frequency: 0.85, coupling: 0.95 }],
    },
  },
  "placingRate.ts": {
    placingRate: { args: [10, 5] },
    placingVolume: { args: [2, 5] },
    volumePerHour: { args: [1, 10] },
  },
  "propLoad.ts": { propLoad: { args: [5, 1.44, 1] } },
  "shoringCycle.ts": {
    shoringCycle: { args: [{ shores: 2, reshores: 1, first: "shores", storeys: 10 }] },
  },
  "strengthGain.ts": {
    eurocodeGain: { args: [7, "N"] },
    eurocodeAgeFor: { args: [0.5, "N"] },
    eurocodeCharacteristic: { args: [25, 7, "N"] },
    aci209Gain: { args: [7, "I"] },
    plowmanGain: { args: [5000, 25] },
  },
  "strengthTests.ts": {
    testedStrength: {
      args: [300, TESTS],
      free: { "1.0.0": OWN_TESTS, "1.0.1": OWN_TESTS, "1.1.0": OWN_TESTS, "1.1.1": OWN_TESTS },
    },
    testedMaturity: {
      args: [7, TESTS],
      free: { "1.0.0": OWN_TESTS, "1.0.1": OWN_TESTS, "1.1.0": OWN_TESTS, "1.1.1": OWN_TESTS },
    },
  },
  "strikingStrength.ts": {
    ciria136Strength: { args: [30, 5, 10] },
    bs8110SoffitStrength: { args: [3] },
    strengthNeeded: { args: [30, 5, 10] },
    proppedSlab: { args: [4.5, 1200, 120] },
  },
  "teamLift.ts": { teamLift: { args: [25] } },
  "tieLoad.ts": { tieLoad: { args: [60, 600, 450] }, tieStrength: { args: [215, 174] } },
  "tieRowChoice.ts": {
    greatestOnRows: { args: [STRIP, [150, 750, 1500]], free: OF_ENVELOPE },
    chooseTieRows: {
      args: [{ ...STRIP, holes: [150, 450, 750, 1050, 1350], limit: 20 }],
      free: OF_ENVELOPE,
    },
  },
  "tieRows.ts": {
    tieRowLoads: {
      args: [{ ...STRIP, rows: [150, 750, 1500], parts: [{ from: 0, to: 2500, width: 600 }] }],
      free: { ...OF_ENVELOPE, "0.width": "not read here" },
    },
  },
  "timberBuckling.ts": { timberBucklingPsi: { args: [522_000, 168, 3.5] } },
  "timberStability.ts": { timberStability: { args: [200, 1600, 0.8] } },
  "tributaryArea.ts": { tributaryArea: { args: [1200, 1200, "edge"] } },
};

/** Parts of formulas above, whose inputs those have held to their ranges, and words; each with why it has no row. */
const NO_ROW: Readonly<Record<string, string>> = {
  "aci347Branches.ts aci347Equation": "a part of aci347Pressure",
  "aci347Branches.ts aci347Greatest": "a part of aci347Pressure",
  "aci347Branches.ts aci347Base": "a part of aci347Pressure",
  "aci347Branches.ts aci347Allowable": "a part of aci347Rate",
  "aci347Coefficients.ts aci347Chemistry": "takes words alone",
  "aci347Coefficients.ts aci347Weight": "a part of aci347Pressure",
  "aci347Coefficients.ts aci347WeightPcf": "a part of aci347PressurePsf",
  "adequacy.ts adequacy": "throws; its own test holds that",
  "din18218.ts din18218Formula": "takes words alone",
  "en1065Limit.ts loadToCompare": "a factor on a load that has its range",
  "en1065Strength.ts en1065Formula": "takes words alone",
  "envelope.ts liquidHead": "a part of hydrostatic",
  "envelope.ts envelopeOf": "a part of the methods of pressure",
  "envelope.ts refusedSize": "the range itself",
  "envelope.ts pressureAt": "reads an envelope",
  "envelope.ts thrustBetween": "reads an envelope",
  "aci347SlabLoad.ts aci347Live": "one of two figures",
  "envelope.ts wallThrust": "reads an envelope",
  "tieRows.ts tieLineLoads": "strips of a line that tieRowLoads has checked",
  "linearBeam.ts loadAt": "statics, a part of tieRowLoads",
  "linearBeam.ts linearBeam": "statics, a part of tieRowLoads",
  "linearBeam.ts linearBeamReactions": "statics, a part of tieRowLoads",
  "maturity.ts intervalsUpTo": "cuts a log that its reader has checked; gives null past its end",
  "power.ts exponential": "throws; its own test holds that",
  "power.ts logarithm": "throws; its own test holds that",
  "power.ts decimalLogarithm": "throws; its own test holds that",
  "power.ts power": "throws; its own test holds that",
  "range.ts refusalOf": "the range itself",
  "range.ts computed": "no formula",
  "range.ts refusalText": "words",
  "rateLimit.ts upTo": "no formula",
  "shoringSteps.ts shoreLoads": "reads a state; shoringCycle has the ranges",
  "shoringSteps.ts shoringAfter": "throws where a step cannot be; its own test holds that",
  "slabBounds.ts selfWeightOf": "a part of the slab loads",
  "strengthGain.ts daysOf": "a change of unit",
  "tieRows.ts forceOf": "the greater of two loads",
};

const FORMULAS = new Map<string, Formula>();
for (const file of files) {
  const module: Readonly<Record<string, unknown>> = await import(join(FOLDER, file));
  for (const [name, found] of Object.entries(module))
    if (isFormula(found)) FORMULAS.set(`${file} ${name}`, found);
}

function isFormula(found: unknown): found is Formula {
  return typeof found === "function";
}

const rows = Object.entries(ROWS).flatMap(([file, functions]) =>
  Object.entries(functions).map(([name, row]) => ({ name: `${file} ${name}`, ...row })),
);

describe("every formula", () => {
  it("has a row here, or a reason to have none, and no row is of a formula that is gone", () => {
    const known = [...rows.map(({ name }) => name), ...Object.keys(NO_ROW)].sort();
    expect([...FORMULAS.keys()].sort()).toEqual(known);
    expect(new Set(known).size).toBe(known.length);
  });

  it.each(rows)("$name gives a figure for sound input", ({ name, args }) => {
    expect(FORMULAS.get(name)!(...args)).toMatchObject({ status: "computed" });
  });
});

/** Paths to every number in a value: "0.rate", "0.1.temperature". */
function numbersIn(value: unknown, path: string): readonly string[] {
  if (typeof value === "number") return [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    numbersIn(inner, path === "" ? key : `${path}.${key}`),
  );
}

function withNumber(value: unknown, [key, ...rest]: readonly string[], bad: number): unknown {
  if (key === undefined) return bad;
  if (Array.isArray(value))
    return value.map((inner, k) => (String(k) === key ? withNumber(inner, rest, bad) : inner));
  return Object.fromEntries(
    Object.entries(value as object).map(([name, inner]) => [
      name,
      name === key ? withNumber(inner, rest, bad) : inner,
    ]),
  );
}

const BAD = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -1e9, 1e12];

describe("a number out of range is refused, with the range", () => {
  const cases = rows.flatMap(({ name, args, free }) =>
    numbersIn(args, "")
      .filter((path) => free?.[path] === undefined)
      .map((path) => ({ name, args, path })),
  );

  it.each(cases)("$name: $path", ({ name, args, path }) => {
    for (const bad of BAD) {
      const spoiled = withNumber(args, path.split("."), bad);
      const answer = FORMULAS.get(name)!(...(spoiled as readonly unknown[]));
      expect(answer, String(bad)).toMatchObject({ status: "refused" });
      const refusal = answer as Parameters<typeof refusalText>[0];
      // One bad input may move the range of another one, which is then the one that is told.
      expect(Number.isNaN(refusal.least) || Number.isNaN(refusal.greatest)).toBe(false);
      expect(refusal.value >= refusal.least && refusal.value <= refusal.greatest).toBe(false);
      expect(refusalText(refusal)).toMatch(/^the .+ is .+; the figure holds from .+ to .+/);
    }
  });

  it("no number that is left out of the ranges is left out by mistake: each is there, and is said why", () => {
    for (const { name, args, free } of rows)
      for (const [path, why] of Object.entries(free ?? {})) {
        expect(numbersIn(args, ""), `${name} ${path}`).toContain(path);
        expect(why).not.toBe("");
      }
  });
});

describe("what is never nothing", () => {
  it.each([
    { name: "deflectionLimit.ts deflectionLimit", path: "0" },
    { name: "aci347Pressure.ts aci347Pressure", path: "0.rate" },
    { name: "aci347Pressure.ts aci347Pressure", path: "0.density" },
    { name: "ciria108.ts ciria108", path: "0.rate" },
    { name: "din18218.ts din18218", path: "0.rate" },
    { name: "hydrostatic.ts hydrostatic", path: "1" },
    { name: "tributaryArea.ts tributaryArea", path: "0" },
    { name: "strikingStrength.ts ciria136Strength", path: "2" },
    { name: "teamLift.ts teamLift", path: "0" },
    { name: "placingRate.ts placingRate", path: "1" },
    { name: "tieLoad.ts tieStrength", path: "1" },
  ])("$name refuses 0 at $path", ({ name, path }) => {
    const { args } = rows.find((row) => row.name === name)!;
    const answer = FORMULAS.get(name)!(...(withNumber(args, path.split("."), 0) as readonly unknown[]));
    expect(answer).toMatchObject({ status: "refused", value: 0 });
  });
});

// 3.45 MPa over a strength of (4.35/7)^(1/0.6)·30 MPa has no end of digits.
it.each([
  { why: "worked out", value: 17.026045440835507, said: "17.026" },
  { why: "given", value: 3600, said: "3600" },
  { why: "none at all", value: Number.NaN, said: "NaN" },
])("a refusal says a figure $why as people write it", ({ value, said }) => {
  const text = refusalText({
    status: "refused",
    input: "strength",
    value,
    least: 6,
    greatest: 17,
    unit: "MPa",
  });
  expect(text).toBe(`the strength is ${said} MPa; the figure holds from 6 to 17 MPa`);
});
