// The name of a room with its clear size and the diagonal to check, as much of it as the room has paper for.
//
//    Bedroom 1            Hall                      in a corridor the two figures stand side by side
//   3300 × 3900    6100 × 1200  ⟋ 6217
//     ⟋ 5109

import type { Position } from "../../plan/project.ts";
import { type Box, boxRound, freePlace, grown } from "../box.ts";
import { cutToWidth, textWidth } from "../lettering.ts";
import type { Mark, Point, TextMark } from "../mark.ts";
import { plainText } from "../plainText.ts";
import type { RoomCheck } from "./diagonals.ts";
import type { Labelling } from "./labelling.ts";
import { numberText } from "./numberText.ts";
import type { PlanPlace } from "./planPlace.ts";

const THIN = { weight: 0.18, ink: "ink" } as const;
/** Paper of the sign of a diagonal before its length, and between two texts of one line. */
const SIGN = 4.4;
const APART = 3;
const LEADING = 1.5;
const LEAST_NAME = 5;

interface Part extends Pick<TextMark, "text" | "height" | "weight"> {
  readonly isDiagonal?: true;
}
type Line = readonly Part[];

/** Marks of a room. `isChecked`: its diagonals stand in it. */
export function roomLabel(
  room: RoomCheck,
  labelling: Labelling,
): { readonly marks: readonly Mark[]; readonly isChecked: boolean } {
  const { place, taken } = labelling;
  const marks = stubs(room, place);
  const area = areaOf(room, labelling);
  for (const lines of linesOf(room, area, labelling)) {
    const size = {
      width: Math.max(...lines.map(widthOf)) + 1,
      height: lines.reduce((sum, line) => sum + heightOf(line) + LEADING, 0.5),
    };
    const reach = Math.max(area.width, area.height);
    const box = freePlace(size, place.at(room.at), { area, taken, reach: Math.min(40, reach), step: 0.75 });
    if (box === null) continue;
    taken.push(box);
    let y = box.y + 0.5;
    for (const line of lines) {
      y += heightOf(line);
      marks.push(...lineMarks(line, [box.x + box.width / 2, y]));
      y += LEADING;
    }
    const isChecked = lines.some((line) => line.some((part) => part.isDiagonal));
    return { marks, isChecked };
  }
  return { marks, isChecked: false };
}

// The room's own paper: a name beside a room would be read as that of the next.
function areaOf({ corners }: RoomCheck, { place }: Labelling): Box {
  return grown(boxRound(corners.map(place.at)), -0.3);
}

/** What to try, the fullest first. */
function linesOf(
  room: RoomCheck,
  area: Box,
  { layout, words, clearHeight }: Labelling,
): readonly (readonly Line[])[] {
  const own = layout.faces.filter((face) => face.room === room.room);
  const height = own.reduce((least, face) => Math.min(least, face.height), Number.POSITIVE_INFINITY);
  const whole = plainText(room.room) || words.unnamed;
  const large: Part = { text: whole, height: 3.5, weight: 600 };
  const name: Part = widthOf([large]) + 1 <= area.width ? large : { ...large, height: 2.5 };
  const cut = cutToWidth(whole, area.width - 1.2, name);
  // Two letters and an ellipsis tell nobody which room it is: the list of checks has its whole name.
  const shown = { ...name, text: cut === whole || cut.length > LEAST_NAME ? cut : "" };
  const [first, second] = room.diagonals;
  const note = (text: string): Part => ({ text, height: 2.5, weight: 400 });
  const clear = room.clear?.map(numberText).join(" × ");
  const sizes = clear === undefined ? [] : [note(clear)];
  const checks: readonly Part[] =
    clear === undefined || first === undefined
      ? []
      : [{ text: numbersOf(first.length, second?.length), height: 2.5, weight: 700, isDiagonal: true }];
  const levels = [
    ...(height < clearHeight ? [note(words.drop(clearHeight - height))] : []),
    ...(height > clearHeight && own.length > 0 ? [note(words.open)] : []),
  ];
  const stacked = (...parts: readonly Part[]): readonly Line[] => parts.map((part) => [part]);
  const tries: readonly (readonly Line[])[] = [
    stacked(shown, ...sizes, ...checks, ...levels),
    [[shown], [...sizes, ...checks], levels],
    [[shown, ...sizes, ...checks, ...levels]],
    stacked(shown, ...checks),
    stacked({ ...shown, height: 2.5 }, ...checks),
    stacked(shown),
  ];
  const named =
    shown.text === ""
      ? tries.map((lines) => lines.map((line) => line.filter((one) => one !== shown)))
      : tries;
  return named.map((lines) => lines.filter((line) => line.length > 0)).filter((lines) => lines.length > 0);
}

function numbersOf(first: number, second: number | undefined): string {
  return second === undefined || second === first
    ? numberText(first)
    : `${numberText(first)} · ${numberText(second)}`;
}

function partWidth(part: Part): number {
  return textWidth(part.text, part) + (part.isDiagonal ? SIGN : 0);
}

function widthOf(line: Line): number {
  return line.reduce((sum, part) => sum + partWidth(part), 0) + APART * (line.length - 1);
}

function heightOf(line: Line): number {
  return Math.max(...line.map(({ height }) => height));
}

function lineMarks(line: Line, [x, y]: Point): readonly Mark[] {
  let left = x - widthOf(line) / 2;
  return line.flatMap((part): readonly Mark[] => {
    const at = left;
    left += partWidth(part) + APART;
    const { text, height, weight } = part;
    const start = part.isDiagonal ? at + SIGN : at;
    return [
      ...(part.isDiagonal ? diagonalSign([at, y]) : []),
      { kind: "text", at: [start, y], text, height, weight, ink: "ink", anchor: "start" },
    ];
  });
}

/** The sign of a diagonal: a short slant line with a dot at either end, standing on `at`. */
export function diagonalSign([x, y]: Point): readonly Mark[] {
  const [from, to]: [Point, Point] = [
    [x + 0.5, y - 0.2],
    [x + 3.2, y - 2.2],
  ];
  return [
    { kind: "line", from, to, stroke: { weight: 0.25, ink: "ink" } },
    { kind: "circle", centre: from, radius: 0.4, fill: "ink" },
    { kind: "circle", centre: to, radius: 0.4, fill: "ink" },
  ];
}

// The two ends of each diagonal, so that it is clear from which corner to which, without a line across the room.
function stubs({ diagonals }: RoomCheck, { at }: PlanPlace): Mark[] {
  const ends = diagonals.flatMap(({ from, to }): readonly (readonly [Position, Position])[] => [
    [from, to],
    [to, from],
  ]);
  return ends.map(([a, b]) => stub(at(a), at(b)));
}

function stub([x, y]: Point, to: Point): Mark {
  const [dx, dy] = [to[0] - x, to[1] - y];
  const length = Math.sqrt(dx * dx + dy * dy);
  const share = (reach: number): Point => {
    const part = length === 0 ? 0 : Math.min(reach, length / 2) / length;
    return [x + dx * part, y + dy * part];
  };
  return { kind: "line", from: share(1), to: share(2.8), stroke: THIN };
}
