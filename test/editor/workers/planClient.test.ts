// The page's side of a worker about a whole plan, with workers of the test's own that answer when they are let.

import { describe, expect, it } from "vitest";
import type { WorkPlan } from "../../../src/editor/over/workPlan.ts";
import { createPlanClient } from "../../../src/editor/workers/planClient.ts";
import {
  createAnswerer,
  type FromPlanWorker,
  sentPlan,
  type ToPlanWorker,
} from "../../../src/editor/workers/planProtocol.ts";
import type { PortEvents } from "../../../src/editor/workers/port.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import { sampleProject } from "../../support/samples.ts";

const PLAN: WorkPlan = { project: sampleProject("row-of-three"), kit: demoKit };

interface Beside {
  readonly heard: ToPlanWorker<string>[];
  readonly events: PortEvents<FromPlanWorker<string>>;
  isEnded: boolean;
}

function desk() {
  const workers: Beside[] = [];
  const client = createPlanClient<string, string>((events) => {
    const worker: Beside = { heard: [], events, isEnded: false };
    workers.push(worker);
    return {
      send: (message) => worker.heard.push(message),
      end: () => {
        worker.isEnded = true;
      },
    };
  });
  const jobsOf = (k: number) => workers[k]!.heard.flatMap((each) => (each.kind === "job" ? [each] : []));
  return {
    client,
    workers,
    asksOf: (k: number) => jobsOf(k).map(({ ask }) => ask),
    kindsOf: (k: number) => workers[k]!.heard.map(({ kind }) => kind).join(" "),
    /** The worker answers the ask by its own text. */
    answer: (k: number, ask: string) => {
      const job = jobsOf(k).findLast((each) => each.ask === ask)!.job;
      workers[k]!.events.onAnswer({ kind: "done", job, answer: `${ask}!` });
    },
  };
}

describe("asks about a plan", () => {
  it("wait one at a time, the newest: what was asked between is put aside", async () => {
    const { client, asksOf, answer } = desk();
    const [a, b, c] = ["a", "b", "c"].map((ask) => client.about({ ...PLAN }, ask));
    expect(await b).toBeNull();
    expect(asksOf(0)).toEqual(["a"]);
    answer(0, "a");
    expect(await a).toBe("a!");
    expect(asksOf(0)).toEqual(["a", "c"]);
    answer(0, "c");
    expect(await c).toBe("c!");
  });

  it("are sent the kit and the project only where they are others", () => {
    const { client, kindsOf, answer } = desk();
    const plans: readonly WorkPlan[] = [
      PLAN,
      { ...PLAN },
      { ...PLAN, project: { ...PLAN.project } },
      { ...PLAN, kit: { ...PLAN.kit } },
    ];
    for (const [k, plan] of plans.entries()) {
      void client.about(plan, `${k}`);
      answer(0, `${k}`);
    }
    expect(kindsOf(0)).toBe("kit project job job project job kit project job");
  });

  it("hear the answer so far, and other asks do not wait for them", async () => {
    const { client, workers, answer } = desk();
    const parts: string[] = [];
    const whole = client.about(PLAN, "a", (part) => parts.push(part));
    workers[0]!.events.onAnswer({ kind: "part", job: 1, answer: "half" });
    const beside = client.ask("b");
    answer(0, "b");
    expect(await beside).toBe("b!");
    answer(0, "a");
    expect(await whole).toBe("a!");
    expect(parts).toEqual(["half"]);
  });
});

describe("a worker that breaks down", () => {
  it("is dropped; what it had is rejected, and the ask that waited is given to another with all it needs", async () => {
    const { client, workers, kindsOf, answer } = desk();
    const [a, b] = ["a", "b"].map((ask) => client.about(PLAN, ask));
    const beside = client.ask("c");
    workers[0]!.events.onFailure("out of memory");
    await expect(a).rejects.toThrow("out of memory");
    await expect(beside).rejects.toThrow("out of memory");
    expect(workers[0]!.isEnded).toBe(true);
    expect(kindsOf(1)).toBe("kit project job");
    answer(1, "b");
    expect(await b).toBe("b!");
  });

  it("says nothing more: neither a second failure nor a late answer reaches what the next one is asked", async () => {
    const { client, workers, answer } = desk();
    const lost = client.about(PLAN, "a");
    workers[0]!.events.onFailure("out of memory");
    await expect(lost).rejects.toThrow("out of memory");
    const next = client.about(PLAN, "b");
    workers[0]!.events.onFailure("once more");
    workers[0]!.events.onAnswer({ kind: "done", job: 2, answer: "of the dead" });
    expect(workers[1]!.isEnded).toBe(false);
    answer(1, "b");
    expect(await next).toBe("b!");
  });

  it("and cannot be begun again is told of for every ask", async () => {
    const client = createPlanClient<string, string>(() => {
      throw new Error("no workers here");
    });
    await expect(client.about(PLAN, "a")).rejects.toThrow("no workers here");
    await expect(client.ask("b")).rejects.toThrow("no workers here");
  });
});

describe("a client that is ended", () => {
  it("puts aside what is asked about a plan, and answers what it is asked after", async () => {
    const { client, workers, kindsOf, answer } = desk();
    const [a, b] = ["a", "b"].map((ask) => client.about(PLAN, ask));
    client.end();
    expect([await a, await b]).toEqual([null, null]);
    expect(workers[0]!.isEnded).toBe(true);
    const again = client.about(PLAN, "c");
    expect(kindsOf(1)).toBe("kit project job");
    answer(1, "c");
    expect(await again).toBe("c!");
  });
});

describe("the worker's side", () => {
  it("answers about the project sent last, breaks the job alone, and knows no plan before one was sent", async () => {
    const told: FromPlanWorker<string>[] = [];
    const answer = createAnswerer<string, string>(
      (plan, ask) => `${ask}: ${sentPlan(plan).project.name}`,
      (each) => told.push(each),
    );
    await answer({ kind: "job", job: 1, ask: "a" });
    await answer({ kind: "kit", kit: PLAN.kit });
    for (const name of ["Heronry", "Otter Row"])
      await answer({ kind: "project", project: { ...PLAN.project, name } });
    await answer({ kind: "job", job: 2, ask: "b" });
    expect(told).toEqual([
      { kind: "broken", job: 1, reason: "Error: no project was sent" },
      { kind: "done", job: 2, answer: "b: Otter Row" },
    ]);
  });
});
