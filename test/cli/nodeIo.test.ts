import { tmpdir } from "node:os";
import { join } from "node:path";
import { Readable, Writable } from "node:stream";
import { expect, it } from "vitest";
import { nodeIo } from "../../src/cli/nodeIo.ts";

/** A stream that takes everything, or fails every write with the code of a system error. */
function stream(code?: string): { stream: Writable; text: () => string } {
  const chunks: Buffer[] = [];
  const refusal = code === undefined ? null : Object.assign(new Error(code), { code });
  return {
    stream: new Writable({
      write(chunk: Buffer, _encoding, done) {
        if (refusal === null) chunks.push(chunk);
        done(refusal);
      },
    }),
    text: () => Buffer.concat(chunks).toString("utf8"),
  };
}

const ioWith = (stdout: Writable, stderr: Writable = stdout, stdin: Readable = Readable.from([])) =>
  nodeIo({ stdin, stdout, stderr, isDebug: false });

it("sends results and messages apart, as UTF-8", async () => {
  const [out, err] = [stream(), stream()];
  const io = ioWith(out.stream, err.stream);
  await io.out("m² ");
  await io.err("à");
  expect([out.text(), err.text()]).toEqual(["m² ", "à"]);
});

it.each([
  { why: "a reader that has gone is no failure", code: "EPIPE", outcome: { status: "written" } },
  {
    why: "a full disk is one",
    code: "ENOSPC",
    outcome: { status: "failed", path: "standard output", reason: "the disk is full" },
  },
])("$why", async ({ code, outcome }) => {
  const io = ioWith(stream(code).stream, stream(code).stream);
  expect(await io.out("x")).toEqual(outcome);
  await io.err("x");
});

it("goes on quietly after the reader has gone", async () => {
  const io = ioWith(stream("EPIPE").stream);
  await io.out("the write that finds out");
  expect(await io.out("one after it")).toEqual({ status: "written" });
});

it("reads standard input to its end, letters cut between two pieces included", async () => {
  const bytes = Buffer.from("{ à }");
  const stdin = Readable.from([bytes.subarray(0, 3), bytes.subarray(3)]);
  const read = await ioWith(stream().stream, stream().stream, stdin).readStdin();
  expect(read.status === "read" && Buffer.from(read.bytes).toString("utf8")).toBe("{ à }");
});

it.each([
  {
    why: "no such file",
    path: join(tmpdir(), "no-such-folder", "no-such-file"),
    reason: "there is no such file",
  },
  { why: "a folder", path: tmpdir(), reason: "it is a folder, not a file" },
  { why: "a name no system takes", path: "a".repeat(5000), reason: "the name is too long" },
])("says why a file cannot be read: $why", async ({ path, reason }) => {
  expect(await ioWith(stream().stream).read(path)).toEqual({ status: "failed", reason });
});
