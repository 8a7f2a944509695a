// Do the kit's rows of ties suit the concrete on a plain strip of wall, and which rows would?

import { type Answer, refusalText } from "../check/range.ts";
import { chooseTieRows, greatestOnRows, type TieRowChoice } from "../check/tieRowChoice.ts";
import { TIE_ROWS_FORMULA, TIE_ROWS_SOURCE } from "../check/tieRows.ts";
import { ruleValue } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import type { Check, CheckInput } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";
import { input, judgedBy, notChecked, placeIn, unjudged } from "./judging.ts";
import { FACTOR_SOURCE, pourPressure } from "./pourPressure.ts";
import { NO_TIE_LOAD, surfaceOf, tieLimit } from "./tieChecks.ts";

/** What the check of rows takes for granted. */
export const ROW_ASSUMPTIONS: readonly string[] = [
  "Rows are proposed for a plain strip of wall as wide as the kit's rule tieSpacing, on the holes of the lowest panel; ties beside openings carry what their own check says.",
];

/** One check an entry: the kit's own rows, with the fewest that would do beside them. */
export function rowChecks(entry: CheckedEntry): readonly Check[] {
  const { fill, kit, concrete, name } = entry;
  const rows = ruleValue(kit, "tieRows");
  const width = ruleValue(kit, "tieSpacing");
  if (fill.ties.length === 0 || rows === undefined || width === undefined) return [];
  const surface = surfaceOf(entry);
  const pressure = pourPressure(concrete, surface);
  if (pressure.status === "refused") return []; // said of the ties already
  const strip = { envelope: pressure.value.envelope, surface, width };
  const used = rows.filter((z) => z < panelTop(entry));
  const force = greatestOnRows(strip, used);
  const { limit, factor, inputs: words } = tieLimit(entry);
  const start = unjudged({
    id: `${name}/tie-rows`,
    kind: "tie-rows",
    where: placeIn(name),
    unit: "kN",
    inputs: [
      ...pressure.value.inputs,
      input("b", "width of the strip", width / 1000, "m"),
      input("", "rows of the kit", used.join(", "), "mm"),
      ...words,
    ],
    formula: `${pressure.value.formula}; ${TIE_ROWS_FORMULA}`,
    source: `pressure: ${pressure.value.source}; load: ${TIE_ROWS_SOURCE}${factor === 1 ? "" : `; ${FACTOR_SOURCE}`}`,
  });
  if (force.status === "refused") return [notChecked(start, refusalText(force))];
  const value = force.value * factor;
  const known = { ...start, value };
  if (limit === null) return [notChecked(known, NO_TIE_LOAD)];
  const holes = holesOf(entry);
  const choice = chooseTieRows({ ...strip, holes, limit: limit / factor });
  return [judgedBy({ ...known, inputs: [...start.inputs, ...proposed(choice, factor)] }, value, limit)];
}

function proposed(choice: Answer<TieRowChoice | null>, factor: number): readonly CheckInput[] {
  const name = "fewest rows on holes that would do";
  if (choice.status === "refused") return [input("", name, refusalText(choice))];
  if (choice.value === null)
    return [input("", name, "none: the load is over the limit with a tie in every hole")];
  const { rows, force } = choice.value;
  return [
    input("", name, rows.join(", "), "mm"),
    input("F", "greatest load with them", force * factor, "kN"),
  ];
}

/** Top of the lowest panels, mm above the floor. */
function panelTop({ fill }: CheckedEntry): Mm {
  const tops = fill.faces.flatMap(({ pieces }) =>
    pieces.filter(({ family, z }) => family === "wall-panel" && z === 0).map(({ height }) => height),
  );
  return Math.max(0, ...tops);
}

function holesOf(entry: CheckedEntry): readonly Mm[] {
  const holes = ruleValue(entry.kit, "holes");
  const top = panelTop(entry);
  if (holes === undefined) return [];
  const found: Mm[] = [];
  for (let z = holes.first; z < top; z += holes.pitch) found.push(z);
  return found;
}
