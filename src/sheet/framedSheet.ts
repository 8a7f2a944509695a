// Puts what a sheet shows into its frame, with the code that tells this sheet from an older one.

import { frameOf } from "./frame.ts";
import { FRAME_WORDS } from "./frameWords.ts";
import { isAllMirrored, type SheetInfo } from "./info.ts";
import type { Mark, Sheet } from "./mark.ts";
import type { PaperSize } from "./paper.ts";
import { filePart, plainText } from "./plainText.ts";
import { sheetKey } from "./sheetKey.ts";

/** What a kind of sheet says of one of its pages. */
export interface SheetEntries {
  /** As {@link Sheet.name}, beginning with the unit. */
  readonly name: string;
  readonly title: string;
  readonly description: string;
  readonly paper: PaperSize;
  /** As "1:50"; "" where nothing is to scale. */
  readonly scale: string;
  /** Page of how many of its kind, from 1. */
  readonly sheet: number;
  readonly sheets: number;
}

/** Name and title of a sheet that is about a whole unit: "a-soffit-plan-p2"; "Soffit plan, Unit A, mirrored". */
export function unitEntries(
  info: SheetInfo,
  unit: string,
  {
    kind,
    ending,
    title,
  }: { readonly kind: string; readonly ending: readonly string[]; readonly title: string },
): Pick<SheetEntries, "name" | "title"> {
  const hand = isAllMirrored(info) ? [FRAME_WORDS[info.language].mirrored] : [];
  return {
    name: [filePart(unit) || "unit", kind, ...ending].join("-"),
    title: [title, plainText(info.unitName), ...hand].join(", "),
  };
}

/** @param marks - inside the content of the frame, which `frameOf` and `contentBox` give */
export function framedSheet(info: SheetInfo, entries: SheetEntries, marks: readonly Mark[]): Sheet {
  const { name, title, description, ...rest } = entries;
  const key = sheetKey(info, name, marks);
  const frame = frameOf(info, { ...rest, title, key });
  const { width, height } = frame;
  return { name, width, height, title, description, key, marks: [...marks, ...frame.marks] };
}
