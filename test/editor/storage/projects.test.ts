// The store of projects: what is written is read back, nothing is written over unseen, and a damaged record gives out
// what is left of it.

import { afterEach, describe, expect, it, vi } from "vitest";
import { openDatabase, type ProjectDatabase } from "../../../src/editor/storage/database.ts";
import { putBack, takeOut } from "../../../src/editor/storage/pictures.ts";
import {
  deleteProject,
  listProjects,
  noteOpened,
  openProject,
  type Save,
  saveProject,
} from "../../../src/editor/storage/projects.ts";
import type { Project } from "../../../src/plan/project.ts";
import { readProject } from "../../../src/plan/read.ts";
import { writeProject } from "../../../src/plan/write.ts";
import { freshName, openStore, sample } from "./fakeDesk.ts";

const none = new Map<string, string>();
const image = (letter: string, length = 5000) => `data:image/png;base64,${letter.repeat(length)}`;
const withPicture = (picture: string): Project => ({
  ...sample,
  units: sample.units.map((unit) => ({ ...unit, underlay: { name: "plan.png", image: picture } })),
});
const saveOf = (change: Partial<Save>): Save => ({
  id: "p",
  project: sample,
  expected: 0,
  pictures: none,
  at: 7,
  ...change,
});

afterEach(() => {
  vi.restoreAllMocks();
});

describe("saving", () => {
  it("makes a record, rises by one with each write, and is read back equal", async () => {
    const store = await openStore(freshName());
    expect(await saveProject(store, saveOf({}))).toMatchObject({ status: "saved", revision: 1 });
    const changed = { ...sample, name: "Second" };
    expect(await saveProject(store, saveOf({ project: changed, expected: 1 }))).toMatchObject({
      revision: 2,
    });
    const opened = await openProject(store, "p");
    expect(opened).toMatchObject({ status: "open", revision: 2 });
    expect(opened.status === "open" && opened.project).toEqual(
      (readProject(writeProject(changed)) as { readonly project: Project }).project,
    );
  });

  it.each([
    { why: "a later one stands", expected: 1, fault: { kind: "conflict", revision: 2 } },
    { why: "an earlier one stands", expected: 5, fault: { kind: "conflict", revision: 2 } },
    {
      why: "one stands where none was expected",
      expected: 0,
      fault: { kind: "conflict", revision: 2 },
    },
  ])("is refused, and the record left alone, where $why", async ({ expected, fault }) => {
    const store = await openStore(freshName());
    await saveProject(store, saveOf({}));
    await saveProject(store, saveOf({ project: { ...sample, name: "Theirs" }, expected: 1 }));
    const mine = saveOf({ project: { ...sample, name: "Mine" }, expected });
    expect(await saveProject(store, mine)).toEqual({ status: "failed", fault });
    expect(await openProject(store, "p")).toMatchObject({ revision: 2, project: { name: "Theirs" } });
  });

  it("lets one of two win that set out from the same revision at once", async () => {
    const name = freshName();
    const [a, b] = [await openStore(name), await openStore(name)];
    await saveProject(a, saveOf({}));
    const both = await Promise.all([
      saveProject(a, saveOf({ project: { ...sample, name: "A" }, expected: 1 })),
      saveProject(b, saveOf({ project: { ...sample, name: "B" }, expected: 1 })),
    ]);
    expect(both.map(({ status }) => status)).toEqual(["saved", "failed"]);
    expect(await openProject(b, "p")).toMatchObject({ revision: 2, project: { name: "A" } });
  });

  it("of a project that was deleted is refused", async () => {
    const store = await openStore(freshName());
    await saveProject(store, saveOf({}));
    await deleteProject(store, "p");
    expect(await saveProject(store, saveOf({ expected: 1 }))).toEqual({
      status: "failed",
      fault: { kind: "gone" },
    });
    expect(await openProject(store, "p")).toEqual({ status: "missing" });
  });

  it("says that the room is used up, and keeps the last record whole", async () => {
    const store = await openStore(freshName());
    await saveProject(store, saveOf({}));
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(function (this: IDBObjectStore, ...rest) {
      if (this.name === "texts") throw new DOMException("no room", "QuotaExceededError");
      return put.apply(this, rest);
    });
    const mine = saveOf({ project: { ...sample, name: "Mine" }, expected: 1 });
    expect(await saveProject(store, mine)).toEqual({ status: "failed", fault: { kind: "full" } });
    vi.restoreAllMocks();
    expect(await openProject(store, "p")).toMatchObject({ revision: 1, project: { name: "Sample" } });
    expect(await saveProject(store, mine)).toMatchObject({ status: "saved", revision: 2 });
  });

  it("says that a closed store cannot be written", async () => {
    const store = await openStore(freshName());
    store.close();
    expect(await saveProject(store, saveOf({}))).toMatchObject({
      status: "failed",
      fault: { kind: "failed" },
    });
  });
});

describe("the pictures under units", () => {
  it("come back in their place, and the text is stored without them", async () => {
    const store = await openStore(freshName());
    const project = withPicture(image("A"));
    await saveProject(store, saveOf({ project }));
    expect((await store.get("texts", "p"))?.text).not.toContain("AAAA");
    const opened = await openProject(store, "p");
    expect(opened.status === "open" && opened.project.units[0]?.underlay?.image).toBe(image("A"));
  });

  it("are written when they change, not with every step, and go with the last that shows them", async () => {
    const store = await openStore(freshName());
    const written: string[] = [];
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(function (this: IDBObjectStore, ...rest) {
      written.push(this.name);
      return put.apply(this, rest);
    });
    let pictures: ReadonlyMap<string, string> = none;
    const steps = [image("A"), image("A"), image("B"), "short"];
    for (const [expected, picture] of steps.entries()) {
      const saved = await saveProject(store, saveOf({ project: withPicture(picture), expected, pictures }));
      pictures = saved.status === "saved" ? saved.pictures : none;
    }
    expect(written.filter((name) => name === "pictures")).toHaveLength(2);
    expect(await store.count("pictures")).toBe(0);
    const opened = await openProject(store, "p");
    expect(opened.status === "open" && opened.project.units[0]?.underlay?.image).toBe("short");
  });

  it.each([
    { why: "a picture", project: withPicture(image("A")), apart: 1 },
    { why: "a short one", project: withPicture("data:,"), apart: 0 },
    { why: "none", project: sample, apart: 0 },
    {
      why: "a name that says a mark",
      project: { ...withPicture(image("A")), name: "stored-picture:0" },
      apart: 0,
    },
    { why: "marks of its own making", project: withPicture(`"\\$&$1${"x".repeat(5000)}`), apart: 1 },
  ])("leave a text that is whole again when they are put back: $why", ({ project, apart }) => {
    const stored = takeOut(project);
    expect(stored.pictures.size).toBe(apart);
    expect(putBack(stored)).toBe(writeProject(project));
  });
});

describe("the list", () => {
  it("has the last opened first, and nothing of what was deleted", async () => {
    const store = await openStore(freshName());
    for (const [at, id] of ["a", "b", "c"].entries()) {
      await saveProject(store, saveOf({ id, project: withPicture(image(id)), at: 10 + at }));
    }
    await noteOpened(store, "a", 20);
    await noteOpened(store, "never there", 30);
    expect((await listProjects(store)).map(({ id }) => id)).toEqual(["a", "c", "b"]);
    await deleteProject(store, "c");
    expect((await listProjects(store)).map(({ id }) => id)).toEqual(["a", "b"]);
    expect(await store.count("pictures")).toBe(2);
    expect(await openProject(store, "a")).toMatchObject({ status: "open" });
  });
});

describe("a damaged record", () => {
  const damage = async (change: (store: ProjectDatabase) => Promise<unknown>) => {
    const store = await openStore(freshName());
    await saveProject(store, saveOf({ project: withPicture(image("A")) }));
    await change(store);
    return { store, opened: await openProject(store, "p") };
  };
  const texts = async (store: ProjectDatabase, change: object) => {
    const record = await store.get("texts", "p");
    await store.put("texts", { ...record, ...change } as never);
  };

  it("whose text is cut off says where, and gives out the text with its picture", async () => {
    const { opened } = await damage(async (store) => {
      const { text } = (await store.get("texts", "p")) ?? { text: "" };
      await texts(store, { text: text.slice(0, -10) });
    });
    expect(opened).toMatchObject({ status: "damaged", name: "Sample" });
    expect(opened.status === "damaged" && opened.faults.join()).toMatch(/expected/);
    expect(opened.status === "damaged" && opened.text).toContain(image("A"));
  });

  it.each([
    { why: "has no text", change: { text: undefined } },
    { why: "has a number for text", change: { text: 12 } },
    { why: "has a list for text", change: { text: [1, 2] } },
  ])("that $why says so and gives out what is there", async ({ change }) => {
    const { opened } = await damage((store) => texts(store, change));
    expect(opened.status === "damaged" && opened.faults).toHaveLength(1);
    expect(opened.status === "damaged" && opened.text).toContain('"name": "Sample"');
  });

  it("whose text is gone altogether is damaged, not missing", async () => {
    const { opened } = await damage((store) => store.delete("texts", "p"));
    expect(opened.status).toBe("damaged");
  });

  it("whose picture is gone opens, with a mark that no reader takes for a picture", async () => {
    const { opened } = await damage((store) => store.delete("pictures", ["p", "0"]));
    expect(opened.status === "open" && opened.project.units[0]?.underlay?.image).toBe("stored-picture:0");
  });

  it("whose facts are gone or nonsense opens and is listed", async () => {
    const gone = await damage((store) => store.delete("projects", "p"));
    expect(gone.opened).toMatchObject({ status: "open", revision: 1 });
    expect(await listProjects(gone.store)).toEqual([{ id: "p", name: "", savedAt: 0 }]);
    const nonsense = await damage((store) =>
      store.put("projects", { id: "p", name: 3, revision: "x" } as never),
    );
    expect(nonsense.opened).toMatchObject({ status: "open", revision: 1 });
    expect(await listProjects(nonsense.store)).toEqual([{ id: "p", name: "", savedAt: 0 }]);
  });
});

describe("a store that does not open", () => {
  it("says so where the browser keeps nothing", async () => {
    vi.spyOn(indexedDB, "open").mockImplementation(() => {
      throw new DOMException("storage is off", "SecurityError");
    });
    expect(await openDatabase(() => {}, freshName())).toEqual({
      status: "failed",
      fault: { kind: "unavailable", reason: expect.stringContaining("storage is off") },
    });
  });

  it("says so where a later version of the program has written it", async () => {
    const name = freshName();
    await new Promise((resolve) => {
      const request = indexedDB.open(name, 99);
      request.onsuccess = () => {
        request.result.close();
        resolve(null);
      };
    });
    expect(await openDatabase(() => {}, name)).toEqual({ status: "failed", fault: { kind: "newer" } });
  });

  it("gives way to a later version and says so", async () => {
    const name = freshName();
    const faults: string[] = [];
    await openDatabase(({ kind }) => faults.push(kind), name);
    await new Promise((resolve) => {
      indexedDB.open(name, 99).onsuccess = resolve;
    });
    expect(faults).toEqual(["newer"]);
  });
});
