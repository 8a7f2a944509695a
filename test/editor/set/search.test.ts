// The search beside the page: its worker step by step, and the page's side of it with a worker that does as it is told.

import { describe, expect, it, vi } from "vitest";
import type { WorkPlan } from "../../../src/editor/over/workPlan.ts";
import { createAside } from "../../../src/editor/set/aside.ts";
import { createCounter } from "../../../src/editor/set/counter.ts";
import { createOptimiser } from "../../../src/editor/set/optimiser.ts";
import type { CurveTold, FromSolver, ToSolver } from "../../../src/editor/set/protocol.ts";
import { createSolving } from "../../../src/editor/set/solving.ts";
import type { PortEvents } from "../../../src/editor/workers/port.ts";
import type { Curve } from "../../../src/fill/optimise/tradeOff.ts";
import type { FillDocument } from "../../../src/fill/result.ts";
import { loadUnion } from "../../../src/geom/union.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import { loadHighs } from "../../../src/solver/highs.ts";
import { filled, sampleProject } from "../../support/samples.ts";
import { expectTrueSet } from "../../support/setClaims.ts";

// The machine may be busy with other things.
vi.setConfig({ testTimeout: 120_000 });

const union = await loadUnion();
const PLAN: WorkPlan = { project: sampleProject("row-of-three"), kit: demoKit };

describe("the counter", () => {
  it("finds the set of the bills, and fills a unit again only when it has changed", () => {
    const unions = vi.fn(union);
    const count = createCounter(unions);
    const first = count(PLAN);
    const bill = filled(PLAN.project).units[0]!.bill;
    const panel = bill.find(({ family }) => family === "wall-panel")!;
    expect(first.pieces.find(({ code }) => code === panel.code)!.needed).toBeGreaterThanOrEqual(
      panel.quantity,
    );
    const calls = unions.mock.calls.length;
    const [p1, ...rest] = PLAN.project.pours;
    const turned = count({ ...PLAN, project: { ...PLAN.project, pours: [...rest, p1!] } });
    expect(unions.mock.calls.length).toBe(calls);
    expect(turned.pours.map(({ pour }) => pour).at(-1)).toBe("p1");
    count({ ...PLAN, project: { ...PLAN.project, fillers: "middle" } });
    expect(unions.mock.calls.length).toBeGreaterThan(calls);
  });
});

async function solved(message: ToSolver, stopAfter = Number.POSITIVE_INFINITY) {
  const told: FromSolver[] = [];
  let turns = 0;
  const solving = createSolving({
    loadUnion: async () => union,
    loadSolver: loadHighs,
    tell: (answer) => told.push(structuredClone(answer)),
    turn: async () => {
      turns += 1;
      if (turns === stopAfter) await solving({ kind: "stop" });
    },
    now: () => 0,
  });
  await solving(message);
  return told;
}

function doneOf(told: readonly FromSolver[]): FillDocument {
  const last = told.at(-1);
  if (last?.kind !== "done") throw new Error(JSON.stringify(last));
  return last.fill;
}

describe("the worker", () => {
  it("tells every better plan, then the set; a stop keeps the best; another worker makes it of what was told", async () => {
    const told = await solved({ kind: "solve", plan: PLAN, isLong: false });
    const whole = doneOf(told);
    expectTrueSet(whole, PLAN.project, PLAN.kit);
    const progress = told.flatMap((each) => (each.kind === "told" ? [each.progress] : []));
    expect(progress.length).toBeGreaterThan(1);
    for (const [k, { best }] of progress.entries())
      expect(best).toBeLessThanOrEqual(progress[k - 1]?.best ?? Number.POSITIVE_INFINITY);

    const stopped = doneOf(await solved({ kind: "solve", plan: PLAN, isLong: false }, 1));
    expect(stopped.set!.status).toBe("stopped");
    expectTrueSet(stopped, PLAN.project, PLAN.kit);

    const { soFar, best } = progress.at(-1)!;
    const finished = doneOf(await solved({ kind: "finish", plan: PLAN, soFar }));
    expect(finished.set!.cost).toBeCloseTo(best, 6);
  });

  it("says in words that it broke down", async () => {
    const broken = { ...PLAN, project: { ...PLAN.project, units: [{}] } } as unknown as WorkPlan;
    expect((await solved({ kind: "solve", plan: broken, isLong: false })).at(-1)?.kind).toBe("broken");
  });
});

/** A page whose workers answer when the test says so. */
function page() {
  const workers: { sent: ToSolver[]; events: PortEvents<FromSolver>; isEnded: boolean }[] = [];
  const waiting: (() => void)[] = [];
  const optimiser = createOptimiser({
    start: (events) => {
      const worker = { sent: [] as ToSolver[], events, isEnded: false };
      workers.push(worker);
      return {
        send: (message) => worker.sent.push(message),
        end: () => {
          worker.isEnded = true;
        },
      };
    },
    now: () => 0,
    after: (_, call) => waiting.push(call),
  });
  const soFar = { plan: [], bound: 90 };
  return {
    optimiser,
    workers,
    run: optimiser.run.get,
    begin: (inputs = "a") => optimiser.begin({ plan: PLAN, inputs, isLong: false }),
    tell: (k: number, best: number) =>
      workers[k]!.events.onAnswer({ kind: "told", progress: { stage: "plan", best, bound: 90, soFar } }),
    done: (k: number) => workers[k]!.events.onAnswer({ kind: "done", fill: FILL, pins: [] }),
    wait: () => {
      for (const call of waiting.splice(0)) call();
    },
  };
}

const FILL: FillDocument = {
  ...filled(sampleProject("one-room")),
  set: {
    status: "optimal",
    countedBy: "price",
    pieces: [],
    cost: 90,
    parts: { set: 90, handling: 0, closures: 0, distinctSizes: 0, fixed: 0 },
    lowerBound: 90,
    proof: "certificate",
    wallByWall: 100,
    chosen: { widths: 4, fillers: 0 },
  },
};

describe("a search", () => {
  it("is begun, told of and done", () => {
    const { run, begin, tell, done, workers } = page();
    begin("inputs");
    tell(0, 100);
    tell(0, 95);
    expect(run()).toMatchObject({ phase: "running", result: null });
    expect(run().told.map(({ best }) => best)).toEqual([100, 95]);
    done(0);
    expect(run()).toMatchObject({ phase: "idle", result: { inputs: "inputs", set: FILL.set } });
    expect(workers[0]!.isEnded).toBe(true);
  });

  it("that hears a stop ends by itself", () => {
    const { optimiser, run, begin, tell, done, wait, workers } = page();
    begin();
    tell(0, 100);
    optimiser.stop();
    expect(run().phase).toBe("stopping");
    expect(workers[0]!.sent.at(-1)).toEqual({ kind: "stop" });
    done(0);
    wait();
    expect(workers).toHaveLength(1);
    expect(run().result).not.toBeNull();
  });

  it("that is deaf is ended, and its last plan is made by another worker", () => {
    const { optimiser, run, begin, tell, done, wait, workers } = page();
    begin();
    tell(0, 100);
    tell(0, 95);
    optimiser.stop();
    wait();
    expect(workers[0]!.isEnded).toBe(true);
    expect(workers[1]!.sent[0]).toMatchObject({ kind: "finish", soFar: { bound: 90 } });
    // Whatever the first one still says is not heard.
    done(0);
    expect(run().result).toBeNull();
    done(1);
    expect(run()).toMatchObject({ phase: "idle", failure: null });
    expect(run().result).not.toBeNull();
  });

  it("stopped before it had anything goes on to its first plan", () => {
    const { optimiser, begin, wait, workers } = page();
    begin();
    optimiser.stop();
    wait();
    expect(workers).toHaveLength(1);
    expect(workers[0]!.isEnded).toBe(false);
  });

  it("cancelled leaves the result before it", () => {
    const { optimiser, run, begin, tell, done, workers } = page();
    begin("first");
    done(0);
    begin("second");
    tell(1, 100);
    optimiser.cancel();
    expect(workers[1]!.isEnded).toBe(true);
    done(1);
    expect(run()).toMatchObject({ phase: "idle", result: { inputs: "first" }, told: [] });
  });

  it("that breaks down says why, keeps the result before it, and can be begun again", () => {
    const { run, begin, done, workers } = page();
    begin("first");
    done(0);
    begin("second");
    workers[1]!.events.onFailure("no memory");
    expect(run()).toMatchObject({ phase: "idle", failure: "no memory", result: { inputs: "first" } });
    begin("third");
    expect(run()).toMatchObject({ phase: "running", failure: null });
  });

  it("is forgotten with its result when another project is opened", () => {
    const { optimiser, run, begin, done, workers } = page();
    begin();
    done(0);
    begin();
    optimiser.forget();
    expect(run()).toMatchObject({ phase: "idle", result: null });
    expect(workers[1]!.isEnded).toBe(true);
  });
});

describe("the drawing of the curves", () => {
  const INPUTS = { others: "a", mostWidths: null, filler: 0 };

  it("is told of point by point, and a cancelled one is not heard any more", () => {
    const workers: { events: PortEvents<FromSolver>; isEnded: boolean }[] = [];
    const start = (events: PortEvents<FromSolver>) => {
      const worker = { events, isEnded: false };
      workers.push(worker);
      return {
        send: () => undefined,
        end: () => {
          worker.isEnded = true;
        },
      };
    };
    const drawer = createAside<CurveTold, Curve, typeof INPUTS>(start, {
      ask: (plan) => ({ kind: "curve", plan }),
      toldBy: (answer) => (answer.kind === "drawing" ? answer.told : null),
      foundBy: (answer) => (answer.kind === "curve" ? answer.curve : null),
    });
    const curve: Curve = {
      format: "panelwright-curve",
      version: 1,
      project: "",
      countedBy: "price",
      widths: [],
      fillers: [],
    };
    drawer.begin(PLAN, INPUTS);
    workers[0]!.events.onAnswer({ kind: "drawing", told: { curve: "widths", found: 2, most: 6 } });
    expect(drawer.state.get()).toMatchObject({ isWorking: true, told: { found: 2 } });
    drawer.cancel();
    workers[0]!.events.onAnswer({ kind: "curve", curve });
    expect(drawer.state.get()).toEqual({ isWorking: false, told: null, found: null, failure: null });
    drawer.begin(PLAN, INPUTS);
    workers[1]!.events.onAnswer({ kind: "curve", curve });
    expect(drawer.state.get().found).toEqual({ value: curve, inputs: INPUTS });
    expect(workers.map(({ isEnded }) => isEnded)).toEqual([true, true]);
    drawer.begin(PLAN, INPUTS);
    workers[2]!.events.onFailure("no memory");
    expect(drawer.state.get()).toMatchObject({
      isWorking: false,
      failure: "no memory",
      found: { value: curve },
    });
  });

  it("has a list of moves that save beside it", async () => {
    const told = await solved({ kind: "nudges", plan: { ...PLAN, project: sampleProject("one-room") } });
    const last = told.at(-1);
    if (last?.kind !== "nudges") throw new Error(JSON.stringify(last));
    for (const { saving } of last.list.nudges) expect(saving).toBeGreaterThan(0);
  });

  it("is that of the core", async () => {
    const plan = { ...PLAN, project: sampleProject("one-room") };
    const told = await solved({ kind: "curve", plan });
    const last = told.at(-1);
    if (last?.kind !== "curve") throw new Error(JSON.stringify(last));
    expect(last.curve.widths.length).toBeGreaterThan(0);
    expect(told.some(({ kind }) => kind === "drawing")).toBe(true);
  });
});
