// What the elevation shows, worked out from the workbench: the face in focus, its ring, the stretch the hand is on.

import { useDeferredValue, useMemo, useState, useSyncExternalStore } from "react";
import type { FilledWith } from "../../fill/choices.ts";
import type { FilledUnit } from "../../fill/fillWalls.ts";
import type { UnitDocument } from "../../plan/document.ts";
import { documentToUnit } from "../../plan/documentProject.ts";
import type { Unit } from "../../plan/project.ts";
import { useBench, useEditorState, useInView } from "../live/useWorkbench.tsx";
import type { InView, Workbench } from "../live/workbench.ts";
import type { Selection } from "../selection.ts";
import { problemNumbers } from "./elevation.ts";
import { focusOn, type PaneFocus, selectedFaces } from "./paneFocus.ts";
import { type Focused, focused } from "./paneWalk.ts";

export interface PaneView {
  readonly given: FilledWith;
  readonly now: Focused;
  readonly inView: InView;
  /** Numbers of the fill's problems as the list has them. */
  readonly numbers: readonly number[];
}

const units = new WeakMap<UnitDocument, Unit>();

/** The unit as the fill reads it, made once for each state. */
export function unitOf(document: UnitDocument): Unit {
  const unit = units.get(document) ?? documentToUnit(document);
  units.set(document, unit);
  return unit;
}

export interface PaneAsk {
  readonly focus: PaneFocus | null;
  readonly selection: Selection;
  /** Whether the page may work a fill out that came without its drafts: not while a hand moves. */
  readonly mayFill: boolean;
}

/** Null while there is nothing filled to show. */
export function paneView(
  bench: Workbench,
  inView: InView,
  { focus, selection, mayFill }: PaneAsk,
): PaneView | null {
  const { live, document, unit, isStale } = inView;
  if (live === null || isStale) return null;
  const filled: FilledUnit | null = bench.fills.whole(document, unit, live.kit, mayFill);
  if (filled === null) return null;
  const own = selectedFaces(unit, selection.items, filled);
  const kept = focusOn(focus, { unit: unit.id, faces: filled.fill.faces, own });
  const now = kept === null ? null : focused(kept, filled, live.kit);
  if (now === null) return null;
  const given = { filled, unit: unitOf(unit), kit: live.kit, fillers: document.fillers };
  return { given, now, inView, numbers: problemNumbers(filled.fill.problems, inView.problems) };
}

/** The view of the moment, for what a key does. */
export function paneViewNow(bench: Workbench, inView: InView): PaneView | null {
  const { selection } = bench.editor.get().session;
  return paneView(bench, inView, { focus: bench.focus.get(), selection, mayFill: true });
}

/** The plan is drawn first, then the pane; while a hand moves a slow plan, it shows what was there before. */
export function usePane(): PaneView | null {
  const bench = useBench();
  const inView = useDeferredValue(useInView());
  const { selection, preview } = useEditorState().session;
  const focus = useSyncExternalStore(bench.focus.subscribe, bench.focus.get);
  const mayFill = preview === null;
  const view = useMemo(
    () => paneView(bench, inView, { focus, selection, mayFill }),
    [bench, inView, focus, selection, mayFill],
  );
  const [last, setLast] = useState(view);
  if (view !== null && view !== last) setLast(view);
  const isOfUnit = last !== null && last.inView.unit.id === inView.unit.id;
  return view ?? (isOfUnit && inView.live !== null ? last : null);
}
