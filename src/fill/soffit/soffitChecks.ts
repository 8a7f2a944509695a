// What the site says of a soffit that tiles: does anything stay under it, and what do the props stand on?

import { distanceToPath } from "../../geom/path.ts";
import { isInside } from "../../geom/ring.ts";
import type { Position } from "../../plan/project.ts";
import { counted, type ProblemLog } from "../problems.ts";
import type { Soffit } from "../result.ts";
import type { SoffitField } from "./field.ts";
import type { SoffitPlan } from "./planSoffit.ts";

/** Props keep this far from the edge of what they stand on, mm. Common practice, no source. */
const BASE_EDGE = 150;

export function checkSoffit(
  {
    soffit,
    field,
    plan,
  }: { readonly soffit: Soffit; readonly field: SoffitField; readonly plan: SoffitPlan | null },
  { log }: { readonly log: ProblemLog },
): void {
  const { room, props } = soffit;
  if (plan === null && soffit.unfilled.length === 0 && soffit.holes.length > 0) {
    log.add(
      "warning",
      "slab-opening",
      `Openings in the slab take all of the soffit of ${room} within its connectors: give the room the kind "open" if it is a ` +
        `shaft, else make them smaller.`,
      { room },
    );
  }
  if (plan === null || plan.tiles.length === 0) return;
  if (plan.strips.length === 0) {
    log.add(
      "warning",
      "no-retained-support",
      `In ${room} one row of slab panels reaches from connector to connector: nothing stays under the slab when they are ` +
        `struck; keep them until the slab has its full striking strength, or add a strip.`,
      { room },
    );
  }
  const openings = field.openings.map((ring) => ring.map(field.frame.toPlan));
  const near = props.filter(({ at }) => openings.some((ring) => isNear(at, ring)));
  if (near.length > 0) {
    log.add(
      "warning",
      "prop-at-edge",
      `In ${room} ${counted(near.length, "prop stands", "props stand")} within ${BASE_EDGE} mm of an opening that the floor ` +
        `below has too: cover the opening to carry them, or move it.`,
      { room, at: near[0]!.at },
    );
  }
}

function isNear(at: Position, ring: readonly Position[]): boolean {
  return isInside(ring, at) || distanceToPath(at, [...ring, ring[0]!]) < BASE_EDGE;
}
