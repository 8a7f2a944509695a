// Says in words why the system refused to read or write a file.

/** The code of a system error, such as "ENOENT"; undefined for any other error. */
export function systemCode(error: unknown): string | undefined {
  if (!(error instanceof Error) || !("code" in error)) return undefined;
  return typeof error.code === "string" ? error.code : undefined;
}

const FAULTS: { readonly [code: string]: string } = {
  EACCES: "permission denied",
  EPERM: "permission denied",
  EISDIR: "it is a folder, not a file",
  EEXIST: "there is a file of that name, and a folder is needed",
  ENOTDIR: "a part of the path is a file, not a folder",
  ENOSPC: "the disk is full",
  EDQUOT: "the disk quota is used up",
  EFBIG: "the file would be too large",
  EROFS: "the disk is read-only",
  ENAMETOOLONG: "the name is too long",
  ELOOP: "its symbolic links go round in a circle",
  EMFILE: "too many files are open",
};

/**
 * The reason, to stand after "Cannot read x: ".
 */
export function fileFault(error: unknown, doing: "read" | "write"): string {
  const code = systemCode(error);
  if (code === undefined) return error instanceof Error ? error.message : String(error);
  if (code === "ENOENT") {
    return doing === "read" ? "there is no such file" : "the folder it should go into does not exist";
  }
  return FAULTS[code] ?? `the system says ${code}`;
}
