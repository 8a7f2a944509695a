// The world outside, as Node gives it. Streams are handed in, so that only `bin.ts` knows of the process.

import * as fs from "node:fs/promises";
import { join, resolve } from "node:path";
import { fileFault, systemCode } from "./fileFault.ts";
import type { Io, ReadOutcome, WriteOutcome } from "./io.ts";
import { writeFiles } from "./writeFiles.ts";

export interface Streams {
  readonly stdin: AsyncIterable<unknown>;
  readonly stdout: NodeJS.WritableStream;
  readonly stderr: NodeJS.WritableStream;
  readonly isDebug: boolean;
}

/** {@link Io} on the real file system and the given streams. */
export function nodeIo({ stdin, stdout, stderr, isDebug }: Streams): Io {
  // A stream reports a failure twice, to the writer's callback and as an event; the event alone would end the process.
  for (const stream of [stdout, stderr]) stream.on("error", () => undefined);
  return {
    read: (path) => readOutcome(fs.readFile(path)),
    readStdin: () => readOutcome(readAll(stdin)),
    write: (files, folder) => writeFiles(fs, files, folder),
    out: (text) => send(stdout, text),
    err: async (text) => void (await send(stderr, text)),
    join,
    resolve,
    isDebug,
  };
}

async function readOutcome(reading: Promise<Uint8Array>): Promise<ReadOutcome> {
  try {
    return { status: "read", bytes: await reading };
  } catch (error) {
    return { status: "failed", reason: fileFault(error, "read") };
  }
}

async function readAll(stream: AsyncIterable<unknown>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of stream) {
    chunks.push(chunk instanceof Uint8Array ? chunk : Buffer.from(String(chunk)));
  }
  return Buffer.concat(chunks);
}

// A reader that closed its end, as `head` does when it has seen enough, leaves nothing to report.
function send(stream: NodeJS.WritableStream, text: string): Promise<WriteOutcome> {
  return new Promise((settle) => {
    stream.write(text, (error) => {
      const code = systemCode(error);
      if (!error || code === "EPIPE" || code === "ERR_STREAM_DESTROYED") settle({ status: "written" });
      else settle({ status: "failed", path: "standard output", reason: fileFault(error, "write") });
    });
  });
}
