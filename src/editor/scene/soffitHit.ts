// What of the soffit lies at a place, and what the hand is on there: a place, so that it outlasts the next fill.

import { isInside } from "../../geom/ring.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import type { LiveFill } from "../live/liveFill.ts";
import { middleOf, type ScenePropPlace, type SoffitShape, sceneSoffit, span } from "./soffitPieces.ts";

/** A place in the soffit of a unit, kept while fills come and go. */
export interface SoffitFocus {
  readonly unit: string;
  readonly at: Position;
  /** How far a prop may be from it, mm: 0 = not a prop was meant. */
  readonly reach: Mm;
}

export type SoffitThing =
  | { readonly kind: "shape"; readonly shape: SoffitShape }
  | { readonly kind: "prop"; readonly place: ScenePropPlace };

/** The prop within reach of a place, else the piece or the open place that holds it; null where there is no soffit. */
export function soffitAt(live: LiveFill | null, at: Position, reach: Mm): SoffitThing | null {
  if (live === null || !live.hasSoffits) return null;
  const { index, props } = sceneSoffit(live);
  let nearest: { readonly place: ScenePropPlace; readonly gap: Mm } | null = null;
  for (const place of reach > 0 ? props : []) {
    const gap = span(place.prop.at, at);
    if (gap <= reach && (nearest === null || gap < nearest.gap)) nearest = { place, gap };
  }
  if (nearest !== null) return { kind: "prop", place: nearest.place };
  const [x, y] = at;
  const shape = index
    .search({ minX: x, minY: y, maxX: x, maxY: y })
    .find(({ outline }) => isInside(outline, [x, y]));
  return shape === undefined ? null : { kind: "shape", shape };
}

/** The id of a thing of the soffit. */
export function soffitId(thing: SoffitThing): string {
  return thing.kind === "prop" ? thing.place.prop.piece : thing.shape.id;
}

/** The thing of the soffit that has an id; null where there is none. */
export function soffitThing(live: LiveFill, id: string): SoffitThing | null {
  if (!live.hasSoffits) return null;
  const { shapes, props } = sceneSoffit(live);
  const place = props.find(({ prop }) => prop.piece === id);
  if (place !== undefined) return { kind: "prop", place };
  const shape = shapes.find((each) => each.id === id);
  return shape === undefined ? null : { kind: "shape", shape };
}

/** The place by which a thing of the soffit is found again. */
export function focusOf(unit: string, thing: SoffitThing): SoffitFocus {
  return thing.kind === "prop"
    ? { unit, at: thing.place.prop.at, reach: PROP_FOUND }
    : { unit, at: middleOf(thing.shape), reach: 0 };
}

const PROP_FOUND: Mm = 60; // a prop that moved less with the next fill is still the same to the eye
