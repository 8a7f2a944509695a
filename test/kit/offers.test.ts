import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Piece } from "../../src/kit/kit.ts";
import { commonWidths, type Offer, offersAt, panelHeights } from "../../src/kit/offers.ts";
import { kitOf, panel } from "../support/kits.ts";

describe("widths at a height", () => {
  it.each<{ why: string; pieces: Piece[]; height: number; codes: string[] }>([
    {
      why: "widest first, whatever the order of the kit",
      pieces: [panel(300, 2250), panel(600, 2250), panel(450, 2250)],
      height: 2250,
      codes: ["600×2250", "450×2250", "300×2250"],
    },
    { why: "other heights do not count", pieces: [panel(600, 2400)], height: 2250, codes: [] },
    {
      why: "a panel laid on its side is as wide as it was high",
      pieces: [panel(150, 900)],
      height: 150,
      codes: ["150×900"],
    },
    {
      why: "an upright panel before a standard one laid",
      pieces: [panel(150, 900, { standard: true }), panel(900, 150)],
      height: 150,
      codes: ["900×150"],
    },
    {
      why: "a standard panel before a lighter one",
      pieces: [
        panel(600, 2250, { code: "light", mass: 5 }),
        panel(600, 2250, { code: "set", standard: true }),
      ],
      height: 2250,
      codes: ["set"],
    },
    {
      why: "a lighter panel before one whose code comes first",
      pieces: [panel(600, 2250, { code: "a", mass: 9 }), panel(600, 2250, { code: "b", mass: 8 })],
      height: 2250,
      codes: ["b"],
    },
    {
      why: "codes in the order of code points, not of any language or of 16-bit units",
      pieces: [panel(600, 2250, { code: "\u{1F9F1}" }), panel(600, 2250, { code: "\uFF21" })],
      height: 2250,
      codes: ["\uFF21"],
    },
    { why: "a square panel is on offer once", pieces: [panel(600, 600)], height: 600, codes: ["600×600"] },
  ])("$why", ({ pieces, height, codes }) => {
    expect(offersAt(kitOf(pieces), height).map((offer) => offer.code)).toEqual(codes);
  });

  it("tells laid panels and their widths", () => {
    const kit = kitOf([panel(150, 900, { mass: 3 }), panel(300, 150, { standard: true })]);
    expect(offersAt(kit, 150)).toEqual([
      { width: 900, code: "150×900", standard: false, mass: 3, isLaid: true },
      { width: 300, code: "300×150", standard: true, mass: 10, isLaid: false },
    ]);
  });

  it("lists the heights of upright panels, tallest first", () => {
    expect(panelHeights(kitOf([panel(600, 900), panel(50, 2250), panel(50, 900)]))).toEqual([2250, 900]);
  });

  it("remembers nothing of another kit", () => {
    expect(offersAt(kitOf([panel(600, 2250)]), 2250)).toHaveLength(1);
    expect(offersAt(kitOf([]), 2250)).toEqual([]);
  });
});

describe("widths common to a stack", () => {
  const kit = kitOf([
    panel(600, 2400, { standard: true, mass: 32 }),
    panel(300, 2400, { standard: true, mass: 16 }),
    panel(150, 2400),
    panel(600, 300, { standard: true, mass: 4 }),
    panel(300, 300, { mass: 2 }),
  ]);

  it("are on offer at every height, with a piece for each in the order asked", () => {
    const common = commonWidths(kit, [300, 2400]);
    expect(common.map((one) => one.offers.map((offer) => offer.code))).toEqual([
      ["600×300", "600×2400"],
      ["300×300", "300×2400"],
    ]);
  });

  it("are standard only if every piece is, and weigh what the pieces weigh", () => {
    const common = commonWidths(kit, [2400, 300]);
    expect(common.map(({ width, standard, mass }) => ({ width, standard, mass }))).toEqual([
      { width: 600, standard: true, mass: 36 },
      { width: 300, standard: false, mass: 18 },
    ]);
  });

  it.each([
    { why: "no heights", heights: [], count: 0 },
    { why: "a height without panels", heights: [2400, 1000], count: 0 },
    { why: "one height: all its widths", heights: [2400], count: 3 },
    { why: "one height twice: 600, 300 and the 2400 lying", heights: [300, 300], count: 3 },
  ])("$why", ({ heights, count }) => {
    expect(commonWidths(kit, heights)).toHaveLength(count);
  });
});

describe("whatever the kit", () => {
  const size = fc.constantFrom(150, 300, 600, 900);
  const panels = fc.array(
    fc.record({ width: size, height: size, standard: fc.boolean(), mass: fc.constantFrom(5, 6) }),
    { maxLength: 12 },
  );
  const pieces = panels.map((list) =>
    list.map(({ width, height, standard, mass }, i) =>
      panel(width, height, { code: `P${i}`, standard, mass }),
    ),
  );

  it("the order of its pieces does not matter", () => {
    fc.assert(
      fc.property(pieces, fc.array(size, { maxLength: 3 }), (list, heights) => {
        const turned = kitOf([...list].reverse());
        expect(commonWidths(turned, heights)).toEqual(commonWidths(kitOf(list), heights));
      }),
      { seed: 73, numRuns: 200 },
    );
  });

  it("every panel is on offer both ways, or a panel at least as good is", () => {
    const rank = (offer: Pick<Offer, "isLaid" | "standard" | "mass">) =>
      (offer.isLaid ? 100 : 0) + (offer.standard ? 0 : 10) + offer.mass;
    fc.assert(
      fc.property(pieces, (list) => {
        const kit = kitOf(list);
        for (const one of list) {
          if (one.family !== "wall-panel") continue;
          const { width, height, standard, mass } = one;
          const upright = offersAt(kit, height).find((offer) => offer.width === width);
          const laid = offersAt(kit, width).find((offer) => offer.width === height);
          expect(rank(upright!)).toBeLessThanOrEqual(rank({ isLaid: false, standard, mass }));
          expect(rank(laid!)).toBeLessThanOrEqual(rank({ isLaid: true, standard, mass }));
        }
      }),
      { seed: 74, numRuns: 200 },
    );
  });
});
