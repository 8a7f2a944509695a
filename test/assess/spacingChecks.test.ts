// Distances between ties and fittings on real fills, and what is found when one is taken away.

import { describe, expect, it } from "vitest";
import type { Check } from "../../src/assess/checkDocument.ts";
import type { CheckedEntry } from "../../src/assess/entry.ts";
import { spacingChecks } from "../../src/assess/spacingChecks.ts";
import type { UnitFill } from "../../src/fill/result.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { entryOf } from "../support/assessed.ts";
import { fillDocument, opening, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";
import { samples } from "../support/samples.ts";

const project = projectOf({
  ...roomPlan(0),
  openings: [opening("d1", "w1", [1050, 900, 0, 2100]), opening("n1", "w3", [900, 1200, 900, 2100])],
});
const plain = entryOf({ project, fill: fillDocument(project) });
const changed = (change: (fill: UnitFill) => Partial<UnitFill>): CheckedEntry => ({
  ...plain,
  fill: { ...plain.fill, ...change(plain.fill) },
});
const of = (entry: CheckedEntry, kind: string): Check =>
  spacingChecks(entry).find((check) => check.kind === kind)!;

describe("distances", () => {
  it("are within the kit's rules on a plain room, each told with its place", () => {
    for (const check of spacingChecks(plain)) expect(check.status, check.kind).toBe("within");
    expect(of(plain, "tie-spacing")).toMatchObject({
      value: 600,
      limit: 600,
      where: { face: expect.any(String) },
    });
  });

  it("between ties grow where a line of ties is taken away", () => {
    const without = changed(({ ties }) => ({ ties: ties.filter((_, k) => k !== 3) }));
    const check = of(without, "tie-spacing");
    expect(check.status).toBe("over");
    expect(check.value).toBeGreaterThan(600);
  });

  it.each([
    { family: "wall-bracket", kind: "wall-bracket-spacing" },
    { family: "facade-aligner", kind: "facade-aligner-spacing" },
    { family: "brace", kind: "brace-spacing" },
  ])("between pieces of $family grow where some are taken away", ({ family, kind }) => {
    const all = plain.fill.fittings.filter((each) => each.family === family);
    const first = all.find(
      (each) => all.filter(({ face, z }) => face === each.face && z === each.z).length > 1,
    );
    const rest = changed(({ fittings }) => ({
      fittings: fittings.filter(
        (each) =>
          each.family !== family || each.face !== first!.face || each.z !== first!.z || each === first,
      ),
    }));
    expect(of(rest, kind).status).toBe("over");
    expect(of(rest, kind).where.face).toBe(first!.face);
    const none = changed(({ fittings }) => ({ fittings: fittings.filter((each) => each.family !== family) }));
    expect(of(none, kind)).toMatchObject({ status: "not-applicable", value: null });
  });

  it("are not judged where the kit gives no rule", () => {
    const { braceSpacing: _, tieSpacing: __, ...rules } = demoKit.rules;
    const loose: CheckedEntry = { ...plain, kit: { ...demoKit, rules } };
    expect(of(loose, "brace-spacing")).toMatchObject({ status: "not-checked", limit: null });
    expect(of(loose, "tie-spacing").reason).toMatch(/rule tieSpacing/);
  });
});

describe("ledgers", () => {
  it("reach every bracket; one taken away leaves brackets bare", () => {
    expect(of(plain, "ledger-cover")).toMatchObject({ value: 0, status: "within" });
    const [ledger] = plain.fill.fittings.filter(({ family }) => family === "alignment-ledger");
    const rest = changed(({ fittings }) => ({ fittings: fittings.filter((each) => each !== ledger) }));
    expect(of(rest, "ledger-cover").status).toBe("over");
    expect(of(rest, "ledger-cover").reason).toContain(`face ${ledger!.face}`);
  });
});

it("ties of the samples are as far apart as the fill says of them", () => {
  for (const { project: sample, fill } of samples()) {
    const entry = entryOf({ project: sample, fill });
    const said = entry.fill.problems
      .filter(({ kind, message }) => kind === "tie-spacing" && message.includes("between restraints"))
      .map(({ message }) => Number(/(\d+) mm between restraints/.exec(message)?.[1]));
    const { value, limit } = of(entry, "tie-spacing");
    if (said.length > 0) expect(value).toBe(Math.max(...said));
    else expect(value).toBeLessThanOrEqual(limit!);
  }
});
