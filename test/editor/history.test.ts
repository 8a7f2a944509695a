// Undo and redo: patches against a plain list of documents, and the store that holds the state.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  commit,
  type History,
  KEPT_STEPS,
  redo,
  startHistory,
  undo,
} from "../../src/editor/state/history.ts";
import { createStore } from "../../src/editor/state/store.ts";

interface Doc {
  readonly things: { readonly [id: string]: { readonly at: number } };
}
type Steps = History<Doc, string, string>;
const empty: Doc = { things: {} };

function put(history: Steps, id: string, at: number): Steps {
  return commit(history, `put ${id}`, "before", (draft) => {
    draft.things[id] = { at };
    return `after ${id}`;
  });
}

describe("history", () => {
  it("goes back and forth with the selection that belongs there", () => {
    const two = put(put(startHistory(empty), "a", 1), "b", 2);
    const back = undo(two);
    expect(back).toMatchObject({
      selection: "before",
      label: "put b",
      history: { doc: { things: { a: { at: 1 } } } },
    });
    const forth = back && redo(back.history);
    expect(forth).toMatchObject({ selection: "after b", label: "put b" });
    expect(forth?.history.doc).toEqual(two.doc);
  });

  it("has nothing to undo at the start and nothing to redo at the end", () => {
    const one = put(startHistory(empty), "a", 1);
    expect([undo(startHistory<Doc, string, string>(empty)), redo(one)]).toEqual([null, null]);
  });

  it("takes no step for an edit that changes nothing, and keeps redo", () => {
    const back = undo(put(startHistory(empty), "a", 1));
    const history = back?.history ?? startHistory<Doc, string, string>(empty);
    expect(commit(history, "nothing", "", () => "")).toBe(history);
    expect(history.future).toHaveLength(1);
  });

  it("throws away what a refused edit has written", () => {
    const history: Steps = startHistory(empty);
    const after = commit(history, "half", "", (draft) => {
      draft.things.a = { at: 1 };
      return null;
    });
    expect(after).toBe(history);
  });

  it("forgets redo when another step is taken", () => {
    const back = undo(put(startHistory(empty), "a", 1));
    const other = back && put(back.history, "b", 2);
    expect(other && redo(other)).toBeNull();
  });

  it("keeps small patches: one step on one of a thousand things is one patch", () => {
    const things = Object.fromEntries(Array.from({ length: 1000 }, (_, n) => [`t${n}`, { at: n }]));
    const after = commit<Doc, string, string>(startHistory({ things }), "", "", (draft) => {
      draft.things.t500 = { at: -1 };
      return "";
    });
    expect([after.past[0]?.redo.length, after.past[0]?.undo.length]).toEqual([1, 1]);
  });

  it("keeps at least 200 steps, and the newest when there are too many", () => {
    expect(KEPT_STEPS).toBeGreaterThanOrEqual(200);
    let history: Steps = startHistory(empty);
    for (let n = 0; n < KEPT_STEPS + 5; n++) history = put(history, "a", n);
    expect(history.past).toHaveLength(KEPT_STEPS);
    for (let n = 0; n < KEPT_STEPS; n++) history = undo(history)?.history ?? history;
    expect(history.doc.things.a?.at).toBe(4);
    expect(undo(history)).toBeNull();
  });

  it("agrees with a plain list of documents under any commands", () => {
    const command = fc.oneof(
      fc.record({ kind: fc.constant("put" as const), id: fc.constantFrom("a", "b", "c"), at: fc.nat(3) }),
      fc.record({ kind: fc.constant("drop" as const), id: fc.constantFrom("a", "b", "c") }),
      fc.constant({ kind: "undo" as const }),
      fc.constant({ kind: "redo" as const }),
    );
    fc.assert(
      fc.property(fc.array(command, { maxLength: 60 }), (commands) => {
        let history: Steps = startHistory(empty);
        let list: Doc[] = [empty];
        let here = 0;
        for (const entry of commands) {
          if (entry.kind === "undo") {
            history = undo(history)?.history ?? history;
            here = Math.max(0, here - 1);
          } else if (entry.kind === "redo") {
            history = redo(history)?.history ?? history;
            here = Math.min(list.length - 1, here + 1);
          } else {
            const things = { ...list[here]?.things };
            const had = JSON.stringify(things[entry.id]);
            if (entry.kind === "put") things[entry.id] = { at: entry.at };
            else delete things[entry.id];
            const changes = had !== JSON.stringify(things[entry.id]);
            history =
              entry.kind === "put" && changes
                ? put(history, entry.id, entry.at)
                : commit(history, "drop", "", (draft) => {
                    if (entry.kind === "drop") delete draft.things[entry.id];
                    return "";
                  });
            if (changes) {
              list = [...list.slice(0, here + 1), { things }];
              here++;
            }
          }
          expect(history.doc).toEqual(list[here]);
          expect([history.past.length, history.future.length]).toEqual([here, list.length - 1 - here]);
        }
      }),
      { seed: 71, numRuns: 150 },
    );
  });
});

describe("store", () => {
  it("gives the same object until it is changed, and wakes listeners once a change", () => {
    const store = createStore({ n: 0 });
    const woken: number[] = [];
    store.subscribe(() => woken.push(store.get().n));
    store.set((state) => state);
    expect(woken).toEqual([]);
    store.set(() => ({ n: 1 }));
    const first = store.get();
    expect(store.get()).toBe(first);
    expect([first, woken]).toEqual([{ n: 1 }, [1]]);
  });

  it("stops waking a listener that has gone, also while it is waking others", () => {
    const store = createStore(0);
    const woken: string[] = [];
    const leave = store.subscribe(() => {
      woken.push("first");
      leave();
    });
    store.subscribe(() => woken.push("second"));
    store.set(() => 1);
    store.set(() => 2);
    expect(woken).toEqual(["first", "second", "second"]);
  });

  it("counts one function subscribed twice as two", () => {
    const store = createStore(0);
    let woken = 0;
    const listener = () => {
      woken++;
    };
    const leave = store.subscribe(listener);
    store.subscribe(listener);
    leave();
    store.set(() => 1);
    expect(woken).toBe(1);
  });
});
