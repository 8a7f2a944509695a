// Pins, wedges and sleeves: counted from the joints of the pieces placed, since they have no place of their own.
//
//   pins on an upright joint: from the first hole every `pinPitch`, and one more where the last is far from the end
//   pins on a level joint: every `pinPitch`, two at least
//
// Two at least on a short edge and one wedge a pin are common practice, no source.

import { distance } from "../geom/point.ts";
import { accessoryOf } from "../kit/fittings.ts";
import { type Kit, ruleValue } from "../kit/kit.ts";
import { sleeveOf } from "../kit/ties.ts";
import type { Position } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { DraftPiece, FaceDraft } from "./faceDraft.ts";
import type { AccessoryCount, EdgePiece, Reveal, Soffit } from "./result.ts";
import type { PlacedTie } from "./ties.ts";

const LEAST_PINS = 2;

export interface AccessoryContext {
  readonly drafts: readonly FaceDraft[];
  readonly ties: readonly PlacedTie[];
  readonly edges: readonly EdgePiece[];
  readonly reveals: readonly Reveal[];
  readonly soffits: readonly Soffit[];
  readonly kit: Kit;
}

/** Accessories by family. */
export function countAccessories(context: AccessoryContext): readonly AccessoryCount[] {
  const { kit } = context;
  const counts: AccessoryCount[] = [];
  const rule = pinRuleOf(kit);
  if (rule !== null) {
    const quantity = countPins(context, rule);
    for (const family of ["pin", "wedge"] as const) {
      const piece = accessoryOf(kit, family);
      if (piece !== null && quantity > 0)
        counts.push({ code: piece.code, family, quantity, rule: "pinPitch" });
    }
  }
  counts.push(...countSleeves(context));
  return counts;
}

/** By what pins are counted: one every `pitch` of a level joint, on upright joints by the holes. */
export interface PinRule {
  readonly pitch: Mm;
  readonly holes: { readonly first: Mm; readonly pitch: Mm };
}

/** Null where the kit has no rule `pinPitch`. */
export function pinRuleOf(kit: Kit): PinRule | null {
  const pitch = ruleValue(kit, "pinPitch");
  return pitch === undefined
    ? null
    : { pitch, holes: ruleValue(kit, "holes") ?? { first: pitch / 2, pitch } };
}

function countPins({ drafts, edges, reveals, soffits }: AccessoryContext, rule: PinRule): number {
  return (
    drafts.reduce((sum, { pieces }) => sum + pinsOnFace(pieces, rule), 0) +
    pinsAtEdges(edges, reveals, rule) +
    soffits.reduce((sum, soffit) => sum + pinsOverhead(soffit, rule), 0)
  );
}

/** An outside corner is pinned to both of its faces along its length, as is a reveal piece to its two edges. */
export function pinsAtEdges(
  edges: readonly EdgePiece[],
  reveals: readonly Reveal[],
  { holes, pitch }: PinRule,
): number {
  const lengths = [
    ...edges.map(edgeLength),
    ...reveals.flatMap(({ pieces }) => pieces.map(({ length }) => length)),
  ];
  return lengths.reduce((sum, length) => sum + 2 * pinsUpright(length, holes, pitch), 0);
}

/** @param pieces - by x, then z */
export function pinsOnFace(
  pieces: readonly Pick<DraftPiece, "x" | "z" | "width" | "height">[],
  { holes, pitch }: PinRule,
): number {
  let pins = 0;
  for (let k = 0; k < pieces.length; k++) {
    const piece = pieces[k]!;
    const right = piece.x + piece.width;
    // Pieces come by x, then z: those that begin where this one ends lie together, behind it.
    for (let at = firstFrom(pieces, right, k + 1); at < pieces.length && pieces[at]!.x === right; at++) {
      const beside = pieces[at]!;
      const shared = overlap(piece.z, piece.z + piece.height, beside.z, beside.z + beside.height);
      if (shared > 0) pins += pinsUpright(shared, holes, pitch);
    }
  }
  const raised = pieces.filter((piece) => piece.z > 0);
  const widest = pieces.reduce((most, piece) => Math.max(most, piece.width), 0);
  for (const above of raised) {
    const end = above.x + above.width;
    for (let at = firstFrom(pieces, above.x - widest, 0); at < pieces.length && pieces[at]!.x < end; at++) {
      const below = pieces[at]!;
      if (below.z + below.height !== above.z) continue;
      const shared = overlap(below.x, below.x + below.width, above.x, end);
      if (shared > 0) pins += Math.max(shared >= holes.pitch ? LEAST_PINS : 1, Math.ceil(shared / pitch));
    }
  }
  return pins;
}

// A slab panel is pinned where it ends, to strip or connector, and along one long side to the panel before it or to the
// connector beside it. A closure lies under the long pins of the joint it widens.
export function pinsOverhead(soffit: Soffit, { pitch }: PinRule): number {
  let pins = 0;
  for (const { family, outline } of soffit.pieces) {
    if (family !== "slab-panel") continue;
    for (const length of sidesOf(outline)) pins += Math.max(LEAST_PINS, Math.ceil(length / pitch));
  }
  return pins;
}

/** Two ends and one long side of a rectangle. */
function sidesOf(outline: readonly Position[]): readonly Mm[] {
  const [a, b, c] = outline;
  if (a === undefined || b === undefined || c === undefined) return [];
  const [one, other] = [distance(a, b), distance(b, c)].sort((p, q) => p - q);
  return [one!, one!, other!];
}

/** The first piece from `low` on that begins at `x` or right of it. */
function firstFrom(pieces: readonly { readonly x: Mm }[], x: Mm, low: number): number {
  let from = low;
  let to = pieces.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if (pieces[middle]!.x < x) from = middle + 1;
    else to = middle;
  }
  return from;
}

/** Pins on an upright joint: 8 on 2250 at pitch 300 from holes at 150 (seven, and one near the top). */
export function pinsUpright(length: Mm, holes: { first: Mm; pitch: Mm }, pitch: Mm): number {
  if (length <= 0) return 0;
  if (length < holes.first) return 1;
  const regular = Math.floor((length - holes.first) / pitch) + 1;
  const last = holes.first + (regular - 1) * pitch;
  return Math.max(LEAST_PINS, regular + (length - last > holes.pitch ? 1 : 0));
}

function overlap(a: Mm, b: Mm, c: Mm, d: Mm): Mm {
  return Math.min(b, d) - Math.max(a, c);
}

function edgeLength({ from, to }: EdgePiece): Mm {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const dz = to[2] - from[2];
  return Math.round(Math.sqrt(dx * dx + dy * dy + dz * dz));
}

function countSleeves({ ties, kit }: AccessoryContext): readonly AccessoryCount[] {
  const byLength = new Map<Mm, number>();
  for (const { tie } of ties) byLength.set(tie.length, (byLength.get(tie.length) ?? 0) + tie.heights.length);
  const counts: AccessoryCount[] = [];
  for (const [length, quantity] of [...byLength].sort(([a], [b]) => a - b)) {
    const sleeve = sleeveOf(kit, length);
    if (sleeve !== null) counts.push({ code: sleeve.code, family: "tie-sleeve", quantity, rule: "tieRows" });
  }
  return counts;
}
