// Joining walls on both sides of a wall, so near each other that the joints behind one stand opposite a leg of the other.
//
//   face B  ──────|leg| stem |leg|── zone ──|─────
//   face A  ──────|── zone ──|leg| stem |leg|─────
//                 joint                     joint      nothing between them can be tied

import { type Kit, ruleValue } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import type { FaceDraft } from "./faceDraft.ts";
import type { FacePart, LegPart } from "./parts.ts";
import type { ProblemLog } from "./problems.ts";

const ASIDE = 2; // mm: faces this near to one plane are one side of a wall, as everywhere

/**
 * Files one warning for each such pair of joining walls whose outer joints are further apart than ties may be.
 * Cost: about linear in the number of faces.
 */
export function checkStaggered(drafts: readonly FaceDraft[], kit: Kit, log: ProblemLog): void {
  const greatest = ruleValue(kit, "tieSpacing");
  if (greatest === undefined) return;
  const planes = new Map<string, FaceDraft[]>();
  for (const draft of drafts) {
    const key = planeKey(draft, offsetOf(draft), draft.settled.isReversed);
    const known = planes.get(key);
    if (known === undefined) planes.set(key, [draft]);
    else known.push(draft);
  }
  for (const draft of drafts) {
    const before = zonesBeforeLegs(draft);
    if (before.length === 0) continue;
    const own = sameSide(draft, offsetOf(draft), draft.settled.isReversed, planes);
    const across = otherSide(draft, planes);
    for (const { leg, end: low } of before) {
      const next = across
        .flatMap(zonesBehindLegs)
        .filter((one) => one.leg.high > leg.low)
        .sort((a, b) => a.leg.high - b.leg.high)[0];
      if (next === undefined) continue;
      if ([...own, ...across].some((one) => hasPanels(one, leg.low, next.leg.high))) continue;
      if (next.end - low > greatest) report(draft, { low, length: next.end - low }, greatest, log);
    }
  }
}

// Across the wall's direction. Stems that nearly meet leave faces with no face in common across, so lines of wall do not
// tell; planes do.
function offsetOf({ settled: { direction, formed } }: FaceDraft): Mm {
  return Math.round(direction[0] * formed.from[1] - direction[1] * formed.from[0]);
}

function planeKey({ settled: { direction } }: FaceDraft, offset: Mm, isReversed: boolean): string {
  return `${Math.round(direction[0] * 1e6)} ${Math.round(direction[1] * 1e6)} ${offset} ${isReversed}`;
}

function sameSide(
  draft: FaceDraft,
  offset: Mm,
  isReversed: boolean,
  planes: ReadonlyMap<string, readonly FaceDraft[]>,
): readonly FaceDraft[] {
  const found: FaceDraft[] = [];
  for (let by = -ASIDE; by <= ASIDE; by++)
    found.push(...(planes.get(planeKey(draft, offset + by, isReversed)) ?? []));
  return found;
}

// The body lies left of a face: of a reversed one towards lesser offsets.
function otherSide(
  draft: FaceDraft,
  planes: ReadonlyMap<string, readonly FaceDraft[]>,
): readonly FaceDraft[] {
  const { isReversed, formed } = draft.settled;
  const thicknesses = new Set(formed.opposite.map(({ thickness }) => Math.round(thickness)));
  return [...thicknesses].flatMap((thickness) =>
    sameSide(draft, offsetOf(draft) + (isReversed ? -thickness : thickness), !isReversed, planes),
  );
}

function hasPanels({ parts }: FaceDraft, low: Mm, high: Mm): boolean {
  return parts.some(
    (part) => (part.kind === "panel" || part.kind === "closure") && part.low < high && part.high > low,
  );
}

interface ZoneByLeg {
  readonly leg: LegPart;
  /** The end of the zone away from the leg. */
  readonly end: Mm;
}

// Zones that reach up to the low end of a leg.
function zonesBeforeLegs({ parts }: FaceDraft): readonly ZoneByLeg[] {
  const found: ZoneByLeg[] = [];
  parts.forEach((part, k) => {
    if (part.kind !== "leg") return;
    let end = part.low;
    for (let at = k - 1; at >= 0 && isZoneBetween(parts[at]!) && parts[at]!.high === end; at--)
      end = parts[at]!.low;
    if (end < part.low) found.push({ leg: part, end });
  });
  return found;
}

// Zones that begin at the high end of a leg.
function zonesBehindLegs({ parts }: FaceDraft): readonly ZoneByLeg[] {
  const found: ZoneByLeg[] = [];
  parts.forEach((part, k) => {
    if (part.kind !== "leg") return;
    let end = part.high;
    for (let at = k + 1; at < parts.length && isZoneBetween(parts[at]!) && parts[at]!.low === end; at++)
      end = parts[at]!.high;
    if (end > part.high) found.push({ leg: part, end });
  });
  return found;
}

function isZoneBetween(part: FacePart): boolean {
  return (part.kind === "panel" || part.kind === "closure") && part.isZone;
}

function report(draft: FaceDraft, { low, length }: { low: Mm; length: Mm }, greatest: Mm, log: ProblemLog) {
  const { isReversed, high: faceHigh, low: faceLow, formed } = draft.settled;
  const wall = formed.walls[0] ?? "";
  log.add(
    "warning",
    "tie-spacing",
    `The walls that join wall ${wall} from its two sides leave ${length} mm without a joint that faces a joint; the greatest ` +
      `spacing of ties is ${greatest} mm: move one of them, or the engineer decides on ties or supports there.`,
    { face: draft.id, x: isReversed ? faceHigh - low : low - faceLow },
  );
}
