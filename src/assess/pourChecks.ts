// What only all pours together tell: whether the set is enough for the day that needs most, whether props may stay long
// enough, whether mirrored pours have their handed pieces, whether props stand over props.

import { IS456_SOURCE, is456Striking } from "../check/is456Striking.ts";
import { refusalText } from "../check/range.ts";
import { daysTaken } from "../fill/dayNeeds.ts";
import { mirrorFill } from "../fill/mirror.ts";
import type { FillDocument, UnitFill } from "../fill/result.ts";
import { partnerOf } from "../kit/handed.ts";
import { type Kit, piecesOf } from "../kit/kit.ts";
import type { Project } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { Check } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";
import { faultless, input, notApplicable, notChecked, placeIn, type Unjudged, unjudged } from "./judging.ts";
import { formedSlabs, spanOf } from "./strikingRows.ts";
import { COMMON_PRACTICE } from "./wholeRule.ts";

export type PouredProject = Pick<Project, "name" | "storey" | "units" | "pours" | "stock" | "buy">;

export interface Poured {
  readonly project: PouredProject;
  readonly kit: Kit;
  readonly fill: FillDocument;
  readonly entries: readonly CheckedEntry[];
}

/** What these checks take for granted. */
export const POUR_ASSUMPTIONS: readonly string[] = [
  "A pour takes its set from the pours before it in working order; a unit stands over itself from storey to storey.",
];

/** One check each, of the whole project. */
export function pourChecks(poured: Poured): readonly Check[] {
  if (poured.entries.every(({ fill }) => fill.faces.length === 0)) return [];
  return [setCheck(poured), retentionCheck(poured), handedCheck(poured), alignmentCheck(poured)];
}

function startOf(kind: string, rule: string, unit = "faults", source = COMMON_PRACTICE): Unjudged {
  return unjudged({ id: `all/${kind}`, kind, where: placeIn(""), unit, formula: rule, source });
}

/** What is cast on each day of work: fills in the hand in which they are poured. */
function daysOf({ project, kit, fill }: Poured): readonly (readonly UnitFill[])[] {
  if (project.pours.length === 0) return fill.units.map((unit) => [unit]);
  const days: { readonly day: number | null; readonly casts: UnitFill[] }[] = [];
  for (const { id, mirror, day } of project.pours) {
    const unit = fill.units.find(({ pours }) => pours.includes(id));
    if (unit === undefined) continue;
    const cast = mirror ? mirrorFill(unit, kit) : unit;
    const known = day === null ? undefined : days.find((each) => each.day === day);
    if (known === undefined) days.push({ day, casts: [cast] });
    else known.casts.push(cast);
  }
  return days.map(({ casts }) => casts);
}

/** Greatest need of each code of the bills: over as many days in turn as a piece stays, and its own. */
function greatestNeed(poured: Poured): ReadonlyMap<string, number> {
  const stays = new Map(poured.kit.pieces.map((piece) => [piece.code, daysTaken(piece.family, piece)]));
  const byDay = daysOf(poured).map((casts) => {
    const counts = new Map<string, number>();
    for (const { code, quantity } of casts.flatMap(({ bill }) => bill))
      counts.set(code, (counts.get(code) ?? 0) + quantity);
    return counts;
  });
  const codes = new Set(byDay.flatMap((counts) => [...counts.keys()]));
  return new Map(
    [...codes].map((code) => {
      const length = (stays.get(code) ?? 0) + 1;
      const windows = byDay.map((_, k) =>
        byDay.slice(k, k + length).reduce((sum, counts) => sum + (counts.get(code) ?? 0), 0),
      );
      return [code, Math.max(0, ...windows)];
    }),
  );
}

function setCheck(poured: Poured): Check {
  const { project, fill, kit } = poured;
  const start = startOf(
    "set-covers-pours",
    "of each kind of piece the set has as many as the day that needs most, those that stay counted on",
  );
  const need = greatestNeed(poured);
  if (fill.set !== undefined) {
    const listed = new Set(fill.set.pieces.map(({ code }) => code));
    // Of a kind that it does not list the set has none.
    const absent = [...need.keys()].filter((code) => !listed.has(code));
    const none = absent.map((code) => ({ code, needed: 0, owned: 0, toBuy: 0 }));
    const pieces = [...fill.set.pieces, ...none];
    const short = pieces.filter(
      ({ code, owned, toBuy, needed }) => needed < (need.get(code) ?? 0) || owned + toBuy < needed,
    );
    return faultless(
      start,
      short.map(({ code, owned, toBuy }) => `${code}: ${owned + toBuy} of ${need.get(code) ?? 0} needed`),
    );
  }
  if (project.buy) return notApplicable(start, "what is not owned is bought: no stock is a limit");
  const panels = new Set(piecesOf(kit, "wall-panel").map(({ code }) => code));
  const short = [...need].filter(([code, needed]) => {
    const owned = project.stock[code];
    return needed > (owned ?? 0) && (owned !== undefined || panels.has(code));
  });
  return faultless(
    start,
    short.map(([code, needed]) => `${code}: ${project.stock[code] ?? 0} of ${needed} needed`),
  );
}

function retentionCheck(poured: Poured): Check {
  const { project, kit, entries } = poured;
  const start = startOf(
    "prop-retention",
    "days from a pour until its props are needed again ≥ days that props stay by the table",
    "d",
    IS456_SOURCE,
  );
  const spans = entries.flatMap((entry) => formedSlabs(entry).map(spanOf));
  const props = piecesOf(kit, "prop").filter(({ code }) =>
    entries.some(({ fill }) =>
      fill.soffits.some((soffit) => soffit.props.some((each) => each.code === code)),
    ),
  );
  if (spans.length === 0 || props.length === 0) return notApplicable(start, "no slab stands on props");
  const table = is456Striking("slab-props", Math.max(...spans));
  if (table.status === "refused") return notChecked(start, refusalText(table));
  const needed = table.value.to / 24;
  const stays = Math.min(...props.map((prop) => prop.stays));
  const days = [...new Set(project.pours.map(({ day }) => day))].filter((day): day is number => day !== null);
  const known: Unjudged = {
    ...start,
    value: needed,
    inputs: [
      input("", "longest span", Math.max(...spans) / 1000, "m"),
      input("", "pours for which props stay after their own (kit)", stays),
    ],
  };
  if (project.pours.length === 0 || project.pours.some(({ day }) => day === null))
    return notChecked(known, "the pours have no days (pours[].day)");
  days.sort((a, b) => a - b);
  const gaps = days.slice(stays + 1).map((day, k) => day - days[k]!);
  if (gaps.length === 0) return notApplicable(known, "no later pour needs these props");
  const least = Math.min(...gaps);
  if (least < needed)
    return notChecked(
      { ...known, limit: least },
      `the set of props gives ${least} days and the table asks for ${needed}: shorter only on strength proven by tests`,
    );
  return { ...known, limit: least, utilisation: needed / least, status: "within" };
}

function handedCheck(poured: Poured): Check {
  const { project, kit, fill } = poured;
  const start = startOf(
    "handed-pieces",
    "the kit has the mirror image of each handed piece of a mirrored pour",
  );
  const mirrored = fill.units.filter(({ pours }) =>
    project.pours.some(({ id, mirror }) => mirror && pours.includes(id)),
  );
  if (mirrored.length === 0) return notApplicable(start, "no pour is mirrored");
  const lacking = new Set(
    kit.pieces.filter((piece) => partnerOf(kit, piece) === null).map(({ code }) => code),
  );
  const stem = (code: string) => (code.includes("/") ? code.slice(0, code.lastIndexOf("/")) : code);
  return faultless(
    start,
    mirrored.flatMap(({ unit, bill }) =>
      bill
        .filter(({ code }) => lacking.has(code) || lacking.has(stem(code)))
        .map(({ code }) => `${code} in unit ${unit}`),
    ),
  );
}

/** How far one prop may stand beside the one under it, mm: eccentricity of a prop's load in BS 5975:1996, quoted by CROSS-UK report 32. */
const BESIDE: Mm = 25;

function alignmentCheck({ fill, entries }: Poured): Check {
  const start = startOf(
    "props-aligned",
    `each prop stands over one of the storey below, at most ${BESIDE} mm beside it`,
    "faults",
    "eccentricity of a prop's load, 25 mm: BS 5975:1996 in CROSS-UK report 32",
  );
  const stacked = fill.units.flatMap((upper, k) => {
    const below = fill.units
      .slice(0, k)
      .reverse()
      .find(({ unit }) => unit === upper.unit);
    return below === undefined ? [] : [{ name: entries[k]!.name, upper, below }];
  });
  if (stacked.length === 0)
    return notApplicable(
      start,
      "each unit has one storey, whose props stand at the same points at each pour",
    );
  return faultless(
    start,
    stacked.flatMap(({ name, upper, below }) => {
      const under = below.soffits.flatMap(({ props }) => props.map(({ at }) => at));
      return upper.soffits
        .flatMap(({ props }) => props)
        .filter(({ at }) => !under.some((each) => apart(at, each) <= BESIDE))
        .map(({ piece }) => `prop ${piece} of ${name}`);
    }),
  );
}

function apart(a: readonly [Mm, Mm], b: readonly [Mm, Mm]): Mm {
  const [dx, dy] = [a[0] - b[0], a[1] - b[1]];
  return Math.sqrt(dx * dx + dy * dy);
}
