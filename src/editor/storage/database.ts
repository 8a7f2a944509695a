// The browser's own store: one record of facts for each project, its text, and the pictures under its units apart, so
// that a step in a plan with a picture of megabytes writes the text alone.
//
//   projects  id ▶ name, revision, when         texts  id ▶ revision, text         pictures  id, place ▶ image

import { type DBSchema, type IDBPDatabase, openDB } from "idb";

/** Facts of a project, read for the list without its text. */
export interface ProjectRecord {
  readonly id: string;
  readonly name: string;
  /** Rises by one with every write; a writer that expects another one is refused. */
  readonly revision: number;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  readonly openedAt: number;
}

export interface TextRecord {
  readonly id: string;
  readonly revision: number;
  /** The project file; each picture kept apart is replaced by its mark. */
  readonly text: string;
  /** Places of the pictures kept apart. */
  readonly pictures: readonly string[];
}

export interface PictureRecord {
  readonly id: string;
  readonly place: string;
  readonly image: string;
}

interface Schema extends DBSchema {
  projects: { key: string; value: ProjectRecord };
  texts: { key: string; value: TextRecord };
  pictures: { key: [string, string]; value: PictureRecord };
}

export type ProjectDatabase = IDBPDatabase<Schema>;

/** Why something could not be kept or read. */
export type StorageFault =
  /** The browser's room for this page is used up. */
  | { readonly kind: "full" }
  /** The browser keeps nothing for this page: a private window, or storage is switched off. */
  | { readonly kind: "unavailable"; readonly reason: string }
  /** The store was written by a later version of the program. */
  | { readonly kind: "newer" }
  /** Somebody else has written since: `revision` is theirs. */
  | { readonly kind: "conflict"; readonly revision: number }
  /** The project was deleted meanwhile. */
  | { readonly kind: "gone" }
  | { readonly kind: "failed"; readonly reason: string };

export type OpenedDatabase =
  | { readonly status: "open"; readonly database: ProjectDatabase }
  | { readonly status: "failed"; readonly fault: StorageFault };

export const DATABASE_NAME = "panelwright";
const DATABASE_VERSION = 1;

/**
 * Opens the store and makes it where there is none.
 *
 * @param onClosed - called when the browser takes the store away, or a later version of the program wants it
 */
export async function openDatabase(
  onClosed: (fault: StorageFault) => void,
  name: string = DATABASE_NAME,
): Promise<OpenedDatabase> {
  try {
    const database = await openDB<Schema>(name, DATABASE_VERSION, {
      upgrade: (made) => {
        made.createObjectStore("projects", { keyPath: "id" });
        made.createObjectStore("texts", { keyPath: "id" });
        made.createObjectStore("pictures", { keyPath: ["id", "place"] });
      },
      blocking: () => {
        // A tab with a later version waits for this one to let go.
        database.close();
        onClosed({ kind: "newer" });
      },
      terminated: () => onClosed({ kind: "failed", reason: "the browser closed the store" }),
    });
    return { status: "open", database };
  } catch (reason) {
    const isNewer = nameOf(reason) === "VersionError";
    return {
      status: "failed",
      fault: isNewer ? { kind: "newer" } : { kind: "unavailable", reason: String(reason) },
    };
  }
}

/** What a failed transaction means. */
export function faultOf(reason: unknown): StorageFault {
  if (nameOf(reason) === "QuotaExceededError") return { kind: "full" };
  return { kind: "failed", reason: String(reason) };
}

function nameOf(reason: unknown): string {
  return reason instanceof Error || reason instanceof DOMException ? reason.name : "";
}
