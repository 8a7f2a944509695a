// One row of running numbers along a side of the plan: one line, one arrow a number, all from the datum.
//
//        │1150      2350│        A number stands on the open side of its line, read along it: which face of a wall
//   ○────▸──────────────▸        is meant cannot be mistaken, though the two are 2 mm apart on paper. Where numbers
//        │              │        crowd, the line bends to its number.

import type { Mm } from "../../units.ts";
import { textWidth } from "../lettering.ts";
import type { LetterHeight, Mark, Point } from "../mark.ts";
import { spread } from "../spread.ts";
import { numberText } from "./numberText.ts";
import { OVER, type Side } from "./planPlace.ts";

export interface RowNumber {
  /** Along the side, mm of paper. */
  readonly place: number;
  readonly reading: Mm;
  /** On which side of its line it stands, in the direction of the paper: −1 left or up, 1 right or down. */
  readonly open: -1 | 1;
  readonly isReference: boolean;
}

export interface RowPlace {
  readonly side: Side;
  /** The edge of the concrete on that side, mm of paper. */
  readonly edge: number;
  /** From the edge outward: where lines of measure begin, the line of the row. */
  readonly begin: number;
  readonly row: number;
  readonly height: LetterHeight;
  /** Weights of the first face and of the one that follows. */
  readonly weights: readonly [first: 400 | 600, second: 400 | 600];
  /** Along the side, mm of paper: the reach of numbers, and the datum where the row shows it. */
  readonly reach: readonly [start: number, end: number];
  readonly datum: number | null;
  /** Lines that cross the row, which numbers keep off. */
  readonly crossed: readonly number[];
}

const BESIDE = 0.7;
const APART = 0.9;
const HAIR = { weight: 0.13, ink: "ink" } as const;
const THIN = { weight: 0.18, ink: "ink" } as const;

/** Marks of a row; none where there is nothing to say. */
export function runningRow(numbers: readonly RowNumber[], where: RowPlace): readonly Mark[] {
  if (numbers.length === 0) return [];
  const sorted = [...numbers].sort((a, b) => a.place - b.place || a.open - b.open);
  const point = pointOn(where);
  const middles = placesOf(sorted, where);
  const places = sorted.map(({ place }) => place);
  const ends = [...places, ...(where.datum === null ? [] : [where.datum])];
  const line: Mark = {
    kind: "line",
    from: point(Math.min(...ends), where.row),
    to: point(Math.max(...ends), where.row),
    stroke: THIN,
  };
  return [
    line,
    ...(where.datum === null ? [] : [datumMark(point(where.datum, where.row))]),
    ...sorted.flatMap((number, k) => {
      const at = middles[k];
      return at === undefined ? [] : numberMarks(number, at, where);
    }),
  ];
}

function pointOn({ side, edge }: RowPlace): (along: number, out: number) => Point {
  switch (side) {
    case "top":
      return (along, out) => [along, edge - out];
    case "bottom":
      return (along, out) => [along, edge + out];
    case "left":
      return (along, out) => [edge - out, along];
    case "right":
      return (along, out) => [edge + out, along];
    default:
      return side satisfies never;
  }
}

function datumMark(centre: Point): Mark {
  return { kind: "circle", centre, radius: 0.9, fill: "paper", stroke: THIN };
}

// Each stretch between crossing lines is spread for itself; where one is too crowded, the row as a whole.
function placesOf(numbers: readonly RowNumber[], where: RowPlace): readonly number[] {
  const width = where.height + APART;
  const labels = numbers.map(({ place, open }) => ({
    wish: place + open * (BESIDE + where.height / 2),
    width,
  }));
  const [start, end] = where.reach;
  const cuts = [...where.crossed].filter((cut) => cut > start && cut < end).sort((a, b) => a - b);
  const found: number[] = [];
  let from = start;
  for (const cut of [...cuts, end]) {
    const isLast = cut === end;
    const own = labels.filter(({ wish }) => wish >= from && (wish < cut || isLast) && wish >= start);
    const first = from === start ? labels.filter(({ wish }) => wish < start) : [];
    const places = spread([...first, ...own], from === start ? start : from + 0.6, isLast ? end : cut - 0.6);
    if (places === null) return spread(labels, start, end) ?? [];
    found.push(...places);
    from = cut;
  }
  return found.length === labels.length ? found : (spread(labels, start, end) ?? []);
}

function numberMarks(number: RowNumber, middle: number, where: RowPlace): readonly Mark[] {
  const { row, height, begin, side } = where;
  const point = pointOn(where);
  const text = numberText(number.reading);
  const weight = where.weights[number.isReference ? 0 : 1];
  const far = row + OVER + textWidth(text, { height, weight });
  const shifted = middle - number.open * (BESIDE + height / 2);
  const isStraight = Math.abs(shifted - number.place) < 0.05;
  const line: Mark = isStraight
    ? { kind: "line", from: point(number.place, begin), to: point(number.place, far), stroke: HAIR }
    : {
        kind: "polyline",
        points: [
          point(number.place, begin),
          point(number.place, row),
          point(shifted, row + 1.6),
          point(shifted, far),
        ],
        stroke: HAIR,
      };
  const isUpright = side === "top" || side === "bottom";
  const at = point(middle + height / 2, row + OVER);
  const ink = "ink" as const;
  const anchor = side === "bottom" || side === "left" ? ("end" as const) : ("start" as const);
  return [
    line,
    ...arrow(number.place, where),
    {
      kind: "text",
      at,
      text,
      height,
      weight,
      ink,
      anchor,
      ...(isUpright ? { isUpright: true as const } : {}),
    },
  ];
}

// The arrow points away from the datum, which lies left of and below everything.
function arrow(place: number, where: RowPlace): readonly Mark[] {
  const point = pointOn(where);
  const back = where.side === "top" || where.side === "bottom" ? -1.9 : 1.9;
  if (where.datum !== null && Math.abs(place - where.datum) < 1) return [];
  return [
    {
      kind: "polygon",
      points: [
        point(place, where.row),
        point(place + back, where.row - 0.4),
        point(place + back, where.row + 0.4),
      ],
      fill: "ink",
    },
  ];
}
