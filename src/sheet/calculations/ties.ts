// The sections on ties: the one that carries most, written out, and the one that carries most with a neighbour left out.

import type { Check } from "../../assess/checkDocument.ts";
import { TIE_ROWS_SOURCE, type TieLineInput, tieRowLoads } from "../../check/tieRows.ts";
import type { Mm } from "../../units.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { type Calculation, ofKind, worstOf } from "./calculation.ts";
import { stated, worked } from "./figures.ts";
import { pressureSaid } from "./pressure.ts";
import { type PictureRow, pressurePicture } from "./pressurePicture.ts";
import {
  fixedStrip,
  headStrip,
  rowStrip,
  section,
  stacked,
  stepStrip,
  type TableColumn,
  wordsStrip,
} from "./strips.ts";
import { greatest, type StripType, type TieModel } from "./tieModel.ts";
import { beamTable, reactionStep, stripSteps } from "./tieSteps.ts";
import { inputsStrip, placeStrip, reasonStrips, sourceStrip, verdictStrip } from "./written.ts";

/** Rows of a table that are kept on one column. */
const MOST_TOGETHER = 12;

export function tieSections(calculation: Calculation, model: TieModel | null): readonly Section[] {
  if (model === null) return [];
  const { words, continued } = calculation;
  const sections: readonly (readonly [string, readonly Strip[]])[] = [
    [words.worstTie, worstRows(model, calculation)],
    [words.leftOut, leftOutRows(model, calculation)],
  ];
  return sections
    .filter(([, rows]) => rows.length > 0)
    .map(([title, rows]) => section(title, rows, { continued, isWhole: false }));
}

/** The check of a kind that counts most, with the strip of its line for which `measure` is greatest. */
function worstStrip(
  kind: string,
  measure: (type: StripType) => number,
  { types, namesOf }: TieModel,
  calculation: Calculation,
): { readonly check: Check; readonly type: StripType } | null {
  const check = worstOf(ofKind(calculation, kind).filter(({ value }) => value !== null));
  const line = Number(/\/t(\d+)\//u.exec(check?.id ?? "")?.[1]);
  const own = types.filter(({ name }) => (namesOf[line - 1] ?? []).includes(name));
  const type = own.reduce<StripType | null>(
    (most, each) => (most === null || measure(each) > measure(most) ? each : most),
    null,
  );
  return check === null || type === null || measure(type) <= 0 ? null : { check, type };
}

function worstRows(model: TieModel, calculation: Calculation): readonly Strip[] {
  const worst = worstStrip("tie-load", greatest, model, calculation);
  if (worst === null) return [];
  const { check, type } = worst;
  const row = type.rows.reduce((most, each) => (each.force > most.force ? each : most));
  const plainInputs = check.inputs.filter(({ sign }) => sign === "");
  return [
    ...lineStrips(
      type,
      { line: type.line, row: row.row, missing: null, above: [placeStrip(check, calculation)] },
      calculation,
    ),
    ...factorStrips(row.force, check.value, calculation),
    verdictStrip(check, calculation),
    ...reasonStrips(check, calculation),
    ...inputsStrip(plainInputs, pressureSaid(calculation), calculation),
    sourceStrip(TIE_ROWS_SOURCE, calculation),
  ];
}

function leftOutRows(model: TieModel, calculation: Calculation): readonly Strip[] {
  const worst = worstStrip("tie-left-out", ({ leftOut }) => leftOut?.force ?? 0, model, calculation);
  const leftOut = worst?.type.leftOut ?? null;
  if (worst === null || leftOut === null || leftOut.carrier === null || leftOut.force === null) return [];
  const { check, type } = worst;
  const { words, language, width } = calculation;
  const line = { ...type.line, rows: type.line.rows.filter((row) => row !== leftOut.row) };
  const above = [
    placeStrip(check, calculation),
    wordsStrip(words.leftOutAt(stated(leftOut.row, language), stated(leftOut.carrier, language)), width),
  ];
  return [
    ...lineStrips(type, { line, row: leftOut.carrier, missing: leftOut.row, above }, calculation),
    ...factorStrips(leftOut.force, check.value, calculation),
    verdictStrip(check, calculation),
    ...reasonStrips(check, calculation),
  ];
}

interface LineOfTies {
  readonly line: TieLineInput;
  /** The row that is written out, and the one that is not there. */
  readonly row: Mm;
  readonly missing: Mm | null;
  /** What stands over the picture and is not torn from it. */
  readonly above: readonly Strip[];
}

/** Picture, strip and beam of one row. */
function lineStrips(
  { name, ties }: StripType,
  { line, row, missing, above }: LineOfTies,
  calculation: Calculation,
): readonly Strip[] {
  const { words, language, width } = calculation;
  const loads = tieRowLoads(line);
  if (loads.status === "refused") return [];
  const shown = loads.value.map(
    (load): PictureRow => ({
      row: load.row,
      from: load.from,
      to: load.to,
      cells: [
        `${stated(load.from, language)}–${stated(load.to, language)}`,
        worked(load.area, language),
        worked(load.tributary, language),
        worked(load.beam, language),
      ],
      isStrong: load.row === row,
    }),
  );
  const gone: readonly PictureRow[] =
    missing === null
      ? []
      : [{ row: missing, from: missing, to: missing, cells: [], isStrong: false, isMissing: true }];
  const picture = pressurePicture({
    envelope: line.envelope,
    surface: line.surface,
    rows: missing === null ? shown : [...shown, ...gone],
    heads: [words.stripMm, "A, m²", words.byStrip, words.asBeam],
    width,
    language,
  });
  const own = loads.value.find((load) => load.row === row)!;
  const table = beamTable(line);
  const beam = beamStrips(table, line.rows.indexOf(row), calculation);
  const widths = line.parts
    .map(({ from, to, width: b }) =>
      words.widthFromTo(stated(b, language), stated(from, language), stated(to, language)),
    )
    .join("; ");
  const more = Math.max(own.tributary, own.beam);
  return [
    stacked([
      ...above,
      wordsStrip(words.stripOf(name, ties.length, widths), width),
      fixedStrip(picture.marks, picture.height),
    ]),
    wordsStrip(
      words.byStripRow(stated(row, language), stated(own.from, language), stated(own.to, language)),
      width,
    ),
    ...stripSteps(line, [own.from, own.to], language).map((step) => stepStrip(step, width)),
    wordsStrip(words.beamText, width),
    ...(table.rows.length > MOST_TOGETHER ? beam : [stacked(beam)]),
    ...(line.rows.length > 1
      ? [stepStrip(reactionStep(table, line.rows.indexOf(row), language), width)]
      : []),
    stepStrip(
      {
        formula: "F",
        numbers: `max(${worked(own.tributary, language)}; ${worked(own.beam, language)})`,
        result: `${worked(more, language)} kN`,
      },
      width,
    ),
  ];
}

function beamStrips(
  { rows }: ReturnType<typeof beamTable>,
  index: number,
  { language, words, width }: Calculation,
): readonly Strip[] {
  const ends = [22, 50, 78, 106];
  const columns = ends.map((x): TableColumn => ({ x, anchor: "end" }));
  return [
    headStrip([words.rowMm, "V, kN", "M, kN·m", "R, kN"], columns, width),
    ...rows.map(({ row, simple, moment, reaction }, k) =>
      rowStrip(
        [
          stated(row, language),
          worked(simple, language),
          worked(moment, language),
          worked(reaction, language),
        ],
        columns,
        { width, isStrong: k === index },
      ),
    ),
  ];
}

/** With design strengths the load counts with its factor. */
function factorStrips(force: number, value: number | null, calculation: Calculation): readonly Strip[] {
  const { entry, language, width } = calculation;
  if (entry.concrete.formStrength !== "design" || value === null) return [];
  const numbers = `${stated(value / force, language)} × ${worked(force, language)}`;
  return [stepStrip({ formula: "γ_F·F", numbers, result: `${worked(value, language)} kN` }, width)];
}
