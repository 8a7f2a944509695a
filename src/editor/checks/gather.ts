// Which rows does the list show? Checks by kind and unit, the worst first; hundreds of one kind gathered by wall or room.
//
//   ▾ tie-load, unit A         481 checks, the worst of them
//     ▾ wall w3                 40 checks, the worst of them
//         one check
//
// Everything here is plain data: the list is drawn from it and walked by it.

import type { CheckStatus } from "../../assess/checkDocument.ts";
import type { CheckRow } from "./checkList.ts";

/** What is listed; null = all. `unit` is the name of an entry. */
export interface Filter {
  readonly unit: string | null;
  readonly room: string | null;
  readonly kind: string | null;
  readonly status: CheckStatus | null;
}

export const NO_FILTER: Filter = { unit: null, room: null, kind: null, status: null };

/** The statuses, worst first. */
export const STATUSES: readonly CheckStatus[] = ["over", "not-checked", "within", "not-applicable"];

export type Counts = { readonly [S in CheckStatus]: number };

/** The checks of one kind in one unit. */
export interface Group {
  readonly id: string;
  readonly kind: string;
  readonly unit: string;
  readonly rows: readonly CheckRow[];
  readonly parts: readonly Part[];
}

/** Those of a group on one wall, or in one room; a single one stands for itself. */
interface Part {
  readonly id: string;
  readonly about: PartName;
  readonly rows: readonly CheckRow[];
}

export type PartName =
  | { readonly kind: "wall"; readonly walls: string }
  | { readonly kind: "room"; readonly room: string }
  | { readonly kind: "check" };

/** A line of the list. */
export interface Line {
  readonly id: string;
  readonly level: 1 | 2 | 3;
  readonly about: { readonly kind: "group"; readonly group: Group } | PartName;
  /** The checks under it, the worst first: never none. */
  readonly rows: readonly CheckRow[];
  readonly isOpen: boolean;
  /** Its place among its sisters, from 1, and how many these are. */
  readonly place: number;
  readonly of: number;
  /** Id of the line it lies under; empty at the top. */
  readonly under: string;
}

/** More checks of a kind than these are gathered by wall or room. */
const GATHERED_FROM = 12;

/** All choices there are, in the order of the document. */
export function choicesOf(rows: readonly CheckRow[]): {
  readonly rooms: readonly string[];
  readonly kinds: readonly string[];
} {
  const rooms = new Set(rows.map(({ where }) => where.room).filter((room) => room !== ""));
  return { rooms: [...rooms], kinds: [...new Set(rows.map(({ kind }) => kind))] };
}

/** A filter without what no check has any more. */
export function keptFilter(filter: Filter, rows: readonly CheckRow[]): Filter {
  const { rooms, kinds } = choicesOf(rows);
  const kept = (wanted: string | null, there: readonly string[]) =>
    wanted !== null && there.includes(wanted) ? wanted : null;
  const units = [...new Set(rows.map(({ where }) => where.unit))];
  return {
    unit: kept(filter.unit, units),
    room: kept(filter.room, rooms),
    kind: kept(filter.kind, kinds),
    status: filter.status,
  };
}

export function filtered(rows: readonly CheckRow[], filter: Filter): readonly CheckRow[] {
  return rows.filter(
    ({ where, kind, status }) =>
      (filter.unit === null || where.unit === filter.unit) &&
      (filter.room === null || where.room === filter.room) &&
      (filter.kind === null || kind === filter.kind) &&
      (filter.status === null || status === filter.status),
  );
}

/** The rows by kind and unit, groups and rows worst first. */
export function groupsOf(rows: readonly CheckRow[]): readonly Group[] {
  const groups = [...byKey(rows, ({ kind, where }) => `${kind} ${where.unit}`)].map(([id, own]): Group => {
    const sorted = own.toSorted(byWorst);
    const first = sorted[0]!;
    return { id, kind: first.kind, unit: first.where.unit, rows: sorted, parts: partsOf(id, sorted) };
  });
  return groups.sort((a, b) => byWorst(a.rows[0]!, b.rows[0]!));
}

// Sorted rows keep their order within a part, and the parts come in the order of their worst.
function partsOf(group: string, rows: readonly CheckRow[]): readonly Part[] {
  const alone = (row: CheckRow): Part => ({
    id: `${group}/${row.id}`,
    about: { kind: "check" },
    rows: [row],
  });
  if (rows.length <= GATHERED_FROM) return rows.map(alone);
  return [...byKey(rows, partKey)].flatMap(([key, own]): readonly Part[] => {
    const [first] = own;
    const about = first === undefined ? null : partName(first);
    if (about === null || own.length === 1) return own.map(alone);
    return [{ id: `${group}/${key}`, about, rows: own }];
  });
}

function partName({ walls, where }: CheckRow): PartName | null {
  if (walls !== "") return { kind: "wall", walls };
  return where.room === "" ? null : { kind: "room", room: where.room };
}

function partKey(row: CheckRow): string {
  const about = partName(row);
  if (about?.kind === "wall") return `wall ${about.walls}`;
  return about?.kind === "room" ? `room ${about.room}` : "";
}

/** The lines to show, of which those in `open` show what is under them. */
export function linesOf(groups: readonly Group[], open: ReadonlySet<string>): readonly Line[] {
  return groups.flatMap((group, index): readonly Line[] => {
    const { id, rows, parts } = group;
    const line: Line = {
      id,
      level: 1,
      about: { kind: "group", group },
      rows,
      isOpen: open.has(id),
      place: index + 1,
      of: groups.length,
      under: "",
    };
    if (!line.isOpen || rows.length === 1) return [line];
    return [
      line,
      ...parts.flatMap((part, k) => partLines(part, { place: k + 1, of: parts.length, under: id, open })),
    ];
  });
}

function partLines(
  { id, about, rows }: Part,
  given: Pick<Line, "place" | "of" | "under"> & { readonly open: ReadonlySet<string> },
): readonly Line[] {
  const { open, ...among } = given;
  const line: Line = { id, level: 2, about, rows, isOpen: open.has(id), ...among };
  if (about.kind === "check" || !line.isOpen) return [line];
  const under = rows.map(
    (row, k): Line => ({
      id: `${id}/${row.id}`,
      level: 3,
      about: { kind: "check" },
      rows: [row],
      isOpen: false,
      place: k + 1,
      of: rows.length,
      under: id,
    }),
  );
  return [line, ...under];
}

/** Whether a line has others under it. */
export function opens({ rows }: Line): boolean {
  return rows.length > 1;
}

/** What a key does on a line: open or close it, go to another, or nothing. */
export type Walked =
  | { readonly kind: "go"; readonly to: Line }
  | { readonly kind: "open" | "close"; readonly line: Line }
  | null;

export function walked(lines: readonly Line[], at: number, key: string): Walked {
  const line = lines[at];
  if (line === undefined) return null;
  const go = (to: Line | undefined): Walked => (to === undefined ? null : { kind: "go", to });
  switch (key) {
    case "ArrowDown":
      return go(lines[at + 1]);
    case "ArrowUp":
      return go(lines[at - 1]);
    case "Home":
      return go(lines[0]);
    case "End":
      return go(lines.at(-1));
    case "ArrowRight":
      if (!opens(line)) return null;
      return line.isOpen ? go(lines[at + 1]) : { kind: "open", line };
    case "ArrowLeft":
      if (line.isOpen && opens(line)) return { kind: "close", line };
      return go(lines.find(({ id }) => id === line.under));
    default:
      return null;
  }
}

export function countsOf(rows: readonly CheckRow[]): Counts {
  const counts = { over: 0, "not-checked": 0, within: 0, "not-applicable": 0 };
  for (const { status } of rows) counts[status] += 1;
  return counts;
}

/**
 * Over the limit first, then what uses most of its limit, then what could not be checked, by the greatest value, then what
 * is within without a share of a limit, as a count of faults that are none; equals in the order of the document. Over
 * without a share counts as worse than any share.
 */
export function byWorst(a: CheckRow, b: CheckRow): number {
  return (
    rank(a) - rank(b) ||
    share(b) - share(a) ||
    (a.kind === b.kind ? (b.value ?? 0) - (a.value ?? 0) : 0) ||
    a.index - b.index
  );
}

function rank({ status, utilisation }: CheckRow): number {
  if (status === "over") return 0;
  if (status === "within") return utilisation === null ? 3 : 1;
  return status === "not-checked" ? 2 : 4;
}

function share({ status, utilisation }: CheckRow): number {
  if (utilisation !== null) return utilisation;
  return status === "over" ? Number.MAX_VALUE : -1;
}

function byKey(
  rows: readonly CheckRow[],
  keyOf: (row: CheckRow) => string,
): ReadonlyMap<string, readonly CheckRow[]> {
  const found = new Map<string, CheckRow[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const own = found.get(key);
    if (own === undefined) found.set(key, [row]);
    else own.push(row);
  }
  return found;
}
