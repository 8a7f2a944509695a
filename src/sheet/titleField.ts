// One field of a title block: its label in small letters, and its value as large as the cell holds it.

import type { Box } from "./box.ts";
import { cutToWidth, textWidth, wholeNames, wrapped } from "./lettering.ts";
import type { Mark } from "./mark.ts";
import { plainText } from "./plainText.ts";

export interface TitleField {
  readonly label: string;
  /** Data: made plain here. Empty: left open for a pen. */
  readonly value: string;
  /** What the value lists. Where it is too wide: as many names as fit whole, under the label that counts them all. */
  readonly list?: { readonly names: readonly string[]; readonly label: string };
  /** A second line that is never cut off nor run into the first. */
  readonly below?: string;
  readonly width: number;
}

const PAD = 1.5;
const LARGE = { height: 3.5, weight: 600 } as const;
const SMALL = { height: 2.5, weight: 600 } as const;

/** Baselines from the upper edge of a cell 12 or 13 mm high. */
const LABEL = 3.7;
const ONE_LINE = 10.6;
const TWO_LINES = [7.5, 11.1] as const;

/** The cells of one row from left to right, with a thin line between neighbours. */
export function fieldRow(fields: readonly TitleField[], row: Omit<Box, "width">): readonly Mark[] {
  let x = row.x;
  return fields.flatMap((field, index) => {
    const marks = [
      ...(index === 0 ? [] : [divider(x, row)]),
      ...fieldMarks(field, { ...row, x, width: field.width }),
    ];
    x += field.width;
    return marks;
  });
}

function divider(x: number, { y, height }: Omit<Box, "width">): Mark {
  return { kind: "line", from: [x, y], to: [x, y + height], stroke: { weight: 0.18, ink: "ink" } };
}

function fieldMarks(given: TitleField, cell: Box): readonly Mark[] {
  const room = cell.width - 2 * PAD;
  const field = fitted(given, room);
  const at = (y: number) => [cell.x + PAD, cell.y + y] as const;
  const label: Mark = {
    kind: "text",
    at: at(LABEL),
    text: cutToWidth(field.label, room, { height: 2.5, weight: 400 }),
    height: 2.5,
    weight: 400,
    ink: "soft",
    anchor: "start",
  };
  // A cell of 12 has its value half a millimetre higher than one of 13.
  const lift = cell.height < 13 ? 0.5 : 0;
  const lines = valueLines(field, room).map(({ text, y, ...lettering }): Mark => {
    return { kind: "text", at: at(y - lift), text, ...lettering, ink: "ink", anchor: "start" };
  });
  return [...(label.text === "" ? [] : [label]), ...lines];
}

/** A list that is too wide says how many it names. */
function fitted(field: TitleField, room: number): TitleField {
  const { list, value } = field;
  if (list === undefined || textWidth(plainText(value), SMALL) <= room) return field;
  return { ...field, label: list.label, value: wholeNames(list.names, room, SMALL) || `${list.names[0]} …` };
}

/** One large line, else one or two small ones. */
function valueLines({ value, below }: TitleField, room: number) {
  const text = plainText(value);
  if (below !== undefined) {
    const first = cutToWidth(text, room, SMALL);
    const second = cutToWidth(below, room, SMALL);
    if (first === "") return [{ text: second, y: ONE_LINE, ...SMALL }];
    return [
      { text: first, y: TWO_LINES[0], ...SMALL },
      { text: second, y: TWO_LINES[1], ...SMALL },
    ];
  }
  if (text === "") return [];
  if (textWidth(text, LARGE) <= room) return [{ text, y: ONE_LINE, ...LARGE }];
  if (textWidth(text, SMALL) <= room) return [{ text, y: ONE_LINE, ...SMALL }];
  const [first = "", second = "", ...more] = wrapped(text, room, SMALL);
  const rest = more.length === 0 ? second : cutToWidth(`${second} ${more.join(" ")}`, room, SMALL);
  return [
    { text: first, y: TWO_LINES[0], ...SMALL },
    ...(rest === "" ? [] : [{ text: rest, y: TWO_LINES[1], ...SMALL }]),
  ];
}
