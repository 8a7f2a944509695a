// Bytes of files that other programs wrote: a part of an archive, and texts in the letters they are written in.

import { strFromU8, unzipSync } from "fflate";

export type Part =
  | { readonly status: "ok"; readonly bytes: Uint8Array }
  | { readonly status: "none" }
  | { readonly status: "too-large" };

/**
 * One part of a ZIP archive.
 *
 * @param most - bytes it may unpack to
 * @throws an error of the library's own where the archive is damaged
 */
export function partOf(archive: Uint8Array, path: string, most: number): Part {
  let isLarge = false;
  const parts = unzipSync(archive, {
    filter: ({ name, originalSize }) => {
      if (name !== path) return false;
      isLarge ||= originalSize > most;
      return !isLarge;
    },
  });
  if (isLarge) return { status: "too-large" };
  const bytes = Object.hasOwn(parts, path) ? parts[path] : undefined;
  return bytes === undefined ? { status: "none" } : { status: "ok", bytes };
}

/** Bytes that are no UTF-8 come out as U+FFFD. */
export function utf8Text(bytes: Uint8Array): string {
  return strFromU8(bytes);
}

/** A letter a byte, as in ISO 8859-1. */
export function westernText(bytes: Uint8Array): string {
  return strFromU8(bytes, true);
}
