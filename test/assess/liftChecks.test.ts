// Who lifts what, on the bill of a real fill.

import { describe, expect, it } from "vitest";
import { liftChecks, twoPersonPieces } from "../../src/assess/liftChecks.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit } from "../../src/kit/kit.ts";
import { entryOf } from "../support/assessed.ts";
import { fillDocument, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";

const project = projectOf(roomPlan(0));
const entry = (limit: number | null) => {
  const { personLimit, ...rules } = demoKit.rules;
  const kit: Kit = {
    ...demoKit,
    rules: limit === null ? rules : { ...rules, personLimit: { ...personLimit!, value: limit } },
  };
  return entryOf({ project, fill: fillDocument(project, kit), kit });
};

describe("who lifts a piece", () => {
  // The 600 × 2250 panel of the demo kit weighs 22 · 1.35 = 29.7 kg.
  it.each([
    { limit: 30, people: 1, of: 30, status: "within" },
    { limit: 25, people: 2, of: 33.3333, status: "within" },
    { limit: 20, people: 2, of: 26.6667, status: "over" },
  ])("29.7 kg with $limit kg for one: $people, $status", ({ limit, people, of, status }) => {
    const check = liftChecks(entry(limit)).find(({ where }) => where.code === "W600x2250");
    expect(check).toMatchObject({ value: 29.7, unit: "kg", status });
    expect(check!.limit).toBeCloseTo(of, 3);
    const input = (name: string) => check!.inputs.find((each) => each.name === name)?.value;
    expect(input("people")).toBe(people);
    expect(input("lifting index, stack lift")).toBeCloseTo(29.7 / people / 10.8, 1);
    expect(input("lifting index, wall lift")).toBeCloseTo(29.7 / people / 12, 1);
    expect(input("lifting index, overhead lift")).toBeUndefined();
  });

  it("lists what two carry, with its count from the bill", () => {
    const one = entry(25);
    const line = one.fill.bill.find(({ code }) => code === "W600x2250");
    expect(twoPersonPieces(one)).toEqual([
      expect.objectContaining({ unit: "A", code: "W600x2250", mass: 29.7, quantity: line!.quantity }),
    ]);
    expect(twoPersonPieces(entry(30))).toEqual([]);
  });

  it("is not checked where the kit states no limit, and slab panels are lifted overhead", () => {
    const checks = liftChecks(entry(null));
    expect(checks.length).toBeGreaterThan(5);
    for (const check of checks) expect(check.status).toBe("not-checked");
    expect(twoPersonPieces(entry(null))).toEqual([]);
    const slab = liftChecks(entry(25)).filter(({ where }) => where.code.startsWith("S"));
    expect(slab.some(({ inputs }) => inputs.some(({ name }) => name.includes("overhead")))).toBe(true);
  });
});
