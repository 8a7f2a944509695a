import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spread, spreadOut } from "../../src/sheet/spread.ts";

const labels = fc.array(
  fc.record({ wish: fc.integer({ min: 0, max: 60 }), width: fc.integer({ min: 1, max: 9 }) }),
  {
    minLength: 1,
    maxLength: 4,
  },
);

describe("spread", () => {
  it.each([
    { why: "labels with room stay where they wish to be", wishes: [10, 30], width: 4, places: [10, 30] },
    { why: "two with one wish share the way", wishes: [20, 20], width: 4, places: [18, 22] },
    { why: "the edge pushes back", wishes: [1, 1], width: 4, places: [2, 6] },
    { why: "wishes the wrong way round keep the order given", wishes: [30, 20], width: 4, places: [23, 27] },
  ])("$why", ({ wishes, width, places }) => {
    expect(
      spread(
        wishes.map((wish) => ({ wish, width })),
        0,
        60,
      ),
    ).toEqual(places);
  });

  it("gives null when the labels are wider than the place", () => {
    expect(
      spread(
        [
          { wish: 5, width: 6 },
          { wish: 5, width: 6 },
        ],
        0,
        10,
      ),
    ).toBeNull();
  });

  it("keeps order, distance and both ends", () => {
    fc.assert(
      fc.property(labels, (some) => {
        const places = spread(some, 0, 60);
        expect(places).not.toBeNull();
        const edges = places!.flatMap((place, index) => [
          place - some[index]!.width / 2,
          place + some[index]!.width / 2,
        ]);
        edges.slice(1).forEach((edge, index) => {
          expect(edge).toBeGreaterThanOrEqual(edges[index]! - 1e-9);
        });
        expect(edges[0]).toBeGreaterThanOrEqual(-1e-9);
        expect(edges.at(-1)).toBeLessThanOrEqual(60 + 1e-9);
      }),
      { seed: 1 },
    );
  });

  it("moves the labels no more than any placing on a grid of halves that keeps the rules", () => {
    const few = fc.array(
      fc.record({ wish: fc.integer({ min: 0, max: 14 }), width: fc.integer({ min: 1, max: 4 }) }),
      {
        minLength: 1,
        maxLength: 3,
      },
    );
    fc.assert(
      fc.property(few, (some) => {
        const places = spread(some, 0, 14)!;
        const moves = places.reduce((sum, place, index) => sum + (place - some[index]!.wish) ** 2, 0);
        expect(moves).toBeLessThanOrEqual(leastOnGrid(some, 0, 14) + 1e-9);
      }),
      { seed: 2, numRuns: 60 },
    );
  });

  it("leaves out the last labels where nothing else helps", () => {
    const crowd = [1, 2, 3].map((wish) => ({ wish, width: 4 }));
    expect(spreadOut(crowd, 0, 9).map(([label]) => label.wish)).toEqual([1, 2]);
  });
});

/** Tries every placing on half millimetres. Slow and obvious, which is the point. */
function leastOnGrid(some: readonly { wish: number; width: number }[], from: number, end: number): number {
  const [first, ...rest] = some;
  if (first === undefined) return 0;
  let best = Number.POSITIVE_INFINITY;
  for (let left = from; left + first.width <= end; left += 0.5) {
    const move = left + first.width / 2 - first.wish;
    best = Math.min(best, move * move + leastOnGrid(rest, left + first.width, end));
  }
  return best;
}
