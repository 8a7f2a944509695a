// The pressure over the height as a picture: wall on the left, pressure to the right, rows of ties as ticks in the wall,
// the strip of each row in tones that alternate.
//
//   2500 ─┐\               heights on the left in mm above the floor, pressures on the right in kPa,
//   1800 ━│ \    strip     behind them whatever a row of ties has to say
//    150 ━│──\

import { type Envelope, pressureAt } from "../../check/envelope.ts";
import type { Language } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { levelRule, SMALL, SMALL_STRONG, textLine } from "../lists/listText.ts";
import type { Mark, Point, Stroke } from "../mark.ts";
import { stated, worked } from "./figures.ts";

export interface PictureRow {
  readonly row: Mm;
  readonly from: Mm;
  readonly to: Mm;
  /** Under the heads of the table beside the picture. */
  readonly cells: readonly string[];
  readonly isStrong: boolean;
  /** A tie that is not there. */
  readonly isMissing?: boolean;
}

export interface PressureDrawing {
  readonly envelope: Envelope;
  readonly surface: Mm;
  readonly rows: readonly PictureRow[];
  readonly heads: readonly string[];
  readonly width: number;
  readonly language: Language;
}

const LEFT = 13;
const WALL = 2.4;
const GREATEST = 36;
const HEIGHT = 54;
const HEAD = 6;
const PITCH = 4;
const FINE: Stroke = { weight: 0.25, ink: "ink" };
const THIN: Stroke = { weight: 0.18, ink: "ink" };

/** Marks from the upper left corner, and the height they take. */
export function pressurePicture(drawing: PressureDrawing): {
  readonly marks: readonly Mark[];
  readonly height: number;
} {
  const { envelope, surface, rows, heads, width, language } = drawing;
  const floor = HEAD + HEIGHT;
  const y = (z: Mm) => floor - (z / surface) * HEIGHT;
  const x0 = LEFT + WALL;
  const x = (z: Mm) => x0 + (pressureAt(envelope, surface - z) / envelope.greatest) * GREATEST;
  const knee = surface - envelope.knee;
  const outline: readonly Point[] = [
    [x0, y(0)],
    [x(0), y(0)],
    ...(knee > 0.5 ? [[x(knee), y(knee)] as Point] : []),
    [x0, y(surface)],
  ];
  const table = tableStarts(heads.length, width);
  const heights = spreadUp(rows.map(({ row }) => y(row)));
  return {
    marks: [
      { kind: "polygon", points: outline, fill: "band" },
      ...rows.flatMap((each, index) => stripMarks(each, { x0, x, y, knee, isOdd: index % 2 === 1 })),
      { kind: "polygon", points: outline, stroke: { weight: 0.35, ink: "ink" } },
      { kind: "rect", box: { x: LEFT, y: y(surface), width: WALL, height: HEIGHT }, fill: "faint" },
      {
        kind: "line",
        from: [LEFT - 3, floor],
        to: [x0 + GREATEST + 3, floor],
        stroke: { weight: 0.7, ink: "ink" },
      },
      ...heightLabels(drawing, { y, knee }),
      ...rows.flatMap((each, index) =>
        tieMarks(each, y(each.row), { at: heights[index]!, table, x0, language }),
      ),
      ...textLine(`${worked(envelope.greatest, language)} kPa`, SMALL_STRONG, {
        x: x0 + GREATEST,
        y: floor + 4,
        anchor: "end",
      }),
      ...heads.flatMap((head, index) =>
        textLine(head, SMALL, { x: table[index]!, y: 3.4, anchor: "end", ink: "soft" }),
      ),
      ...(heads.length > 0 ? [levelRule(x0 + GREATEST + 5, 4.8, width - x0 - GREATEST - 5, 0.35)] : []),
    ],
    height: floor + 6,
  };
}

/** Right ends of the columns of figures. */
function tableStarts(count: number, width: number): readonly number[] {
  const start = LEFT + WALL + GREATEST + 5;
  return Array.from({ length: count }, (_, index) => start + ((width - start) * (index + 1)) / count);
}

// From the floor up each line of figures stands at its tie, or as far above the one below it as letters need.
function spreadUp(wishes: readonly number[]): readonly number[] {
  const places: number[] = [];
  for (const wish of wishes) {
    const below = places[places.length - 1];
    places.push(below === undefined ? wish : Math.min(wish, below - PITCH));
  }
  return places;
}

interface Scale {
  readonly x0: number;
  readonly x: (z: Mm) => number;
  readonly y: (z: Mm) => number;
  readonly knee: Mm;
}

function stripMarks(
  { from, to }: PictureRow,
  { x0, x, y, knee, isOdd }: Scale & { readonly isOdd: boolean },
): readonly Mark[] {
  const bend: readonly Point[] = knee > from && knee < to ? [[x(knee), y(knee)]] : [];
  const points: readonly Point[] = [[x0, y(from)], [x(from), y(from)], ...bend, [x(to), y(to)], [x0, y(to)]];
  return [{ kind: "polygon", points, fill: isOdd ? "tone1" : "tone2", stroke: THIN }];
}

function heightLabels(
  { surface, rows, envelope, language }: PressureDrawing,
  { y, knee }: Pick<Scale, "y" | "knee">,
): readonly Mark[] {
  const marked = [0, surface, ...(knee > 0.5 ? [knee] : []), ...rows.map(({ row }) => row)];
  const shown: number[] = [];
  const marks = [...new Set(marked)].flatMap((z): readonly Mark[] => {
    const at = y(z);
    if (shown.some((other) => Math.abs(other - at) < 3.2)) return [];
    shown.push(at);
    return textLine(stated(Math.round(z), language), SMALL, { x: LEFT - 4, y: at + 1.2, anchor: "end" });
  });
  const top: Mark = {
    kind: "line",
    from: [LEFT - 3, y(surface)],
    to: [LEFT + WALL + 6, y(surface)],
    stroke: FINE,
  };
  return envelope.greatest > 0 ? [...marks, top] : marks;
}

function tieMarks(
  { cells, isStrong, isMissing }: PictureRow,
  y: number,
  {
    at,
    table,
    x0,
  }: {
    readonly at: number;
    readonly table: readonly number[];
    readonly x0: number;
    readonly language: Language;
  },
): readonly Mark[] {
  const bar = { x: LEFT - 2.4, y: y - 0.5, width: WALL + 4.8, height: 1 };
  const end = x0 + GREATEST + 4;
  const texts = cells.flatMap((cell, index) =>
    textLine(cell, isStrong ? SMALL_STRONG : SMALL, { x: table[index]!, y: at + 1.2, anchor: "end" }),
  );
  const leader: readonly Mark[] =
    cells.length === 0 || Math.abs(at - y) < 0.3
      ? []
      : [
          {
            kind: "line",
            from: [x0 + GREATEST - 1, y],
            to: [end, at],
            stroke: { weight: 0.13, ink: "soft" },
          },
        ];
  return [
    isMissing === true
      ? { kind: "rect", box: bar, fill: "paper", stroke: THIN }
      : { kind: "rect", box: bar, fill: "ink" },
    ...leader,
    ...texts,
  ];
}
