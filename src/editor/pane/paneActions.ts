// What the engineer does on a face: look at the other side, pin, swap, choose a cover, try a nudge.

import { pinOf, withNextSwapped } from "../../fill/choices.ts";
import { find, type ItemRef } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import type { Pinned } from "../../plan/project.ts";
import { inViewOf, type Workbench } from "../live/workbench.ts";
import { GREATEST_NUDGE, type Nudge, type NudgeTarget, nudgesOf, nudgeTargets } from "../nudge/nudge.ts";
import { takeStep, withSession } from "../state/editorState.ts";
import { type Words, words } from "../words/say.ts";
import { otherFace, type PaneFocus } from "./paneFocus.ts";
import { pinEdits, pinsOf } from "./pinEdits.ts";
import { type PaneView, paneViewNow } from "./usePane.ts";

/** Puts the hand on something in the elevation; a wall of its face is selected in the plan where none is. */
export function putFocus(bench: Workbench, focus: PaneFocus, walls: readonly string[]): void {
  bench.focus.set(() => focus);
  bench.editor.set((state) => {
    const { items } = state.session.selection;
    const isOfFace = items.some(({ bucket, id }) => bucket === "walls" && walls.includes(id));
    const [wall] = walls;
    if (isOfFace || wall === undefined) return state;
    const item: ItemRef = { bucket: "walls", id: wall };
    return withSession(state, { selection: { ...state.session.selection, items: [item] } });
  });
}

function viewNow(bench: Workbench): PaneView | null {
  return paneViewNow(bench, inViewOf(bench, bench.editor.get()));
}

function tell(bench: Workbench, message: Words): void {
  bench.editor.set((state) => withSession(state, { message }));
}

function step(bench: Workbench, label: Words, edits: readonly Edit[]): void {
  bench.editor.set((state) => takeStep(state, label, edits, state.session.selection.items));
}

export function showOtherFace(bench: Workbench): void {
  const view = viewNow(bench);
  if (view === null) return;
  const { faces } = view.given.filled.fill;
  const next = otherFace(view.now.focus, faces);
  putFocus(bench, next, faces.find(({ id }) => id === next.face)?.walls ?? []);
}

/** Pins the piece or the sequence the hand is on; pinned already, takes the pin away. */
export function togglePin(bench: Workbench): void {
  const view = viewNow(bench);
  const seen = view?.now.seen ?? null;
  if (view === null || seen === null) {
    tell(bench, words("message.no-pin"));
    return;
  }
  const { given, now, inView } = view;
  const old = pinsOf(seen, given, inView.unit);
  if (old.length > 0) {
    step(bench, words("step.unpin"), pinEdits(old, inView.unit.id, null));
    return;
  }
  const { part } = now;
  const own = part === null ? undefined : seen.pieces.find(({ x }) => x === part.x);
  const pinned = pinOf(
    seen,
    own === undefined ? { x: seen.x, pieces: seen.pieces } : { x: own.x, pieces: [own] },
    given,
  );
  if (pinned === null) tell(bench, words("message.no-pin"));
  else step(bench, words("step.pin"), pinEdits([], inView.unit.id, pinned));
}

/** Puts the piece the hand is on where its right neighbour stands; the hand goes with it. */
export function swapWithNext(bench: Workbench): void {
  const view = viewNow(bench);
  const seen = view?.now.seen ?? null;
  const { focus } = view?.now ?? { focus: null };
  const index =
    seen === null || focus === null
      ? -1
      : seen.pieces.findIndex(({ x, width }) => x <= focus.x && focus.x < x + width);
  const pieces = seen === null || index < 0 ? null : withNextSwapped(seen, index);
  const pinned =
    view === null || seen === null || pieces === null ? null : pinOf(seen, { x: seen.x, pieces }, view.given);
  if (view === null || seen === null || focus === null || pieces === null || pinned === null) {
    tell(bench, words("message.no-swap"));
    return;
  }
  const { unit } = view.inView;
  step(bench, words("step.swap"), pinEdits(pinsOf(seen, view.given, unit), unit.id, pinned));
  const own = seen.pieces[index]!;
  const x = own.x + pieces[index]!.width;
  bench.focus.set(() => ({ ...focus, level: "piece", x, z: 0 }));
}

/** Makes a choice from the list the engineer's own. */
export function chooseCover(bench: Workbench, view: PaneView, pinned: Pinned): void {
  const { seen } = view.now;
  if (seen === null) return;
  const { unit } = view.inView;
  step(bench, words("step.cover"), pinEdits(pinsOf(seen, view.given, unit), unit.id, pinned));
}

/** The moves that take away what the hand is on. Some twenty fills: not for every frame. */
export function nudgesHere(bench: Workbench, view: PaneView, target: NudgeTarget): readonly Nudge[] {
  const { document } = view.inView;
  const refill = (unit: Parameters<Workbench["fills"]["trial"]>[1]) =>
    bench.fills.trial(document, unit, view.given.kit);
  return nudgesOf(target, { document, given: view.given, refill });
}

/** The piece of a stretch that a nudge could be asked to take away: the one the hand is on, else its worst. */
export function targetHere({ now, given }: PaneView): NudgeTarget | null {
  const { seen, part, focus } = now;
  if (seen === null || seen.isZone) return null;
  const on = part === null ? undefined : seen.pieces.find(({ x }) => x === part.x);
  if (on !== undefined && (part?.kind === "closure" || part?.kind === "filler")) return { seen, piece: on };
  if (focus.level === "piece") return null;
  const worst = nudgeTargets(given).find(
    (target) => target.seen.stretch.low === seen.stretch.low && isSamePair(target, seen),
  );
  return worst === undefined ? null : { seen, piece: worst.piece };
}

function isSamePair({ seen: a }: NudgeTarget, b: NudgeTarget["seen"]): boolean {
  const faces = [b.stretch.face, b.stretch.opposite];
  return faces.includes(a.stretch.face) && faces.includes(a.stretch.opposite);
}

/** Makes the move: one step, which one undo takes back. */
export function takeNudge(bench: Workbench, { edits }: Nudge): void {
  step(bench, words("step.nudge"), edits);
}

/** Tries the best move for what the hand is on, if any makes the unit better. */
export function tryNudge(bench: Workbench): void {
  const view = viewNow(bench);
  const target = view === null ? null : targetHere(view);
  const nudges = view === null || target === null ? [] : nudgesHere(bench, view, target);
  const [best] = nudges;
  if (best?.isGain === true) takeNudge(bench, best);
  else
    tell(bench, words(best === undefined ? "message.no-nudge" : "message.no-gain", { most: GREATEST_NUDGE }));
}

/** Whether a stretch of the unit in view is pinned. */
export function isPinned({ now, given, inView }: PaneView): boolean {
  const { unit } = inView;
  return now.seen !== null && find(unit.pinned, pinsOf(now.seen, given, unit)[0]?.id ?? "") !== undefined;
}
