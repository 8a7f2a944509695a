// Do the props of a unit's upper storey stand over those of the storey below?
//
//     ●   ●   ●    upper storey: what a prop carries goes straight down through the slab
//     ┊   ┊   ┊
//     ●   ●   ●    the storey below
//
// Storeys of one unit come in the order of their pours, the lower one first. Mirrored pours are mirrored in every storey,
// so that their props stand over each other exactly where those of the unit as drawn do.

import { distance } from "../../geom/point.ts";
import type { Problem, Soffit } from "../result.ts";

/** A head is this wide at least, so props this near to each other stand in one line, mm. Common practice, no source. */
const REACH = 75;

/** One warning for each room in which a prop of the upper storey stands beside all of those below. */
export function checkPropLines(below: readonly Soffit[], above: readonly Soffit[]): readonly Problem[] {
  return above.flatMap((soffit): readonly Problem[] => {
    const lower = below.find(({ room }) => room === soffit.room);
    if (lower === undefined || lower.props.length === 0) return [];
    const astray = soffit.props.filter(({ at }) =>
      lower.props.every((prop) => distance(prop.at, at) > REACH),
    );
    const first = astray[0];
    if (first === undefined) return [];
    const message =
      `In ${soffit.room} ${astray.length} of ${soffit.props.length} props do not stand over a prop of the storey below: the ` +
      `engineer decides whether the slab between carries that, or give both storeys one connector and one direction.`;
    return [{ severity: "warning", kind: "prop-lines", message, where: { room: soffit.room, at: first.at } }];
  });
}
