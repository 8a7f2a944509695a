import { describe, expect, it } from "vitest";
import { capCornersOf, capHeights, capsOf } from "../../src/kit/caps.ts";
import { closureRanges, closureStripOf } from "../../src/kit/closures.ts";
import {
  connectorCornersOf,
  connectorDepth,
  connectorHeights,
  connectorsOf,
} from "../../src/kit/connectors.ts";
import { insideCornerAt } from "../../src/kit/corners.ts";
import { revealClosuresOf, revealCornerOf, stopEndsOf } from "../../src/kit/ends.ts";
import { accessoryLengthsOf, accessoryOf, propOf } from "../../src/kit/fittings.ts";
import { partnerOf } from "../../src/kit/handed.ts";
import type { Piece } from "../../src/kit/kit.ts";
import { lengthsOf } from "../../src/kit/pieceLengths.ts";
import { slabBandLengths, slabOffersAt } from "../../src/kit/slabPanels.ts";
import { sleeveOf, tieOf } from "../../src/kit/ties.ts";
import { kitOf, piece } from "../support/kits.ts";

const codes = (pieces: readonly { readonly code: string }[]) => pieces.map(({ code }) => code);

const corner = (code: string, legs: readonly [number, number], hand: Piece["hand"] = null): Piece =>
  piece({ family: "inside-corner", code, legs, height: 2250, hand });

describe("inside corners", () => {
  const kit = kitOf([
    corner("even", [150, 150]),
    corner("turnable", [100, 200]),
    corner("left", [150, 300], "left"),
    corner("right", [300, 150], "right"),
  ]);

  it.each([
    { why: "even legs", legs: [150, 150] as const, code: "even" },
    { why: "as it stands", legs: [100, 200] as const, code: "turnable" },
    { why: "stood on its head", legs: [200, 100] as const, code: "turnable" },
    { why: "a handed one only as it stands", legs: [300, 150] as const, code: "right" },
    { why: "none of this size", legs: [200, 200] as const, code: undefined },
  ])("$why", ({ legs, code }) => {
    expect(insideCornerAt(kit, legs, 2250)?.code).toBe(code);
    expect(insideCornerAt(kit, legs, 2400)).toBeNull();
  });

  it("do not stand a handed one on its head", () => {
    expect(insideCornerAt(kitOf([corner("left", [150, 300], "left")]), [300, 150], 2250)).toBeNull();
  });

  it("have the piece of the other hand as partner, their own image where they have none", () => {
    const [even, turnable, left, right] = kit.pieces;
    expect(partnerOf(kit, even!)).toBe(even);
    expect(partnerOf(kit, turnable!)).toBe(turnable);
    expect(partnerOf(kit, left!)).toBe(right);
    expect(partnerOf(kit, right!)).toBe(left);
    expect(partnerOf(kitOf([left!]), left!)).toBeNull();
  });
});

it("keeps jamb and lintel apart in the partner of a reveal corner", () => {
  const at = (code: string, legs: readonly [number, number], hand: Piece["hand"]) =>
    piece({ family: "reveal-corner", code, width: 100, legs, hand });
  const kit = kitOf([
    at("a", [100, 150], "left"),
    at("b", [150, 100], "right"),
    at("c", [100, 150], "right"),
  ]);
  expect(partnerOf(kit, kit.pieces[0]!)?.code).toBe("c");
});

it("lists lengths longest first, one piece each, the standard one, then the lighter", () => {
  const line = (code: string, length: number, given: object = {}) =>
    piece({ family: "outside-corner", code, length, ...given });
  const kit = kitOf([
    line("b", 900),
    line("a", 2100, { mass: 8 }),
    line("c", 2100, { standard: true }),
    line("d", 900, { mass: 9 }),
  ]);
  expect(codes(lengthsOf(kit, "outside-corner"))).toEqual(["c", "d"]);
  expect(codes(lengthsOf(kit, "outside-corner", (one) => one.length < 1000))).toEqual(["d"]);
});

it("finds ends, closures, ties and sleeves by the thickness of the wall", () => {
  const kit = kitOf([
    piece({ family: "stop-end", code: "e1", width: 100, height: 900 }),
    piece({ family: "stop-end", code: "e2", width: 100, height: 2100 }),
    piece({ family: "stop-end", code: "e3", width: 120, height: 2100 }),
    piece({ family: "reveal-closure", code: "r1", width: 100, length: 900 }),
    piece({ family: "reveal-corner", code: "r2", width: 120, legs: [100, 100] }),
    piece({ family: "tie", code: "t", length: 100 }),
    piece({ family: "tie-sleeve", code: "s", length: 120 }),
  ]);
  expect(codes(stopEndsOf(kit, 100))).toEqual(["e2", "e1"]);
  expect(codes(revealClosuresOf(kit, 100))).toEqual(["r1"]);
  expect([revealCornerOf(kit, 100), revealCornerOf(kit, 120)?.code]).toEqual([null, "r2"]);
  expect([tieOf(kit, 100)?.code, tieOf(kit, 120)]).toEqual(["t", null]);
  expect([sleeveOf(kit, 100), sleeveOf(kit, 120)?.code]).toEqual([null, "s"]);
});

describe("connectors and caps", () => {
  const straight = (code: string, height: number, depth: number, length: number) =>
    piece({ family: "wall-slab-connector", code, height, depth, length });
  const mitre = (code: string, depth: number, legs: readonly [number, number]) =>
    piece({ family: "connector-corner", code, turn: "inside", height: 150, depth, legs });
  const kit = kitOf([
    straight("deep", 150, 200, 1200),
    straight("a", 150, 150, 300),
    straight("b", 150, 150, 1200),
    straight("c", 300, 200, 600),
    mitre("long", 150, [300, 300]),
    mitre("short", 150, [150, 150]),
    mitre("deep corner", 200, [200, 200]),
    piece({ family: "slab-edge-cap", code: "cap", height: 250, length: 1200 }),
    piece({ family: "cap-corner", code: "capOut", turn: "outside", height: 250, legs: [65, 65] }),
  ]);

  it("keep to one depth for a height, the least, so that they fit each other", () => {
    expect(connectorHeights(kit)).toEqual([300, 150]);
    expect([connectorDepth(kit, 150), connectorDepth(kit, 300), connectorDepth(kit, 100)]).toEqual([
      150,
      200,
      null,
    ]);
    expect(codes(connectorsOf(kit, 150))).toEqual(["b", "a"]);
    expect(codes(connectorCornersOf(kit, "inside", 150))).toEqual(["short", "long"]);
    expect(connectorCornersOf(kit, "outside", 150)).toEqual([]);
  });

  it("are found by height and turn", () => {
    expect(capHeights(kit)).toEqual([250]);
    expect(codes(capsOf(kit, 250))).toEqual(["cap"]);
    expect(codes(capCornersOf(kit, "outside", 250))).toEqual(["capOut"]);
    expect(capCornersOf(kit, "inside", 250)).toEqual([]);
  });
});

it("joins the ranges of closure strips that meet or overlap", () => {
  const strip = (code: string, least: number, greatest: number, mass = 1) =>
    piece({ family: "closure-strip", code, least, greatest, mass });
  const kit = kitOf([strip("c", 40, 59), strip("a", 10, 30), strip("b", 20, 25, 0.5), strip("d", 60, 62)]);
  expect(closureRanges(kit)).toEqual([
    { least: 10, greatest: 30 },
    { least: 40, greatest: 62 },
  ]);
  expect([9, 10, 22, 31, 59, 60].map((width) => closureStripOf(kit, width)?.code)).toEqual([
    undefined,
    "a",
    "b",
    undefined,
    "c",
    "d",
  ]);
});

it("turns slab panels no longer than the widest is wide, unturned ones first", () => {
  const slab = (code: string, width: number, length: number) =>
    piece({ family: "slab-panel", code, width, length });
  const kit = kitOf([slab("a", 300, 600), slab("b", 600, 1200), slab("c", 600, 300), slab("d", 600, 600)]);
  expect(slabBandLengths(kit)).toEqual([1200, 600, 300]);
  // Turned, "b" would lie on a strip with 1200, and no head could stand under its middle.
  expect(slabOffersAt(kit, 600).map(({ width, code }) => [width, code])).toEqual([
    [600, "d"],
    [300, "a"],
  ]);
  expect(slabOffersAt(kit, 300).map(({ width, code }) => [width, code])).toEqual([[600, "c"]]);
  expect(slabOffersAt(kit, 1200).map(({ width, code }) => [width, code])).toEqual([[600, "b"]]);
});

it("finds a prop that reaches, and accessories with a length or without", () => {
  const kit = kitOf([
    piece({ family: "prop", code: "p", least: 2000, greatest: 3500, class: null }),
    piece({ family: "alignment-ledger", code: "short", length: 1500 }),
    piece({ family: "alignment-ledger", code: "long", length: 3000 }),
    piece({ family: "alignment-ledger", code: "any", length: null }),
    piece({ family: "pin", code: "pin", length: null }),
  ]);
  expect([1999, 2000, 3500, 3501].map((height) => propOf(kit, height)?.code)).toEqual([
    undefined,
    "p",
    "p",
    undefined,
  ]);
  expect(codes(accessoryLengthsOf(kit, "alignment-ledger"))).toEqual(["long", "short"]);
  expect([accessoryOf(kit, "pin")?.code, accessoryOf(kit, "wedge")]).toEqual(["pin", null]);
});
