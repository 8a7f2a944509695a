// Stretches of a line: sets of intervals, joined and taken apart.

/** A stretch from `start` to `end`, start ≤ end. */
export interface Interval {
  readonly start: number;
  readonly end: number;
}

/** What two stretches share, or null where that is no longer than `least`. */
export function overlap(a: Interval, b: Interval, least: number): Interval | null {
  const start = Math.max(a.start, b.start);
  const end = Math.min(a.end, b.end);
  return end - start > least ? { start, end } : null;
}

/** Joins stretches that overlap or lie within `reach` of each other. Sorted by start. */
export function joinIntervals(intervals: readonly Interval[], reach: number): Interval[] {
  const joined: Interval[] = [];
  for (const next of [...intervals].sort((a, b) => a.start - b.start || a.end - b.end)) {
    const last = joined[joined.length - 1];
    if (last !== undefined && next.start - last.end <= reach) {
      if (next.end > last.end) joined[joined.length - 1] = { start: last.start, end: next.end };
    } else joined.push(next);
  }
  return joined;
}

/** What `taken` leaves of `whole`, pieces no longer than `least` dropped. Sorted by start. */
export function subtractIntervals(whole: Interval, taken: readonly Interval[], least: number): Interval[] {
  const left: Interval[] = [];
  let start = whole.start;
  for (const gone of joinIntervals(taken, 0)) {
    if (Math.min(gone.start, whole.end) - start > least)
      left.push({ start, end: Math.min(gone.start, whole.end) });
    start = Math.max(start, gone.end);
  }
  if (whole.end - start > least) left.push({ start, end: whole.end });
  return left;
}
