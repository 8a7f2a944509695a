// Joins the editor to the desk: every step is kept, what another tab has written comes in, and a tab that only reads
// changes nothing.

import { find, type PlanDocument } from "../../plan/document.ts";
import { fitPlan } from "../live/actions.ts";
import type { Saved, Workbench } from "../live/workbench.ts";
import { type EditorState, startEditor, withSession } from "../state/editorState.ts";
import type { Desk, DeskState } from "../storage/desk.ts";
import { words } from "../words/say.ts";

/** A save that takes longer is told, ms: a word that flashes with every step says nothing. */
const SLOW_SAVE = 600;

/** Joins the two until the function returned is called. */
export function keepProject(bench: Workbench, desk: Desk): () => void {
  const stops = [keepSteps(bench, desk), takeReplaced(bench, desk), tellSaved(bench, desk)];
  return () => {
    for (const stop of stops) stop();
  };
}

// The one place where a step can be taken is where a tab that only reads is held to what it shows.
function keepSteps({ editor }: Workbench, desk: Desk): () => void {
  let kept = editor.get();
  return editor.subscribe(() => {
    const state = editor.get();
    if (state.history.doc === kept.history.doc || isJustOpened(state)) {
      kept = state;
      return;
    }
    if (desk.state.get().seat.role === "reading") {
      editor.set((now) => takenBack(now, kept));
      return;
    }
    kept = state;
    desk.keep(state.history.doc);
  });
}

function isJustOpened({ history }: EditorState): boolean {
  return history.past.length === 0 && history.future.length === 0;
}

function takenBack(state: EditorState, { history, session }: EditorState): EditorState {
  const message = words("desk.reading");
  return withSession(
    { history, session: state.session },
    {
      selection: session.selection,
      preview: null,
      message,
    },
  );
}

function takeReplaced(bench: Workbench, desk: Desk): () => void {
  return desk.onReplaced((document, isOther) => {
    bench.editor.set((state) => (isOther ? otherProject(state, document) : sameProject(state, document)));
    if (isOther) {
      bench.focus.set(() => null);
      fitPlan(bench);
    }
  });
}

// What the person has set stays: tools, sizes, what was copied.
function otherProject({ session }: EditorState, document: PlanDocument): EditorState {
  const { settings, clip, view } = session;
  return withSession(startEditor(document), { settings, clip, view });
}

// As written by another tab: the view stays where it is, on the unit it shows.
function sameProject({ session }: EditorState, document: PlanDocument): EditorState {
  const begun = startEditor(document);
  const { settings, clip, view, selection } = session;
  const isThere = find(document.units, selection.unit) !== undefined;
  const shown = isThere ? { unit: selection.unit, items: [] } : begun.session.selection;
  return withSession(begun, { settings, clip, view, selection: shown });
}

function tellSaved({ saved }: Workbench, { state }: Desk): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tell = () => {
    clearTimeout(timer);
    const word = wordOf(state.get());
    if (word !== "saving") saved.set(() => word);
    else {
      timer = setTimeout(() => {
        saved.set(() => word);
      }, SLOW_SAVE);
    }
  };
  tell();
  const stop = state.subscribe(tell);
  return () => {
    clearTimeout(timer);
    stop();
  };
}

// Of a sample that nobody has touched there is nothing to say.
function wordOf({ save, project }: DeskState): Saved | null {
  switch (save.status) {
    case "failed":
      return "unsaved";
    case "saving":
      return "saving";
    case "saved":
      return project === null ? null : "saved";
    default:
      return save satisfies never;
  }
}
