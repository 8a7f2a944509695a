// Keeps a document after every step: one write at a time, always of the newest, begun in the same turn of the page.
//
//   step 1 ▶ write 1 ……… done ▶ write 3 ……… done
//   step 2, step 3 ▲ meanwhile: one write for both

import type { PlanDocument } from "../../plan/document.ts";
import { createStore, type Store } from "../state/store.ts";
import { faultOf, type StorageFault } from "./database.ts";

export type SaveState =
  | { readonly status: "saved" }
  | { readonly status: "saving" }
  | { readonly status: "failed"; readonly fault: StorageFault };

/** Writes a document; null where that went well. */
export type WriteDocument = (document: PlanDocument) => Promise<StorageFault | null>;

export interface Autosave {
  readonly state: Store<SaveState>;
  /** Takes note of the document as it stands. The one already kept is no change. */
  readonly changed: (document: PlanDocument) => void;
  /** Takes a document as kept: it was just read, or written by somebody else. */
  readonly rest: (document: PlanDocument) => void;
  /** Takes the newest document as refused, as if a write of it had been: it stays unsaved until somebody decides. */
  readonly refuse: (fault: StorageFault) => void;
  /** Writes the newest document even if it is kept already, or a fault stands in the way. */
  readonly force: () => void;
  /** Resolves when nothing is left to write, or writing has failed. */
  readonly settled: () => Promise<SaveState>;
}

/**
 * Makes an autosave at rest on `kept`. After a failure the next step tries again, unless the fault is one that trying
 * cannot mend: somebody else's work in the way, or the project deleted.
 *
 * @param soon - begins the write; the end of the running task by default, so that all that one event does is one write
 */
export function createAutosave(
  write: WriteDocument,
  kept: PlanDocument,
  soon: (run: () => void) => void = queueMicrotask,
): Autosave {
  const state = createStore<SaveState>({ status: "saved" });
  let saved: PlanDocument | null = kept;
  let newest = kept;
  let running: Promise<void> | null = null;
  let rests = 0;

  const set = (next: SaveState) => {
    state.set((now) => (now.status === next.status && now.status !== "failed" ? now : next));
  };
  const run = async () => {
    while (newest !== saved) {
      set({ status: "saving" });
      const writing = newest;
      const before = rests;
      // A write that breaks down in a way nobody thought of is a failure, too, and not one that hangs for ever.
      const fault = await write(writing).catch(faultOf);
      // Another document was taken as kept meanwhile: what became of the old one does not matter any more.
      if (rests !== before) continue;
      if (fault !== null) {
        set({ status: "failed", fault });
        return;
      }
      saved = writing;
    }
    set({ status: "saved" });
  };
  const begin = () => {
    if (running !== null || newest === saved) return;
    set({ status: "saving" });
    running = new Promise<void>((resolve) => soon(resolve)).then(run).finally(() => {
      running = null;
    });
  };

  return {
    state,
    changed: (document) => {
      newest = document;
      if (!isStuck(state.get())) begin();
    },
    rest: (document) => {
      rests += 1;
      saved = document;
      newest = document;
      set({ status: "saved" });
    },
    refuse: (fault) => set({ status: "failed", fault }),
    force: () => {
      saved = null;
      begin();
    },
    settled: async () => {
      while (running !== null) await running;
      return state.get();
    },
  };
}

function isStuck(state: SaveState): boolean {
  return state.status === "failed" && (state.fault.kind === "conflict" || state.fault.kind === "gone");
}
