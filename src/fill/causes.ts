// Gathers closures by what makes them, so that one decision can take many away.
//
//   "Wall 160 with a 150 leg asks for 310 at 14 corners: adding 310 and 460 to the kit removes 28 closures."

import type { Mm } from "../units.ts";
import { nearestLengths } from "./cover.ts";
import type { CoverTable } from "./coverTable.ts";
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

/**
 * Causes by number of closures, most first, then zones by width before residues by nudge.
 *
 * @param leg - the leg of the kit's square corners, mm
 */
export function gatherCauses(
  drafts: readonly FaceDraft[],
  stretches: readonly (readonly Stretch[])[],
  leg: Mm,
  tableFor: (face: number) => CoverTable,
): readonly Cause[] {
  const byThickness = new Map<Mm | null, ZoneCause>();
  const byNudge = new Map<Mm | null, number>();
  for (const draft of drafts) {
    for (const part of draft.parts) {
      if (part.kind !== "closure") continue;
      const stretch = stretches[draft.settled.index]!.find((each) => holds(each, part));
      if (stretch === undefined) continue;
      if (!part.isZone) {
        const nudge = nudgeOf(stretch, tableFor(draft.settled.index));
        byNudge.set(nudge, (byNudge.get(nudge) ?? 0) + 1);
        continue;
      }
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
  const residues = [...byNudge].sort(([a], [b]) => (a ?? 0) - (b ?? 0));
  for (const [nudge, count] of residues) causes.push(residueCause(nudge, count));
  return causes.sort((a, b) => b.closures - a.closures || (b.widths[0] ?? 0) - (a.widths[0] ?? 0));
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

// How far an interval is from a length that panels alone fill, the nearer way.
function nudgeOf({ low, high }: Stretch, table: CoverTable): Mm | null {
  const length = high - low;
  const { below, above } = nearestLengths(length, table, "plain");
  const ways = [below, above].flatMap((other) => (other === null ? [] : [Math.abs(other - length)]));
  return ways.length === 0 ? null : Math.min(...ways);
}

function residueCause(nudge: Mm | null, closures: number): Cause {
  const places = counted(closures, "face misses", "faces miss");
  const message =
    nudge === null
      ? `${places} every length that panels alone fill: more widths in the kit would remove ${counted(closures, "closure")}.`
      : `${places} a length that panels alone fill by ${nudge} mm: moving a wall or a jamb there by ${nudge} mm removes ` +
        `${counted(closures, "closure")}.`;
  return { message, closures, places: closures, widths: [] };
}
