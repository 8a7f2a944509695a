// What must hold on every sheet of any fill, however odd: laid by hand, made by the program, or made to break it.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { UnitFill } from "../../src/fill/result.ts";
import { grown, overlaps } from "../../src/sheet/box.ts";
import type { Sheet } from "../../src/sheet/mark.ts";
import { PAPERS } from "../../src/sheet/paper.ts";
import { roomSheets } from "../../src/sheet/roomSheet.ts";
import { sheetToSvg } from "../../src/sheet/svg.ts";
import { oneRoomFill, oneRoomInfo } from "../support/fixtureFill.ts";
import {
  besideMarkup,
  markBounds,
  outsidePaper,
  overlappingTexts,
  timesDrawn,
} from "../support/sheetClaims.ts";
import { HOSTILE_NAMES, sheetFills } from "../support/sheetFills.ts";

const info = oneRoomInfo();
const RUNS = { seed: 20_260_217, numRuns: 20, endOnFailure: true };

/** Milliseconds: a busy machine takes its time over many rooms, and that is no fault of theirs. */
const PATIENCE = 60_000;

/** Every piece on a face, once each. */
function facePieces(unit: UnitFill): readonly string[] {
  return [...new Set(unit.faces.flatMap((face) => face.pieces.map(({ piece }) => piece)))].sort();
}

// Texts are of different length in the three languages.
const KINDS = [
  { paper: "A4", language: "en" },
  { paper: "A4", language: "es" },
  { paper: "A4", language: "pt" },
  { paper: "Letter", language: "en" },
  { paper: "Letter", language: "es" },
] as const;

describe.each(KINDS)("the sheets of any fill on $paper in $language", ({ paper, language }) => {
  const info = oneRoomInfo({ paper, language });
  // Every claim is asked of the same fills; laying them out once is enough.
  const known = new Map<string, readonly Sheet[]>();
  const laidOut = (unit: UnitFill) => {
    const text = JSON.stringify(unit);
    const sheets = known.get(text) ?? roomSheets(unit, info);
    known.set(text, sheets);
    return sheets;
  };

  it(
    "keep every mark on the paper",
    () => {
      fc.assert(
        fc.property(sheetFills, (unit) => {
          for (const sheet of laidOut(unit)) expect(outsidePaper(sheet, 9)).toEqual([]);
        }),
        RUNS,
      );
    },
    PATIENCE,
  );

  it(
    "never lay one text over another",
    () => {
      fc.assert(
        fc.property(sheetFills, (unit) => {
          for (const sheet of laidOut(unit)) expect(overlappingTexts(sheet)).toEqual([]);
        }),
        RUNS,
      );
    },
    PATIENCE,
  );

  it(
    "draw every piece of every face exactly once",
    () => {
      fc.assert(
        fc.property(sheetFills, (unit) => {
          const times = timesDrawn(laidOut(unit));
          expect([...times.keys()].sort()).toEqual(facePieces(unit));
          expect([...times.values()].every((count) => count === 1)).toBe(true);
        }),
        RUNS,
      );
    },
    PATIENCE,
  );

  it(
    "leave the code and the paper it needs round it to itself",
    () => {
      const { width, height } = PAPERS[paper];
      // Four modules of 0.45 mm on each side of a code of 29.
      const quiet = {
        x: width - 10 - 13.05 - 1.8,
        y: height - 10 - 13.05 - 1.8,
        width: 14.85,
        height: 14.85,
      };
      fc.assert(
        fc.property(sheetFills, (unit) => {
          for (const { marks } of laidOut(unit)) {
            const there = marks.filter((mark) => overlaps(markBounds(mark), grown(quiet, -1e-6)));
            expect(there.every((mark) => mark.kind === "rect" && mark.stroke === undefined)).toBe(true);
          }
        }),
        RUNS,
      );
    },
    PATIENCE,
  );
});

describe("the sheets of any fill", () => {
  it(
    "give the same bytes for the same fill, whatever the order in which it lists its faces and pieces",
    () => {
      fc.assert(
        fc.property(sheetFills, (unit) => {
          const turned: UnitFill = {
            ...unit,
            faces: [...unit.faces].reverse().map((face) => ({
              ...face,
              pieces: [...face.pieces].reverse(),
              openings: [...face.openings].reverse(),
            })),
            rooms: unit.rooms.map((room) => ({ ...room, faces: [...room.faces].reverse() })),
          };
          const print = (fill: UnitFill) =>
            roomSheets(fill, info).map((sheet) => [sheet.name, sheetToSvg(sheet)]);
          expect(JSON.stringify(print(turned)) === JSON.stringify(print(unit))).toBe(true);
        }),
        RUNS,
      );
    },
    PATIENCE,
  );

  it(
    "have names that are safe for a file and tell them apart",
    () => {
      fc.assert(
        fc.property(sheetFills, (unit) => {
          const names = roomSheets(unit, info).map(({ name }) => name);
          expect(new Set(names).size).toBe(names.length);
          for (const name of names) expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
        }),
        RUNS,
      );
    },
    PATIENCE,
  );

  it(
    "list every problem on at least one sheet, by its number",
    () => {
      fc.assert(
        fc.property(sheetFills, (unit) => {
          const texts = new Set(
            roomSheets(unit, info).flatMap(({ marks }) =>
              marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
            ),
          );
          unit.problems.forEach((_, index) => {
            expect(texts).toContain(`${index + 1}`);
          });
        }),
        RUNS,
      );
    },
    PATIENCE,
  );
});

describe("hostile names", () => {
  it.each(HOSTILE_NAMES)("cannot break the document: %j", (name) => {
    const unit = oneRoomFill({
      unit: name,
      rooms: oneRoomFill().rooms.map((room) => ({ ...room, name })),
      problems: [{ severity: "error", kind: name, message: name, where: {} }],
    });
    const hostile = oneRoomInfo({
      project: name,
      revision: name,
      unitName: name,
      madeBy: name,
      document: name,
    });
    for (const sheet of roomSheets(unit, hostile)) {
      const svg = sheetToSvg(sheet);
      expect(besideMarkup(svg)).not.toMatch(/[<>&]/);
      expect(svg.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\ufffe\uffff]/u);
      expect(overlappingTexts(sheet)).toEqual([]);
    }
  });
});
