// The world outside the command line, in memory.

import type { Io } from "../../src/cli/io.ts";

export interface MemoryIo extends Io {
  /** What was written, by path; bytes as one character each. */
  readonly files: Map<string, string>;
  readonly screen: { out: string; err: string; folder: string | null };
}

/** `inputs` by path; standard input under "-". A text stands for its bytes in UTF-8. */
export function memoryIo(
  inputs: { readonly [path: string]: string | Uint8Array },
  members: Partial<Io> = {},
): MemoryIo {
  const files = new Map<string, string>();
  const screen: MemoryIo["screen"] = { out: "", err: "", folder: null };
  const read = (path: string) => {
    const input = inputs[path];
    return Promise.resolve(
      input === undefined
        ? ({ status: "failed", reason: "there is no such file" } as const)
        : ({ status: "read", bytes: typeof input === "string" ? Buffer.from(input) : input } as const),
    );
  };
  return {
    files,
    screen,
    read,
    readStdin: () => read("-"),
    write(texts, folder) {
      if (folder !== null) screen.folder = folder;
      for (const { path, content } of texts) {
        files.set(path, typeof content === "string" ? content : Buffer.from(content).toString("latin1"));
      }
      return Promise.resolve({ status: "written" });
    },
    out(text) {
      screen.out += text;
      return Promise.resolve({ status: "written" });
    },
    err(text) {
      screen.err += text;
      return Promise.resolve();
    },
    join: (folder, name) => `${folder}/${name}`,
    resolve: (path) => path.replace(/^\.\//, ""),
    isDebug: false,
    ...members,
  };
}
