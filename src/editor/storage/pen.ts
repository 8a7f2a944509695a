// The pen of a project: a lock of the browser that one tab holds and that ends with the tab. The others wait in line for
// it, or take it away.

/** The part of the browser's lock manager that is used. */
export interface Locks {
  readonly request: (
    name: string,
    options: { readonly ifAvailable?: boolean; readonly steal?: boolean; readonly signal?: AbortSignal },
    held: (lock: unknown) => Promise<void> | undefined,
  ) => Promise<unknown>;
}

export interface Pen {
  /** Takes the lock if it is free, else waits for it in the background. Resolves when that is known. */
  readonly tryNow: () => Promise<void>;
  readonly steal: () => Promise<void>;
  readonly isHeld: () => boolean;
}

interface PenEvents {
  readonly beforeHeld: () => Promise<void>;
  readonly onHeld: () => void;
  readonly onLost: () => void;
}

/** The one lock of a project. */
export function createPen(
  project: string,
  locks: Locks | null,
  leaving: AbortSignal,
  events: PenEvents,
): Pen {
  const name = `${project}-writer`;
  let queued: AbortController | null = null;
  let held: object | null = null;
  const takeUp = async (grip: object) => {
    held = grip;
    await events.beforeHeld();
    if (held === grip && !leaving.aborted) events.onHeld(); // not stolen meanwhile
  };
  if (locks === null) {
    const take = () => takeUp({});
    return { tryNow: take, steal: take, isHeld: () => held !== null };
  }

  // Resolves once it is known whether the lock is held; holds it until the tab leaves or it is stolen.
  const request = (options: Parameters<Locks["request"]>[1]): Promise<boolean> =>
    new Promise((known) => {
      const grip = {};
      const end = () => {
        known(false);
        if (held !== grip) return;
        held = null;
        if (leaving.aborted) return;
        events.onLost();
        queue();
      };
      locks
        .request(name, options, async (lock) => {
          if (lock === null) return;
          await takeUp(grip);
          known(true);
          await aborted(leaving);
        })
        .then(end, end);
    });
  const queue = () => {
    const mine = new AbortController();
    queued = mine;
    leaving.addEventListener("abort", () => mine.abort(), { once: true });
    void request({ signal: mine.signal });
  };
  return {
    tryNow: async () => {
      if (!(await request({ ifAvailable: true })) && !leaving.aborted) queue();
    },
    steal: async () => {
      queued?.abort();
      await request({ steal: true });
    },
    isHeld: () => held !== null,
  };
}

/** Resolves when the signal is given. */
export function aborted(signal: AbortSignal): Promise<void> {
  if (signal.aborted) return Promise.resolve();
  return new Promise((resolve) => signal.addEventListener("abort", () => resolve(), { once: true }));
}
