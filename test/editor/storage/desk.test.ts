// The project in hand: kept from the first step, found again, one writer among tabs, nothing overwritten unseen.

import { describe, expect, it, vi } from "vitest";
import { openProject, saveProject } from "../../../src/editor/storage/projects.ts";
import { machine, openStore, openTab, sample, type Tab } from "./fakeDesk.ts";
import { settle } from "./fakeTabs.ts";

const named = (name: string) => ({ ...sample, name });
const shown = ({ desk, document }: Tab) => {
  const { seat, save } = desk.state.get();
  return `${document().name}: ${seat.role}, ${save.status}`;
};
const faultOf = ({ desk }: Tab) => {
  const { save } = desk.state.get();
  return save.status === "failed" ? save.fault.kind : null;
};

describe("a browser that has kept nothing yet", () => {
  it("opens the sample and keeps nothing until the first step", async () => {
    const on = machine();
    const tab = await openTab(on, "a");
    expect(shown(tab)).toBe("Sample: writing, saved");
    expect(tab.desk.state.get().project).toBeNull();
    expect(await tab.desk.list()).toEqual([]);
    expect(on.asked).toBe(0);

    tab.step("First");
    expect(await tab.desk.settled()).toEqual({ status: "saved" });
    expect(await tab.desk.list()).toMatchObject([{ id: "id-1", name: "First" }]);
    expect(tab.desk.state.get().project).toBe("id-1");
    expect(tab.address()).toBe("id-1");
  });

  it("is asked once to keep what is stored, after the first write", async () => {
    const on = machine();
    const tab = await openTab(on, "a");
    for (const name of ["1", "2", "3"]) {
      tab.step(name);
      await tab.desk.settled();
    }
    await settle();
    expect(on.asked).toBe(1);
    expect(tab.desk.state.get().persistence).toBe("kept");
  });
});

describe("a tab killed at any moment", () => {
  it("loses nothing that was said to be saved, and the last project opens again", async () => {
    const on = machine();
    const tab = await openTab(on, "a");
    for (const name of ["one", "two", "three"]) {
      tab.step(name);
      await tab.desk.settled();
    }
    on.browser.kill("a");
    expect(shown(await openTab(on, "b"))).toBe("three: writing, saved");
  });

  it("writes each step in the turn in which it was taken", async () => {
    const on = machine();
    const tab = await openTab(on, "a");
    tab.step("first");
    await tab.desk.settled();
    tab.step("last");
    // No turn is left to the tab; what was begun is the store's to end.
    await Promise.resolve();
    await Promise.resolve();
    const store = await openStore(on.name);
    await settle(5);
    expect(await openProject(store, "id-1")).toMatchObject({ project: { name: "last" } });
  });

  it("opens on the project of its address, else the last one opened", async () => {
    const on = machine();
    const a = await openTab(on, "a");
    a.step("Old");
    await a.desk.settled();
    await a.desk.create(named("New"));
    on.browser.kill("a");
    expect(shown(await openTab(on, "b", "id-1"))).toBe("Old: writing, saved");
    expect(shown(await openTab(on, "c", "never there"))).toBe("Old: reading, saved");
    expect(shown(await openTab(on, "d", "id-2"))).toBe("New: writing, saved");
  });
});

describe("several projects", () => {
  it("are made, opened and deleted; the one in hand is put away first", async () => {
    const tab = await openTab(machine(), "a");
    tab.step("A");
    expect(await tab.desk.create(named("B"))).toBe("open");
    expect(shown(tab)).toBe("B: writing, saved");
    tab.step("B2");
    expect(await tab.desk.open("id-1")).toBe("open");
    expect(shown(tab)).toBe("A: writing, saved");
    expect((await tab.desk.list()).map(({ name }) => name)).toEqual(["A", "B2"]);
    expect(await tab.desk.open("no such")).toBe("missing");
    await tab.desk.remove("id-2");
    expect((await tab.desk.list()).map(({ name }) => name)).toEqual(["A"]);
    await expect(tab.desk.remove("id-1")).rejects.toThrow(RangeError);
  });

  it("are not mixed up by steps that follow each other at once", async () => {
    const tab = await openTab(machine(), "a");
    tab.step("A");
    const made = tab.desk.create(named("B"));
    await made;
    tab.step("B2");
    await tab.desk.settled();
    await tab.desk.open("id-1");
    expect((await tab.desk.list()).map(({ name }) => name)).toEqual(["A", "B2"]);
  });
});

describe("two tabs on one project", () => {
  const two = async () => {
    const on = machine();
    const a = await openTab(on, "a");
    a.step("A");
    await a.desk.settled();
    const b = await openTab(on, "b");
    await settle();
    return { on, a, b };
  };

  it("are told of each other; the second reads along and keeps nothing of its own", async () => {
    const { a, b } = await two();
    expect([shown(a), shown(b)]).toEqual(["A: writing, saved", "A: reading, saved"]);
    expect([a, b].map(({ desk }) => desk.state.get().seat.others)).toEqual([1, 1]);
    a.step("A2");
    await settle();
    expect(shown(b)).toBe("A2: reading, saved");
    b.step("B");
    await settle();
    expect((await a.desk.list()).map(({ name }) => name)).toEqual(["A2"]);
  });

  it("change places without losing a step", async () => {
    const { a, b } = await two();
    a.step("last of a");
    await b.desk.takeOver();
    expect([shown(a), shown(b)]).toEqual(["last of a: reading, saved", "last of a: writing, saved"]);
    b.step("of b");
    await settle();
    expect([shown(a), shown(b)]).toEqual(["of b: reading, saved", "of b: writing, saved"]);
    a.step("too late");
    await settle();
    expect((await b.desk.list()).map(({ name }) => name)).toEqual(["of b"]);
  });

  it("leave the one that stays as the writer", async () => {
    const { on, b } = await two();
    on.browser.kill("a");
    await settle();
    b.step("B");
    await b.desk.settled();
    expect(shown(b)).toBe("B: writing, saved");
  });

  it("pass on what the other one has not heard of", async () => {
    const { on, a, b } = await two();
    on.browser.sleep("b");
    a.step("unheard");
    await a.desk.settled();
    expect(shown(b)).toBe("A: reading, saved");
    on.browser.kill("a");
    await settle();
    expect(shown(b)).toBe("unheard: writing, saved");
  });

  it("go apart when one opens another project", async () => {
    const { a, b } = await two();
    await a.desk.create(named("Other"));
    await settle();
    expect([shown(a), shown(b)]).toEqual(["Other: writing, saved", "A: writing, saved"]);
    expect([a, b].map(({ desk }) => desk.state.get().seat.others)).toEqual([0, 0]);
  });
});

describe("where two write in spite of all", () => {
  // A browser without locks: only the revision in the record is left as a guard.
  const clash = async () => {
    const on = machine();
    const tabs = (tab: string) => ({ ...on.browser.host(tab), locks: null });
    const a = await openTab(on, "a", null, { tabs: tabs("a") });
    a.step("A");
    await a.desk.settled();
    const b = await openTab(on, "b", null, { tabs: tabs("b") });
    a.step("A2");
    await settle();
    b.step("B");
    await settle();
    return { a, b };
  };

  it("the later is refused and told; the earlier work stands", async () => {
    const { a, b } = await clash();
    expect([shown(a), shown(b)]).toEqual(["A2: writing, saved", "B: writing, failed"]);
    expect(faultOf(b)).toBe("conflict");
    b.step("B2");
    await settle();
    expect((await a.desk.list()).map(({ name }) => name)).toEqual(["A2"]);
  });

  it("the refused may be kept as a project of its own", async () => {
    const { b } = await clash();
    b.desk.keepAsNew();
    await b.desk.settled();
    expect(shown(b)).toBe("B: writing, saved");
    expect((await b.desk.list()).map(({ name }) => name).sort()).toEqual(["A2", "B"]);
    expect(b.address()).toBe("id-2");
  });

  it("or be given up for the other", async () => {
    const { b } = await clash();
    await b.desk.takeStored();
    expect(shown(b)).toBe("A2: writing, saved");
    b.step("B after A2");
    await b.desk.settled();
    expect((await b.desk.list()).map(({ name }) => name)).toEqual(["B after A2"]);
  });

  it("and a project is not put away while its last steps are unsaved, unless that is said", async () => {
    const { b } = await clash();
    expect(await b.desk.create(named("Other"))).toBe("unsaved");
    expect(await b.desk.open("id-1")).toBe("unsaved");
    expect(shown(b)).toBe("B: writing, failed");
    expect(await b.desk.open("id-1", true)).toBe("open");
    expect(shown(b)).toBe("A2: writing, saved");
  });
});

describe("a project deleted in another tab", () => {
  it("is told at the next step and may be kept as a new one", async () => {
    const on = machine();
    const a = await openTab(on, "a");
    a.step("A");
    await a.desk.settled();
    const b = await openTab(on, "b");
    await b.desk.create(named("Other"));
    await b.desk.remove("id-1");
    a.step("A2");
    await settle();
    expect(faultOf(a)).toBe("gone");
    a.desk.keepAsNew();
    await a.desk.settled();
    expect((await a.desk.list()).map(({ name }) => name).sort()).toEqual(["A2", "Other"]);
  });
});

describe("a project that cannot be read", () => {
  const broken = async () => {
    const on = machine();
    const store = await openStore(on.name);
    await saveProject(store, {
      id: "id-bad",
      project: named("Bad"),
      expected: 0,
      pictures: new Map(),
      at: 1,
    });
    const record = await store.get("texts", "id-bad");
    await store.put("texts", { ...record, text: '{"half": ' } as never);
    return on;
  };

  it("is said when the page opens, with what is there, and is left as it is", async () => {
    const on = await broken();
    const tab = await openTab(on, "a");
    expect(shown(tab)).toBe("Sample: writing, saved");
    expect(tab.desk.state.get().damaged).toMatchObject({ name: "Bad", text: '{"half": ' });
    tab.desk.dismissDamaged();
    expect(tab.desk.state.get().damaged).toBeNull();
    tab.step("New");
    await tab.desk.settled();
    expect((await tab.desk.list()).map(({ name }) => name)).toEqual(["New", "Bad"]);
  });

  it("leaves the one in hand when it is chosen from the list", async () => {
    const tab = await openTab(await broken(), "a");
    tab.step("Mine");
    await tab.desk.settled();
    expect(await tab.desk.open("id-bad")).toBe("damaged");
    expect(shown(tab)).toBe("Mine: writing, saved");
  });
});

describe("a browser that keeps nothing", () => {
  const locked = () =>
    openTab(machine(), "a", null, {
      openDatabase: async () => ({
        status: "failed",
        fault: { kind: "unavailable", reason: "private window" },
      }),
    });

  it("says so from the beginning, goes on working, and never says saved after a step", async () => {
    const tab = await locked();
    expect(faultOf(tab)).toBe("unavailable");
    tab.step("A");
    await tab.desk.settled();
    expect(shown(tab)).toBe("A: writing, failed");
    expect(await tab.desk.list()).toEqual([]);
    expect(await tab.desk.open("x")).toBe("failed");
  });

  it("lets a file be opened in place of the untouched sample, and not silently in place of work", async () => {
    const tab = await locked();
    expect(await tab.desk.create(named("From a file"))).toBe("open");
    expect(shown(tab)).toBe("From a file: writing, failed");
    tab.step("Work");
    expect(await tab.desk.create(named("Another"))).toBe("unsaved");
    expect(await tab.desk.create(named("Another"), true)).toBe("open");
  });

  it("is told when the store is taken away in the middle", async () => {
    const on = machine();
    const tab = await openTab(on, "a");
    tab.step("A");
    await tab.desk.settled();
    await new Promise((resolve) => {
      indexedDB.open(on.name, 99).onsuccess = resolve;
    });
    expect(faultOf(tab)).toBe("newer");
    tab.step("B");
    await tab.desk.settled();
    expect(faultOf(tab)).toBe("newer");
  });
});

describe("room that is used up", () => {
  it("is said, and the next step is saved when there is room again", async () => {
    const tab = await openTab(machine(), "a");
    tab.step("A");
    await tab.desk.settled();
    const full = vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(() => {
      throw new DOMException("no room", "QuotaExceededError");
    });
    tab.step("B");
    await tab.desk.settled();
    expect(faultOf(tab)).toBe("full");
    full.mockRestore();
    tab.desk.retry();
    await tab.desk.settled();
    expect(shown(tab)).toBe("B: writing, saved");
    expect((await tab.desk.list()).map(({ name }) => name)).toEqual(["B"]);
  });
});
