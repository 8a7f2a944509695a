// What is typed into the forms: taken, or refused at the field with the reason.

import { describe, expect, it } from "vitest";
import { concreteTakes, shoringTakes, type Takes } from "../../../src/editor/checks/fields.ts";
import { typedFigure } from "../../../src/editor/checks/typedFigure.ts";

const rangeOf = (takes: Takes) => {
  if (takes.kind !== "number") throw new Error("no figure");
  return takes;
};
const rate = rangeOf(concreteTakes("rate"));
const storeys = rangeOf(shoringTakes("storeys"));

describe("a figure typed into a form", () => {
  it.each([
    { why: "decimal point", text: "1.5", takes: rate, found: { status: "taken", value: 1.5 } },
    { why: "decimal comma", text: "1,5", takes: rate, found: { status: "taken", value: 1.5 } },
    { why: "negative rate", text: "-2", takes: rate, found: { status: "out-of-range", value: -2 } },
    { why: "no number", text: "fast", takes: rate, found: { status: "no-figure" } },
    { why: "storeys are whole", text: "5", takes: storeys, found: { status: "taken", value: 5 } },
    { why: "no half storey", text: "5.5", takes: storeys, found: { status: "no-whole", value: 5.5 } },
    {
      why: "range before wholeness",
      text: "0.5",
      takes: storeys,
      found: { status: "out-of-range", value: 0.5 },
    },
  ])("$why: $text", ({ text, takes, found }) => {
    expect(typedFigure(text, takes)).toEqual(found);
  });
});
