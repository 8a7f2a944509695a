// The checks as the page makes them against those of the core, and the page's way to whoever makes them.

import { describe, expect, it } from "vitest";
import { type Checked, createChecker } from "../../../src/editor/checks/checker.ts";
import type { CheckList } from "../../../src/editor/checks/checkList.ts";
import { createCheckClient } from "../../../src/editor/checks/client.ts";
import { type Answer, type Ask, checkAnswers } from "../../../src/editor/checks/protocol.ts";
import type { WorkPlan } from "../../../src/editor/over/workPlan.ts";
import {
  createAnswerer,
  type FromPlanWorker,
  type ToPlanWorker,
} from "../../../src/editor/workers/planProtocol.ts";
import type { PortEvents } from "../../../src/editor/workers/port.ts";
import { loadUnion } from "../../../src/geom/union.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import { assessed } from "../../support/assessed.ts";
import { filled, sampleProject } from "../../support/samples.ts";

const union = await loadUnion();
const project = sampleProject("one-room");
const plan: WorkPlan = { project, kit: demoKit };
const stated = { loads: project.loads, concrete: project.concrete };
const core = assessed({ project, fill: filled(project) });

function listOf(checked: Checked): CheckList {
  if (checked.status === "unread") throw new Error("unread");
  return checked.list;
}

describe("the checks of the page", () => {
  const checker = createChecker(union);
  const list = listOf(checker.make(plan, stated, 1));

  it("are those of the core, row by row, each whole when it is asked for", () => {
    expect(list.rows.length).toBe(core.checks.length);
    for (const [index, check] of core.checks.entries()) {
      const { inputs: _inputs, formula: _formula, source: _source, ...row } = check;
      expect(list.rows[index]).toMatchObject({ ...row, index });
      expect(checker.detail(list.version, index)?.check).toEqual(check);
    }
  });

  it("come with everything else that the core says", () => {
    const { checks: _checks, ...rest } = core;
    expect(list.document).toEqual(rest);
  });

  it("say of every check on a face on which walls it is", () => {
    const on = list.rows.filter(({ where }) => where.face !== undefined);
    expect(on.length).toBeGreaterThan(20);
    expect(on.filter(({ walls }) => walls === "")).toEqual([]);
    expect(list.rows.filter(({ where, walls }) => where.face === undefined && walls !== "")).toEqual([]);
  });

  it("follow the concrete without another fill, and no check outlives its list", () => {
    let fills = 0;
    const counting = createChecker((rings) => {
      fills += 1;
      return union(rings);
    });
    const before = listOf(counting.make(plan, stated, 1));
    const first = fills;
    const after = listOf(counting.make(plan, { ...stated, concrete: { density: 12.5 } }, 2));
    expect(fills).toBe(first);
    const pressed = ({ rows }: CheckList) => rows.find(({ kind }) => kind === "panel-pressure")?.value ?? 0;
    expect(pressed(after)).toBeCloseTo(pressed(before) / 2, 9);
    expect(counting.detail(before.version, 0)).toBeNull();
    expect(counting.detail(after.version, 0)).not.toBeNull();
  });

  it("are none where loads or concrete cannot be read, and every mistake is told", () => {
    const answer = checker.make(plan, { loads: { continuity: 9 }, concrete: { density: -1, rate: 0 } }, 2);
    expect(answer.status === "unread" && answer.issues.map(({ path }) => path)).toEqual([
      "loads.continuity",
      "concrete.density",
      "concrete.rate",
    ]);
  });
});

const kindsOf = (sent: readonly ToPlanWorker<Ask>[]) =>
  sent.map((message) => (message.kind === "job" ? message.ask.kind : message.kind));

/** A client whose checker answers when it is told to. */
function slowClient() {
  const sent: ToPlanWorker<Ask>[] = [];
  const answerer = createAnswerer(checkAnswers(createChecker(union)), (answer) => events?.onAnswer(answer));
  let events: PortEvents<FromPlanWorker<Answer>> | null = null;
  let ended = 0;
  const client = createCheckClient((given) => {
    events = given;
    const end = () => {
      ended += 1;
    };
    return { send: (message) => sent.push(message), end };
  });
  return {
    client,
    sent,
    work: () => {
      for (const message of sent.splice(0)) answerer(message);
    },
    break: (reason: string) => events?.onFailure(reason),
    answer: (answer: FromPlanWorker<Answer>) => events?.onAnswer(answer),
    ended: () => ended,
  };
}

describe("the page's side", () => {
  it("sends a plan once, and of several asks only the newest waits", async () => {
    const { client, sent, work } = slowClient();
    const first = client.make(plan, stated);
    const second = client.make(plan, { ...stated, concrete: { density: 20 } });
    const third = client.make(plan, { ...stated, concrete: { density: 10 } });
    expect(await second).toBeNull();
    expect(kindsOf(sent)).toEqual(["kit", "project", "make"]);
    work();
    expect((await first)?.status).toBe("checked");
    expect(sent).toMatchObject([{ ask: { kind: "make", stated: { concrete: { density: 10 } } } }]);
    work();
    const list = listOf((await third)!);
    expect(list.document.concrete.density).toBe(10);
    const detail = client.detail(list.version, 3);
    work();
    expect((await detail)?.check.id).toBe(list.rows[3]?.id);
  });

  it("begins another checker after one broke down, with kit and project sent anew", async () => {
    const { client, sent, work, break: breakDown, ended } = slowClient();
    const lost = client.make(plan, stated);
    breakDown("out of memory");
    await expect(lost).rejects.toThrow("out of memory");
    expect(ended()).toBe(1);
    sent.splice(0);
    const again = client.make(plan, stated);
    expect(kindsOf(sent)).toEqual(["kit", "project", "make"]);
    work();
    expect((await again)?.status).toBe("checked");
  });

  it("gives no check of the first list of another checker for one of the same place in an earlier list", async () => {
    const { client, work, break: breakDown } = slowClient();
    const first = client.make(plan, stated);
    work();
    const old = listOf((await first)!);
    breakDown("out of memory");
    const second = client.make(plan, { ...stated, concrete: { density: 12.5 } });
    const detail = client.detail(old.version, 0);
    work();
    expect(listOf((await second)!).version).not.toBe(old.version);
    expect(await detail).toBeNull();
  });

  it("tells what broke down in a job, and passes over answers nobody waits for", async () => {
    const { client, sent, answer } = slowClient();
    const job = client.make(plan, stated);
    answer({ job: 99, kind: "broken", reason: "somebody else's" });
    const own = sent.find((message) => message.kind === "job");
    answer({ job: own?.job ?? 0, kind: "broken", reason: "no fill" });
    await expect(job).rejects.toThrow("no fill");
  });
});
