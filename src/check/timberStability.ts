// Which part of its crushing strength does a timber post keep for its slenderness?

import { type Answer, computed, refusalOf } from "./range.ts";

const STRESS = {
  input: "reference compressive stress F*c",
  least: 1,
  greatest: 10_000,
  unit: "psi",
} as const;
const BUCKLING = {
  input: "critical buckling stress F_cE",
  least: 1,
  greatest: 1_000_000,
  unit: "psi",
} as const;
/** 0.8 sawn timber, 0.85 round poles, 0.9 glued laminated timber. */
const KIND = { input: "factor c for the kind of timber", least: 0.8, greatest: 0.9, unit: "" } as const;

/**
 * Column stability factor C_P, from 0 to 1. With α = F_cE/F*c:
 *
 *   C_P = (1 + α)/2c − √( ((1 + α)/2c)² − α/c )
 *
 * @param bucklingPsi - F_cE, 1 to 1 000 000 psi
 * @param referencePsi - F*c, 1 to 10 000 psi: compression along the grain with all factors but this one
 * @param kind - c, 0.8 for sawn timber to 0.9; outside these the input is refused
 * @see from memory of the National Design Specification for Wood Construction 2005, 3.7.1.5, equation 3.7-1
 */
export function timberStability(bucklingPsi: number, referencePsi: number, kind: number): Answer<number> {
  const refusal = refusalOf([bucklingPsi, BUCKLING], [referencePsi, STRESS], [kind, KIND]);
  if (refusal !== null) return refusal;
  const ratio = bucklingPsi / referencePsi;
  const half = (1 + ratio) / (2 * kind);
  return computed(half - Math.sqrt(half * half - ratio / kind));
}
