// Does each prop bear the slab over it? One check for every prop of every soffit.
//
// The fill says where a prop stands and what area it carries, the storey how thick the slab is, the kit of which class
// the prop is. What the kit does not say is not checked, and the check says so.

import { loadToCompare, PROP_LIMIT_FORMULA, PROP_LIMIT_SOURCE, propLimit } from "../check/en1065Limit.ts";
import { EN1065_SOURCE, en1065Formula, en1065Strength } from "../check/en1065Strength.ts";
import { PROP_LOAD_FORMULA, propLoad } from "../check/propLoad.ts";
import { refusalText } from "../check/range.ts";
import type { Soffit, SoffitProp } from "../fill/result.ts";
import { type Prop, piecesOf } from "../kit/kit.ts";
import type { Loads } from "../plan/loads.ts";
import type { KiloNewton, Mm } from "../units.ts";
import type { Check, CheckInput } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";
import { judgedBy, notApplicable, notChecked, type Unjudged } from "./judging.ts";
import { slabLoad, slabLoadWords } from "./slabLoad.ts";

/** What the checks of props take for granted. */
export const PROP_ASSUMPTIONS: readonly string[] = [
  "A prop counts as extended over the whole clear height of its room, without the depth of strip and head under the soffit: longer than it is, on the conservative side.",
  "The slab is as thick as the storey says everywhere, also where a soffit is dropped; thicker parts are not in these figures.",
  "A prop carries the one slab cast on its own forms. What comes down through props of the storeys above is not in these figures.",
  "Props stand plumb and take vertical load alone; horizontal load and bracing are not checked here.",
];

/** What the checks of props see: nothing of the concrete on the walls. */
type ProppedEntry = Omit<CheckedEntry, "concrete">;

/** The checks of one entry of the fill, soffit by soffit in the order of the fill. */
export function propChecks(entry: ProppedEntry): readonly Check[] {
  const props = new Map<string, Prop>(piecesOf(entry.kit, "prop").map((prop) => [prop.code, prop]));
  return entry.fill.soffits.flatMap((soffit) => {
    const extension = soffit.height;
    return soffit.props.map((prop) =>
      propCheck(entry, { soffit, prop, extension, kind: props.get(prop.code) ?? null }),
    );
  });
}

interface Case {
  readonly soffit: Soffit;
  readonly prop: SoffitProp;
  readonly extension: Mm;
  readonly kind: Prop | null;
}

function propCheck(entry: ProppedEntry, { soffit, prop, extension, kind }: Case): Check {
  const { loads, storey } = entry;
  const slab = slabLoadWords(loads, storey.slab);
  const byClass = kind?.class ?? null;
  const start: Unjudged = {
    id: `${prop.piece}/prop-load`,
    kind: "prop-load",
    where: { unit: entry.name, room: soffit.room, piece: prop.piece, code: prop.code, at: prop.at },
    value: null,
    limit: null,
    utilisation: null,
    unit: "kN",
    inputs: [
      ...slab.inputs,
      { sign: "A", name: "area carried by the prop", value: prop.area, unit: "m²" },
      { sign: "k", name: "factor for continuous bearers", value: loads.continuity, unit: "" },
      ...propInputs(kind, extension),
    ],
    formula: [
      slab.formula,
      PROP_LOAD_FORMULA,
      PROP_LIMIT_FORMULA[loads.propStrength],
      ...(byClass === null ? [] : [en1065Formula(byClass)]),
    ].join("; "),
    source: `load: ${slab.source}; strength: ${EN1065_SOURCE}; ${PROP_LIMIT_SOURCE}`,
  };
  if (storey.slab === 0) return notApplicable(start, "no slab is cast in this storey");
  return judged(start, entry.loads, { area: prop.area, thickness: storey.slab, kind, extension });
}

interface Judging {
  readonly area: number;
  readonly thickness: Mm;
  readonly kind: Prop | null;
  readonly extension: Mm;
}

function judged(start: Unjudged, loads: Loads, { area, thickness, kind, extension }: Judging): Check {
  const slab = slabLoad(loads, thickness);
  if (slab.status === "refused") return notChecked(start, refusalText(slab));
  const known: Unjudged = { ...start, inputs: [...start.inputs, ...slab.value.parts] };
  const load = propLoad(slab.value.total, area, loads.continuity);
  if (load.status === "refused") return notChecked(known, refusalText(load));
  const value = loadToCompare(load.value, loads.propStrength);
  const loaded: Unjudged = {
    ...known,
    value,
    inputs: [...known.inputs, force("N", "load of the prop", load.value)],
  };

  if (kind === null) return notChecked(loaded, `the kit has no prop ${start.where.code}`);
  const { class: byClass, least, greatest } = kind;
  if (byClass === null) return notChecked(loaded, `the kit gives no class of EN 1065 for ${kind.code}`);
  const strength = en1065Strength({ class: byClass, least, greatest, extension });
  if (strength.status === "refused") return notChecked(loaded, refusalText(strength));
  const limit = propLimit(strength.value, loads.propStrength);
  if (limit.status === "refused") return notChecked(loaded, refusalText(limit));
  const strong = {
    ...loaded,
    inputs: [...loaded.inputs, force("R_k", "characteristic strength", strength.value)],
  };
  return judgedBy(strong, value, limit.value);
}

function force(sign: string, name: string, value: KiloNewton): CheckInput {
  return { sign, name, value, unit: "kN" };
}

function propInputs(kind: Prop | null, extension: Mm): readonly CheckInput[] {
  const used: CheckInput = { sign: "l", name: "extension of the prop", value: extension / 1000, unit: "m" };
  if (kind === null) return [used];
  const greatest: CheckInput = {
    sign: "l_max",
    name: "greatest extension",
    value: kind.greatest / 1000,
    unit: "m",
  };
  if (kind.class === null) return [greatest, used];
  return [{ sign: "", name: "class of EN 1065", value: kind.class, unit: "" }, greatest, used];
}
