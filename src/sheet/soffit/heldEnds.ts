// Which ends of strips hang on a prop alone once the connectors have gone.
//
//     ═══●═════●═════●═══╴      An end that no other strip meets bears on a connector while the forms stand; it stays,
//        └──── held by ──┘      pinned to the head nearest to it.

import type { Soffit, SoffitProp } from "../../fill/result.ts";
import { distance } from "../../geom/point.ts";
import type { Position } from "../../plan/project.ts";

export interface HeldEnd {
  readonly end: Position;
  readonly prop: SoffitProp;
}

/** Ends of strips that meet are nearer than this, mm. */
const MEETING = 1;

/** The loose ends of all strips that the fill says a prop holds, in the order of the strips. */
export function heldEnds({ pieces, props }: Soffit): readonly HeldEnd[] {
  const strips = pieces.filter(({ family }) => family === "shoring-strip");
  const byPiece = new Map(props.map((prop) => [prop.piece, prop]));
  return strips.flatMap((strip): readonly HeldEnd[] => {
    const holder = strip.heldBy === undefined ? undefined : byPiece.get(strip.heldBy);
    if (holder === undefined) return [];
    const others = strips.filter((other) => other !== strip).flatMap(({ outline }) => endsOf(outline));
    const loose = endsOf(strip.outline).filter(
      (end) => !others.some((other) => distance(other, end) < MEETING),
    );
    const nearest = [...loose].sort((a, b) => distance(a, holder.at) - distance(b, holder.at));
    return nearest.map((end, index) => ({
      end,
      prop: index === 0 ? holder : nearestOn(strip.outline, end, props, holder),
    }));
  });
}

/** A strip that is a line of its own has two loose ends; its far end hangs on the last head on it. */
function nearestOn(
  outline: readonly Position[],
  end: Position,
  props: readonly SoffitProp[],
  holder: SoffitProp,
): SoffitProp {
  const [a, b] = endsOf(outline);
  if (a === undefined || b === undefined) return holder;
  const length = distance(a, b);
  const on = props.filter(({ at }) => distance(a, at) + distance(at, b) < length + MEETING);
  return [...on].sort((p, q) => distance(p.at, end) - distance(q.at, end))[0] ?? holder;
}

/** Middles of the two short sides. */
export function endsOf(outline: readonly Position[]): readonly Position[] {
  const [a, b, c, d] = outline;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
  const middle = (p: Position, q: Position): Position => [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
  return distance(a, b) <= distance(b, c) ? [middle(a, b), middle(c, d)] : [middle(b, c), middle(d, a)];
}
