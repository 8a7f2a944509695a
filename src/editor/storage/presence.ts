// Which other tabs have a project open. Each holds a lock of its own name as long as it lives: whoever hears of a tab
// waits for that lock, and so hears of its end even where it was killed.

import { aborted, type Locks } from "./pen.ts";
import type { Channel, TabMessage } from "./tabMessage.ts";

export interface Presence {
  /** Resolves when this tab can be waited for by others. */
  readonly begun: Promise<void>;
  readonly hear: (message: TabMessage, post: Channel["post"]) => void;
}

/** Counts the other tabs of a project. */
export function watchPresence(
  project: string,
  { tab, locks }: { readonly tab: string; readonly locks: Locks | null },
  leaving: AbortSignal,
  onCount: (others: number) => void,
): Presence {
  const others = new Set<string>();
  const ownLock = (name: string) => `${project}-tab-${name}`;
  const quiet = () => {};
  const begun = new Promise<void>((resolve) => {
    if (locks === null) resolve();
    locks
      ?.request(ownLock(tab), { signal: leaving }, () => {
        resolve();
        return aborted(leaving);
      })
      .catch(() => resolve());
  });

  const forget = (name: string) => {
    if (others.delete(name)) onCount(others.size);
  };
  const note = (name: string) => {
    if (others.has(name)) return;
    others.add(name);
    onCount(others.size);
    locks?.request(ownLock(name), { signal: leaving }, async () => forget(name)).catch(quiet);
  };
  return {
    begun,
    hear: (message, post) => {
      if (message.kind === "gone") forget(message.from);
      if (message.kind !== "here") return;
      note(message.from);
      if (!message.isAnswer) post({ kind: "here", from: tab, isAnswer: true });
    },
  };
}
