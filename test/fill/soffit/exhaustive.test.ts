// The plan of a soffit against trying everything, on rooms and kits so small that everything can be tried.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { planSoffit, type SoffitInput, type SoffitPlan } from "../../../src/fill/soffit/planSoffit.ts";
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
});
