// How deviations are written, held to the figures of the standards as a person writes them.

import { describe, expect, it } from "vitest";
import { figureText } from "../../../src/editor/checks/figureText.ts";
import { deviationText } from "../../../src/editor/checks/tolerance.ts";

describe("an allowed deviation", () => {
  it.each([
    { why: "alike both ways", less: 10, more: 10, wanted: "\u00b1\u202f10" },
    { why: "ACI 117, thickness", less: 6, more: 10, wanted: "\u2212\u202f6 / +\u202f10" },
    { why: "between whole figures", less: 7.2, more: 7.2, wanted: "\u00b1\u202f7.2" },
    { why: "outside the range of the rule", less: null, more: null, wanted: null },
  ])("$why: $wanted", ({ less, more, wanted }) => {
    expect(deviationText({ less, more }, (value) => figureText(value, "en"))).toBe(wanted);
  });
});
