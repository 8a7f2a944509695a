// Reads a sheet as a person does: the letters of its SVG, put together into lines and cells by where they stand.

export interface Cell {
  readonly text: string;
  /** Where it is anchored, mm: its left edge, or its right one. */
  readonly x: number;
  readonly isEnd: boolean;
  readonly isStrong: boolean;
}

export interface ReadLine {
  readonly page: number;
  /** 0 on the left half or where a page has one column, 1 on the right. */
  readonly column: 0 | 1;
  readonly y: number;
  /** The height of its letters is that of formulas and headings. */
  readonly isLarge: boolean;
  readonly cells: readonly Cell[];
}

interface Letters {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly width: number;
  readonly isEnd: boolean;
  readonly isStrong: boolean;
  readonly text: string;
}

const LARGE = 5.014;
const SMALL = 3.582;

function lettersOf(svg: string): readonly Letters[] {
  return [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, attributes = "", text = ""]) => {
    const value = (name: string) => new RegExp(`(?:^| )${name}="([^"]*)"`).exec(attributes)?.[1];
    return {
      x: Number(value("x")),
      y: Number(value("y")),
      size: Number(value("font-size")),
      // A single letter has no length of its own.
      width: Number(value("textLength") ?? 0.3 * Number(value("font-size"))),
      isEnd: value("text-anchor") === "end",
      isStrong: Number(value("font-weight")) >= 600,
      text: text
        .replaceAll("&amp;", "&")
        .replaceAll("&lt;", "<")
        .replaceAll("&gt;", ">")
        .replaceAll("&#39;", "'"),
    };
  });
}

const isNear = (a: number, b: number, by = 0.02) => Math.abs(a - b) < by;

interface Draft {
  readonly y: number;
  readonly column: 0 | 1;
  readonly isLarge: boolean;
  readonly letters: Letters[];
}

/** How far the letters below a sign stand below its line, and those raised above it, mm. */
const BELOW = { large: 0.9, small: 0.75 } as const;
const ABOVE = { large: -1.5, small: -1 } as const;

/** The lines of pages, from page to page, column to column, downward; what stands at the foot of all of them is left out. */
export function readLines(
  svgs: readonly string[],
  { isFull, foot }: { readonly isFull: (svg: string) => boolean; readonly foot: string },
): readonly ReadLine[] {
  return svgs.flatMap((svg, page) => {
    const middle = Number(/viewBox="0 0 ([\d.]+) /.exec(svg)?.[1]) / 2;
    const letters = lettersOf(svg);
    const end = Math.min(...letters.filter(({ text }) => text.startsWith(foot)).map(({ y }) => y));
    const own = letters.filter(
      ({ y, size }) => y < end - 0.1 && (isNear(size, LARGE) || isNear(size, SMALL)),
    );
    const columnOf = (each: Letters): 0 | 1 => (!isFull(svg) && leftOf(each) > middle ? 1 : 0);
    const drafts: Draft[] = [];
    for (const each of own) {
      const place = { y: each.y, column: columnOf(each), isLarge: isNear(each.size, LARGE) };
      const line = drafts.find((some) => isSame(some, place) && isNear(some.y, each.y));
      if (line === undefined) drafts.push({ ...place, letters: [each] });
      else line.letters.push(each);
    }
    return withSigns(drafts)
      .sort((a, b) => a.column - b.column || a.y - b.y)
      .map(({ y, column, isLarge, letters: some }): ReadLine => {
        const sorted = [...some].sort((a, b) => leftOf(a) - leftOf(b));
        const isFormula = isLarge || some.some(({ text }) => /^[_^]/.test(text));
        return { page, column, y, isLarge, cells: isFormula ? [joined(sorted)] : sorted.map(cellOf) };
      });
  });
}

function leftOf({ x, width, isEnd }: Letters): number {
  return isEnd ? x - width : x;
}

function isSame(a: Omit<Draft, "letters" | "y">, b: Omit<Draft, "letters" | "y">): boolean {
  return a.column === b.column && a.isLarge === b.isLarge;
}

/** Small lines just below or above another are the small letters of its signs. */
function withSigns(drafts: readonly Draft[]): Draft[] {
  const lines = drafts.map((draft) => ({ ...draft, letters: [...draft.letters] }));
  const isTaken = new Set<Draft>();
  for (const line of lines) {
    if (line.isLarge) continue;
    for (const [mark, by] of [
      ["_", BELOW],
      ["^", ABOVE],
    ] as const) {
      const base = lines.find(
        (other) =>
          other !== line &&
          other.column === line.column &&
          isNear(line.y, other.y + (other.isLarge ? by.large : by.small)),
      );
      if (base === undefined || isTaken.has(base)) continue;
      base.letters.push(
        ...line.letters.map((each) => ({
          ...each,
          text: mark === "_" ? `_${each.text}` : `^(${each.text})`,
        })),
      );
      isTaken.add(line);
      break;
    }
  }
  return lines.filter((line) => !isTaken.has(line));
}

function cellOf({ text, x, isEnd, isStrong }: Letters): Cell {
  return { text, x, isEnd, isStrong };
}

/** Letters of a formula as one text: a gap is a blank. */
function joined(letters: readonly Letters[]): Cell {
  let text = "";
  let end = letters[0]!.x;
  for (const each of letters) {
    if (each.x - end > 0.5 && !/^[_^]/.test(each.text)) text += " ";
    text += each.text;
    end = each.x + each.width;
  }
  return { text, x: letters[0]!.x, isEnd: false, isStrong: letters.every(({ isStrong }) => isStrong) };
}
