// The whole state of the editor and how it answers: events go to the tool in hand, its intents are carried out here.
//
//   event ─▶ tool ─▶ intents ─▶ selection, preview, one step of history, a message
//
// A gesture never writes the document: each preview is worked out from the document as it stands, and the step is
// taken once, when the gesture ends.

import type { Draft } from "immer";
import { find, listed, type PlanDocument, type UnitDocument } from "../../plan/document.ts";
import { emptyUnit } from "../../plan/documentProject.ts";
import type { Edit } from "../../plan/edit.ts";
import { withEdits, writeDifference } from "../../plan/editCopy.ts";
import type { EditOutcome } from "../../plan/editOutcome.ts";
import { type Selection, stillThere } from "../selection.ts";
import { itemsInWindow, wallAt } from "../snap/hit.ts";
import { planIndexOf } from "../snap/planIndex.ts";
import { snapTo } from "../snap/snapTo.ts";
import type { Intent, ToolContext, ToolEvent } from "../tools/protocol.ts";
import { startTool, type ToolName, turnTool } from "../tools/tool.ts";
import { type Words, words } from "../words/say.ts";
import { commit, type History, redo, startHistory, undo, type Walked } from "./history.ts";
import { type Session, startSession } from "./session.ts";

type PlanHistory = History<PlanDocument, Selection, Words>;

export interface EditorState {
  readonly history: PlanHistory;
  readonly session: Session;
}

/** How near the pointer counts as on a thing, px. A finger is less exact than a mouse. */
export const REACH_PX = { mouse: 8, touch: 22 } as const;

/** The editor at rest on the first unit of a document. */
export function startEditor(document: PlanDocument): EditorState {
  const [first] = listed(document.units);
  return { history: startHistory(document), session: startSession(first?.id ?? "") };
}

/** The unit on the screen, as the document has it. A document without units shows an empty one. */
export function unitInHand(state: EditorState): UnitDocument {
  return unitOf(state.history.doc, state.session.selection.unit);
}

/** The unit on the screen with what the gesture in hand would make of it. */
export function unitInView(state: EditorState): UnitDocument {
  return unitOf(state.session.preview?.document ?? state.history.doc, state.session.selection.unit);
}

function unitOf(document: PlanDocument, id: string): UnitDocument {
  return find(document.units, id) ?? NO_UNIT;
}

const NO_UNIT = emptyUnit("", "", 0);

/** One event on the tool in hand. `pointer` says what the pointer is. The same state back where nothing came of it. */
export function handleEvent(
  state: EditorState,
  event: ToolEvent,
  pointer: keyof typeof REACH_PX = "mouse",
): EditorState {
  const [tool, intents] = turnTool(state.session.tool, event, contextOf(state, pointer));
  return intents.reduce(carryOut, tool === state.session.tool ? state : withSession(state, { tool }));
}

/** Takes another tool in hand. What the old one was doing leaves nothing behind. */
export function takeTool(state: EditorState, name: ToolName): EditorState {
  return withSession(state, { tool: startTool(name), preview: null, message: null });
}

/** Takes one step outside any tool: a command, a panel. What it makes is selected unless `select` says otherwise. */
export function takeStep(
  state: EditorState,
  label: Words,
  edits: readonly Edit[],
  select: Selection["items"] | null,
): EditorState {
  return carryOut(state, { kind: "commit", label, edits, select });
}

/** Takes the last step back, or does it again. The tool is laid down, so that no gesture outlives its plan. */
export function walk(state: EditorState, way: "undo" | "redo"): EditorState {
  const walked = way === "undo" ? undo(state.history) : redo(state.history);
  if (walked === null) {
    return withSession(state, {
      message: words(way === "undo" ? "message.nothing-to-undo" : "message.nothing-to-redo"),
    });
  }
  return arrived(state, walked);
}

function arrived(
  state: EditorState,
  { history, selection }: Walked<PlanDocument, Selection, Words>,
): EditorState {
  return {
    history,
    session: {
      ...state.session,
      selection: kept(history.doc, selection),
      tool: startTool(state.session.tool.name),
      hovered: null,
      preview: null,
      message: null,
    },
  };
}

/** The selection without what is not there any more; the first unit where its own is gone. */
function kept(document: PlanDocument, selection: Selection): Selection {
  const unit = find(document.units, selection.unit);
  if (unit === undefined) return { unit: listed(document.units)[0]?.id ?? "", items: [] };
  const items = stillThere(unit, selection.items);
  return items === selection.items ? selection : { ...selection, items };
}

/** Shows another unit with nothing selected. */
export function showUnit(state: EditorState, unit: string): EditorState {
  if (find(state.history.doc.units, unit) === undefined) return state;
  const tool = startTool(state.session.tool.name);
  return withSession(state, { selection: { unit, items: [] }, tool, preview: null, hovered: null });
}

/** The state with some of its session replaced. */
export function withSession(state: EditorState, change: Partial<Session>): EditorState {
  return { ...state, session: { ...state.session, ...change } };
}

/** The view of the plan a tool works on: the document, never the preview. */
export function contextOf(state: EditorState, pointer: keyof typeof REACH_PX): ToolContext {
  const unit = unitInHand(state);
  const { settings, selection, view } = state.session;
  const reach = REACH_PX[pointer] / view.scale;
  return {
    unit,
    selection: selection.items,
    settings,
    reach,
    snap: (query) => snapTo(planIndexOf(unit), query),
    wallAt: (at) => wallAt(planIndexOf(unit), at, reach),
    itemsInWindow: (box, touching) => itemsInWindow(planIndexOf(unit), box, touching),
  };
}

function carryOut(state: EditorState, intent: Intent): EditorState {
  const { session } = state;
  switch (intent.kind) {
    case "select":
      return withSession(state, { selection: { ...session.selection, items: intent.items } });
    case "preview": {
      const { edits, marks } = intent;
      return withSession(state, { preview: { document: previewed(state, edits), edits, marks } });
    }
    case "discard-preview":
      return withSession(state, { preview: null });
    case "message":
      return withSession(state, { message: intent.said });
    case "commit":
      return committed(state, intent);
    default:
      return intent satisfies never;
  }
}

// A refused edit shows the plan as it stands; the sentence comes when the step is asked for. A hand that moves within one
// step of the grid asks for the same edits again: the same document back, so that nothing is filled or drawn anew. No
// preview outlives the document it was made of.
function previewed({ history, session }: EditorState, edits: readonly Edit[]): PlanDocument {
  if (edits.length === 0) return history.doc;
  const { preview } = session;
  const isSame = preview !== null && JSON.stringify(preview.edits) === JSON.stringify(edits);
  return isSame ? preview.document : withEdits(history.doc, edits).document;
}

function committed(state: EditorState, intent: Extract<Intent, { readonly kind: "commit" }>): EditorState {
  const before = state.session.selection;
  const { doc } = state.history;
  const { document, outcome } = withEdits(doc, intent.edits);
  if (outcome.status === "refused") {
    return withSession(state, { preview: null, message: refusalWords(outcome) });
  }
  const items = intent.select ?? (outcome.made.length > 0 ? outcome.made : before.items);
  const after: Selection = { ...before, items };
  const history = commit(state.history, intent.label, before, (draft: Draft<PlanDocument>) => {
    writeDifference(draft, doc, document);
    return after;
  });
  const selection = kept(history.doc, after);
  return { history, session: { ...state.session, selection, preview: null, message: null } };
}

/** The sentence for a refused edit. */
function refusalWords({ reason, item }: Extract<EditOutcome, { readonly status: "refused" }>): Words {
  return { key: `refusal.${reason}`, values: item === null ? {} : { item } };
}
