// The document and the way back: each step keeps the patches that redo and undo it, and what was selected before and
// after. Pure: every function returns a history and changes none.

import {
  applyPatches,
  type Draft,
  enablePatches,
  type Objectish,
  type Patch,
  produceWithPatches,
} from "immer";

enablePatches();

/** Steps that can be taken back. Far more than anybody walks, few enough that memory stays small. */
export const KEPT_STEPS = 500;

/** One undoable step. `label` says what it did, for "Undo: …". */
export interface Step<Selection, Label> {
  readonly label: Label;
  readonly redo: readonly Patch[];
  readonly undo: readonly Patch[];
  readonly before: Selection;
  readonly after: Selection;
}

export interface History<Doc, Selection, Label> {
  readonly doc: Doc;
  /** Oldest first. */
  readonly past: readonly Step<Selection, Label>[];
  /** The next to redo last. */
  readonly future: readonly Step<Selection, Label>[];
}

/** A history that has been walked one step, with the selection that belongs there. */
export interface Walked<Doc, Selection, Label> {
  readonly history: History<Doc, Selection, Label>;
  readonly selection: Selection;
  readonly label: Label;
}

export function startHistory<Doc, Selection, Label>(doc: Doc): History<Doc, Selection, Label> {
  return { doc, past: [], future: [] };
}

/**
 * Applies `edit` as one undoable step. `edit` returns the selection afterwards, or null to give up what it has
 * written. A step that changes nothing leaves the history as it was, redo included.
 */
export function commit<Doc extends Objectish, Selection, Label>(
  history: History<Doc, Selection, Label>,
  label: Label,
  before: Selection,
  edit: (draft: Draft<Doc>) => Selection | null,
): History<Doc, Selection, Label> {
  let after: Selection | null = null;
  const [doc, redo, undo] = produceWithPatches(history.doc, (draft: Draft<Doc>) => {
    after = edit(draft);
  });
  if (after === null || redo.length === 0) return history;
  const past = [...history.past.slice(1 - KEPT_STEPS), { label, redo, undo, before, after }];
  return { doc, past, future: [] };
}

/** Takes the last step back; null where there is none. */
export function undo<Doc extends Objectish, Selection, Label>(
  history: History<Doc, Selection, Label>,
): Walked<Doc, Selection, Label> | null {
  const step = history.past.at(-1);
  if (step === undefined) return null;
  const doc = applyPatches(history.doc, step.undo);
  const walked = { doc, past: history.past.slice(0, -1), future: [...history.future, step] };
  return { history: walked, selection: step.before, label: step.label };
}

/** Does the step that was taken back last again; null where there is none. */
export function redo<Doc extends Objectish, Selection, Label>(
  history: History<Doc, Selection, Label>,
): Walked<Doc, Selection, Label> | null {
  const step = history.future.at(-1);
  if (step === undefined) return null;
  const doc = applyPatches(history.doc, step.redo);
  const walked = { doc, past: [...history.past, step], future: history.future.slice(0, -1) };
  return { history: walked, selection: step.after, label: step.label };
}
