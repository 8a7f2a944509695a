// Who may write a project that is open in several tabs: one of them, by a lock of the browser that ends with the tab.
// The others read along, and one takes over when the writer leaves or when its person asks for it.
//
//   tab A  holds the lock, writes ──────────── asked ▶ finishes its write, "ready" ── reads
//   tab B  waits in the queue, reads ── asks ▲                            takes it ── writes
//
// Each tab also holds a lock of its own name as long as it lives: whoever hears of a tab waits for that lock, and so
// hears of its end even where it was killed.

import { createStore, type Store } from "../state/store.ts";

/** The part of the browser's lock manager that is used. */
export interface Locks {
  readonly request: (
    name: string,
    options: { readonly ifAvailable?: boolean; readonly steal?: boolean; readonly signal?: AbortSignal },
    held: (lock: unknown) => Promise<void> | undefined,
  ) => Promise<unknown>;
}

export type TabMessage =
  | { readonly kind: "here"; readonly from: string; readonly isAnswer: boolean }
  | { readonly kind: "gone"; readonly from: string }
  | { readonly kind: "hand-over"; readonly from: string }
  | { readonly kind: "ready"; readonly to: string }
  | { readonly kind: "saved"; readonly from: string };

/** A channel that reaches the other tabs and not the sender. */
export interface Channel {
  readonly post: (message: TabMessage) => void;
  readonly close: () => void;
}

export interface TabHost {
  /** A name no other tab has. */
  readonly tab: string;
  /** null: the browser has none. Then every tab writes, and the revision in the record is the only guard. */
  readonly locks: Locks | null;
  readonly openChannel: (name: string, hear: (message: TabMessage) => void) => Channel;
  readonly wait: (milliseconds: number) => Promise<void>;
}

export interface SeatState {
  readonly role: "writing" | "reading";
  /** Other tabs that have this project open. */
  readonly others: number;
}

export interface SeatEvents {
  /** The seat is about to write: whatever was written meanwhile is read first. */
  readonly beforeWriting: () => Promise<void>;
  /** The seat is about to be given away: what is unwritten is written first. */
  readonly beforeLeaving: () => Promise<void>;
  /** Another tab has written. */
  readonly onSaved: () => void;
}

export interface Seat {
  readonly state: Store<SeatState>;
  /** Takes the project over from the tab that writes it. */
  readonly takeOver: () => Promise<void>;
  /** Tells the other tabs that something was written. */
  readonly tellSaved: () => void;
  readonly leave: () => void;
}

const PATIENCE = 1500; // ms; a tab that the browser has put to sleep does not answer

/** Sits down at a project: writing where no other tab does. */
export async function takeSeat(project: string, host: TabHost, events: SeatEvents): Promise<Seat> {
  const state = createStore<SeatState>({ role: "reading", others: 0 });
  const leaving = new AbortController();
  const presence = watchPresence(project, host, leaving.signal, (others) =>
    state.set((now) => (now.others === others ? now : { ...now, others })),
  );
  let becomeReady: (() => void) | null = null;
  const channel = host.openChannel(channelOf(project), (message) => {
    presence.hear(message, channel.post);
    if (message.kind === "saved") events.onSaved();
    if (message.kind === "ready" && message.to === host.tab) becomeReady?.();
    if (message.kind === "hand-over" && state.get().role === "writing") void handOver(message.from);
  });
  const setRole = (role: SeatState["role"]) =>
    state.set((now) => (now.role === role ? now : { ...now, role }));
  const pen = createPen(project, host.locks, leaving.signal, {
    beforeHeld: events.beforeWriting,
    onHeld: () => setRole("writing"),
    onLost: () => setRole("reading"),
  });
  const handOver = async (to: string) => {
    setRole("reading");
    await events.beforeLeaving();
    channel.post({ kind: "ready", to });
    // The tab that asked may have ended since: then the project is not left without a writer.
    await host.wait(2 * PATIENCE);
    if (pen.isHeld()) setRole("writing");
  };
  await presence.begun;
  channel.post({ kind: "here", from: host.tab, isAnswer: false });
  await pen.tryNow();

  return {
    state,
    takeOver: async () => {
      if (state.get().role === "writing") return;
      const ready = new Promise<void>((resolve) => {
        becomeReady = resolve;
      });
      channel.post({ kind: "hand-over", from: host.tab });
      await Promise.race([ready, host.wait(PATIENCE)]);
      becomeReady = null;
      await pen.steal();
    },
    tellSaved: () => channel.post({ kind: "saved", from: host.tab }),
    leave: () => {
      channel.post({ kind: "gone", from: host.tab });
      leaving.abort();
      channel.close();
    },
  };
}

function channelOf(project: string): string {
  return `panelwright-project-${project}`;
}

interface Pen {
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

// The one lock of the project.
function createPen(project: string, locks: Locks | null, leaving: AbortSignal, events: PenEvents): Pen {
  const name = `${channelOf(project)}-writer`;
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

interface Presence {
  /** Resolves when this tab can be waited for by others. */
  readonly begun: Promise<void>;
  readonly hear: (message: TabMessage, post: Channel["post"]) => void;
}

function watchPresence(
  project: string,
  { tab, locks }: TabHost,
  leaving: AbortSignal,
  onCount: (others: number) => void,
): Presence {
  const others = new Set<string>();
  const ownLock = (name: string) => `${channelOf(project)}-tab-${name}`;
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

function aborted(signal: AbortSignal): Promise<void> {
  if (signal.aborted) return Promise.resolve();
  return new Promise((resolve) => signal.addEventListener("abort", () => resolve(), { once: true }));
}
