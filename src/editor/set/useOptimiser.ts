// The searches of the page: they outlive the view, and are forgotten when another project is opened.

import { useSyncExternalStore } from "react";
import { useBench } from "../live/useWorkbench.tsx";
import type { Workbench } from "../live/workbench.ts";
import { createDrawer, type Drawer, type Drawing } from "./drawer.ts";
import { createOptimiser, type Optimiser, type Run } from "./optimiser.ts";
import { startSolver } from "./startWorkers.ts";

interface Searches {
  readonly optimiser: Optimiser;
  readonly drawer: Drawer;
}

const searches = new WeakMap<Workbench, Searches>();

export function useDrawer(): { readonly drawer: Drawer; readonly drawing: Drawing } {
  const { drawer } = searchesOf(useBench());
  return { drawer, drawing: useSyncExternalStore(drawer.drawing.subscribe, drawer.drawing.get) };
}

export function useOptimiser(): { readonly optimiser: Optimiser; readonly run: Run } {
  const bench = useBench();
  const { optimiser } = searchesOf(bench);
  return { optimiser, run: useSyncExternalStore(optimiser.run.subscribe, optimiser.run.get) };
}

function searchesOf(bench: Workbench): Searches {
  const known = searches.get(bench);
  if (known !== undefined) return known;
  const made = {
    optimiser: createOptimiser({
      start: startSolver,
      now: () => performance.now(),
      after: (ms, call) => setTimeout(call, ms),
    }),
    drawer: createDrawer(startSolver),
  };
  searches.set(bench, made);
  let { doc } = bench.editor.get().history;
  bench.editor.subscribe(() => {
    const { history } = bench.editor.get();
    const isOpened = history.doc !== doc && history.past.length === 0 && history.future.length === 0;
    ({ doc } = history);
    if (!isOpened) return;
    made.optimiser.forget();
    made.drawer.forget();
  });
  return made;
}
