// Several tabs on one project: one writes, the others read along, and the pen changes hands without a moment in which
// two hold it or nobody does.

import { describe, expect, it } from "vitest";
import { type Seat, type SeatEvents, takeSeat } from "../../../src/editor/storage/tabs.ts";
import { type FakeBrowser, fakeBrowser, settle } from "./fakeTabs.ts";

interface Sitting {
  readonly seat: Seat;
  readonly log: string[];
}

async function sit(browser: FakeBrowser, tab: string, events: Partial<SeatEvents> = {}): Promise<Sitting> {
  const log: string[] = [];
  const seat = await takeSeat("p", browser.host(tab), {
    beforeWriting: async () => {
      log.push("reads before writing");
    },
    beforeLeaving: async () => {
      log.push("writes before leaving");
    },
    onSaved: () => log.push("hears of a save"),
    ...events,
  });
  seat.state.subscribe(() => log.push(seat.state.get().role));
  await settle();
  return { seat, log };
}

const roles = (...all: readonly Sitting[]) => all.map(({ seat }) => seat.state.get().role);
const others = (...all: readonly Sitting[]) => all.map(({ seat }) => seat.state.get().others);

describe("a project in one tab", () => {
  it("is written by it, after reading what is there", async () => {
    const a = await sit(fakeBrowser(), "a");
    expect(roles(a)).toEqual(["writing"]);
    expect(others(a)).toEqual([0]);
    expect(a.log).toEqual(["reads before writing"]);
  });

  it("does not meet the tab of another project", async () => {
    const browser = fakeBrowser();
    const a = await sit(browser, "a");
    const other = await takeSeat("q", browser.host("b"), {
      beforeWriting: async () => {},
      beforeLeaving: async () => {},
      onSaved: () => {},
    });
    await settle();
    expect(other.state.get()).toEqual({ role: "writing", others: 0 });
    expect(others(a)).toEqual([0]);
  });
});

describe("a project in several tabs", () => {
  it("is written by the first alone, and each is told of the others", async () => {
    const browser = fakeBrowser();
    const all = [await sit(browser, "a"), await sit(browser, "b"), await sit(browser, "c")];
    expect(roles(...all)).toEqual(["writing", "reading", "reading"]);
    expect(others(...all)).toEqual([2, 2, 2]);
  });

  it("tells the others of a save, and not the one who saved", async () => {
    const browser = fakeBrowser();
    const [a, b] = [await sit(browser, "a"), await sit(browser, "b")];
    a.seat.tellSaved();
    await settle();
    expect(b.log).toContain("hears of a save");
    expect(a.log).not.toContain("hears of a save");
  });

  it.each([
    ["leaves", (_: FakeBrowser, a: Sitting) => a.seat.leave()],
    ["is killed", (browser: FakeBrowser) => browser.kill("a")],
  ])("passes to the next in line when the writer %s", async (_, end) => {
    const browser = fakeBrowser();
    const [a, b, c] = [await sit(browser, "a"), await sit(browser, "b"), await sit(browser, "c")];
    end(browser, a);
    await settle();
    expect(roles(b, c)).toEqual(["writing", "reading"]);
    expect(others(b, c)).toEqual([1, 1]);
    expect(b.log.filter((line) => line !== "reading")).toEqual(["reads before writing", "writing"]);
  });
});

describe("taking over", () => {
  it("waits until the writer has written, then reads, then writes", async () => {
    const browser = fakeBrowser();
    const order: string[] = [];
    const a = await sit(browser, "a", {
      beforeLeaving: async () => {
        await settle(3);
        order.push("a has written");
      },
    });
    const b = await sit(browser, "b", {
      beforeWriting: async () => {
        order.push(`b reads while a is ${a.seat.state.get().role}`);
      },
    });
    await b.seat.takeOver();
    expect(roles(a, b)).toEqual(["reading", "writing"]);
    expect(order).toEqual(["a has written", "b reads while a is reading"]);
    await settle();
    expect(roles(a, b)).toEqual(["reading", "writing"]);
    await a.seat.takeOver();
    expect(roles(a, b)).toEqual(["writing", "reading"]);
  });

  it("does not wait for ever for a writer that sleeps", async () => {
    const browser = fakeBrowser();
    const [a, b] = [await sit(browser, "a"), await sit(browser, "b")];
    browser.sleep("a");
    await b.seat.takeOver();
    await settle();
    expect(roles(a, b)).toEqual(["reading", "writing"]);
  });

  it("goes past those that wait in line", async () => {
    const browser = fakeBrowser();
    const [a, b, c] = [await sit(browser, "a"), await sit(browser, "b"), await sit(browser, "c")];
    await c.seat.takeOver();
    await settle();
    expect(roles(a, b, c)).toEqual(["reading", "reading", "writing"]);
    c.seat.leave();
    await settle();
    expect(roles(a, b).filter((role) => role === "writing")).toHaveLength(1);
  });

  it("gives the pen back to the writer when the one who asked has gone", async () => {
    const browser = fakeBrowser();
    const a = await sit(browser, "a");
    const ghost = browser.host("ghost").openChannel("panelwright-project-p", () => {});
    ghost.post({ kind: "hand-over", from: "ghost" });
    await settle(60);
    expect(a.log).toEqual(["reads before writing", "reading", "writes before leaving", "writing"]);
    expect(roles(a)).toEqual(["writing"]);
  });

  it("ends with one writer where two ask at once", async () => {
    const browser = fakeBrowser();
    const [a, b, c] = [await sit(browser, "a"), await sit(browser, "b"), await sit(browser, "c")];
    await Promise.all([b.seat.takeOver(), c.seat.takeOver()]);
    await settle(60);
    expect(roles(a, b, c).filter((role) => role === "writing")).toHaveLength(1);
  });

  it("from a tab that is still reading leaves that one a reader", async () => {
    const browser = fakeBrowser();
    let go: () => void = () => {};
    const slow = new Promise<void>((resolve) => {
      go = resolve;
    });
    const sitting = sit(browser, "a", { beforeWriting: () => slow });
    await settle();
    const c = await sit(browser, "c");
    await c.seat.takeOver();
    go();
    const a = await sitting;
    await settle();
    expect(roles(a, c)).toEqual(["reading", "writing"]);
  });

  it("changes nothing for the writer itself", async () => {
    const browser = fakeBrowser();
    const a = await sit(browser, "a");
    await a.seat.takeOver();
    expect(browser.messages).toEqual(["a here"]);
  });
});

describe("a browser without locks", () => {
  it("lets every tab write, and still tells each of the other", async () => {
    const browser = fakeBrowser();
    const without = (tab: string) => ({ ...browser.host(tab), locks: null });
    const quiet = { beforeWriting: async () => {}, beforeLeaving: async () => {}, onSaved: () => {} };
    const a = await takeSeat("p", without("a"), quiet);
    const b = await takeSeat("p", without("b"), quiet);
    await settle();
    expect([a.state.get(), b.state.get()]).toEqual([
      { role: "writing", others: 1 },
      { role: "writing", others: 1 },
    ]);
    b.leave();
    await settle();
    expect(a.state.get().others).toBe(0);
  });
});
