// What the code on a sheet says: which sheet, which revision, and a hash of what it shows.
//
//   PW1:A-01-BEDROOM-2:B:85944171F73967E8
//   form : sheet, its unit first : revision : hash
//
// Two prints with the same text show the same; after any change of a piece or a mark the hash is another.

import { contentHash } from "./contentHash.ts";
import { isAllMirrored, type SheetInfo } from "./info.ts";
import type { Mark } from "./mark.ts";
import { filePart } from "./plainText.ts";
import { markToSvg } from "./svg.ts";

/** Letters that name and revision may take, so that every code is of one size: 29 modules a side. */
const LONGEST = { name: 28, revision: 8 } as const;

/**
 * The text of the code: capitals, digits, ":" and "-" only, 60 at most; 29 modules hold 61 at level M.
 *
 * @param name - of the sheet, beginning with its unit; "-M" is put behind it on sheets of mirrored pours
 * @param marks - all that the sheet shows but its frame. Date and names of persons are in the frame, so a sheet that
 *   is only printed again keeps its hash.
 */
export function sheetKey(info: SheetInfo, name: string, marks: readonly Mark[]): string {
  const hand = isAllMirrored(info) ? "-M" : "";
  const { clearHeight, slab } = info.storey;
  const about = [info.project, info.revision, info.unitName, clearHeight, slab, name + hand];
  const content = [...about, ...marks.map(markToSvg)].join("\n");
  return [
    "PW1",
    short(name, LONGEST.name) + hand,
    short(info.revision, LONGEST.revision),
    contentHash(content),
  ].join(":");
}

function short(text: string, longest: number): string {
  return filePart(text).slice(0, longest).replace(/-$/, "").toUpperCase();
}
