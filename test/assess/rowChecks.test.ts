// The kit's rows against the concrete, with the rows that would do.

import { expect, it } from "vitest";
import { rowChecks } from "../../src/assess/rowChecks.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { entryOf } from "../support/assessed.ts";
import { fillDocument, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";

const project = projectOf(roomPlan(0));
const checkOf = (kN: number | null) => {
  const rules =
    kN === null ? demoKit.rules : { ...demoKit.rules, tieLoad: { value: kN, unit: "kN", origin: "test" } };
  const kit = { ...demoKit, rules };
  return rowChecks(entryOf({ project, fill: fillDocument(project, kit), kit }))[0]!;
};
const input = (kN: number, name: string) => checkOf(kN).inputs.find((each) => each.name === name)?.value;

it.each([
  { kN: 13, status: "within", proposed: /^150, \d/ },
  { kN: 11, status: "over", proposed: /^\d+(, \d+){4,6}$/ },
  { kN: 2, status: "over", proposed: /^none: / },
])("rows 150/450/750/1200/1800 with $kN kN are $status", ({ kN, status, proposed }) => {
  const check = checkOf(kN);
  expect(check).toMatchObject({ status, limit: kN, unit: "kN" });
  // The first tie as support of a beam, by finite elements.
  expect(check.value).toBeCloseTo(11.381, 3);
  expect(input(kN, "rows of the kit")).toBe("150, 450, 750, 1200, 1800");
  expect(input(kN, "fewest rows on holes that would do")).toMatch(proposed);
});

it("are not judged without a rating", () => {
  expect(checkOf(null)).toMatchObject({
    status: "not-checked",
    limit: null,
    value: expect.closeTo(11.381, 3),
  });
});
