// Writes several files so that either all of them are there afterwards or nothing has changed.
//
//   1. each file → a temporary file beside its place, flushed to the disk
//   2. each file about to be replaced → a copy beside it
//   3. each temporary file → renamed to its place
//
// What fails on the way is undone, and the temporary files are removed in any case.

import { constants } from "node:fs";
import type { FileHandle } from "node:fs/promises";
import { dirname, join } from "node:path";
import { fileFault, systemCode } from "./fileFault.ts";
import type { OutputFile, WriteOutcome } from "./io.ts";

/** The part of `node:fs/promises` that writing needs. */
export type FileSystem = Pick<
  typeof import("node:fs/promises"),
  "access" | "copyFile" | "mkdir" | "open" | "realpath" | "rename" | "rm" | "rmdir" | "stat"
>;

interface Staged {
  readonly file: OutputFile;
  /** Where the bytes go: the file behind a symbolic link, not the link. */
  readonly target: string;
  /** null: a device or a pipe, written to as it is. */
  readonly temporary: string | null;
  readonly isThere: boolean;
}

interface Replaced {
  readonly target: string;
  /** null: there was no file before. */
  readonly backup: string | null;
}

/**
 * Writes all files or none. `folder`, if given, is made first where it is missing, but not its parents, and goes
 * away again if the writing fails. A file that is replaced keeps its permissions.
 */
export async function writeFiles(
  fs: FileSystem,
  files: readonly OutputFile[],
  folder: string | null,
): Promise<WriteOutcome> {
  const temporaries = new Set<string>();
  const replaced: Replaced[] = [];
  let path = folder ?? "";
  let madeFolder: string | null = null;
  try {
    if (folder !== null && (await makeFolder(fs, folder))) madeFolder = folder;
    const staged: Staged[] = [];
    for (const file of files) {
      path = file.path;
      staged.push(await stage(fs, file, temporaries));
    }
    for (const step of staged) {
      path = step.file.path;
      await commit(fs, step, temporaries, replaced);
    }
    await removeAll(fs, temporaries);
    return { status: "written" };
  } catch (error) {
    for (const place of replaced.reverse()) await restore(fs, place, temporaries);
    await removeAll(fs, temporaries);
    if (madeFolder !== null) await fs.rmdir(madeFolder).catch(() => undefined);
    return { status: "failed", path, reason: fileFault(error, "write") };
  }
}

/** Whether the folder had to be made. */
async function makeFolder(fs: FileSystem, folder: string): Promise<boolean> {
  const there = await statIfThere(fs, folder);
  if (there?.isDirectory()) return false;
  await fs.mkdir(folder);
  return true;
}

async function stage(fs: FileSystem, file: OutputFile, temporaries: Set<string>): Promise<Staged> {
  const there = await statIfThere(fs, file.path);
  if (there === null) {
    const temporary = await writeTemporary(fs, file.path, temporaries, (handle) =>
      handle.writeFile(file.content),
    );
    return { file, target: file.path, temporary, isThere: false };
  }
  if (there.isDirectory()) throw Object.assign(new Error("is a folder"), { code: "EISDIR" });
  if (!there.isFile()) return { file, target: file.path, temporary: null, isThere: true };
  const target = await fs.realpath(file.path);
  await fs.access(target, constants.W_OK); // a rename would replace a write-protected file without a word
  const temporary = await writeTemporary(fs, target, temporaries, async (handle) => {
    await handle.chmod(there.mode & PERMISSION_BITS).catch(() => undefined); // some disks keep no permissions
    await handle.writeFile(file.content);
  });
  return { file, target, temporary, isThere: true };
}

const PERMISSION_BITS = 0o777;

async function commit(
  fs: FileSystem,
  step: Staged,
  temporaries: Set<string>,
  replaced: Replaced[],
): Promise<void> {
  if (step.temporary === null) {
    const device = await fs.open(step.target, "w");
    try {
      await device.writeFile(step.file.content);
    } finally {
      await device.close();
    }
    return;
  }
  let backup: string | null = null;
  if (step.isThere) {
    backup = await writeTemporary(fs, step.target, temporaries, () => Promise.resolve());
    await fs.copyFile(step.target, backup);
  }
  await fs.rename(step.temporary, step.target);
  replaced.push({ target: step.target, backup });
}

async function restore(fs: FileSystem, place: Replaced, temporaries: Set<string>): Promise<void> {
  try {
    if (place.backup === null) await fs.rm(place.target);
    else await fs.rename(place.backup, place.target);
  } catch {
    // The first failure is the one to report; a copy that could not be put back is not thrown away.
    if (place.backup !== null) temporaries.delete(place.backup);
  }
}

/** A file of a name nobody uses, beside `target` and so on the same disk, which is what makes a rename atomic. */
async function writeTemporary(
  fs: FileSystem,
  target: string,
  temporaries: Set<string>,
  fill: (handle: FileHandle) => Promise<void>,
): Promise<string> {
  for (let number = temporaries.size; ; number++) {
    const path = join(dirname(target), `.panelwright-${number}.part`);
    const handle = await fs.open(path, "wx").catch((error: unknown) => {
      if (systemCode(error) === "EEXIST") return null; // left behind by a run that was broken off
      throw error;
    });
    if (handle === null) continue;
    temporaries.add(path);
    try {
      await fill(handle);
      await handle.sync();
    } finally {
      await handle.close();
    }
    return path;
  }
}

async function removeAll(fs: FileSystem, paths: ReadonlySet<string>): Promise<void> {
  for (const path of paths) await fs.rm(path, { force: true }).catch(() => undefined);
}

async function statIfThere(fs: FileSystem, path: string) {
  return fs.stat(path).catch((error: unknown) => {
    if (systemCode(error) === "ENOENT") return null;
    throw error;
  });
}
