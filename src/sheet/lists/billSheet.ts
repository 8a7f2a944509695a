// The bill of panels: what one pour of a unit needs, family by family, for the purchaser and the store.
//
//   492 pieces   271.3 m²   9690 kg   0 closures   18 fillers   124 lifts for two
//   Wall panels                          237      4685.2   215.2
//   ▭ 600 × 2250  W600x2250, standard    124  29.7  3682.8   167.4
//
// The kit's price of a piece is left out: a bill goes through many hands.

import type { UnitFill } from "../../fill/result.ts";
import { FAMILIES } from "../../kit/kit.ts";
import type { Box } from "../box.ts";
import type { SheetInfo } from "../info.ts";
import type { Mark, Sheet } from "../mark.ts";
import { plainText } from "../plainText.ts";
import { figure, measure } from "./figures.ts";
import { fewestPages, flowed, type Section, type Strip } from "./flow.ts";
import { itemMarks, kindWords, ROWS } from "./itemMarks.ts";
import { isCountedApart, type ListItem, listItems } from "./listItems.ts";
import { bodyBox, columnsOf, figureStrip, listSheets } from "./listPage.ts";
import { levelRule, numberMark, numberRoom, SMALL, STRONG, textBlock, textLine } from "./listText.ts";
import type { ListWords } from "./listWords.ts";
import { LIST_WORDS } from "./words.ts";

/** Right ends of the columns of figures, from the right edge: number, mass of one, of all, area. */
const ENDS = { quantity: 48, each: 34.5, mass: 15, area: 0 } as const;
/** Paper that the words over the figures have, left of their ends, and that the figures have. */
const LABEL_ROOM = 12.5;
const ROOMS = { each: 12, mass: 18, area: 13.6 } as const;
const HEAD = 7.4;
const LABELS = 4.2;
const NOTE = 4.6;
const TOTAL = 9.4;

/** The bill of a unit on as many pages as it takes. */
export function billSheets(unit: UnitFill, info: SheetInfo): readonly Sheet[] {
  const words = LIST_WORDS[info.language];
  const items = listItems(unit, info);
  const strip = figureStrip(headline(unit, items, info, words), info);
  const body = bodyBox(info, 0, strip.height);
  const note = textBlock(words.onePour, SMALL, { x: body.x, top: body.y, width: body.width, ink: "soft" });
  const boxes = (page: number) =>
    columnsOf(bodyBox(info, page, strip.height + NOTE), 2, 6).map((box) => ({
      ...box,
      y: box.y + LABELS,
      height: box.height - LABELS,
    }));
  const families = FAMILIES.map((family) => items.filter((item) => item.family === family)).filter(
    (own) => own.length > 0,
  );
  const pages = fewestPages(ROWS, (row) => {
    const sections = families.map((own, index): Section => {
      const section = familySection(own, row, info, words);
      const isLast = index === families.length - 1;
      return isLast ? { ...section, rows: [...section.rows, totalStrip(items, info, words)] } : section;
    });
    return flowed(sections, { boxes, head: (box) => labelMarks(box, words) });
  }).map((marks, page) => (page === 0 ? [...strip.marks, ...note.marks, ...marks] : marks));
  const { area, mass } = sumsOf(items, info);
  const pieces = figure(count(items.filter(({ family }) => !isCountedApart(family))), 0, info.language);
  const description = words.billDescription(plainText(info.unitName), pieces, area, mass);
  return listSheets(unit, info, words, { name: "bill", title: words.bill, description, pages });
}

function headline(unit: UnitFill, items: readonly ListItem[], info: SheetInfo, words: ListWords) {
  const pieces = items.filter(({ family }) => !isCountedApart(family));
  const sums = sumsOf(items, info);
  const whole = (value: number) => figure(value, 0, info.language);
  const limit = info.personLimit;
  const heavy = pieces.filter(({ mass }) => limit !== null && mass > limit);
  return [
    { value: whole(count(pieces)), label: words.pieces },
    { value: sums.area || "0", label: words.squareMetres },
    { value: whole(massOf(items)), label: words.kilograms },
    { value: whole(unit.totals.closures), label: words.closures },
    { value: whole(unit.totals.fillers), label: words.fillers },
    limit === null
      ? { value: "–", label: words.noLimit }
      : { value: whole(count(heavy)), label: words.twoPerson },
  ];
}

function count(items: readonly ListItem[]): number {
  return items.reduce((sum, { quantity }) => sum + quantity, 0);
}

function massOf(items: readonly ListItem[]): number {
  return items.reduce((sum, { mass, quantity }) => sum + mass * quantity, 0);
}

interface Sums {
  readonly quantity: string;
  readonly mass: string;
  /** Empty where none of them touches concrete. */
  readonly area: string;
}

function sumsOf(items: readonly ListItem[], { language }: SheetInfo): Sums {
  const area = items.reduce((sum, item) => sum + item.area, 0);
  return {
    quantity: figure(count(items), 0, language),
    mass: measure(massOf(items), language),
    area: area === 0 ? "" : measure(area, language),
  };
}

function labelMarks(box: Box, words: ListWords): readonly Mark[] {
  const right = box.x + box.width;
  const label = (text: string, end: number) =>
    textLine(text, SMALL, { x: right - end, y: box.y - 1.2, anchor: "end", ink: "soft", room: LABEL_ROOM });
  return [
    ...label(words.quantity, ENDS.quantity),
    ...label(words.each, ENDS.each),
    ...label(words.kilograms, ENDS.mass),
    ...label("m²", ENDS.area),
  ];
}

function familySection(items: readonly ListItem[], row: number, info: SheetInfo, words: ListWords): Section {
  const name = words.families[items[0]!.family];
  const sums = sumsOf(items, info);
  return {
    head: (isContinued) => ({
      height: HEAD,
      draw: (box) => {
        const y = box.y + 5.4;
        const right = box.x + box.width;
        const room = box.width - ENDS.quantity - numberRoom(isContinued ? "" : sums.quantity);
        const title = isContinued ? `${name}, ${words.continued}` : name;
        return [
          ...textLine(title, STRONG, { x: box.x, y, room }),
          ...(isContinued ? [] : sumMarks(sums, right, y)),
          levelRule(box.x, box.y + HEAD, box.width, 0.35),
        ];
      },
    }),
    rows: items.map((item) => itemStrip(item, row, info, words)),
  };
}

function sumMarks(sums: Partial<Sums>, right: number, y: number): readonly Mark[] {
  const sum = (text: string | undefined, end: number, room?: number) =>
    numberMark(text ?? "", { x: right - end, y, isStrong: true, ...(room === undefined ? {} : { room }) });
  return [
    ...sum(sums.quantity, ENDS.quantity),
    ...sum(sums.mass, ENDS.mass, ROOMS.mass + ROOMS.each),
    ...sum(sums.area, ENDS.area, ROOMS.area),
  ];
}

function itemStrip(item: ListItem, row: number, info: SheetInfo, words: ListWords): Strip {
  const { quantity, mass, area } = item;
  return {
    height: row,
    draw: (box) => {
      const right = box.x + box.width;
      const y = box.y + row / 2 + 1.75;
      const count = figure(quantity, 0, info.language);
      const cell = (value: number, column: keyof typeof ROOMS) =>
        numberMark(measure(value, info.language), { x: right - ENDS[column], y, room: ROOMS[column] });
      const room = box.width - ENDS.quantity - numberRoom(count);
      return [
        ...itemMarks(item, box, { room, more: kindWords(item, words) }),
        ...numberMark(count, { x: right - ENDS.quantity, y, isStrong: true }),
        ...cell(mass, "each"),
        ...cell(mass * quantity, "mass"),
        ...(area > 0 ? cell(area, "area") : []),
        levelRule(box.x, box.y + row, box.width, 0.13),
      ];
    },
  };
}

/** Masses and areas alone: panels and pins have no sum that says anything. */
function totalStrip(items: readonly ListItem[], info: SheetInfo, words: ListWords): Strip {
  const { mass, area } = sumsOf(items, info);
  return {
    height: TOTAL,
    draw: (box) => [
      levelRule(box.x, box.y + 2.4, box.width, 0.7),
      ...textLine(words.total, STRONG, { x: box.x, y: box.y + 8 }),
      ...sumMarks({ mass, area }, box.x + box.width, box.y + 8),
    ],
  };
}
