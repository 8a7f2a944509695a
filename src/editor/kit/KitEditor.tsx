// The kit of the project: its pieces and rules as a table to edit, read and written as CSV, with the effect on the unit
// in view shown as it changes. It lies over the plan until it is sent away; every change is a step that undo takes back.

import { useEffect, useMemo, useRef, useState } from "react";
import { FAMILIES } from "../../kit/kit.ts";
import { kitCsv } from "../../kit/kitCsv.ts";
import { type Column, rowOf } from "../../kit/kitRows.ts";
import { changeScreen, REGION } from "../live/actions.ts";
import { useBench, useSpeech } from "../live/useWorkbench.tsx";
import { words } from "../words/say.ts";
import { KitEffect } from "./KitEffect.tsx";
import { type Cell, KitGrid } from "./KitGrid.tsx";
import {
  freeCode,
  isFamily,
  type KitFilter,
  shownColumns,
  shownRows,
  withCell,
  withNewRow,
  withoutRow,
} from "./kitTable.ts";
import { type KitDraft, useKitDraft } from "./useKitDraft.ts";
import "../theme/kit.css";

export function KitEditor() {
  const bench = useBench();
  const { t } = useSpeech();
  const draft = useKitDraft();
  const [filter, setFilter] = useState<KitFilter>({ show: "wall-panel", text: "" });
  const [cell, setCell] = useState<Cell>({ row: 0, column: 0 });
  const heading = useRef<HTMLHeadingElement>(null);
  const { rows, issues } = draft;
  useEffect(() => heading.current?.focus(), []);
  const columns = shownColumns(filter);
  const shown = useMemo(
    () => shownRows(rows, filter, new Set(issues.map(({ row }) => row))),
    [rows, filter, issues],
  );
  const here = { row: Math.min(cell.row, Math.max(0, shown.length - 1)), column: cell.column };
  const index = shown[here.row];
  const change = (row: number, column: Column, text: string) => {
    const next = withCell(rows, row, column, text);
    if (next !== rows) draft.apply(next);
  };
  return (
    <section
      className="kit"
      aria-label={t(words("kit.title"))}
      {...{ [REGION]: "kit" }}
      onKeyDown={(event) => {
        if (event.key === "Escape") changeScreen(bench, { isKitOpen: false });
      }}
    >
      <header className="kit-bar">
        <h2 ref={heading} tabIndex={-1}>
          {t(words("kit.title"))}
        </h2>
        <KitNames draft={draft} />
        <small>{t(words(draft.isShipped ? "kit.shipped" : "kit.own"))}</small>
        <button type="button" className="act" onClick={() => changeScreen(bench, { isKitOpen: false })}>
          {t(words("kit.close"))} <kbd>Esc</kbd>
        </button>
      </header>
      <div className="kit-bar">
        <Filter filter={filter} onFilter={setFilter} />
        <Acts draft={draft} filter={filter} index={index} onRow={(row) => setCell({ row, column: 0 })} />
        <span className="kit-count">{t(words("kit.shown", { count: shown.length }))}</span>
        <KitEffect />
      </div>
      <Faults draft={draft} />
      <KitGrid
        rows={rows}
        shown={shown}
        columns={columns}
        issues={issues}
        cell={here}
        onCell={setCell}
        onChange={change}
      />
    </section>
  );
}

function KitNames({ draft: { rows, apply } }: { draft: KitDraft }) {
  const { t } = useSpeech();
  const index = rows.findIndex(({ record }) => record === "kit");
  const row = rows[index];
  if (row === undefined) return null;
  const keep = (column: Column, text: string) => {
    const next = withCell(rows, index, column, text);
    if (next !== rows) apply(next);
  };
  return (
    <>
      <NameField
        key={row.name}
        label={t(words("kit.name"))}
        value={row.name}
        onKeep={(text) => keep("name", text)}
      />
      <NameField
        key={`${row.name} ${row.unit}`}
        label={t(words("kit.currency"))}
        value={row.unit}
        onKeep={(text) => keep("unit", text)}
      />
    </>
  );
}

function NameField({
  label,
  value,
  onKeep,
}: {
  label: string;
  value: string;
  onKeep: (text: string) => void;
}) {
  return (
    <label className="kit-field">
      {label}
      <input
        defaultValue={value}
        autoComplete="off"
        onBlur={({ target }) => onKeep(target.value)}
        onKeyDown={({ key, currentTarget }) => {
          if (key === "Enter") onKeep(currentTarget.value);
        }}
      />
    </label>
  );
}

function Filter({ filter, onFilter }: { filter: KitFilter; onFilter: (filter: KitFilter) => void }) {
  const { t } = useSpeech();
  return (
    <>
      <label className="kit-field">
        {t(words("kit.family"))}
        <select
          value={filter.show}
          onChange={({ target }) => {
            const { value } = target;
            const show = value === "rules" || isFamily(value) ? value : "all";
            onFilter({ ...filter, show });
          }}
        >
          <option value="all">{t(words("kit.all-families"))}</option>
          {FAMILIES.map((family) => (
            <option key={family} value={family}>
              {family}
            </option>
          ))}
          <option value="rules">{t(words("kit.rules"))}</option>
        </select>
      </label>
      <label className="kit-field">
        {t(words("kit.search"))}
        <input
          type="search"
          value={filter.text}
          autoComplete="off"
          onChange={({ target }) => onFilter({ ...filter, text: target.value })}
        />
      </label>
    </>
  );
}

interface ActsProps {
  readonly draft: KitDraft;
  readonly filter: KitFilter;
  /** The row in hand, as a place in the whole list. */
  readonly index: number | undefined;
  readonly onRow: (row: number) => void;
}

function Acts({ draft, filter, index, onRow }: ActsProps) {
  const { t } = useSpeech();
  const file = useRef<HTMLInputElement>(null);
  const { rows, apply, kit } = draft;
  const own = index === undefined ? undefined : rows[index];
  const isRules = filter.show === "rules";
  const add = (row: ReturnType<typeof rowOf>) => {
    const next = withNewRow(rows, row);
    apply(next.rows);
    const toMend = new Set([next.at]);
    onRow(shownRows(next.rows, filter, toMend).indexOf(next.at));
  };
  const family = filter.show === "all" || isRules ? "wall-panel" : filter.show;
  return (
    <span className="kit-acts">
      <button
        type="button"
        className="act"
        onClick={() => add(rowOf(isRules ? { record: "rule" } : { record: "piece", family }))}
      >
        {t(words(isRules ? "kit.add-rule" : "kit.add"))}
      </button>
      {own === undefined || index === undefined ? null : (
        <>
          {isRules ? null : (
            <button
              type="button"
              className="act"
              onClick={() => add({ ...own, name: freeCode(rows, own.name) })}
            >
              {t(words("kit.copy", { name: own.name }))}
            </button>
          )}
          <button type="button" className="act" onClick={() => apply(withoutRow(rows, index))}>
            {t(words("kit.remove", { name: own.name }))}
          </button>
        </>
      )}
      {kit === null ? null : (
        <button type="button" className="act" onClick={() => saveText(`${kit.name}.csv`, kitCsv(kit))}>
          {t(words("kit.csv-out"))}
        </button>
      )}
      <button type="button" className="act" onClick={() => file.current?.click()}>
        {t(words("kit.csv-in"))}
      </button>
      <input
        ref={file}
        type="file"
        accept=".csv,text/csv"
        className="hidden"
        tabIndex={-1}
        aria-label={t(words("kit.csv-in"))}
        onChange={({ target }) => {
          const [chosen] = target.files ?? [];
          chosen?.text().then(draft.readCsv, () => draft.readCsv(""));
          target.value = "";
        }}
      />
    </span>
  );
}

function Faults({ draft: { issues, refusals, discard, rows } }: { draft: KitDraft }) {
  const { t } = useSpeech();
  if (issues.length === 0 && refusals.length === 0) return null;
  const [first] = issues;
  return (
    <div className="kit-faults" role="alert">
      {issues.length === 0 ? null : <b>{t(words("kit.wrong", { count: issues.length }))}</b>}
      {refusals.map((said) => (
        <p key={JSON.stringify(said)}>{t(said)}</p>
      ))}
      {first === undefined || refusals.length > 0 ? null : (
        <p>
          {rows[first.row]?.name} {t(words("kit.expected", first))}
        </p>
      )}
      <button type="button" className="act" onClick={discard}>
        {t(words("kit.discard"))}
      </button>
    </div>
  );
}

function saveText(name: string, text: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "text/csv;charset=utf-8" }));
  link.download = name.replaceAll(/[\\/:*?"<>|]/g, " ");
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 1000);
}
