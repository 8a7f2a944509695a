// The projects kept in the browser: list, open, make, save, delete. Each is one transaction; a save compares the
// revision it was made from with the one that stands, and refuses to write over another's work.

import { formatIssue } from "../../json/issue.ts";
import type { Project } from "../../plan/project.ts";
import { readProject } from "../../plan/read.ts";
import { faultOf, type ProjectDatabase, type ProjectRecord, type StorageFault } from "./database.ts";
import { type Pictures, putBack, takeOut } from "./pictures.ts";

/** A project of the list. */
export interface StoredProject {
  readonly id: string;
  readonly name: string;
  readonly savedAt: number;
}

export type OpenedProject =
  | {
      readonly status: "open";
      readonly project: Project;
      readonly revision: number;
      /** What is stored apart already, so that it need not be written again. */
      readonly pictures: Pictures;
    }
  | { readonly status: "missing" }
  /** `text`: what is there, to be saved to a file as it is. */
  | {
      readonly status: "damaged";
      readonly name: string;
      readonly faults: readonly string[];
      readonly text: string;
    }
  | { readonly status: "failed"; readonly fault: StorageFault };

export interface Save {
  readonly id: string;
  readonly project: Project;
  /** The revision the project was made from; 0 makes a record where there is none. */
  readonly expected: number;
  readonly pictures: Pictures;
  /** Milliseconds since 1970. */
  readonly at: number;
}

export type Saved =
  | { readonly status: "saved"; readonly revision: number; readonly pictures: Pictures }
  | { readonly status: "failed"; readonly fault: StorageFault };

const ALL = ["projects", "texts", "pictures"] as const;

/** The projects kept, the last opened first. A record whose facts are damaged is listed under its id. */
export async function listProjects(database: ProjectDatabase): Promise<readonly StoredProject[]> {
  const [records, ids] = await Promise.all([database.getAll("projects"), database.getAllKeys("texts")]);
  const known = new Map(records.map((record) => [record.id, record]));
  const all = [...new Set([...known.keys(), ...ids])].map((id) => ({ id, record: known.get(id) }));
  return all
    .map(({ id, record }) => ({
      id,
      name: textOr(record?.name, ""),
      savedAt: numberOr(record?.savedAt, 0),
      openedAt: numberOr(record?.openedAt, 0),
    }))
    .sort((a, b) => b.openedAt - a.openedAt || (a.id < b.id ? -1 : 1))
    .map(({ id, name, savedAt }) => ({ id, name, savedAt }));
}

/** Reads a project whatever state its record is in. */
export async function openProject(database: ProjectDatabase, id: string): Promise<OpenedProject> {
  try {
    const tx = database.transaction(ALL, "readonly");
    const [record, stored, images] = await Promise.all([
      tx.objectStore("projects").get(id),
      tx.objectStore("texts").get(id),
      tx.objectStore("pictures").getAll(ofProject(id)),
    ]);
    if (record === undefined && stored === undefined) return { status: "missing" };
    const name = textOr(record?.name, "");
    const text: unknown = stored?.text;
    if (typeof text !== "string") {
      return damaged(
        name,
        ["the text of the project is missing from its record"],
        plainly({ record, stored }),
      );
    }
    const pictures = new Map(
      images
        .filter(({ image }) => typeof image === "string")
        .map(({ place, image }) => [String(place), image]),
    );
    const whole = putBack({ text, pictures });
    const read = readProject(whole);
    if (read.status === "invalid") return damaged(name, read.issues.map(formatIssue), whole);
    return {
      status: "open",
      project: read.project,
      revision: numberOr(record?.revision, numberOr(stored?.revision, 0)),
      pictures,
    };
  } catch (reason) {
    return { status: "failed", fault: faultOf(reason) };
  }
}

function damaged(name: string, faults: readonly string[], text: string): OpenedProject {
  return { status: "damaged", name, faults, text };
}

// Whatever is left of a record, as text that can be looked into.
function plainly(value: unknown): string {
  try {
    return JSON.stringify(value, null, 2) ?? "";
  } catch {
    return "";
  }
}

/** Writes a project over the revision it was made from. Once it answers "saved", the browser has it on its disk. */
export async function saveProject(database: ProjectDatabase, save: Save): Promise<Saved> {
  try {
    const { text, pictures } = takeOut(save.project);
    const { id, expected, at } = save;
    const tx = database.transaction(ALL, "readwrite", { durability: "strict" });
    // Heard in any case: an aborted transaction must not be a failure nobody waits for.
    const done = tx.done.then(
      () => null,
      (reason: unknown) => reason ?? new Error("the browser gave the transaction up"),
    );
    try {
      const record = await tx.objectStore("projects").get(id);
      const fault = refusal(record, expected);
      if (fault !== null) return { status: "failed", fault };
      const revision = expected + 1;
      const facts = { id, name: save.project.name, revision, savedAt: at };
      quietly(tx.objectStore("projects").put({ ...facts, openedAt: numberOr(record?.openedAt, at) }));
      quietly(tx.objectStore("texts").put({ id, revision, text, pictures: [...pictures.keys()] }));
      const images = tx.objectStore("pictures");
      for (const [place, image] of changed(save.pictures, pictures))
        quietly(images.put({ id, place, image }));
      for (const place of save.pictures.keys()) if (!pictures.has(place)) quietly(images.delete([id, place]));
      const failure = await done;
      if (failure !== null) return { status: "failed", fault: faultOf(failure) };
      return { status: "saved", revision, pictures };
    } catch (reason) {
      // The transaction knows better than the request it took down with it.
      const failure = tx.error ?? (await abandoned(tx, done)) ?? reason;
      return { status: "failed", fault: faultOf(failure) };
    }
  } catch (reason) {
    return { status: "failed", fault: faultOf(reason) };
  }
}

// A request that fails takes its transaction with it, which says so once for all.
function quietly(request: Promise<unknown>): void {
  request.catch(() => {});
}

async function abandoned(tx: { readonly abort: () => void }, done: Promise<unknown>): Promise<unknown> {
  try {
    tx.abort();
  } catch {
    // Aborted already.
  }
  const failure = await done;
  return failure instanceof DOMException && failure.name === "AbortError" ? null : failure;
}

function refusal(record: ProjectRecord | undefined, expected: number): StorageFault | null {
  if (record === undefined) return expected === 0 ? null : { kind: "gone" };
  const revision = numberOr(record.revision, 0);
  return revision === expected ? null : { kind: "conflict", revision };
}

function changed(before: Pictures, after: Pictures): readonly (readonly [string, string])[] {
  return [...after].filter(([place, image]) => before.get(place) !== image);
}

/** Notes that a project was opened, so that it is the first of the list. */
export async function noteOpened(database: ProjectDatabase, id: string, at: number): Promise<void> {
  const tx = database.transaction("projects", "readwrite");
  const record = await tx.store.get(id);
  if (record !== undefined) await tx.store.put({ ...record, openedAt: at });
  await tx.done;
}

/** Takes a project out of the store for good. */
export async function deleteProject(database: ProjectDatabase, id: string): Promise<void> {
  const tx = database.transaction(ALL, "readwrite");
  await Promise.all([
    tx.objectStore("projects").delete(id),
    tx.objectStore("texts").delete(id),
    tx.objectStore("pictures").delete(ofProject(id)),
    tx.done,
  ]);
}

// A list sorts after every text.
function ofProject(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id], [id, []]);
}

function textOr(value: unknown, fallback: string): string {
  return typeof value === "string" ? value : fallback;
}

function numberOr(value: unknown, fallback: number): number {
  return typeof value === "number" && Number.isFinite(value) ? value : fallback;
}
