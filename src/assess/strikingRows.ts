// When may panels and props come down by the tables and criteria of several standards, side by side?
//
// Walls and slab are cast together and one form carries both: the slab's time governs the panels of the walls under it.

import { ACI347_STRIKING_SOURCE, aci347Striking } from "../check/aci347Striking.ts";
import { BS8110_STRIKING_FORMULA, BS8110_STRIKING_SOURCE, bs8110Striking } from "../check/bs8110Striking.ts";
import { IS456_SOURCE, is456Striking } from "../check/is456Striking.ts";
import { intervalsUpTo } from "../check/maturity.ts";
import { type Answer, computed, refusalText } from "../check/range.ts";
import {
  BS8110_SOFFIT_SOURCE,
  bs8110SoffitStrength,
  CIRIA136_SOURCE,
  ciria136Strength,
  PROPPED_SLAB_FORMULA,
  proppedSlab,
} from "../check/strikingStrength.ts";
import type { Soffit } from "../fill/result.ts";
import { ruleValue } from "../kit/kit.ts";
import { type Celsius, type Hour, type KiloPascal, type MegaPascal, type Mm, roundTo } from "../units.ts";
import type { StrikingRow } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";
import { slabWeight } from "./slabLoad.ts";
import { strengthAt28 } from "./strengthModel.ts";

/** Every rule for every soffit of an entry, and for the walls where they hold up nothing. */
export function strikingRows(entry: CheckedEntry): readonly StrikingRow[] {
  if (entry.fill.faces.length === 0) return [];
  const warmth = meanTemperature(entry);
  return [
    ...wallRows(entry, warmth),
    ...formedSlabs(entry).flatMap((soffit) => slabRows(entry, soffit, warmth)),
  ];
}

/** The soffits whose slab is cast on forms. */
export function formedSlabs({ fill, storey }: CheckedEntry): readonly Soffit[] {
  return storey.slab === 0 ? [] : fill.soffits.filter(({ pieces }) => pieces.length > 0);
}

const BS_TABLE = `${BS8110_STRIKING_SOURCE}: ${BS8110_STRIKING_FORMULA}`;
const WALL_NOTE = "only where the form holds up no slab; cast together, the slab's time governs";

function wallRows({ name: unit }: CheckedEntry, warmth: Celsius | null): readonly StrikingRow[] {
  const walls: RowOf = { unit, room: "", part: "walls" };
  const aci = aci347Striking({
    member: "vertical",
    span: 1000,
    isLiveGreater: false,
    shoresUndisturbed: false,
  });
  const is = later(is456Striking("vertical-face", 1000));
  return [
    hoursRow(walls, "BS 8110", byWarmth("vertical", warmth), [BS_TABLE, WALL_NOTE]),
    hoursRow(walls, "ACI 347", aci, [ACI347_STRIKING_SOURCE, WALL_NOTE]),
    hoursRow(walls, "IS 456", is, [IS456_SOURCE, `${WALL_NOTE}; the longer of the two times it gives`]),
  ];
}

function slabRows(entry: CheckedEntry, soffit: Soffit, warmth: Celsius | null): readonly StrikingRow[] {
  const of = (part: string): RowOf => ({ unit: entry.name, room: soffit.room, part });
  const panels = of("slab panels, props left");
  const props = of("props");
  const span = spanOf(soffit);
  const { load } = strikingLoads(entry);
  // How much of the service load is live nobody has said: the longer column holds.
  const aci = (shoresUndisturbed: boolean) =>
    aci347Striking({ member: "one-way-slab", span, isLiveGreater: false, shoresUndisturbed });
  const is = (member: "slab-soffit" | "slab-props") => later(is456Striking(member, span));
  const bs = (member: "slab-soffit" | "slab-props") => byWarmth(member, warmth);
  const spanText = `span ${span} mm`;
  const warm: RowWords = [BS_TABLE, warmthText(warmth)];
  const byColumn: RowWords = [ACI347_STRIKING_SOURCE, `${spanText}, live load less than dead`];
  return [
    strengthRow(panels, "CIRIA 136", strengthNeeded(entry, load), [
      CIRIA136_SOURCE,
      "bending governs, props left or not",
    ]),
    strengthRow(panels, "BS 8110 6.2.6.3", bs8110SoffitStrength(0), [
      BS8110_SOFFIT_SOURCE,
      "and twice the stress",
    ]),
    strengthRow(panels, "uncracked between props", tensionNeeded(entry, load), [
      `${PROPPED_SLAB_FORMULA}; statics, factor ${TENSION_FACTOR} common practice, no source`,
      "tensile strength, with the props as far apart as the kit's rule propPitch says",
    ]),
    hoursRow(panels, "BS 8110", bs("slab-soffit"), warm),
    hoursRow(panels, "ACI 347", aci(true), byColumn),
    hoursRow(panels, "IS 456", is("slab-soffit"), [IS456_SOURCE, "props put back at once"]),
    hoursRow(props, "BS 8110", bs("slab-props"), warm),
    hoursRow(props, "ACI 347", aci(false), byColumn),
    hoursRow(props, "IS 456", is("slab-props"), [IS456_SOURCE, spanText]),
  ];
}

function strengthNeeded({ concrete }: CheckedEntry, load: KiloPascal): Given<MegaPascal> {
  const strength = strengthAt28(concrete);
  if (strength === null || concrete.serviceLoad === null)
    return "needs the strength at 28 days and the service load (concrete.serviceLoad)";
  return ciria136Strength(strength, load, concrete.serviceLoad);
}

/** Mean tensile strength over bending tension. */
const TENSION_FACTOR = 1.5;

function tensionNeeded({ kit, storey }: CheckedEntry, load: KiloPascal): Given<MegaPascal> {
  const pitch = ruleValue(kit, "propPitch");
  if (pitch === undefined) return "the kit does not say how far apart props stand (rule propPitch)";
  const slab = proppedSlab(load, pitch, storey.slab);
  return slab.status === "refused" ? slab : computed(TENSION_FACTOR * slab.value.tension);
}

function warmthText(warmth: Celsius | null): string {
  return warmth === null ? "" : `mean surface temperature ${roundTo(warmth, 1)} °C`;
}

/** What a rule gives: a figure, the range in which it gives one, or what it would have to be told. */
type Given<V> = Answer<V> | string;

interface RowOf {
  readonly unit: string;
  readonly room: string;
  readonly part: string;
}

function hoursRow(of: RowOf, rule: string, hours: Given<Hour>, words: RowWords): StrikingRow {
  return { ...of, rule, hours: figureOf(hours), strength: null, ...told(hours, words) };
}

function strengthRow(of: RowOf, rule: string, strength: Given<MegaPascal>, words: RowWords): StrikingRow {
  return { ...of, rule, hours: null, strength: figureOf(strength), ...told(strength, words) };
}

type RowWords = readonly [source: string, note: string];

function figureOf(given: Given<number>): number | null {
  return typeof given === "string" || given.status === "refused" ? null : given.value;
}

function told(given: Given<number>, [source, note]: RowWords): Pick<StrikingRow, "source" | "note"> {
  if (typeof given === "string") return { source, note: given };
  return { source, note: given.status === "refused" ? refusalText(given) : note };
}

function byWarmth(member: "vertical" | "slab-soffit" | "slab-props", warmth: Celsius | null): Given<Hour> {
  return warmth === null
    ? "needs a log of the temperature that reaches the hour of striking"
    : bs8110Striking(member, warmth);
}

function later(answer: Answer<{ readonly to: Hour }>): Answer<Hour> {
  return answer.status === "refused" ? answer : computed(answer.value.to);
}

/** Mean of the log up to striking. */
function meanTemperature({ concrete }: CheckedEntry): Celsius | null {
  const intervals = concrete.strikeAt === null ? null : intervalsUpTo(concrete.log, concrete.strikeAt);
  if (intervals === null) return null;
  const hours = intervals.reduce((sum, each) => sum + each.hours, 0);
  const sum = intervals.reduce((total, each) => total + each.hours * each.temperature, 0);
  return hours > 0 ? sum / hours : null;
}

/** The shorter side of the rectangle along the axes that holds the soffit, mm. */
function spanOf({ outline }: Soffit): Mm {
  const sides = [0, 1].map((axis) => {
    const places = outline.map((point) => point[axis]!);
    return Math.max(...places) - Math.min(...places);
  });
  return Math.max(1, Math.min(...sides));
}

/** Loads on the slab of a storey when its panels come down. */
export function strikingLoads({ concrete, loads, storey }: CheckedEntry): {
  readonly self: KiloPascal;
  readonly load: KiloPascal;
} {
  const self = slabWeight(loads, storey.slab);
  return { self, load: self + concrete.strikingLoad };
}
