// Whatever the method, its formula can be worked out again from the inputs listed: each sign in the unit it takes there.

import { describe, expect, it } from "vitest";
import { panelChecks } from "../../src/assess/panelChecks.ts";
import { pourPressure } from "../../src/assess/pourPressure.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit } from "../../src/kit/kit.ts";
import { readConcrete } from "../../src/plan/concrete.ts";
import { value } from "../support/answers.ts";
import { entryOf } from "../support/assessed.ts";
import { fillDocument, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";

const ACI = { rate: 2, temperature: 15, cement: "portland", slump: 100, density: 24 };
const signs = {
  "liquid head": ["w kN/m³"],
  "ACI 347": ["C_w ", "C_c ", "R m/h", "T °C", "w kN/m³", "H m"],
  "ACI 347 inch-pound": ["C_w ", "C_c ", "R ft/h", "T °F", "w pcf", "H ft", "P_max psf"],
  "CIRIA 108": ["w kN/m³", "C1 √(m·h)", "R m/h", "C2 √m", "K ", "H m", "h m", "T °C"],
  "DIN 18218": ["R m/h", "t_E h", "w kN/m³", "H m"],
} as const;
const stated = {
  "liquid head": {},
  "ACI 347": ACI,
  "ACI 347 inch-pound": ACI,
  "CIRIA 108": ACI,
  "DIN 18218": { rate: 2, consistence: "F4", settingEnd: 7 },
} as const;
const MODELS = ["liquid head", "ACI 347", "ACI 347 inch-pound", "CIRIA 108", "DIN 18218"] as const;

function pressureBy(pressureModel: (typeof MODELS)[number]) {
  const read = readConcrete({ pressureModel, ...stated[pressureModel] });
  if (read.status === "invalid") throw new Error("concrete");
  return value(pourPressure(read.value, 4000));
}

describe("the inputs of a pressure", () => {
  it.each(MODELS)("%s: every sign of the formula is listed", (model) => {
    const { inputs, formula } = pressureBy(model);
    const listed = inputs.map(({ sign, unit }) => `${sign} ${unit}`);
    for (const sign of signs[model]) {
      expect(formula).toContain(sign.split(" ")[0]);
      expect(listed).toContain(sign);
    }
  });

  it("give the pressure of ACI 347 in psf again by hand", () => {
    const { inputs } = pressureBy("ACI 347 inch-pound");
    const of = (sign: string, unit: string) =>
      Number(inputs.find((each) => each.sign === sign && each.unit === unit)?.value);
    const base = 150 + (9000 * of("R", "ft/h")) / of("T", "°F");
    expect(of("P_max", "psf")).toBeCloseTo(of("C_w", "") * of("C_c", "") * base, 6);
    expect(of("T", "°F")).toBeCloseTo(59, 9);
    expect(of("R", "ft/h")).toBeCloseTo(6.5617, 4);
  });
});

it("the rate of placing names the load factor that its limits contain", () => {
  const kit: Kit = {
    ...demoKit,
    rules: { ...demoKit.rules, tieLoad: { value: 12, unit: "kN", origin: "invented for the test" } },
  };
  const concrete = { pressureModel: "ACI 347", ...ACI, formStrength: "design" };
  const project = projectOf(roomPlan(0), { concrete });
  const checks = panelChecks(entryOf({ project, fill: fillDocument(project, kit), kit }));
  const rate = checks.find(({ kind }) => kind === "placing-rate");
  expect(rate!.inputs).toContainEqual({ sign: "γ_F", name: "load factor", value: 1.5, unit: "" });
  expect(rate!.source).toMatch(/load factor 1\.5 from memory of/);
});
