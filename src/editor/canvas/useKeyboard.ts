// The keyboard of the whole page: figures go to the tool in hand, letters to commands, arrows to whatever can move.

import { useEffect } from "react";
import type { Position } from "../../plan/project.ts";
import { chordOf, commandFor } from "../keys.ts";
import { changeScreen, run, send, setView } from "../live/actions.ts";
import { useBench } from "../live/useWorkbench.tsx";
import type { Workbench } from "../live/workbench.ts";
import { panned } from "../scene/viewport.ts";
import { letGoOfSoffit } from "../soffit/soffitActions.ts";
import { isAvailable } from "../state/commands.ts";
import { takeTool } from "../state/editorState.ts";
import type { Modifiers, ToolKey } from "../tools/protocol.ts";
import { isBusy, takesLetters } from "../tools/tool.ts";
import { hitFor } from "./hand.ts";

const TOOL_KEYS: readonly ToolKey[] = [
  "Escape",
  "Enter",
  "Tab",
  "Backspace",
  "ArrowLeft",
  "ArrowRight",
  "ArrowUp",
  "ArrowDown",
];
const ARROWS: Readonly<Partial<Record<string, Position>>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
const COARSE = 10; // times the step, with Shift
const PAN_STEP = 60; // px

export function useKeyboard(): void {
  const bench = useBench();
  useEffect(() => {
    const down = (event: KeyboardEvent) => {
      if (isElsewhere(event)) return;
      if (keyDown(bench, event)) event.preventDefault();
    };
    const up = (event: KeyboardEvent) => {
      if (event.key === " ") changeScreen(bench, { isPanning: false });
    };
    addEventListener("keydown", down);
    addEventListener("keyup", up);
    return () => {
      removeEventListener("keydown", down);
      removeEventListener("keyup", up);
    };
  }, [bench]);
}

// Fields take their own keys; so do buttons the keys that press them.
function isElsewhere(event: KeyboardEvent): boolean {
  const { target } = event;
  if (!(target instanceof HTMLElement)) return false;
  const isCalled = event.ctrlKey || event.metaKey || event.key.startsWith("F");
  if (target.matches("input, textarea, select")) return !isCalled || event.key.length > 3;
  const isControl = target.matches("button, [role=option], [role=separator], summary");
  return isControl && ["Enter", " ", "Tab", "ArrowUp", "ArrowDown"].includes(event.key);
}

function isOnPlan({ target }: KeyboardEvent): boolean {
  return !(target instanceof HTMLElement) || target === document.body || target.matches(".plan-host");
}

/** Returns whether the key meant something here. */
function keyDown(bench: Workbench, event: KeyboardEvent): boolean {
  const { session } = bench.editor.get();
  const { tool, selection } = session;
  const modifiers: Modifiers = {
    shift: event.shiftKey,
    alt: event.altKey,
    ctrl: event.ctrlKey || event.metaKey,
  };
  if (event.key === "Escape" && tool.name === "select" && !isBusy(tool) && bench.soffit.get() !== null) {
    letGoOfSoffit(bench);
    return true;
  }
  const isPlain = !modifiers.ctrl && !modifiers.alt;
  const isCharacter = event.key.length === 1;
  if (event.key === " " && isOnPlan(event) && !takesLetters(tool)) {
    changeScreen(bench, { isPanning: true });
    return true;
  }
  if (isCharacter && isPlain && takesLetters(tool)) {
    send(bench, { kind: "text", text: event.key });
    return true;
  }
  const takesFigures =
    tool.name !== "select" ? isBusy(tool) || tool.name === "column" : selection.items.length > 0;
  if (isCharacter && isPlain && takesFigures && /[0-9.,]|-/.test(event.key)) {
    send(bench, { kind: "text", text: event.key });
    return true;
  }
  const toolKey = TOOL_KEYS.find((name) => name === event.key);
  if (toolKey !== undefined && !modifiers.ctrl && toolKeyDown(bench, event, { toolKey, modifiers }))
    return true;
  return call(bench, event);
}

function call(bench: Workbench, event: KeyboardEvent): boolean {
  const command = commandFor(chordOf(event));
  const state = bench.editor.get();
  if (command === null) return false;
  // With nothing to take back, undo and redo say so themselves.
  const says = command.id === "command.undo" || command.id === "command.redo";
  if (!says && !isAvailable(command, state, bench.screen.get().isPaneOpen)) return false;
  run(bench, command.id);
  return true;
}

function toolKeyDown(
  bench: Workbench,
  event: KeyboardEvent,
  { toolKey, modifiers }: { readonly toolKey: ToolKey; readonly modifiers: Modifiers },
): boolean {
  const { tool, selection } = bench.editor.get().session;
  const isDrawing = tool.name !== "select";
  const way = ARROWS[toolKey];
  if (way !== undefined) {
    if (isDrawing) return movePointer(bench, way, modifiers);
    if (selection.items.length > 0 || isBusy(tool)) {
      send(bench, { kind: "key", key: toolKey, modifiers });
      return true;
    }
    const { view } = bench.editor.get().session;
    setView(bench, panned(view, -way[0] * PAN_STEP, way[1] * PAN_STEP));
    return true;
  }
  if (toolKey === "Tab" && !isBusy(tool)) return false;
  if (toolKey === "Backspace" && !isBusy(tool)) return false;
  if (toolKey === "Escape" && isDrawing && !isBusy(tool)) {
    bench.editor.set((state) => takeTool(state, "select"));
    return true;
  }
  if (toolKey === "Enter" && isDrawing && bench.pointer.get().byKeys && !hasTyped(bench)) {
    return pressByKey(bench, modifiers);
  }
  if (toolKey === "Enter" && !isOnPlan(event)) return false;
  send(bench, { kind: "key", key: toolKey, modifiers });
  return true;
}

function hasTyped({ editor }: Workbench): boolean {
  const marks = editor.get().session.preview?.marks ?? [];
  return marks.some(
    (mark) => mark.kind === "name" || (mark.kind === "figure" && mark.typed !== null && mark.typed !== ""),
  );
}

// A pointer for those who have none: it walks by the step of the grid, 1 mm with Alt, and Enter presses.
function movePointer(bench: Workbench, [dx, dy]: Position, modifiers: Modifiers): boolean {
  const { settings, view } = bench.editor.get().session;
  const grid = settings.grid || 1;
  const by = modifiers.alt ? 1 : grid * (modifiers.shift ? COARSE : 1);
  const [x, y] = bench.pointer.get().at ?? view.centre;
  const from: Position = bench.pointer.get().byKeys
    ? [x, y]
    : [Math.round(x / grid) * grid, Math.round(y / grid) * grid];
  const at: Position = [from[0] + dx * by, from[1] + dy * by];
  bench.pointer.set(() => ({ at, byKeys: true }));
  send(bench, { kind: "move", at, hit: null, modifiers: { shift: false, alt: false, ctrl: false } });
  return true;
}

function pressByKey(bench: Workbench, modifiers: Modifiers): boolean {
  const { at } = bench.pointer.get();
  if (at === null) return false;
  const hit = hitFor(bench, at, "mouse");
  send(bench, { kind: "press", at, hit, modifiers });
  send(bench, { kind: "release", at, hit, modifiers });
  return true;
}
