// Who may write a project that is open in several tabs: one of them, by a lock of the browser that ends with the tab.
// The others read along, and one takes over when the writer leaves or when its person asks for it.
//
//   tab A  holds the lock, writes ──────────── asked ▶ finishes its write, "ready" ── reads
//   tab B  waits in the queue, reads ── asks ▲                            takes it ── writes

import { createStore, type Store } from "../state/store.ts";
import { createPen, type Locks } from "./pen.ts";
import { watchPresence } from "./presence.ts";
import type { Channel, TabMessage } from "./tabMessage.ts";

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
  const presence = watchPresence(channelOf(project), host, leaving.signal, (others) =>
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
  const pen = createPen(channelOf(project), host.locks, leaving.signal, {
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
