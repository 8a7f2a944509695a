import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coverLength, type LengthCover } from "../../src/kit/lengths.ts";

const CONNECTORS = [1200, 600, 300];
const CAPS = [1200, 600, 300, 200];

describe("a length with an exact sum", () => {
  it.each([
    { why: "nothing to make up", length: 0, lengths: CONNECTORS, pieces: [] },
    { why: "one piece", length: 900, lengths: [2100, 900], pieces: [900] },
    {
      why: "ring side of the one-room example",
      length: 2700,
      lengths: CONNECTORS,
      pieces: [1200, 1200, 300],
    },
    { why: "its long side", length: 3300, lengths: CONNECTORS, pieces: [1200, 1200, 600, 300] },
    { why: "its short cap line", length: 3200, lengths: CAPS, pieces: [1200, 1200, 600, 200] },
    { why: "its long cap line", length: 3800, lengths: CAPS, pieces: [1200, 1200, 1200, 200] },
    {
      why: "taking the longest first would need four",
      length: 1200,
      lengths: [900, 600, 100],
      pieces: [600, 600],
    },
    {
      why: "taking the longest first would find no sum",
      length: 1000,
      lengths: [900, 500],
      pieces: [500, 500],
    },
    {
      why: "equal counts: the longest piece decides",
      length: 900,
      lengths: [500, 450, 400],
      pieces: [500, 400],
    },
    {
      why: "the order and doubles on offer do not matter",
      length: 900,
      lengths: [300, 600, 300],
      pieces: [600, 300],
    },
  ])("$why", ({ length, lengths, pieces }) => {
    expect(coverLength(length, lengths)).toEqual({ pieces, madeToMeasure: null });
  });
});

describe("a length without one", () => {
  it.each([
    { why: "shorter than every piece", length: 40, lengths: CONNECTORS, pieces: [], made: 40 },
    { why: "one made piece is fewer than two", length: 1190, lengths: CONNECTORS, pieces: [], made: 1190 },
    {
      why: "the made piece is the shortest of at least 100",
      length: 2860,
      lengths: CONNECTORS,
      pieces: [1200, 1200],
      made: 460,
    },
    {
      why: "a made piece of 50 would do, 650 is better to pin",
      length: 1250,
      lengths: CONNECTORS,
      pieces: [600],
      made: 650,
    },
    { why: "no made piece can reach 100", length: 95, lengths: [60, 40], pieces: [40], made: 55 },
  ])("$why", ({ length, lengths, pieces, made }) => {
    expect(coverLength(length, lengths)).toEqual({ pieces, madeToMeasure: made });
  });

  it("cannot be made up from nothing", () => {
    expect(coverLength(300, [])).toBeNull();
    expect(coverLength(0, [])).toEqual({ pieces: [], madeToMeasure: null });
  });
});

it.each([
  { why: "half a millimetre", length: 0.5, lengths: [300] },
  { why: "a negative line", length: -1, lengths: [300] },
  { why: "not a number", length: Number.NaN, lengths: [300] },
  { why: "a line longer than any building", length: 1e308, lengths: [300] },
  { why: "a piece of no length", length: 300, lengths: [0] },
  { why: "a piece of a fraction", length: 300, lengths: [99.5] },
])("refuses $why", ({ length, lengths }) => {
  expect(() => coverLength(length, lengths)).toThrow(RangeError);
});

/** Every multiset of `lengths` of at most `room`, longest first. Slow and obvious, which is the point. */
function everySum(room: number, lengths: readonly number[]): number[][] {
  const [first, ...rest] = lengths;
  if (first === undefined) return [[]];
  const found: number[][] = [];
  for (let count = 0; count * first <= room; count++) {
    for (const tail of everySum(room - count * first, rest)) {
      found.push([...new Array<number>(count).fill(first), ...tail]);
    }
  }
  return found;
}

/** Lists every way, then keeps the best by comparing them two by two. */
function oracle(length: number, lengths: readonly number[]): LengthCover {
  const offered = [...new Set(lengths)].sort((a, b) => b - a);
  const ways = everySum(length, offered).map((pieces) => ({
    pieces,
    made: length - pieces.reduce((sum, piece) => sum + piece, 0),
  }));
  const exact = ways.filter((way) => way.made === 0);
  const allowed = exact.length > 0 ? exact : ways.filter((way) => way.made <= offered[0]!);
  const [best] = allowed.sort(
    (a, b) =>
      a.pieces.length - b.pieces.length || compareMade(a.made, b.made) || compareLists(b.pieces, a.pieces),
  );
  return { pieces: best!.pieces, madeToMeasure: best!.made === 0 ? null : best!.made };
}

function compareMade(a: number, b: number): number {
  const isLongA = a >= 100;
  const isLongB = b >= 100;
  if (isLongA && isLongB) return a - b;
  if (isLongA !== isLongB) return isLongA ? -1 : 1;
  return b - a;
}

function compareLists(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((each, i) => each !== b[i]);
  return at < 0 ? 0 : a[at]! - (b[at] ?? 0);
}

describe("against every multiset of lengths", () => {
  const offered = fc.uniqueArray(fc.integer({ min: 20, max: 260 }), { minLength: 1, maxLength: 4 });
  const onGrid = fc.uniqueArray(
    fc.integer({ min: 1, max: 12 }).map((n) => n * 50),
    { minLength: 1, maxLength: 5 },
  );

  it("odd lengths", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 400 }), offered, (length, lengths) => {
        expect(coverLength(length, lengths)).toEqual(oracle(length, lengths));
      }),
      { seed: 71, numRuns: 400 },
    );
  });

  it("lengths on a grid, some lines off it", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 32 }),
        fc.constantFrom(0, 0, 7, 50),
        onGrid,
        (n, off, lengths) => {
          const length = n * 25 + off;
          expect(coverLength(length, lengths)).toEqual(oracle(length, lengths));
        },
      ),
      { seed: 72, numRuns: 300 },
    );
  });
});
