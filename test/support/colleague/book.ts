// A colleague's notebook: which figures of a sheet were worked out again, and which of them come out otherwise.

import type { Cell, ReadLine } from "../sheetReading.ts";

/** What the project file says, as far as these sheets go by it. */
export interface Told {
  readonly height: number;
  readonly density: number;
  readonly rate: number;
  readonly temperature: number;
  readonly tieLimit: number;
  readonly slab: number;
  readonly service: number;
  readonly strength: number;
  readonly strikeAt: number;
  readonly log: readonly (readonly [number, number])[];
  readonly personLimit: number;
  readonly propPitch: number;
}

export interface Book {
  readonly faults: string[];
  /** Cells whose figures were worked out again. */
  readonly seen: Set<Cell>;
  /** Beams and strips worked out already, by what they hang on. */
  readonly known: Map<string, unknown>;
}

export function newBook(known = new Map<string, unknown>()): Book {
  return { faults: [], seen: new Set(), known };
}

/** The first figure of a text, NaN where there is none. */
export function figureIn(text: string): number {
  const closed = text.replaceAll(/(\d) (?=\d{3}(?!\d))/g, "$1").replaceAll("−", "-");
  return Number(/-?\d+(?:\.\d+)?/.exec(closed)?.[0] ?? Number.NaN);
}

/** How near a figure with so many digits can be: one in its last place, and what its inputs lost by being printed. */
export function isAsPrinted(printed: string, value: number): boolean {
  const decimals = /\.(\d+)/.exec(printed)?.[1]?.length ?? 0;
  const off = Math.abs(figureIn(printed) - value);
  return off <= 1.01 * 10 ** -decimals || off <= 0.003 * Math.abs(value);
}

/** Notes that a cell's figure was worked out, and whether it comes out as printed. `text`: the part of it meant. */
export function compare(book: Book, what: string, cell: Cell, value: number, text = cell.text): void {
  book.seen.add(cell);
  if (!isAsPrinted(text, value)) book.faults.push(`${what}: printed ${text}, comes to ${value}`);
}

/** Sections under their headings, the parts of one that goes on put together. */
export function sectionsOf(
  lines: readonly ReadLine[],
  continued: string,
): ReadonlyMap<string, readonly ReadLine[]> {
  const sections = new Map<string, ReadLine[]>();
  let own: ReadLine[] = [];
  for (const line of lines) {
    const [first] = line.cells;
    const isHead = line.isLarge && line.cells.length === 1 && first!.isStrong && !/[=]/.test(first!.text);
    if (!isHead) {
      own.push(line);
      continue;
    }
    const title = first!.text.replace(`, ${continued}`, "");
    own = sections.get(title) ?? [];
    sections.set(title, own);
  }
  return sections;
}

/** The small words of a section as one text, to find what is said in them. */
export function wordsOf(lines: readonly ReadLine[]): string {
  return lines
    .filter(({ isLarge }) => !isLarge)
    .map(({ cells }) => cells.map(({ text }) => text).join(" "))
    .join(" ");
}

/** Formulas of a section, lines that go on put together; the cells they came from. */
export function formulasOf(
  lines: readonly ReadLine[],
): readonly { readonly text: string; readonly cells: readonly Cell[] }[] {
  const found: { text: string; cells: Cell[]; x: number; of: string }[] = [];
  for (const { isLarge, cells, page, column } of lines) {
    const of = `${page} ${column}`;
    const [cell] = cells;
    if (!isLarge || cell === undefined) continue;
    const last = found[found.length - 1];
    if (last !== undefined && last.of === of && cell.x > last.x + 4) {
      last.text += ` ${cell.text}`;
      last.cells.push(cell);
    } else found.push({ text: cell.text, cells: [cell], x: cell.x, of });
  }
  return found;
}
