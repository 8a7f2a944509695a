import * as fs from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type FileSystem, writeFiles } from "../../src/cli/writeFiles.ts";

let root = "";
beforeEach(async () => {
  root = await fs.mkdtemp(join(tmpdir(), "panelwright-write-"));
});
afterEach(() => fs.rm(root, { recursive: true }));

/** Every file under the root with its text, folders with a slash behind. */
async function tree(): Promise<Record<string, string>> {
  const entries = await fs.readdir(root, { recursive: true, withFileTypes: true });
  const found: Record<string, string> = {};
  for (const entry of entries) {
    const path = join(entry.parentPath, entry.name);
    const name = path.slice(root.length + 1);
    if (entry.isDirectory()) found[`${name}/`] = "";
    else found[name] = await fs.readFile(path, "utf8");
  }
  return found;
}

const inRoot = (name: string) => join(root, name);
const files = (...names: string[]) => names.map((name) => ({ path: inRoot(name), content: `new ${name}` }));

/** The file system, of which the `nth` call of one function fails. */
function failing(name: "open" | "rename" | "copyFile" | "mkdir", nth: number, code = "ENOSPC"): FileSystem {
  let calls = 0;
  const refuse = () => {
    calls++;
    return calls === nth ? Promise.reject(Object.assign(new Error(code), { code })) : null;
  };
  return {
    ...fs,
    open: (...words) => (name === "open" ? refuse() : null) ?? fs.open(...words),
    rename: (...words) => (name === "rename" ? refuse() : null) ?? fs.rename(...words),
    copyFile: (...words) => (name === "copyFile" ? refuse() : null) ?? fs.copyFile(...words),
    mkdir: ((path: string) => (name === "mkdir" ? refuse() : null) ?? fs.mkdir(path)) as typeof fs.mkdir,
  };
}

describe("writing", () => {
  it("makes the folder, writes every file and leaves nothing else", async () => {
    const written = await writeFiles(fs, files("out/a", "out/b"), inRoot("out"));
    expect(written).toEqual({ status: "written" });
    expect(await tree()).toEqual({ "out/": "", "out/a": "new out/a", "out/b": "new out/b" });
  });

  it("replaces files of the same name and leaves others alone", async () => {
    await fs.writeFile(inRoot("a"), "old, and longer than what comes");
    await fs.writeFile(inRoot("mine"), "mine");
    await writeFiles(fs, files("a"), root);
    expect(await tree()).toEqual({ a: "new a", mine: "mine" });
  });

  it("keeps the permissions of a file that it replaces", async () => {
    await fs.writeFile(inRoot("a"), "old");
    await fs.chmod(inRoot("a"), 0o600);
    await writeFiles(fs, files("a"), null);
    expect((await fs.stat(inRoot("a"))).mode & 0o777).toBe(0o600);
  });

  it("writes through a symbolic link", async () => {
    await fs.writeFile(inRoot("real"), "old");
    await fs.symlink("real", inRoot("link"));
    await writeFiles(fs, files("link"), null);
    expect((await fs.lstat(inRoot("link"))).isSymbolicLink()).toBe(true);
    expect(await fs.readFile(inRoot("real"), "utf8")).toBe("new link");
  });

  it("writes into a device or a pipe instead of putting a file in its place", async () => {
    await fs.writeFile(inRoot("device"), "");
    const before = await fs.stat(inRoot("device"));
    const isDevice = { isDirectory: () => false, isFile: () => false };
    const stat = (() => Promise.resolve(isDevice)) as unknown as typeof fs.stat;
    expect(await writeFiles({ ...fs, stat }, files("device"), null)).toEqual({ status: "written" });
    expect(await tree()).toEqual({ device: "new device" });
    expect((await fs.stat(inRoot("device"))).ino).toBe(before.ino);
  });

  it("passes over a temporary file left by a run that was broken off", async () => {
    await fs.writeFile(inRoot(".panelwright-0.part"), "half");
    await writeFiles(fs, files("a"), null);
    expect(await tree()).toEqual({ ".panelwright-0.part": "half", a: "new a" });
  });
});

describe("a failure leaves everything as it was", () => {
  it.each([
    { why: "the first temporary file", at: failing("open", 1), path: "out/a" },
    { why: "the third temporary file", at: failing("open", 3), path: "out/c" },
    { why: "the first rename", at: failing("rename", 1), path: "out/a" },
    { why: "the third rename", at: failing("rename", 3), path: "out/c" },
    { why: "the folder", at: failing("mkdir", 1, "EACCES"), path: "out", reason: "permission denied" },
  ])("in a folder to be made: $why", async ({ at, path, reason = "the disk is full" }) => {
    const written = await writeFiles(at, files("out/a", "out/b", "out/c"), inRoot("out"));
    expect(written).toEqual({ status: "failed", path: inRoot(path), reason });
    expect(await tree()).toEqual({});
  });

  it.each([
    { why: "the second temporary file", at: failing("open", 2) },
    { why: "the copy of the old file", at: failing("copyFile", 1) },
    { why: "the rename of the replaced file", at: failing("rename", 1) },
    { why: "the rename after it", at: failing("rename", 2) },
  ])("in a folder with old files: $why", async ({ at }) => {
    await fs.writeFile(inRoot("a"), "old a");
    await fs.writeFile(inRoot("mine"), "mine");
    expect(await writeFiles(at, files("a", "b"), root)).toMatchObject({ status: "failed" });
    expect(await tree()).toEqual({ a: "old a", mine: "mine" });
  });

  it.each([
    {
      why: "the folder is a file",
      folder: "file",
      name: "file/a",
      path: "file",
      reason: /a folder is needed/,
    },
    { why: "no parent", folder: "no/out", name: "no/out/a", path: "no/out", reason: /does not exist/ },
    {
      why: "below a file",
      folder: "file/out",
      name: "file/out/a",
      path: "file/out",
      reason: /is a file, not/,
    },
    { why: "no folder", folder: null, name: "no/a", path: "no/a", reason: /does not exist/ },
    { why: "a folder in the way", folder: null, name: "folder", path: "folder", reason: /is a folder/ },
    {
      why: "too long a name",
      folder: null,
      name: "a".repeat(300),
      path: "a".repeat(300),
      reason: /too long/,
    },
  ])("$why", async ({ folder, name, path, reason }) => {
    await fs.writeFile(inRoot("file"), "file");
    await fs.mkdir(inRoot("folder"));
    const written = await writeFiles(fs, files("b", name), folder === null ? null : inRoot(folder));
    expect(written).toMatchObject({
      status: "failed",
      path: inRoot(path),
      reason: expect.stringMatching(reason),
    });
    expect(await tree()).toEqual({ file: "file", "folder/": "" });
  });

  it("a write-protected file is not replaced", async () => {
    await fs.writeFile(inRoot("a"), "old");
    const denied = Object.assign(new Error("denied"), { code: "EACCES" });
    const written = await writeFiles({ ...fs, access: () => Promise.reject(denied) }, files("a"), null);
    expect(written).toMatchObject({ status: "failed", reason: "permission denied" });
    expect(await tree()).toEqual({ a: "old" });
  });

  it("an old file that cannot be put back is kept under its temporary name", async () => {
    await fs.writeFile(inRoot("a"), "old");
    const refuse = Object.assign(new Error("full"), { code: "ENOSPC" });
    let calls = 0;
    const rename = (from: string, to: string) => (++calls > 1 ? Promise.reject(refuse) : fs.rename(from, to));
    await writeFiles({ ...fs, rename: rename as typeof fs.rename }, files("a", "b"), null);
    expect(Object.values(await tree())).toContain("old");
  });
});
