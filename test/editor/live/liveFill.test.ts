// The live fill: worked out once for each state of a unit, in the page while that is quick, beside it when it is not.

import { describe, expect, it } from "vitest";
import { createLiveFill, type FillAsk, type LiveFill } from "../../../src/editor/live/liveFill.ts";
import { kitOf } from "../../../src/editor/live/workbench.ts";
import type { PlanDocument, UnitDocument } from "../../../src/plan/document.ts";
import { openSample } from "../scene/sampleScene.ts";

const sample = openSample("one-room");
const kit = kitOf(sample.document) ?? sample.live.kit;
const asState = (name: string): UnitDocument => ({ ...sample.unit, name });

interface Desk {
  readonly asks: FillAsk[];
  readonly beside: {
    readonly ask: FillAsk;
    readonly answer: (live: LiveFill | null) => void;
    readonly breakDown: () => void;
  }[];
  readonly fills: ReturnType<typeof createLiveFill>;
  woken: number;
}

// `cost`: how long a fill in the page takes by the clock of the test, ms.
function desk(cost: number, hasWorker = true): Desk {
  let time = 0;
  const asks: FillAsk[] = [];
  const beside: Desk["beside"] = [];
  const fills = createLiveFill({
    fillNow: (ask) => {
      asks.push(ask);
      time += cost;
      return {
        outline: sample.live.outline,
        drafts: [],
        stretches: [],
        fill: { ...sample.live.fill, unit: ask.unit.name },
      };
    },
    fillBeside: hasWorker
      ? (ask) =>
          new Promise((answer, reject) => {
            const answerLate = (live: LiveFill | null) => {
              time += cost;
              answer(live);
            };
            beside.push({ ask, answer: answerLate, breakDown: () => reject(new Error("broken")) });
          })
      : null,
    clock: () => time,
    quick: 8,
  });
  const made: Desk = { asks, beside, fills, woken: 0 };
  fills.subscribe(() => {
    made.woken += 1;
  });
  return made;
}

const view = ({ fills }: Desk, unit: UnitDocument, document: PlanDocument = sample.document) =>
  fills.inView(document, unit, kit);

describe("a quick unit", () => {
  it("is filled at once, and once for each state", () => {
    const at = desk(2);
    const [a, b] = [asState("a"), asState("b")];
    expect(view(at, a)).toMatchObject({ isStale: false, live: { fill: { unit: "a" } } });
    expect(view(at, b).live?.fill.unit).toBe("b");
    expect(view(at, a).live).toBe(view(at, a).live);
    expect(at.asks).toHaveLength(2);
  });

  it("has its walls at once and its soffits from beside the page, asked for once", async () => {
    const at = desk(2);
    const unit = asState("a");
    for (let k = 0; k < 3; k++) {
      expect(view(at, unit)).toMatchObject({ isStale: false, whole: null, live: { hasSoffits: false } });
    }
    expect(at.beside).toHaveLength(1);
    at.beside[0]?.answer({ ...sample.live, fill: { ...sample.live.fill, unit: "a, whole" } });
    await Promise.resolve();
    expect(at.woken).toBe(1);
    const seen = view(at, unit);
    expect(seen).toMatchObject({ isStale: false, live: { hasSoffits: true, fill: { unit: "a, whole" } } });
    expect(seen.whole).toBe(seen.live);
    expect(at.beside).toHaveLength(1);
  });

  it("keeps the last fill with soffits beside the walls that follow the hand", async () => {
    const at = desk(2);
    const [a, b] = [asState("a"), asState("b")];
    view(at, a);
    at.beside[0]?.answer({ ...sample.live, fill: { ...sample.live.fill, unit: "a, whole" } });
    await Promise.resolve();
    expect(view(at, b)).toMatchObject({
      live: { fill: { unit: "b" } },
      whole: { fill: { unit: "a, whole" } },
    });
  });

  it("wakes nobody for an ask that a newer one has put aside", async () => {
    const at = desk(2);
    view(at, asState("a"));
    view(at, asState("b"));
    at.beside[0]?.answer(null);
    await Promise.resolve();
    expect(at.woken).toBe(0);
    at.beside[1]?.answer(sample.live);
    await Promise.resolve();
    expect(at.woken).toBe(1);
  });

  it("keeps the drafts of its walls when the soffits have come", async () => {
    const at = desk(2);
    const unit = asState("a");
    view(at, unit);
    at.beside[0]?.answer(sample.live);
    await Promise.resolve();
    expect(at.fills.whole(sample.document, unit, kit, false)?.fill.unit).toBe("a");
    expect(at.asks).toHaveLength(1);
  });

  it("shows its walls where only the soffits break down, says so, and does not ask again", async () => {
    const at = desk(2);
    const unit = asState("a");
    view(at, unit);
    at.beside[0]?.breakDown();
    await new Promise((resolve) => setTimeout(resolve, 0));
    expect(view(at, unit)).toMatchObject({ isStale: false, isBroken: true, live: { hasSoffits: false } });
    expect(at.beside).toHaveLength(1);
  });

  it("has everything at once where nothing works beside the page", () => {
    const at = desk(2, false);
    expect(view(at, asState("a"))).toMatchObject({ live: { hasSoffits: true } });
  });

  it("is filled again for another storey or another place of fillers, not for another name of the project", () => {
    const at = desk(2);
    const unit = asState("a");
    view(at, unit);
    view(at, unit, { ...sample.document, name: "other" });
    expect(at.asks).toHaveLength(1);
    view(at, unit, { ...sample.document, storey: { clearHeight: 2600, slab: 100 } });
    expect(at.asks).toHaveLength(2);
    expect(at.asks[1]?.storey.clearHeight).toBe(2600);
    view(at, unit, { ...sample.document, fillers: "middle" });
    expect(at.asks).toHaveLength(3);
  });

  it("tells what it knows without filling", () => {
    const at = desk(2);
    const unit = asState("a");
    expect(at.fills.known(sample.document, unit, kit)).toBeNull();
    const { live } = view(at, unit);
    expect(at.fills.known(sample.document, unit, kit)).toBe(live);
    expect(at.asks).toHaveLength(1);
  });
});

describe("a fill that breaks down", () => {
  it("leaves the last one in view, says so, and is not tried again for that state", () => {
    let tries = 0;
    const fills = createLiveFill({
      fillNow: (ask) => {
        tries += 1;
        if (ask.unit.name === "bad") throw new Error("broken");
        return {
          outline: sample.live.outline,
          drafts: [],
          stretches: [],
          fill: { ...sample.live.fill, unit: ask.unit.name },
        };
      },
      fillBeside: null,
      clock: () => 0,
      quick: 8,
    });
    const [good, bad] = [asState("good"), asState("bad")];
    expect(fills.inView(sample.document, bad, kit)).toEqual({
      ...{ live: null, whole: null, isStale: true, isBroken: true },
    });
    fills.inView(sample.document, good, kit);
    for (let k = 0; k < 3; k++) {
      expect(fills.inView(sample.document, bad, kit)).toMatchObject({
        live: { fill: { unit: "good" } },
        isBroken: true,
      });
    }
    expect(fills.inView(sample.document, good, kit)).toMatchObject({ isStale: false, isBroken: false });
    expect(tries).toBe(2);
  });
});

describe("a slow unit", () => {
  // The first fill warms the page up and is not counted; the second is measured.
  const warm = (at: Desk) => {
    view(at, asState("a"));
    view(at, asState("b"));
    // Both have asked for their soffits: not what is tried here.
    at.beside.length = 0;
  };

  it("goes to the worker, and the last fill stays in view meanwhile", async () => {
    const at = desk(20);
    warm(at);
    const unit = asState("c");
    expect(view(at, unit)).toMatchObject({ isStale: true, live: { fill: { unit: "b" } } });
    expect(at.beside).toHaveLength(1);
    at.beside[0]?.answer({ ...sample.live, fill: { ...sample.live.fill, unit: "c" } });
    await Promise.resolve();
    expect(at.woken).toBe(1);
    expect(view(at, unit)).toMatchObject({ isStale: false, live: { fill: { unit: "c" } } });
    expect(at.asks).toHaveLength(2);
  });

  it("asks once for each state, however often it is looked at", () => {
    const at = desk(20);
    warm(at);
    const unit = asState("c");
    for (let k = 0; k < 5; k++) view(at, unit);
    expect(at.beside).toHaveLength(1);
  });

  it("keeps the answer for a state that has passed, and shows the newest", async () => {
    const at = desk(20);
    warm(at);
    const [c, d] = [asState("c"), asState("d")];
    view(at, c);
    view(at, d);
    at.beside[0]?.answer({ ...sample.live, fill: { ...sample.live.fill, unit: "c" } });
    await Promise.resolve();
    expect(view(at, d).isStale).toBe(true);
    at.beside[1]?.answer({ ...sample.live, fill: { ...sample.live.fill, unit: "d" } });
    await Promise.resolve();
    expect(view(at, d)).toMatchObject({ isStale: false, live: { fill: { unit: "d" } } });
    expect(view(at, c)).toMatchObject({ isStale: false, live: { fill: { unit: "c" } } });
  });

  it("asks again where an ask was put aside for a newer one", async () => {
    const at = desk(20);
    warm(at);
    const unit = asState("c");
    view(at, unit);
    at.beside[0]?.answer(null);
    await Promise.resolve();
    expect(at.woken).toBe(1);
    view(at, unit);
    expect(at.beside).toHaveLength(2);
  });

  it("says that the fill broke down in the worker, and does not ask again for that state", async () => {
    const at = desk(20);
    warm(at);
    const unit = asState("c");
    view(at, unit);
    at.beside[0]?.breakDown();
    await new Promise((resolve) => setTimeout(resolve, 0));
    expect(at.woken).toBe(1);
    expect(view(at, unit)).toMatchObject({ isBroken: true, live: { fill: { unit: "b" } } });
    expect(at.beside).toHaveLength(1);
  });

  it("is filled in the page where there is no worker, and where another unit comes into view", () => {
    const alone = desk(20, false);
    warm(alone);
    expect(view(alone, asState("c")).isStale).toBe(false);
    const at = desk(20);
    warm(at);
    expect(view(at, { ...asState("c"), id: "other" }).isStale).toBe(false);
  });
});
