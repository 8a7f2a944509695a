// Takes one step of the project from the view: a change that one undo takes back.

import { useCallback } from "react";
import type { Edit } from "../../plan/edit.ts";
import { useBench } from "../live/useWorkbench.tsx";
import { takeStep } from "../state/editorState.ts";
import type { WordKey } from "../words/en.ts";
import { words } from "../words/say.ts";

export type StepName = Extract<WordKey, `step.set-${string}`>;

export type TakeStep = (name: StepName, edits: readonly Edit[]) => void;

export function useStep(): TakeStep {
  const { editor } = useBench();
  return useCallback(
    (name, edits) => {
      if (edits.length === 0) return;
      editor.set((state) => takeStep(state, words(name), edits, state.session.selection.items));
    },
    [editor],
  );
}
