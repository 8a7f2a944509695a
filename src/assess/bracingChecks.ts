// Which horizontal loads go into the bracing of slab and walls? Figures for the list before the pour: no kit states what
// braces, and walls that are closed and tied, bear sideways.

import {
  ACI347_BRACE_FORMULA,
  ACI347_BRACE_SOURCE,
  ACI347_HORIZONTAL_FORMULA,
  ACI347_HORIZONTAL_SOURCE,
  aci347Horizontal,
  aci347WallBrace,
} from "../check/aci347Horizontal.ts";
import {
  EN12812_HORIZONTAL_FORMULA,
  EN12812_HORIZONTAL_SOURCE,
  en12812Horizontal,
} from "../check/en12812Horizontal.ts";
import { refusalText } from "../check/range.ts";
import type { Soffit } from "../fill/result.ts";
import { ringArea, ringBox } from "../geom/ring.ts";
import { ruleValue } from "../kit/kit.ts";
import type { SquareMetre } from "../units.ts";
import type { Check } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";
import { input, notApplicable, notChecked, placeIn, unjudged } from "./judging.ts";
import { slabLoad, slabLoadWords, slabWeight } from "./slabLoad.ts";
import { formedSlabs } from "./strikingRows.ts";

/** What these figures take for granted. */
export const BRACING_ASSUMPTIONS: readonly string[] = [
  "Props take vertical load alone: the horizontal load of the slab goes into the forms of the walls it is cast with, closed, pinned and braced.",
];

/** The horizontal load of the slabs of an entry, then that of a brace of its walls. */
export function bracingChecks(entry: CheckedEntry): readonly Check[] {
  if (entry.fill.faces.length === 0) return [];
  return [...slabCheck(entry), braceCheck(entry)];
}

function slabCheck(entry: CheckedEntry): readonly Check[] {
  const slabs = formedSlabs(entry);
  if (slabs.length === 0) return [];
  const { loads, storey, name } = entry;
  const isEn = loads.slabModel === "EN 12812";
  const words = slabLoadWords(loads, storey.slab);
  const area = slabs.reduce((sum, soffit) => sum + areaOf(soffit), 0);
  const box = ringBox(slabs.flatMap(({ outline }) => outline));
  const edge = Math.max(box.maxX - box.minX, box.maxY - box.minY) / 1000;
  const start = unjudged({
    id: `${name}/slab-horizontal`,
    kind: "slab-horizontal",
    where: placeIn(name),
    unit: "kN",
    inputs: [...words.inputs, input("A", "slabs on forms", area, "m²")],
    formula: `${words.formula}; ${isEn ? EN12812_HORIZONTAL_FORMULA : ACI347_HORIZONTAL_FORMULA}`,
    source: `load: ${words.source}; ${isEn ? EN12812_HORIZONTAL_SOURCE : ACI347_HORIZONTAL_SOURCE}`,
  });
  const load = slabLoad(loads, storey.slab);
  if (load.status === "refused") return [notChecked(start, refusalText(load))];
  const dead = (slabWeight(loads, storey.slab) + loads.formworkLoad) * area;
  const sideways = isEn ? en12812Horizontal(load.value.total * area) : aci347Horizontal(dead, edge);
  if (sideways.status === "refused") return [notChecked(start, refusalText(sideways))];
  const inputs = isEn
    ? [...load.value.parts, input("V", "vertical load in all", load.value.total * area, "kN")]
    : [input("D", "dead load in all", dead, "kN"), input("L", "longest edge of the floor", edge, "m")];
  return [
    notChecked(
      { ...start, value: sideways.value, inputs: [...start.inputs, ...inputs] },
      "nothing states what takes it: close, pin and brace the walls before the slab is loaded, or brace the props",
    ),
  ];
}

function areaOf({ outline, holes }: Soffit): SquareMetre {
  const of = (ring: Soffit["outline"]) => Math.abs(ringArea(ring)) / 1e6;
  return of(outline) - holes.reduce((sum, hole) => sum + of(hole), 0);
}

function braceCheck(entry: CheckedEntry): Check {
  const { kit, storey, name } = entry;
  const spacing = ruleValue(kit, "braceSpacing");
  const height = storey.clearHeight + storey.slab;
  const start = unjudged({
    id: `${name}/brace-load`,
    kind: "brace-load",
    where: placeIn(name),
    unit: "kN",
    inputs: [
      input("H", "height of the form", height / 1000, "m"),
      ...(spacing === undefined ? [] : [input("s", "spacing of braces (braceSpacing)", spacing / 1000, "m")]),
    ],
    formula: ACI347_BRACE_FORMULA,
    source: ACI347_BRACE_SOURCE,
  });
  if (!entry.fill.fittings.some(({ family }) => family === "brace"))
    return notApplicable(start, "the fill has no braces");
  if (spacing === undefined)
    return notChecked(start, "the kit does not say how far apart braces stand (rule braceSpacing)");
  const load = aci347WallBrace(height, spacing);
  if (load.status === "refused") return notChecked(start, refusalText(load));
  return notChecked(
    { ...start, value: load.value },
    "the kit states no load for braces; wind on walls that stand open is not in it",
  );
}
