// What the elevations of one room share: its rings, its names, its title, all as on the room sheet.

import type { UnitFill } from "../../fill/result.ts";
import { type RoomParts, roomPartsOf } from "../../fill/roomParts.ts";
import { type SheetRing, sheetRings } from "../faceOrder.ts";
import type { SheetInfo } from "../info.ts";
import { plainText } from "../plainText.ts";
import { ribbonContext } from "../ribbonContext.ts";
import type { RibbonContext } from "../stretch.ts";
import { WORDS } from "../words.ts";

export interface ElevationRoom {
  /** As written over its faces. */
  readonly title: string;
  readonly parts: RoomParts;
  readonly rings: readonly SheetRing[];
  readonly context: RibbonContext;
}

/** The rooms in the order of the room sheets, then the outside, drawn at this scale. */
export function elevationRooms(unit: UnitFill, info: SheetInfo, scale: number): readonly ElevationRoom[] {
  const words = WORDS[info.language];
  return roomPartsOf(unit).map((parts) => {
    const rings = sheetRings(parts.faces, info);
    const context = ribbonContext(unit, parts, rings, info);
    return {
      title: parts.isOutside ? words.outside : plainText(parts.name) || words.unnamed,
      parts,
      rings,
      context: { ...context, scale, nameStyle: "whole" },
    };
  });
}
