// Which reactions has a stiff beam of even section over rigid supports, its ends free beyond the first and the last?
//
//   ──●────────●──────●───      M at the end supports from the overhangs, inside by the three-moment equation:
//     z1       z2     z3        L·M₁ + 2(L + L')·M₂ + L'·M₃ = −(6/L·EI·θ of the simple spans)
//
// Loads are straight between two places, so every integral is of a polynomial of degree four at most: three points of
// Gauss give it exactly.

/** Load along a line from one place to another, straight between the two: force over length, places in that length. */
export interface LinearLoad {
  readonly from: number;
  readonly to: number;
  readonly atFrom: number;
  readonly atTo: number;
}

/** The load at a place on its stretch. */
export function loadAt({ from, to, atFrom, atTo }: LinearLoad, at: number): number {
  return atFrom + ((atTo - atFrom) * (at - from)) / (to - from);
}

/** Bending moments over the supports and reactions at them, in the order of the supports. */
export interface BeamAnswer {
  readonly moments: readonly number[];
  readonly reactions: readonly number[];
}

/**
 * Reactions at the supports, in the order given; loads in force over length, places in the same length.
 *
 * @param supports - rising; one support takes all the load there is, as no beam stands on one
 * @see three-moment equation of statics
 */
export function linearBeamReactions(
  supports: readonly number[],
  loads: readonly LinearLoad[],
): readonly number[] {
  return linearBeam(supports, loads).reactions;
}

/** As {@link linearBeamReactions}, with the moments; a single support is taken to bend nothing. */
export function linearBeam(supports: readonly number[], loads: readonly LinearLoad[]): BeamAnswer {
  if (supports.length === 0) return { moments: [], reactions: [] };
  const first = supports[0]!;
  const last = supports[supports.length - 1]!;
  const everywhere = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] as const;
  if (supports.length === 1) return { moments: [0], reactions: [integral(loads, everywhere, () => 1)] };
  const below = [Number.NEGATIVE_INFINITY, first] as const;
  const above = [last, Number.POSITIVE_INFINITY] as const;
  const spans = supports.slice(1).map((to, k) => ({ from: supports[k]!, to }));
  const moments = momentsAt(spans, {
    first: -integral(loads, below, (z) => first - z),
    last: -integral(loads, above, (z) => z - last),
    loads,
  });
  const reactions = supports.map(() => 0);
  reactions[0]! += integral(loads, below, () => 1);
  reactions[supports.length - 1]! += integral(loads, above, () => 1);
  spans.forEach(({ from, to }, k) => {
    const length = to - from;
    const tilt = (moments[k + 1]! - moments[k]!) / length;
    reactions[k]! += integral(loads, [from, to], (z) => (to - z) / length) + tilt;
    reactions[k + 1]! += integral(loads, [from, to], (z) => (z - from) / length) - tilt;
  });
  return { moments, reactions };
}

interface Span {
  readonly from: number;
  readonly to: number;
}

// The tridiagonal system of the inner supports, solved from the first to the last and back.
function momentsAt(
  spans: readonly Span[],
  ends: { readonly first: number; readonly last: number; readonly loads: readonly LinearLoad[] },
): readonly number[] {
  const moments = [ends.first, ...spans.slice(1).map(() => 0), ends.last];
  const count = spans.length - 1;
  const diagonal: number[] = [];
  const right: number[] = [];
  for (let k = 0; k < count; k++) {
    const { from: a, to: b } = spans[k]!;
    const { to: c } = spans[k + 1]!;
    const [left, next] = [b - a, c - b];
    const turn =
      integral(ends.loads, [a, b], (z) => ((z - a) * (left * left - (z - a) * (z - a))) / left) +
      integral(ends.loads, [b, c], (z) => ((c - z) * (next * next - (c - z) * (c - z))) / next);
    diagonal.push(2 * (left + next));
    right.push(-turn - (k === 0 ? left * ends.first : 0) - (k === count - 1 ? next * ends.last : 0));
  }
  for (let k = 1; k < count; k++) {
    const shared = spans[k]!.to - spans[k]!.from;
    const part = shared / diagonal[k - 1]!;
    diagonal[k]! -= part * shared;
    right[k]! -= part * right[k - 1]!;
  }
  for (let k = count - 1; k >= 0; k--) {
    const shared = spans[k + 1]!.to - spans[k + 1]!.from;
    const beyond = k === count - 1 ? 0 : shared * moments[k + 2]!;
    moments[k + 1] = (right[k]! - beyond) / diagonal[k]!;
  }
  return moments;
}

const OFF_CENTRE = Math.sqrt(3 / 5);
const POINTS = [
  { at: -OFF_CENTRE, weight: 5 / 18 },
  { at: 0, weight: 8 / 18 },
  { at: OFF_CENTRE, weight: 5 / 18 },
] as const;

// ∫ load · factor over a stretch, the factor a polynomial of degree three at most.
function integral(
  loads: readonly LinearLoad[],
  [low, high]: readonly [number, number],
  factor: (z: number) => number,
): number {
  let sum = 0;
  for (const load of loads) {
    const a = Math.max(load.from, low);
    const b = Math.min(load.to, high);
    if (b <= a) continue;
    for (const { at, weight } of POINTS) {
      const z = (a + b) / 2 + ((b - a) / 2) * at;
      sum += weight * (b - a) * loadAt(load, z) * factor(z);
    }
  }
  return sum;
}
