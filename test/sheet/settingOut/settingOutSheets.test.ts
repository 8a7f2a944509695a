// What must hold on every setting-out sheet, asked of its marks alone.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mirrorFill } from "../../../src/fill/mirror.ts";
import type { UnitFill } from "../../../src/fill/result.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import type { Language, Project, Unit } from "../../../src/plan/project.ts";
import { sheetInfoOf } from "../../../src/sheet/info.ts";
import type { Sheet } from "../../../src/sheet/mark.ts";
import type { PaperSize } from "../../../src/sheet/paper.ts";
import { numberText } from "../../../src/sheet/settingOut/numberText.ts";
import { settingOutOf } from "../../../src/sheet/settingOut/settingOut.ts";
import { settingOutSheets } from "../../../src/sheet/settingOut/settingOutSheets.ts";
import { SETTING_OUT_WORDS } from "../../../src/sheet/settingOut/words.ts";
import { sheetToSvg } from "../../../src/sheet/svg.ts";
import { fillOne, projectOf } from "../../support/filled.ts";
import { filled, sampleProject } from "../../support/samples.ts";
import { withServices } from "../../support/services.ts";
import { besideMarkup, outsidePaper, overlappingTexts } from "../../support/sheetClaims.ts";
import { HOSTILE_NAMES } from "../../support/sheetFills.ts";

const RUNS = { seed: 20_260_303, numRuns: 20, endOnFailure: true };
const PAPERS: readonly PaperSize[] = ["A3", "Tabloid", "A4", "Letter"];
const LANGUAGES: readonly Language[] = ["en", "es", "pt"];

function sheetsOf(
  project: Project,
  unit: Unit,
  fill: UnitFill,
  given: { readonly paper?: PaperSize; readonly language?: Language } = {},
): readonly Sheet[] {
  const language = given.language ?? "en";
  const info = { ...sheetInfoOf({ project, unit, kit: demoKit }, fill), language };
  return settingOutSheets({ fill, unit, isMirrored: false, info }, given.paper);
}

function texts(sheets: readonly Sheet[]): readonly string[] {
  return sheets.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));
}

function judge(sheets: readonly Sheet[]): void {
  expect(sheets.length).toBeGreaterThan(0);
  for (const sheet of sheets) {
    expect(outsidePaper(sheet, 9)).toEqual([]);
    expect(overlappingTexts(sheet)).toEqual([]);
  }
}

describe("the sheets of any plan", () => {
  it("keep to the paper, lay no text over another and list every point once, on every paper in every language", () => {
    let run = 0;
    fc.assert(
      fc.property(withServices({ columns: 3, rows: 2 }), (unit) => {
        const [paper, language] = [PAPERS[run % 4]!, LANGUAGES[run++ % 3]!];
        const fill = fillOne(unit);
        const sheets = sheetsOf(projectOf(unit), unit, fill, { paper, language });
        judge(sheets);
        const { points, running } = settingOutOf(fill, unit, false);
        const said = texts(sheets);
        for (const { id, at } of points)
          for (const one of [id, ...at.map((reading) => numberText(reading))]) expect(said).toContain(one);
        expect(said.filter((one) => /^\d.*…$/.test(one))).toEqual([]);
        const words = SETTING_OUT_WORDS[language];
        for (const title of [words.point, words.found("x"), words.found("y")]) expect(said).toContain(title);
        for (const { at } of running) expect(said).toContain(numberText(at));
      }),
      RUNS,
    );
  });

  it.each(["one-room", "two-bedroom", "mirrored-pair", "row-of-three", "awkward"])(
    "of the sample %s",
    (name) => {
      const project = sampleProject(name);
      for (const fill of filled(project).units) {
        const unit = project.units.find(({ id }) => id === fill.unit)!;
        for (const paper of PAPERS) judge(sheetsOf(project, unit, fill, { paper, language: "es" }));
      }
    },
  );

  it("draw a ring for each pin that was moved and a dot for each other", () => {
    const project = sampleProject("two-bedroom");
    const fill = filled(project).units[0]!;
    const [page] = sheetsOf(project, project.units[0]!, fill);
    const { pins, controls } = settingOutOf(fill, project.units[0]!, false);
    const moved = pins.filter(({ movedOff }) => movedOff.length > 0).length;
    const circles = page!.marks.filter((mark) => mark.kind === "circle");
    // 1:75: dots of 0.48, rings of 0.76; one of full size each among the marks explained.
    expect(circles.filter(({ radius }) => Math.abs(radius - 0.48) < 1e-9).length).toBe(pins.length - moved);
    expect(circles.filter(({ radius }) => Math.abs(radius - 0.76) < 1e-9).length).toBe(moved);
    expect(circles.filter(({ radius }) => radius === 4.5).length).toBe(controls.length);
  });

  it("put the plan to scale: 1:20 for the sample room, its outside 160 by 190 mm of paper", () => {
    const project = sampleProject("one-room");
    const [page] = sheetsOf(project, project.units[0]!, filled(project).units[0]!);
    const concrete = page!.marks.find((mark) => mark.kind === "polygon" && mark.fill === "faint");
    if (concrete?.kind !== "polygon") throw new Error("no concrete is drawn");
    const [xs, ys] = [concrete.points.map(([x]) => x), concrete.points.map(([, y]) => y)];
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(160, 6);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(190, 6);
    expect(texts([page!])).toContain("1:20");
  });

  it("are made however far off a stray wall is drawn, with its reading", () => {
    const project = sampleProject("one-room");
    // The farthest place that a project file may hold.
    const stray = {
      ...project.units[0]!.walls[0]!,
      id: "stray",
      from: [9_995_000, 1e7],
      to: [1e7, 1e7],
    } as const;
    const unit: Unit = { ...project.units[0]!, walls: [...project.units[0]!.walls, stray] };
    for (const paper of PAPERS) {
      const sheets = sheetsOf({ ...project, units: [unit] }, unit, fillOne(unit), { paper });
      judge(sheets);
      // The concrete of the room begins 50 before the origin.
      expect(texts(sheets)).toContain("10 000 050");
    }
  });

  it("of mirrored pours are drawn in their own hand and say so", () => {
    const project = sampleProject("two-bedroom");
    const [unit, fill] = [project.units[0]!, filled(project).units[0]!];
    const mirrored = mirrorFill({ ...fill, pours: ["p2"] }, demoKit);
    const info = sheetInfoOf({ project, unit, kit: demoKit }, mirrored);
    const sheets = settingOutSheets({ fill: mirrored, unit, isMirrored: true, info });
    judge(sheets);
    expect(sheets[0]!.title).toContain("mirrored");
    // X1 is drawn 650 from the left side of 11 000.
    expect(texts(sheets)).toContain("10 350");
  });

  it.each(HOSTILE_NAMES)("survive the name %j", (name) => {
    const project = sampleProject("mirrored-pair");
    const unit: Unit = {
      ...project.units[0]!,
      name,
      services: project.units[0]!.services.map((one) => ({ ...one, id: name })),
      controlLines: project.units[0]!.controlLines.map((one, k) => ({ ...one, id: `${name}${k}` })),
      rooms: project.units[0]!.rooms.map((room) => ({ ...room, name })),
      openings: project.units[0]!.openings.map((one, k) => ({ ...one, id: `${name}${k}` })),
    };
    const sheets = sheetsOf({ ...project, units: [unit] }, unit, fillOne(unit));
    judge(sheets);
    for (const sheet of sheets) {
      expect(besideMarkup(sheetToSvg(sheet))).not.toMatch(/[<>&]/);
    }
  });

  it("are the same bytes for the same room, beside the claims above", async () => {
    const project = sampleProject("one-room");
    const [page] = sheetsOf(project, project.units[0]!, filled(project).units[0]!);
    await expect(sheetToSvg(page!)).toMatchFileSnapshot("../../golden/one-room-setting-out.svg");
  });
});
