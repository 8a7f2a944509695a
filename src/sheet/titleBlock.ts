// The title block: who, what, which revision, which sheet. Empty fields are left open for a pen.

import type { SheetInfo } from "./info.ts";
import { cutToWidth } from "./lettering.ts";
import type { Mark } from "./mark.ts";
import { TITLE_BLOCK } from "./page.ts";
import { plainText } from "./plainText.ts";
import { TITLE_WORDS } from "./words.ts";

export interface TitleEntries {
  readonly title: string;
  readonly scale: string;
  readonly sheet: number;
  readonly sheets: number;
}

/** Fields with their widths, mm; together they are as wide as the block. @see ISO 7200 */
export function titleMarks(info: SheetInfo, entries: TitleEntries): readonly Mark[] {
  const fields: readonly (readonly [label: string, value: string, width: number])[] = [
    [TITLE_WORDS.scheme, info.project, 50],
    [TITLE_WORDS.title, entries.title, 55],
    [TITLE_WORDS.document, info.document, 27],
    [TITLE_WORDS.revision, info.revision, 14],
    [TITLE_WORDS.date, info.date, 31],
    [TITLE_WORDS.scale, entries.scale, 15],
    [TITLE_WORDS.sheet, TITLE_WORDS.sheetOf(entries.sheet, entries.sheets), 23],
    [TITLE_WORDS.madeBy, info.madeBy, 31],
    [TITLE_WORDS.releasedBy, info.releasedBy, 31],
  ];
  const marks: Mark[] = [{ kind: "rect", box: TITLE_BLOCK, stroke: { weight: 0.7, ink: "ink" } }];
  let x = TITLE_BLOCK.x;
  for (const [label, value, width] of fields) {
    if (x > TITLE_BLOCK.x) {
      const foot = TITLE_BLOCK.y + TITLE_BLOCK.height;
      marks.push({
        kind: "line",
        from: [x, TITLE_BLOCK.y],
        to: [x, foot],
        stroke: { weight: 0.18, ink: "ink" },
      });
    }
    marks.push(...fieldMarks(label, plainText(value), x, width));
    x += width;
  }
  return marks;
}

function fieldMarks(label: string, value: string, x: number, width: number): readonly Mark[] {
  const room = width - 3;
  const large = { height: 3.5, weight: 600 } as const;
  const small = { height: 2.5, weight: 600 } as const;
  const lettering = cutToWidth(value, room, large) === value ? large : small;
  const text = cutToWidth(value, room, lettering);
  const at = (y: number) => [x + 1.5, TITLE_BLOCK.y + y] as const;
  return [
    { kind: "text", at: at(4.1), text: label, height: 2.5, weight: 400, ink: "soft", anchor: "start" },
    ...(text === ""
      ? []
      : [{ kind: "text", at: at(10.6), text, ...lettering, ink: "ink", anchor: "start" } satisfies Mark]),
  ];
}
