// The typeface of the sheets as it lies in its package, whose licence (SIL Open Font License 1.1) lies beside it.

import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import type { FontFiles } from "../sheet/pdf/write.ts";

const PACKAGE = "@expo-google-fonts/ibm-plex-sans-condensed";

/** @throws {Error} if the package is not installed beside the program */
export async function fontFiles(): Promise<FontFiles> {
  const { resolve } = createRequire(import.meta.url);
  const file = (name: string) => readFile(resolve(`${PACKAGE}/${name}.ttf`));
  const [regular, semiBold, bold] = await Promise.all([
    file("400Regular/IBMPlexSansCondensed_400Regular"),
    file("600SemiBold/IBMPlexSansCondensed_600SemiBold"),
    file("700Bold/IBMPlexSansCondensed_700Bold"),
  ]);
  return { 400: regular, 600: semiBold, 700: bold };
}
