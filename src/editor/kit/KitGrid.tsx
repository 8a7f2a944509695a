// The table of a kit. One cell is in hand; arrows move it, typing or Enter opens it. Only the rows in sight are on the
// page, so that a kit of thousands of pieces scrolls as one of ten.

import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import { FAMILIES } from "../../kit/kit.ts";
import type { CellIssue, Column, KitRow } from "../../kit/kitRows.ts";
import { useSpeech } from "../live/useWorkbench.tsx";
import { words } from "../words/say.ts";

const ROW = 26; // px
const SPARE = 8; // rows kept ready above and below what is in sight
const HEAD = 28;

/** A cell by its place among the rows and columns shown. */
export interface Cell {
  readonly row: number;
  readonly column: number;
}

export interface KitGridProps {
  readonly rows: readonly KitRow[];
  /** Places in `rows` of what is shown. */
  readonly shown: readonly number[];
  readonly columns: readonly Column[];
  readonly issues: readonly CellIssue[];
  readonly cell: Cell;
  readonly onCell: (cell: Cell) => void;
  readonly onChange: (row: number, column: Column, text: string) => void;
}

export function KitGrid(props: KitGridProps) {
  const { rows, shown, columns, issues, cell, onCell, onChange } = props;
  const { t } = useSpeech();
  const id = useId();
  const host = useRef<HTMLDivElement>(null);
  const grid = useRef<HTMLTableElement>(null);
  const [sight, setSight] = useState({ top: 0, height: 600 });
  const [open, setOpen] = useState<string | null>(null);
  const column = columns[Math.min(cell.column, columns.length - 1)];
  const index = shown[cell.row];
  useRowInSight(host, cell.row);
  useEffect(() => {
    const { current } = host;
    if (current === null) return;
    const observer = new ResizeObserver(() =>
      setSight({ top: current.scrollTop, height: current.clientHeight }),
    );
    observer.observe(current);
    return () => observer.disconnect();
  }, []);
  const first = Math.max(0, Math.floor(sight.top / ROW) - SPARE);
  const last = Math.min(shown.length, Math.ceil((sight.top + sight.height) / ROW) + SPARE);
  const keep = (text: string) => {
    setOpen(null);
    if (index !== undefined && column !== undefined) onChange(index, column, text);
  };
  const leave = (next: Cell | null) => {
    setOpen(null);
    if (next !== null) onCell(next);
    grid.current?.focus();
  };
  const press = (event: KeyboardEvent) => {
    if (open !== null || event.target !== event.currentTarget) return;
    const next = moved(event, cell, { rows: shown.length, columns: columns.length });
    const isTyped = event.key.length === 1 && !event.ctrlKey && !event.metaKey && !event.altKey;
    if (next !== null) onCell(next);
    else if (event.key === "Enter" || event.key === "F2") setOpen(valueAt(rows, index, column));
    else if (event.key === "Delete" || event.key === "Backspace") keep("");
    else if (isTyped) setOpen(event.key);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div
      className="kit-scroll"
      ref={host}
      onScroll={({ currentTarget }) =>
        setSight({ top: currentTarget.scrollTop, height: currentTarget.clientHeight })
      }
    >
      <table
        className="kit-grid"
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose cells are walked by keys is a grid
        role="grid"
        tabIndex={0}
        ref={grid}
        aria-label={t(words("kit.table"))}
        aria-rowcount={shown.length + 1}
        aria-colcount={columns.length}
        aria-activedescendant={index === undefined ? undefined : `${id}-cell`}
        onKeyDown={press}
      >
        <thead>
          <tr className="kit-head" style={{ height: HEAD }}>
            {columns.map((name) => (
              <th key={name} scope="col" className={`kit-cell ${name}`}>
                {name === "record" ? "" : t(words(`kit.column-${name}`))}
              </th>
            ))}
          </tr>
        </thead>
        <tbody style={{ height: shown.length * ROW }}>
          {shown.slice(first, last).map((place, k) => (
            <tr
              key={place}
              aria-rowindex={first + k + 2}
              className="kit-row"
              style={{ top: (first + k) * ROW, height: ROW }}
            >
              {columns.map((name, at) => {
                const isHere = first + k === cell.row && name === column;
                const issue = issues.find((each) => each.row === place && each.column === name);
                const own = rows[place];
                return (
                  <GridCell
                    key={name}
                    id={isHere ? `${id}-cell` : undefined}
                    name={name}
                    row={own}
                    issue={issue}
                    isHere={isHere}
                    open={isHere ? open : null}
                    onClick={() => {
                      grid.current?.focus();
                      onCell({ row: first + k, column: at });
                      if (isHere) setOpen(own?.[name] ?? "");
                    }}
                    onKeep={keep}
                    onLeave={(way) =>
                      leave(
                        way === null
                          ? null
                          : clamped(cell, way, { rows: shown.length, columns: columns.length }),
                      )
                    }
                  />
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface GridCellProps extends Pick<CellFieldProps, "onKeep" | "onLeave"> {
  readonly id: string | undefined;
  readonly name: Column;
  readonly row: KitRow | undefined;
  readonly issue: CellIssue | undefined;
  readonly isHere: boolean;
  /** The text its field begins with; null = closed. */
  readonly open: string | null;
  readonly onClick: () => void;
}

function GridCell({ id, name, row, issue, isHere, open, onClick, onKeep, onLeave }: GridCellProps) {
  const { t } = useSpeech();
  const text = row?.[name] ?? "";
  const heading = name === "record" ? "" : t(words(`kit.column-${name}`));
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are those of the grid
    <td
      id={id}
      aria-invalid={issue === undefined ? undefined : true}
      className={`kit-cell ${name}${isHere ? " here" : ""}${issue === undefined ? "" : " wrong"}`}
      data-cell={`${row?.name ?? ""} ${name}`}
      title={
        issue === undefined
          ? text
          : t(words("kit.expected", { expected: issue.expected, found: issue.found }))
      }
      onClick={open === null ? onClick : undefined}
    >
      {open === null ? (
        text
      ) : (
        <CellField
          name={name}
          first={open}
          label={`${row?.name ?? ""}, ${heading}`}
          onKeep={onKeep}
          onLeave={onLeave}
        />
      )}
    </td>
  );
}

function valueAt(rows: readonly KitRow[], index: number | undefined, column: Column | undefined): string {
  return index === undefined || column === undefined ? "" : (rows[index]?.[column] ?? "");
}

interface Size {
  readonly rows: number;
  readonly columns: number;
}

const PAGE = 15;

function moved(event: KeyboardEvent, cell: Cell, size: Size): Cell | null {
  const far = event.ctrlKey || event.metaKey ? Number.MAX_SAFE_INTEGER : 1;
  switch (event.key) {
    case "ArrowUp":
      return clamped(cell, [-far, 0], size);
    case "ArrowDown":
      return clamped(cell, [far, 0], size);
    case "ArrowLeft":
      return clamped(cell, [0, -far], size);
    case "ArrowRight":
      return clamped(cell, [0, far], size);
    case "PageUp":
      return clamped(cell, [-PAGE, 0], size);
    case "PageDown":
      return clamped(cell, [PAGE, 0], size);
    case "Home":
      return { ...cell, column: 0 };
    case "End":
      return { ...cell, column: size.columns - 1 };
    default:
      return null;
  }
}

function clamped({ row, column }: Cell, [down, right]: readonly [number, number], size: Size): Cell {
  return {
    row: Math.max(0, Math.min(size.rows - 1, row + down)),
    column: Math.max(0, Math.min(size.columns - 1, column + right)),
  };
}

function useRowInSight(host: { readonly current: HTMLDivElement | null }, row: number): void {
  useEffect(() => {
    const { current } = host;
    if (current === null) return;
    const top = row * ROW;
    if (top < current.scrollTop) current.scrollTop = top;
    const bottom = top + ROW + HEAD - current.clientHeight;
    if (bottom > current.scrollTop) current.scrollTop = bottom;
  }, [host, row]);
}

interface CellFieldProps {
  readonly name: Column;
  readonly first: string;
  readonly label: string;
  readonly onKeep: (text: string) => void;
  /** Goes on to a neighbour; null = stays. */
  readonly onLeave: (way: readonly [down: number, right: number] | null) => void;
}

function CellField({ name, first, label, onKeep, onLeave }: CellFieldProps) {
  const field = useRef<HTMLInputElement>(null);
  const isGone = useRef(false);
  const id = useId();
  useEffect(() => field.current?.focus(), []);
  const end = (isKept: boolean, way: readonly [number, number] | null) => {
    isGone.current = true;
    if (isKept) onKeep(field.current?.value ?? "");
    onLeave(way);
  };
  return (
    <>
      <input
        ref={field}
        aria-label={label}
        defaultValue={first}
        autoComplete="off"
        list={name === "family" ? id : undefined}
        onBlur={() => {
          if (!isGone.current) onKeep(field.current?.value ?? "");
        }}
        onKeyDown={(event) => {
          event.stopPropagation();
          if (event.key === "Enter") end(true, [1, 0]);
          else if (event.key === "Tab") end(true, [0, event.shiftKey ? -1 : 1]);
          else if (event.key === "Escape") end(false, null);
          else return;
          event.preventDefault();
        }}
      />
      {name === "family" ? (
        <datalist id={id}>
          {FAMILIES.map((family) => (
            <option key={family} value={family} />
          ))}
        </datalist>
      ) : null}
    </>
  );
}
