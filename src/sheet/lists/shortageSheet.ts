// The shortage list: what all pours together need beyond what is owned, where it is lacking, and what buying it costs.
//
//   ▭ 600 × 2250 W600x2250    needed 116   owned 90   short 26   129.50   3367.00   House 5, House 6
//
// It goes with the bills of the first unit, once for the project; prices stand here alone, for it goes to the purchaser.

import { type Shortage, type ShortageLine, shortageOf } from "../../fill/deliver/shortage.ts";
import type { UnitFill } from "../../fill/result.ts";
import { FAMILIES } from "../../kit/kit.ts";
import type { Box } from "../box.ts";
import { type DeltaSource, type ItemLook, itemLooks } from "../deltas/deltaItems.ts";
import type { SheetInfo } from "../info.ts";
import { wholeNames } from "../lettering.ts";
import type { Mark, Sheet } from "../mark.ts";
import { plainText } from "../plainText.ts";
import { figure } from "./figures.ts";
import { fewestPages, flowed, type Section, type Strip } from "./flow.ts";
import { itemMarks, ROWS } from "./itemMarks.ts";
import { bodyBox, figureStrip, listSheets } from "./listPage.ts";
import { levelRule, numberMark, SMALL, STRONG, textBlock, textLine } from "./listText.ts";
import { SHORTAGE_WORDS } from "./shortageWords.ts";
import { LIST_WORDS } from "./words.ts";

/** Right ends of the figures, from the left edge; where it is short stands behind them. */
const ENDS = { needed: 112, owned: 129, short: 146, spare: 161, price: 183, sum: 208 } as const;
const WHERE = 214;
const HEAD = 7.4;
const LABELS = 4.2;
const NOTE_GAP = 2;
const LABEL_ROOM = 15;
const AMOUNT_ROOM = 21;

/** The shortage list on as many pages as it takes; none where nobody has said what is owned. */
export function shortageSheets(source: DeltaSource, unit: UnitFill, info: SheetInfo): readonly Sheet[] {
  const { fill, kit, project } = source;
  if (Object.keys(project.stock).length === 0 && project.buy) return [];
  const words = SHORTAGE_WORDS[info.language];
  const shortage = shortageOf(fill, kit, project);
  const short = shortage.lines.filter((line) => line.short > 0);
  const whole = (value: number) => figure(value, 0, info.language);
  const pieces = whole(short.reduce((sum, line) => sum + line.short, 0));
  const strip = figureStrip(
    [
      { value: whole(short.length), label: words.codes },
      { value: pieces, label: words.pieces },
      { value: figure(shortage.cost, 2, info.language), label: words.cost(kit.currency) },
      { value: whole(shortage.unpriced), label: words.unpriced },
    ],
    info,
  );
  const note = noteMarks(shortage, project.buy, info, strip.height);
  const boxes = (page: number): readonly Box[] => {
    const body = bodyBox(info, page, strip.height + note.height);
    return [{ ...body, y: body.y + LABELS, height: body.height - LABELS }];
  };
  const names = new Map(project.pours.map(({ id, name }) => [id, plainText(name) || plainText(id)]));
  const look = itemLooks(source);
  const pages = fewestPages(ROWS, (row) =>
    flowed(
      FAMILIES.flatMap((family) => {
        const own = short.filter((line) => line.family === family);
        return own.length === 0 ? [] : [familySection(own, { row, look, names, info })];
      }),
      { boxes, head: (box) => labelMarks(box, info) },
    ),
  ).map((marks, page) => (page === 0 ? [...strip.marks, ...note.marks, ...marks] : marks));
  const pours = project.pours.map(({ id, name, mirror }) => ({ id, name, mirror }));
  return listSheets(unit, { ...info, pours }, LIST_WORDS[info.language], {
    name: "shortage",
    title: words.title,
    heading: words.heading,
    subtitle: words.subtitle,
    description: words.description(whole(short.length), pieces),
    pages,
  });
}

function noteMarks(
  { lines }: Shortage,
  buy: boolean,
  info: SheetInfo,
  taken: number,
): { readonly marks: readonly Mark[]; readonly height: number } {
  const words = SHORTAGE_WORDS[info.language];
  const body = bodyBox(info, 0, taken);
  const covered = lines.filter(({ short }) => short === 0).length;
  const isShort = covered < lines.length;
  const strong = isShort ? (buy ? "" : words.noBuying) : words.nothing;
  const first = textBlock(strong, STRONG, { x: body.x, top: body.y, width: body.width });
  const top = body.y + first.height;
  const rule = words.rule(figure(covered, 0, info.language));
  const second = textBlock(rule, SMALL, { x: body.x, top, width: body.width, ink: "soft" });
  return { marks: [...first.marks, ...second.marks], height: first.height + second.height + NOTE_GAP };
}

function labelMarks(box: Box, info: SheetInfo): readonly Mark[] {
  const words = SHORTAGE_WORDS[info.language];
  const y = box.y - 1.2;
  const label = (text: string, end: number) =>
    textLine(text, SMALL, { x: box.x + end, y, anchor: "end", ink: "soft", room: LABEL_ROOM });
  return [
    ...label(words.needed, ENDS.needed),
    ...label(words.owned, ENDS.owned),
    ...label(words.short, ENDS.short),
    ...label(words.spare, ENDS.spare),
    ...label(words.price, ENDS.price),
    ...label(words.sum, ENDS.sum),
    ...textLine(words.where, SMALL, { x: box.x + WHERE, y, ink: "soft", room: box.width - WHERE }),
  ];
}

interface Given {
  readonly row: number;
  readonly look: ItemLook;
  /** Of pours, by id. */
  readonly names: ReadonlyMap<string, string>;
  readonly info: SheetInfo;
}

function familySection(lines: readonly ShortageLine[], given: Given): Section {
  const { info } = given;
  const words = LIST_WORDS[info.language];
  const name = words.families[lines[0]!.family];
  return {
    head: (isContinued) => ({
      height: HEAD,
      draw: (box) => [
        ...textLine(isContinued ? `${name}, ${words.continued}` : name, STRONG, {
          x: box.x,
          y: box.y + 5.4,
          room: ENDS.needed - LABEL_ROOM,
        }),
        levelRule(box.x, box.y + HEAD, box.width, 0.35),
      ],
    }),
    rows: lines.map((line) => lineStrip(line, given)),
  };
}

function lineStrip(line: ShortageLine, { row, look, names, info }: Given): Strip {
  const { code, family, needed, owned, short, spare, price, cost, pours, units } = line;
  const whole = (value: number) => figure(value, 0, info.language);
  const amount = (value: number | null) => (value === null ? "–" : figure(value, 2, info.language));
  return {
    height: row,
    draw: (box) => {
      const y = box.y + row / 2 + 1.75;
      const cell = (text: string, end: number, room?: number) =>
        numberMark(text, { x: box.x + end, y, ...(room === undefined ? {} : { room }) });
      const where = (pours.length > 0 ? pours.map((id) => names.get(id) ?? id) : units).map(plainText);
      const room = box.width - WHERE;
      return [
        ...itemMarks(look({ key: code, code, family, cut: null }), box, {
          room: ENDS.needed - LABEL_ROOM,
          more: [],
        }),
        ...cell(whole(needed), ENDS.needed),
        ...cell(whole(owned), ENDS.owned),
        ...numberMark(whole(short), { x: box.x + ENDS.short, y, isStrong: true }),
        ...cell(spare === 0 ? "" : whole(spare), ENDS.spare),
        ...cell(amount(price), ENDS.price, AMOUNT_ROOM),
        ...cell(amount(cost), ENDS.sum, AMOUNT_ROOM + 3),
        ...textLine(wholeNames(where, room, SMALL), SMALL, { x: box.x + WHERE, y: y - 0.5, room }),
        levelRule(box.x, box.y + row, box.width, 0.13),
      ];
    },
  };
}
