// What does the slab of a storey weigh on its forms, by the model the project chose, and how is that told?

import {
  ACI347_SLAB_FORMULA,
  ACI347_SLAB_SOURCE,
  aci347Live,
  aci347SlabLoad,
} from "../check/aci347SlabLoad.ts";
import {
  CONSTRUCTION,
  EN12812_SLAB_FORMULA,
  EN12812_SLAB_SOURCE,
  en12812SlabLoad,
} from "../check/en12812SlabLoad.ts";
import { type Answer, computed } from "../check/range.ts";
import { type SlabLoadInput, selfWeightOf } from "../check/slabBounds.ts";
import type { Loads } from "../plan/loads.ts";
import type { KiloPascal, Mm } from "../units.ts";
import type { CheckInput } from "./checkDocument.ts";
import { input } from "./judging.ts";

export interface SlabLoad {
  readonly total: KiloPascal;
  /** The parts of the sum, and the sum. */
  readonly parts: readonly CheckInput[];
}

/** Inputs of the load on a slab's forms, formula and source: the same whether the load can be computed or not. */
export interface SlabLoadWords {
  readonly inputs: readonly CheckInput[];
  readonly formula: string;
  readonly source: string;
}

export function slabLoadWords(loads: Loads, thickness: Mm): SlabLoadWords {
  const isEn = loads.slabModel === "EN 12812";
  const inputs: readonly CheckInput[] = [
    input("", "load model", loads.slabModel),
    input("h", "slab thickness", thickness / 1000, "m"),
    input("γ", "density of the concrete", loads.concreteDensity, "kN/m³"),
    input("g", "weight of the formwork", loads.formworkLoad, "kPa"),
  ];
  return {
    inputs,
    formula: isEn ? EN12812_SLAB_FORMULA : ACI347_SLAB_FORMULA,
    source: isEn ? EN12812_SLAB_SOURCE : ACI347_SLAB_SOURCE,
  };
}

/** Weight of the slab itself. */
export function slabWeight({ concreteDensity }: Loads, thickness: Mm): KiloPascal {
  return selfWeightOf({ thickness, density: concreteDensity });
}

/** The people and tools at work on a slab while it is cast, by the chosen model. */
export function workLoad({ slabModel, motorisedCarts }: Loads): KiloPascal {
  return slabModel === "EN 12812" ? CONSTRUCTION : aci347Live(motorisedCarts);
}

/** The load by the chosen model, refused where thickness, density or formwork is outside its range. */
export function slabLoad(loads: Loads, thickness: Mm): Answer<SlabLoad> {
  const slab = { thickness, density: loads.concreteDensity, formwork: loads.formworkLoad };
  return loads.slabModel === "EN 12812" ? byEn(slab) : byAci(slab, loads.motorisedCarts);
}

function byEn(slab: SlabLoadInput): Answer<SlabLoad> {
  const answer = en12812SlabLoad(slab);
  if (answer.status === "refused") return answer;
  const { selfWeight, construction, heaping, total } = answer.value;
  const parts = [
    pressure("q_sw", "self-weight of the slab", selfWeight),
    pressure("", "construction operations", construction),
    pressure("q_heap", "allowance for heaping", heaping),
    pressure("q", "load on the form", total),
  ];
  return computed({ total, parts });
}

function byAci(slab: SlabLoadInput, motorisedCarts: boolean): Answer<SlabLoad> {
  const answer = aci347SlabLoad(slab, motorisedCarts);
  if (answer.status === "refused") return answer;
  const { selfWeight, live, least, total } = answer.value;
  const parts = [
    pressure("q_sw", "self-weight of the slab", selfWeight),
    pressure("live", motorisedCarts ? "live load with motorised carts" : "live load", live),
    pressure("q_min", "least sum of dead and live load", least),
    pressure("q", "load on the form", total),
  ];
  return computed({ total, parts });
}

function pressure(sign: string, name: string, value: KiloPascal): CheckInput {
  return input(sign, name, value, "kPa");
}
