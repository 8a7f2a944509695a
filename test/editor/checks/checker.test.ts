// The checks as the page makes them against those of the core, and the page's way to whoever makes them.

import { describe, expect, it } from "vitest";
import { type Checked, createChecker, type Plan } from "../../../src/editor/checks/checker.ts";
import type { CheckList } from "../../../src/editor/checks/checkList.ts";
import { type CheckerEvents, createCheckClient } from "../../../src/editor/checks/client.ts";
import { createAnswerer, type FromChecker, type ToChecker } from "../../../src/editor/checks/protocol.ts";
import { loadUnion } from "../../../src/geom/union.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import { assessed } from "../../support/assessed.ts";
import { filled, sampleProject } from "../../support/samples.ts";

const union = await loadUnion();
const project = sampleProject("one-room");
const plan: Plan = { project, kit: demoKit };
const stated = { loads: project.loads, concrete: project.concrete };
const core = assessed({ project, fill: filled(project) });

function listOf(checked: Checked): CheckList {
  if (checked.status === "unread") throw new Error("unread");
  return checked.list;
}

describe("the checks of the page", () => {
  const checker = createChecker(union);
  const list = listOf(checker.make(plan, stated));

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
    const before = listOf(counting.make(plan, stated));
    const first = fills;
    const after = listOf(counting.make(plan, { ...stated, concrete: { density: 12.5 } }));
    expect(fills).toBe(first);
    const pressed = ({ rows }: CheckList) => rows.find(({ kind }) => kind === "panel-pressure")?.value ?? 0;
    expect(pressed(after)).toBeCloseTo(pressed(before) / 2, 9);
    expect(counting.detail(before.version, 0)).toBeNull();
    expect(counting.detail(after.version, 0)).not.toBeNull();
  });

  it("are none where loads or concrete cannot be read, and every mistake is told", () => {
    const answer = checker.make(plan, { loads: { continuity: 9 }, concrete: { density: -1, rate: 0 } });
    expect(answer.status === "unread" && answer.issues.map(({ path }) => path)).toEqual([
      "loads.continuity",
      "concrete.density",
      "concrete.rate",
    ]);
  });
});

/** A client whose checker answers when it is told to. */
function slowClient() {
  const sent: ToChecker[] = [];
  const answerer = createAnswerer(createChecker(union), (answer) => events?.onAnswer(answer));
  let events: CheckerEvents | null = null;
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
    answer: (answer: FromChecker) => events?.onAnswer(answer),
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
    expect(sent.map((message) => ("kind" in message ? message.kind : ""))).toEqual([
      "kit",
      "project",
      "make",
    ]);
    work();
    expect((await first)?.status).toBe("checked");
    expect(sent).toMatchObject([{ kind: "make", stated: { concrete: { density: 10 } } }]);
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
    expect(sent.map((message) => ("kind" in message ? message.kind : ""))).toEqual([
      "kit",
      "project",
      "make",
    ]);
    work();
    expect((await again)?.status).toBe("checked");
  });

  it("tells what broke down in a job, and passes over answers nobody waits for", async () => {
    const { client, sent, answer } = slowClient();
    const job = client.make(plan, stated);
    answer({ job: 99, kind: "broken", reason: "somebody else's" });
    const own = sent.find((message) => "job" in message);
    answer({ job: own !== undefined && "job" in own ? own.job : 0, kind: "broken", reason: "no fill" });
    await expect(job).rejects.toThrow("no fill");
  });
});
