// Work that could not be saved, when another tab takes the project over: it is neither lost nor written over unseen.

import { afterEach, describe, expect, it, vi } from "vitest";
import type { Desk } from "../../../src/editor/storage/desk.ts";
import { machine, openTab } from "./fakeDesk.ts";
import { settle } from "./fakeTabs.ts";

const faultOf = ({ desk }: { readonly desk: Desk }) => {
  const { save } = desk.state.get();
  return save.status === "failed" ? save.fault.kind : save.status;
};

afterEach(() => vi.restoreAllMocks());

// The writer's last step finds no room; then there is room again, and the other tab takes over.
async function handedOver() {
  const on = machine();
  const a = await openTab(on, "a");
  a.step("A");
  await a.desk.settled();
  const b = await openTab(on, "b");
  const full = vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(() => {
    throw new DOMException("no room", "QuotaExceededError");
  });
  a.step("unsaved work");
  await a.desk.settled();
  full.mockRestore();
  await b.desk.takeOver();
  await settle();
  return { a, b };
}

describe("unsaved work in a tab that hands the project over", () => {
  it("stays on its screen when the other tab writes, and may be kept as a project of its own", async () => {
    const { a, b } = await handedOver();
    b.step("of b");
    await settle();
    expect([a.document().name, faultOf(a)]).toEqual(["unsaved work", "conflict"]);
    a.desk.keepAsNew();
    await a.desk.settled();
    expect((await a.desk.list()).map(({ name }) => name).sort()).toEqual(["of b", "unsaved work"]);
  });

  it("or be given up", async () => {
    const { a, b } = await handedOver();
    b.step("of b");
    await settle();
    await a.desk.takeStored();
    expect([a.document().name, faultOf(a)]).toEqual(["of b", "saved"]);
  });

  it("is saved by trying again once the tab has taken the project back", async () => {
    const { a, b } = await handedOver();
    a.desk.retry();
    await settle();
    expect([a, b].map(({ desk }) => desk.state.get().seat.role)).toEqual(["writing", "reading"]);
    expect(faultOf(a)).toBe("saved");
    expect(b.document().name).toBe("unsaved work");
  });
});
