// Units for tests of bill, packing list and accessory schedule: those of the samples, houses at random, and fills that
// any file could hold, each with what its sheets say.

import fc from "fast-check";
import { billOf } from "../../src/fill/bill.ts";
import type { UnitFill } from "../../src/fill/result.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Language } from "../../src/plan/project.ts";
import { type SheetInfo, sheetInfoOf } from "../../src/sheet/info.ts";
import { fillOne, projectOf } from "./filled.ts";
import { oneRoomInfo } from "./fixtureFill.ts";
import { houseArbitrary } from "./housePlan.ts";
import { filled, sampleProject } from "./samples.ts";
import { HOSTILE_NAMES, sheetFills } from "./sheetFills.ts";

export interface Listed {
  readonly unit: UnitFill;
  readonly info: SheetInfo;
}

export const LANGUAGES: readonly Language[] = ["en", "es", "pt"];
export const HOSTILE_CODES: readonly string[] = [
  ...HOSTILE_NAMES,
  '=cmd|" /C calc"!A0',
  'a,b;"c"\r\nd',
  "+1",
  "__proto__",
  "constructor",
  "W".repeat(400),
];

const filledOnce = new Map<string, readonly Listed[]>();

/** All units of a sample of the demo kit. */
export function listedSample(name: string): readonly Listed[] {
  const known = filledOnce.get(name) ?? fillSample(name);
  filledOnce.set(name, known);
  return known;
}

function fillSample(name: string): readonly Listed[] {
  const project = sampleProject(name);
  return filled(project).units.map((fill) => {
    const unit = project.units.find(({ id }) => id === fill.unit)!;
    return { unit: fill, info: sheetInfoOf({ project, unit, kit: demoKit }, fill) };
  });
}

/** Houses of four rooms with the demo kit. */
export const listedHouses: fc.Arbitrary<Listed> = houseArbitrary({
  columns: 2,
  rows: 2,
  thicknesses: [100, 120, 150, 200],
  isMixed: true,
}).map((unit) => {
  const fill = fillOne(unit);
  return { unit: fill, info: sheetInfoOf({ project: projectOf(unit), unit, kit: demoKit }, fill) };
});

/** Fills of any making, their codes and names hostile, their bill counted from them, their masses at random. */
export const listedHostile: fc.Arbitrary<Listed> = fc
  .record({
    fill: sheetFills,
    codes: fc.array(fc.constantFrom(...HOSTILE_CODES), { minLength: 1, maxLength: 6 }),
    masses: fc.array(fc.double({ min: 0, max: 900, noNaN: true }), { minLength: 1, maxLength: 6 }),
    pins: fc.integer({ min: 0, max: 30_000 }),
    language: fc.constantFrom(...LANGUAGES),
    paper: fc.constantFrom("A4" as const, "Letter" as const),
    personLimit: fc.constantFrom(25, null),
    frameDepth: fc.constantFrom(65, null),
  })
  .map(({ fill, codes, masses, pins, ...told }) => {
    const coded: UnitFill = {
      ...fill,
      faces: fill.faces.map((face) => ({
        ...face,
        pieces: face.pieces.map((piece) => ({ ...piece, code: codes[piece.width % codes.length]! })),
      })),
      accessories: [
        { code: `${codes[0]} pin`, family: "pin", quantity: pins, rule: "pinPitch" },
        { code: "Sleeve", family: "tie-sleeve", quantity: pins % 97, rule: "tieRows" },
      ],
    };
    const massOf = (code: string) => masses[code.length % masses.length]!;
    const entry = (code: string) => ({ family: "wall-panel" as const, mass: massOf(code) });
    const unit = { ...coded, bill: billOf(coded, { entry }) };
    const known = unit.bill.filter((_, index) => index % 2 === 0).map(({ code }) => code);
    const pieces = known.map((code) => [code, { mass: massOf(code), standard: false, size: "" }] as const);
    return { unit, info: oneRoomInfo({ ...told, pieces: Object.fromEntries(pieces) }) };
  });
