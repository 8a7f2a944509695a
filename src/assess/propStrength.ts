// What does a prop of the kit bear at an extension, as the project states strengths? With the inputs and the words of it.

import { PROP_LIMIT_FORMULA, PROP_LIMIT_SOURCE, propLimit } from "../check/en1065Limit.ts";
import { EN1065_SOURCE, en1065Formula, en1065Strength } from "../check/en1065Strength.ts";
import { refusalText } from "../check/range.ts";
import type { Prop } from "../kit/kit.ts";
import type { Loads } from "../plan/loads.ts";
import type { KiloNewton, Mm } from "../units.ts";
import type { CheckInput } from "./checkDocument.ts";
import { input } from "./judging.ts";

export interface UsedProp {
  readonly code: string;
  /** null: the kit has no prop of that code. */
  readonly kind: Prop | null;
  readonly extension: Mm;
}

/** What a check says of a prop's strength, whether there is a figure or not. */
export interface PropStrengthWords {
  readonly inputs: readonly CheckInput[];
  readonly formula: string;
  readonly source: string;
}

export function propStrengthWords({ kind, extension }: UsedProp, loads: Loads): PropStrengthWords {
  const byClass = kind?.class ?? null;
  const limit = PROP_LIMIT_FORMULA[loads.propStrength];
  return {
    inputs: [
      ...(byClass === null ? [] : [input("", "class of EN 1065", byClass)]),
      ...(kind === null ? [] : [input("l_max", "greatest extension", kind.greatest / 1000, "m")]),
      input("l", "extension of the prop", extension / 1000, "m"),
    ],
    formula: byClass === null ? limit : `${limit}; ${en1065Formula(byClass)}`,
    source: `strength: ${EN1065_SOURCE}; ${PROP_LIMIT_SOURCE}`,
  };
}

/** What a load is set against, and the characteristic strength behind it; or why there is no such figure. */
export type PropBearing =
  | { readonly status: "known"; readonly limit: KiloNewton; readonly strength: CheckInput }
  | { readonly status: "unknown"; readonly reason: string };

export function propBearing({ code, kind, extension }: UsedProp, loads: Loads): PropBearing {
  if (kind === null) return unknown(`the kit has no prop ${code}`);
  const { class: byClass, least, greatest } = kind;
  if (byClass === null) return unknown(`the kit gives no class of EN 1065 for ${code}`);
  const strength = en1065Strength({ class: byClass, least, greatest, extension });
  if (strength.status === "refused") return unknown(refusalText(strength));
  const limit = propLimit(strength.value, loads.propStrength);
  if (limit.status === "refused") return unknown(refusalText(limit));
  return {
    status: "known",
    limit: limit.value,
    strength: input("R_k", "characteristic strength", strength.value, "kN"),
  };
}

function unknown(reason: string): PropBearing {
  return { status: "unknown", reason };
}
