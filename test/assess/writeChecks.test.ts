import { describe, expect, it } from "vitest";
import type { Check } from "../../src/assess/checkDocument.ts";
import { writeCheckDocument } from "../../src/assess/writeChecks.ts";
import { CAUTIONS } from "../../src/check/cautions.ts";
import { assessed } from "../support/assessed.ts";
import { propped } from "../support/proppedFill.ts";

function written(change: (check: Check) => Check = (check) => check): string {
  const document = assessed(propped());
  return writeCheckDocument({ ...document, checks: document.checks.map(change) });
}

describe("a file of checks", () => {
  it("has its members in their order, the cautions before any figure, one final newline", () => {
    const text = written();
    const file = JSON.parse(text);
    expect(Object.keys(file)).toEqual([
      "format",
      "version",
      "project",
      "cautions",
      "assumptions",
      "loads",
      "defaults",
      "concrete",
      "concreteDefaults",
      "totals",
      "pressure",
      "twoPersons",
      "maturity",
      "predictions",
      "striking",
      "shoring",
      "checks",
    ]);
    expect(file).toMatchObject({ format: "panelwright-check", version: 1, cautions: CAUTIONS });
    expect(Object.keys(file.checks[0])).toEqual(
      "id kind where value limit utilisation unit inputs formula source status".split(" "),
    );
    expect(text).toBe(`${JSON.stringify(file, null, 2)}\n`);
  });

  it("does not depend on the order in which a check put its members", () => {
    const turned = (check: Check) => Object.fromEntries(Object.entries(check).reverse()) as unknown as Check;
    expect(written(turned)).toBe(written());
  });

  it("gives six significant digits, coordinates to a thousandth, no −0, and null where there is no figure", () => {
    const file = JSON.parse(
      written((check) => ({
        ...check,
        value: 12.3456789,
        limit: null,
        utilisation: -0,
        where: { ...check.where, at: [1.23456, -0] },
      })),
    );
    expect(file.checks[0]).toMatchObject({ value: 12.3457, limit: null, utilisation: 0 });
    expect(Object.is(file.checks[0].utilisation, 0)).toBe(true);
    expect(file.checks[0].where.at).toEqual([1.235, 0]);
  });

  it.each([
    { why: "a value", spoil: (check: Check) => ({ ...check, value: Number.NaN }) },
    {
      why: "a place",
      spoil: (check: Check) => ({ ...check, where: { ...check.where, at: [Number.NaN, 0] as const } }),
    },
  ])("refuses $why that is no number", ({ spoil }) => {
    expect(() => written(spoil)).toThrow(RangeError);
  });
});

it("no caution calls anything safe, and the first one defers to the engineer and the local code", () => {
  expect(CAUTIONS.join(" ")).not.toMatch(/\bsafe/i);
  expect(CAUTIONS[0]).toMatch(/planning aid.*engineer.*local code/);
  expect(new Set(CAUTIONS).size).toBe(CAUTIONS.length);
});
