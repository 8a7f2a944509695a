// What a thing of the plan is called.

import { find, type ItemRef, type UnitDocument } from "../../plan/document.ts";
import { type Words, words } from "../words/say.ts";

export function placeWords(unit: UnitDocument, { bucket, id }: ItemRef): Words {
  switch (bucket) {
    case "walls":
      return words("place.wall", { wall: id });
    case "openings": {
      const opening = find(unit.openings, id);
      const isDoor = opening === undefined || opening.sill === 0;
      return words(isDoor ? "place.door" : "place.window", { opening: id });
    }
    case "rooms":
      return words("place.room", { room: find(unit.rooms, id)?.name ?? id });
    case "services":
      return words("place.service", { id });
    case "controlLines":
      return words("place.control-line", { id });
    case "slabs":
      return words("place.slab", { id });
    case "slabOpenings":
      return words("place.slab-opening", { id });
    case "pinned":
      return words("place.pinned", { id });
    default:
      return bucket satisfies never;
  }
}
