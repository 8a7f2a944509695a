// How mature and how strong is the slab at each reading of its log, and when has it the strength it needs?

import { hourReached } from "../check/hourReached.ts";
import { equivalentAge, intervalsUpTo, nurseSaul } from "../check/maturity.ts";
import { type Answer, refusalText } from "../check/range.ts";
import { MATURITY_MARGIN, strengthNeeded } from "../check/strikingStrength.ts";
import type { Concrete } from "../plan/concrete.ts";
import type { MegaPascal } from "../units.ts";
import type { MaturityPoint, StrikingPrediction } from "./checkDocument.ts";
import { earlyStrength } from "./earlyStrength.ts";
import type { CheckedEntry } from "./entry.ts";
import { type StrengthModel, strengthAt28, strengthModel } from "./strengthModel.ts";
import { formedSlabs, strikingLoads } from "./strikingRows.ts";

/** One point a reading, in the order of the log. */
export function maturityPoints(concrete: Concrete): readonly MaturityPoint[] {
  const { log, datum } = concrete;
  const [first] = log;
  const last = log[log.length - 1];
  if (first === undefined || last === undefined) return [];
  const model = strengthModel(concrete);
  const sums = { maturity: 0, age: 0, measured: 0 };
  const parts = intervalsUpTo(log, last[0]) ?? [];
  // A log that does not begin at placing has one interval more: from placing to its first reading.
  const ahead = log.length - parts.length;
  return log.map(([hour, temperature], k): MaturityPoint => {
    const part = parts[k - ahead];
    if (part !== undefined) {
      sums.maturity += figureOf(nurseSaul([part], datum));
      sums.age += figureOf(equivalentAge([part], "variable"));
      sums.measured += model === null ? Number.NaN : figureOf(model.measure([part]));
    }
    return {
      hour,
      temperature,
      maturity: known(sums.maturity),
      age: known(sums.age),
      strength: model === null ? null : estimate(model, sums.measured),
    };
  });
}

// What cannot be said of one interval cannot be said of any later sum.
function figureOf(answer: Answer<number>): number {
  return answer.status === "refused" ? Number.NaN : answer.value;
}

function known(value: number): number | null {
  return Number.isNaN(value) ? null : value;
}

function estimate(model: StrengthModel, measured: number): MegaPascal | null {
  if (!(measured >= model.holdsFrom)) return null;
  const strength = model.strengthOf(measured);
  return strength.status === "refused" ? null : Math.max(0, strength.value - MATURITY_MARGIN);
}

/** One entry's, where it has slabs on forms; none where it has not. */
export function strikingPrediction(entry: CheckedEntry): readonly StrikingPrediction[] {
  if (formedSlabs(entry).length === 0) return [];
  const { concrete, name: unit } = entry;
  const { strength } = earlyStrength(concrete);
  const at28 = strengthAt28(concrete);
  const start = { unit, needed: null, strength, hour: null, isLogged: false, margin: null };
  if (at28 === null || concrete.serviceLoad === null)
    return [{ ...start, note: "needs the strength at 28 days and the service load (concrete.serviceLoad)" }];
  const need = strengthNeeded(at28, strikingLoads(entry).load, concrete.serviceLoad);
  if (need.status === "refused") return [{ ...start, note: refusalText(need) }];
  return [{ ...start, needed: need.value.needed, ...predicted(concrete, need.value.needed) }];
}

type Predicted = Pick<StrikingPrediction, "hour" | "isLogged" | "margin" | "note">;

function predicted(concrete: Concrete, needed: MegaPascal): Predicted {
  const none = (note: string): Predicted => ({ hour: null, isLogged: false, margin: null, note });
  const model = strengthModel(concrete);
  if (model === null)
    return none(
      "needs tests of the mix (concrete.strengthTests), or a class of cement (concrete.cementClass)",
    );
  if (concrete.log.length === 0) return none("needs a log of the slab's temperature (concrete.log)");
  const strong = model.strengthOf(model.holdsFrom);
  // Where the model begins the slab may be stronger than it needs to be; what was before it does not tell.
  const isEarlier = strong.status === "computed" && strong.value >= needed + MATURITY_MARGIN;
  const target = isEarlier
    ? { ...strong, value: model.holdsFrom }
    : model.measureFor(needed + MATURITY_MARGIN);
  if (target.status === "refused") return none(refusalText(target));
  const reached = hourReached(concrete.log, target.value, model.measure);
  if (reached.status === "refused") return none(refusalText(reached));
  if (reached.value === null) return none("the log is so cold that nothing more is gained");
  const { hour, isLogged } = reached.value;
  const margin = concrete.strikeAt === null ? null : concrete.strikeAt - hour;
  return { hour, isLogged, margin, note: isEarlier ? `perhaps earlier: until then ${model.younger}` : "" };
}
