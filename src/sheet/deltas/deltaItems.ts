// How the pieces of a delta list read and look: as on the lists of the units they stand in.

import type { DeliverItem } from "../../fill/deliver/pourNeeds.ts";
import { mirrorFill } from "../../fill/mirror.ts";
import type { FillDocument } from "../../fill/result.ts";
import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import { sheetInfoOf } from "../info.ts";
import { type ListItem, listItems } from "../lists/listItems.ts";

/** A fill, whole and as drawn, with what it was made of. */
export interface DeltaSource {
  readonly fill: FillDocument;
  readonly project: Project;
  readonly kit: Kit;
}

export type ItemLook = (item: DeliverItem) => ListItem;

/**
 * Looks of all kinds in a fill, in both hands; quantity and places say nothing.
 *
 * @throws {RangeError} when asked for a piece that the fill lacks
 */
export function itemLooks(given: DeltaSource): ItemLook {
  const { fill, project, kit } = given;
  const known = new Map<string, ListItem>();
  for (const entry of fill.units) {
    const unit = project.units.find(({ id }) => id === entry.unit);
    if (unit === undefined) continue;
    const info = sheetInfoOf({ project, unit, kit }, entry);
    const isMirrored = project.pours.some(({ id, mirror }) => mirror && entry.pours.includes(id));
    for (const hand of isMirrored ? [entry, mirrorFill(entry, kit)] : [entry]) {
      for (const item of listItems(hand, info)) {
        for (const key of [item.code, `${item.code}\n${item.size}`]) {
          if (!known.has(key)) known.set(key, item);
        }
      }
    }
  }
  return ({ key, code }) => {
    const found = known.get(key) ?? known.get(code);
    if (found === undefined) throw new RangeError(`the fill has no piece "${code}"`);
    return found;
  };
}
