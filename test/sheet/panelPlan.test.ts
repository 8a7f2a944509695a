// The panel plan: to scale, every width on it or in its list, every face with its sheet, ties as the fill has them.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { TieLine, UnitFill } from "../../src/fill/result.ts";
import { occupied } from "../../src/sheet/occupied.ts";
import { planScale } from "../../src/sheet/planView.ts";
import { ratioOf } from "../../src/sheet/scaleBar.ts";
import { sheetToSvg } from "../../src/sheet/svg.ts";
import { fillOne } from "../support/filled.ts";
import { oneRoomFill, oneRoomInfo } from "../support/fixtureFill.ts";
import { houseArbitrary } from "../support/housePlan.ts";
import { sheetFills } from "../support/sheetFills.ts";
import { sampleWallSheets, textsOf, tieDots, type WallSheets, wallSheets } from "../support/wallSheets.ts";

const RUNS = { seed: 20_260_312, numRuns: 8, endOnFailure: true };
const LONG = 60_000;
const NAMES = ["one-room", "two-bedroom", "mirrored-pair", "row-of-three", "awkward"];
const samples = NAMES.flatMap((name) => sampleWallSheets(name).map((sheets) => ({ name, sheets })));

function scaleOf({ plan }: WallSheets): number {
  const text = textsOf([plan]).find(({ text }) => /^1:\d+$/.test(text))!.text;
  return ratioOf(text)!;
}

/** Where the dot of a tie lies in the building: at the outside of the frames of the face that is set first. */
function dotInPlan(tie: TieLine, unit: UnitFill): readonly [number, number] {
  const { from, to } = unit.faces.find(({ id }) => id === tie.faces[0])!;
  const length = Math.sqrt((to[0] - from[0]) ** 2 + (to[1] - from[1]) ** 2);
  // Concrete lies on the left of a face, its frames on the right.
  const [rx, ry] = [(to[1] - from[1]) / length, -(to[0] - from[0]) / length];
  const reach = tie.length / 2 + 65;
  return [tie.at[0] + rx * reach, tie.at[1] + ry * reach];
}

function byPlace(a: TieLine, b: TieLine): number {
  return a.at[0] - b.at[0] || a.at[1] - b.at[1];
}

/** Dots against the ties of the fill, each from the first one, so that the place of the plan on its sheet is left out. */
function holdTies(sheets: WallSheets): void {
  const { unit } = sheets;
  const dots = tieDots(sheets.plan);
  const ties = [...unit.ties].sort(byPlace).map((tie) => dotInPlan(tie, unit));
  expect(dots.length).toBe(ties.length);
  const scale = scaleOf(sheets);
  for (const [index, [x, y]] of ties.entries()) {
    const [dx, dy] = [dots[index]![0] - dots[0]![0], dots[index]![1] - dots[0]![1]];
    expect(Math.abs(dx - (x - ties[0]![0]) / scale)).toBeLessThan(0.01);
    expect(Math.abs(dy + (y - ties[0]![1]) / scale)).toBeLessThan(0.01);
  }
}

/** Widths that stand on the floor: panels, fillers, closures, stop-ends. */
function standingWidths(unit: UnitFill): readonly number[] {
  return unit.faces.flatMap(({ pieces }) =>
    pieces.filter(({ z, family }) => z === 0 && !NOT_LISTED.has(family)).map(({ width }) => width),
  );
}

const NOT_LISTED = new Set([
  "inside-corner",
  "wall-slab-connector",
  "slab-edge-cap",
  "connector-corner",
  "cap-corner",
]);

/** Every width is a number on the plan, or stands in the list of its face. */
function holdWidths({ unit, plan, lists }: WallSheets): void {
  const numbers = textsOf([plan, ...lists]).filter(({ height }) => height === 2.5);
  // "5 × 600" is a run of five; a line of the list breaks at any space and then goes on in the next text.
  const lines = numbers.filter(({ text }) => /^[\d\s():,×]+$/.test(text)).map(({ text }) => text);
  const whole: string[] = [];
  for (const text of lines) {
    const last = whole.at(-1);
    const goesOn = last !== undefined && (/[,×:]$/.test(last) || text.startsWith("×"));
    if (goesOn) whole[whole.length - 1] = `${last} ${text}`;
    else whole.push(text);
  }
  const parts = whole.flatMap((text) => text.split(",")).map((part) => part.trim());
  const written = parts.flatMap((part) => {
    const [count, width] = part.includes("×") ? part.split("×").map((side) => side.trim()) : ["1", part];
    return Array<string>(Number(count)).fill(width ?? "");
  });
  const left = new Map<string, number>();
  for (const number of written) left.set(number, (left.get(number) ?? 0) + 1);
  for (const width of standingWidths(unit)) {
    const count = left.get(`${width}`) ?? 0;
    expect(count, `${width}`).toBeGreaterThan(0);
    left.set(`${width}`, count - 1);
  }
}

/** The marks of sections: letter and sheet, as they follow each other on the plan; the sample of the legend left out. */
function sectionsOn({ plan }: WallSheets): readonly string[] {
  const texts = textsOf([plan]);
  const found = texts.flatMap((text, index) =>
    text.ink === "paper" && text.weight === 700 ? [`${text.text} ${texts[index + 1]!.text}`] : [],
  );
  return found.slice(0, -1);
}

describe("the panel plan of the samples", () => {
  it.each(samples)("$name: ties where the fill has them, to scale", ({ sheets }) => holdTies(sheets));

  it.each(samples)("$name: every width on the plan or in its list", ({ sheets }) => holdWidths(sheets));

  it.each(samples)("$name: every face with a section mark, or in the list with its sheet", ({ sheets }) => {
    const listed = textsOf([sheets.plan, ...sheets.lists]).filter(({ text }) =>
      /^elevation on sheet \d+$/.test(text),
    );
    expect(sectionsOn(sheets).length + listed.length).toBe(sheets.unit.faces.length);
  });

  it.each(samples)("$name: the sheet of a section mark shows a face of that letter", ({ sheets }) => {
    for (const mark of sectionsOn(sheets)) {
      const [letter, sheet] = mark.split(" ");
      const letters = textsOf([sheets.all[Number(sheet) - 1]!]).filter(({ height }) => height === 5);
      expect(letters.map(({ text }) => text)).toContain(letter);
    }
  });

  it.each(samples)("$name: at the largest scale that fits an A3 with 16 mm round the plan", ({ sheets }) => {
    const places = sheets.unit.faces.flatMap(({ from, to }) => [from, to]);
    const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
    const [wide, high] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
    // 420 less 20, 10 and two insets of 4; 297 less margins, title block of 36 and insets.
    const fits = (scale: number) => wide / scale <= 382 - 32 && high / scale <= 233 - 32;
    const larger = [20, 25, 50, 75, 100].filter((scale) => scale < scaleOf(sheets));
    expect(fits(scaleOf(sheets))).toBe(true);
    expect(larger.filter(fits)).toEqual([]);
  });
});

describe("the panel plan of any fill", () => {
  const houses = houseArbitrary({ columns: 2, rows: 2, thicknesses: [100, 150, 200], isMixed: true });

  it("of a random house has its ties and widths", { timeout: LONG }, () => {
    fc.assert(
      fc.property(houses, (house) => {
        const sheets = wallSheets(fillOne(house), oneRoomInfo());
        holdTies(sheets);
        holdWidths(sheets);
      }),
      RUNS,
    );
  });

  it("gives the same bytes in whatever order the fill lists its members", { timeout: LONG }, () => {
    fc.assert(
      fc.property(sheetFills, (unit) => {
        const turned: UnitFill = {
          ...unit,
          faces: [...unit.faces].reverse().map((face) => ({
            ...face,
            pieces: [...face.pieces].reverse(),
            openings: [...face.openings].reverse(),
            unfilled: [...face.unfilled].reverse(),
          })),
          ties: [...unit.ties].reverse(),
        };
        const print = (fill: UnitFill) =>
          wallSheets(fill, oneRoomInfo())
            .all.map((sheet) => sheetToSvg(sheet))
            .join("");
        expect(print(turned) === print(unit)).toBe(true);
      }),
      RUNS,
    );
  });
});

describe("the scale of a plan", () => {
  const bounds = (width: number, height: number) => ({ left: 100, right: 100 + width, low: 0, high: height });
  it.each([
    { why: "fits at 1:20 to the millimetre", width: 4000, height: 2000, scale: 20 },
    { why: "a millimetre more", width: 4001, height: 2000, scale: 25 },
    { why: "the height decides", width: 1000, height: 5001, scale: 75 },
    { why: "larger than any scale of the row", width: 3e6, height: 10, scale: 15_000 },
  ])("$why", ({ width, height, scale }) => {
    expect(planScale(bounds(width, height), { width: 220, height: 120 }, 10)).toBe(scale);
  });
});

describe("paper that is taken", () => {
  const area = { x: 10, y: 20, width: 30, height: 20 };
  const taken = { x: 15.1, y: 25.1, width: 4, height: 3 };
  it.each([
    { why: "beside it", box: { x: 10, y: 20, width: 5, height: 20 }, free: true },
    { why: "a hair into it", box: { x: 10, y: 20, width: 5.2, height: 20 }, free: false },
    { why: "inside it", box: { x: 16, y: 26, width: 1, height: 1 }, free: false },
    { why: "under it", box: { x: 15, y: 28.5, width: 5, height: 5 }, free: true },
    { why: "off the paper", box: { x: 35, y: 20, width: 5.1, height: 2 }, free: false },
  ])("$why", ({ box, free }) => {
    const paper = occupied(area);
    paper.take(taken);
    expect(paper.isFree(box)).toBe(free);
  });

  it("is seen by a line that crosses it, and given back", () => {
    const paper = occupied(area);
    const back = paper.keep();
    paper.take(taken);
    expect(paper.isFreeLine([11, 21], [30, 35])).toBe(false);
    expect(paper.isFreeLine([11, 21], [11, 35])).toBe(true);
    back();
    expect(paper.isFreeLine([11, 21], [30, 35])).toBe(true);
  });
});

describe("the plan and elevations of the room laid by hand", () => {
  it.each(["a-panel-plan", "a-elevations-01"])("are drawn as before: %s", async (name) => {
    const { all } = wallSheets(oneRoomFill(), oneRoomInfo());
    const sheet = all.find((each) => each.name === name)!;
    await expect(sheetToSvg(sheet)).toMatchFileSnapshot(`../golden/${name}.svg`);
  });
});
