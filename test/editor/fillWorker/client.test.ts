// The fill in a worker, with a worker of the test's own in place of the browser's.

import { describe, expect, it } from "vitest";
import { createFillClient, type FillAnswer, type FillClient } from "../../../src/editor/fillWorker/client.ts";
import { fillBeside } from "../../../src/editor/fillWorker/fillBeside.ts";
import { createAnswerer, type FromWorker, type ToWorker } from "../../../src/editor/fillWorker/protocol.ts";
import type { FillAsk } from "../../../src/editor/live/liveFill.ts";
import type { PortEvents } from "../../../src/editor/workers/port.ts";
import { fillUnit } from "../../../src/fill/fillUnit.ts";
import { loadUnion } from "../../../src/geom/union.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import { twoRooms } from "../../plan/editFixture.ts";

const union = await loadUnion();
const kit = demoKit;
const ask: FillAsk = {
  unit: twoRooms(),
  storey: { clearHeight: 2400, slab: 100 },
  kit,
  prefix: "A",
  fillers: "corner",
};
const named = (name: string): FillAsk => ({ ...ask, unit: { ...ask.unit, name } });
const plain = fillUnit({ ...ask, union });

interface FakeWorker {
  readonly events: PortEvents<FromWorker>;
  readonly heard: ToWorker[];
  isEnded: boolean;
}

interface Desk {
  readonly client: FillClient;
  readonly workers: FakeWorker[];
  readonly answers: { readonly name: string; readonly answer: FillAnswer }[];
  readonly fill: (name: string, revision: number) => void;
}

function desk(): Desk {
  const workers: FakeWorker[] = [];
  const answers: Desk["answers"] = [];
  const client = createFillClient((events) => {
    const worker: FakeWorker = { events, heard: [], isEnded: false };
    workers.push(worker);
    return {
      // Sent messages are copies, as in a browser.
      send: (message) => worker.heard.push(structuredClone(message)),
      end: () => {
        worker.isEnded = true;
      },
    };
  });
  const fill = (name: string, revision: number) => {
    void client.fill(named(name), revision).then((answer) => answers.push({ name, answer }));
  };
  return { client, workers, answers, fill };
}

const turn = () => new Promise((resolve) => setTimeout(resolve, 0));
const jobsOf = ({ heard }: FakeWorker) => heard.filter((message) => message.kind === "job");
const namesOf = (worker: FakeWorker) => jobsOf(worker).map((message) => message.ask.unit.name);

/** The worker answers the last job it was given. */
async function work(worker: FakeWorker | undefined): Promise<void> {
  const job = worker === undefined ? undefined : jobsOf(worker).at(-1)?.job;
  if (worker === undefined || job === undefined) throw new Error("there is no job");
  worker.events.onAnswer({ kind: "filled", job, filled: { outline: plain.outline, fill: plain.fill } });
  await turn();
}

const said = ({ answers }: Desk) =>
  answers.map(({ name, answer }) =>
    answer.status === "filled"
      ? `${name} r${answer.revision}${answer.isCurrent ? "" : " late"}`
      : `${name} ${answer.status}`,
  );

describe("one worker", () => {
  it("is started by the first ask and kept for all others", async () => {
    const at = desk();
    expect(at.workers).toHaveLength(0);
    for (const [k, name] of ["a", "b", "c"].entries()) {
      at.fill(name, k);
      await work(at.workers[0]);
    }
    expect(at.workers).toHaveLength(1);
    expect(said(at)).toEqual(["a r0", "b r1", "c r2"]);
  });

  it("is sent a kit once, and another kit before its first job", async () => {
    const at = desk();
    at.fill("a", 0);
    await work(at.workers[0]);
    at.fill("b", 1);
    await work(at.workers[0]);
    void at.client.fill({ ...ask, kit: { ...kit, name: "own" } }, 2);
    const heard = at.workers[0]?.heard ?? [];
    expect(heard.map((message) => `${message.kind} ${message.kit}`)).toEqual([
      "kit 1",
      "job 1",
      "job 1",
      "kit 2",
      "job 2",
    ]);
    expect(
      heard.flatMap((message) => (message.kind === "job" ? Object.keys(message.ask) : [])),
    ).not.toContain("kit");
  });

  it("is not sent the picture under a unit", () => {
    const at = desk();
    void at.client.fill({ ...ask, unit: { ...ask.unit, underlay: { image: "x".repeat(1000) } } }, 0);
    expect(JSON.stringify(jobsOf(at.workers[0]!))).not.toContain("xxxx");
  });
});

describe("a newer ask", () => {
  it("takes the place of the one that waits; the one in hand is answered as late", async () => {
    const at = desk();
    for (const [k, name] of ["a", "b", "c", "d"].entries()) at.fill(name, k);
    expect(namesOf(at.workers[0]!)).toEqual(["a"]);
    await turn();
    expect(said(at)).toEqual(["b put-aside", "c put-aside"]);
    await work(at.workers[0]);
    expect(namesOf(at.workers[0]!)).toEqual(["a", "d"]);
    await work(at.workers[0]);
    expect(said(at)).toEqual(["b put-aside", "c put-aside", "a r0 late", "d r3"]);
  });

  it("is not answered by a job that is over", async () => {
    const at = desk();
    at.fill("a", 0);
    await work(at.workers[0]);
    at.fill("b", 1);
    at.workers[0]?.events.onAnswer({
      kind: "filled",
      job: 1,
      filled: { outline: plain.outline, fill: plain.fill },
    });
    await turn();
    expect(said(at)).toEqual(["a r0"]);
  });
});

describe("cancelling", () => {
  it("ends the worker at once and puts both asks aside; what it says last is not heard; the next ask starts another", async () => {
    const at = desk();
    at.fill("a", 0);
    at.fill("b", 1);
    at.client.cancel();
    await turn();
    expect(at.workers[0]?.isEnded).toBe(true);
    expect(said(at)).toEqual(["a put-aside", "b put-aside"]);
    at.fill("c", 2);
    expect(at.workers).toHaveLength(2);
    expect(at.workers[1]?.heard.map(({ kind }) => kind)).toEqual(["kit", "job"]);
    await work(at.workers[0]);
    expect(said(at)).toEqual(["a put-aside", "b put-aside"]);
    await work(at.workers[1]);
    expect(said(at).at(-1)).toBe("c r2");
  });

  it("leaves a worker that has nothing to do alone", async () => {
    const at = desk();
    at.fill("a", 0);
    await work(at.workers[0]);
    at.client.cancel();
    expect(at.workers[0]?.isEnded).toBe(false);
  });
});

describe("a failure", () => {
  it("of one fill is said and leaves the worker at work", async () => {
    const at = desk();
    at.fill("a", 0);
    at.fill("b", 1);
    const broken: FromWorker = { kind: "broken", job: 1, reason: "RangeError: no" };
    at.workers[0]?.events.onAnswer(broken);
    await turn();
    await work(at.workers[0]);
    expect(said(at)).toEqual(["a broken", "b r1"]);
    expect(at.workers).toHaveLength(1);
  });

  it("of the worker is said to both asks, and another is tried for the next", async () => {
    const at = desk();
    at.fill("a", 0);
    at.fill("b", 1);
    at.workers[0]?.events.onFailure("not found");
    await turn();
    expect(said(at)).toEqual(["a no-worker", "b no-worker"]);
    at.fill("c", 2);
    await work(at.workers[1]);
    expect(said(at).at(-1)).toBe("c r2");
  });

  it("to start one is said", async () => {
    const client = createFillClient(() => {
      throw new Error("forbidden");
    });
    expect(await client.fill(ask, 0)).toEqual({ status: "no-worker", reason: "Error: forbidden" });
  });
});

describe("the answer of the worker", () => {
  const { kit: _, ...rest } = ask;

  it("is the fill itself, also after it was copied on its way", () => {
    const answer = createAnswerer(union);
    expect(answer(structuredClone<ToWorker>({ kind: "kit", kit: 1, value: kit }))).toBeNull();
    const filled = answer(structuredClone<ToWorker>({ kind: "job", job: 5, kit: 1, ask: rest }));
    expect(structuredClone(filled)).toEqual({
      kind: "filled",
      job: 5,
      filled: { outline: plain.outline, fill: plain.fill },
    });
  });

  it("says that it broke down where the kit was never sent, and where the fill throws", () => {
    const job: ToWorker = { kind: "job", job: 5, kit: 1, ask: rest };
    expect(createAnswerer(union)(job)).toMatchObject({ kind: "broken", job: 5 });
    const answer = createAnswerer(() => {
      throw new RangeError("no union");
    });
    answer({ kind: "kit", kit: 1, value: kit });
    expect(answer(job)).toEqual({ kind: "broken", job: 5, reason: "RangeError: no union" });
  });
});

describe("the answers as the live fill takes them", () => {
  const filled = { outline: plain.outline, fill: plain.fill };
  const inPage = { outline: plain.outline, fill: { ...plain.fill, unit: "in the page" } };
  const beside = (answer: FillAnswer) =>
    fillBeside(
      { fill: async () => answer, cancel: () => {} },
      async () => inPage,
      async () => {},
    )(ask);

  it("are the fill, nothing, or the fill of the page where there is no worker", async () => {
    expect(await beside({ status: "filled", filled, revision: 1, isCurrent: false })).toBe(filled);
    expect(await beside({ status: "put-aside" })).toBeNull();
    expect(await beside({ status: "no-worker", reason: "none" })).toBe(inPage);
  });

  it("fill nothing in the page for a hand that has moved on, only for the one that rests", async () => {
    const filledHere: number[] = [];
    let wake = () => {};
    const resting = new Promise<void>((done) => {
      wake = done;
    });
    const noWorker: FillAnswer = { status: "no-worker", reason: "none" };
    const fill = fillBeside(
      { fill: async () => noWorker, cancel: () => {} },
      async (asked) => {
        filledHere.push(asked.storey.clearHeight);
        return inPage;
      },
      () => resting,
    );
    const storeys = [2400, 2500, 2600].map((clearHeight) => ({ ...ask.storey, clearHeight }));
    const answers = storeys.map((storey) => fill({ ...ask, storey }));
    wake();
    expect(await Promise.all(answers)).toEqual([null, null, inPage]);
    expect(filledHere).toEqual([2600]);
  });

  it("are a rejection where the fill broke down", async () => {
    await expect(beside({ status: "broken", reason: "RangeError: no" })).rejects.toThrow("RangeError: no");
  });
});
