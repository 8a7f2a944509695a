// Gathers closures by what makes them, so that one decision can take many away.
//
//   "Wall 160 with a 150 leg asks for 310 at 14 corners: adding 310 and 460 to the kit removes 28 closures."

import type { Mm } from "../units.ts";
import type { FaceDraft } from "./faceDraft.ts";
import type { ClosurePart } from "./parts.ts";
import { counted, listText } from "./problems.ts";
import type { Cause } from "./result.ts";
import type { Stretch } from "./stretches.ts";

interface ZoneCause {
  /** The wall that makes the zones what they are; null where a corner is not square or none stands at an end of it. */
  readonly thickness: Mm | null;
  readonly widths: Set<Mm>;
  closures: number;
}

/** Causes by number of closures, most first, then by thickness or width. Panels of `leg` c are the kit's. */
export function gatherCauses(
  drafts: readonly FaceDraft[],
  stretches: readonly (readonly Stretch[])[],
  leg: Mm,
): readonly Cause[] {
  const byThickness = new Map<Mm | null, ZoneCause>();
  const byWidth = new Map<Mm, number>();
  for (const draft of drafts) {
    for (const part of draft.parts) {
      if (part.kind !== "closure") continue;
      const width = part.high - part.low;
      if (!part.isZone) {
        byWidth.set(width, (byWidth.get(width) ?? 0) + 1);
        continue;
      }
      const stretch = stretches[draft.settled.index]!.find((each) => holds(each, part));
      if (stretch === undefined) continue;
      const length = stretch.high - stretch.low;
      const thickness = thicknessBehind(stretch, leg, drafts);
      const cause = byThickness.get(thickness) ?? { thickness, widths: new Set<Mm>(), closures: 0 };
      cause.widths.add(length);
      cause.closures += 1;
      byThickness.set(thickness, cause);
    }
  }
  const causes: Cause[] = [];
  for (const cause of byThickness.values()) causes.push(zoneCause(cause, leg));
  for (const [width, count] of byWidth) causes.push(residueCause(width, count));
  return causes.sort((a, b) => b.closures - a.closures || (a.widths[0] ?? 0) - (b.widths[0] ?? 0));
}

function holds(stretch: Stretch, part: ClosurePart): boolean {
  return stretch.low <= part.low && part.high <= stretch.high;
}

// A zone is as long as the wall behind it and the legs at its ends, but only where those corners are square and stand.
function thicknessBehind(stretch: Stretch, leg: Mm, drafts: readonly FaceDraft[]): Mm | null {
  const corners = [...stretch.lowJoint.corners, ...stretch.highJoint.corners];
  const isSquare = corners.every((corner) => drafts[corner]!.settled.formed.fromEnd === "inside");
  if (corners.length === 0 || !isSquare) return null;
  const legs = stretch.lowJoint.corners.length > 0 && stretch.highJoint.corners.length > 0 ? 2 : 1;
  const thickness = stretch.high - stretch.low - legs * leg;
  return thickness > 0 ? thickness : null;
}

function zoneCause({ thickness, widths, closures }: ZoneCause, leg: Mm): Cause {
  const sorted = [...widths].sort((a, b) => a - b);
  const asked = listText(sorted.map(String));
  if (thickness === null) {
    const message =
      `Corners that are not square or are left out ask for ${asked} at ${counted(closures, "place")} opposite them: ` +
      `adding ${asked} to the kit removes ${counted(closures, "closure")}.`;
    return { message, closures, places: closures, widths: sorted };
  }
  return {
    message:
      `Wall ${thickness} with a ${leg} leg asks for ${asked} at ${counted(closures, "corner or joining wall", "corners and joining walls")}: ` +
      `adding ${asked} to the kit removes ${counted(closures, "closure")}.`,
    closures,
    places: closures,
    widths: sorted,
  };
}

function residueCause(width: Mm, closures: number): Cause {
  return {
    message:
      `${counted(closures, "face")} end${closures === 1 ? "s" : ""} ${width} mm off the kit's grid: moving a wall or a jamb by ` +
      `${width} mm there removes ${counted(closures, "closure")}.`,
    closures,
    places: closures,
    widths: [],
  };
}
