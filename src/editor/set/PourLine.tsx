// One pour of the table: its handle, what can be changed, what it adds to the set and of which pieces.

import { type KeyboardEvent, useState } from "react";
import type { PourAdds } from "../../fill/optimise/pourAdds.ts";
import type { UnitDocument } from "../../plan/document.ts";
import type { Pour } from "../../plan/project.ts";
import { useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import { formatMm } from "../words/numbers.ts";
import { AddedPieces, AddsCell } from "./Adds.tsx";
import { FigureField, TextField } from "./fields.tsx";
import { CopySign, DeleteSign, GripSign } from "./icons.tsx";
import { changeStorey, duplicatePour } from "./pourEdits.ts";
import { type BarScale, pourTitle } from "./pourNames.ts";
import type { PourRow } from "./pourRows.ts";
import type { RowDrag } from "./useRowDrag.ts";
import { useSetWords } from "./useSetWords.ts";
import { useStep } from "./useStep.ts";

export interface PourLineProps {
  readonly row: PourRow;
  readonly units: readonly UnitDocument[];
  readonly need: PourAdds | null;
  readonly scale: BarScale;
  readonly isStale: boolean;
  readonly drag: RowDrag;
  /** On which side of this row the one in the hand would come to stand. */
  readonly drop: "before" | "after" | null;
  readonly onMove: (by: number) => void;
}

export function PourLine(props: PourLineProps) {
  const { row, units, need, drag, drop } = props;
  const w = useSetWords();
  const { doc } = useEditorState().history;
  const step = useStep();
  const [isOpen, setOpen] = useState(false);
  const title = pourTitle(row, w);
  const set = (change: Partial<Omit<Pour, "id">>) =>
    step("step.set-pour", [{ kind: "change-pour", pour: row.id, set: change }]);
  const { dragged } = drag;
  const isInHand = dragged?.id === row.id;
  return (
    <>
      <tr
        className="pour-row"
        data-row={row.id}
        data-in-hand={isInHand}
        data-drop={drop ?? undefined}
        style={isInHand ? { transform: `translateY(${dragged.by}px)` } : undefined}
      >
        <td className="of-handle">
          <Handle {...props} title={title} />
        </td>
        <td className="of-pour">
          <TextField
            label={w("name")}
            value={row.name}
            placeholder={w("pour-number", { number: row.number })}
            onKeep={(name) => set({ name })}
          />
        </td>
        <td className="of-unit">
          <select
            className="set-select"
            aria-label={w("unit")}
            value={row.unit}
            onChange={({ target }) => set({ unit: target.value })}
          >
            {units.map(({ id, name }) => (
              <option key={id} value={id}>
                {name === "" ? id : name}
              </option>
            ))}
          </select>
        </td>
        <td className="of-mirrored">
          <label className="set-check">
            <input
              type="checkbox"
              aria-label={w("mirrored")}
              checked={row.mirror}
              onChange={({ target }) => set({ mirror: target.checked })}
            />
            <span aria-hidden="true">{w("mirrored")}</span>
          </label>
        </td>
        <td className="of-day" data-label={w("day")}>
          {row.shared === null ? null : <span className="day-bracket" data-place={row.shared.place} />}
          <FigureField
            label={w("day")}
            value={row.day}
            mayBeEmpty
            greatest={100_000}
            onKeep={(day) => set({ day })}
          />
          <DayNote row={row} />
        </td>
        <StoreyCells row={row} onChange={(change) => step("step.set-pour", changeStorey(doc, row, change))} />
        <td className="of-adds">
          <AddsCell {...props} title={title} isOpen={isOpen} onOpen={() => setOpen(!isOpen)} />
        </td>
        <td className="of-acts">
          <button
            type="button"
            className="set-icon"
            aria-label={w("duplicate", { pour: title })}
            title={w("duplicate", { pour: title })}
            onClick={() => step("step.set-add", duplicatePour(doc, row))}
          >
            <CopySign />
          </button>
          <button
            type="button"
            className="set-icon"
            aria-label={w("delete", { pour: title })}
            title={w("delete", { pour: title })}
            onClick={() => step("step.set-delete", [{ kind: "delete-pour", pour: row.id }])}
          >
            <DeleteSign />
          </button>
        </td>
      </tr>
      {isOpen && need !== null && !isInHand ? (
        <tr className="of-pieces">
          <td colSpan={9} className="of-pieces">
            <AddedPieces adds={need.adds} />
          </td>
        </tr>
      ) : null}
    </>
  );
}

function Handle({ row, drag, onMove, title }: PourLineProps & { readonly title: string }) {
  const w = useSetWords();
  const onKeyDown = (event: KeyboardEvent) => {
    const by = event.key === "ArrowUp" ? -1 : event.key === "ArrowDown" ? 1 : 0;
    if (by === 0) return;
    onMove(by);
    event.preventDefault();
  };
  return (
    <button
      type="button"
      className="set-handle"
      data-handle={row.id}
      aria-label={w("move", { pour: title })}
      title={w("move", { pour: title })}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => drag.onPointerDown(row.id, event)}
      onPointerMove={drag.onPointerMove}
      onPointerUp={drag.onPointerUp}
      onPointerCancel={drag.onPointerCancel}
    >
      <GripSign />
      <span aria-hidden="true">{row.number}</span>
    </button>
  );
}

function DayNote({ row: { number, shared } }: { row: PourRow }) {
  const w = useSetWords();
  if (shared === null) return null;
  const text =
    shared.first === number
      ? w("shared-here", { count: shared.size })
      : w("shared", { number: shared.first });
  return (
    <small className="of-shared" title={text}>
      <span aria-hidden="true">{shared.first === number ? `×${shared.size}` : `=${shared.first}`}</span>
      <span className="hidden">{text}</span>
    </small>
  );
}

interface StoreyProps {
  readonly row: PourRow;
  readonly onChange: (change: {
    readonly clearHeight?: number | null;
    readonly slab?: number | null;
  }) => void;
}

function StoreyCells({ row: { storey }, onChange }: StoreyProps) {
  const w = useSetWords();
  const { speech } = useSpeech();
  const { storey: usual } = useEditorState().history.doc;
  const field = (name: "clearHeight" | "slab", limits: { least: number; greatest: number }) => (
    <FigureField
      {...limits}
      label={`${w(name === "slab" ? "slab" : "clear-height")}, mm`}
      value={storey === null || storey[name] === usual[name] ? null : storey[name]}
      placeholder={formatMm(usual[name], speech.language)}
      mayBeEmpty
      decimals={1}
      onKeep={(value) => onChange({ [name]: value })}
    />
  );
  return (
    <>
      <td className="of-clear-height" data-label={w("clear-height")}>
        {field("clearHeight", { least: 300, greatest: 20_000 })}
      </td>
      <td className="of-slab" data-label={w("slab")}>
        {field("slab", { least: 0, greatest: 2_000 })}
      </td>
    </>
  );
}
