// Does a slab bear the storeys cast above it, and a prop what comes down through all of them?

import { loadToCompare } from "../check/en1065Limit.ts";
import { type Answer, refusalText } from "../check/range.ts";
import { type ShoringCycle, shoringCycle } from "../check/shoringCycle.ts";
import { SHORING_FORMULA, SHORING_SOURCE } from "../check/shoringSteps.ts";
import type { Soffit, SoffitProp } from "../fill/result.ts";
import { piecesOf } from "../kit/kit.ts";
import type { Loads, Shoring } from "../plan/loads.ts";
import type { Check, CheckInput, ShoringRow } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";
import { input, judgedBy, notChecked, placeIn, type Unjudged, unjudged } from "./judging.ts";
import { propBearing, propStrengthWords, type UsedProp } from "./propStrength.ts";
import { slabLoadWords, slabWeight, workLoad } from "./slabLoad.ts";

/** What the checks of shoring take for granted. */
export const SHORING_ASSUMPTIONS: readonly string[] = [
  "Over many storeys slabs are alike, elastic and without creep, shores rigid and close and over one another, the lowest on rigid ground; measured shores differ from this by up to half.",
  "A slab is set against its service load at full strength: at an early age it bears less, and the strength it has then decides.",
  "The weight of forms, a tenth of a slab's or so, and the people at work on the topmost slab are added once, on the prop under it and on the slab that carries most.",
];

/** The checks of one entry where the project says how storeys are shored. */
export function shoringChecks(entry: CheckedEntry): readonly Check[] {
  const { loads, storey, fill } = entry;
  if (loads.shoring === null || storey.slab === 0) return [];
  if (!fill.soffits.some(({ props }) => props.length > 0)) return [];
  const cycle = shoringCycle(loads.shoring);
  return [slabCheck(entry, loads.shoring, cycle), propCheck(entry, loads.shoring, cycle)];
}

/** The steps of the project's shoring; none where it does not say. */
export function shoringRows(loads: Loads): readonly ShoringRow[] {
  const cycle = loads.shoring === null ? null : shoringCycle(loads.shoring);
  if (cycle === null || cycle.status === "refused") return [];
  return cycle.value.records.map(({ step, slabs, shores }) => ({ step, slabs, shores }));
}

function slabCheck(entry: CheckedEntry, shoring: Shoring, cycle: Answer<ShoringCycle>): Check {
  const { concrete, loads, name } = entry;
  const start = started(entry, shoring, "shoring-slab", "kPa");
  if (cycle.status === "refused") return notChecked(start, refusalText(cycle));
  const { ratio, step, level } = cycle.value.peakSlab;
  const value = ratio * slabWeight(loads, entry.storey.slab) + loads.formworkLoad + workLoad(loads);
  const known = {
    ...start,
    where: placeIn(name),
    value,
    inputs: [
      ...start.inputs,
      input("s", "greatest part of a slab carried by one slab", ratio),
      input("", "at step", step),
      input("", "slab of level", level),
    ],
    formula: `q = s·D + g + w; ${start.formula}`,
  };
  if (concrete.serviceLoad === null)
    return notChecked(
      known,
      "the project does not say what the slab is designed for in all (concrete.serviceLoad)",
    );
  return judgedBy(known, value, concrete.serviceLoad);
}

function propCheck(entry: CheckedEntry, shoring: Shoring, cycle: Answer<ShoringCycle>): Check {
  const { loads, kit, name } = entry;
  const { soffit, prop } = mostLoaded(entry);
  const { code } = prop;
  const kind = piecesOf(kit, "prop").find((each) => each.code === code) ?? null;
  const used: UsedProp = { code, kind, extension: soffit.height };
  const start: Unjudged = {
    ...started(entry, shoring, "shoring-prop", "kN"),
    where: placeIn(name, { room: soffit.room, piece: prop.piece, code, at: prop.at }),
  };
  if (cycle.status === "refused") return notChecked(start, refusalText(cycle));
  const { ratio, step, level } = cycle.value.peakShore;
  const onArea = ratio * slabWeight(loads, entry.storey.slab) + loads.formworkLoad + workLoad(loads);
  const load = onArea * prop.area * loads.continuity;
  const value = loadToCompare(load, loads.propStrength);
  const strength = propStrengthWords(used, loads);
  const known: Unjudged = {
    ...start,
    value,
    inputs: [
      ...start.inputs,
      input("r", "greatest load of shores", ratio, "slabs"),
      input("", "at step", step),
      input("", "shores of level", level),
      input("A", "area carried by the prop", prop.area, "m²"),
      input("k", "factor for continuous bearers", loads.continuity),
      input("N", "load of the prop", load, "kN"),
      ...strength.inputs,
    ],
    formula: `N = (r·D + g + w)·A·k; ${strength.formula}; ${start.formula}`,
    source: `${start.source}; ${strength.source}`,
  };
  const bearing = propBearing(used, loads);
  if (bearing.status === "unknown") return notChecked(known, bearing.reason);
  return judgedBy({ ...known, inputs: [...known.inputs, bearing.strength] }, value, bearing.limit);
}

function mostLoaded({ fill }: CheckedEntry): { readonly soffit: Soffit; readonly prop: SoffitProp } {
  const all = fill.soffits.flatMap((soffit) => soffit.props.map((prop) => ({ soffit, prop })));
  return all.reduce((most, each) => (each.prop.area > most.prop.area ? each : most));
}

function started(entry: CheckedEntry, shoring: Shoring, kind: string, unit: string): Unjudged {
  return unjudged({
    id: `${entry.name}/${kind}`,
    kind,
    where: placeIn(entry.name),
    unit,
    inputs: schemeInputs(entry, shoring),
    formula: SHORING_FORMULA,
    source: `${SHORING_SOURCE}; people at work: ${slabLoadWords(entry.loads, entry.storey.slab).source}`,
  });
}

function schemeInputs({ loads, storey }: CheckedEntry, shoring: Shoring): readonly CheckInput[] {
  return [
    input("", "storeys on shores", shoring.shores),
    input("", "storeys on reshores", shoring.reshores),
    input("", "first out", shoring.first),
    input("", "storeys cast", shoring.storeys),
    input("D", "weight of a slab", slabWeight(loads, storey.slab), "kPa"),
    input("g", "weight of the formwork", loads.formworkLoad, "kPa"),
    input("w", "people at work on the topmost slab", workLoad(loads), "kPa"),
  ];
}
