// Gathers closures and fillers by what makes them, so that one decision can take many away.
//
//   "Wall 160 with a 150 leg asks for 310 at 14 corners: adding 310 and 460 to the kit removes 28 closures."

import type { Mm } from "../units.ts";
import { nearestLengths } from "./cover.ts";
import type { CoverTable } from "./coverTable.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { fillerCauses, type StretchFillers } from "./fillerCauses.ts";
import type { FacePart } from "./parts.ts";
import { counted, listText } from "./problems.ts";
import type { Cause } from "./result.ts";
import type { Stretch } from "./stretches.ts";

interface ZoneCause {
  /** The wall that makes the zones what they are; null where a corner is not square or none stands at an end of it. */
  readonly thickness: Mm | null;
  readonly widths: Set<Mm>;
  closures: number;
  places: number;
}

/**
 * Causes by number of closures, then of fillers, then of places, most first; zones by width before residues by nudge. All
 * full-height closures and fillers are in them once.
 *
 * @param leg - the leg of the kit's square corners, mm
 */
export function gatherCauses(
  drafts: readonly FaceDraft[],
  stretches: readonly (readonly Stretch[])[],
  leg: Mm,
  tableFor: (face: number) => CoverTable,
): readonly Cause[] {
  const parted = new Map<Mm | null, ZoneCause>();
  const whole = new Map<Mm | null, ZoneCause>();
  const byNudge = new Map<Mm | null, number>();
  const fillers: StretchFillers[] = [];
  for (const { parts, settled } of drafts) {
    const table = tableFor(settled.index);
    for (const stretch of stretches[settled.index]!) {
      const own = parts.filter((part) => holds(stretch, part));
      const closures = own.filter(({ kind }) => kind === "closure").length;
      const odd = own.filter((part) => part.kind === "panel" && !part.isStandard).length;
      if (stretch.opposite === null) {
        const causes = closures > 0 ? parted : whole;
        if (closures + odd > 0) addZone(causes, stretch, closures, thicknessBehind(stretch, leg, drafts));
        continue;
      }
      const nudge = closures > 0 ? nudgeOf(stretch, table) : null;
      if (closures > 0) byNudge.set(nudge, (byNudge.get(nudge) ?? 0) + closures);
      if (odd > 0) fillers.push({ stretch, table, fillers: odd });
    }
  }
  const residues = [...byNudge].sort(([a], [b]) => (a ?? 0) - (b ?? 0));
  const causes = [
    ...[...parted.values()].map((cause) => zoneCause(cause, leg)),
    ...residues.map(([nudge, count]) => residueCause(nudge, count)),
    ...fillerCauses(fillers),
    ...[...whole.values()].map((cause) => wholeZoneCause(cause, leg)),
  ];
  return causes.sort(
    (a, b) =>
      b.closures - a.closures ||
      b.fillers - a.fillers ||
      b.places - a.places ||
      (b.widths[0] ?? 0) - (a.widths[0] ?? 0),
  );
}

function addZone(
  causes: Map<Mm | null, ZoneCause>,
  { low, high }: Stretch,
  closures: number,
  thickness: Mm | null,
): void {
  const cause = causes.get(thickness) ?? { thickness, widths: new Set<Mm>(), closures: 0, places: 0 };
  causes.set(thickness, cause);
  cause.widths.add(high - low);
  cause.closures += closures;
  cause.places += 1;
}

function holds(stretch: Stretch, part: FacePart): boolean {
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

function zoneCause({ thickness, widths, closures, places }: ZoneCause, leg: Mm): Cause {
  const sorted = [...widths].sort((a, b) => a - b);
  const asked = listText(sorted.map(String));
  if (thickness === null) {
    const message =
      `Corners that are not square or are left out ask for ${asked} at ${counted(closures, "place")} opposite them: ` +
      `adding ${asked} to the kit removes ${counted(closures, "closure")}.`;
    return { message, closures, fillers: 0, places, widths: sorted };
  }
  return {
    message:
      `Wall ${thickness} with a ${leg} leg asks for ${asked} at ${counted(closures, "corner or joining wall", "corners and joining walls")}: ` +
      `adding ${asked} to the kit removes ${counted(closures, "closure")}.`,
    closures,
    fillers: 0,
    places,
    widths: sorted,
  };
}

// One panel each, of a width the kit has: nothing is wrong, but a thinner wall or another leg would have another width.
function wholeZoneCause({ thickness, widths, places }: ZoneCause, leg: Mm): Cause {
  const asked = listText([...widths].sort((a, b) => a - b).map(String));
  const message =
    thickness === null
      ? `Corners that are not square or are left out leave ${asked} at ${counted(places, "place")} opposite them.`
      : `Wall ${thickness} with a ${leg} leg leaves ${asked} at ${counted(places, "corner or joining wall", "corners and joining walls")}.`;
  return { message, closures: 0, fillers: 0, places, widths: [] };
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
  return { message, closures, fillers: 0, places: closures, widths: [] };
}
