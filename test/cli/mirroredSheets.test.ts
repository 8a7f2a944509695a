// A mirrored pour has sheets of its own hand; a unit poured in one hand only has no others.

import { describe, expect, it } from "vitest";
import { coreTools } from "../../src/cli/coreTools.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { filled, sampleProject } from "../support/samples.ts";

function sheetsWith(mirror: readonly boolean[]) {
  const project = sampleProject("one-room");
  const unit = project.units[0]!.id;
  const pours = mirror.map((each, k) => ({
    id: `p${k}`,
    name: `Pour ${k}`,
    unit,
    mirror: each,
    day: null,
    storey: null,
  }));
  const poured = { ...project, pours };
  return coreTools.sheets(filled(poured), poured, demoKit);
}

describe("the sheets of mirrored pours", () => {
  it.each([
    { why: "no pours: as drawn", mirror: [], plain: true, mirrored: false },
    { why: "as drawn only", mirror: [false], plain: true, mirrored: false },
    { why: "mirrored only", mirror: [true, true], plain: false, mirrored: true },
    { why: "both hands", mirror: [false, true], plain: true, mirrored: true },
  ])("$why", ({ mirror, plain, mirrored }) => {
    const titles = sheetsWith(mirror).map(({ title }) => title);
    expect(titles.some((title) => !title.endsWith("-mirrored"))).toBe(plain);
    expect(titles.some((title) => title.endsWith("-mirrored"))).toBe(mirrored);
    expect(new Set(titles).size).toBe(titles.length);
  });

  it("say so where they are read, and hold the same pieces", () => {
    const sheets = sheetsWith([false, true]);
    const room = (ending: string) =>
      sheets.find(({ title }) => title.includes("01") && title.endsWith(ending))!.svg;
    const own = sheets.find(({ title }) => title.includes("01") && !title.endsWith("-mirrored"))!.svg;
    expect(room("-mirrored")).toContain("mirrored");
    expect(own).not.toContain("mirrored");
    const pieces = (svg: string) =>
      [...svg.matchAll(/data-piece="([^"]+)"/g)].map((match) => match[1]).sort();
    expect(pieces(room("-mirrored"))).toEqual(pieces(own));
  });
});
