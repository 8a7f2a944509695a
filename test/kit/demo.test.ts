import { describe, expect, it } from "vitest";
import { capCornersOf, capHeights, capsOf } from "../../src/kit/caps.ts";
import { closureRanges } from "../../src/kit/closures.ts";
import {
  connectorCornersOf,
  connectorDepth,
  connectorHeights,
  connectorsOf,
} from "../../src/kit/connectors.ts";
import { insideCornerAt } from "../../src/kit/corners.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { revealClosuresOf, revealCornerOf, stopEndsOf } from "../../src/kit/ends.ts";
import { propOf } from "../../src/kit/fittings.ts";
import { FAMILIES, piecesOf, ruleValue } from "../../src/kit/kit.ts";
import { coverLength } from "../../src/kit/lengths.ts";
import { commonWidths, offersAt, panelHeights } from "../../src/kit/offers.ts";
import { lengthsOf } from "../../src/kit/pieceLengths.ts";
import { slabOffersAt } from "../../src/kit/slabPanels.ts";
import { sleeveOf, tieOf } from "../../src/kit/ties.ts";

const THICKNESSES = [80, 100, 120, 150, 200];
const lengths = (pieces: readonly { readonly length: number }[]) => pieces.map((piece) => piece.length);
const widthsAt = (height: number) => offersAt(demoKit, height).map((offer) => offer.width);

describe("the kit as a whole", () => {
  it("names every piece once", () => {
    const codes = demoKit.pieces.map((piece) => piece.code);
    expect(new Set(codes).size).toBe(codes.length);
  });

  it("lists the families in the order of bills, all but the reveal corners", () => {
    const inKit = [...new Set(demoKit.pieces.map((piece) => piece.family))];
    expect(inKit).toEqual(FAMILIES.filter((family) => family !== "reveal-corner"));
  });

  it("gives every piece a mass and a price, and no piece a hand", () => {
    for (const piece of demoKit.pieces) {
      expect(piece.mass, piece.code).toBeGreaterThan(0);
      expect(piece.price, piece.code).toBeGreaterThan(0);
      expect(piece.hand, piece.code).toBeNull();
    }
  });

  it("weighs its panels at 22 kg for a square metre", () => {
    const panel = piecesOf(demoKit, "wall-panel").find((one) => one.width === 600 && one.height === 2250);
    expect(panel?.mass).toBe(29.7);
    for (const one of piecesOf(demoKit, "wall-panel")) {
      expect(Math.abs(one.mass - (22 * one.width * one.height) / 1e6), one.code).toBeLessThanOrEqual(
        0.05 + 1e-9,
      );
    }
  });

  it("holds every size of wall panel once", () => {
    const sizes = piecesOf(demoKit, "wall-panel").map((panel) => `${panel.width} × ${panel.height}`);
    expect(new Set(sizes).size).toBe(sizes.length);
  });

  it("leaves the load of a tie to whoever made and tested it", () => {
    expect(ruleValue(demoKit, "tieLoad")).toBeUndefined();
  });

  it("says of every rule where it comes from", () => {
    for (const rule of Object.values(demoKit.rules)) {
      expect(["common practice, no source", "invented for the demo"]).toContain(rule.origin);
    }
  });

  it("has its tie rows on the holes of the panels", () => {
    const holes = ruleValue(demoKit, "holes")!;
    for (const row of ruleValue(demoKit, "tieRows")!) expect((row - holes.first) % holes.pitch).toBe(0);
  });
});

describe("the one-room example: clear height 2400, slab 100, walls of 100", () => {
  it.each([
    { face: "north inside", length: 3000, run: [150, 600, 600, 600, 600, 300, 150] },
    { face: "north outside", length: 3200, run: [250, 600, 600, 600, 600, 300, 250] },
    { face: "west and east inside", length: 3600, run: [150, 600, 600, 600, 600, 600, 300, 150] },
    { face: "west and east outside", length: 3800, run: [250, 600, 600, 600, 600, 600, 300, 250] },
    { face: "south inside, door of 900", length: 3000 - 900, run: [150, 450, 600, 600, 150, 150] },
    { face: "south outside, door of 900", length: 3200 - 900, run: [250, 450, 600, 600, 150, 250] },
  ])("$face: every width of the run is on offer", ({ length, run }) => {
    expect(run.reduce((sum, width) => sum + width, 0)).toBe(length);
    const onOffer = new Set([...widthsAt(2250), ruleValue(demoKit, "cornerLeg")]);
    expect(run.filter((width) => !onOffer.has(width))).toEqual([]);
  });

  it("offers 50 to 600 at 2250, of which 600 alone is standard", () => {
    expect(widthsAt(2250)).toEqual([600, 550, 500, 450, 400, 350, 300, 250, 200, 150, 100, 50]);
    expect(offersAt(demoKit, 2250).filter((offer) => offer.standard)).toEqual([
      { width: 600, code: "W600x2250", standard: true, mass: 29.7, isLaid: false },
    ]);
  });

  it("has the corners, the end and the closure in one piece each", () => {
    expect(insideCornerAt(demoKit, [150, 150], 2250)?.code).toBe("Corner150x2250");
    expect(stopEndsOf(demoKit, 100).map((end) => end.height)).toContain(2100);
    expect(lengths(revealClosuresOf(demoKit, 100))).toContain(900);
    expect(lengths(lengthsOf(demoKit, "outside-corner"))).toEqual(expect.arrayContaining([2250, 2100, 900]));
    expect(revealCornerOf(demoKit, 100)).toBeNull();
  });

  it("covers the band over the door with one standard panel", () => {
    expect(offersAt(demoKit, 150)).toContainEqual(
      expect.objectContaining({ width: 900, code: "W900x150", standard: true, isLaid: false }),
    );
  });

  it.each([
    { what: "connector, room 3000 wide", made: [1200, 1200, 300], length: 3000 - 2 * 150 },
    { what: "connector, room 3600 long", made: [1200, 1200, 600, 300], length: 3600 - 2 * 150 },
  ])("$what", ({ made, length }) => {
    const found = coverLength(length, lengths(connectorsOf(demoKit, 150)));
    expect(found).toEqual({ pieces: made, madeToMeasure: null });
  });

  it.each([
    { what: "cap, 3200 outside", made: [1200, 1200, 600, 200], length: 3200 },
    { what: "cap, 3800 outside", made: [1200, 1200, 1200, 200], length: 3800 },
  ])("$what", ({ made, length }) => {
    const found = coverLength(length, lengths(capsOf(demoKit, 250)));
    expect(found).toEqual({ pieces: made, madeToMeasure: null });
  });

  it("mitres connectors and caps at corners either way", () => {
    expect(connectorDepth(demoKit, 150)).toBe(150);
    expect(connectorCornersOf(demoKit, "inside", 150)[0]?.legs).toEqual([150, 150]);
    expect(connectorCornersOf(demoKit, "outside", 150)).toHaveLength(1);
    expect(capCornersOf(demoKit, "inside", 250)[0]?.legs).toEqual([150, 150]);
    expect(capCornersOf(demoKit, "outside", 250)).toHaveLength(1);
  });

  it("tiles the soffit from bands of 1200 and 600, widths 600 and 300, and props it", () => {
    for (const length of [1200, 600]) {
      expect(slabOffersAt(demoKit, length).map((offer) => offer.width)).toEqual(
        expect.arrayContaining([600, 300]),
      );
    }
    expect(coverLength(2700, lengths(lengthsOf(demoKit, "shoring-strip")))?.madeToMeasure).toBeNull();
    expect(propOf(demoKit, 2400)?.code).toBe("Prop2000-3500");
  });
});

/** Every pile of one connector and at most three panels; the one the rule of the stack picks. */
function leastStack(clear: number, slab: number): { panels: number[]; connector: number } | undefined {
  const heights = panelHeights(demoKit).filter((height) => commonWidths(demoKit, [height]).length > 0);
  const caps = new Set(capHeights(demoKit));
  const stacks: { panels: number[]; connector: number }[] = [];
  const pile = (panels: number[], left: number, connector: number): void => {
    if (left === 0) stacks.push({ panels, connector });
    if (panels.length === 3) return;
    for (const height of heights) {
      if (height <= left && height <= (panels.at(-1) ?? height))
        pile([...panels, height], left - height, connector);
    }
  };
  for (const connector of connectorHeights(demoKit)) {
    if (caps.has(connector + slab)) pile([], clear - connector, connector);
  }
  return stacks.sort((a, b) => a.panels.length - b.panels.length || b.panels[0]! - a.panels[0]!)[0];
}

describe("stacks", () => {
  it.each([
    {
      clear: 2400,
      lowest: 2250,
      pieces: 2,
      why: "the one-room example; a panel of 2300 would win, so there is none",
    },
    { clear: 2300, lowest: 2200, pieces: 2, why: "a soffit dropped by 100" },
    { clear: 2200, lowest: 2100, pieces: 2, why: "a soffit dropped by 200" },
    { clear: 2500, lowest: 2400, pieces: 2, why: "the tall panel alone" },
    { clear: 2600, lowest: 2400, pieces: 2, why: "with a taller connector" },
    { clear: 2700, lowest: 2400, pieces: 2, why: "with the tallest connector" },
    { clear: 2800, lowest: 2400, pieces: 3, why: "one extension" },
    { clear: 3000, lowest: 2400, pieces: 3, why: "one extension in the tallest storey" },
  ])("clear $clear: $why", ({ clear, lowest, pieces }) => {
    for (const slab of [100, 120, 150]) {
      const stack = leastStack(clear, slab);
      expect(stack?.panels[0]).toBe(lowest);
      expect((stack?.panels.length ?? 0) + 1).toBe(pieces);
    }
  });

  it("needs no closure in any storey from 2100 to 3000 on the grid", () => {
    for (let clear = 2100; clear <= 3000; clear += 50)
      expect(leastStack(clear, 100), `${clear}`).toBeDefined();
  });

  it("offers every width of the lowest panel over it as well", () => {
    for (const extension of [600, 500, 450, 400, 350, 300, 250, 200, 150]) {
      const common = commonWidths(demoKit, [2400, extension]);
      expect(common.map((one) => one.width)).toEqual(widthsAt(2400));
      expect(common.filter((one) => one.standard).map((one) => one.width)).toEqual([600]);
    }
  });
});

describe("openings", () => {
  const sills = [900, 1000, 1100, 1200, 1500];
  const heads = [2000, 2050, 2100, 2200];

  it.each(sills)("offers every grid width under a sill at %i", (sill) => {
    expect(widthsAt(sill)).toEqual(expect.arrayContaining(widthsAt(2250)));
  });

  it("has a panel for every band of 100 or more over a head, under panels of 2250 and 2400", () => {
    for (const top of [2250, 2400]) {
      for (const band of heads.map((head) => top - head).filter((height) => height >= 100)) {
        expect(widthsAt(band), `${band}`).toEqual(expect.arrayContaining([900, ...widthsAt(2250)]));
      }
    }
  });

  it("has a taller connector and cap where the band would be lower than 100", () => {
    expect(connectorHeights(demoKit)).toContain(2400 - 2200);
    for (const slab of [100, 120]) expect(capHeights(demoKit)).toContain(2400 - 2200 + slab);
  });

  it.each(THICKNESSES)(
    "makes up every jamb, head and sill in a wall of %i without a piece made to measure",
    (thickness) => {
      const ends = stopEndsOf(demoKit, thickness).map((end) => end.height);
      for (const head of heads) {
        for (const sill of [0, ...sills]) expect(coverLength(head - sill, ends)?.madeToMeasure).toBeNull();
      }
      const closures = lengths(revealClosuresOf(demoKit, thickness));
      for (let width = 600; width <= 2400; width += 100) {
        expect(coverLength(width, closures)?.madeToMeasure).toBeNull();
      }
      expect(tieOf(demoKit, thickness)?.length).toBe(thickness);
      expect(sleeveOf(demoKit, thickness)?.length).toBe(thickness);
    },
  );
});

it("covers every whole length from 10 to 6000 with panels and at most one closure, and none from 1 to 9", () => {
  const longest = 6000;
  const byPanels = new Array<boolean>(longest + 1).fill(false);
  byPanels[0] = true;
  for (let x = 1; x <= longest; x++) byPanels[x] = widthsAt(2250).some((width) => byPanels[x - width]);

  const strips = closureRanges(demoKit);
  const isCovered = (length: number): boolean =>
    byPanels[length] === true ||
    strips.some(({ least, greatest }) => {
      for (let width = least; width <= greatest; width++) if (byPanels[length - width]) return true;
      return false;
    });
  const gaps = Array.from({ length: longest }, (_, i) => i + 1).filter((length) => !isCovered(length));
  expect(gaps).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
});
