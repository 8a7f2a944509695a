// Whether the project is kept safe, for the bar to say. What keeps the project on this machine sets `bench.saved`.

import { useSyncExternalStore } from "react";
import { useBench } from "./useWorkbench.tsx";
import type { Saved } from "./workbench.ts";

export function useSaved(): Saved | null {
  const { saved } = useBench();
  return useSyncExternalStore(saved.subscribe, saved.get);
}
