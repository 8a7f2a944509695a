// Gives the page the typeface of the sheets, when the first of them is shown.

import { SHEET_FONTS } from "./typeface.ts";

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
