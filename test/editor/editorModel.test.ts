// The whole editor against the simplest model of undo: a plain list of documents. Any gestures, broken off or not,
// any commands, in any order.

import fc from "fast-check";
import { expect, it } from "vitest";
import type { CommandId } from "../../src/editor/keys.ts";
import { runCommand } from "../../src/editor/state/commands.ts";
import { type EditorState, handleEvent, unitInHand } from "../../src/editor/state/editorState.ts";
import type { ToolEvent } from "../../src/editor/tools/protocol.ts";
import { find, type PlanDocument } from "../../src/plan/document.ts";
import { documentToProject, projectToDocument } from "../../src/plan/documentProject.ts";
import { wallLength } from "../../src/plan/editAxis.ts";
import { doc, editorOn, play, steps } from "./fixture.ts";

type Action = { readonly command: CommandId } | { readonly event: ToolEvent };

const place = fc
  .tuple(fc.integer({ min: -12, max: 80 }), fc.integer({ min: -12, max: 50 }))
  .map(([x, y]) => [x * 100, y * 100] as const);
const modifiers = fc.record({
  shift: fc.boolean(),
  alt: fc.boolean(),
  ctrl: fc.integer({ min: 0, max: 9 }).map((n) => n === 0),
});
const pointer = fc.record({
  kind: fc.constantFrom(
    "press" as const,
    "move" as const,
    "move" as const,
    "release" as const,
    "release" as const,
  ),
  at: place,
  hit: fc.constant(null),
  modifiers,
});
const key = fc.record({
  kind: fc.constant("key" as const),
  key: fc.constantFrom(
    "Escape" as const,
    "Enter" as const,
    "Tab" as const,
    "Backspace" as const,
    "ArrowLeft" as const,
    "ArrowUp" as const,
  ),
  modifiers,
});
const text = fc.record({
  kind: fc.constant("text" as const),
  text: fc.constantFrom("1", "25", "00", "-", "x"),
});
const event: fc.Arbitrary<Action> = fc
  .oneof({ weight: 6, arbitrary: pointer }, { weight: 2, arbitrary: key }, text)
  .map((e) => ({ event: e }));
const command: fc.Arbitrary<Action> = fc
  .constantFrom<CommandId>(
    "tool.select",
    "tool.select",
    "tool.wall",
    "tool.door",
    "tool.column",
    "tool.room",
    "tool.service",
    "tool.slab",
    "tool.control-line",
    "tool.measure",
    "command.select-all",
    "command.delete",
    "command.copy",
    "command.paste",
    "command.turn-left",
    "command.mirror-across",
    "command.split",
    "command.offset-left",
    "command.flip",
    "command.duplicate-mirrored",
    "command.undo",
    "command.undo",
    "command.redo",
    "command.redo",
  )
  .map((id) => ({ command: id }));
const actions = fc.array(fc.oneof({ weight: 3, arbitrary: event }, { weight: 1, arbitrary: command }), {
  maxLength: 50,
});

function act(state: EditorState, action: Action): EditorState {
  if ("command" in action) return runCommand(state, action.command) ?? state;
  // The thing under the pointer is found as on the page.
  return play(state, action.event);
}

it("undo and redo walk a plain list of documents", () => {
  fc.assert(
    fc.property(actions, (list) => {
      let state = editorOn();
      let documents: readonly PlanDocument[] = [doc(state)];
      let here = 0;
      for (const action of list) {
        const before = steps(state);
        state = act(state, action);
        const id = "command" in action ? action.command : null;
        if (id === "command.undo") here = Math.max(0, here - 1);
        else if (id === "command.redo") here = Math.min(documents.length - 1, here + 1);
        else if (doc(state) !== documents[here]) {
          // Only whole steps change the document; a click that keeps a typed figure may take one with it.
          const taken = steps(state) - before;
          expect(taken).toBeGreaterThanOrEqual(1);
          documents = [...documents.slice(0, here + 1), ...Array.from({ length: taken }, () => doc(state))];
          here += taken;
        }
        if (documents[here] !== doc(state)) expect(doc(state)).toEqual(documents[here]);
        expect(steps(state)).toBe(here);
        if (id === "command.undo" || id === "command.redo") {
          documents = documents.map((document, index) => (index === here ? doc(state) : document));
        }
      }
    }),
    { seed: 81, numRuns: 150 },
  );
});

it("Escape leaves nothing behind: the document, no preview, a tool at rest", () => {
  fc.assert(
    fc.property(actions, (list) => {
      const state = list.reduce(act, editorOn());
      const left = play(state, "Escape");
      expect(doc(left)).toBe(doc(state));
      expect(left.session.preview).toBeNull();
      const moved = handleEvent(left, {
        kind: "release",
        at: [0, 0],
        hit: null,
        modifiers: { shift: false, alt: false, ctrl: false },
      });
      expect(doc(moved)).toBe(doc(state));
    }),
    { seed: 82, numRuns: 150 },
  );
});

it("everything undone is the first document, everything redone the last", () => {
  fc.assert(
    fc.property(actions, (list) => {
      const first = editorOn();
      let last = list.reduce(act, first);
      while (last.history.future.length > 0) last = act(last, { command: "command.redo" });
      let walked = last;
      while (walked.history.past.length > 0) walked = act(walked, { command: "command.undo" });
      expect(documentToProject(doc(walked))).toEqual(documentToProject(doc(first)));
      while (walked.history.future.length > 0) walked = act(walked, { command: "command.redo" });
      expect(doc(walked)).toEqual(doc(last));
    }),
    { seed: 83, numRuns: 100 },
  );
});

it("whatever is done, the plan stays whole: walls have length, openings and pins have walls, ids stay, nothing is NaN", () => {
  fc.assert(
    fc.property(actions, (list) => {
      const state = list.reduce(act, editorOn());
      const unit = unitInHand(state);
      for (const wall of Object.values(unit.walls)) expect(wallLength(wall)).toBeGreaterThanOrEqual(1);
      for (const { wall } of [...Object.values(unit.openings), ...Object.values(unit.pinned)]) {
        expect(find(unit.walls, wall)).toBeDefined();
      }
      for (const opening of Object.values(unit.openings)) expect(opening.at).toBeGreaterThanOrEqual(0);
      const project = documentToProject(doc(state));
      expect(JSON.stringify(project)).not.toMatch(/NaN|Infinity|null,null/);
      expect(documentToProject(projectToDocument(project))).toEqual(project);
      for (const { bucket, id } of state.session.selection.items) {
        expect(find<unknown>(unit[bucket], id)).toBeDefined();
      }
    }),
    { seed: 84, numRuns: 150 },
  );
});
