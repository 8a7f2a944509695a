// The names of the pours that a sheet serves, in working order.

import { FRAME_WORDS } from "./frameWords.ts";
import { isAllMirrored, type SheetInfo } from "./info.ts";
import { plainText } from "./plainText.ts";

/** Made plain, by id where there is no name; with its hand where the sheet serves both hands. */
export function pourNames(info: SheetInfo): readonly string[] {
  const isMirrored = isAllMirrored(info);
  return info.pours.map(({ id, name, mirror }) => {
    const shown = plainText(name) || plainText(id);
    return mirror && !isMirrored ? `${shown} (${FRAME_WORDS[info.language].mirrored})` : shown;
  });
}
