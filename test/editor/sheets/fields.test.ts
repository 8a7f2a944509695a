// The fields of the title block as the browser keeps them.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  EMPTY_FIELDS,
  type Fields,
  keptFields,
  LONGEST_FIELD,
  readFields,
} from "../../../src/editor/sheets/fields.ts";

const filledIn: Fields = {
  paper: "Letter",
  document: "D-12",
  date: "2026-03-04",
  madeBy: "A. Mason",
  checkedBy: "B. Smith",
  releasedBy: "C. Joiner",
};

describe("the fields of a title block", () => {
  it("come back as they were kept", () => {
    expect(readFields(keptFields(null, "Row", filledIn), "Row")).toEqual(filledIn);
  });

  it("share names and paper between projects, but neither document nor date", () => {
    const kept = keptFields(null, "Row", filledIn);
    expect(readFields(kept, "Tower")).toEqual({ ...filledIn, document: "", date: "" });
    const both = keptFields(kept, "Tower", { ...filledIn, document: "D-99" });
    expect(readFields(both, "Row").document).toBe("D-12");
    expect(readFields(both, "Tower").document).toBe("D-99");
  });

  it("hold the latest projects only", () => {
    let kept = keptFields(null, "first", filledIn);
    for (let k = 0; k < 60; k++) kept = keptFields(kept, `project ${k}`, filledIn);
    expect(readFields(kept, "first").document).toBe("");
    expect(readFields(kept, "project 59").document).toBe("D-12");
    expect(kept.length).toBeLessThan(5000);
  });

  it.each([
    { why: "nothing kept", kept: null },
    { why: "no JSON", kept: "{" },
    { why: "null", kept: "null" },
    { why: "a list", kept: "[1, 2]" },
    {
      why: "members of other kinds",
      kept: '{"paper": 4, "madeBy": {}, "projects": [["Row", 1, "soon"], 7, null]}',
    },
    { why: "members of the prototype", kept: '{"__proto__": {"madeBy": "x"}, "projects": {"length": 2}}' },
  ])("are empty where the store holds $why", ({ kept }) => {
    expect(readFields(kept, "Row")).toEqual(EMPTY_FIELDS);
  });

  it("are never longer than the page lets anyone type", () => {
    const kept = JSON.stringify({ madeBy: "x".repeat(1000), projects: [["Row", "y".repeat(1000), ""]] });
    expect(readFields(kept, "Row").madeBy).toHaveLength(LONGEST_FIELD);
    expect(readFields(kept, "Row").document).toHaveLength(LONGEST_FIELD);
  });

  it("can be read from any text", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), fc.string(), (kept, project) => {
        const fields = readFields(kept, project);
        expect(readFields(keptFields(kept, project, fields), project)).toEqual(fields);
      }),
      { seed: 6, numRuns: 300 },
    );
  });
});
