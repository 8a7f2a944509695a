// Whether the project is kept safe, for the bar to say. What keeps the project on this machine tells it.

import { useSyncExternalStore } from "react";
import { useBench } from "./useWorkbench.tsx";
import type { Saved, Workbench } from "./workbench.ts";

/** @param saved - null: nothing keeps the project on this page, so nothing is said */
export function tellSaved(bench: Workbench, saved: Saved | null): void {
  bench.saved.set(() => saved);
}

export function useSaved(): Saved | null {
  const { saved } = useBench();
  return useSyncExternalStore(saved.subscribe, saved.get);
}
