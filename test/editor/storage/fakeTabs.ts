// Locks and channels of a browser with several tabs, in one process: enough of the Web Locks API to be wrong in the
// same places (a stolen lock rejects the request that held it, a waiting request can be withdrawn, a tab that ends lets
// go of everything).

import type { Locks } from "../../../src/editor/storage/pen.ts";
import type { Channel, TabMessage } from "../../../src/editor/storage/tabMessage.ts";
import type { TabHost } from "../../../src/editor/storage/tabs.ts";

interface Request {
  readonly tab: string;
  readonly name: string;
  readonly grant: () => void;
  readonly refuse: (reason: unknown) => void;
}

export interface FakeBrowser {
  readonly host: (tab: string) => TabHost;
  /** Ends a tab without a word: its locks fall free, its channels are deaf. */
  readonly kill: (tab: string) => void;
  /** A tab that the browser has put to sleep hears nothing, but keeps its locks. */
  readonly sleep: (tab: string) => void;
  readonly messages: readonly string[];
}

export const settle = async (turns = 30): Promise<void> => {
  for (let k = 0; k < turns; k++) await new Promise((resolve) => setTimeout(resolve, 0));
};

export function fakeBrowser(): FakeBrowser {
  const held = new Map<string, Request>();
  const queue: Request[] = [];
  const ears: { tab: string; name: string; hear: (message: TabMessage) => void }[] = [];
  const deaf = new Set<string>();
  const messages: string[] = [];

  const serve = () => {
    for (const request of [...queue]) {
      if (held.has(request.name)) continue;
      queue.splice(queue.indexOf(request), 1);
      held.set(request.name, request);
      request.grant();
    }
  };
  const release = (request: Request) => {
    if (held.get(request.name) === request) held.delete(request.name);
    serve();
  };
  const locksOf = (tab: string): Locks => ({
    request: (name, { ifAvailable, steal, signal }, work) =>
      new Promise((resolve, reject) => {
        const request: Request = {
          tab,
          name,
          grant: () => {
            Promise.resolve(work({ name })).then(
              () => {
                release(request);
                resolve(undefined);
              },
              (reason: unknown) => {
                release(request);
                reject(reason);
              },
            );
          },
          refuse: reject,
        };
        const isFree = !held.has(name) && !queue.some((each) => each.name === name);
        if (ifAvailable === true && !isFree) {
          resolve(work(null));
          return;
        }
        if (steal === true) {
          held.get(name)?.refuse(new DOMException("stolen", "AbortError"));
          held.set(name, request);
          request.grant();
          return;
        }
        signal?.addEventListener("abort", () => {
          if (!queue.includes(request)) return;
          queue.splice(queue.indexOf(request), 1);
          reject(new DOMException("withdrawn", "AbortError"));
        });
        queue.push(request);
        queueMicrotask(serve);
      }),
  });

  return {
    messages,
    host: (tab) => ({
      tab,
      locks: locksOf(tab),
      openChannel: (name, hear): Channel => {
        const ear = { tab, name, hear };
        ears.push(ear);
        return {
          post: (message) => {
            if (deaf.has(tab)) return;
            messages.push(`${tab} ${message.kind}`);
            for (const other of ears.filter((each) => each !== ear && each.name === name)) {
              setTimeout(() => {
                if (ears.includes(other) && !deaf.has(other.tab)) other.hear(structuredClone(message));
              }, 0);
            }
          },
          close: () => ears.splice(ears.indexOf(ear), 1),
        };
      },
      // Waiting is a few turns, so that no test waits for the clock.
      wait: () => settle(10),
    }),
    kill: (tab) => {
      deaf.add(tab);
      for (const request of [...queue]) if (request.tab === tab) queue.splice(queue.indexOf(request), 1);
      for (const [name, request] of [...held]) if (request.tab === tab) held.delete(name);
      serve();
    },
    sleep: (tab) => {
      deaf.add(tab);
    },
  };
}
