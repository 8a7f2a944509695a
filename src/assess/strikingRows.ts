// When may panels and props come down by the tables and criteria of several standards, side by side?
//
// Walls and slab are cast together and one form carries both: the slab's time governs the panels of the walls under it.

import { ACI347_STRIKING_SOURCE, aci347Striking } from "../check/aci347Striking.ts";
import { BS8110_STRIKING_FORMULA, BS8110_STRIKING_SOURCE, bs8110Striking } from "../check/bs8110Striking.ts";
import { IS456_SOURCE, is456Striking } from "../check/is456Striking.ts";
import { intervalsUpTo } from "../check/maturity.ts";
import { type Answer, refusalText } from "../check/range.ts";
import {
  BS8110_SOFFIT_SOURCE,
  bs8110SoffitStrength,
  CIRIA136_SOURCE,
  ciria136Strength,
  PROPPED_SLAB_FORMULA,
  proppedSlab,
} from "../check/strikingStrength.ts";
import type { Soffit } from "../fill/result.ts";
import type { Celsius, Hour, KiloPascal, MegaPascal, Mm } from "../units.ts";
import type { StrikingRow } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";

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

function wallRows(entry: CheckedEntry, warmth: Celsius | null): readonly StrikingRow[] {
  const row = rowMaker(entry.name, "", "walls");
  const aci = aci347Striking({
    member: "vertical",
    span: 1000,
    isLiveGreater: false,
    shoresUndisturbed: false,
  });
  const is = is456Striking("vertical-face", 1000);
  return [
    row("BS 8110", byWarmth("vertical", warmth), BS_TABLE, WALL_NOTE),
    row("ACI 347", aci, ACI347_STRIKING_SOURCE, WALL_NOTE),
    row("IS 456", later(is), IS456_SOURCE, `${WALL_NOTE}; the longer of the two times it gives`),
  ];
}

function slabRows(entry: CheckedEntry, soffit: Soffit, warmth: Celsius | null): readonly StrikingRow[] {
  const { concrete, name } = entry;
  const panels = rowMaker(name, soffit.room, "slab panels, props left");
  const props = rowMaker(name, soffit.room, "props");
  const span = spanOf(soffit);
  const { load } = strikingLoads(entry);
  // How much of the service load is live nobody has said: the longer column holds.
  const aci = (shoresUndisturbed: boolean) =>
    aci347Striking({ member: "one-way-slab", span, isLiveGreater: false, shoresUndisturbed });
  const strength = concrete.cubeStrength ?? concrete.cylinderStrength;
  const ciria =
    strength === null || concrete.serviceLoad === null
      ? null
      : ciria136Strength(strength, load, concrete.serviceLoad);
  const column = "live load less than dead";
  const spanText = `span ${span} mm`;
  return [
    panels.strength("CIRIA 136", ciria, CIRIA136_SOURCE, "bending governs, props left or not"),
    panels.strength("BS 8110 6.2.6.3", bs8110SoffitStrength(0), BS8110_SOFFIT_SOURCE, "and twice the stress"),
    panels.strength(
      "uncracked between props",
      tensionNeeded(entry, load),
      `${PROPPED_SLAB_FORMULA}; statics, factor ${TENSION_FACTOR} common practice, no source`,
      "tensile strength, with the props as far apart as the kit's rule propPitch says",
    ),
    panels("BS 8110", byWarmth("slab-soffit", warmth), BS_TABLE, warmthText(warmth)),
    panels("ACI 347", aci(true), ACI347_STRIKING_SOURCE, `${spanText}, ${column}`),
    panels("IS 456", later(is456Striking("slab-soffit", span)), IS456_SOURCE, "props put back at once"),
    props("BS 8110", byWarmth("slab-props", warmth), BS_TABLE, warmthText(warmth)),
    props("ACI 347", aci(false), ACI347_STRIKING_SOURCE, `${spanText}, ${column}`),
    props("IS 456", later(is456Striking("slab-props", span)), IS456_SOURCE, spanText),
  ];
}

/** Mean tensile strength over bending tension. */
const TENSION_FACTOR = 1.5;

function tensionNeeded({ kit, storey }: CheckedEntry, load: KiloPascal): Answer<MegaPascal> | null {
  const pitch = kit.rules.propPitch?.value;
  if (pitch === undefined) return null;
  const slab = proppedSlab(load, pitch, storey.slab);
  return slab.status === "refused"
    ? slab
    : { status: "computed", value: TENSION_FACTOR * slab.value.tension };
}

function warmthText(warmth: Celsius | null): string {
  return warmth === null
    ? "needs a log of the temperature that reaches the hour of striking"
    : `mean surface temperature ${Math.round(warmth * 10) / 10} °C`;
}

function rowMaker(unit: string, room: string, part: string) {
  const make = (
    rule: string,
    answer: { readonly hours: Answer<Hour> | null; readonly strength: Answer<MegaPascal> | null },
    source: string,
    note: string,
  ): StrikingRow => {
    const given = answer.hours ?? answer.strength;
    const figure = (one: Answer<number> | null) =>
      one === null || one.status === "refused" ? null : one.value;
    const why = given?.status === "refused" ? refusalText(given) : note;
    return {
      unit,
      room,
      rule,
      part,
      hours: figure(answer.hours),
      strength: figure(answer.strength),
      source,
      note: why,
    };
  };
  return Object.assign(
    (rule: string, hours: Answer<Hour> | null, source: string, note: string) =>
      make(rule, { hours, strength: null }, source, note),
    {
      strength: (rule: string, strength: Answer<MegaPascal> | null, source: string, note: string) =>
        make(rule, { hours: null, strength }, source, note),
    },
  );
}

function byWarmth(
  member: "vertical" | "slab-soffit" | "slab-props",
  warmth: Celsius | null,
): Answer<Hour> | null {
  return warmth === null ? null : bs8110Striking(member, warmth);
}

function later(answer: Answer<{ readonly to: Hour }>): Answer<Hour> {
  return answer.status === "refused" ? answer : { status: "computed", value: answer.value.to };
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
  const self = (loads.concreteDensity * storey.slab) / 1000;
  return { self, load: self + concrete.strikingLoad };
}
