// The workbench as React components reach it.

import { createContext, type ReactNode, useContext, useMemo, useSyncExternalStore } from "react";
import type { EditorState } from "../state/editorState.ts";
import { type Speech, say, speechOf, type Words } from "../words/say.ts";
import type { Screen } from "./screen.ts";
import { type InView, inViewOf, type Workbench } from "./workbench.ts";

const BenchContext = createContext<Workbench | null>(null);

export function BenchProvider({ bench, children }: { bench: Workbench; children: ReactNode }) {
  return <BenchContext value={bench}>{children}</BenchContext>;
}

/** @throws {Error} outside a {@link BenchProvider} */
export function useBench(): Workbench {
  const bench = useContext(BenchContext);
  if (bench === null) throw new Error("a part of the page stands outside its workbench");
  return bench;
}

export function useEditorState(): EditorState {
  const { editor } = useBench();
  return useSyncExternalStore(editor.subscribe, editor.get);
}

export function useScreen(): Screen {
  const { screen } = useBench();
  return useSyncExternalStore(screen.subscribe, screen.get);
}

/** The unit in view with its fill; renders again when a fill comes in from beside the page. */
export function useInView(): InView {
  const bench = useBench();
  const state = useEditorState();
  const version = useSyncExternalStore(bench.fills.subscribe, bench.fills.version);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new version is a new fill of the same state
  return useMemo(
    () => inViewOf(bench, state),
    [bench, state.history.doc, state.session.preview?.document, state.session.selection.unit, version],
  );
}

/** How the page speaks, and a short way to say something. */
export function useSpeech(): { readonly speech: Speech; readonly t: (said: Words) => string } {
  const { catalogues } = useBench();
  const { language } = useEditorState().history.doc;
  const known = useSyncExternalStore(catalogues.subscribe, catalogues.get);
  return useMemo(() => {
    const speech = speechOf(language, known);
    return { speech, t: (said) => say(speech, said) };
  }, [language, known]);
}
