// The typeface of the sheets among the page's own files: one set for preview, print and PDF.

import regular from "@expo-google-fonts/ibm-plex-sans-condensed/400Regular/IBMPlexSansCondensed_400Regular.ttf?url";
import semiBold from "@expo-google-fonts/ibm-plex-sans-condensed/600SemiBold/IBMPlexSansCondensed_600SemiBold.ttf?url";
import bold from "@expo-google-fonts/ibm-plex-sans-condensed/700Bold/IBMPlexSansCondensed_700Bold.ttf?url";
import type { FontAddresses } from "./maker.ts";

export const SHEET_FONTS: FontAddresses = { 400: regular, 600: semiBold, 700: bold };

let loading: Promise<void> | null = null;

/** Gives the page the typeface of the sheets. Done when it is there, or when it is clear that it does not come. */
export function loadTypeface(): Promise<void> {
  loading ??= Promise.allSettled(
    ([400, 600, 700] as const).map((weight) => {
      const face = new FontFace("IBM Plex Sans Condensed", `url("${SHEET_FONTS[weight]}")`, {
        weight: `${weight}`,
      });
      document.fonts.add(face);
      return face.load();
    }),
  ).then(() => {});
  return loading;
}
