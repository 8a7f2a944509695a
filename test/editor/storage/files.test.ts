// Opening and saving files, with a browser whose dialogs work, refuse, are closed by the person, or are missing.

import { describe, expect, it } from "vitest";
import {
  createFilePort,
  type FileHandle,
  type FileHost,
  fileNameOf,
  PROJECT_FILE,
  readFile,
} from "../../../src/editor/storage/files.ts";

interface Disk extends FileHost {
  readonly log: string[];
  text: string;
}

const abort = () => new DOMException("cancelled", "AbortError");

interface Refusal {
  readonly fails: unknown;
  /** How long after it was asked for, ms. */
  readonly after: number;
  /** Whether the window lost the focus to it. */
  readonly showed: boolean;
}

function disk(dialog: "works" | "none" | Refusal): Disk {
  let time = 0;
  const log: string[] = [];
  const handle: FileHandle = {
    name: "plan.json",
    getFile: async () => new File([made.text], "plan.json"),
    createWritable: async () => ({
      write: async (text) => {
        made.text = text;
      },
      close: async () => {
        log.push("closed");
      },
    }),
  };
  const ask = async <T>(what: string, answer: T): Promise<T> => {
    log.push(what);
    if (dialog === "works" || dialog === "none") return answer;
    time += dialog.after;
    throw dialog.fails;
  };
  const made: Disk = {
    log,
    text: "on disk",
    showOpen: dialog === "none" ? null : () => ask("open dialog", [handle]),
    showSave: dialog === "none" ? null : () => ask("save dialog", handle),
    chooseByInput: async (accept) => {
      log.push(`input ${accept}`);
      return new File(["by input"], "other.json");
    },
    download: (name, text) => {
      log.push(`download ${name} ${text}`);
    },
    watchFocus: () => () => typeof dialog === "object" && dialog.showed,
    clock: () => time,
  };
  return made;
}

const toSave = { kind: PROJECT_FILE, name: "plan.json", text: "mine" };

describe("a browser with file dialogs", () => {
  it("opens by them", async () => {
    const at = disk("works");
    expect(await createFilePort(at).open(PROJECT_FILE)).toEqual({
      status: "opened",
      name: "plan.json",
      text: "on disk",
    });
  });

  it("saves where the person says", async () => {
    const at = disk("works");
    expect(await createFilePort(at).save(toSave)).toMatchObject({ status: "saved", name: "plan.json" });
    expect(at.text).toBe("mine");
  });

  it.each([
    { why: "closes the dialog", refusal: { fails: abort(), after: 40, showed: true } },
    { why: "takes long over it", refusal: { fails: abort(), after: 4000, showed: false } },
  ])("leaves all as it is where the person $why", async ({ refusal }) => {
    const at = disk(refusal);
    const port = createFilePort(at);
    expect(await port.open(PROJECT_FILE)).toEqual({ status: "cancelled" });
    expect(await port.save(toSave)).toEqual({ status: "cancelled" });
    expect(at.log).toEqual(["open dialog", "save dialog"]);
  });
});

describe("a browser whose dialogs do not work", () => {
  it.each([
    { why: "never shows them", dialog: { fails: abort(), after: 300, showed: false } },
    {
      why: "forbids them",
      dialog: { fails: new DOMException("no", "SecurityError"), after: 0, showed: false },
    },
    {
      why: "fails in another way, however late",
      dialog: { fails: new TypeError("no"), after: 9000, showed: true },
    },
  ])("that $why opens by an input and saves by a download, and is not asked again", async ({ dialog }) => {
    const at = disk(dialog);
    const port = createFilePort(at);
    for (let k = 0; k < 2; k++) {
      expect(await port.open(PROJECT_FILE)).toMatchObject({
        status: "opened",
        name: "other.json",
        text: "by input",
      });
      expect(await port.save(toSave)).toEqual({ status: "saved", name: "plan.json" });
    }
    expect(at.log).toEqual([
      "open dialog",
      "input .json,application/json",
      "save dialog",
      "download plan.json mine",
      "input .json,application/json",
      "download plan.json mine",
    ]);
  });

  it("that has none is not asked at all", async () => {
    const at = disk("none");
    expect(await createFilePort(at).save(toSave)).toEqual({ status: "saved", name: "plan.json" });
    expect(at.log).toEqual(["download plan.json mine"]);
  });

  it("takes no file chosen as cancelled", async () => {
    const port = createFilePort({ ...disk("none"), chooseByInput: async () => null });
    expect(await port.open(PROJECT_FILE)).toEqual({ status: "cancelled" });
  });
});

describe("a file that fails", () => {
  it("to be written is said", async () => {
    const handle: FileHandle = {
      name: "plan.json",
      getFile: async () => new File([], "plan.json"),
      createWritable: async () => {
        throw new DOMException("the disk is full", "QuotaExceededError");
      },
    };
    const port = createFilePort({ ...disk("works"), showSave: async () => handle });
    expect(await port.save(toSave)).toMatchObject({
      status: "failed",
      reason: expect.stringContaining("the disk is full"),
    });
  });

  it("by its size is not read", async () => {
    const file = { name: "huge.json", size: 3e8, text: async () => "…" } as File;
    expect(await readFile(file)).toMatchObject({
      status: "failed",
      reason: expect.stringContaining("256 MB"),
    });
  });
});

describe("the name of a file", () => {
  it.each([
    { project: "Heron, east side", name: "Heron, east side.json", why: "a plain name stays" },
    { project: "A/B\\C:D*E?F", name: "A B C D E F.json", why: "marks of paths go" },
    { project: "  .hidden.  ", name: "hidden.json", why: "no dots or spaces at the ends" },
    { project: "", name: "project.json", why: "a project without a name" },
    { project: "../..", name: "project.json", why: "nothing but marks" },
    { project: "con", name: "project.json", why: "a word that one system keeps for itself" },
    { project: "Casa nº 4 – São João", name: "Casa nº 4 – São João.json", why: "letters of other languages" },
    { project: "a\u202egnp", name: "a gnp.json", why: "a mark that turns the line round" },
    { project: "🏠".repeat(100), name: `${"🏠".repeat(80)}.json`, why: "cut between letters" },
  ])("$why", ({ project, name }) => {
    expect(fileNameOf(project, ".json")).toBe(name);
  });
});
