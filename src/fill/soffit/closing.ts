// Which end of a room its narrow slab pieces go to.
//
// Each band is laid from the end away from the door and closed at the door's: what is last in comes first out. The
// odd band lies at the far side from the door, where it is seen least. Common practice, no source. Without a door on
// either side, or with one on both, it is the end of greater u or v, so that all rooms agree.

import type { FaceDraft } from "../faceDraft.ts";
import type { LocalFrame } from "./localFrame.ts";
import type { Direction, SoffitInput } from "./planSoffit.ts";
import type { End } from "./tiles.ts";

export function closingEnds(faces: readonly FaceDraft[], frame: LocalFrame): SoffitInput["closing"] {
  const doors = { u: { low: false, high: false }, v: { low: false, high: false } };
  for (const { settled, openings } of faces) {
    if (!openings.some(({ formed, sill }) => formed === "band" && sill === 0)) continue;
    const from = frame.toLocal(settled.formed.from);
    const to = frame.toLocal(settled.formed.to);
    const [du, dv] = [to[0] - from[0], to[1] - from[1]];
    // The room lies to the right of the face: a face that goes up is the wall at lesser u.
    if (Math.abs(dv) > Math.abs(du)) doors.u[dv > 0 ? "low" : "high"] = true;
    else doors.v[du < 0 ? "low" : "high"] = true;
  }
  const endsOf = (axis: Direction): { readonly lengths: End; readonly widths: End } => {
    const { low, high } = doors[axis];
    if (low === high) return { lengths: "high", widths: "high" };
    return low ? { lengths: "high", widths: "low" } : { lengths: "low", widths: "high" };
  };
  return { u: endsOf("u"), v: endsOf("v") };
}
