import { describe, expect, it } from "vitest";
import { formatIssue } from "../../src/json/issue.ts";
import { readLoads } from "../../src/plan/loads.ts";
import { readProject } from "../../src/plan/read.ts";
import { writeProject } from "../../src/plan/write.ts";
import { oneRoom } from "../support/oneRoom.ts";

const DEFAULTS = {
  slabModel: "EN 12812",
  concreteDensity: 25,
  formworkLoad: 0.5,
  motorisedCarts: false,
  continuity: 1,
  propStrength: "permissible",
  shoring: null,
};

describe("the loads of a project", () => {
  it.each([
    {
      why: "nothing said: every default, named",
      given: {},
      loads: DEFAULTS,
      defaults: Object.keys(DEFAULTS),
    },
    {
      why: "the density of ACI 347 goes with its model",
      given: { slabModel: "ACI 347", motorisedCarts: true },
      loads: { ...DEFAULTS, slabModel: "ACI 347", motorisedCarts: true, concreteDensity: 24 },
      defaults: ["concreteDensity", "formworkLoad", "continuity", "propStrength", "shoring"],
    },
    {
      why: "a stated figure stands, though it is the default",
      given: { concreteDensity: 25, continuity: 1.25, propStrength: "design" },
      loads: { ...DEFAULTS, continuity: 1.25, propStrength: "design" },
      defaults: ["slabModel", "formworkLoad", "motorisedCarts", "shoring"],
    },
    {
      why: "shoring with its own defaults",
      given: { shoring: { shores: 2, storeys: 8 } },
      loads: { ...DEFAULTS, shoring: { shores: 2, reshores: 0, first: "shores", storeys: 8 } },
      defaults: Object.keys(DEFAULTS).filter((name) => name !== "shoring"),
    },
  ])("$why", ({ given, loads, defaults }) => {
    expect(readLoads(given)).toEqual({ status: "ok", value: loads, defaults, warnings: [] });
  });

  it.each([
    { given: { slabModel: "EN" }, says: 'loads.slabModel: expected "EN 12812" or "ACI 347", found "EN".' },
    {
      given: { concreteDensity: 2500 },
      says: "loads.concreteDensity: expected a number from 8 to 40 kN/m³, found 2500.",
    },
    {
      given: { formworkLoad: -0.1 },
      says: "loads.formworkLoad: expected a number from 0 to 5 kPa, found -0.1.",
    },
    {
      given: { shoring: { shores: 0, storeys: 5 } },
      says: "loads.shoring.shores: expected a whole number from 1 to 6, found 0.",
    },
    { given: { continuity: 0.9 }, says: "loads.continuity: expected a number from 1 to 1.5, found 0.9." },
    { given: { motorisedCarts: "no" }, says: 'loads.motorisedCarts: expected true or false, found "no".' },
    {
      given: { propStrength: null },
      says: 'loads.propStrength: expected "design" or "permissible", found null.',
    },
    {
      given: { motorisedCarts: true },
      says: 'loads.motorisedCarts: expected false with "EN 12812", which has no load for motorised carts, or the slabModel "ACI 347", found true.',
    },
  ])("are refused with the place: $given", ({ given, says }) => {
    const answer = readLoads(given);
    expect(answer.status === "invalid" && answer.issues.map(formatIssue)).toEqual([says]);
  });

  it("tell every mistake at once, and name what they do not know", () => {
    const many = readLoads({ slabModel: 1, continuity: 9 });
    expect(many.status === "invalid" && many.issues.map(({ path }) => path)).toEqual([
      "loads.slabModel",
      "loads.continuity",
    ]);
    const odd = readLoads({ colour: "red" });
    expect(odd.status === "ok" && odd.warnings.map(({ path }) => path)).toEqual(["loads.colour"]);
  });

  it("never keep a project from opening, and are written back as they came", () => {
    const loads = { slabModel: "EN", note: [1, 2] };
    const read = readProject(JSON.stringify({ ...oneRoom, loads }));
    expect(read.status === "ok" && JSON.parse(writeProject(read.project)).loads).toEqual(loads);
  });
});
