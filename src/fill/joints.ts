// The vertical joints of a face: where a piece ends and another begins, and over which heights.

import type { Mm } from "../units.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { placeAt } from "./onFace.ts";

interface Span {
  readonly low: Mm;
  readonly high: Mm;
}

/** What meets at one place: the heights of the pieces that end there from below and begin there, along the line. */
export interface Joint {
  readonly before: Span[];
  readonly after: Span[];
}

/** Joints by place on the line of wall. Connectors and caps are left out: none of their joints need match. */
export function jointsOf(face: FaceDraft): ReadonlyMap<Mm, Joint> {
  const joints = new Map<Mm, Joint>();
  const at = (place: Mm): Joint => {
    const known = joints.get(place);
    if (known !== undefined) return known;
    const made: Joint = { before: [], after: [] };
    joints.set(place, made);
    return made;
  };
  for (const piece of face.pieces) {
    if (piece.z >= face.profile.top) continue;
    const a = placeAt(face.settled, piece.x);
    const b = placeAt(face.settled, piece.x + piece.width);
    const span = { low: piece.z, high: piece.z + piece.height };
    at(Math.min(a, b)).after.push(span);
    at(Math.max(a, b)).before.push(span);
  }
  return joints;
}

/** Whether the face has a piece on both sides of the joint at height `z`. */
export function hasPiecesAt(joint: Joint, z: Mm): boolean {
  const holds = ({ low, high }: Span) => low < z && z < high;
  return joint.before.some(holds) && joint.after.some(holds);
}
