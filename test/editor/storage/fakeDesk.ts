// A desk on a store in memory, several of them on one store being several tabs of one browser.

import "fake-indexeddb/auto";
import { openDatabase, type ProjectDatabase } from "../../../src/editor/storage/database.ts";
import { type Desk, type DeskHost, openDesk } from "../../../src/editor/storage/desk.ts";
import type { PlanDocument } from "../../../src/plan/document.ts";
import { documentToProject } from "../../../src/plan/documentProject.ts";
import type { Project } from "../../../src/plan/project.ts";
import { documentOf, twoRooms } from "../../plan/editFixture.ts";
import { type FakeBrowser, fakeBrowser } from "./fakeTabs.ts";

let databases = 0;

/** A store of its own for each test. */
export function freshName(): string {
  databases += 1;
  return `test-${databases}`;
}

export async function openStore(name: string): Promise<ProjectDatabase> {
  const opened = await openDatabase(() => {}, name);
  if (opened.status === "failed") throw new Error(`the store did not open: ${opened.fault.kind}`);
  return opened.database;
}

export const sample: Project = documentToProject({ ...documentOf(twoRooms()), name: "Sample" });

export interface Machine {
  readonly name: string;
  readonly browser: FakeBrowser;
  /** Ids given out, and milliseconds gone by. */
  ids: number;
  time: number;
  asked: number;
}

export function machine(): Machine {
  return { name: freshName(), browser: fakeBrowser(), ids: 0, time: 1_000, asked: 0 };
}

export interface Tab {
  readonly desk: Desk;
  /** The document in hand as an editor would have it. */
  readonly document: () => PlanDocument;
  /** Takes a step that renames the project. */
  readonly step: (name: string) => void;
  readonly address: () => string | null;
}

/** The host of a tab of the machine. */
export function hostOf(on: Machine, tab: string, address: string | null = null): DeskHost {
  let at = address;
  return {
    openDatabase: (onClosed) => openDatabase(onClosed, on.name),
    tabs: on.browser.host(tab),
    now: () => {
      on.time += 1;
      return on.time;
    },
    freshId: () => {
      on.ids += 1;
      return `id-${on.ids}`;
    },
    persist: async () => {
      on.asked += 1;
      return "kept";
    },
    address: {
      read: () => at,
      write: (id) => {
        at = id;
      },
    },
  };
}

export async function openTab(
  on: Machine,
  tab: string,
  address: string | null = null,
  change: Partial<DeskHost> = {},
): Promise<Tab> {
  const host = { ...hostOf(on, tab, address), ...change };
  const { desk, document } = await openDesk(host, sample);
  let inHand = document;
  desk.onReplaced((next) => {
    inHand = next;
    desk.keep(next); // as an editor does that tells of every change
  });
  return {
    desk,
    document: () => inHand,
    step: (name) => {
      inHand = { ...inHand, name };
      desk.keep(inHand);
    },
    address: host.address.read,
  };
}
