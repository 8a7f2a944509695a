// What is short of what is owned: exactly enough, one piece fewer, and where it is lacking.

import { describe, expect, it } from "vitest";
import { shortageOf } from "../../../src/fill/deliver/shortage.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import type { Kit } from "../../../src/kit/kit.ts";
import { filled, sampleProject } from "../../support/samples.ts";

const project = sampleProject("row-of-three");
const fill = filled(project);

/** Stock that is just enough for every pour. */
function enough(): { [code: string]: number } {
  const { lines } = shortageOf(fill, demoKit, project);
  return Object.fromEntries(lines.map(({ code, needed }) => [code, needed]));
}

const shortOf = (stock: { readonly [code: string]: number }, kit: Kit = demoKit) => {
  const shortage = shortageOf(fill, kit, { ...project, stock });
  return { ...shortage, short: shortage.lines.filter(({ short }) => short > 0) };
};

describe("the shortage list", () => {
  it("is empty where the stock is just enough", () => {
    expect(shortOf(enough())).toMatchObject({ short: [], cost: 0, unpriced: 0 });
  });

  it("names the one piece that is lacking, of whatever family, and the pours that need it", () => {
    const families = ["wall-panel", "wall-slab-connector", "prop", "pin", "inside-corner"];
    for (const family of families) {
      const line = shortageOf(fill, demoKit, project).lines.find((each) => each.family === family)!;
      const stock = { ...enough(), [line.code]: line.needed - 1 };
      const { short } = shortOf(stock);
      expect(short.map(({ code, short }) => [code, short])).toEqual([[line.code, 1]]);
      expect(short[0]!.pours.length).toBeGreaterThan(0);
      expect(short[0]!.units.length).toBeGreaterThan(0);
    }
  });

  it("names every pour of a day that needs more than there is, and no other", () => {
    // House 5 (N) and House 6 (F) are poured on one day: their needs add up, those of other days do not.
    const need = (unit: string, code: string) =>
      fill.units.find((each) => each.unit === unit)!.bill.find((line) => line.code === code)?.quantity ?? 0;
    const code = "W600x2250";
    const days = { 1: ["F"], 2: ["N"], 3: ["T"], 4: ["T"], 5: ["N", "F"] };
    const owned = need("T", code);
    const over = Object.values(days).filter(
      (units) => units.reduce((sum, unit) => sum + need(unit, code), 0) > owned,
    );
    const line = shortOf({ ...enough(), [code]: owned }).lines.find((each) => each.code === code)!;
    expect(over).toEqual([["N", "F"]]);
    expect(line.pours).toEqual(["p5", "p6"]);
    expect(line.units).toEqual(["N", "F"]);
    expect(line.short).toBe(need("N", code) + need("F", code) - owned);
  });

  it("counts sleeves, which stay in the concrete, over all pours together", () => {
    const line = shortageOf(fill, demoKit, project).lines.find(({ family }) => family === "tie-sleeve")!;
    const all = project.pours.map(
      ({ unit }) =>
        fill.units.find((each) => each.unit === unit)!.bill.find(({ code }) => code === line.code)!.quantity,
    );
    expect(line.needed).toBe(all.reduce((sum, each) => sum + each, 0));
  });

  it("prices what the kit prices, and says how many codes it does not", () => {
    const priced: Kit = {
      ...demoKit,
      pieces: demoKit.pieces.map((piece) => ({
        ...piece,
        price: piece.family === "wall-panel" ? 12.5 : null,
      })),
    };
    const panels = shortageOf(fill, priced, project).lines.filter(({ family }) => family === "wall-panel");
    const [first, second] = panels;
    const stock = {
      ...enough(),
      [first!.code]: first!.needed - 3,
      [second!.code]: second!.needed - 1,
      Pin: 0,
    };
    const { cost, unpriced } = shortOf(stock, priced);
    expect(cost).toBe(4 * 12.5);
    expect(unpriced).toBe(1);
  });

  it("takes no piece of another name for an owned one", () => {
    const { short } = shortOf({ ...enough(), Pin: 0, constructor: 9, toString: 9 });
    expect(short.map(({ code }) => code)).toEqual(["Pin"]);
  });

  it("refuses a fill of another project", () => {
    expect(() => shortageOf(fill, demoKit, sampleProject("one-room"))).toThrow(RangeError);
  });
});
