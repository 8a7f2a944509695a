// The building blocks of a calculation sheet, each a strip of a column: words, formulas, verdicts, rows of tables.

import type { Box } from "../box.ts";
import type { Lettering } from "../lettering.ts";
import { textWidth } from "../lettering.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { levelRule, SMALL, SMALL_STRONG, STRONG, textBlock, textLine } from "../lists/listText.ts";
import type { Ink, Mark } from "../mark.ts";
import { placedMark } from "../placeMark.ts";
import { formulaBlock } from "./formula.ts";
import type { Step } from "./numbersIn.ts";

/** Marks made from the upper left corner of their strip. */
export function fixedStrip(marks: readonly Mark[], height: number): Strip {
  return { height, draw: (box) => marks.map((mark) => placedMark(mark, box.x, box.y)) };
}

export function gapStrip(height: number): Strip {
  return fixedStrip([], height);
}

/** Strips that are not torn from each other, as one. */
export function stacked(strips: readonly Strip[]): Strip {
  return {
    height: strips.reduce((sum, { height }) => sum + height, 0),
    draw: (box) => {
      let { y } = box;
      return strips.flatMap((strip) => {
        const marks = strip.draw({ ...box, y, height: strip.height });
        y += strip.height;
        return marks;
      });
    },
  };
}

/** Words that go on under each other. */
export function wordsStrip(
  text: string,
  width: number,
  {
    lettering = SMALL,
    ink = "ink",
    indent = 0,
  }: { readonly lettering?: Lettering; readonly ink?: Ink; readonly indent?: number } = {},
): Strip {
  const block = textBlock(text, lettering, { x: indent, top: 0.6, width: width - indent, ink });
  return fixedStrip(block.marks, block.height + 0.6);
}

/** Small words in which signs stand as in a formula. */
export function signedStrip(text: string, width: number, ink: Ink = "ink"): Strip {
  const block = formulaBlock([{ text, weight: 400 }], width, { isSmall: true, ink });
  return fixedStrip(block.marks, block.height + 0.5);
}

export function bulletStrip(text: string, width: number): Strip {
  const block = textBlock(text, SMALL, { x: 3.4, top: 0.6, width: width - 3.4 });
  const bullet: Mark = { kind: "rect", box: { x: 0, y: 1.3, width: 1.5, height: 1.5 }, fill: "ink" };
  return fixedStrip([bullet, ...block.marks], block.height + 1);
}

/** A line of a calculation: formula, its numbers, and what comes out in strong letters. */
export function stepStrip({ formula, numbers, result }: Step, width: number): Strip {
  const stretches = [
    { text: formula, weight: 400 as const },
    ...(numbers === undefined ? [] : [{ text: `= ${numbers}`, weight: 400 as const }]),
    ...(result === undefined ? [] : [{ text: `= ${result}`, weight: 600 as const, isWhole: true }]),
  ];
  const block = formulaBlock(stretches, width);
  return fixedStrip(block.marks, block.height);
}

const HEAD = 7.6;

/** A section under a heading, which is said again where it goes on in another column, as are the heads of a table. */
export function section(
  title: string,
  rows: readonly Strip[],
  {
    continued,
    isWhole = true,
    under = null,
  }: { readonly continued: string; readonly isWhole?: boolean; readonly under?: Strip | null },
): Section {
  return {
    head: (isContinued) => ({
      height: HEAD + (under?.height ?? 0),
      draw: (box) => [
        ...textLine(isContinued ? `${title}, ${continued}` : title, STRONG, {
          x: box.x,
          y: box.y + 5.2,
          room: box.width,
        }),
        levelRule(box.x, box.y + 6.6, box.width, 0.35),
        ...(under?.draw({ ...box, y: box.y + HEAD, height: under.height }) ?? []),
      ],
    }),
    rows,
    isWhole,
  };
}

/** A name on the left and its value on the right; under the name where one line does not hold both. */
export function pairStrip(name: string, value: string, width: number): Strip {
  const right = textWidth(value, SMALL_STRONG);
  const isBeside = textWidth(name, SMALL) + 3 + right <= width;
  const block = textBlock(name, SMALL, { x: 0, top: 0.7, width });
  const y = isBeside ? 3.2 : 3.2 + block.height;
  const height = block.height + (isBeside ? 0.5 : 4.5);
  const figure = textLine(value, SMALL_STRONG, { x: width, y, anchor: "end", room: width });
  return fixedStrip([...block.marks, ...figure, levelRule(0, height, width, 0.13)], height + 0.2);
}

/** A column of a table: where its cells end or begin, from the left edge of the strip. */
export interface TableColumn {
  readonly x: number;
  readonly anchor: "start" | "end";
  /** Paper for a cell; what is longer is cut. */
  readonly room?: number;
}

export const ROW = 4.4;

export function rowStrip(
  cells: readonly string[],
  columns: readonly TableColumn[],
  {
    isStrong = false,
    ink = "ink",
    hasRule = true,
    width,
  }: { readonly isStrong?: boolean; readonly ink?: Ink; readonly hasRule?: boolean; readonly width: number },
): Strip {
  const lettering = isStrong ? SMALL_STRONG : SMALL;
  const marks = cells.flatMap((cell, index) => {
    const { x, anchor, room } = columns[index]!;
    return textLine(cell, lettering, { x, y: 3.2, anchor, ink, ...(room === undefined ? {} : { room }) });
  });
  return fixedStrip([...marks, ...(hasRule ? [levelRule(0, ROW - 0.2, width, 0.13)] : [])], ROW);
}

/** Heads of a table: soft and small over a rule. */
export function headStrip(cells: readonly string[], columns: readonly TableColumn[], width: number): Strip {
  const marks = cells.flatMap((cell, index) => {
    const { x, anchor, room } = columns[index]!;
    return textLine(cell, SMALL, { x, y: 3.4, anchor, ink: "soft", ...(room === undefined ? {} : { room }) });
  });
  return fixedStrip([...marks, levelRule(0, 4.9, width, 0.35)], 5.2);
}

/** How much of a limit is used: a bar that ends at the limit, its used part toned; over it the bar is solid ink. */
export function usageMarks(part: number, box: Box): readonly Mark[] {
  const isOver = part > 1;
  const used = { ...box, width: box.width * Math.max(0, Math.min(part, 1)) };
  return [
    ...(used.width > 0 ? [{ kind: "rect", box: used, fill: isOver ? "ink" : "tone3" } satisfies Mark] : []),
    { kind: "rect", box, stroke: { weight: 0.18, ink: "ink" } },
  ];
}
