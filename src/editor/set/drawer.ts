// The curves of what fewer widths and fewer fillers cost, as the page sees them: begun, told of, there, or cancelled.

import type { Curve } from "../../fill/optimise/tradeOff.ts";
import type { WorkPlan } from "../over/workPlan.ts";
import { createStore, type Store } from "../state/store.ts";
import type { CurveName } from "./curvePlot.ts";
import type { SolveEvents, SolvePort } from "./optimiser.ts";

/** What the curves were drawn of. */
export interface CurveInputs {
  /** All but the two below: see `inputsOf`. */
  readonly others: string;
  readonly mostWidths: number | null;
  readonly filler: number;
}

export interface Drawing {
  readonly isDrawing: boolean;
  /** Points that are there of the curve in hand, of the most there will be. */
  readonly told: { readonly curve: CurveName; readonly found: number; readonly most: number } | null;
  readonly drawn: { readonly curve: Curve; readonly inputs: CurveInputs } | null;
  readonly failure: string | null;
}

export interface Drawer {
  readonly drawing: Store<Drawing>;
  readonly begin: (plan: WorkPlan, inputs: CurveInputs) => void;
  readonly cancel: () => void;
  /** Keeps nothing. */
  readonly forget: () => void;
}

const NOTHING: Drawing = { isDrawing: false, told: null, drawn: null, failure: null };

export function createDrawer(start: (events: SolveEvents) => SolvePort): Drawer {
  const drawing = createStore(NOTHING);
  let port: SolvePort | null = null;
  const change = (part: Partial<Drawing>) => drawing.set((state) => ({ ...state, ...part }));
  const end = () => {
    port?.end();
    port = null;
  };
  const fail = (reason: string) => {
    end();
    change({ isDrawing: false, told: null, failure: reason });
  };
  return {
    drawing,
    begin: (plan, inputs) => {
      end();
      change({ isDrawing: true, told: null, failure: null });
      try {
        const own: SolvePort = start({
          onAnswer: (answer) => {
            if (port !== own) return;
            if (answer.kind === "drawing") change({ told: answer.told });
            if (answer.kind === "broken") fail(answer.reason);
            if (answer.kind !== "curve") return;
            end();
            change({ isDrawing: false, told: null, drawn: { curve: answer.curve, inputs } });
          },
          onFailure: (reason) => {
            if (port === own) fail(reason);
          },
        });
        port = own;
        own.send({ kind: "curve", plan });
      } catch (reason) {
        fail(String(reason));
      }
    },
    cancel: () => {
      end();
      change({ isDrawing: false, told: null });
    },
    forget: () => {
      end();
      drawing.set(() => NOTHING);
    },
  };
}
