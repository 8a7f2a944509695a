import { describe, expect, it } from "vitest";
import { formatIssue } from "../../src/json/issue.ts";
import { readConcrete } from "../../src/plan/concrete.ts";

const DEFAULTS = {
  pressureModel: "liquid head",
  density: 25,
  rate: null,
  temperature: null,
  cement: null,
  retarder: true,
  slump: null,
  vibrationDepth: 1200,
  consistence: null,
  settingEnd: null,
  formStrength: "permissible",
  bottomTie: "whole",
  cylinderStrength: null,
  cubeStrength: null,
  cementClass: null,
  strikeAt: null,
  measuredStrength: null,
  log: [],
  strengthTests: [],
  datum: 0,
  strikingLoad: 0.75,
  serviceLoad: null,
};

describe("the concrete of a project", () => {
  it("is taken to flow where nothing is said: full liquid head, every default named", () => {
    const defaults = Object.keys(DEFAULTS);
    expect(readConcrete({})).toEqual({ status: "ok", value: DEFAULTS, defaults, warnings: [] });
  });

  it("keeps what is said, a pasted log among it", () => {
    const given = {
      pressureModel: "CIRIA 108",
      rate: 2,
      temperature: 12,
      cement: "portland",
      retarder: false,
      log: [
        [0, 18],
        [4, 25.5],
      ],
    };
    const read = readConcrete(given);
    expect(read).toMatchObject({ status: "ok", value: { ...DEFAULTS, ...given } });
    expect(read.status === "ok" && read.defaults).not.toContain("log");
  });

  it.each([
    {
      why: "a method without its rate",
      given: { pressureModel: "DIN 18218", consistence: "F4", settingEnd: 7 },
      says: ['concrete.rate: expected a value: "DIN 18218" gives no pressure without it, found nothing.'],
    },
    {
      why: "a method without anything",
      given: { pressureModel: "ACI 347" },
      says: ["rate", "temperature", "cement", "slump"].map(
        (name) =>
          `concrete.${name}: expected a value: "ACI 347" gives no pressure without it, found nothing.`,
      ),
    },
    {
      why: "a rate of nothing",
      given: { rate: 0 },
      says: ["concrete.rate: expected a number from 0.01 to 50 m/h, found 0."],
    },
    {
      why: "one test of the mix alone",
      given: { strengthTests: [[500, 10]] },
      says: ["concrete.strengthTests: expected two tests or more, or none, found one."],
    },
    {
      why: "a test that is later and no stronger",
      given: {
        strengthTests: [
          [500, 10],
          [700, 10],
        ],
      },
      says: [
        "concrete.strengthTests[1]: expected a test after 500 °C·h and stronger than 10 MPa, found 10 MPa at 700 °C·h.",
      ],
    },
    {
      why: "a test without a strength",
      given: { strengthTests: [[500], [600, 12]] },
      says: [expect.stringMatching(/^concrete\.strengthTests\[0\]: expected a test \[°C·h, MPa\], found /)],
    },
    {
      why: "a log that goes back in time",
      given: {
        log: [
          [0, 20],
          [6, 22],
          [6, 23],
        ],
      },
      says: ["concrete.log[2]: expected a reading later than 6 h, found one at 6 h."],
    },
    {
      why: "a reading without its temperature",
      given: { log: [[0]] },
      says: [expect.stringMatching(/^concrete\.log\[0\]: expected a reading \[hours, °C\], found /)],
    },
    {
      why: "a density in kg/m³",
      given: { density: 2500 },
      says: ["concrete.density: expected a number from 8 to 40 kN/m³, found 2500."],
    },
  ])("is not read with $why", ({ given, says }) => {
    const read = readConcrete(given as Parameters<typeof readConcrete>[0]);
    expect(read.status === "invalid" && read.issues.map(formatIssue)).toEqual(says);
  });

  it("warns of a member it does not know", () => {
    const read = readConcrete({ colour: "grey" });
    expect(read.status === "ok" && read.warnings.map(formatIssue)).toEqual([
      expect.stringContaining("concrete.colour"),
    ]);
  });
});
