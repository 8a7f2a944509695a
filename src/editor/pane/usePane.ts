// What the elevation shows, worked out from the workbench: the face in focus, its ring, the stretch the hand is on.

import { useMemo, useSyncExternalStore } from "react";
import type { FilledWith } from "../../fill/choices.ts";
import type { FilledUnit } from "../../fill/fillUnit.ts";
import type { UnitDocument } from "../../plan/document.ts";
import { documentToUnit } from "../../plan/documentProject.ts";
import type { Unit } from "../../plan/project.ts";
import { useBench, useEditorState, useInView } from "../live/useWorkbench.tsx";
import type { InView, Workbench } from "../live/workbench.ts";
import type { Selection } from "../selection.ts";
import { problemNumbers } from "./elevation.ts";
import { focusOn, type PaneFocus, selectedWall } from "./paneFocus.ts";
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

/** Null while there is nothing filled to show. */
export function paneView(
  bench: Workbench,
  inView: InView,
  { focus, selection }: { readonly focus: PaneFocus | null; readonly selection: Selection },
): PaneView | null {
  const { live, document, unit, isStale } = inView;
  if (live === null || isStale) return null;
  const filled: FilledUnit | null = bench.fills.whole(document, unit, live.kit);
  if (filled === null) return null;
  const wall = selectedWall(unit, selection.items);
  const kept = focusOn(focus, { unit: unit.id, faces: filled.fill.faces, wall });
  const now = kept === null ? null : focused(kept, filled, live.kit);
  if (now === null) return null;
  const given = { filled, unit: unitOf(unit), kit: live.kit, fillers: document.fillers };
  return { given, now, inView, numbers: problemNumbers(filled.fill.problems) };
}

/** The view of the moment, for what a key does. */
export function paneViewNow(bench: Workbench, inView: InView): PaneView | null {
  const { selection } = bench.editor.get().session;
  return paneView(bench, inView, { focus: bench.focus.get(), selection });
}

export function usePane(): PaneView | null {
  const bench = useBench();
  const inView = useInView();
  const { selection } = useEditorState().session;
  const focus = useSyncExternalStore(bench.focus.subscribe, bench.focus.get);
  return useMemo(() => paneView(bench, inView, { focus, selection }), [bench, inView, focus, selection]);
}
