// Wall elevations: every piece once, to scale, ties as the fill has them, on samples, random houses and odd fills.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FilledFace, UnitFill } from "../../src/fill/result.ts";
import { overlaps } from "../../src/sheet/box.ts";
import type { Sheet } from "../../src/sheet/mark.ts";
import { titleBox } from "../../src/sheet/paper.ts";
import { fillOne } from "../support/filled.ts";
import { oneRoomInfo } from "../support/fixtureFill.ts";
import { houseArbitrary } from "../support/housePlan.ts";
import { markBounds, outsidePaper, overlappingTexts, timesDrawn } from "../support/sheetClaims.ts";
import { sheetFills } from "../support/sheetFills.ts";
import { sampleWallSheets, textsOf, tieBars, type WallSheets, wallSheets } from "../support/wallSheets.ts";

const RUNS = { seed: 20_260_311, numRuns: 8, endOnFailure: true };
const LONG = 60_000;
const SAMPLES = ["one-room", "two-bedroom", "mirrored-pair", "row-of-three", "awkward"];
const samples = SAMPLES.flatMap((name) => sampleWallSheets(name).map((sheets) => ({ name, sheets })));
const houses = houseArbitrary({ columns: 2, rows: 2, thicknesses: [100, 150], isMixed: true });

/** Every piece on a face, once each. */
function facePieces(unit: UnitFill): readonly string[] {
  return [...new Set(unit.faces.flatMap((face) => face.pieces.map(({ piece }) => piece)))].sort();
}

function holdPieces({ unit, elevations }: WallSheets): void {
  const times = timesDrawn(elevations);
  const drawn = [...times.keys()];
  const onFaces = new Set(facePieces(unit));
  expect(drawn.filter((piece) => onFaces.has(piece)).sort()).toEqual([...onFaces].sort());
  expect([...times.entries()].filter(([, count]) => count !== 1)).toEqual([]);
}

function holdPaper({ all }: WallSheets): void {
  for (const sheet of all) {
    expect(outsidePaper(sheet, 9)).toEqual([]);
    expect(overlappingTexts(sheet)).toEqual([]);
  }
}

/** Places of pieces of one face on paper against x ÷ scale: from piece to piece, so that nothing of the layout is used. */
function holdJoints({ unit, elevations, scale }: WallSheets): void {
  const boxes = new Map(
    elevations.flatMap(({ marks }, page) =>
      marks.flatMap((mark) =>
        mark.piece !== undefined && mark.kind === "rect"
          ? [[mark.piece, { page, box: mark.box }] as const]
          : [],
      ),
    ),
  );
  for (const face of unit.faces) {
    for (const [a, b] of neighbours(face)) {
      const [left, right] = [boxes.get(a.piece)!, boxes.get(b.piece)!];
      // On both sides of a match mark a face goes on at another place.
      const isBroken = left.page !== right.page || Math.abs(right.box.x - left.box.x - left.box.width) > 1;
      if (isBroken) continue;
      expect(Math.abs(right.box.x - left.box.x - (b.x - a.x) / scale)).toBeLessThan(0.01);
      expect(Math.abs(right.box.width - b.width / scale)).toBeLessThan(0.01);
      expect(Math.abs(right.box.height - b.height / scale)).toBeLessThan(0.01);
      const [footA, footB] = [left.box.y + left.box.height, right.box.y + right.box.height];
      expect(Math.abs(footA - footB - (b.z - a.z) / scale)).toBeLessThan(0.01);
    }
  }
}

/**
 * A bar at every tie on both of its faces, solid on the first: at the edge of a panel that ends at the joint, as high
 * over the panel's foot as the fill says. Gives how many were found.
 */
function holdTiePlaces({ unit, elevations, scale }: WallSheets): number {
  let found = 0;
  for (const { marks } of elevations) {
    const rects = marks.filter((mark) => mark.kind === "rect");
    const boxes = new Map(
      rects.flatMap((mark) => (mark.piece === undefined ? [] : [[mark.piece, mark.box]])),
    );
    const bars = rects.filter(({ box, piece }) => piece === undefined && Math.abs(box.height - 0.8) < 1e-9);
    for (const tie of unit.ties) {
      for (const [side, id] of tie.faces.entries()) {
        const face = unit.faces.find((each) => each.id === id)!;
        const x = along(face, tie.at);
        const panel = face.pieces.find(
          (piece) =>
            piece.family === "wall-panel" && piece.z === 0 && Math.abs(piece.x + piece.width - x) < 3,
        );
        const box = panel && boxes.get(panel.piece);
        if (box === undefined) continue;
        for (const height of tie.heights) {
          const y = box.y + box.height - height / scale;
          const bar = bars.find(
            (mark) =>
              Math.abs(mark.box.x + 1.2 - box.x - box.width) < 3.1 / scale &&
              Math.abs(mark.box.y + 0.4 - y) < 0.01,
          );
          expect(bar?.fill, `${id} ${x} ${height}`).toBe(side === 0 ? "ink" : "paper");
          found++;
        }
      }
    }
  }
  return found;
}

function along({ from, to }: FilledFace, at: readonly [number, number]): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return ((at[0] - from[0]) * dx + (at[1] - from[1]) * dy) / Math.sqrt(dx * dx + dy * dy);
}

/** Panels and closures that stand side by side on the floor. */
function neighbours(face: FilledFace) {
  const standing = face.pieces
    .filter(({ z, family }) => z === 0 && (family === "wall-panel" || family === "closure-strip"))
    .sort((a, b) => a.x - b.x);
  return standing
    .slice(1)
    .flatMap((b, index) =>
      standing[index]!.x + standing[index]!.width === b.x ? [[standing[index]!, b] as const] : [],
    );
}

function tieCount(unit: UnitFill): number {
  return unit.ties.reduce((sum, { heights }) => sum + heights.length, 0);
}

describe("elevations of the samples", () => {
  it.each(samples)("$name: every piece once, with frames, edges and fittings", ({ sheets }) => {
    holdPieces(sheets);
    const { unit, elevations } = sheets;
    const drawn = timesDrawn(elevations);
    for (const { piece } of unit.fittings) expect(drawn.has(piece), piece).toBe(true);
    for (const { piece } of unit.reveals.flatMap(({ pieces }) => pieces))
      expect(drawn.has(piece), piece).toBe(true);
  });

  it.each(samples)("$name: joints at x ÷ scale", ({ sheets }) => holdJoints(sheets));

  it.each(samples)("$name: a bar for each tie, solid on one side and open on the other", ({ sheets }) => {
    const ties = tieCount(sheets.unit);
    expect(tieBars(sheets.elevations)).toEqual({ own: ties, other: ties });
  });

  it.each(samples)("$name: each of them at its joint and height", ({ sheets }) => {
    // Joints between a corner leg and the next piece have a panel on one side only, which half the time is the other.
    expect(holdTiePlaces(sheets)).toBeGreaterThan(tieCount(sheets.unit));
  });

  it.each(samples)("$name: a ring with its number for each place that stays empty", ({ sheets }) => {
    const empty = sheets.unit.faces.flatMap(({ unfilled }) =>
      unfilled.map(({ problem }) => `${problem + 1}`),
    );
    const texts = textsOf(sheets.elevations)
      .filter(({ weight }) => weight === 700)
      .map(({ text }) => text);
    for (const number of new Set(empty)) {
      const wanted = empty.filter((other) => other === number).length;
      expect(texts.filter((text) => text === number).length).toBeGreaterThanOrEqual(wanted);
    }
  });

  it.each(samples)("$name: the sentence of each of these problems", ({ sheets }) => {
    const words = textsOf(sheets.elevations)
      .map(({ text }) => text)
      .join(" ");
    const shown = new Set(
      sheets.unit.faces.flatMap(({ unfilled }) => unfilled.map(({ problem }) => problem)),
    );
    for (const problem of shown) expect(words).toContain(sheets.unit.problems[problem]!.message);
  });

  it("are numbered through, the plan first", () => {
    const [{ sheets }] = samples as [(typeof samples)[number]];
    const numbers = sheets.all.map(
      (sheet) => textsOf([sheet]).find(({ text }) => / of \d+$/.test(text))?.text,
    );
    expect(numbers).toEqual(sheets.all.map((_, index) => `${index + 1} of ${sheets.all.length}`));
  });
});

describe("paper and languages", () => {
  const cases = SAMPLES.flatMap((name) =>
    (["A4", "Letter"] as const).flatMap((paper) =>
      (["en", "es", "pt"] as const).map((language) => ({ name, paper, language })),
    ),
  );
  it.each(cases)(
    "$name on the large sheet beside $paper in $language",
    { timeout: LONG },
    ({ name, paper, language }) => {
      for (const sheets of sampleWallSheets(name, paper, language)) {
        holdPaper(sheets);
        const title = titleBox(paper === "A4" ? "A3" : "Tabloid");
        for (const sheet of sheets.all) expect(acrossTitle(sheet, title)).toEqual([]);
      }
    },
  );

  /** Marks that begin outside the title block and run into it. */
  function acrossTitle(sheet: Sheet, title: ReturnType<typeof titleBox>) {
    return sheet.marks.filter((mark) => {
      const box = markBounds(mark);
      const isIn =
        box.x >= title.x - 0.5 &&
        box.y >= title.y - 0.5 &&
        box.x + box.width <= title.x + title.width + 0.5 &&
        box.y + box.height <= title.y + title.height + 0.5;
      return mark.kind === "text" && !isIn && overlaps(box, title);
    });
  }
});

describe("elevations of any fill", () => {
  it("of a random house draw every piece once, to scale, with its ties", { timeout: LONG }, () => {
    fc.assert(
      fc.property(houses, (house) => {
        const unit = fillOne(house);
        const sheets = wallSheets(unit, oneRoomInfo());
        holdPieces(sheets);
        holdJoints(sheets);
        holdPaper(sheets);
        expect(tieBars(sheets.elevations)).toEqual({ own: tieCount(unit), other: tieCount(unit) });
      }),
      RUNS,
    );
  });

  it("however odd, draw every piece once and no text over another", { timeout: LONG }, () => {
    fc.assert(
      fc.property(sheetFills, (unit) => {
        const sheets = wallSheets(unit, oneRoomInfo());
        holdPieces(sheets);
        holdPaper(sheets);
      }),
      RUNS,
    );
  });
});
