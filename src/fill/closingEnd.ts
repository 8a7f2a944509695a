// At which end of a free interval the filler and the closure stand: where the room closes last.

import type { Outline } from "../plan/face.ts";
import type { FormedFace } from "./formedFace.ts";
import type { SettledFace } from "./settled.ts";
import type { Stretch } from "./stretches.ts";

export interface ClosingEnd {
  readonly side: "low" | "high";
  /** False where neither end has an inside corner on either face. */
  readonly hasCorner: boolean;
}

/**
 * Corners at which nothing closes: in a room without openings, the one of least x, then least y, where work starts.
 *
 * @returns indices of the faces that begin there
 */
export function startCorners(
  outline: Outline,
  formed: readonly FormedFace[],
  faces: readonly SettledFace[],
): ReadonlySet<number> {
  const hasOpening = new Set<number>();
  for (const face of faces) {
    if (face.formed.room !== null && face.openings.length > 0) hasOpening.add(face.formed.room);
  }
  const corners = new Set<number>();
  for (const face of formed) {
    if (face.room === null || hasOpening.has(face.room)) continue;
    const room = outline.rooms[face.room]!;
    if (face.outlineFace.ring !== room.ring) continue;
    if (face.from[0] === room.lowerLeft[0] && face.from[1] === room.lowerLeft[1]) corners.add(face.index);
  }
  return corners;
}

/**
 * The closing end of a free interval: the end at an inside corner of either face; with one at both ends or at
 * neither, the end of greater x, then y, which is the higher place on the line.
 */
export function closingEnd(stretch: Stretch, starts: ReadonlySet<number>): ClosingEnd {
  const low = stretch.lowJoint.corners;
  const high = stretch.highJoint.corners;
  const hasCorner = low.length > 0 || high.length > 0;
  const closesLow = low.length > 0 && !low.some((corner) => starts.has(corner));
  const closesHigh = high.length > 0 && !high.some((corner) => starts.has(corner));
  if (closesLow !== closesHigh) return { side: closesLow ? "low" : "high", hasCorner };
  const mustNotCloseHigh = !closesHigh && high.length > 0 && low.length === 0;
  return { side: mustNotCloseHigh ? "low" : "high", hasCorner };
}

/** Where the closure of a zone stands: at its one leg end, or at the higher end where it has two or none. */
export function zoneClosureSide(stretch: Stretch): "low" | "high" {
  const atLow = stretch.lowJoint.corners.length > 0;
  const atHigh = stretch.highJoint.corners.length > 0;
  return atLow && !atHigh ? "low" : "high";
}
