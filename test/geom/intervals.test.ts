import fc from "fast-check";
import { expect, it } from "vitest";
import { type Interval, joinIntervals, overlap, subtractIntervals } from "../../src/geom/intervals.ts";

const interval = fc
  .tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 1, max: 10 }))
  .map(([start, length]): Interval => ({ start, end: start + length }));

/** Which of the unit steps 0–1, 1–2 … lie in one of the intervals. */
function steps(intervals: readonly Interval[]): boolean[] {
  return Array.from({ length: 45 }, (_, i) => intervals.some(({ start, end }) => start <= i && end >= i + 1));
}

it("joins what overlaps or touches and keeps the rest apart", () => {
  fc.assert(
    fc.property(fc.array(interval, { maxLength: 8 }), (intervals) => {
      const joined = joinIntervals(intervals, 0);
      expect(steps(joined)).toEqual(steps(intervals));
      joined.slice(1).forEach((next, i) => {
        expect(next.start).toBeGreaterThan(joined[i]!.end);
      });
    }),
    { seed: 41 },
  );
});

it("closes gaps up to its reach, the reach itself included", () => {
  const pieces = [
    { start: 12, end: 20 },
    { start: 0, end: 10 },
    { start: 22.5, end: 30 },
  ];
  expect(joinIntervals(pieces, 2)).toEqual([
    { start: 0, end: 20 },
    { start: 22.5, end: 30 },
  ]);
});

it("leaves what is not taken", () => {
  fc.assert(
    fc.property(interval, fc.array(interval, { maxLength: 8 }), (whole, taken) => {
      const [inWhole, inTaken] = [steps([whole]), steps(taken)];
      expect(steps(subtractIntervals(whole, taken, 0))).toEqual(inWhole.map((is, i) => is && !inTaken[i]));
    }),
    { seed: 42 },
  );
});

it("finds what two stretches share", () => {
  expect(overlap({ start: 0, end: 10 }, { start: 7, end: 20 }, 2)).toEqual({ start: 7, end: 10 });
  expect(overlap({ start: 0, end: 10 }, { start: 8, end: 20 }, 2)).toBeNull();
});
