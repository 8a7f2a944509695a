// The project in hand and where it is kept: which record it is, whether this tab may write it, how its saving goes.
// Everything of the browser comes in through the host.
//
//   editor ── a step ▶ keep ▶ autosave ▶ record        another tab has written ▶ read again ▶ onReplaced ▶ editor

import type { PlanDocument } from "../../plan/document.ts";
import { documentToProject, projectToDocument } from "../../plan/documentProject.ts";
import type { Project } from "../../plan/project.ts";
import { createStore, type Store } from "../state/store.ts";
import { type Autosave, createAutosave, type SaveState } from "./autosave.ts";
import type { OpenedDatabase, StorageFault } from "./database.ts";
import { type DamagedProject, firstProject, NOTHING, type Opened } from "./firstProject.ts";
import type { Pictures } from "./pictures.ts";
import {
  deleteProject,
  listProjects,
  noteOpened,
  type OpenedProject,
  openProject,
  type StoredProject,
  saveProject,
} from "./projects.ts";
import { type Seat, type SeatState, type TabHost, takeSeat } from "./tabs.ts";

/** Whether the browser may clear what is kept when it runs short of room. */
export type Persistence = "kept" | "may-be-cleared" | "unknown";

export interface DeskHost {
  readonly openDatabase: (onClosed: (fault: StorageFault) => void) => Promise<OpenedDatabase>;
  readonly tabs: TabHost;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly freshId: () => string;
  /** Asks the browser to keep what is stored. */
  readonly persist: () => Promise<Persistence>;
  /** The id in the page's address, so that a tab opened anew is on its project. */
  readonly address: { readonly read: () => string | null; readonly write: (id: string | null) => void };
}

export interface DeskState {
  /** null: not kept yet; the first step makes its record. */
  readonly project: string | null;
  readonly seat: SeatState;
  readonly save: SaveState;
  readonly persistence: Persistence;
  /** A project that was asked for and could not be read. */
  readonly damaged: DamagedProject | null;
}

/** `isOther`: another project, not another state of the one in hand. */
export type ReplacedListener = (document: PlanDocument, isOther: boolean) => void;

export interface Desk {
  readonly state: Store<DeskState>;
  /** Takes note of the document in hand, after every change of it. A tab that only reads keeps nothing. */
  readonly keep: (document: PlanDocument) => void;
  /** Calls `listener` with a document that takes the place of the one in hand. Returns the way to stop. */
  readonly onReplaced: (listener: ReplacedListener) => () => void;
  readonly list: () => Promise<readonly StoredProject[]>;
  /** Puts the project in hand away and opens another. `giveUp`: even if what was done last could not be saved. */
  readonly open: (id: string, giveUp?: boolean) => Promise<OpenedProject["status"] | "unsaved">;
  /** Puts the project in hand away and begins another, kept at once. */
  readonly create: (project: Project, giveUp?: boolean) => Promise<"open" | "unsaved">;
  /** @throws {RangeError} for the project in hand */
  readonly remove: (id: string) => Promise<void>;
  /** Makes this tab the one that writes. */
  readonly takeOver: () => Promise<void>;
  /** Tries to save again: opens the store anew where it was lost, and takes the project over where another tab has it. */
  readonly retry: () => Promise<void>;
  /** Keeps the document in hand as a project of its own: another's work stands in its record, or the record is gone. */
  readonly keepAsNew: () => void;
  /** Gives the document in hand up for the one in its record. */
  readonly takeStored: () => Promise<void>;
  readonly dismissDamaged: () => void;
  /** Resolves when nothing is left to write, or writing has failed. */
  readonly settled: () => Promise<SaveState>;
}

// What is known of the record of the project in hand.
interface InHand {
  id: string | null;
  revision: number;
  pictures: Pictures;
  seat: Seat | null;
}

const ALONE: SeatState = { role: "writing", others: 0 };

// The desk with everything on it, for the functions below.
interface Room {
  readonly host: DeskHost;
  readonly state: Store<DeskState>;
  readonly listeners: Set<ReplacedListener>;
  readonly autosave: Autosave;
  database: OpenedDatabase;
  inHand: InHand;
  hasAsked: boolean;
}

/** Opens the desk on the project of the address, else the last one opened, else `sample`, which is kept from the first step on. */
export async function openDesk(
  host: DeskHost,
  sample: Project,
): Promise<{ readonly desk: Desk; readonly document: PlanDocument }> {
  const state = createStore<DeskState>({
    project: null,
    seat: ALONE,
    save: { status: "saved" },
    persistence: "unknown",
    damaged: null,
  });
  const database = await host.openDatabase((fault) => lose(room, fault));
  const found =
    database.status === "open" ? await firstProject(host.address.read(), database.database) : NOTHING;
  const document = projectToDocument(found.first?.opened.project ?? sample);
  const room: Room = {
    host,
    state,
    listeners: new Set(),
    autosave: createAutosave((next) => write(room, next), document),
    database,
    inHand: found.first === null ? fresh() : inHandOf(found.first.id, found.first.opened),
    hasAsked: false,
  };
  const fault = database.status === "failed" ? database.fault : found.fault;
  set(room, { damaged: found.damaged, ...(fault === null ? {} : { save: { status: "failed", fault } }) });
  room.autosave.state.subscribe(() => set(room, { save: room.autosave.state.get() }));
  if (room.inHand.id !== null) await sit(room, room.inHand, room.inHand.id);
  return { desk: deskOf(room), document };
}

function deskOf(room: Room): Desk {
  const { state, autosave, listeners } = room;
  return {
    state,
    keep: (next) => {
      if (state.get().seat.role === "writing") autosave.changed(next);
    },
    onReplaced: (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    list: async () => (room.database.status === "open" ? listProjects(room.database.database) : []),
    open: (id, giveUp = false) => openOther(room, id, giveUp),
    create: async (project, giveUp = false) => {
      if (!(await putAway(room, giveUp))) return "unsaved";
      room.host.address.write(null);
      replace(room, projectToDocument(project), true);
      autosave.force();
      await autosave.settled();
      return "open";
    },
    remove: async (id) => {
      if (id === room.inHand.id) throw new RangeError("the project in hand is not deleted");
      if (room.database.status === "open") await deleteProject(room.database.database, id);
    },
    takeOver: async () => room.inHand.seat?.takeOver(),
    retry: () => retry(room),
    keepAsNew: () => {
      leave(room);
      autosave.force();
    },
    takeStored: () => refresh(room, room.inHand, true),
    dismissDamaged: () => set(room, { damaged: null }),
    settled: autosave.settled,
  };
}

function set({ state }: Room, change: Partial<DeskState>): void {
  state.set((now) => ({ ...now, ...change }));
}

function lose(room: Room, fault: StorageFault): void {
  room.database = { status: "failed", fault };
  set(room, { save: { status: "failed", fault } });
}

async function retry(room: Room): Promise<void> {
  const { host, state, autosave } = room;
  if (room.database.status === "failed") {
    room.database = await host.openDatabase((fault) => lose(room, fault));
  }
  if (state.get().seat.role === "reading") await room.inHand.seat?.takeOver();
  if (state.get().seat.role === "writing") autosave.force();
}

function fresh(): InHand {
  return { id: null, revision: 0, pictures: new Map(), seat: null };
}

function inHandOf(id: string, { revision, pictures }: Opened): InHand {
  return { id, revision, pictures, seat: null };
}

async function write(room: Room, document: PlanDocument): Promise<StorageFault | null> {
  const { database, host, inHand: mine } = room;
  if (database.status === "failed") return database.fault;
  const id = mine.id ?? host.freshId();
  const saved = await saveProject(database.database, {
    id,
    project: documentToProject(document),
    expected: mine.revision,
    pictures: mine.pictures,
    at: host.now(),
  });
  if (saved.status === "failed") return saved.fault;
  mine.revision = saved.revision;
  mine.pictures = saved.pictures;
  mine.seat?.tellSaved();
  if (mine.id === null) {
    mine.id = id;
    if (mine === room.inHand) await sit(room, mine, id);
  }
  askOnce(room);
  return null;
}

// Some browsers put the question to the person: not before there is something to keep.
function askOnce(room: Room): void {
  if (room.hasAsked) return;
  room.hasAsked = true;
  room.host.persist().then(
    (persistence) => set(room, { persistence }),
    () => set(room, { persistence: "unknown" }),
  );
}

function replace({ autosave, listeners }: Room, next: PlanDocument, isOther: boolean): void {
  autosave.rest(next);
  for (const listener of [...listeners]) listener(next, isOther);
}

// Reads the record again if somebody else has written it. Steps that could not be saved are not given up for it unless
// the person says so.
async function refresh(room: Room, mine: InHand, isDecided = false): Promise<void> {
  if (room.database.status === "failed" || mine.id === null) return;
  const opened = await openProject(room.database.database, mine.id);
  if (mine !== room.inHand) return;
  if (opened.status === "missing" && isDecided) room.autosave.refuse({ kind: "gone" });
  if (opened.status !== "open") return;
  const { revision } = opened;
  if (revision === mine.revision && !isDecided) return;
  if (room.autosave.state.get().status === "failed" && !isDecided) {
    room.autosave.refuse({ kind: "conflict", revision });
    return;
  }
  mine.revision = revision;
  mine.pictures = opened.pictures;
  replace(room, projectToDocument(opened.project), false);
}

async function sit(room: Room, mine: InHand, id: string): Promise<void> {
  room.host.address.write(id);
  set(room, { project: id });
  const isReading = () => room.state.get().seat.role === "reading";
  // A write under way is heard out first. The one that makes the record waits for this seat, so it is not waited for.
  const follow = async () => {
    if (mine.seat !== null) await room.autosave.settled();
    await refresh(room, mine);
  };
  const seat = await takeSeat(id, room.host.tabs, {
    beforeWriting: follow,
    beforeLeaving: async () => {
      await room.autosave.settled();
    },
    // A tab that writes keeps what it has: where two do, the record refuses the later one.
    onSaved: () => {
      if (isReading()) void follow();
    },
  });
  if (mine !== room.inHand) return seat.leave();
  mine.seat = seat;
  const show = () => {
    if (mine === room.inHand) set(room, { seat: seat.state.get() });
  };
  seat.state.subscribe(show);
  show();
  // Written between the first reading and the taking of the seat.
  if (isReading()) await refresh(room, mine);
  const { database, host } = room;
  // Only the order of the list hangs on it.
  if (database.status === "open") await noteOpened(database.database, id, host.now()).catch(() => {});
}

function leave(room: Room): void {
  room.inHand.seat?.leave();
  room.inHand = fresh();
  set(room, { project: null, seat: ALONE });
}

async function putAway(room: Room, giveUp: boolean): Promise<boolean> {
  const { status } = await room.autosave.settled();
  if (status === "failed" && !giveUp) return false;
  leave(room);
  return true;
}

async function openOther(
  room: Room,
  id: string,
  giveUp: boolean,
): Promise<OpenedProject["status"] | "unsaved"> {
  if (room.database.status === "failed") return "failed";
  const opened = await openProject(room.database.database, id);
  if (opened.status === "damaged") set(room, { damaged: opened });
  if (opened.status !== "open") return opened.status;
  if (!(await putAway(room, giveUp))) return "unsaved";
  room.inHand = inHandOf(id, opened);
  replace(room, projectToDocument(opened.project), true);
  await sit(room, room.inHand, id);
  return "open";
}
