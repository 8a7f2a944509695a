// The section on what the figures stand on: storey, loads, concrete, rules of the kit; what the project left to a default
// is marked.

import type { Concrete } from "../../plan/concrete.ts";
import type { Loads } from "../../plan/loads.ts";
import { checkText } from "../checkWords/checkText.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { plainText } from "../plainText.ts";
import type { Calculation } from "./calculation.ts";
import { stated } from "./figures.ts";
import { pairStrip, section } from "./strips.ts";

const LOAD_UNITS: Readonly<Partial<Record<keyof Loads, string>>> = {
  concreteDensity: "kN/m³",
  formworkLoad: "kPa",
};
const CONCRETE_UNITS: Readonly<Partial<Record<keyof Concrete, string>>> = {
  density: "kN/m³",
  rate: "m/h",
  temperature: "°C",
  slump: "mm",
  vibrationDepth: "mm",
  settingEnd: "h",
  cylinderStrength: "MPa",
  cubeStrength: "MPa",
  strikeAt: "h",
  measuredStrength: "MPa",
  datum: "°C",
  strikingLoad: "kPa",
  serviceLoad: "kPa",
  propRetention: "d",
  cycle: "d",
};
/** Rules of the kit by which the checks go. */
const RULES = [
  "panelPressure",
  "tieLoad",
  "tieRows",
  "tieSpacing",
  "tieEdge",
  "frameDepth",
  "propPitch",
  "personLimit",
] as const;

export function inputSections(calculation: Calculation): readonly Section[] {
  const { words, continued, entry, width, language } = calculation;
  const { storey } = entry;
  const storeyRows = [
    pairStrip(words.clearHeight, `${stated(storey.clearHeight, language)} mm`, width),
    pairStrip(words.slab, `${stated(storey.slab, language)} mm`, width),
  ];
  return [
    section(words.storey, storeyRows, { continued }),
    section(words.concreteHead, concreteRows(calculation), { continued, isWhole: false }),
    section(words.loadsHead, loadRows(calculation), { continued }),
    section(words.kitRules, ruleRows(calculation), { continued }),
  ];
}

function withDefault(text: string, isDefault: boolean, { words }: Calculation): string {
  return isDefault ? `${text} ${words.byDefault}` : text;
}

function shownValue(value: unknown, unit: string, { language, words }: Calculation): string | null {
  if (value === null || value === undefined) return null;
  if (typeof value === "number") return `${stated(value, language)} ${unit}`.trim();
  if (typeof value === "boolean") return value ? words.yes : words.no;
  return typeof value === "string" ? checkText(value, language) : null;
}

function loadRows(calculation: Calculation): readonly Strip[] {
  const { document, entry, words, width } = calculation;
  const { loads } = entry;
  const names: readonly (keyof Loads)[] = [
    "slabModel",
    "concreteDensity",
    "formworkLoad",
    "motorisedCarts",
    "continuity",
    "propStrength",
  ];
  const rows = names.flatMap((name) => {
    const text = shownValue(loads[name], LOAD_UNITS[name] ?? "", calculation);
    if (text === null) return [];
    return [
      pairStrip(words.loads[name], withDefault(text, document.defaults.includes(name), calculation), width),
    ];
  });
  const { shoring } = loads;
  const scheme =
    shoring === null
      ? words.oneStorey
      : words.scheme(
          shoring.shores,
          shoring.reshores,
          shoring.storeys,
          checkText(shoring.first, calculation.language),
        );
  return [...rows, pairStrip(words.loads.shoring, scheme, width)];
}

function concreteRows(calculation: Calculation): readonly Strip[] {
  const { document, entry, words, width } = calculation;
  const { concrete } = entry;
  return NAMES.flatMap((name) => {
    const value = concrete[name];
    const text =
      name === "log"
        ? logText(concrete, calculation)
        : name === "strengthTests"
          ? testsText(concrete, calculation)
          : shownValue(value, CONCRETE_UNITS[name] ?? "", calculation);
    if (text === null) return [];
    const isDefault = document.concreteDefaults.includes(name) && name !== "log" && name !== "strengthTests";
    return [pairStrip(words.concrete[name], withDefault(text, isDefault, calculation), width)];
  });
}

const NAMES: readonly (keyof Concrete)[] = [
  "pressureModel",
  "density",
  "rate",
  "temperature",
  "cement",
  "retarder",
  "slump",
  "vibrationDepth",
  "consistence",
  "settingEnd",
  "formStrength",
  "bottomTie",
  "cylinderStrength",
  "cubeStrength",
  "cementClass",
  "strikeAt",
  "measuredStrength",
  "log",
  "strengthTests",
  "datum",
  "strikingLoad",
  "serviceLoad",
  "propRetention",
  "cycle",
];

function logText({ log }: Concrete, { words }: Calculation): string | null {
  return log.length === 0 ? null : words.readings(log.length);
}

function testsText({ strengthTests }: Concrete, { language }: Calculation): string | null {
  if (strengthTests.length === 0) return null;
  const shown = strengthTests.map(
    ([maturity, strength]) => `${stated(maturity, language)} °C·h: ${stated(strength, language)} MPa`,
  );
  return shown.join("; ");
}

function ruleRows({ entry, words, width, language }: Calculation): readonly Strip[] {
  return RULES.map((name) => {
    const rule = entry.kit.rules[name];
    if (rule === undefined) return pairStrip(words.rules[name], words.notStated, width);
    const value = Array.isArray(rule.value)
      ? rule.value.map((each) => stated(each, language)).join("; ")
      : typeof rule.value === "number"
        ? stated(rule.value, language)
        : "";
    const label = `${words.rules[name]} (${checkText(plainText(rule.origin), language)})`;
    return pairStrip(label, `${value} ${rule.unit}`, width);
  });
}
