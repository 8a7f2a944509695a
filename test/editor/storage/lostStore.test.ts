// A store that is lost while the page is open, and had again by trying.

import { describe, expect, it } from "vitest";
import type { StorageFault } from "../../../src/editor/storage/database.ts";
import type { DeskHost } from "../../../src/editor/storage/desk.ts";
import { deleteProject } from "../../../src/editor/storage/projects.ts";
import { hostOf, machine, openStore, openTab } from "./fakeDesk.ts";

// A tab whose store the browser can take away.
async function losing() {
  const on = machine();
  let take = () => {};
  let isThere = true;
  const openDatabase: DeskHost["openDatabase"] = async (onClosed) => {
    if (!isThere) return { status: "failed", fault: { kind: "unavailable", reason: "no answer" } };
    const opened = await hostOf(on, "a").openDatabase(onClosed);
    if (opened.status === "open") {
      take = () => {
        opened.database.close();
        onClosed({ kind: "failed", reason: "the browser closed the store" });
      };
    }
    return opened;
  };
  const tab = await openTab(on, "a", null, { openDatabase });
  tab.step("A");
  await tab.desk.settled();
  take();
  const fault = (): StorageFault["kind"] | null => {
    const { save } = tab.desk.state.get();
    return save.status === "failed" ? save.fault.kind : null;
  };
  const tryAgain = async () => {
    await tab.desk.retry();
    await tab.desk.settled();
  };
  return { on, tab, fault, tryAgain, setThere: (there: boolean) => (isThere = there) };
}

describe("a store that was lost", () => {
  it("is opened anew by trying again, with the steps taken meanwhile", async () => {
    const { tab, fault, tryAgain } = await losing();
    tab.step("meanwhile");
    await tab.desk.settled();
    expect(fault()).toBe("failed");
    await tryAgain();
    expect(fault()).toBeNull();
    expect((await tab.desk.list()).map(({ name }) => name)).toEqual(["meanwhile"]);
  });

  it("that does not answer is said each time, until it does", async () => {
    const { tab, fault, tryAgain, setThere } = await losing();
    setThere(false);
    await tryAgain();
    expect(fault()).toBe("unavailable");
    setThere(true);
    await tryAgain();
    expect(fault()).toBeNull();
    expect((await tab.desk.list()).map(({ name }) => name)).toEqual(["A"]);
  });

  it("and has been cleared leaves what is on the screen to be kept as a new project", async () => {
    const { on, tab, fault, tryAgain } = await losing();
    await deleteProject(await openStore(on.name), "id-1");
    await tryAgain();
    expect(fault()).toBe("gone");
    tab.desk.keepAsNew();
    await tab.desk.settled();
    expect(fault()).toBeNull();
    expect((await tab.desk.list()).map(({ name }) => name)).toEqual(["A"]);
  });
});
