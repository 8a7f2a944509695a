// The searches of the page: they outlive the view, and are forgotten when another project is opened.

import { useSyncExternalStore } from "react";
import type { NudgeProgress } from "../../fill/nudge/findNudges.ts";
import type { NudgeList } from "../../fill/nudge/nudgeList.ts";
import type { Curve } from "../../fill/optimise/tradeOff.ts";
import { useBench } from "../live/useWorkbench.tsx";
import type { Workbench } from "../live/workbench.ts";
import { type Aside, type AsideWork, createAside } from "./aside.ts";
import type { CurveInputs } from "./inputs.ts";
import { createOptimiser, type Optimiser, type Run } from "./optimiser.ts";
import type { CurveTold } from "./protocol.ts";
import { startSolver } from "./startWorkers.ts";

interface Searches {
  readonly optimiser: Optimiser;
  readonly drawer: Drawer;
  readonly nudger: Nudger;
}

type Drawer = AsideWork<CurveTold, Curve, CurveInputs>;
type Drawing = Aside<CurveTold, Curve, CurveInputs>;

const searches = new WeakMap<Workbench, Searches>();

type Nudger = AsideWork<NudgeProgress, NudgeList, string>;
type Nudging = Aside<NudgeProgress, NudgeList, string>;

export function useNudger(): { readonly nudger: Nudger; readonly nudging: Nudging } {
  const { nudger } = searchesOf(useBench());
  return { nudger, nudging: useSyncExternalStore(nudger.state.subscribe, nudger.state.get) };
}

export function useDrawer(): { readonly drawer: Drawer; readonly drawing: Drawing } {
  const { drawer } = searchesOf(useBench());
  return { drawer, drawing: useSyncExternalStore(drawer.state.subscribe, drawer.state.get) };
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
    drawer: createAside<CurveTold, Curve, CurveInputs>(startSolver, {
      ask: (plan) => ({ kind: "curve", plan }),
      toldBy: (answer) => (answer.kind === "drawing" ? answer.told : null),
      foundBy: (answer) => (answer.kind === "curve" ? answer.curve : null),
    }),
    nudger: createAside<NudgeProgress, NudgeList, string>(startSolver, {
      ask: (plan) => ({ kind: "nudges", plan }),
      toldBy: (answer) => (answer.kind === "seeking" ? answer.told : null),
      foundBy: (answer) => (answer.kind === "nudges" ? answer.list : null),
    }),
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
    made.nudger.forget();
  });
  return made;
}
