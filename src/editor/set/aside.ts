// What is worked out beside the search for a set, in a worker of its own: the curves, the moves that save. Begun, told of,
// there, or cancelled.

import type { WorkPlan } from "../over/workPlan.ts";
import { createStore, type Store } from "../state/store.ts";
import { holdWorker } from "../workers/held.ts";
import type { StartPort } from "../workers/port.ts";
import type { FromSolver, ToSolver } from "./protocol.ts";

export interface Aside<Told, Found, Inputs> {
  readonly isWorking: boolean;
  /** How far it is. */
  readonly told: Told | null;
  /** What was found last, and of what. */
  readonly found: { readonly value: Found; readonly inputs: Inputs } | null;
  readonly failure: string | null;
}

export interface AsideWork<Told, Found, Inputs> {
  readonly state: Store<Aside<Told, Found, Inputs>>;
  readonly begin: (plan: WorkPlan, inputs: Inputs) => void;
  readonly cancel: () => void;
  /** Keeps nothing. */
  readonly forget: () => void;
}

export interface AsideKind<Told, Found> {
  readonly ask: (plan: WorkPlan) => ToSolver;
  readonly toldBy: (answer: FromSolver) => Told | null;
  readonly foundBy: (answer: FromSolver) => Found | null;
}

export function createAside<Told, Found, Inputs>(
  start: StartPort<ToSolver, FromSolver>,
  { ask, toldBy, foundBy }: AsideKind<Told, Found>,
): AsideWork<Told, Found, Inputs> {
  const nothing: Aside<Told, Found, Inputs> = { isWorking: false, told: null, found: null, failure: null };
  const state = createStore(nothing);
  let inHand: { readonly inputs: Inputs } | null = null;
  const change = (part: Partial<Aside<Told, Found, Inputs>>) => state.set((now) => ({ ...now, ...part }));
  const end = () => {
    worker.end();
    inHand = null;
  };
  const fail = (reason: string) => {
    end();
    change({ isWorking: false, told: null, failure: reason });
  };
  const hear = (answer: FromSolver) => {
    if (answer.kind === "broken") return fail(answer.reason);
    const told = toldBy(answer);
    if (told !== null) change({ told });
    const value = foundBy(answer);
    if (value === null || inHand === null) return;
    const { inputs } = inHand;
    end();
    change({ isWorking: false, told: null, found: { value, inputs } });
  };
  const worker = holdWorker(start, { onAnswer: hear, onFailure: fail });
  return {
    state,
    begin: (plan, inputs) => {
      end();
      change({ isWorking: true, told: null, failure: null });
      inHand = { inputs };
      worker.send(() => [ask(plan)]);
    },
    cancel: () => {
      end();
      change({ isWorking: false, told: null });
    },
    forget: () => {
      end();
      state.set(() => nothing);
    },
  };
}
