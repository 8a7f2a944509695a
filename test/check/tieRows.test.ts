// The load of tie rows: figures worked out elsewhere, sums that must hold, and a beam solved in another way.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { envelopeOf, thrustBetween } from "../../src/check/envelope.ts";
import { linearBeamReactions } from "../../src/check/linearBeam.ts";
import { tieRowLoads } from "../../src/check/tieRows.ts";
import { value } from "../support/answers.ts";

/** Ties 600 apart, full head of 25 kN/m³ over 2.5 m. */
const loadsOf = (rows: readonly number[]) =>
  value(
    tieRowLoads({
      envelope: envelopeOf(25, 2500),
      surface: 2500,
      rows,
      parts: [{ from: 0, to: 2500, width: 600 }],
    }),
  );

// Worked out by a script apart from this program, in kN; the beam by 250 finite elements.
describe("rows of ties 600 apart under 2.5 m of liquid", () => {
  it.each([
    {
      rows: [150, 450, 900, 1500, 2100],
      tributary: [10.6, 11.3, 12.3, 9.0, 3.7],
      beam: [10.882, 10.23, 13.054, 9.35, 3.358],
    },
    {
      rows: [150, 450, 750, 1200, 1800],
      tributary: [10.6, 9.2, 9.6, 9.9, 7.5],
      beam: [11.381, 7.705, 10.294, 8.872, 8.623],
    },
    {
      rows: [150, 450, 750, 1050, 1500, 1950],
      tributary: [10.6, 9.2, 7.9, 8.0, 6.8, 4.5],
      beam: [11.231, 8.606, 7.371, 8.492, 6.068, 5.107],
    },
    {
      rows: [150, 600, 1200, 1800],
      tributary: [13.0, 14.7, 11.7, 7.5],
      beam: [12.148, 15.745, 10.623, 8.359],
    },
    { rows: [300, 900, 1500, 2100], tributary: [19.8, 14.4, 9.0, 3.7], beam: [21.357, 12.707, 9.473, 3.338] },
  ])("$rows", ({ rows, tributary, beam }) => {
    const found = loadsOf(rows);
    found.forEach((row, k) => {
      expect(Math.abs(row.tributary - tributary[k]!)).toBeLessThan(0.1);
      expect(Math.abs(row.beam - beam[k]!)).toBeLessThan(0.001);
    });
    expect(found.reduce((sum, row) => sum + row.tributary, 0)).toBeCloseTo(46.875, 9);
  });

  it("with the lowest tie left out the second carries 32.9 kN as a beam, for the foot overhangs", () => {
    expect(Math.abs(loadsOf([450, 750, 1200, 1800])[0]!.beam - 32.9)).toBeLessThan(0.001);
  });
});

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const heights = fc
  .uniqueArray(fc.integer({ min: 1, max: 49 }), { minLength: 1, maxLength: 7 })
  .map((list) => list.sort((a, b) => a - b).map((z) => z * 50));

it("all rows together carry all the pressure, by strips and as a beam, over parts of any width", () => {
  fc.assert(
    fc.property(
      heights,
      double(5, 80),
      double(100, 2400),
      double(50, 900),
      double(50, 900),
      (rows, limit, cut, a, b) => {
        const envelope = envelopeOf(25, 2500, limit);
        const parts = [
          { from: 0, to: cut, width: a },
          { from: cut, to: 2500, width: b },
        ];
        const found = value(tieRowLoads({ envelope, surface: 2500, rows, parts }));
        const whole =
          (thrustBetween(envelope, 2500 - cut, 2500) * a + thrustBetween(envelope, 0, 2500 - cut) * b) / 1000;
        expect(found.reduce((sum, row) => sum + row.tributary, 0)).toBeCloseTo(whole, 6);
        expect(found.reduce((sum, row) => sum + row.beam, 0)).toBeCloseTo(whole, 6);
        expect(found.reduce((sum, row) => sum + row.area, 0)).toBeCloseTo(
          (cut * a + (2500 - cut) * b) / 1e6,
          9,
        );
      },
    ),
    { seed: 721 },
  );
});

describe("a beam over supports", () => {
  // Textbook coefficients of reactions under an even load of 1 over spans of 1.
  it.each([
    { spans: 1, reactions: [1 / 2, 1 / 2] },
    { spans: 2, reactions: [3 / 8, 10 / 8, 3 / 8] },
    { spans: 3, reactions: [4 / 10, 11 / 10, 11 / 10, 4 / 10] },
    { spans: 4, reactions: [11 / 28, 32 / 28, 26 / 28, 32 / 28, 11 / 28] },
  ])("over $spans equal spans", ({ spans, reactions }) => {
    const supports = Array.from({ length: spans + 1 }, (_, k) => k);
    const found = linearBeamReactions(supports, [{ from: 0, to: spans, atFrom: 1, atTo: 1 }]);
    for (const [k, reaction] of reactions.entries()) expect(found[k]).toBeCloseTo(reaction, 12);
  });

  it("keeps the balance of moments about any point", () => {
    fc.assert(
      fc.property(heights, double(0, 5), double(0, 60), (rows, atTop, atFoot) => {
        fc.pre(rows.length > 1);
        const load = { from: 0, to: 2500, atFrom: atFoot, atTo: atTop };
        const found = linearBeamReactions(rows, [load]);
        const moment = rows.reduce((sum, z, k) => sum + z * found[k]!, 0);
        const expected = 2500 * 2500 * (atFoot / 6 + atTop / 3);
        expect(Math.abs(moment - expected)).toBeLessThan(1e-6 * (expected + 1));
      }),
      { seed: 722 },
    );
  });

  it("stands on one support with all its load, and on none with nothing", () => {
    expect(linearBeamReactions([1], [{ from: 0, to: 2, atFrom: 3, atTo: 3 }])[0]).toBeCloseTo(6, 12);
    expect(linearBeamReactions([], [])).toEqual([]);
  });
});

it("a line without rows carries nothing, and heights beyond any form are refused", () => {
  expect(loadsOf([])).toEqual([]);
  const bad = { envelope: envelopeOf(25, 2500), surface: 2500, parts: [{ from: 0, to: 1, width: -1 }] };
  expect(tieRowLoads({ ...bad, rows: [150] })).toMatchObject({ status: "refused", least: 0 });
});
