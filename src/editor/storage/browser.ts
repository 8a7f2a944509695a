// The browser behind the desk and the file port: the only file here that reaches for it.

import { type OpenedDatabase, openDatabase } from "./database.ts";
import type { DeskHost, Persistence } from "./desk.ts";
import type { FileHandle, FileHost } from "./files.ts";
import type { Locks } from "./pen.ts";
import type { Channel, TabMessage } from "./tabMessage.ts";
import type { TabHost } from "./tabs.ts";

/** The desk of this page. */
export function browserDesk(): DeskHost {
  return {
    openDatabase: (onClosed) => Promise.race([openDatabase(onClosed), noAnswer()]),
    tabs: browserTabs(),
    now: () => Date.now(),
    freshId: freshName,
    persist: askToPersist,
    address: {
      read: () => {
        const id = location.hash.slice(1);
        return /^[0-9a-f-]{8,40}$/.test(id) ? id : null;
      },
      write: (id) => history.replaceState(history.state, "", id === null ? location.pathname : `#${id}`),
    },
  };
}

const PATIENCE = 5000; // ms; the page is not kept waiting for a store that does not open

async function noAnswer(): Promise<OpenedDatabase> {
  await new Promise((resolve) => setTimeout(resolve, PATIENCE));
  return { status: "failed", fault: { kind: "unavailable", reason: "the store does not answer" } };
}

// Also where the page was not loaded over a secure connection, and the browser makes no identifiers.
function freshName(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

function browserTabs(): TabHost {
  const locks: LockManager | undefined = navigator.locks;
  return {
    tab: freshName(),
    locks: locks === undefined ? null : lockPort(locks),
    openChannel,
    wait: (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)),
  };
}

function lockPort(locks: LockManager): Locks {
  return { request: (name, options, held) => locks.request(name, { ...options }, held) };
}

function openChannel(name: string, hear: (message: TabMessage) => void): Channel {
  if (typeof BroadcastChannel === "undefined") return { post: () => {}, close: () => {} };
  const channel = new BroadcastChannel(name);
  channel.onmessage = ({ data }: MessageEvent<TabMessage>) => hear(data);
  let isOpen = true;
  return {
    post: (message) => {
      if (isOpen) channel.postMessage(message);
    },
    close: () => {
      isOpen = false;
      channel.close();
    },
  };
}

async function askToPersist(): Promise<Persistence> {
  const storage: StorageManager | undefined = navigator.storage;
  if (storage?.persist === undefined) return "unknown";
  return (await storage.persist()) ? "kept" : "may-be-cleared";
}

interface DialogWindow {
  readonly showOpenFilePicker?: (options: object) => Promise<readonly FileHandle[]>;
  readonly showSaveFilePicker?: (options: object) => Promise<FileHandle>;
}

/** The file dialogs of this page. */
export function browserFiles(): FileHost {
  const { showOpenFilePicker: open, showSaveFilePicker: save }: DialogWindow = window as DialogWindow;
  return {
    showOpen: open === undefined ? null : (options) => open.call(window, options),
    showSave: save === undefined ? null : (options) => save.call(window, options),
    chooseByInput,
    download,
    watchFocus,
    clock: () => performance.now(),
  };
}

function watchFocus(): () => boolean {
  let hasLost = false;
  const lose = () => {
    hasLost = true;
  };
  addEventListener("blur", lose, { once: true });
  return () => {
    removeEventListener("blur", lose);
    return hasLost;
  };
}

function chooseByInput(accept: string): Promise<File | null> {
  return new Promise((resolve) => {
    const input = document.createElement("input");
    input.type = "file";
    input.accept = accept;
    input.onchange = () => resolve(input.files?.[0] ?? null);
    input.oncancel = () => resolve(null);
    input.click();
  });
}

function download(name: string, text: string, mime: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: mime }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  // The download has its own hold on the data once it has begun.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** Asks before the page is left while something is unsaved. Returns the way to stop. */
export function warnBeforeLeaving(isUnsaved: () => boolean): () => void {
  const warn = (event: BeforeUnloadEvent) => {
    if (isUnsaved()) event.preventDefault();
  };
  addEventListener("beforeunload", warn);
  return () => removeEventListener("beforeunload", warn);
}
