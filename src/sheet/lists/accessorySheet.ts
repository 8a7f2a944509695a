// The accessory schedule: what the store hands out for a pour, with spares, and columns to fill in by hand; under it
// what is used up: release agent, the first wash of new forms, tie sleeves.
//
//   Pins   Pin            0.2   4159   5 %   208   4367   [ issued ][ returned ][ lost ]

import { SPARES } from "../../fill/deliver/spares.ts";
import type { UnitFill } from "../../fill/result.ts";
import type { Box } from "../box.ts";
import type { SheetInfo } from "../info.ts";
import { textWidth } from "../lettering.ts";
import type { Mark, Sheet } from "../mark.ts";
import { plainText } from "../plainText.ts";
import {
  type AccessoryRow,
  type AccessorySchedule,
  AGENT_AREA,
  accessorySchedule,
  consumablesOf,
} from "./accessoryRows.ts";
import { figure } from "./figures.ts";
import { fewestPages, flowed, type Section, type Strip } from "./flow.ts";
import { itemMarks } from "./itemMarks.ts";
import { type ListItem, listItems } from "./listItems.ts";
import { bodyBox, columnsOf, listSheets } from "./listPage.ts";
import { levelRule, numberMark, numberRoom, PLAIN, SMALL, STRONG, textBlock, textLine } from "./listText.ts";
import type { ListWords } from "./listWords.ts";
import { LIST_WORDS } from "./words.ts";

/** High enough to write in; the lower ones are taken where they save a page. */
const ROWS: readonly number[] = [6.8, 6.3, 5.8];
const HEAD = 7.4;
/** Where the family's name ends and the piece begins, from the left edge. */
const ITEM_START = 52;
/** Right ends of the figures and left edges of the fields, from the right edge. */
const ENDS = { needed: 126, percent: 112, spare: 94, issue: 76 } as const;
const FIELD_WIDTH = 22.5;
const FIELDS = [71.5, 47, 22.5] as const;
const LABEL_ROOM = 14;
const SIGNATURES = 8;

/** The accessory schedule of a unit on as many pages as it takes. */
export function accessorySheets(unit: UnitFill, info: SheetInfo): readonly Sheet[] {
  const words = LIST_WORDS[info.language];
  const items = listItems(unit, info);
  const schedule = accessorySchedule(items);
  const boxes = (page: number): readonly Box[] => [bodyBox(info, page, SIGNATURES)];
  const { width } = boxes(0)[0]!;
  const pages = fewestPages(ROWS, (row) => {
    const given = { info, words, width, row };
    const sections = [
      rowsSection(words.accessory, schedule.rows, given),
      rowsSection(words.sparePanels, schedule.sparePanels, given),
      consumablesSection(items, schedule, given),
    ].filter(({ rows }) => rows.length > 0);
    return flowed(sections, { boxes });
  }).map((marks, page) => (page === 0 ? [...signatureMarks(info, words), ...marks] : marks));
  const { agent } = consumablesOf(items, schedule);
  const litres = figure(agent, 0, info.language);
  const lines = schedule.rows.length + schedule.sparePanels.length;
  const description = words.accessoriesDescription(plainText(info.unitName), lines, litres);
  return listSheets(unit, info, words, {
    name: "accessories",
    title: words.accessories,
    description,
    pages,
  });
}

/** Lines for a pen: which pour, which day, who handed out. */
function signatureMarks(info: SheetInfo, words: ListWords): readonly Mark[] {
  const body = bodyBox(info, 0, 0);
  return columnsOf(body, 3, 8).flatMap((box, index): readonly Mark[] => {
    const label = [words.pour, words.date, words.store][index]!;
    const start = box.x + textWidth(label, PLAIN) + 2;
    const y = box.y + 4.6;
    return [
      ...textLine(label, PLAIN, { x: box.x, y }),
      {
        kind: "line",
        from: [start, y + 1],
        to: [box.x + box.width, y + 1],
        stroke: { weight: 0.25, ink: "ink" },
      },
    ];
  });
}

function labelMarks(box: Box, words: ListWords): readonly Mark[] {
  const right = box.x + box.width;
  const y = box.y + 5.2;
  const label = (text: string, end: number) =>
    textLine(text, SMALL, { x: right - end, y, anchor: "end", ink: "soft", room: LABEL_ROOM });
  return [
    ...label(words.needed, ENDS.needed),
    ...label("%", ENDS.percent),
    ...label(words.spare, ENDS.spare),
    ...label(words.issue, ENDS.issue),
    ...[words.issued, words.returned, words.lost].flatMap((text, index) =>
      textLine(text, SMALL, { x: right - FIELDS[index]! + 1, y, ink: "soft", room: FIELD_WIDTH - 1 }),
    ),
  ];
}

interface Given {
  readonly info: SheetInfo;
  readonly words: ListWords;
  readonly width: number;
  /** Height of a row. */
  readonly row: number;
}

function rowsSection(title: string, rows: readonly AccessoryRow[], given: Given): Section {
  const { words } = given;
  return {
    head: (isContinued) => ({
      height: HEAD,
      draw: (box) => [
        ...textLine(isContinued ? `${title}, ${words.continued}` : title, STRONG, {
          x: box.x,
          y: box.y + 5.2,
          room: box.width - ENDS.needed - LABEL_ROOM,
        }),
        ...labelMarks(box, words),
        levelRule(box.x, box.y + HEAD, box.width, 0.35),
      ],
    }),
    rows: rows.map((row, index) => {
      const { family } = row.item;
      const isFirst = rows[index - 1]?.item.family !== family;
      return rowStrip(row, isFirst ? words.families[family] : "", given);
    }),
  };
}

function rowStrip(row: AccessoryRow, family: string, { info, words, row: pitch }: Given): Strip {
  const { item, needed, sparePercent, spare, issue, isConsumed } = row;
  const whole = (value: number) => figure(value, 0, info.language);
  return {
    height: pitch,
    draw: (box) => {
      const right = box.x + box.width;
      const y = box.y + pitch / 2 + 1.75;
      const cell = (text: string, end: number) => numberMark(text, { x: right - end, y });
      const from = { ...box, x: box.x + ITEM_START };
      const room = box.width - ITEM_START - ENDS.needed - numberRoom(whole(needed));
      return [
        ...textLine(family, STRONG, { x: box.x, y, room: ITEM_START - 2 }),
        ...itemMarks(item, from, { room, more: [] }),
        ...cell(whole(needed), ENDS.needed),
        ...(sparePercent === null
          ? []
          : [...cell(`${sparePercent}`, ENDS.percent), ...cell(whole(spare), ENDS.spare)]),
        ...numberMark(whole(issue), { x: right - ENDS.issue, y, isStrong: true }),
        ...FIELDS.flatMap((start, index) => fieldMarks(right - start, box, index > 0 && isConsumed, words)),
        levelRule(box.x, box.y + pitch, right - FIELDS[0] - 1.5 - box.x, 0.13),
      ];
    },
  };
}

/** A field for a pen; closed where nothing can come back. */
function fieldMarks(x: number, row: Box, isClosed: boolean, words: ListWords): readonly Mark[] {
  const box = { x, y: row.y + 0.7, width: FIELD_WIDTH, height: row.height - 1.4 };
  const middle = row.y + row.height / 2;
  return [
    {
      kind: "rect",
      box,
      ...(isClosed ? { fill: "band" as const } : {}),
      stroke: { weight: isClosed ? 0.18 : 0.35, ink: "ink" },
    },
    ...(isClosed
      ? textLine(words.stays, SMALL, {
          x: x + FIELD_WIDTH / 2,
          y: middle + 1.25,
          anchor: "middle",
          ink: "soft",
        })
      : []),
  ];
}

/** Parts of the width for the three texts, by their lengths, and the gap behind the first two. */
const SHARES = [0.36, 0.4, 0.24] as const;
const TEXT_GAP = 6;

/** Three texts side by side under one heading. */
function consumablesSection(items: readonly ListItem[], schedule: AccessorySchedule, given: Given): Section {
  const { info, words, width } = given;
  const { area, agent, sleeves } = consumablesOf(items, schedule);
  const whole = (value: number) => figure(value, 0, info.language);
  const pours = Math.max(1, info.pours.length);
  const texts = [
    [words.agent, words.agentText(figure(area, 1, info.language), whole(AGENT_AREA), whole(agent))],
    [words.lime, words.limeText],
    [
      words.sleeves,
      sleeves === 0 ? words.noSleeves : words.sleevesText(whole(sleeves), pours, whole(sleeves * pours)),
    ],
  ] as const;
  const drawAll = (box: Box) =>
    texts.map(([title, text], index) => {
      const column = {
        x: box.x + SHARES.slice(0, index).reduce((sum, share) => sum + share * box.width, 0),
        y: box.y,
        width: SHARES[index]! * box.width - (index < texts.length - 1 ? TEXT_GAP : 0),
      };
      const head = textBlock(title, STRONG, { x: column.x, top: column.y + 2, width: column.width });
      const body = textBlock(text, PLAIN, {
        x: column.x,
        top: column.y + 2.6 + head.height,
        width: column.width,
      });
      return { marks: [...head.marks, ...body.marks], height: 3.4 + head.height + body.height };
    });
  const height = Math.max(...drawAll({ x: 0, y: 0, width, height: 0 }).map((block) => block.height));
  const rule = textBlock(words.spareRule(SPARES), SMALL, { x: 0, top: 0, width });
  return {
    head: () => ({
      height: rule.height + 2,
      draw: (box) => [
        ...textBlock(words.spareRule(SPARES), SMALL, { x: box.x, top: box.y, width: box.width, ink: "soft" })
          .marks,
        levelRule(box.x, box.y + box.height, box.width, 0.35),
      ],
    }),
    rows: [{ height, draw: (box) => drawAll(box).flatMap(({ marks }) => marks) }],
  };
}
