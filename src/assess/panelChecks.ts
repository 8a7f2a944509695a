// Do the panels bear the pressure at their foot, and may the concrete rise as fast as the project says?

import { envelopeOf, pressureAt } from "../check/envelope.ts";
import { placingVolume } from "../check/placingRate.ts";
import { type Answer, computed, refusalText } from "../check/range.ts";
import type { RateLimit } from "../check/rateLimit.ts";
import type { UnitFill } from "../fill/result.ts";
import { ruleValue } from "../kit/kit.ts";
import type { KiloNewton, KiloPascal, MetrePerHour, Mm } from "../units.ts";
import type { Check, CheckInput, CheckPlace, PressureTable } from "./checkDocument.ts";
import { columnFaces, type PouredMember, planArea, pouredMembers } from "./columns.ts";
import type { CheckedEntry } from "./entry.ts";
import { input, judgedBy, notApplicable, notChecked, placeIn, unjudged } from "./judging.ts";
import { FACTOR_SOURCE, PRESSURE_FACTOR, pourPressure, pourRate } from "./pourPressure.ts";
import { surfaceOf, tieLimit } from "./tieChecks.ts";
import { greatestForce, type TieStrips, tieStripsOf } from "./tieForces.ts";

/** What the checks of panels take for granted. */
export const PANEL_ASSUMPTIONS: readonly string[] = [
  "What a panel bears is one figure of the kit for every panel and every place in it.",
];

/** The pressure on the panels, and the rate of placing. */
export function panelChecks(entry: CheckedEntry): readonly Check[] {
  if (entry.fill.faces.length === 0) return [];
  const members = pouredMembers(entry.fill, entry.concrete);
  return members.flatMap((member) => [panelCheck(entry, member), rateCheck(entry, member)]);
}

function panelCheck(entry: CheckedEntry, member: PouredMember): Check {
  const { concrete, kit } = entry;
  const isDesign = concrete.formStrength === "design";
  const factor = isDesign ? PRESSURE_FACTOR : 1;
  const start = unjudged({
    id: idOf(entry, member, "panel-pressure"),
    kind: "panel-pressure",
    where: placeOf(entry, member),
    unit: "kPa",
    formula: "p at the floor ≤ panelPressure",
    source: "limit: the kit's rule panelPressure",
  });
  const pressure = pourPressure(concrete, surfaceOf(entry), member);
  if (pressure.status === "refused") return notChecked(start, refusalText(pressure));
  const value = pressure.value.envelope.greatest * factor;
  const rule = kit.rules.panelPressure;
  const known = {
    ...start,
    value,
    inputs: [
      ...pressure.value.inputs,
      input("", "strength of panels as stated by the kit", concrete.formStrength),
      ...(isDesign ? [input("γ_F", "load factor", factor)] : []),
      ...(rule === undefined
        ? []
        : [
            input("", "origin of the kit's figure", rule.origin),
            input(
              "",
              "height of full head that the panels bear",
              rule.value / factor / concrete.density,
              "m",
            ),
          ]),
    ],
    formula: `${pressure.value.formula}; ${start.formula}`,
    source: `pressure: ${pressure.value.source}${isDesign ? `; ${FACTOR_SOURCE}` : ""}; ${start.source}`,
  };
  if (rule === undefined)
    return notChecked(known, "the kit states no pressure its panels bear (rule panelPressure)");
  return judgedBy(known, value, rule.value);
}

// Halving the pressure so many times finds the one that ties just bear to a part in a million of the full head.
const HALVINGS = 24;

function rateCheck(entry: CheckedEntry, member: PouredMember): Check {
  const { concrete, kit } = entry;
  const surface = surfaceOf(entry);
  const start = unjudged({
    id: idOf(entry, member, "placing-rate"),
    kind: "placing-rate",
    where: placeOf(entry, member),
    unit: "m/h",
    formula: "R ≤ the rate at which panels and ties just bear the pressure; the method solved for R",
    source: "limits: the kit's rules panelPressure and tieLoad",
  });
  const pressure = pourPressure(concrete, surface, member);
  if (pressure.status === "refused") return notChecked(start, refusalText(pressure));
  const known = {
    ...start,
    value: concrete.rate,
    inputs: pressure.value.inputs,
    formula: `${pressure.value.formula}; ${start.formula}`,
    source: `pressure: ${pressure.value.source}; ${start.source}`,
  };
  if (concrete.pressureModel === "liquid head" || concrete.rate === null)
    return notApplicable(known, "the full liquid head does not depend on the rate");
  const byPanel = ruleValue(kit, "panelPressure");
  const { limit: byTie, factor, inputs: tieWords } = tieLimit(entry);
  if (byPanel === undefined || byTie === null)
    return notChecked(
      known,
      "the kit does not state what both panels and ties bear (panelPressure, tieLoad)",
    );
  const strips = tieStripsOf(fillOf(entry, member), surface, concrete.bottomTie);
  const tie = pressureForTies(strips, { density: concrete.density, surface, force: byTie / factor });
  if (tie.status === "refused") return notChecked(known, refusalText(tie));
  const allowable = Math.min(byPanel / factor, tie.value);
  const limited = {
    ...known,
    inputs: [
      ...known.inputs,
      input("", "pressure the panels bear", byPanel / factor, "kPa"),
      input("", "greatest pressure at which the ties bear it", tie.value, "kPa"),
      ...rateWords("rate the panels allow", pourRate(concrete, surface, byPanel / factor, member)),
      ...rateWords("rate the ties allow", pourRate(concrete, surface, tie.value, member)),
      ...volumeWords(entry, concrete.rate),
      ...tieWords,
    ],
    source: factor === 1 ? known.source : `${known.source}; ${FACTOR_SOURCE}`,
  };
  const rate = pourRate(concrete, surface, allowable, member);
  if (rate.status === "refused") return notChecked(limited, refusalText(rate));
  switch (rate.value.kind) {
    case "any":
      return notApplicable(
        limited,
        "panels and ties bear the full liquid head: no rate is too fast for them",
      );
    case "none":
      return { ...limited, status: "over", reason: "no rate of the method keeps the pressure that low" };
    case "upTo":
      return judgedBy(limited, concrete.rate, rate.value.rate);
  }
}

function idOf({ name }: CheckedEntry, member: PouredMember, kind: string): string {
  return member === "wall" ? `${name}/${kind}` : `${name}/columns/${kind}`;
}

function placeOf({ name, fill }: CheckedEntry, member: PouredMember): CheckPlace {
  const [face] = member === "wall" ? [] : columnFaces(fill);
  return placeIn(name, face === undefined ? {} : { face });
}

/** The fill with the ties of walls or of columns alone. */
function fillOf({ fill, concrete }: CheckedEntry, member: PouredMember): UnitFill {
  if (pouredMembers(fill, concrete).length === 1) return fill;
  const columns = columnFaces(fill);
  const ties = fill.ties.filter(({ faces }) => columns.has(faces[0]) === (member === "column"));
  return { ...fill, ties };
}

function rateWords(name: string, rate: Answer<RateLimit>): readonly CheckInput[] {
  if (rate.status === "refused") return [];
  if (rate.value.kind === "upTo") return [input("", name, rate.value.rate, "m/h")];
  return [input("", name, rate.value.kind === "any" ? "any" : "none")];
}

function volumeWords({ fill }: CheckedEntry, rate: MetrePerHour): readonly CheckInput[] {
  const area = planArea(fill);
  const volume = placingVolume(rate, area);
  if (volume.status === "refused") return [];
  return [
    input("A", "walls on plan, filled all at once", area, "m²"),
    input("Q", "volume in an hour at the project's rate", volume.value, "m³/h"),
  ];
}

/** The greatest pressure, at most the full head, at which no tie carries more than `force`. */
function pressureForTies(
  strips: TieStrips,
  given: { readonly density: number; readonly surface: Mm; readonly force: KiloNewton },
): Answer<KiloPascal> {
  const { density, surface, force } = given;
  const head = envelopeOf(density, surface);
  const atHead = greatestForce(strips, head, surface);
  if (atHead.status === "refused" || atHead.value <= force)
    return atHead.status === "refused" ? atHead : computed(head.greatest);
  let [low, high] = [0, head.greatest];
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (low + high) / 2;
    const at = greatestForce(strips, envelopeOf(density, surface, middle), surface);
    if (at.status === "refused") return at;
    if (at.value <= force) low = middle;
    else high = middle;
  }
  return computed(low);
}

/** The pressure over the height of an entry's placing; null where the method does not hold or there is no wall. */
export function pressureTable(entry: CheckedEntry): PressureTable | null {
  const surface = surfaceOf(entry);
  const pressure = pourPressure(entry.concrete, surface);
  if (pressure.status === "refused" || entry.fill.faces.length === 0) return null;
  const { envelope } = pressure.value;
  const heights = [...new Set([0, surface - envelope.knee, surface])].filter((z) => z >= 0);
  return {
    unit: entry.name,
    model: entry.concrete.pressureModel,
    greatest: envelope.greatest,
    points: heights.map((z) => ({ z, pressure: pressureAt(envelope, surface - z) })),
  };
}
