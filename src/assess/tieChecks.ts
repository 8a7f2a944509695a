// Does each tie bear the concrete between it and its neighbours, with every tie in its place and with one forgotten?

import { type Refusal, refusalText } from "../check/range.ts";
import { TIE_ROWS_FORMULA, TIE_ROWS_SOURCE } from "../check/tieRows.ts";
import type { TieLine } from "../fill/result.ts";
import { ruleValue } from "../kit/kit.ts";
import type { KiloNewton, Mm } from "../units.ts";
import type { Check, CheckInput, CheckPlace } from "./checkDocument.ts";
import { columnFaces, type PouredMember, pouredMembers } from "./columns.ts";
import type { CheckedEntry } from "./entry.ts";
import { input, judgedBy, notChecked, placeIn, type Unjudged, unjudged } from "./judging.ts";
import { FACTOR_SOURCE, type PourPressure, PRESSURE_FACTOR, pourPressure } from "./pourPressure.ts";
import { type LeftOut, type LineForces, type TieForce, tieForces, tieStripsOf } from "./tieForces.ts";

/** What the checks of ties take for granted. */
export const TIE_ASSUMPTIONS: readonly string[] = [
  "Walls and slab are placed in one go: the concrete presses with its head up to the top of the slab.",
  "A tie holds the form half the way to the next tie, jamb or end of the face on either side; jambs, stop-ends and corners are taken to hold their half, pinned as the lists say.",
  "As a beam, the panels of a line are taken as stiff and free at floor and top; real panels lie between that and the plain strips.",
  "A tie left out is taken one at a time, of the two lowest in its line; the panels beside it are not taken to help.",
];

/** The height of the concrete above the floor: to the top of the slab. */
export function surfaceOf({ storey }: CheckedEntry): Mm {
  return storey.clearHeight + storey.slab;
}

/** The limit on a tie, and what a load counts as beside it. */
export interface TieLimit {
  readonly limit: KiloNewton | null;
  readonly factor: number;
  readonly inputs: readonly CheckInput[];
}

export function tieLimit({ kit, concrete }: CheckedEntry): TieLimit {
  const limit = ruleValue(kit, "tieLoad") ?? null;
  const isDesign = concrete.formStrength === "design";
  const factor = isDesign ? PRESSURE_FACTOR : 1;
  return {
    limit,
    factor,
    inputs: [
      input("", "strength of ties as stated by the kit", concrete.formStrength),
      ...(isDesign ? [input("γ_F", "load factor", factor)] : []),
      ...(limit === null ? [] : [input("", "origin of the kit's figure", kit.rules.tieLoad?.origin ?? "")]),
    ],
  };
}

export const NO_TIE_LOAD =
  "the kit states no load a tie may carry (rule tieLoad); whoever made and tested the ties knows it";

/** Two sorts of checks: each tie by its strip, and each line with a tie left out. */
export function tieChecks(entry: CheckedEntry): readonly Check[] {
  const { fill, concrete } = entry;
  if (fill.ties.length === 0) return [];
  const surface = surfaceOf(entry);
  const unknown = (refusal: Refusal) => [
    notChecked(
      start(entry, { id: `${entry.name}/tie-load`, where: placeIn(entry.name) }),
      refusalText(refusal),
    ),
  ];
  const strips = tieStripsOf(fill, surface, concrete.bottomTie);
  const columns = columnFaces(fill);
  const members = new Map<PouredMember, { pressure: PourPressure; forces: readonly LineForces[] }>();
  for (const member of pouredMembers(fill, concrete)) {
    const pressure = pourPressure(concrete, surface, member);
    if (pressure.status === "refused") return unknown(pressure);
    const forces = tieForces(strips, pressure.value.envelope, surface);
    if (forces.status === "refused") return unknown(forces);
    members.set(member, { pressure: pressure.value, forces: forces.value });
  }
  const rooms = new Map(fill.faces.map(({ id, room }) => [id, room ?? ""]));
  return fill.ties.flatMap((tie, index) => {
    const ofColumn = columns.has(tie.faces[0]) ? members.get("column") : undefined;
    const { pressure, forces } = ofColumn ?? members.get("wall")!;
    const { rows, leftOut } = forces[index]!;
    const given: LineOf = {
      tie,
      number: index + 1,
      room: rooms.get(tie.faces[0]) ?? "",
      shared: [...pressure.inputs, input("", "lowest tie takes", concrete.bottomTie)],
      formula: `${pressure.formula}; ${TIE_ROWS_FORMULA}`,
      source: `pressure: ${pressure.source}; load: ${TIE_ROWS_SOURCE}`,
    };
    const checks = rows.map((row) => rowCheck(entry, given, row));
    return leftOut === null ? checks : [...checks, leftOutCheck(entry, given, leftOut)];
  });
}

interface LineOf {
  readonly tie: TieLine;
  readonly number: number;
  readonly room: string;
  readonly shared: readonly CheckInput[];
  readonly formula: string;
  readonly source: string;
}

function rowCheck(entry: CheckedEntry, line: LineOf, row: TieForce): Check {
  const from = start(entry, {
    id: `${entry.name}/t${line.number}/${row.row}/tie-load`,
    where: placeOf(entry, line, row.row),
    line,
  });
  return judgedForce(entry, from, row.force, [
    input("z", "height of the tie", row.row / 1000, "m"),
    input("", "strip from", row.from / 1000, "m"),
    input("", "strip to", row.to / 1000, "m"),
    input("A", "area of the strip", row.area, "m²"),
    input("F", "load by the strip", row.tributary, "kN"),
    input("F", "load as a beam", row.beam, "kN"),
  ]);
}

function leftOutCheck(entry: CheckedEntry, line: LineOf, { row, carrier, force }: LeftOut): Check {
  const from = start(entry, {
    id: `${entry.name}/t${line.number}/tie-left-out`,
    where: placeOf(entry, line, row),
    line,
  });
  const case2: Unjudged = { ...from, kind: "tie-left-out" };
  const inputs = [
    input("", "tie left out at", row / 1000, "m"),
    input("", "tie that then carries most at", (carrier ?? row) / 1000, "m"),
  ];
  if (force === null) {
    const known = { ...case2, inputs: [...case2.inputs, ...inputs] };
    return notChecked(known, "the line has no other tie: without it nothing holds the form there");
  }
  return judgedForce(entry, case2, force, inputs);
}

function judgedForce(
  entry: CheckedEntry,
  from: Unjudged,
  force: KiloNewton,
  inputs: readonly CheckInput[],
): Check {
  const { limit, factor, inputs: words } = tieLimit(entry);
  const known: Unjudged = {
    ...from,
    value: force * factor,
    inputs: [...from.inputs, ...inputs, ...words],
    source: factor === 1 ? from.source : `${from.source}; ${FACTOR_SOURCE}`,
  };
  return limit === null ? notChecked(known, NO_TIE_LOAD) : judgedBy(known, force * factor, limit);
}

function start(
  entry: CheckedEntry,
  { id, where, line }: { readonly id: string; readonly where: CheckPlace; readonly line?: LineOf },
): Unjudged {
  return unjudged({
    id,
    kind: "tie-load",
    where,
    unit: "kN",
    inputs: line?.shared ?? [input("", "method", entry.concrete.pressureModel)],
    formula: line?.formula ?? TIE_ROWS_FORMULA,
    source: line?.source ?? TIE_ROWS_SOURCE,
  });
}

function placeOf({ name }: CheckedEntry, { tie, room }: LineOf, z: Mm): CheckPlace {
  return placeIn(name, { room, code: tie.code, at: tie.at, face: tie.faces[0], z });
}
