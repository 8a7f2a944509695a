// Where prop heads stand under a line of strips, and how the line is made up of strips between them.
//
//   panels    ┌──┬────┬────┐
//             │  │    │    │
//   strip  ═══╪══●════●════╪═══     a head where panels meet, ends at most 900 past the last head,
//             │  │    │    │        no two heads further apart than the rule `propPitch`
//   panels    └──┴────┴────┘
//
// A support wherever three or four slab panels come together, and 900 past the last head: common practice, no source.

import type { Mm } from "../../units.ts";

/** How far a strip may reach past its last head, mm. Common practice, no source. */
export const END_REACH = 900;
/** How near a re-entrant corner a head stands under the strip along its cut, mm. Common practice, no source. */
const CORNER_REACH = 300;

export interface HeadRules {
  /** Greatest distance between heads; null = the kit gives no rule. */
  readonly pitch: Mm | null;
  /** A head is as wide as its strip and carries what meets on it. */
  readonly headWidth: Mm;
  /** Lengths of strip on offer, longest first. */
  readonly stripLengths: readonly Mm[];
}

export interface StripPart {
  /** From the start of the line. */
  readonly at: Mm;
  readonly length: Mm;
  readonly isMadeToMeasure: boolean;
}

/**
 * Heads along a line of `length`, from its start, in order.
 *
 * @param joints - where panels meet along either side, from the start, in any order
 * @param corners - where a re-entrant corner touches the line
 */
export function placeHeads(
  length: Mm,
  joints: readonly Mm[],
  corners: readonly Mm[],
  { pitch, headWidth, stripLengths }: HeadRules,
): readonly Mm[] {
  const reach = Math.min(pitch ?? Infinity, stripLengths[0] ?? Infinity);
  const found = withinReach(length, headsOverJoints(length, joints, headWidth), reach);
  for (const corner of corners) {
    if (found.some((head) => Math.abs(head - corner) <= CORNER_REACH)) continue;
    found.push(clamp(corner, length, headWidth));
    found.sort((a, b) => a - b);
  }
  return found;
}

// The heads given and as few more as the two ends and the distance between two allow.
function withinReach(length: Mm, heads: readonly Mm[], reach: Mm): Mm[] {
  const end = Math.min(END_REACH, reach);
  if (heads.length === 0) {
    const between = Math.max(0, length - 2 * end);
    const spans = between === 0 ? 0 : Math.ceil(between / reach);
    return spread(Math.floor((length - between) / 2), between, spans);
  }
  const found: Mm[] = [];
  const first = heads[0]!;
  if (first > end) found.push(...spread(end, first - end, Math.ceil((first - end) / reach)).slice(0, -1));
  heads.forEach((head, k) => {
    const before = heads[k - 1];
    if (before !== undefined && head - before > reach)
      found.push(...spread(before, head - before, Math.ceil((head - before) / reach)).slice(1, -1));
    found.push(head);
  });
  const last = heads[heads.length - 1]!;
  const rest = length - end - last;
  if (rest > 0) found.push(...spread(last, rest, Math.ceil(rest / reach)).slice(1));
  return found;
}

// The fewest heads that reach every joint: each stands amid as many joints as fit on it.
function headsOverJoints(length: Mm, joints: readonly Mm[], width: Mm): Mm[] {
  const inside = [...new Set(joints)].filter((at) => at > 0 && at < length).sort((a, b) => a - b);
  const heads: Mm[] = [];
  for (let k = 0; k < inside.length; ) {
    const first = inside[k]!;
    let last = first;
    for (; k < inside.length && inside[k]! - first <= width; k++) last = inside[k]!;
    heads.push(clamp(Math.floor((first + last) / 2), length, width));
  }
  return heads;
}

// A head lies within its strip, so near an end it stands half its width from it; on whole millimetres, as strips are cut.
function clamp(at: Mm, length: Mm, width: Mm): Mm {
  const half = Math.ceil(width / 2);
  if (length <= 2 * half) return Math.floor(length / 2);
  return Math.min(Math.max(at, half), length - half);
}

function spread(from: Mm, distance: Mm, spans: number): Mm[] {
  if (spans === 0) return [from];
  return Array.from({ length: spans + 1 }, (_, k) => from + Math.round((distance * k) / spans));
}

/**
 * The strips of a line: fewest made to measure, then fewest, joints on heads only; of equals the longest first.
 *
 * @param heads - as {@link placeHeads} gives them, never further apart than the longest strip
 * @throws {RangeError} if no strip reaches from one head to the next
 */
export function stripParts(length: Mm, heads: readonly Mm[], lengths: readonly Mm[]): readonly StripPart[] {
  const places = [...new Set([0, ...heads, length])].sort((a, b) => a - b);
  const stock = new Set(lengths);
  const longest = Math.max(0, ...lengths);
  interface Way {
    readonly cut: number;
    readonly count: number;
    readonly next: number;
  }
  const ways: (Way | null)[] = places.map(() => null);
  ways[places.length - 1] = { cut: 0, count: 0, next: -1 };
  for (let k = places.length - 2; k >= 0; k--) {
    // The farthest next joint first: of equal ways the longest strip stays.
    for (let to = places.length - 1; to > k; to--) {
      const rest = ways[to];
      const own = places[to]! - places[k]!;
      if (rest === null || rest === undefined || own > longest) continue;
      const cut = rest.cut + (stock.has(own) ? 0 : 1);
      const known = ways[k];
      if (known != null && (cut > known.cut || (cut === known.cut && rest.count + 1 >= known.count)))
        continue;
      ways[k] = { cut, count: rest.count + 1, next: to };
    }
  }
  if (ways[0] === null) throw new RangeError("no strip reaches from one head to the next");
  const parts: StripPart[] = [];
  for (let k = 0; k < places.length - 1; ) {
    const next = ways[k]!.next;
    const own = places[next]! - places[k]!;
    parts.push({ at: places[k]!, length: own, isMadeToMeasure: !stock.has(own) });
    k = next;
  }
  return parts;
}
