// Puts labels side by side so that none covers another and each stays as near as it can to what it names.
//
//   wished    a  bc     d            placed    a  b  c  d
//             |  ||     |                      |  | /   |

export interface SpreadLabel {
  /** Where its middle should be. */
  readonly wish: number;
  readonly width: number;
}

/**
 * Middles of the labels, in the order given, with no overlap and all within `start` to `end`; the sum of the squared
 * moves is the least. Null when they do not fit. Cost grows with the number of labels.
 *
 * @see R. E. Barlow et al., Statistical Inference under Order Restrictions, Wiley 1972, ch. 1: pooling of adjacent
 *   violators. Less what stands before it, a label's wish is a value of an isotonic regression.
 */
export function spread(labels: readonly SpreadLabel[], start: number, end: number): readonly number[] | null {
  const total = labels.reduce((sum, label) => sum + label.width, 0);
  if (total > end - start + 1e-9) return null;
  const before: number[] = [];
  let sum = 0;
  for (const label of labels) {
    before.push(sum + label.width / 2);
    sum += label.width;
  }
  const levels = pooled(labels.map((label, index) => label.wish - before[index]!));
  return levels.map((level, index) => Math.min(Math.max(level, start), end - total) + before[index]!);
}

/**
 * As {@link spread}, for labels that carry something: gives each with its place. A row is broken so that its labels
 * fit; where a hundred pieces share one column nothing can help, and the last labels are left out.
 */
export function spreadOut<L extends SpreadLabel>(
  labels: readonly L[],
  start: number,
  end: number,
): readonly (readonly [label: L, place: number])[] {
  for (let count = labels.length; count > 0; count--) {
    const kept = labels.slice(0, count);
    const places = spread(kept, start, end);
    if (places !== null) return kept.map((label, index) => [label, places[index]!] as const);
  }
  return [];
}

/** The ascending values nearest to the given ones in the least squares. */
function pooled(values: readonly number[]): readonly number[] {
  const pools: { sum: number; count: number }[] = [];
  for (const value of values) {
    let pool = { sum: value, count: 1 };
    for (
      let last = pools.at(-1);
      last && last.sum * pool.count > pool.sum * last.count;
      last = pools.at(-1)
    ) {
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
      pools.pop();
    }
    pools.push(pool);
  }
  return pools.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count));
}
