// Files of the person's own: opening and saving them by the browser's file dialogs where it has them and they work,
// else by an input of type file and a download, which every browser has.

/** What kind of file is asked for. */
export interface FileKind {
  readonly description: string;
  readonly mime: string;
  /** With their dots: ".json". */
  readonly extensions: readonly string[];
}

export const PROJECT_FILE: FileKind = {
  description: "Panelwright project",
  mime: "application/json",
  extensions: [".json"],
};

/** A file on the person's disk. */
export interface FileHandle {
  readonly name: string;
  readonly getFile: () => Promise<File>;
  readonly createWritable: () => Promise<{
    readonly write: (text: string) => Promise<void>;
    readonly close: () => Promise<void>;
  }>;
}

export type OpenedFile =
  | { readonly status: "opened"; readonly name: string; readonly text: string }
  | { readonly status: "cancelled" }
  | { readonly status: "failed"; readonly reason: string };

export type SavedFile =
  | { readonly status: "saved"; readonly name: string }
  | { readonly status: "cancelled" }
  | { readonly status: "failed"; readonly reason: string };

export interface FilePort {
  /** Lets the person choose a file and reads it. Must be called by a click or a key. */
  readonly open: (kind: FileKind) => Promise<OpenedFile>;
  /** Lets the person say where, or hands the file to the browser's downloads. */
  readonly save: (file: FileToSave) => Promise<SavedFile>;
}

export interface FileToSave {
  readonly kind: FileKind;
  readonly name: string;
  readonly text: string;
}

/** What of the browser is used; the dialogs are null where it has none. */
export interface FileHost {
  readonly showOpen: ((options: object) => Promise<readonly FileHandle[]>) | null;
  readonly showSave: ((options: object) => Promise<FileHandle>) | null;
  /** Lets the person choose by an input; null = cancelled. */
  readonly chooseByInput: (accept: string) => Promise<File | null>;
  readonly download: (name: string, text: string, mime: string) => void;
  /** Begins to watch whether the window loses the focus, as it does to a dialog; returns what it has seen. */
  readonly watchFocus: () => () => boolean;
  /** Milliseconds. */
  readonly clock: () => number;
}

/** Longest file that is read: as long as the longest text the reader takes, in bytes. */
const LARGEST = 256_000_000;
/** A cancel that comes later than this is a person's even where the window was not seen to lose the focus, ms. */
const LATEST_REFUSAL = 1500;

export function createFilePort(host: FileHost): FilePort {
  // A browser whose dialogs never show is not asked again.
  let { showOpen, showSave } = host;
  const dialog = async <T>(show: () => Promise<T>): Promise<Asked<T>> => {
    const start = host.clock();
    const hasLostFocus = host.watchFocus();
    try {
      return { status: "chosen", value: await show() };
    } catch (reason) {
      const isCancel = reason instanceof DOMException && reason.name === "AbortError";
      // Some browsers answer "cancelled" without having shown anything.
      const isPerson = hasLostFocus() || host.clock() - start > LATEST_REFUSAL;
      return { status: isCancel && isPerson ? "cancelled" : "no-dialog" };
    } finally {
      hasLostFocus(); // ends the watch
    }
  };
  return {
    open: async (kind) => {
      if (showOpen !== null) {
        const show = showOpen;
        const asked = await dialog(() => show({ types: typesOf(kind), multiple: false }));
        if (asked.status === "cancelled") return { status: "cancelled" };
        const handle = asked.status === "chosen" ? asked.value[0] : undefined;
        if (handle !== undefined) return readHandle(handle);
        showOpen = null;
      }
      const file = await host.chooseByInput([...kind.extensions, kind.mime].join(","));
      return file === null ? { status: "cancelled" } : readFile(file);
    },
    save: async ({ kind, name, text }) => {
      if (showSave !== null) {
        const show = showSave;
        const asked = await dialog(() => show({ types: typesOf(kind), suggestedName: name }));
        if (asked.status === "cancelled") return { status: "cancelled" };
        if (asked.status === "chosen") return writeHandle(asked.value, text);
        showSave = null;
      }
      host.download(name, text, kind.mime);
      return { status: "saved", name };
    },
  };
}

type Asked<T> =
  | { readonly status: "chosen"; readonly value: T }
  | { readonly status: "cancelled" | "no-dialog" };

function typesOf({ description, mime, extensions }: FileKind): readonly object[] {
  return [{ description, accept: { [mime]: extensions } }];
}

async function readHandle(handle: FileHandle): Promise<OpenedFile> {
  try {
    return await readFile(await handle.getFile());
  } catch (reason) {
    return { status: "failed", reason: String(reason) };
  }
}

/** Reads a file that was chosen or dropped. */
export async function readFile(file: File): Promise<OpenedFile> {
  if (file.size > LARGEST) return { status: "failed", reason: "the file is larger than 256 MB" };
  try {
    return { status: "opened", name: file.name, text: await file.text() };
  } catch (reason) {
    return { status: "failed", reason: String(reason) };
  }
}

async function writeHandle(handle: FileHandle, text: string): Promise<SavedFile> {
  try {
    const stream = await handle.createWritable();
    await stream.write(text);
    await stream.close();
    return { status: "saved", name: handle.name };
  } catch (reason) {
    return { status: "failed", reason: String(reason) };
  }
}

/** A name every file system takes, from the name of a project: "Heron, east side" ▶ "Heron, east side.json". */
export function fileNameOf(project: string, extension: string): string {
  const plain = project
    .normalize("NFC")
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\\/:*?"<>|]+/gu, " ")
    .replace(/\s+/g, " ")
    .replace(/^[ .]+/, "");
  const short = [...plain]
    .slice(0, 80)
    .join("")
    .replace(/[ .]+$/, "");
  const isReserved = /^(con|prn|aux|nul|com\d|lpt\d)$/i.test(short);
  return `${short === "" || isReserved ? "project" : short}${extension}`;
}
