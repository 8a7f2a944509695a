// The sections on ties: the one that carries most, written out, and the one that carries most with a neighbour left out.

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
  stepStrip,
  type TableColumn,
  wordsStrip,
} from "./strips.ts";
import { greatest, type StripType, type TieModel } from "./tieModel.ts";
import { beamTable, reactionStep, stripSteps } from "./tieSteps.ts";
import { inputsStrip, placeStrip, reasonStrips, sourceStrip, verdictStrip } from "./written.ts";

export function tieSections(calculation: Calculation, model: TieModel | null): readonly Section[] {
  if (model === null) return [];
  const { words, continued } = calculation;
  const worst = model.types.find((type) => greatest(type) > 0);
  const left = mostLeftOut(model);
  return [
    ...(worst === undefined
      ? []
      : [section(words.worstTie, worstRows(worst, calculation), { continued, isWhole: false })]),
    ...(left === null
      ? []
      : [section(words.leftOut, leftOutRows(left, calculation), { continued, isWhole: false })]),
  ];
}

function mostLeftOut({ types }: TieModel): StripType | null {
  return types.reduce<StripType | null>((most, type) => {
    const force = type.leftOut?.force ?? null;
    return force !== null && force > (most?.leftOut?.force ?? 0) ? type : most;
  }, null);
}

function worstRows(type: StripType, calculation: Calculation): readonly Strip[] {
  const check = worstOf(ofKind(calculation, "tie-load").filter(({ value }) => value !== null));
  if (check === null) return [];
  const row = type.rows.reduce((most, each) => (each.force > most.force ? each : most));
  const said = pressureSaid(calculation);
  return [
    placeStrip(check, calculation),
    ...lineStrips(type, { line: type.line, row: row.row, missing: null }, calculation),
    ...factorStrips(row.force, check.value, calculation),
    verdictStrip(check, calculation),
    ...reasonStrips(check, calculation),
    ...inputsStrip(
      check.inputs.filter(({ sign }) => sign === ""),
      said,
      calculation,
    ),
    sourceStrip(TIE_ROWS_SOURCE, calculation),
  ];
}

function leftOutRows(type: StripType, calculation: Calculation): readonly Strip[] {
  const check = worstOf(ofKind(calculation, "tie-left-out").filter(({ value }) => value !== null));
  const { leftOut } = type;
  if (check === null || leftOut?.carrier == null || leftOut.force === null) return [];
  const line = { ...type.line, rows: type.line.rows.filter((row) => row !== leftOut.row) };
  const { words, language, width } = calculation;
  return [
    placeStrip(check, calculation),
    wordsStrip(words.leftOutAt(stated(leftOut.row, language), stated(leftOut.carrier, language)), width),
    ...lineStrips(type, { line, row: leftOut.carrier, missing: leftOut.row }, calculation),
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
}

/** Picture, strip and beam of one row. */
function lineStrips(
  { name, ties }: StripType,
  { line, row, missing }: LineOfTies,
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
  const index = line.rows.indexOf(row);
  const widths = line.parts
    .map(({ from, to, width: b }) =>
      words.widthFromTo(stated(b, language), stated(from, language), stated(to, language)),
    )
    .join("; ");
  const more = Math.max(own.tributary, own.beam);
  return [
    wordsStrip(words.stripOf(name, ties.length, widths), width),
    fixedStrip(picture.marks, picture.height),
    wordsStrip(
      words.byStripRow(stated(row, language), stated(own.from, language), stated(own.to, language)),
      width,
    ),
    ...stripSteps(line, [own.from, own.to], language).map((step) => stepStrip(step, width)),
    wordsStrip(words.beamText, width),
    ...beamStrips(table, index, calculation),
    ...(line.rows.length > 1 ? [stepStrip(reactionStep(table, index, language), width)] : []),
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
