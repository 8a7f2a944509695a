// Blocks of text beside the plan and on the pages behind it, and how they flow from one column of paper to the next.

import type { Box } from "../box.ts";
import type { FontWeight } from "../fontWidths.ts";
import { cutToWidth, wrapped } from "../lettering.ts";
import type { Ink, LetterHeight, Mark, Point } from "../mark.ts";

/** A block made for a column of a given breadth: how high it is, and its marks at a place. */
export interface MadeBlock {
  readonly height: number;
  readonly marks: (x: number, y: number) => readonly Mark[];
}

/** What a column can hold: a block that stays whole, or a table that may be cut between rows. */
export type Block =
  | { readonly kind: "whole"; readonly make: (width: number) => MadeBlock }
  | { readonly kind: "table"; readonly rows: number; readonly make: TableMaker };

/** Makes the rows from `first` on, at most as many as the height holds, with their heading. */
export type TableMaker = (
  width: number,
  first: number,
  height: number,
) => MadeBlock & { readonly count: number };

export type Column = Box;

/** Between columns side by side. */
export const COLUMN_GAP = 7;

/** As many equal columns as a box holds that are at least `least` wide, one in any case. */
export function columnsIn({ x, y, width, height }: Box, least: number): readonly Column[] {
  const count = Math.max(1, Math.floor((width + COLUMN_GAP) / (least + COLUMN_GAP)));
  const each = (width - (count - 1) * COLUMN_GAP) / count;
  return Array.from({ length: count }, (_, k) => ({
    x: x + k * (each + COLUMN_GAP),
    y,
    width: each,
    height,
  }));
}

const BETWEEN = 5;

/**
 * Fills the columns of each page in turn. `columnsOf` gives those of a page; blocks too high for any column of a new page
 * are drawn there all the same, so that nothing is lost without a trace.
 */
export function flow(
  blocks: readonly Block[],
  columnsOf: (page: number) => readonly Column[],
): readonly (readonly Mark[])[] {
  const pages: Mark[][] = [[]];
  let columns = [...columnsOf(0)];
  let column = columns.shift();
  let y = column?.y ?? 0;
  const advance = (): Column => {
    column = columns.shift();
    while (column === undefined) {
      pages.push([]);
      columns = [...columnsOf(pages.length - 1)];
      column = columns.shift();
    }
    y = column.y;
    return column;
  };
  for (const block of blocks) {
    let place = column ?? advance();
    if (block.kind === "whole") {
      let made = block.make(place.width);
      const isFresh = () => y === place.y && pages.length > 1;
      while (y + made.height > place.y + place.height + 1e-6 && !isFresh()) {
        place = advance();
        made = block.make(place.width);
      }
      pages.at(-1)!.push(...made.marks(place.x, y));
      y += made.height + BETWEEN;
      continue;
    }
    for (let first = 0; first < block.rows; ) {
      const made = block.make(place.width, first, place.y + place.height - y);
      if (made.count === 0) {
        place = advance();
        continue;
      }
      pages.at(-1)!.push(...made.marks(place.x, y));
      first += made.count;
      y += made.height + BETWEEN;
      if (first < block.rows) place = advance();
    }
  }
  return pages;
}

export interface TextStyle {
  readonly height: LetterHeight;
  readonly weight: FontWeight;
  readonly ink?: Ink;
}

export const NOTE: TextStyle = { height: 2.5, weight: 400 };
export const HEAD: TextStyle = { height: 3.5, weight: 700 };
/** From baseline to baseline of notes, and from the top of a block to its first. */
export const PITCH = 4.4;

export function textMark(
  [x, y]: Point,
  text: string,
  style: TextStyle,
  anchor: "start" | "middle" | "end" = "start",
): Mark {
  const { height, weight, ink = "ink" } = style;
  return { kind: "text", at: [x, y], text, height, weight, ink, anchor };
}

/** A heading with notes below it, each begun on a line of its own. */
export function noteBlock(
  heading: string,
  notes: readonly string[],
  styles: readonly TextStyle[] = [],
): Block {
  return {
    kind: "whole",
    make: (width) => {
      const lines = notes.flatMap((note, k) =>
        wrapped(note, width, styles[k] ?? NOTE).map((text) => ({ text, style: styles[k] ?? NOTE })),
      );
      return {
        height: PITCH + 0.6 + lines.length * PITCH,
        marks: (x, y) => [
          textMark([x, y + 3.5], cutToWidth(heading, width, HEAD), HEAD),
          ...lines.map(({ text, style }, k) => textMark([x, y + 3.5 + 0.9 + (k + 1) * PITCH], text, style)),
        ],
      };
    },
  };
}
