// Has the slab the strength it needs when its panels come down, props staying?

import { refusalText } from "../check/range.ts";
import {
  BS8110_SOFFIT_FORMULA,
  BS8110_SOFFIT_SOURCE,
  CIRIA136_FORMULA,
  CIRIA136_SOURCE,
  strengthNeeded,
} from "../check/strikingStrength.ts";
import type { Check, CheckInput, StrikingPrediction } from "./checkDocument.ts";
import { earlyStrength } from "./earlyStrength.ts";
import type { CheckedEntry } from "./entry.ts";
import { input, judgedBy, notChecked, placeIn, unjudged } from "./judging.ts";
import { strikingPrediction } from "./maturityTable.ts";
import { strengthAt28 } from "./strengthModel.ts";
import { formedSlabs, strikingLoads } from "./strikingRows.ts";

/** What the checks of striking take for granted. */
export const STRIKING_ASSUMPTIONS: readonly string[] = [
  "Walls and slab are cast together: no wall panel that carries the slab's forms comes down before the slab's time.",
  "A slab spans the shorter side of its room; it is governed by bending and thinner than 350 mm.",
  "Hours of a table are no proof of strength, and count only while the concrete is as warm as the table asks.",
];

/** One check a storey: the strength the slab has beside the one it needs when its panels come down, props staying. */
export function strikingChecks(entry: CheckedEntry): readonly Check[] {
  if (formedSlabs(entry).length === 0) return [];
  const { concrete, name } = entry;
  const strength = strengthAt28(concrete);
  const early = earlyStrength(concrete);
  const start = unjudged({
    id: `${name}/striking-strength`,
    kind: "striking-strength",
    where: placeIn(name),
    unit: "MPa",
    formula: `${CIRIA136_FORMULA}; ${BS8110_SOFFIT_FORMULA}; ${early.formula}`,
    source: `${CIRIA136_SOURCE}; ${BS8110_SOFFIT_SOURCE}; ${early.source}`,
  });
  const loads = strikingLoads(entry);
  const inputs = [
    input("", "self-weight of the slab", loads.self, "kPa"),
    input("", "load while striking", concrete.strikingLoad, "kPa"),
    input("w", "load at striking", loads.load, "kPa"),
    ...(concrete.serviceLoad === null
      ? []
      : [input("w_s", "service load in all", concrete.serviceLoad, "kPa")]),
    ...(strength === null
      ? []
      : [input(concrete.cubeStrength === null ? "f_ck" : "f_cu", "strength at 28 days", strength, "MPa")]),
    ...early.inputs,
  ];
  const known = { ...start, inputs };
  if (strength === null || concrete.serviceLoad === null)
    return [
      notChecked(
        known,
        "the project gives no strength at 28 days (concrete.cubeStrength or cylinderStrength) or no service load (concrete.serviceLoad)",
      ),
    ];
  const need = strengthNeeded(strength, loads.load, concrete.serviceLoad);
  if (need.status === "refused") return [notChecked(known, refusalText(need))];
  const { byCiria, needed } = need.value;
  const required = {
    ...known,
    value: needed,
    inputs: [
      ...inputs,
      input("", "strength needed by CIRIA 136", byCiria, "MPa"),
      ...predictedHour(strikingPrediction(entry)),
    ],
  };
  if (early.strength === null) return [notChecked(required, early.reason)];
  if (early.strength === 0)
    return [{ ...required, limit: 0, status: "over", reason: "no strength to speak of" }];
  return [judgedBy(required, needed, early.strength)];
}

function predictedHour(predictions: readonly StrikingPrediction[]): readonly CheckInput[] {
  return predictions.flatMap(({ hour, isLogged, margin }) =>
    hour === null
      ? []
      : [
          input(
            "",
            `expected strong enough after, ${isLogged ? "by the log" : "after the log, as cold as it ever was"}`,
            hour,
            "h",
          ),
          ...(margin === null ? [] : [input("", "from then to the hour of striking", margin, "h")]),
        ],
  );
}
