import { describe, expect, it } from "vitest";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit, Piece, Rules } from "../../src/kit/kit.ts";
import { kitWarnings } from "../../src/kit/warnings.ts";
import { kitOf, panel, piece } from "../support/kits.ts";

const origin = "common practice, no source";
const PANELS = [panel(600, 2250), panel(450, 2250), panel(250, 2250)];
const STRIP = piece({ family: "closure-strip", code: "C", least: 10, greatest: 59 });
const CORNER = piece({ family: "inside-corner", code: "N", legs: [150, 150], height: 2250 });

const strip = (code: string, least: number, greatest: number) =>
  piece({ family: "closure-strip", code, least, greatest });
const corner = (code: string, legs: readonly [number, number], hand: Piece["hand"] = null) =>
  piece({ family: "inside-corner", code, legs, height: 2250, hand });
const holes = (first: number, pitch: number, rows: readonly number[]): Rules => ({
  holes: { value: { first, pitch }, unit: "mm", origin },
  tieRows: { value: rows, unit: "mm", origin },
});
const leg = (value: number, frame = 65): Rules => ({
  cornerLeg: { value, unit: "mm", origin },
  frameDepth: { value: frame, unit: "mm", origin },
});

it("has nothing to say about the demo kit", () => {
  expect(kitWarnings(demoKit)).toEqual([]);
});

it("has nothing to say about panels of one width to the millimetre", () => {
  expect(kitWarnings(kitOf([panel(601, 2250), panel(600, 2250), STRIP]))).toEqual([]);
});

interface Row {
  readonly why: string;
  readonly kit: Kit;
  readonly says: readonly string[];
}

const kit = (pieces: readonly Piece[], rules: Rules = {}) => kitOf([...PANELS, ...pieces], rules);

describe("one sentence, with its numbers", () => {
  it.each<Row>([
    { why: "nothing to fill with", kit: kitOf([STRIP]), says: ["no wall panel"] },
    { why: "no closure strip", kit: kit([]), says: ["multiples of 50 mm", "no closure strip"] },
    {
      why: "a strip that leaves residues open",
      kit: kit([strip("C", 10, 50)]),
      says: ["10 to 50 mm", "9 of its 49 residues", "(1 to 9)", "10 to 59 mm would"],
    },
    {
      why: "two strips with a gap between",
      kit: kit([strip("C", 10, 29), strip("D", 31, 59)]),
      says: ["10 to 29 mm and 31 to 59 mm", "1 of its 49 residues", "(30)"],
    },
    {
      why: "a strip too narrow to hold",
      kit: kit([strip("C", 1, 59)]),
      says: ["narrower than 10 mm", '"C" down to 1 mm'],
    },
    {
      why: "a strip too wide to stand alone",
      kit: kit([strip("C", 10, 150)]),
      says: ["wider than 59 mm", '"C" up to 150 mm'],
    },
    {
      why: "a leg behind which no pin can be driven",
      kit: kit([STRIP, corner("N", [150, 144])], leg(150)),
      says: ["no inside corner"],
    },
    {
      why: "tie rows between the holes and below them",
      kit: kit([STRIP], holes(150, 300, [100, 450, 900, 1050])),
      says: ["2 tie rows (100, 900) are on no hole", "begin at 150 mm", "300 mm apart"],
    },
    {
      why: "one tie row off the holes",
      kit: kit([STRIP], holes(150, 150, [150, 500])),
      says: ["1 tie row (500) is on no hole"],
    },
    {
      why: "handed pieces whose partner is of another size",
      kit: kit([STRIP, corner("L", [150, 300], "left"), corner("R", [150, 300], "right")]),
      says: ['2 handed pieces ("L", "R")', "partner"],
    },
    {
      why: "two panels of one size",
      kit: kitOf([...PANELS, STRIP, panel(600, 2250, { code: "Again", mass: 9 })]),
      says: ["600 × 2250 mm", 'only "Again" is used', 'not "600×2250"'],
    },
    {
      why: "an origin in a form of its own",
      kit: kit([STRIP], { tieSpacing: { value: 600, unit: "mm", origin: "heard on site" } }),
      says: ["rule tieSpacing", '"heard on site"', "published"],
    },
    {
      why: "a publication without a name",
      kit: kit([STRIP], { tieSpacing: { value: 600, unit: "mm", origin: "published: " } }),
      says: ["rule tieSpacing"],
    },
  ])("$why", ({ kit: given, says }) => {
    const warnings = kitWarnings(given);
    expect(warnings.filter((warning) => says.every((words) => warning.includes(words)))).toHaveLength(1);
  });
});

describe("the leg and the frame", () => {
  it.each([
    { why: "80 behind the frame is enough", legs: 145, frame: 65, count: 0 },
    { why: "79 is not, neither by the rule nor in the piece", legs: 144, frame: 65, count: 2 },
    { why: "a shallower frame leaves room", legs: 100, frame: 20, count: 0 },
  ])("$why", ({ legs, frame, count }) => {
    const given = kit([STRIP, corner("N", [legs, legs])], leg(legs, frame));
    expect(kitWarnings(given).filter((warning) => warning.includes("hammer"))).toHaveLength(count);
  });

  it("says nothing where the kit does not say how deep its frames are", () => {
    const given = kit([STRIP, corner("N", [50, 50])], { cornerLeg: { value: 50, unit: "mm", origin } });
    expect(kitWarnings(given)).toEqual([]);
  });
});

it("is satisfied by a handed pair and by a published origin", () => {
  const pair = [corner("L", [150, 300], "left"), corner("R", [300, 150], "right")];
  const rules: Rules = { tieSpacing: { value: 600, unit: "mm", origin: "published: a standard, table 3" } };
  expect(kitWarnings(kit([STRIP, CORNER, ...pair], rules))).toEqual([]);
});

/** Whether every length from `from` to `to` is panels and at most one closure, tried one by one. */
function coversAll(widths: readonly number[], least: number, greatest: number): boolean {
  const from = 5000;
  const to = from + 200;
  const byPanels = [true];
  for (let x = 1; x <= to; x++) byPanels[x] = widths.some((width) => byPanels[x - width] === true);
  for (let length = from; length <= to; length++) {
    let isCovered = byPanels[length] === true;
    for (let width = least; width <= greatest && !isCovered; width++)
      isCovered = byPanels[length - width] === true;
    if (!isCovered) return false;
  }
  return true;
}

it.each([
  { widths: [600, 450, 250], least: 10, greatest: 59 },
  { widths: [600, 450, 250], least: 10, greatest: 58 },
  { widths: [600, 450, 250], least: 1, greatest: 49 },
  { widths: [600, 450, 250], least: 2, greatest: 50 },
  { widths: [300, 225], least: 10, greatest: 84 },
  { widths: [300, 225], least: 10, greatest: 83 },
  { widths: [51, 50], least: 30, greatest: 30 },
])("speaks of open residues exactly where a length stays open: $widths, $least to $greatest", (given) => {
  const { widths, least, greatest } = given;
  const warnings = kitWarnings(
    kitOf([...widths.map((width) => panel(width, 2250)), strip("C", least, greatest)]),
  );
  const speaks = warnings.some((warning) => warning.includes("residues open"));
  expect(speaks).toBe(!coversAll(widths, least, greatest));
});

it("stays short however many doubles there are", () => {
  const doubles = Array.from({ length: 40 }, (_, i) => 100 + 10 * Math.floor(i / 2));
  const warnings = kitWarnings(
    kitOf([...doubles.map((width, i) => panel(width, 2250, { code: `P${i}` })), STRIP]),
  );
  expect(warnings.filter((warning) => warning.includes("wall panel"))).toHaveLength(6);
  expect(warnings.at(-1)).toContain("15 more sizes");
});
