// Every tie of an entry in two tables: what the rows of each strip carry, and which strips each line of ties has.

import { tieLimit } from "../../assess/tieChecks.ts";
import type { Mm } from "../../units.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { levelRule, SMALL, SMALL_STRONG, textBlock, textLine } from "../lists/listText.ts";
import type { Mark } from "../mark.ts";
import { plainText } from "../plainText.ts";
import { type Calculation, ofKind } from "./calculation.ts";
import { percent, stated, worked } from "./figures.ts";
import { fixedStrip, headStrip, ROW, rowStrip, section, type TableColumn, wordsStrip } from "./strips.ts";
import type { StripType, TieModel } from "./tieModel.ts";

/** Starts and ends in a strip of the full width of a page, from its left edge, mm. */
const NAME = 0;
const COUNT = 22;
const WIDTHS = { x: 26, room: 74 } as const;
const FIRST_ROW = 103;
const LEFT_OUT = 50;
const CELL = 24;

/** Columns of heights in one table: more of them make a further table. */
function heightGroups(types: readonly StripType[], width: number): readonly (readonly Mm[])[] {
  const heights = [...new Set(types.flatMap(({ rows }) => rows.map(({ row }) => row)))].sort((a, b) => a - b);
  const fits = Math.max(1, Math.floor((width - FIRST_ROW - LEFT_OUT) / CELL));
  return Array.from({ length: Math.ceil(heights.length / fits) }, (_, k) =>
    heights.slice(k * fits, (k + 1) * fits),
  );
}

/** What each row of each strip carries, kN, by the strip and as a beam; and the worst of one tie left out. */
export function stripTable(calculation: Calculation, model: TieModel, width: number): readonly Section[] {
  const { words, language, continued, entry } = calculation;
  const { limit, factor } = tieLimit(entry);
  const notes = wordsStrip(
    words.stripTableText(
      limit === null ? "" : `${stated(limit, language)} kN`,
      factor === 1 ? "" : stated(factor, language),
    ),
    width,
  );
  return heightGroups(model.types, width).map((heights, group) => {
    const isLast = group === heightGroups(model.types, width).length - 1;
    const ends = heights.map((_, k) => FIRST_ROW + (k + 1) * CELL);
    const columns: readonly TableColumn[] = [
      { x: NAME, anchor: "start" },
      { x: COUNT, anchor: "end" },
      { ...WIDTHS, anchor: "start" },
      ...ends.map((x): TableColumn => ({ x, anchor: "end" })),
      { x: width, anchor: "end" },
    ];
    const heads = [
      words.strip,
      words.lines,
      words.widthMm,
      ...heights.map((z) => `z ${stated(z, language)}`),
      isLast ? words.oneLeftOut : "",
    ];
    const rows = model.types.map((type) => typeStrip(type, { heights, ends, isLast, width }, calculation));
    const under = headStrip(heads, columns, width);
    return section(words.stripTable, [...rows, notes], { continued, isWhole: false, under });
  });
}

function typeStrip(
  type: StripType,
  table: {
    readonly heights: readonly Mm[];
    readonly ends: readonly number[];
    readonly isLast: boolean;
    readonly width: number;
  },
  { language, words }: Calculation,
): Strip {
  const { name, line, rows, leftOut, ties } = type;
  const widths = line.parts
    .map(({ from, to, width }) =>
      words.widthFromTo(stated(width, language), stated(from, language), stated(to, language)),
    )
    .join("; ");
  const block = textBlock(widths, SMALL, { x: WIDTHS.x, top: 0.7, width: WIDTHS.room });
  const height = Math.max(ROW, block.height + 0.7);
  const marks: Mark[] = [
    ...textLine(name, SMALL_STRONG, { x: NAME, y: 3.2 }),
    ...textLine(stated(ties.length, language), SMALL, { x: COUNT, y: 3.2, anchor: "end" }),
    ...block.marks,
  ];
  table.heights.forEach((z, k) => {
    const own = rows.find(({ row }) => row === z);
    if (own === undefined) return;
    const x = table.ends[k]!;
    const strips = worked(own.tributary, language);
    const beam = worked(own.beam, language);
    const isBeam = own.beam > own.tributary;
    marks.push(
      ...textLine(strips, isBeam ? SMALL : SMALL_STRONG, { x: x - 11.5, y: 3.2, anchor: "end" }),
      ...textLine(beam, isBeam ? SMALL_STRONG : SMALL, { x, y: 3.2, anchor: "end" }),
    );
  });
  if (table.isLast && leftOut !== null) marks.push(...leftOutMarks(type, table.width, language, words));
  return fixedStrip([...marks, levelRule(0, height - 0.2, table.width, 0.13)], height);
}

function leftOutMarks(
  { leftOut }: StripType,
  width: number,
  language: Calculation["language"],
  words: Calculation["words"],
): readonly Mark[] {
  if (leftOut === null) return [];
  const { row, carrier, force } = leftOut;
  const text =
    force === null || carrier === null
      ? words.noOther(stated(row, language))
      : `${stated(row, language)} → ${stated(carrier, language)}: ${worked(force, language)}`;
  return textLine(text, SMALL, { x: width, y: 3.2, anchor: "end", room: LEFT_OUT });
}

/** Every line of ties with its place and its strips, and the most that one of its ties counts with. */
export function tieRegister(calculation: Calculation, model: TieModel, width: number): readonly Section[] {
  const { entry, words, language, continued } = calculation;
  const loads = worstByLine(calculation);
  const rooms = new Map(entry.fill.faces.map(({ id, room }) => [id, room]));
  const columns: readonly TableColumn[] = [
    { x: 8, anchor: "end" },
    { x: 20, anchor: "end" },
    { x: 31, anchor: "end" },
    { x: 33, anchor: "start", room: width - 74 },
    { x: width - 40, anchor: "start", room: 14 },
    { x: width - 12, anchor: "end" },
    { x: width, anchor: "end" },
  ];
  const heads = [words.line, "x", "y", words.room, words.strip, "F, kN", "%"];
  const rows = entry.fill.ties.map(({ at, faces }, index) => {
    const worst = loads.get(index + 1);
    const room = rooms.get(faces[0]);
    return rowStrip(
      [
        `${index + 1}`,
        stated(Math.round(at[0]), language),
        stated(Math.round(at[1]), language),
        room === null || room === undefined ? words.outside : plainText(room),
        (model.namesOf[index] ?? []).join(" "),
        worst === undefined ? "–" : worked(worst.value, language),
        worst?.utilisation == null ? "–" : percent(worst.utilisation, language).replace(" %", ""),
      ],
      columns,
      { width, isStrong: (worst?.utilisation ?? 0) > 1 },
    );
  });
  const under = headStrip(heads, columns, width);
  return [section(words.register, rows, { continued, isWhole: false, under })];
}

interface Worst {
  readonly value: number;
  readonly utilisation: number | null;
}

function worstByLine(calculation: Calculation): ReadonlyMap<number, Worst> {
  const found = new Map<number, Worst>();
  for (const { id, value, utilisation } of ofKind(calculation, "tie-load")) {
    const line = Number(/\/t(\d+)\//u.exec(id)?.[1]);
    if (value === null || !Number.isInteger(line) || value <= (found.get(line)?.value ?? 0)) continue;
    found.set(line, { value, utilisation });
  }
  return found;
}
