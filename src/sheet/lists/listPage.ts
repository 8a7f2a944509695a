// What every page of a list has: the running header, the frame, and on the first page the figures to remember.
//
//   Bill of panels   Unit Heron, two bedrooms            continued, page 2 of 3
//                    Level 1 west, Level 1 east
//   ───────────────────────────────────────────────────────────────────────────

import type { UnitFill } from "../../fill/result.ts";
import type { Box } from "../box.ts";
import { framedSheet } from "../framedSheet.ts";
import { isAllMirrored, type SheetInfo } from "../info.ts";
import { textWidth } from "../lettering.ts";
import type { Mark, Sheet } from "../mark.ts";
import { contentBox } from "../paper.ts";
import { filePart, plainText } from "../plainText.ts";
import { levelRule, PLAIN, SMALL, STRONG, textLine } from "./listText.ts";
import type { ListWords } from "./listWords.ts";

/** From the upper edge of the content to the rule under the header. */
const HEADER = 13.2;
const HEADER_GAP = 2.4;
/** Height of the strip of figures. */
const FIGURES = 16;

/** What a page may hold under its header. */
export function bodyBox(info: SheetInfo, page: number, firstTaken: number): Box {
  const content = contentBox(info.paper);
  const top = HEADER + HEADER_GAP + (page === 0 ? firstTaken : 0);
  return { ...content, y: content.y + top, height: content.height - top };
}

/** Upright columns of equal width with a gap between them. */
export function columnsOf(box: Box, count: number, gap: number): readonly Box[] {
  const width = (box.width - gap * (count - 1)) / count;
  return Array.from({ length: count }, (_, index) => ({ ...box, x: box.x + index * (width + gap), width }));
}

export interface Figure {
  readonly value: string;
  readonly label: string;
}

/** Figures in large letters side by side, and a rule under them; `height` is what they take. */
export function figureStrip(
  figures: readonly Figure[],
  info: SheetInfo,
): { readonly marks: readonly Mark[]; readonly height: number } {
  const body = bodyBox(info, 0, 0);
  const width = body.width / figures.length;
  const marks = figures.flatMap(({ value, label }, index) => {
    const x = body.x + index * width;
    const height = textWidth(value, { height: 7, weight: 700 }) <= width - 3 ? 7 : 5;
    return [
      ...textLine(value, { height, weight: 700 }, { x, y: body.y + 7, room: width - 3 }),
      ...textLine(label, SMALL, { x, y: body.y + 12.2, ink: "soft", room: width - 3 }),
    ];
  });
  return { marks: [...marks, levelRule(body.x, body.y + 14, body.width, 0.35)], height: FIGURES };
}

export interface ListPages {
  /** Ends the name of the file: "bill". */
  readonly name: string;
  readonly title: string;
  /** What of the unit the list is about, behind the title in lists of sheets; not given: all of it. */
  readonly about?: string;
  readonly description: string;
  /** Stands where others have the name of the unit. */
  readonly heading?: string;
  /** Stands under it; not given: the pours of the unit. */
  readonly subtitle?: string;
  readonly pages: readonly (readonly Mark[])[];
}

/** The sheets of a list, each with header and frame. */
export function listSheets(
  unit: UnitFill,
  info: SheetInfo,
  words: ListWords,
  list: ListPages,
): readonly Sheet[] {
  const { pages, description } = list;
  const about = list.about === undefined ? [] : [list.about];
  const title = [list.title, ...about, ...(isAllMirrored(info) ? [words.mirrored] : [])].join(", ");
  return pages.map((marks, index) => {
    const name = [
      filePart(unit.unit) || "unit",
      list.name,
      ...(pages.length > 1 ? [`p${index + 1}`] : []),
    ].join("-");
    const body = [
      ...headerMarks(info, words, {
        title: list.title,
        heading: list.heading ?? words.unit(plainText(info.unitName)),
        subtitle: list.subtitle ?? poursText(info, words),
        page: index,
        pages: pages.length,
      }),
      ...marks,
    ];
    const page = { sheet: index + 1, sheets: pages.length, paper: info.paper, scale: "" };
    return framedSheet(info, { name, title, description, ...page }, body);
  });
}

interface Header {
  readonly title: string;
  readonly heading: string;
  readonly subtitle: string;
  readonly page: number;
  readonly pages: number;
}

function headerMarks(
  info: SheetInfo,
  words: ListWords,
  { title, heading, subtitle, page, pages }: Header,
): readonly Mark[] {
  const { x, y, width } = contentBox(info.paper);
  const lettering = { height: 7, weight: 700 } as const;
  const right = x + width;
  const start = x + textWidth(title, lettering) + 8;
  const number = pages === 1 ? "" : words.page(page + 1, pages);
  const place = page === 0 ? number : `${words.continued}, ${number}`;
  const room = right - start;
  return [
    ...textLine(title, lettering, { x, y: y + 10.2 }),
    ...textLine(heading, STRONG, {
      x: start,
      y: y + 4.6,
      room: room - textWidth(place, PLAIN) - 6,
    }),
    ...textLine(place, PLAIN, { x: right, y: y + 4.6, anchor: "end" }),
    ...textLine(subtitle, PLAIN, { x: start, y: y + 10.2, room }),
    levelRule(x, y + HEADER, width, 0.35),
  ];
}

function poursText(info: SheetInfo, words: ListWords): string {
  const isMirrored = isAllMirrored(info);
  const pours = info.pours.map(({ id, name, mirror }) => {
    const shown = plainText(name) || plainText(id);
    return mirror && !isMirrored ? `${shown} (${words.mirrored})` : shown;
  });
  return [...(isMirrored ? [words.mirrored] : []), pours.join(", ")].join(", ");
}
