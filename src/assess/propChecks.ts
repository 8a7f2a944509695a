// Does each prop bear the slab over it? One check for every prop of every soffit.
//
// The fill says where a prop stands and what area it carries, the storey how thick the slab is, the kit of which class
// the prop is. What the kit does not say is not checked, and the check says so.

import { loadToCompare } from "../check/en1065Limit.ts";
import { PROP_LOAD_FORMULA, propLoad } from "../check/propLoad.ts";
import { refusalText } from "../check/range.ts";
import type { Soffit, SoffitProp } from "../fill/result.ts";
import { type Prop, piecesOf } from "../kit/kit.ts";
import type { Loads } from "../plan/loads.ts";
import type { Mm } from "../units.ts";
import type { Check } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";
import { input, judgedBy, notApplicable, notChecked, placeIn, type Unjudged, unjudged } from "./judging.ts";
import { propBearing, propStrengthWords, type UsedProp } from "./propStrength.ts";
import { slabLoad, slabLoadWords } from "./slabLoad.ts";

/** What the checks of props take for granted. */
export const PROP_ASSUMPTIONS: readonly string[] = [
  "A prop counts as extended over the whole clear height of its room, without the depth of strip and head under the soffit: longer than it is, on the conservative side.",
  "The slab is as thick as the storey says everywhere, also where a soffit is dropped; thicker parts are not in these figures.",
  "A prop carries the one slab cast on its own forms. What comes down through props of the storeys above is not in these figures.",
  "Props stand plumb.",
];

/** What the checks of props see: nothing of the concrete on the walls. */
type ProppedEntry = Omit<CheckedEntry, "concrete" | "plan">;

/** The checks of one entry of the fill, soffit by soffit in the order of the fill. */
export function propChecks(entry: ProppedEntry): readonly Check[] {
  const props = new Map<string, Prop>(piecesOf(entry.kit, "prop").map((prop) => [prop.code, prop]));
  return entry.fill.soffits.flatMap((soffit) =>
    soffit.props.map((prop) => {
      const { code } = prop;
      return propCheck(
        entry,
        { soffit, prop },
        { code, kind: props.get(code) ?? null, extension: soffit.height },
      );
    }),
  );
}

function propCheck(
  entry: ProppedEntry,
  { soffit, prop }: { readonly soffit: Soffit; readonly prop: SoffitProp },
  used: UsedProp,
): Check {
  const { loads, storey } = entry;
  const slab = slabLoadWords(loads, storey.slab);
  const strength = propStrengthWords(used, loads);
  const start = unjudged({
    id: `${prop.piece}/prop-load`,
    kind: "prop-load",
    where: placeIn(entry.name, { room: soffit.room, piece: prop.piece, code: prop.code, at: prop.at }),
    unit: "kN",
    inputs: [
      ...slab.inputs,
      input("A", "area carried by the prop", prop.area, "m²"),
      input("k", "factor for continuous bearers", loads.continuity),
      ...strength.inputs,
    ],
    formula: `${slab.formula}; ${PROP_LOAD_FORMULA}; ${strength.formula}`,
    source: `load: ${slab.source}; ${strength.source}`,
  });
  if (storey.slab === 0) return notApplicable(start, "no slab is cast in this storey");
  return judged(start, loads, { area: prop.area, thickness: storey.slab, used });
}

interface Judging {
  readonly area: number;
  readonly thickness: Mm;
  readonly used: UsedProp;
}

function judged(start: Unjudged, loads: Loads, { area, thickness, used }: Judging): Check {
  const slab = slabLoad(loads, thickness);
  if (slab.status === "refused") return notChecked(start, refusalText(slab));
  const known: Unjudged = { ...start, inputs: [...start.inputs, ...slab.value.parts] };
  const load = propLoad(slab.value.total, area, loads.continuity);
  if (load.status === "refused") return notChecked(known, refusalText(load));
  const value = loadToCompare(load.value, loads.propStrength);
  const inputs = [...known.inputs, input("N", "load of the prop", load.value, "kN")];
  const bearing = propBearing(used, loads);
  if (bearing.status === "unknown") return notChecked({ ...known, value, inputs }, bearing.reason);
  return judgedBy({ ...known, inputs: [...inputs, bearing.strength] }, value, bearing.limit);
}
