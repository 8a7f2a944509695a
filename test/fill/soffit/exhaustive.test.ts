// The plan of a soffit against trying everything, on rooms and kits so small that everything can be tried.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planSoffit, type SoffitInput, type SoffitPlan } from "../../../src/fill/soffit/planSoffit.ts";
import type { Ring } from "../../../src/geom/ring.ts";
import { ell, fieldOf, rectangle, type SmallKit, slabKit, smallKits } from "../../support/soffitField.ts";
import { type Counts, leastEll, leastOf, leastRectangle } from "../../support/soffitOracle.ts";

const DEPTH = 2;

function countsOf(plan: SoffitPlan | null): Counts {
  if (plan === null) return [0, 0, 0, 0, 0];
  const unbuilt = plan.unbuilt.reduce((sum, { u0, u1, v0, v1 }) => sum + (u1 - u0) * (v1 - v0), 0);
  const { closures, fillers, pieces, strips } = plan.cost;
  return [unbuilt, closures, fillers, pieces, strips];
}

const planned = (outline: SoffitInput["outline"], kit: SmallKit, direction: "u" | "v" | null) =>
  countsOf(planSoffit(fieldOf(outline, DEPTH, slabKit(kit), { direction })));

const side = fc.integer({ min: 1, max: 26 });

/** Alcoves between piers, so many, all open to one side of the same hall; each joins it along a cut of its own. */
function comb(
  alcoves: number,
  { deep, wide, pier, hall }: Record<"deep" | "wide" | "pier" | "hall", number>,
): Ring {
  const ring: [number, number][] = [[0, 0]];
  const height = alcoves * (wide + pier) - pier;
  ring.push([deep + hall, 0], [deep + hall, height]);
  for (let k = alcoves - 1; k >= 0; k--) {
    const low = k * (wide + pier);
    if (k < alcoves - 1) ring.push([deep, low + wide + pier], [deep, low + wide]);
    ring.push([0, low + wide]);
    if (k > 0) ring.push([0, low]);
  }
  // Between two alcoves the pier's end runs up along the hall: corners come in pairs.
  return ring.flatMap((corner, k): [number, number][] => {
    const next = ring[(k + 1) % ring.length]!;
    return corner[0] !== next[0] && corner[1] !== next[1] ? [corner, [deep, corner[1]]] : [corner];
  });
}

describe("the plan of a soffit", () => {
  it("is the best there is in a rectangle, either way and both", () => {
    fc.assert(
      fc.property(smallKits, side, side, (kit, width, height) => {
        const outline = rectangle(width + 2 * DEPTH, height + 2 * DEPTH);
        const [u, v] = [leastRectangle(width, height, kit), leastRectangle(height, width, kit)];
        expect(planned(outline, kit, "u")).toEqual(u);
        expect(planned(outline, kit, "v")).toEqual(v);
        expect(planned(outline, kit, null)).toEqual(leastOf([u, v]));
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  // The field of an L, `DEPTH` inside its walls, is an L again; either direction cuts it along another line.
  it("is the best there is in an L, either way and both", () => {
    const share = fc.integer({ min: 1, max: 18 });
    fc.assert(
      fc.property(smallKits, share, share, share, share, (kit, inner, outer, low, more) => {
        const outline = ell(
          inner + outer + 2 * DEPTH,
          low + more + 2 * DEPTH,
          inner + 2 * DEPTH,
          low + 2 * DEPTH,
        );
        const u = leastEll({ whole: inner, high: low + more, rest: outer, low }, kit);
        const v = leastEll({ whole: low, high: inner + outer, rest: more, low: inner }, kit);
        expect(planned(outline, kit, "u")).toEqual(u);
        expect(planned(outline, kit, "v")).toEqual(v);
        expect(planned(outline, kit, null)).toEqual(leastOf([u, v]));
      }),
      { seed: 12, numRuns: 300 },
    );
  });

  // What is still open of one alcove must not be multiplied by what is open of the next: 24 of them, three ways each.
  it("answers for a hall with two dozen alcoves", () => {
    const kit: SmallKit = {
      sizes: [
        { width: 6, length: 12, standard: true },
        { width: 6, length: 6, standard: false },
      ],
      strip: 2,
      closure: null,
    };
    const size = { deep: 14, wide: 6, pier: 6, hall: 12 };
    const outline = comb(24, size);
    const plan = planSoffit(fieldOf(outline, 0, slabKit(kit), { direction: "u", legs: sidesOf(outline) }));
    // Each alcove 12 and a strip of 2 along its cut: a standard panel; the hall across 24 · 12 − 6 = 282 = 47 · 6.
    expect(countsOf(plan)).toEqual([0, 0, 0, 24 + 47, 24]);
  });
});

/** A connector outside every upright edge, so that all sides but the cuts are carried. */
function sidesOf(outline: Ring): readonly Ring[] {
  return outline.flatMap(([u, v], k): Ring[] => {
    const [a, b] = outline[(k + 1) % outline.length]!;
    if (u !== a) return [];
    const out = b > v ? 1 : -1;
    return [
      [
        [u, v],
        [u + out, v],
        [u + out, b],
        [u, b],
      ],
    ];
  });
}
