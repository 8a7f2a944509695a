// The blocks of text of a setting-out sheet: heading, checks, marks, how near, what was left out, cautions.

import type { Mm } from "../../units.ts";
import { roundTo } from "../../units.ts";
import { isAllMirrored, type SheetInfo } from "../info.ts";
import { wrapped } from "../lettering.ts";
import type { Mark, Point } from "../mark.ts";
import { plainText } from "../plainText.ts";
import { type Block, HEAD, NOTE, noteBlock, PITCH, type TextStyle, textMark } from "./block.ts";
import { CONTROL_LINE, crossMarks } from "./controlMarks.ts";
import type { Diagonal, RoomCheck } from "./diagonals.ts";
import { numberText } from "./numberText.ts";
import { PIN_RULES } from "./pinRow.ts";
import { gapMarks, pinMarks, SERVICE, zoneMarks } from "./planMarks.ts";
import { diagonalSign } from "./roomLabel.ts";
import type { SettingOut } from "./settingOut.ts";
import type { SettingOutWords } from "./words.ts";

const SOFT: TextStyle = { height: 2.5, weight: 400, ink: "soft" };
const BOX = 4.2;
/** Difference of two diagonals, mm: common practice, no source. */
const ALLOWED = 3;
/** Least offset at which a line stays clear of the forms, mm: common practice, no source. */
const SURVIVES = 300;

export function headingBlock(layout: SettingOut, info: SheetInfo, words: SettingOutWords): Block {
  const notes = [
    words.unit(plainText(info.unitName), isAllMirrored(info)),
    words.millimetres,
    holdText(layout, words),
    ...(layout.corner[0] + layout.corner[1] > 0
      ? [words.cornerReads(numberText(layout.corner[0]), numberText(layout.corner[1]))]
      : []),
    thicknessText(info, words),
  ];
  return {
    kind: "whole",
    make: (width) => {
      const lines = notes.flatMap((note, k) => wrapped(note, k < 2 ? width - 16 : width, NOTE));
      return {
        height: 9.5 + lines.length * PITCH,
        marks: (x, y) => [
          textMark([x, y + 7], words.heading, { height: 7, weight: 700 }),
          ...lines.map((text, k) => textMark([x, y + 8 + (k + 1) * PITCH], text, NOTE)),
          ...northMarks([x + width - 6, y + 8.5]),
        ],
      };
    },
  };
}

/** What control lines read, in the words of the tape; else what to do without any. */
function holdText({ controls }: SettingOut, words: SettingOutWords): string {
  const read = controls.flatMap(({ id, axis, from }) =>
    axis === null ? [] : [`${numberText(from[axis === "y" ? 0 : 1])} (${plainText(id)})`],
  );
  return read.length === 0 ? words.noControl : words.hold(read.join(", "));
}

function thicknessText({ thickness }: SheetInfo, words: SettingOutWords): string {
  const groups = new Map<Mm, string[]>();
  for (const [wall, value] of Object.entries(thickness))
    groups.set(value, [...(groups.get(value) ?? []), plainText(wall)]);
  const most = 6;
  const list = [...groups]
    .sort((a, b) => b[1].length - a[1].length || a[0] - b[0])
    .map(([value, walls]) =>
      words.thicknessAt(value, walls.length > most ? words.wallCount(walls.length) : walls.join(", ")),
    );
  return words.thickness(list.join("; "));
}

function northMarks([x, y]: Point): readonly Mark[] {
  return [
    { kind: "circle", centre: [x, y], radius: 5, stroke: { weight: 0.18, ink: "ink" } },
    {
      kind: "polygon",
      points: [
        [x, y - 4.6],
        [x + 1.7, y + 3],
        [x, y + 1.8],
      ],
      fill: "ink",
    },
    {
      kind: "polygon",
      points: [
        [x, y - 4.6],
        [x - 1.7, y + 3],
        [x, y + 1.8],
      ],
      stroke: { weight: 0.18, ink: "ink" },
    },
    textMark([x, y - 6], "N", { height: 2.5, weight: 700 }, "middle"),
  ];
}

interface CheckRow {
  readonly label: string;
  readonly value: string;
  /** Boxes to write in what was measured both ways. */
  readonly boxes: 0 | 1 | 2;
}

/** `unchecked`: rooms whose diagonals do not stand in the plan. */
export function checkBlock(
  layout: SettingOut,
  unchecked: readonly RoomCheck[],
  words: SettingOutWords,
): Block {
  const rows: readonly CheckRow[] = [
    ...rowsOf(words.control, layout.control),
    ...rowsOf(words.outer, layout.outer),
    ...(unchecked.length < layout.rooms.length
      ? [{ label: words.eachRoom, value: words.asPrinted, boxes: 0 } as const]
      : []),
    ...unchecked.flatMap(({ room, clear, diagonals }) =>
      (clear === null ? diagonals.map((one) => [one]) : [diagonals]).flatMap((ones) =>
        rowsOf(plainText(room) || words.unnamed, ones),
      ),
    ),
    { label: words.allowed, value: `${ALLOWED}`, boxes: 0 },
  ];
  const notes = layout.controls
    .filter(({ axis }) => axis !== null)
    .map(({ id, offsets }) => {
      const [below = "", above = ""] = offsets.map((one) => (one === null ? "–" : numberText(one)));
      const isNear = offsets.some((one) => one !== null && one < SURVIVES);
      const note = words.offset(plainText(id), below, above);
      return isNear ? `${note}. ${words.covered(SURVIVES)}` : note;
    });
  return {
    kind: "whole",
    make: (width) => {
      const right = width - 2 * (BOX + 5.4);
      const made = rows.map((row) => ({
        ...row,
        lines: wrapped(row.label, row.boxes === 0 ? width - 34 : right - 20, NOTE),
      }));
      const below = notes.flatMap((note) => wrapped(note, width, NOTE));
      const rowHeight = (lines: number) => Math.max(5.6, lines * PITCH + 1.2);
      const height =
        5.4 + made.reduce((sum, { lines }) => sum + rowHeight(lines.length), 0) + below.length * PITCH;
      return {
        height,
        marks: (x, y) => {
          const marks: Mark[] = [textMark([x, y + 3.5], words.checks, HEAD)];
          let top = y + 5.4;
          for (const { value, boxes, lines } of made) {
            marks.push(...lines.map((line, k) => textMark([x, top + 4 + k * PITCH], line, NOTE)));
            const isNumber = /^[\d ]+$/.test(value);
            const style: TextStyle = isNumber ? { height: 3.5, weight: 700 } : { height: 2.5, weight: 600 };
            marks.push(textMark([x + (boxes === 0 ? width : right), top + 4.3], value, style, "end"));
            for (let k = 0; k < boxes; k++) {
              const box = { x: x + right + 2 + k * (BOX + 5.2), y: top + 0.5, width: BOX + 3.8, height: BOX };
              marks.push({ kind: "rect", box, stroke: { weight: 0.25, ink: "ink" } });
            }
            top += rowHeight(lines.length);
          }
          marks.push(...below.map((line, k) => textMark([x, top + 3.4 + k * PITCH], line, NOTE)));
          return marks;
        },
      };
    },
  };
}

// Two ways of one length are one row with two boxes.
function rowsOf(label: string, diagonals: readonly Diagonal[]): readonly CheckRow[] {
  const name = ({ points }: Diagonal) => points.join("–");
  const [first, second] = diagonals;
  if (first === undefined) return [];
  if (second !== undefined && second.length === first.length) {
    const names = `${name(first)}, ${name(second)}`;
    return [{ label: `${label} ${names}`, value: numberText(first.length), boxes: 2 }];
  }
  return diagonals.map((one): CheckRow => {
    return { label: `${label} ${name(one)}`, value: numberText(one.length), boxes: 1 };
  });
}

export function marksBlock(layout: SettingOut, words: SettingOutWords): Block {
  const moved = layout.pins.filter(({ movedOff }) => movedOff.length > 0);
  const services = [...new Set(moved.flatMap(({ movedOff }) => movedOff))].map(plainText);
  const number =
    (weight: 400 | 600) =>
    ([x, y]: Point): readonly Mark[] => [
      textMark([x + 5.5, y + 1.75], "1000", { height: 3.5, weight }, "middle"),
    ];
  const rows: readonly (readonly [sign: (at: Point) => readonly Mark[], text: string])[] = [
    [([x, y]) => pinMarks([x + 5.5, y], false, 1), words.pin(layout.pins.length, PIN_RULES.greatestGap)],
    ...(moved.length === 0
      ? []
      : [
          [
            ([x, y]: Point) => pinMarks([x + 5.5, y], true, 1),
            words.movedPin(moved.length, services.join(", ")),
          ] as const,
        ]),
    ...(layout.gaps.length === 0
      ? []
      : [[([x, y]: Point) => gapMarks([x, y], [x + 11, y]), words.gap] as const]),
    ...(layout.services.length === 0 ? [] : [[serviceSign, words.noDrill] as const]),
    ...(layout.controls.length === 0 ? [] : [[controlSign, words.controlLine] as const]),
    [([x, y]) => diagonalSign([x + 3.6, y + 1.2]), words.diagonal],
    [number(600), words.first],
    [number(400), words.second],
  ];
  return {
    kind: "whole",
    make: (width) => {
      const made = rows.map(([sign, text]) => ({ sign, lines: wrapped(text, width - 14, NOTE) }));
      return {
        height: 5.4 + made.reduce((sum, { lines }) => sum + lines.length * PITCH + 0.8, 0),
        marks: (x, y) => {
          const marks: Mark[] = [textMark([x, y + 3.5], words.marks, HEAD)];
          let top = y + 5.4;
          for (const { sign, lines } of made) {
            marks.push(...sign([x, top + 2.4]));
            marks.push(...lines.map((text, k) => textMark([x + 14, top + 3.6 + k * PITCH], text, NOTE)));
            top += lines.length * PITCH + 0.8;
          }
          return marks;
        },
      };
    },
  };
}

function serviceSign([x, y]: Point): readonly Mark[] {
  const path: readonly Point[] = [
    [x + 1.3, y],
    [x + 9.7, y],
  ];
  return [
    ...zoneMarks(path, 1.3, { x, y: y - 2, width: 11, height: 4 }),
    { kind: "line", from: [x, y], to: [x + 11, y], stroke: SERVICE },
  ];
}

function controlSign([x, y]: Point): readonly Mark[] {
  return [{ kind: "line", from: [x, y], to: [x + 11, y], stroke: CONTROL_LINE }, ...crossMarks([x + 5.5, y])];
}

/** How near the points are to be set, and what the standards let the finished concrete differ. */
export function toleranceBlock({ storey }: SheetInfo, words: SettingOutWords): Block {
  const height = storey.clearHeight;
  // ACI 117M-10: the lesser of 0.003 of the height and 25. EN 13670, class 1: the greater of 15 and a 400th of it. Both as
  // quoted by summaries, hence the line that asks to compare with the edition in force.
  const aci = roundTo(Math.min((height * 3) / 1000, 25), 0);
  const en = roundTo(Math.max(15, height / 400), 0);
  const notes = [
    ...words.classes,
    words.practice,
    words.finished,
    words.aciWall,
    words.aciPlumb(`${aci}`),
    words.enSection,
    words.enPlumb(`${en}`),
    words.edition,
  ];
  const styles = notes.map((note): TextStyle => {
    if (note === words.finished) return { height: 2.5, weight: 700 };
    return note === words.practice || note === words.edition ? SOFT : NOTE;
  });
  return noteBlock(words.tolerances, notes, styles);
}

/** Stretches without a pin, by place; null where every pin stands. */
export function leftOutBlock({ gaps }: SettingOut, words: SettingOutWords): Block | null {
  if (gaps.length === 0) return null;
  const place = (at: readonly [Mm, Mm]) => `(${numberText(at[0])}, ${numberText(at[1])})`;
  return noteBlock(
    words.leftOut,
    gaps.map(({ from, to, length, services }) =>
      words.leftOutRow(place(from), place(to), numberText(length), services.map(plainText).join(", ")),
    ),
  );
}

export function obliqueBlock({ oblique }: SettingOut, words: SettingOutWords): Block | null {
  if (oblique.length === 0) return null;
  return noteBlock(
    words.oblique,
    oblique.map(({ points, length }) => words.obliqueRow(points[0], points[1], numberText(length))),
  );
}

export function cautionBlock(words: SettingOutWords): Block {
  return noteBlock(words.cautions, words.cautionList);
}
