// The settled corner of two faces that meet, each on its own line of wall.

import type { Position } from "../plan/project.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { pointAt } from "./onFace.ts";

/** Where a face begins and the one before it ends. Whole millimetres where both run along an axis. */
export function cornerPoint(draft: FaceDraft, before: FaceDraft): Position {
  const face = draft.settled;
  const last = before.settled;
  const own = face.isReversed ? face.high : face.low;
  const other = last.isReversed ? last.low : last.high;
  // Square to each other: each line settles the coordinate along it.
  if (face.direction[1] === 0 && last.direction[0] === 0) return [own, other];
  if (face.direction[0] === 0 && last.direction[1] === 0) return [other, own];
  return pointAt(face, own);
}
