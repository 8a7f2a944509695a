// Everything the command line does to the world outside it, as a record, so that a test can hand in its own.

/** What came of reading. `reason` completes the sentence "Cannot read house.json: …". */
export type ReadOutcome =
  | { readonly status: "read"; readonly bytes: Uint8Array }
  | { readonly status: "failed"; readonly reason: string };

/** What came of writing. `reason` completes the sentence "Cannot write `path`: …". */
export type WriteOutcome =
  | { readonly status: "written" }
  | { readonly status: "failed"; readonly path: string; readonly reason: string };

/** A file to be written: a text, as UTF-8, or its bytes. */
export interface OutputFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}

export interface Io {
  readonly read: (path: string) => Promise<ReadOutcome>;
  readonly readStdin: () => Promise<ReadOutcome>;
  /**
   * Writes all the files or none. `folder`, if given, is made first where it is missing; its parent must exist.
   * Files of other names are left alone.
   */
  readonly write: (files: readonly OutputFile[], folder: string | null) => Promise<WriteOutcome>;
  /** A result, on standard output. A reader that has gone away is no failure. */
  readonly out: (text: string) => Promise<WriteOutcome>;
  /** A message, on standard error. */
  readonly err: (text: string) => Promise<void>;
  /** Joins a folder and a name as the system does. */
  readonly join: (folder: string, name: string) => string;
  /** A path in full and in one spelling, to tell whether two paths are one place. */
  readonly resolve: (path: string) => string;
  /** Whether an internal error shows where it happened. */
  readonly isDebug: boolean;
}
