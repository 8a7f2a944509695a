// How far may a member span over three or more equal bays? Metric: kN/m, kN·m, kN, metres.

import { power } from "./power.ts";
import { type Answer, type Bounds, computed, refusalOf } from "./range.ts";

export interface MetricSpanInput {
  /** Load along the member, kN/m. */
  readonly load: number;
  /** What it bears in bending, kN·m, and in shear, kN; null: not asked. */
  readonly moment: number | null;
  readonly shear: number;
  /** EI, kN·m². */
  readonly stiffness: number;
  /** 0.007 for sheathing, 0.004 for walings and soldiers: part of w·L⁴/EI by which it bends. */
  readonly deflection: number;
  /** The deflection is at most the span over this: 360 or 270. */
  readonly part: number;
}

export interface MetricSpans {
  readonly bending: number | null;
  readonly shear: number;
  readonly deflection: number;
}

const bounds = (input: string, unit: string): Bounds => ({ input, least: 1e-4, greatest: 1e5, unit });
const LOAD = bounds("load along the member", "kN/m");
const MOMENT = bounds("moment it bears", "kN·m");
const SHEAR = bounds("shear it bears", "kN");
const STIFFNESS = bounds("stiffness EI", "kN·m²");
const PART = { input: "span over deflection", least: 50, greatest: 1000, unit: "" } as const;
const COEFFICIENT = { input: "coefficient of deflection", least: 0.001, greatest: 0.02, unit: "" } as const;

/**
 * Greatest spans, m: M = 0.1·w·L², V = 0.6·w·L, deflection k·w·L⁴/EI ≤ L/part.
 *
 * @see Wall Formwork Design Calculation, vbook.pub/documents/formwork-design-r2re9g0rgvw6
 */
export function memberSpansMetric(input: MetricSpanInput): Answer<MetricSpans> {
  const { load, moment, shear, stiffness, deflection, part } = input;
  const refusal = refusalOf(
    [load, LOAD],
    [moment ?? MOMENT.least, MOMENT],
    [shear, SHEAR],
    [stiffness, STIFFNESS],
    [deflection, COEFFICIENT],
    [part, PART],
  );
  return (
    refusal ??
    computed({
      bending: moment === null ? null : Math.sqrt((10 * moment) / load),
      shear: shear / (0.6 * load),
      deflection: power(stiffness / (deflection * part * load), 1 / 3),
    })
  );
}
