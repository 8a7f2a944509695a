// Published figures for ties and for the members between them. Ids only name the rows.

import { describe, expect, it } from "vitest";
import { envelopeOf, wallThrust } from "../../src/check/envelope.ts";
import { gridLoadPounds, lineLoadPounds, tieSpacingInches } from "../../src/check/gridLoadPounds.ts";
import { memberSpans, rollingShearSpan, shearSpan } from "../../src/check/memberSpans.ts";
import { memberSpansMetric } from "../../src/check/memberSpansMetric.ts";
import { tieLoad, tieStrength } from "../../src/check/tieLoad.ts";
import { value } from "../support/answers.ts";
import { within } from "../support/tolerance.ts";

const CM_420_6 = "Univ. of Washington CM 420 lecture 6, courses.washington.edu/cm420/lec6/tsld024.htm";
const WEEK_7 = "Univ. of Florida BCN4423C, Week 7, github.com/damontallen/Construction-Lectures-Fall-2014";
const WEEK_7_TABLES = "the same, Using Tables";
const COURSE = "Cost of materials and formwork, coursera.org/lecture/construction-cost-estimating";
const COLLEGE = "Wall Formwork Design Calculation, vbook.pub/documents/formwork-design-r2re9g0rgvw6";
const TIE_SHEET = "Form Work Tie Rod Calculation, 15/02/2005, scribd.com/document/677832762";
const ARMY_21 = "US Army EN5151 part C p. 21, armyengineer.tpub.com/EN5151";
const ARMY_17 = "US Army EN5151 part C p. 17";
const SOCIETY =
  "Concrete Society, Formwork guide 3rd ed, Worked Examples, example 3 (height and pressure deduced)";
const WEEK_9 = "the same, Week 9; CM 420 Lecture 5, studylib.net/doc/9394732";
const TEXTBOOK = "Peurifoy & Oberlender, Formwork for Concrete Structures, p. 224";

describe("ties, inch-pound", () => {
  it.each([
    { id: "T-01", source: CM_420_6, psf: 600, along: 33, up: 36, pounds: 4950 },
    { id: "T-02", source: CM_420_6, psf: 600, along: 24, up: 36, pounds: 3600 },
    { id: "T-03", source: WEEK_7, psf: 1042.5, along: 1.6 * 12, up: 24, pounds: 3336 },
    { id: "T-04", source: WEEK_7_TABLES, psf: 1042.5, along: 21, up: 25, pounds: 3801 },
    { id: "T-05 stud on wale", source: WEEK_7, psf: 1042.5, along: 6, up: 24, pounds: 1042 },
    { id: "T-05 by tables", source: WEEK_7_TABLES, psf: 1042.5, along: 10, up: 25, pounds: 1810 },
  ])("$id: $pounds lb ($source)", ({ psf, along, up, pounds }) => {
    expect(value(gridLoadPounds(psf, along, up))).toSatisfy(within(pounds, 0.0006));
  });

  it(`T-06: 664 psf on 240.5 ft² of wall by 50 ties, 3194 lb each (${COURSE})`, () => {
    expect(value(gridLoadPounds(664, 12, (12 * 481) / 2 / 50))).toSatisfy(within(3194, 0.0005));
  });

  it(`T-12: ties of 1420 lb under 1250 lb/ft stand 13.6 in apart, 13 as built (${ARMY_21})`, () => {
    const apart = value(tieSpacingInches(1420, 1250));
    expect(apart).toBeCloseTo(13.63, 2);
    expect(Math.floor(apart)).toBe(13);
  });

  it(`T-13: of two spacings, 24 and 20 in, the smaller governs (${ARMY_21})`, () => {
    const byTie = value(tieSpacingInches(2000, 1000));
    const byWale = value(tieSpacingInches(2000, 1200));
    expect(Math.min(byTie, byWale)).toBe(20);
  });

  it.each([
    { id: "T-14 (arithmetic)", psf: 550, inches: 20, plf: 916.67 },
    { id: `T-14 (${ARMY_17})`, psf: 350, inches: 26, plf: 758.33 },
  ])("$id: $psf psf on $inches in are $plf lb/ft", ({ psf, inches, plf }) => {
    expect(value(lineLoadPounds(psf, inches))).toBeCloseTo(plf, 2);
  });
});

describe("ties, metric", () => {
  it(`T-07: 75.93 kPa on 1.325 × 1.000 m are 100.61 kN (${COLLEGE})`, () => {
    expect(Math.abs(value(tieLoad(75.93, 1325, 1000)) - 100.61)).toBeLessThan(0.01);
  });

  it.each([
    { width: 150, line: 11.39 },
    { width: 1325, line: 100.61 },
  ])(`T-08: $line kN/m on a member that takes $width mm (${COLLEGE})`, ({ width, line }) => {
    expect(value(tieLoad(75.93, width, 1000))).toBeCloseTo(line, 2);
  });

  // The sheet adds 1.4 × 6 kN for a working platform to 1.5 times the pressure.
  it.each([
    { id: "T-09", pressure: 29.3, along: 600, up: 600, force: 24.2, tolerance: 0.05 },
    { id: "T-09", pressure: 15.9, along: 1200, up: 600, force: 25.6, tolerance: 0.05 },
    {
      id: "T-10, half the gap to the foot",
      pressure: 31.7,
      along: 600,
      up: 225 + 300,
      force: 23.4,
      tolerance: 0.05,
    },
  ])(`$id: $force kN (${TIE_SHEET})`, ({ pressure, along, up, force, tolerance }) => {
    const found = 1.5 * value(tieLoad(pressure, along, up)) + 1.4 * 6;
    expect(Math.abs(found - force)).toBeLessThanOrEqual(tolerance);
  });

  it(`T-11: 215 N/mm² on 174 mm² bear 37.41 kN (${TIE_SHEET})`, () => {
    expect(value(tieStrength(215, 174))).toBeCloseTo(37.41, 2);
  });
});

describe(`the thrust on a metre of wall (${SOCIETY})`, () => {
  const thrust = wallThrust(envelopeOf(25, 2750, 60));

  it("T-15: 72 and 21 kN/m, 93 together", () => {
    expect(thrust.hydrostatic).toBeCloseTo(72, 9);
    expect(thrust.flat).toBeCloseTo(21, 9);
    expect(thrust.hydrostatic + thrust.flat).toBeCloseTo(93, 9);
  });

  const moment =
    thrust.hydrostatic * (thrust.hydrostaticLever + 0.1) + thrust.flat * (thrust.flatLever + 0.1);

  it("T-16: 95.78 kN·m/m about a point 0.10 m below the foot", () => {
    expect(Math.abs(moment - 95.78)).toBeLessThan(0.01);
  });

  it("T-17: with 1.2 × 0.51 kN·m/m more, 50.07 kN/m at the prop 1.925 m up and 42.93 at the foot", () => {
    const prop = (moment + 1.2 * 0.51) / 1.925;
    expect(Math.abs(prop - 50.07)).toBeLessThan(0.01);
    expect(Math.abs(93 - prop - 42.93)).toBeLessThan(0.01);
  });
});

describe("members over three spans, inch-pound", () => {
  it(`P-01: plywood 3/4 in under 1042.5 lb/ft (${WEEK_7})`, () => {
    const spans = value(
      memberSpans({
        load: 1042.5,
        bendingStress: 1787.5,
        sectionModulus: 0.412,
        modulus: 1.5e6,
        inertia: 0.197,
      }),
    );
    expect(spans.bending).toBeCloseTo(9.2, 2);
    expect(value(rollingShearSpan(55, 6.762, 1042.5))).toBeCloseTo(7.13, 2);
    expect(spans.by360).toBeCloseTo(11.1, 1);
    expect(spans.bySixteenth).toSatisfy(within(13.25, 0.001));
  });

  it.each([
    {
      id: "P-02 stud",
      load: 521.25,
      bendingStress: 1649.5,
      sectionModulus: 3.0625,
      shear: 218.25,
      width: 1.5,
      inertia: 5.359,
      expected: [34.09, 36.3, 41.5, 35.63],
    },
    {
      id: "P-03 double wale",
      load: 2085,
      bendingStress: 1434.4,
      sectionModulus: 6.125,
      shear: 218.25,
      width: 3,
      inertia: 10.719,
      expected: [22.48, 21.65, 32.94, 29.96],
    },
  ])(`$id (${WEEK_7}, modulus of P-03 and its shear stress those of P-02)`, (row) => {
    const spans = value(memberSpans({ ...row, modulus: 1.44e6 }));
    const shear = value(shearSpan(row.shear, { width: row.width, depth: 3.5 }, row.load));
    const found = [spans.bending, shear, spans.by360, spans.bySixteenth];
    row.expected.forEach((span, k) => {
      expect(found[k]).toSatisfy(within(span, k === 1 ? 0.02 : 0.001));
    });
  });

  it(`T42: plywood 3/4 in under 158 lb/ft, 22.0, 20.8 and 21.2 in (${WEEK_9})`, () => {
    const spans = value(
      memberSpans({ load: 158, bendingStress: 1545, sectionModulus: 0.412, modulus: 1.5e6, inertia: 0.197 }),
    );
    expect(spans.bending).toSatisfy(within(22, 0.005));
    expect(spans.by360).toSatisfy(within(20.8, 0.005));
    expect(spans.bySixteenth).toSatisfy(within(21.2, 0.005));
  });

  it(`T43: rolling shear of the same, 4.0 ft printed (${WEEK_9})`, () => {
    expect(value(rollingShearSpan(57, 6.762, 158)) / 12).toSatisfy(within(4.0, 0.02));
  });

  it(`T44: 13.1 and 14.9 in, and 0.017 in of deflection at 10.75 (${TEXTBOOK})`, () => {
    const spans = value(
      memberSpans({ load: 713, bendingStress: 1000, sectionModulus: 1, modulus: 1.65e6, inertia: 0.199 }),
    );
    expect(spans.by360).toSatisfy(within(13.1, 0.01));
    expect(spans.bySixteenth).toSatisfy(within(14.9, 0.01));
    expect((10.75 / spans.bySixteenth) ** 4 / 16).toSatisfy(within(0.017, 0.03));
  });
});

describe(`members over three spans, metric (${COLLEGE})`, () => {
  it.each([
    {
      id: "P-04 sheet",
      load: 75.93,
      moment: null,
      shear: 6.86,
      stiffness: 3.25,
      deflection: 0.007,
      expected: [null, 0.151, 0.257],
    },
    {
      id: "P-05 waling",
      load: 11.39,
      moment: 2.025,
      shear: 12.8,
      stiffness: 119.14,
      deflection: 0.004,
      expected: [1.333, 1.873, 1.937],
    },
    {
      id: "P-06 soldier",
      load: 100.61,
      moment: 10.5,
      shear: 64.5,
      stiffness: 200.35,
      deflection: 0.004,
      expected: [1.022, 1.069, 1.114],
    },
  ])("$id", (row) => {
    const spans = value(memberSpansMetric({ ...row, part: 360 }));
    const found = [spans.bending, spans.shear, spans.deflection];
    row.expected.forEach((span, k) => {
      if (span === null) expect(found[k]).toBeNull();
      else expect(found[k]).toSatisfy(within(span, 0.003));
    });
  });
});
