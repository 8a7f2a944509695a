// The pours in working order: a table to name, order and change them, with what each of them adds to the set.

import { useEffect, useRef, useState } from "react";
import { listed } from "../../plan/document.ts";
import { useEditorState } from "../live/useWorkbench.tsx";
import { PourLine } from "./PourLine.tsx";
import { addPour, listUnits, movePour } from "./pourEdits.ts";
import { barScale, pourTitle } from "./pourNames.ts";
import { type PourRow, pourRows, unitTitle, unpoured } from "./pourRows.ts";
import type { SetWord } from "./setWord.ts";
import { UnlistedPours } from "./UnlistedPours.tsx";
import type { Needs } from "./useNeeds.ts";
import { useRowDrag } from "./useRowDrag.ts";
import { useSetWords } from "./useSetWords.ts";
import { useStep } from "./useStep.ts";

const COLUMNS: readonly SetWord[] = ["pour", "unit", "mirrored", "day", "clear-height", "slab", "adds"];

export function PoursSection({ needs }: { needs: Needs }) {
  const w = useSetWords();
  const { history, session } = useEditorState();
  const step = useStep();
  const { doc } = history;
  const rows = pourRows(doc);
  const last = rows.at(-1)?.unit ?? session.selection.unit;
  return (
    <section className="set-pours" aria-label={w("pours")}>
      <header className="set-head">
        <h3>{w("pours")}</h3>
        <CountState needs={needs} />
      </header>
      {rows.length === 0 ? (
        <UnlistedPours needs={needs} onList={() => step("step.set-pours", listUnits(doc))} />
      ) : (
        <>
          <PoursTable rows={rows} needs={needs} />
          <p className="set-under">
            <button type="button" className="act" onClick={() => step("step.set-add", addPour(last))}>
              {w("add-pour")}
            </button>
          </p>
          {unpoured(doc).map((unit) => (
            <p key={unit} className="set-note" role="note">
              {w("unpoured", { unit: unitTitle(doc, unit) })}{" "}
              <button type="button" className="act" onClick={() => step("step.set-add", addPour(unit))}>
                {w("pour-it")}
              </button>
            </p>
          ))}
        </>
      )}
    </section>
  );
}

function CountState({ needs: { plan, counted, isStale, failure } }: { needs: Needs }) {
  const w = useSetWords();
  if (failure !== null && !isStale)
    return (
      <p className="set-fault" role="alert">
        {w("count-broken", { reason: failure })}
      </p>
    );
  return (
    <p className="set-counting" role="status">
      {plan !== null && (isStale || counted === null) ? w("counting") : ""}
    </p>
  );
}

function PoursTable({ rows, needs }: { rows: readonly PourRow[]; needs: Needs }) {
  const w = useSetWords();
  const { doc } = useEditorState().history;
  const step = useStep();
  const body = useRef<HTMLTableSectionElement>(null);
  const [said, setSaid] = useState("");
  const moved = useRef<string | null>(null);
  const move = (id: string, place: number) => {
    const edits = movePour(doc, id, place);
    const row = rows.find((each) => each.id === id);
    if (edits.length === 0 || row === undefined) return;
    moved.current = id;
    setSaid(w("moved", { pour: pourTitle(row, w), number: place + 1, count: rows.length }));
    step("step.set-move", edits);
  };
  const drag = useRowDrag(body, move);
  // A row that changes places loses the focus of its handle.
  useEffect(() => {
    if (moved.current === null || rows.length === 0) return;
    const own = [...(body.current?.querySelectorAll<HTMLElement>("[data-handle]") ?? [])];
    own.find(({ dataset }) => dataset.handle === moved.current)?.focus();
    moved.current = null;
  }, [rows]);
  const scale = barScale(needs.counted?.pours ?? []);
  const { dragged } = drag;
  const others = rows.filter(({ id }) => id !== dragged?.id);
  const dropOf = (id: string) => {
    if (dragged === null) return null;
    if (others[dragged.place]?.id === id) return "before";
    return dragged.place >= others.length && others.at(-1)?.id === id ? "after" : null;
  };
  return (
    <div className="set-wide">
      <table className="pours" data-dragging={dragged !== null}>
        <thead>
          <tr>
            <th scope="col">
              <span className="hidden">{w("move", { pour: w("pour") })}</span>
            </th>
            {COLUMNS.map((name) => (
              <th key={name} scope="col" className={`of-${name}`}>
                {w(name)}
              </th>
            ))}
            <td />
          </tr>
        </thead>
        <tbody ref={body}>
          {rows.map((row, place) => (
            <PourLine
              key={row.id}
              row={row}
              units={listed(doc.units)}
              need={needs.counted?.pours.find(({ pour }) => pour === row.id) ?? null}
              scale={scale}
              isStale={needs.isStale}
              drag={drag}
              drop={dropOf(row.id)}
              onMove={(by) => move(row.id, place + by)}
            />
          ))}
        </tbody>
      </table>
      <p className="hidden" role="status">
        {said}
      </p>
    </div>
  );
}
