// The lists of a setting-out sheet: points with empty columns for what was found, and openings.

import { cutToWidth } from "../lettering.ts";
import type { Mark, Stroke } from "../mark.ts";
import { plainText } from "../plainText.ts";
import { type Block, HEAD, NOTE, type TextStyle, textMark } from "./block.ts";
import { numberText } from "./numberText.ts";
import type { SettingOut } from "./settingOut.ts";
import type { SettingOutWords } from "./words.ts";

export interface TableColumn {
  readonly title: string;
  /** Share of the breadth. */
  readonly width: number;
  readonly anchor: "start" | "end";
  /** Left open, to be written in by hand. */
  readonly isOpen?: true;
}

const ROW = 4.9;
const TOP = 12.4;
/** Fewer rows are not worth a heading at the foot of a column. */
const LEAST_ROWS = 8;
const RULE: Stroke = { weight: 0.35, ink: "ink" };
const HAIR: Stroke = { weight: 0.13, ink: "ink" };
const FIRST: TextStyle = { height: 2.5, weight: 700 };
const TITLE: TextStyle = { height: 2.5, weight: 400, ink: "soft" };

export function pointTable({ points }: SettingOut, words: SettingOutWords): Block {
  const columns: readonly TableColumn[] = [
    { title: words.point, width: 9.5, anchor: "start" },
    { title: "", width: 14, anchor: "start" },
    { title: words.x, width: 15.2, anchor: "end" },
    { title: words.y, width: 15.2, anchor: "end" },
    { title: words.found(words.x), width: 15.5, anchor: "end", isOpen: true },
    { title: words.found(words.y), width: 15.5, anchor: "end", isOpen: true },
  ];
  const rows = points.map(({ id, kind, at }) => [
    id,
    words.kinds[kind],
    numberText(at[0]),
    numberText(at[1]),
    "",
    "",
  ]);
  return table({ heading: words.points, continued: words.continued, columns, rows });
}

export function openingTable({ openings, points }: SettingOut, words: SettingOutWords): Block {
  const columns: readonly TableColumn[] = [
    { title: words.opening, width: 22, anchor: "start" },
    { title: words.jambs, width: 18, anchor: "start" },
    { title: words.width, width: 15, anchor: "end" },
    { title: words.sill, width: 16, anchor: "end" },
    { title: words.head, width: 15, anchor: "end" },
  ];
  const named = (at: readonly [number, number]) =>
    points.find((point) => point.kind === "jamb" && point.at[0] === at[0] && point.at[1] === at[1])?.id;
  const rows = openings.map(({ id, near, width, sill, head, isBoxed }) => {
    const jambs = near.map(named).filter((name) => name !== undefined);
    return [
      plainText(id),
      isBoxed ? words.boxed : jambs.join(", "),
      numberText(width),
      numberText(sill),
      numberText(head),
    ];
  });
  return table({ heading: words.openings, continued: words.continued, columns, rows });
}

/** A table that may be cut between rows; titles and cells are cut to their column. */
export function table(list: {
  readonly heading: string;
  readonly continued: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly (readonly string[])[];
}): Block {
  return {
    kind: "table",
    rows: list.rows.length,
    make: (width, first, height) => {
      const left = list.rows.length - first;
      const fits = Math.max(0, Math.floor((height - TOP) / ROW + 1e-6));
      const count = fits < Math.min(LEAST_ROWS, left) ? 0 : Math.min(left, fits);
      const heading = first === 0 ? list.heading : list.continued;
      return {
        count,
        height: TOP + count * ROW,
        marks: (x, y) =>
          tableMarks({ ...list, heading, rows: list.rows.slice(first, first + count) }, { x, y, width }),
      };
    },
  };
}

function tableMarks(
  list: {
    readonly heading: string;
    readonly columns: readonly TableColumn[];
    readonly rows: readonly (readonly string[])[];
  },
  { x, y, width }: { readonly x: number; readonly y: number; readonly width: number },
): readonly Mark[] {
  const whole = list.columns.reduce((sum, column) => sum + column.width, 0);
  const edges = [x];
  for (const column of list.columns) edges.push(edges.at(-1)! + (column.width / whole) * width);
  const top = y + TOP;
  const foot = top + list.rows.length * ROW;
  const cell = (text: string, k: number, baseline: number, style: TextStyle): readonly Mark[] => {
    // A title may run on over a column that has none.
    const isWide = style === TITLE && list.columns[k + 1]?.title === "";
    const [start, end] = [edges[k]!, edges[k + (isWide ? 2 : 1)]!];
    const shown = cutToWidth(text, end - start - 1.4, style);
    if (shown === "") return [];
    const { anchor } = list.columns[k]!;
    return [textMark([anchor === "start" ? start + 0.4 : end - 1.2, baseline], shown, style, anchor)];
  };
  const open = list.columns.flatMap((column, k) => (column.isOpen ? [k] : []));
  return [
    textMark([x, y + 3.5], cutToWidth(list.heading, width, HEAD), HEAD),
    ...list.columns.flatMap((column, k) => cell(column.title, k, top - 1.5, TITLE)),
    { kind: "line", from: [x, top], to: [x + width, top], stroke: RULE },
    ...list.rows.flatMap((row, index): readonly Mark[] => {
      const line = top + (index + 1) * ROW;
      return [
        { kind: "line", from: [x, line], to: [x + width, line], stroke: HAIR },
        ...row.flatMap((text, k) => cell(text, k, line - 1.2, k === 0 ? FIRST : NOTE)),
      ];
    }),
    ...open.map(
      (k): Mark => ({
        kind: "rect",
        box: { x: edges[k]!, y: top, width: edges[k + 1]! - edges[k]!, height: foot - top },
        stroke: HAIR,
      }),
    ),
  ];
}
