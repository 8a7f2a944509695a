// All that the page holds while a project is open, in one record that is handed down: the editor's state, the layout of
// the screen, the live fills, the words.

import type { Kit } from "../../kit/kit.ts";
import { resolveKit } from "../../kit/resolve.ts";
import type { PlanDocument, UnitDocument } from "../../plan/document.ts";
import { find } from "../../plan/document.ts";
import type { Position } from "../../plan/project.ts";
import type { CommandId } from "../keys.ts";
import type { PaneFocus } from "../pane/paneFocus.ts";
import { type PlacedProblem, placeProblems } from "../scene/problemPlaces.ts";
import type { SoffitFocus } from "../scene/soffitHit.ts";
import type { Viewport } from "../scene/viewport.ts";
import { type EditorState, startEditor, unitInView } from "../state/editorState.ts";
import type { View } from "../state/session.ts";
import { createStore, type Store } from "../state/store.ts";
import { english } from "../words/en.ts";
import type { Catalogues } from "../words/say.ts";
import type { FillInView, LiveFill, LiveFillSource } from "./liveFill.ts";
import { baseOf, type Compared, type Steps, scoresOf, stepsAfter } from "./scores.ts";
import { type Screen, startScreen } from "./screen.ts";

export interface Workbench {
  readonly editor: Store<EditorState>;
  readonly screen: Store<Screen>;
  readonly fills: LiveFillSource;
  /** Where the hand is in the plan. Apart from the rest, because it changes with every movement. */
  readonly pointer: Store<Pointer>;
  /** What lies under the drawing on the paper, a traced picture for instance; null = nothing. */
  readonly backdrop: Store<Backdrop | null>;
  /** The view that showed the whole plan last. */
  readonly fitted: Store<View | null>;
  /** What the elevation shows and the hand is on there; null = whatever is selected. */
  readonly focus: Store<PaneFocus | null>;
  /** What the hand is on in the soffit; null = nothing. */
  readonly soffit: Store<SoffitFocus | null>;
  /** null: nothing keeps the project on this page, so nothing is said. */
  readonly saved: Store<Saved | null>;
  /** Commands that parts of the page carry out themselves, set by those parts while they are there. */
  readonly calls: Map<CommandId, () => void>;
  /** The words of the languages spoken so far. */
  readonly catalogues: Store<Catalogues>;
  /** The documents before and after the last step. */
  readonly steps: () => Steps;
}

/** Draws under the plan, in px of the drawing. */
export type Backdrop = (pen: CanvasRenderingContext2D, viewport: Viewport) => void;

export type Saved = "saved" | "saving" | "unsaved";

export interface Pointer {
  readonly at: Position | null;
  /** Moved by the arrow keys: a cross-hair shows where it is, and Enter presses. */
  readonly byKeys: boolean;
}

export function createWorkbench(document: PlanDocument, fills: LiveFillSource): Workbench {
  const editor = createStore(startEditor(document));
  let steps: Steps = { current: document, before: null };
  editor.subscribe(() => {
    const { doc, past, future } = editor.get().history;
    const isJustOpened = past.length === 0 && future.length === 0;
    steps = stepsAfter(isJustOpened ? { current: doc, before: null } : steps, doc);
  });
  const pointer = createStore<Pointer>({ at: null, byKeys: false });
  return {
    editor,
    screen: createStore(startScreen()),
    fills,
    pointer,
    backdrop: createStore<Backdrop | null>(null),
    fitted: createStore<View | null>(null),
    focus: createStore<PaneFocus | null>(null),
    soffit: createStore<SoffitFocus | null>(null),
    saved: createStore<Saved | null>(null),
    calls: new Map(),
    catalogues: createStore<Catalogues>({ en: english }),
    steps: () => steps,
  };
}

const kits = new WeakMap<object, Kit | null>();

/** The kit of a document, read once; null where it cannot be read. */
export function kitOf({ kit }: PlanDocument): Kit | null {
  if (typeof kit === "string") return readKit(kit);
  const known = kits.get(kit);
  if (known !== undefined) return known;
  const read = readKit(kit);
  kits.set(kit, read);
  return read;
}

function readKit(kit: string | object): Kit | null {
  const answer = resolveKit(kit);
  return answer.status === "ok" ? answer.kit : null;
}

/** What is on the screen, derived from the state: the unit, its fill, its problems. */
export interface InView extends FillInView {
  readonly document: PlanDocument;
  readonly unit: UnitDocument;
  /** Of the last fill that had its soffits, so that none comes and goes while the hand moves. */
  readonly problems: readonly PlacedProblem[];
}

export function inViewOf({ fills }: Workbench, state: EditorState): InView {
  const document = state.session.preview?.document ?? state.history.doc;
  const unit = unitInView(state);
  const kit = kitOf(document);
  const filled: FillInView =
    kit === null
      ? { live: null, whole: null, isStale: false, isBroken: false }
      : fills.inView(document, unit, kit);
  return { ...filled, document, unit, problems: problemsOf(unit, filled.whole ?? filled.live) };
}

const placed = new WeakMap<LiveFill, readonly PlacedProblem[]>();

function problemsOf(unit: UnitDocument, live: LiveFill | null): readonly PlacedProblem[] {
  if (live === null) return [];
  const known = placed.get(live);
  if (known !== undefined) return known;
  const problems = placeProblems(unit, live);
  placed.set(live, problems);
  return problems;
}

/** The figures in view beside those they are compared with; null while there is no fill. */
export function comparedScores(bench: Workbench, { document, unit, live }: InView): Compared | null {
  if (live === null) return null;
  const base = baseOf(bench.steps(), document);
  const old = base === null ? undefined : find(base.units, unit.id);
  const kit = base === null ? null : kitOf(base);
  const before =
    base === null || old === undefined || kit === null ? null : bench.fills.known(base, old, kit);
  return { now: scoresOf(live), before: before === null ? null : scoresOf(before) };
}
