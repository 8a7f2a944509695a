// The search for the cheapest set as the page sees it: begun, told of, stopped with the best so far, or cancelled. It goes on
// while the view is closed, and its result stays until another project is opened.
//
//   idle ──begin──▶ running ──stop──▶ stopping ──▶ idle, with a result
//                      └────cancel────▶ idle, with the result before
//
// A solver within a step hears nothing. So a stop waits a moment for it, then ends its worker for good and has another one
// make the document of the last plan it told.

import type { SetProgress, SoFar } from "../../fill/optimise/optimiseProject.ts";
import type { FillDocument, PanelSet } from "../../fill/result.ts";
import type { WorkPlan } from "../over/workPlan.ts";
import { createStore, type Store } from "../state/store.ts";
import { holdWorker } from "../workers/held.ts";
import type { StartPort } from "../workers/port.ts";
import type { UnitPins } from "./limitEdits.ts";
import type { FromSolver, ToSolver } from "./protocol.ts";

/** What was known at a moment of the search. */
export interface Told {
  /** Since its beginning, ms. */
  readonly at: number;
  readonly stage: SetProgress["stage"];
  readonly best: number;
  readonly bound: number;
}

export interface SetResult {
  /** What it is the result of: see `inputsOf`. */
  readonly inputs: string;
  readonly fill: FillDocument;
  readonly set: PanelSet;
  /** What keeps it in the plan. */
  readonly pins: readonly UnitPins[];
}

export interface Run {
  readonly phase: "idle" | "running" | "stopping";
  /** When it began, by the clock of the page, ms. */
  readonly since: number;
  readonly told: readonly Told[];
  /** Of the last search that came to its end. */
  readonly result: SetResult | null;
  /** Why the last one did not. */
  readonly failure: string | null;
}

export interface Begin {
  readonly plan: WorkPlan;
  readonly inputs: string;
  /** Until the proof is there, however long. */
  readonly isLong: boolean;
}

export interface Optimiser {
  readonly run: Store<Run>;
  readonly begin: (begin: Begin) => void;
  readonly stop: () => void;
  readonly cancel: () => void;
  /** Ends whatever runs and keeps nothing. */
  readonly forget: () => void;
}

export interface OptimiserTools {
  readonly start: StartPort<ToSolver, FromSolver>;
  readonly now: () => number;
  /** Calls back after so many ms. */
  readonly after: (ms: number, call: () => void) => void;
}

/** How long a stop waits for the step in hand, ms. */
const GRACE_MS = 300;

const IDLE: Run = { phase: "idle", since: 0, told: [], result: null, failure: null };

interface Search extends Begin {
  last: SoFar | null;
}

export function createOptimiser({ start, now, after }: OptimiserTools): Optimiser {
  const run = createStore<Run>(IDLE);
  let search: Search | null = null;
  const change = (part: Partial<Run>) => run.set((state) => ({ ...state, ...part }));
  const end = () => {
    worker.end();
    search = null;
  };
  const fail = (reason: string) => {
    end();
    change({ phase: "idle", failure: reason });
  };
  const hear = (answer: FromSolver) => {
    const own = search;
    if (own === null) return;
    switch (answer.kind) {
      case "told": {
        const { soFar, ...progress } = answer.progress;
        own.last = soFar;
        run.set((state) => ({ ...state, told: [...state.told, { ...progress, at: now() - state.since }] }));
        return;
      }
      case "done": {
        const { fill, pins } = answer;
        const { set } = fill;
        if (set === undefined) return fail("the search gave no set");
        end();
        change({ phase: "idle", result: { inputs: own.inputs, fill, set, pins } });
        return;
      }
      case "broken":
        fail(answer.reason);
        return;
      case "drawing":
      case "curve":
      case "seeking":
      case "nudges":
        return;
      default:
        answer satisfies never;
    }
  };
  const worker = holdWorker(start, { onAnswer: hear, onFailure: fail });
  const open = ({ plan, inputs, isLong }: Begin, first: ToSolver) => {
    end();
    search = { plan, inputs, isLong, last: null };
    worker.send(() => [first]);
  };
  // The plan told last becomes the result, whatever its worker is busy with.
  const takeLast = (own: Search) => {
    if (search !== own || own.last === null) return;
    open(own, { kind: "finish", plan: own.plan, soFar: own.last });
  };
  return {
    run,
    begin: (begin) => {
      const { plan, isLong } = begin;
      change({ phase: "running", since: now(), told: [], failure: null });
      open(begin, { kind: "solve", plan, isLong });
    },
    stop: () => {
      const own = search;
      if (own === null || run.get().phase !== "running") return;
      change({ phase: "stopping" });
      worker.send(() => [{ kind: "stop" }]);
      after(GRACE_MS, () => takeLast(own));
    },
    cancel: () => {
      end();
      change({ phase: "idle", told: [] });
    },
    forget: () => {
      end();
      run.set(() => IDLE);
    },
  };
}
