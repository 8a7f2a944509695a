// A mirrored pour has sheets of its own hand; a unit poured in one hand only has no others.

import { describe, expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { sheetSets } from "../../src/sheet/sheetSet.ts";
import { sheetToSvg } from "../../src/sheet/svg.ts";
import { filled, sampleProject } from "../support/samples.ts";

const union = await loadUnion();

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
  const sets = sheetSets({ fill: filled(poured), project: poured, kit: demoKit, union });
  return sets.flatMap(({ sheets }) => sheets);
}

describe("the sheets of mirrored pours", () => {
  it.each([
    { why: "no pours: as drawn", mirror: [], plain: true, mirrored: false },
    { why: "as drawn only", mirror: [false], plain: true, mirrored: false },
    { why: "mirrored only", mirror: [true, true], plain: false, mirrored: true },
    { why: "both hands", mirror: [false, true], plain: true, mirrored: true },
  ])("$why", ({ mirror, plain, mirrored }) => {
    const names = sheetsWith(mirror).map(({ name }) => name);
    expect(names.some((name) => !name.endsWith("-mirrored"))).toBe(plain);
    expect(names.some((name) => name.endsWith("-mirrored"))).toBe(mirrored);
    expect(new Set(names).size).toBe(names.length);
  });

  it("say so where they are read, and hold the same pieces", () => {
    const sheets = sheetsWith([false, true]);
    const room = (ending: string) =>
      sheetToSvg(sheets.find(({ name }) => name.includes("01") && name.endsWith(ending))!);
    const own = sheetToSvg(sheets.find(({ name }) => name.includes("01") && !name.endsWith("-mirrored"))!);
    expect(room("-mirrored")).toContain("mirrored");
    expect(own).not.toContain("mirrored");
    const pieces = (svg: string) =>
      [...svg.matchAll(/data-piece="([^"]+)"/g)].map((match) => match[1]).sort();
    expect(pieces(room("-mirrored"))).toEqual(pieces(own));
  });
});
