// The editor and the desk together: every step is kept, a tab that reads changes nothing, what others write comes in.

import { describe, expect, it } from "vitest";
import { projectAmong } from "../../src/editor/desk/dropProject.ts";
import { keepProject } from "../../src/editor/desk/keepProject.ts";
import {
  begin,
  duplicate,
  emptyProject,
  openStored,
  removeStored,
  saveAsFile,
  takeFile,
} from "../../src/editor/desk/projectFiles.ts";
import { changeScreen } from "../../src/editor/live/actions.ts";
import { createLiveFill } from "../../src/editor/live/liveFill.ts";
import { createWorkbench, type Workbench } from "../../src/editor/live/workbench.ts";
import { runCommand } from "../../src/editor/state/commands.ts";
import { showUnit, takeStep, unitInHand, walk } from "../../src/editor/state/editorState.ts";
import { openDesk } from "../../src/editor/storage/desk.ts";
import type { FilePort, FileToSave } from "../../src/editor/storage/files.ts";
import { words } from "../../src/editor/words/say.ts";
import { readProject } from "../../src/plan/read.ts";
import { writeProject } from "../../src/plan/write.ts";
import { openSample } from "./scene/sampleScene.ts";
import { hostOf, type Machine, machine, sample } from "./storage/fakeDesk.ts";
import { settle } from "./storage/fakeTabs.ts";

const { live } = openSample("one-room");

async function page(on: Machine, name: string) {
  const { desk, document } = await openDesk(hostOf(on, name), sample);
  const fills = createLiveFill({
    fillNow: () => ({ outline: live.outline, drafts: [], stretches: [], fill: live.fill }),
    fillBeside: null,
    clock: () => 0,
    quick: 8,
  });
  const bench = createWorkbench(document, fills);
  changeScreen(bench, { size: { width: 1000, height: 700 } });
  keepProject(bench, desk);
  const saved: FileToSave[] = [];
  const files: FilePort = {
    open: async () => ({ status: "cancelled" }),
    save: async (file) => {
      saved.push(file);
      return { status: "saved", name: file.name };
    },
  };
  const asked: (() => void)[] = [];
  const beforeGivingUp = (goOn: () => void) => void asked.push(goOn);
  return { bench, desk, saved, asked, on: { bench, desk, files, beforeGivingUp } };
}

function rename({ editor }: Workbench, name: string): void {
  editor.set((state) =>
    takeStep(state, words("step.rename-project"), [{ kind: "change-project", set: { name } }], []),
  );
}

const nameIn = ({ editor }: Workbench) => editor.get().history.doc.name;
const messageIn = ({ editor }: Workbench) => editor.get().session.message?.key;

describe("a step", () => {
  it("is kept, and so are undo and redo", async () => {
    const { bench, desk } = await page(machine(), "a");
    expect(bench.saved.get()).toBeNull();
    const names: (string | undefined)[] = [];
    for (const change of [
      () => rename(bench, "One"),
      () => rename(bench, "Two"),
      () => bench.editor.set((state) => walk(state, "undo")),
      () => bench.editor.set((state) => walk(state, "redo")),
    ]) {
      change();
      await desk.settled();
      names.push((await desk.list())[0]?.name);
    }
    expect(names).toEqual(["One", "Two", "One", "Two"]);
    expect(bench.saved.get()).toBe("saved");
  });

  it("that only selects or looks about is no step", async () => {
    const { bench, desk } = await page(machine(), "a");
    bench.editor.set((state) => runCommand(state, "command.select-all") ?? state);
    bench.editor.set((state) => showUnit(state, unitInHand(state).id));
    await settle();
    expect(await desk.list()).toEqual([]);
  });
});

describe("a tab that reads", () => {
  it("shows what the writer does, and takes no step of its own", async () => {
    const on = machine();
    const a = await page(on, "a");
    rename(a.bench, "One");
    await a.desk.settled();
    const b = await page(on, "b");
    expect(nameIn(b.bench)).toBe("One");
    rename(b.bench, "Mine");
    expect(nameIn(b.bench)).toBe("One");
    expect(messageIn(b.bench)).toBe("desk.reading");
    expect(b.bench.editor.get().history.past).toEqual([]);
    rename(a.bench, "Two");
    await settle();
    expect(nameIn(b.bench)).toBe("Two");
    await b.desk.takeOver();
    rename(b.bench, "Three");
    await settle();
    expect([nameIn(a.bench), nameIn(b.bench)]).toEqual(["Three", "Three"]);
  });
});

describe("another project", () => {
  it("begins with a history of its own and is compared with nothing", async () => {
    const { bench, desk, on } = await page(machine(), "a");
    rename(bench, "One");
    await desk.settled();
    await begin(on, emptyProject(bench.editor.get().history.doc, "Empty"));
    expect(nameIn(bench)).toBe("Empty");
    expect(bench.editor.get().history.past).toEqual([]);
    expect(bench.steps().before).toBeNull();
    expect(Object.keys(unitInHand(bench.editor.get()).walls)).toEqual([]);
    await openStored(on, "id-1", "One");
    expect(nameIn(bench)).toBe("One");
  });

  it("that is empty can be written and read again", async () => {
    const { bench } = await page(machine(), "a");
    const read = readProject(writeProject(emptyProject(bench.editor.get().history.doc, "Empty")));
    expect(read.status === "ok" && read.project.name).toBe("Empty");
  });

  it("is asked about first where the last changes are unsaved", async () => {
    const on = machine();
    const a = await page(on, "a");
    rename(a.bench, "One");
    await a.desk.settled();
    const b = await page(on, "b");
    await begin(b.on, { ...sample, name: "Other" });
    await b.desk.remove("id-1");
    rename(a.bench, "Lost");
    await a.desk.settled();
    expect(a.bench.saved.get()).toBe("unsaved");
    await begin(a.on, { ...sample, name: "Next" });
    await openStored(a.on, "id-2", "Other");
    await settle();
    expect(nameIn(a.bench)).toBe("Lost");
    expect(a.asked).toHaveLength(2);
    a.asked[0]?.();
    await settle();
    expect(nameIn(a.bench)).toBe("Next");
  });
});

describe("files", () => {
  it("hold the project on the screen", async () => {
    const { bench, saved, on } = await page(machine(), "a");
    rename(bench, "A/B");
    await saveAsFile(on);
    expect(saved[0]?.name).toBe("A B.json");
    const read = readProject(saved[0]?.text ?? "");
    expect(read.status === "ok" && read.project.name).toBe("A/B");
    expect(messageIn(bench)).toBe("file.saved");
  });

  it.each([
    { why: "is none", text: "hello", message: "file.not-a-project" },
    { why: "is of another kind", text: '{"format": "panelwright-kit"}', message: "file.not-a-project" },
  ])("that $why leave the project as it is and say so", async ({ text, message }) => {
    const { bench, desk, on } = await page(machine(), "a");
    rename(bench, "Mine");
    await takeFile(on, { status: "opened", name: "x.json", text });
    expect([nameIn(bench), messageIn(bench)]).toEqual(["Mine", message]);
    await desk.settled();
    expect(await desk.list()).toHaveLength(1);
  });

  it("that are projects open beside the one in hand", async () => {
    const { bench, desk, on } = await page(machine(), "a");
    rename(bench, "Mine");
    await takeFile(on, {
      status: "opened",
      name: "x.json",
      text: writeProject({ ...sample, name: "Theirs" }),
    });
    expect(nameIn(bench)).toBe("Theirs");
    expect((await desk.list()).map(({ name }) => name)).toEqual(["Theirs", "Mine"]);
  });

  it.each([
    { why: "a project", names: ["plan.json"], taken: "plan.json" },
    { why: "one among others", names: ["plan.png", "Plan.JSON", "b.json"], taken: "Plan.JSON" },
    { why: "none", names: ["plan.json.png", "json"], taken: undefined },
  ])("that are dropped: $why", ({ names, taken }) => {
    expect(projectAmong(names.map((name) => new File(["{}"], name)))?.name).toBe(taken);
  });
});

describe("the list of projects", () => {
  it("gives a copy of the one in hand, which goes its own way", async () => {
    const { bench, desk, on } = await page(machine(), "a");
    rename(bench, "Mine");
    await duplicate(on, "Mine, copy");
    rename(bench, "Changed");
    await desk.settled();
    expect((await desk.list()).map(({ name }) => name)).toEqual(["Changed", "Mine"]);
  });

  it("gives a copy in a tab that only reads, where it can be changed", async () => {
    const machineOf = machine();
    const a = await page(machineOf, "a");
    rename(a.bench, "Mine");
    await a.desk.settled();
    const b = await page(machineOf, "b");
    await duplicate(b.on, `${"🏠".repeat(150)}`);
    expect(b.desk.state.get().seat.role).toBe("writing");
    rename(b.bench, "Of b");
    await settle();
    expect([nameIn(a.bench), nameIn(b.bench)]).toEqual(["Mine", "Of b"]);
  });

  it("says that a project was deleted meanwhile, and stays on the one in hand", async () => {
    const { bench, on } = await page(machine(), "a");
    rename(bench, "Mine");
    await openStored(on, "id-none", "Gone");
    expect(bench.editor.get().session.message).toMatchObject({
      key: "projects.missing",
      values: { name: "Gone" },
    });
    expect(nameIn(bench)).toBe("Mine");
  });

  it("says why a project could not be deleted", async () => {
    const { bench, desk, on } = await page(machine(), "a");
    rename(bench, "Mine");
    await desk.settled();
    const refused = {
      ...on,
      desk: { ...desk, remove: () => Promise.reject(new Error("the store is closed")) },
    };
    await removeStored(refused, "id-2", "Other");
    expect(messageIn(bench)).toBe("projects.not-deleted");
  });
});
