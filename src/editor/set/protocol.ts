// What the page and the worker that looks for a set say to each other.
//
//   page ── solve, stop, finish ──▶ solver            page ◀── told, told …, done ── solver

import type { NudgeProgress } from "../../fill/nudge/findNudges.ts";
import type { NudgeList } from "../../fill/nudge/nudgeList.ts";
import type { SetProgress, SoFar } from "../../fill/optimise/optimiseProject.ts";
import type { Curve, TradeOffProgress } from "../../fill/optimise/tradeOff.ts";
import type { FillDocument } from "../../fill/result.ts";
import type { WorkPlan } from "../over/workPlan.ts";
import type { UnitPins } from "./limitEdits.ts";

export type ToSolver =
  /** `isLong`: until the proof is there or it is stopped; else until the work allowed is done. */
  | { readonly kind: "solve"; readonly plan: WorkPlan; readonly isLong: boolean }
  /** End with the best so far, as soon as the step in hand is done. */
  | { readonly kind: "stop" }
  /** Draw what fewer widths and fewer fillers cost. */
  | { readonly kind: "curve"; readonly plan: WorkPlan }
  /** Find the moves of walls that make the set cheaper. */
  | { readonly kind: "nudges"; readonly plan: WorkPlan }
  /** Make the set of what another solver has come to, at once. */
  | { readonly kind: "finish"; readonly plan: WorkPlan; readonly soFar: SoFar };

/** Points that are there of the curve in hand, of the most there will be. */
export type CurveTold = Pick<TradeOffProgress, "curve" | "found" | "most">;

export type FromSolver =
  | { readonly kind: "drawing"; readonly told: CurveTold }
  | { readonly kind: "curve"; readonly curve: Curve }
  | { readonly kind: "seeking"; readonly told: NudgeProgress }
  | { readonly kind: "nudges"; readonly list: NudgeList }
  | { readonly kind: "told"; readonly progress: SetProgress }
  | { readonly kind: "done"; readonly fill: FillDocument; readonly pins: readonly UnitPins[] }
  | { readonly kind: "broken"; readonly reason: string };
