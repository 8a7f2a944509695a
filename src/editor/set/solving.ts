// Drives a search step by step and tells how far it is: what the worker does, without knowing that it is one.

import { keepSet } from "../../fill/keepSet.ts";
import { findNudges } from "../../fill/nudge/findNudges.ts";
import type { NudgeList } from "../../fill/nudge/nudgeList.ts";
import { chooseSet, optimiseProject, type SetProgress } from "../../fill/optimise/optimiseProject.ts";
import { type Curve, tradeOff } from "../../fill/optimise/tradeOff.ts";
import type { FillDocument } from "../../fill/result.ts";
import { isBySet } from "../../fill/setPins.ts";
import type { Union } from "../../geom/union.ts";
import type { Solver } from "../../solver/linear.ts";
import type { WorkPlan } from "../over/workPlan.ts";
import type { UnitPins } from "./limitEdits.ts";
import type { FromSolver, ToSolver } from "./protocol.ts";

export interface SolvingTools {
  readonly loadUnion: () => Promise<Union>;
  readonly loadSolver: () => Promise<Solver>;
  readonly tell: (answer: FromSolver) => void;
  /** Lets messages have their turn. */
  readonly turn: () => Promise<unknown>;
  /** Clock, ms. */
  readonly now: () => number;
}

/** Steps that change neither the best plan nor the stage are told so often at most, ms. */
const PAUSE_MS = 100;

/** Makes what takes messages in. */
export function createSolving(tools: SolvingTools): (message: ToSolver) => Promise<void> {
  let isStopped = false;
  return async (message) => {
    if (message.kind === "stop") {
      isStopped = true;
      return;
    }
    try {
      if (message.kind === "nudges") tools.tell({ kind: "nudges", list: await sought(message.plan, tools) });
      else if (message.kind === "curve")
        tools.tell({ kind: "curve", curve: await drawn(message.plan, tools) });
      else tools.tell({ kind: "done", ...(await made(message, tools, () => isStopped)) });
    } catch (reason) {
      tools.tell({ kind: "broken", reason: String(reason) });
    }
  };
}

interface Made {
  readonly fill: FillDocument;
  readonly pins: readonly UnitPins[];
}

async function made(
  message: Extract<ToSolver, { readonly kind: "solve" | "finish" }>,
  tools: SolvingTools,
  isStopped: () => boolean,
): Promise<Made> {
  const { project, kit } = message.plan;
  const [union, solver] = await Promise.all([tools.loadUnion(), tools.loadSolver()]);
  const work = optimiseProject({
    project,
    kit,
    union,
    solver,
    isStopped: () => isStopped() || message.kind === "finish",
    ...(message.kind === "finish" && { soFar: message.soFar }),
    ...(message.kind === "solve" && message.isLong && { proofSteps: Number.POSITIVE_INFINITY }),
  });
  let told: { readonly progress: SetProgress; readonly at: number } | null = null;
  let step = work.next();
  for (; step.done !== true; step = work.next()) {
    const progress = step.value;
    if (told === null || isNews(progress, told.progress) || tools.now() - told.at >= PAUSE_MS) {
      told = { progress, at: tools.now() };
      tools.tell({ kind: "told", progress });
    }
    await tools.turn();
  }
  const fill = step.value;
  const kept = keepSet({ project, kit, union }, fill);
  const pins = kept.units.map(({ id, pinned }) => ({ unit: id, pinned: pinned.filter(isBySet) }));
  return { fill, pins };
}

async function drawn({ project, kit }: WorkPlan, tools: SolvingTools): Promise<Curve> {
  const [union, solver] = await Promise.all([tools.loadUnion(), tools.loadSolver()]);
  const work = tradeOff({ project, kit, union, solver });
  let last = "";
  let step = work.next();
  for (; step.done !== true; step = work.next()) {
    const { curve, found, most } = step.value;
    const now = `${curve} ${found}`;
    if (now !== last) tools.tell({ kind: "drawing", told: { curve, found, most } });
    last = now;
    await tools.turn();
  }
  return step.value.curve;
}

async function sought({ project, kit }: WorkPlan, tools: SolvingTools): Promise<NudgeList> {
  const [union, solver] = await Promise.all([tools.loadUnion(), tools.loadSolver()]);
  const input = { project, kit, union, solver };
  const choice = chooseSet(input);
  let chosen = choice.next();
  for (; chosen.done !== true; chosen = choice.next()) await tools.turn();
  const work = findNudges({ ...input, chosen: chosen.value });
  let told = Number.NEGATIVE_INFINITY;
  let step = work.next();
  for (; step.done !== true; step = work.next()) {
    if (tools.now() - told < PAUSE_MS) continue;
    told = tools.now();
    tools.tell({ kind: "seeking", told: step.value });
    await tools.turn();
  }
  return step.value;
}

function isNews(now: SetProgress, before: SetProgress): boolean {
  return now.best !== before.best || now.stage !== before.stage;
}
