// The delta list of one pour: what is carried where before it, what stays and what lies idle meanwhile.
//
//   ▐→▌ From room to room      12        A room hands its pieces on to its own room, which is not listed piece by piece.
//   Bathroom → Hall
//   ▭ 600 × 2250 W600x2250      3  □

import { type DeliverPlan, deliverPlan, type PourDelta } from "../../fill/deliver/deliverPlan.ts";
import type { FillDocument, UnitFill } from "../../fill/result.ts";
import type { Box } from "../box.ts";
import type { SheetInfo } from "../info.ts";
import { textWidth } from "../lettering.ts";
import { figure } from "../lists/figures.ts";
import { fewestPages, flowed, type Section, type Strip } from "../lists/flow.ts";
import { itemMarks, ROWS, TICK } from "../lists/itemMarks.ts";
import { bodyBox, columnsOf, figureStrip, listSheets } from "../lists/listPage.ts";
import {
  LARGE,
  levelRule,
  numberMark,
  numberRoom,
  SMALL,
  SMALL_STRONG,
  STRONG,
  textBlock,
  textLine,
} from "../lists/listText.ts";
import { LIST_WORDS } from "../lists/words.ts";
import type { Mark, Sheet } from "../mark.ts";
import { OUTLINE } from "../pieceMark.ts";
import {
  type DeltaContent,
  type DeltaRow,
  type DeltaSection,
  deltaContent,
  pourName,
} from "./deltaGroups.ts";
import { type DeltaSource, type ItemLook, itemLooks } from "./deltaItems.ts";
import { noteText, type StatedProps, statedProps } from "./deltaNotes.ts";
import { DELTA_WORDS } from "./words.ts";

const COLUMNS = 3;
const COLUMN_GAP = 5;
/** Title of a section, and the line of a room over its rows. */
const HEAD = 8.8;
const ROOM = 5.4;
/** Left edge of the box to tick and right end of the number, from the right edge of a column. */
const BOX = 4.4;
const NUMBER_END = 6.6;

interface Prepared {
  readonly plan: DeliverPlan;
  readonly look: ItemLook;
  readonly props: StatedProps | null;
}

// A fill is asked once for every entry and hand.
const prepared = new WeakMap<FillDocument, Prepared & DeltaSource>();

function preparedFor(source: DeltaSource): Prepared {
  const { fill, kit, project } = source;
  const known = prepared.get(fill);
  if (known?.project === project && known.kit === kit) return known;
  const plan = deliverPlan(fill, kit, project);
  const made = { ...source, plan, look: itemLooks(source), props: statedProps(source) };
  prepared.set(fill, made);
  return made;
}

/** The plan of deliveries behind the sheets of a fill. */
export function planOf(source: DeltaSource): DeliverPlan {
  return preparedFor(source).plan;
}

/**
 * The delta lists of the pours of one entry in one hand, in working order; none where there is only one day of work.
 *
 * @param entry - place of the entry in the fill
 */
export function deltaSheets(
  source: DeltaSource,
  unit: UnitFill,
  { entry, isMirrored }: { readonly entry: number; readonly isMirrored: boolean },
  info: SheetInfo,
): readonly Sheet[] {
  const made = preparedFor(source);
  const { plan } = made;
  if (plan.days.length < 2) return [];
  const all = plan.days.flatMap(({ pours }) => pours);
  return all.flatMap((delta, index) => {
    const { need } = delta;
    if (need.entry !== entry || need.mirror !== isMirrored) return [];
    const pours = info.pours.filter(({ id }) => id === need.pour);
    return pourSheets(source, made, delta, unit, { ...info, pours }, index + 1);
  });
}

function pourSheets(
  source: DeltaSource,
  { plan, look, props }: Prepared,
  delta: PourDelta,
  unit: UnitFill,
  info: SheetInfo,
  number: number,
): readonly Sheet[] {
  const words = DELTA_WORDS[info.language];
  const listWords = LIST_WORDS[info.language];
  const content = deltaContent(plan, delta, source.project);
  const { figures, after } = content;
  const whole = (value: number) => figure(value, 0, info.language);
  const strip = figureStrip(
    [
      { value: whole(figures.needed), label: words.needed },
      { value: whole(figures.goAlong), label: words.goAlong },
      { value: whole(figures.moved), label: words.betweenRooms },
      { value: whole(figures.returned), label: words.returned },
      { value: whole(figures.fetched), label: words.fetched },
      { value: whole(figures.idle), label: words.idle },
    ],
    info,
  );
  const note = noteMarks(noteText(delta.need, props, info), info, strip.height);
  const boxes = (page: number) =>
    columnsOf(bodyBox(info, page, strip.height + note.height), COLUMNS, COLUMN_GAP);
  const pages = fewestPages(ROWS, (row) =>
    flowed(
      [
        ...handoverSections(content, { row, width: boxes(0)[0]!.width }, info),
        ...content.sections.map((section) => sectionOf(section, row, look, info)),
      ],
      { boxes },
    ),
  ).map((marks, page) => (page === 0 ? [...strip.marks, ...note.marks, ...marks] : marks));
  const name = pourName(delta.need, source.project);
  const hand = delta.need.mirror ? `${name} (${listWords.mirrored})` : name;
  const before = after.length === 0 ? words.first : words.after(after.join(", "));
  const description = words.description(
    hand,
    whole(figures.moved),
    whole(figures.fetched),
    whole(figures.returned),
  );
  return listSheets(unit, info, listWords, {
    name: `delta-${number}`,
    title: words.title,
    about: name,
    subtitle: `${hand}, ${before}`,
    description,
    pages,
  });
}

function noteMarks(
  text: string,
  info: SheetInfo,
  taken: number,
): { readonly marks: readonly Mark[]; readonly height: number } {
  if (text === "") return { marks: [], height: 0 };
  const body = bodyBox(info, 0, taken);
  const block = textBlock(text, SMALL, { x: body.x, top: body.y, width: body.width, ink: "soft" });
  return { marks: block.marks, height: block.height + 2.4 };
}

function handoverSections(
  { handovers }: DeltaContent,
  { row, width }: { readonly row: number; readonly width: number },
  info: SheetInfo,
): readonly Section[] {
  if (handovers.length === 0) return [];
  const roomOf = (quantity: number) => width - NUMBER_END - numberRoom(figure(quantity, 0, info.language));
  const fits = handovers.every(({ label, quantity }) => textWidth(label, STRONG) <= roomOf(quantity));
  const lettering = fits ? STRONG : SMALL_STRONG;
  const words = DELTA_WORDS[info.language];
  const all = handovers.reduce((sum, { quantity }) => sum + quantity, 0);
  const rows = handovers.map(
    ({ label, quantity }): Strip => ({
      height: row,
      draw: (box) => {
        const count = figure(quantity, 0, info.language);
        const y = box.y + row / 2 + 1.75;
        return [
          ...textLine(label, lettering, { x: box.x, y, room: roomOf(quantity) }),
          ...numberMark(count, { x: box.x + box.width - NUMBER_END, y, isStrong: true }),
          ...tickMarks(box),
          levelRule(box.x, box.y + row, box.width, 0.13),
        ];
      },
    }),
  );
  return [
    { head: (isContinued) => headStrip("»", words.rooms, all, isContinued, info), rows, isWhole: true },
  ];
}

function sectionOf(section: DeltaSection, row: number, look: ItemLook, info: SheetInfo): Section {
  const { sign, title, total, groups, isWork } = section;
  return {
    head: (isContinued) => headStrip(sign, title, total, isContinued, info),
    rows: groups.flatMap(({ label, rows }) =>
      rows.map((each, index) => {
        const strip = rowStrip(each, { row, look, info, isWork });
        return index === 0 && label !== "" ? withLabel(label, strip) : strip;
      }),
    ),
  };
}

/** Sign in a solid box, title, pieces. */
function headStrip(
  sign: string,
  title: string,
  total: number | null,
  isContinued: boolean,
  info: SheetInfo,
): Strip {
  return {
    height: HEAD,
    draw: (box) => {
      const plate = { x: box.x, y: box.y, width: 9, height: 7 };
      const right = box.x + box.width;
      const count = total === null || isContinued ? "" : figure(total, 0, info.language);
      const shown = isContinued ? `${title}, ${LIST_WORDS[info.language].continued}` : title;
      const start = plate.x + plate.width + 2;
      return [
        { kind: "rect", box: plate, fill: "ink" },
        ...textLine(sign, LARGE, {
          x: plate.x + plate.width / 2,
          y: plate.y + 6,
          anchor: "middle",
          ink: "paper",
        }),
        ...textLine(shown, STRONG, {
          x: start,
          y: box.y + 5.2,
          room: right - start - textWidth(count, STRONG) - NUMBER_END - 2,
        }),
        ...numberMark(count, { x: right - NUMBER_END, y: box.y + 5.2, isStrong: true }),
        levelRule(box.x, box.y + HEAD, box.width, 0.35),
      ];
    },
  };
}

/** The first row of a room under the room's name: the two are never torn apart. */
function withLabel(label: string, strip: Strip): Strip {
  return {
    height: ROOM + strip.height,
    draw: (box) => [
      ...textLine(label, SMALL_STRONG, { x: box.x, y: box.y + 4.2, room: box.width }),
      levelRule(box.x, box.y + ROOM, box.width, 0.13),
      ...strip.draw({ ...box, y: box.y + ROOM, height: strip.height }),
    ],
  };
}

interface Given {
  readonly row: number;
  readonly look: ItemLook;
  readonly info: SheetInfo;
  readonly isWork: boolean;
}

function rowStrip({ item, quantity }: DeltaRow, { row, look, info, isWork }: Given): Strip {
  const count = typeof quantity === "number" ? figure(quantity, 0, info.language) : quantity;
  return {
    height: row,
    draw: (box) => {
      const right = box.x + box.width;
      const middle = box.y + box.height / 2;
      const listed = look(item);
      const named = item.cut === null ? listed : { ...listed, size: item.cut };
      return [
        ...itemMarks(named, box, { room: box.width - NUMBER_END - numberRoom(count), more: [] }),
        ...numberMark(count, { x: right - NUMBER_END, y: middle + 1.75, isStrong: true }),
        ...(isWork ? tickMarks(box) : []),
        levelRule(box.x, box.y + box.height, box.width, 0.13),
      ];
    },
  };
}

function tickMarks(row: Box): readonly Mark[] {
  const middle = row.y + row.height / 2;
  const box = { x: row.x + row.width - BOX, y: middle - TICK / 2, width: TICK, height: TICK };
  return [{ kind: "rect", box, stroke: OUTLINE }];
}
