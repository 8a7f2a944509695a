// The list of sheets: units and hands, kinds, sheets, each with a box to tick. One row takes the focus; the arrows walk,
// the space bar ticks, and whatever sheet the hand is on shows in the preview.

import { type KeyboardEvent, type MouseEvent, useEffect, useRef } from "react";
import type { LeftOut } from "./choice.ts";
import { tickedOf } from "./choice.ts";
import type { Row } from "./sheetList.ts";
import { TickBox } from "./TickBox.tsx";
import { type SayOfSheets, useSheetWords } from "./useSheetWords.ts";

export interface SheetTreeProps {
  readonly rows: readonly Row[];
  readonly leftOut: LeftOut;
  /** The row in hand. */
  readonly row: string;
  /** The sheet that is shown. */
  readonly shown: string | null;
  readonly onRow: (row: Row) => void;
  readonly onToggle: (keys: readonly string[]) => void;
}

const LEVELS = { set: 1, kind: 2, sheet: 3 } as const;

export function SheetTree({ rows, leftOut, row, shown, onRow, onToggle }: SheetTreeProps) {
  const w = useSheetWords();
  const tree = useRef<HTMLDivElement>(null);
  const at = Math.max(
    0,
    rows.findIndex(({ id }) => id === row),
  );
  const inHand = rows[at]?.id;
  useEffect(() => {
    if (inHand === undefined) return;
    const own = tree.current?.querySelector<HTMLElement>("[tabindex='0']");
    own?.scrollIntoView({ block: "nearest" });
    if (tree.current?.contains(document.activeElement)) own?.focus();
  }, [inHand]);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const own = rows[at];
    if (own === undefined) return;
    const to = walked(rows, at, event.key);
    if (event.key === " " || (event.key === "Enter" && own.kind !== "sheet")) onToggle(own.keys);
    else if (to !== null) onRow(to);
    else return;
    event.preventDefault();
  };
  const onClick = ({ target }: MouseEvent) => {
    if (!(target instanceof Element)) return;
    const element = target.closest<HTMLElement>("[data-row]");
    const own = rows.find(({ id }) => id === element?.dataset.row);
    if (own === undefined) return;
    if (target.closest(".tick") !== null) onToggle(own.keys);
    element?.focus();
    onRow(own);
  };
  return (
    <div
      className="sheet-tree"
      role="tree"
      aria-label={w("list")}
      aria-multiselectable="false"
      ref={tree}
      onKeyDown={onKeyDown}
      onClick={onClick}
    >
      {rows.map((each, index) => {
        const ticked = tickedOf(each.keys, leftOut);
        return (
          <div
            key={each.id}
            className={`sheet-row of-${each.kind}`}
            role="treeitem"
            aria-level={LEVELS[each.kind]}
            aria-checked={ticked === "some" ? "mixed" : ticked === "all"}
            aria-selected={each.id === shown}
            tabIndex={index === at ? 0 : -1}
            data-row={each.id}
          >
            <TickBox ticked={ticked} />
            <RowText row={each} w={w} />
          </div>
        );
      })}
    </div>
  );
}

// Left goes up to what a row belongs to, right down into it; null: the key walks nowhere.
function walked(rows: readonly Row[], at: number, key: string): Row | null {
  const level = LEVELS[rows[at]?.kind ?? "set"];
  const row = (index: number) => rows[Math.min(rows.length - 1, Math.max(0, index))] ?? null;
  switch (key) {
    case "ArrowDown":
      return row(at + 1);
    case "ArrowUp":
      return row(at - 1);
    case "Home":
      return row(0);
    case "End":
      return row(rows.length - 1);
    case "ArrowLeft":
      return row(rows.findLastIndex((each, index) => index < at && LEVELS[each.kind] < level));
    case "ArrowRight":
      return row(LEVELS[rows[at + 1]?.kind ?? "set"] > level ? at + 1 : at);
    default:
      return null;
  }
}

function RowText({ row, w }: { row: Row; w: SayOfSheets }) {
  switch (row.kind) {
    case "set": {
      const { unit, clearHeight, isMirrored, pours } = row.set;
      const about = [
        ...(clearHeight === null ? [] : [w("height", { height: clearHeight })]),
        ...(isMirrored ? [w("mirrored")] : []),
      ];
      return (
        <span className="sheet-set">
          <b>{[unit, ...about].join(", ")}</b>
          {pours.length === 0 ? null : <small>{w("pours", { pours: pours.join(", ") })}</small>}
        </span>
      );
    }
    case "kind":
      return (
        <>
          <span>{w(`kind.${row.of}`)}</span>
          <small className="sheet-count">{row.keys.length}</small>
        </>
      );
    case "sheet":
      return <span>{labelOf(row, w)}</span>;
    default:
      return row satisfies never;
  }
}

function labelOf({ label, page }: Extract<Row, { kind: "sheet" }>, w: SayOfSheets): string {
  return page === null ? label : w("page", { title: label, ...page });
}
