// What the limits of a project do to the choice of its set, and what is said where they cannot be kept.

import { describe, expect, it } from "vitest";
import { keepSet } from "../../../src/fill/keepSet.ts";
import type { FillDocument } from "../../../src/fill/result.ts";
import type { Limits, Project } from "../../../src/plan/project.ts";
import { readProject } from "../../../src/plan/read.ts";
import { problemText } from "../../../src/sheet/problemText.ts";
import { kitOf, optimised, union } from "../../support/optimised.ts";
import { filled, sampleProject } from "../../support/samples.ts";
import { expectTrueSet } from "../../support/setClaims.ts";
import { instanceProblem, readInstance } from "../../support/setInstance.ts";
import { leastCost } from "../../support/setOracle.ts";
import { drawnInstance } from "../../support/setProject.ts";

function drawn(name: string, limits: Partial<Limits>): Project {
  const read = readProject(JSON.stringify({ ...drawnInstance(readInstance(name)), limits }));
  if (read.status !== "ok") throw new Error(JSON.stringify(read.issues));
  return read.project;
}

const limitProblems = ({ units }: FillDocument) =>
  units.flatMap(({ problems }) => problems.filter(({ kind }) => kind === "limit-not-kept"));

const placed = ({ units }: FillDocument) =>
  new Set(
    units.flatMap(({ bill }) => bill.filter(({ family }) => family === "wall-panel").map(({ code }) => code)),
  );

/** The optimum of the instance without some widths, in euros of two faces. */
function optimumWithout(name: string, without: readonly number[]): number {
  const instance = readInstance(name);
  const widths = instance.widths.filter((width) => !without.includes(width));
  const least = leastCost(instanceProblem({ ...instance, widths }, 60));
  return (2 * (least ?? Number.NaN)) / 100;
}

describe("panels that may not be used", () => {
  it.each([
    { name: "tiny-04", limits: { forbidden: ["P300"] }, without: [300] },
    { name: "tiny-02", limits: { forbidden: ["P450", "P300"] }, without: [450, 300] },
    { name: "tiny-04", limits: { greatestMass: 31 }, without: [600] },
  ])("$name with $limits costs what it does without these widths", ({ name, limits, without }) => {
    const { widths } = readInstance(name);
    expect(widths).toEqual(expect.arrayContaining(without));
    const project = drawn(name, limits);
    const fill = optimised(project);
    expect(fill.set!.status).toBe("optimal");
    expect(fill.set!.cost).toBeCloseTo(optimumWithout(name, without), 6);
    for (const width of without) expect(placed(fill)).not.toContain(`P${width}`);
    expect(limitProblems(fill)).toEqual([]);
    expectTrueSet(fill, project, kitOf(project));
  });

  it("fills as if there were none where nothing allowed fits, says where, and keeps them elsewhere", () => {
    const project = drawn("tiny-04", { forbidden: ["P600", "P300", "P200", "P150"] });
    const fill = optimised(project);
    expectTrueSet(fill, project, kitOf(project));
    const problems = limitProblems(fill);
    const runs = fill.units.flatMap(({ faces }) => faces).filter(({ length }) => length > 100);
    // Two faces a run, one problem.
    expect(problems.filter(({ severity }) => severity === "error")).toHaveLength(runs.length / 2);
    for (const { where, message } of problems.filter(({ severity }) => severity === "error")) {
      expect(where.face).toBeDefined();
      expect(message).toMatch(/Nothing that the limits allow fills the \d+ mm/);
    }
    expect(
      problems.some(({ message }) => /The limits rule P\d+ out, yet \d+ of it stand/.test(message)),
    ).toBe(true);
    const without = { ...project };
    delete (without as { limits?: Limits }).limits;
    expect(fill.units.map(({ bill }) => bill)).toEqual(filled(without).units.map(({ bill }) => bill));
  });

  it("keeps to them where it can, interval by interval", () => {
    // 600 and 900 are sums of 600 and 300, and 350 is 300 with a strip of 50; neither helps 850 and 1100.
    const fill = optimised(drawn("tiny-06", { forbidden: ["P200", "P150"] }));
    const errors = limitProblems(fill).filter(({ severity }) => severity === "error");
    expect(errors.map(({ message }) => Number(/fills the (\d+) mm/.exec(message)?.[1])).sort()).toEqual([
      1100, 850,
    ]);
  });

  it("says which panels stand in zones and bands all the same, and which code is none of the kit's", () => {
    const project = sampleProject("two-bedroom");
    const before = optimised(project);
    const kit = kitOf(project);
    const zone = before.units
      .flatMap(({ faces }) => faces.flatMap(({ pieces }) => pieces))
      .find((piece) => piece.zone === true)!;
    const fill = optimised({
      ...project,
      limits: { forbidden: [zone.code, "NO-SUCH"], mostWidths: null, greatestMass: null },
    });
    const problems = limitProblems(fill);
    expect(problems.map(({ where, severity }) => [where.code, severity])).toEqual(
      expect.arrayContaining([
        ["NO-SUCH", "warning"],
        [zone.code, "warning"],
      ]),
    );
    expect(kit.pieces.some(({ code }) => code === zone.code)).toBe(true);
    for (const { message } of problems)
      for (const language of ["es", "pt"] as const) expect(problemText(message, language)).not.toBe(message);
  });

  it("changes nothing of a fill by itself", () => {
    const project = sampleProject("one-room");
    const limits = { forbidden: ["WP-600"], mostWidths: 1, greatestMass: 1 };
    expect(filled({ ...project, limits })).toEqual(filled(project));
  });
});

describe("most distinct widths", () => {
  it("are counted over all units and heights, and no cheaper set has as few", () => {
    const project = sampleProject("row-of-three");
    const fill = optimised({ ...project, limits: { forbidden: [], mostWidths: 4, greatestMass: null } });
    expect(fill.set!.chosen.widths).toBeLessThanOrEqual(4);
    expect(fill.set!.lacks).toBeUndefined();
    const any = optimised(project);
    expect(fill.set!.cost).toBeGreaterThanOrEqual(any.set!.cost);
    expect(fill.set!.lowerBound).toBeGreaterThanOrEqual(any.set!.lowerBound);
    expectTrueSet(fill, project, kitOf(project));
  });

  it("too few for any choice: infeasible, and the best choice without that limit", () => {
    const file = drawnInstance({
      ...readInstance("tiny-04"),
      widths: [600, 450],
      price: { 600: 14580, 450: 12060 },
      closure: { min: 5, max: 9, cost: 50040, perMm: 30 },
      pours: [
        {
          id: "P",
          runs: [
            [600, 2],
            [450, 1],
          ],
        },
      ],
    });
    const read = readProject(JSON.stringify({ ...file, limits: { mostWidths: 1 } }));
    if (read.status !== "ok") throw new Error(JSON.stringify(read.issues));
    const fill = optimised(read.project);
    expect(fill.set).toMatchObject({ status: "infeasible", lacks: "widths", chosen: { widths: 2 } });
    expect(fill.set!.missing).toBeUndefined();
    expectTrueSet(fill, read.project, kitOf(read.project));
  });
});

describe("a chosen set that is kept", () => {
  it("is filled as it was chosen, and chosen again as if it had not been", () => {
    const project = sampleProject("mirrored-pair");
    const given = { project, kit: kitOf(project), union };
    const fill = optimised(project);
    const kept = keepSet(given, fill);
    const again = filled(kept);
    const pieces = ({ units }: FillDocument) =>
      units.map(({ faces, bill, ties }) => ({
        faces: faces.map((face) => face.pieces.map(({ reason: _, ...piece }) => piece)),
        bill,
        ties,
      }));
    expect(pieces(again)).toEqual(pieces(fill));
    expect(optimised(kept)).toEqual(fill);
  });

  it("leaves the engineer's own pins fixed, which stand over its own", () => {
    const project = drawn("tiny-02", {});
    const [first, ...others] = project.units;
    const wall = first!.walls.find(({ to }) => to[0] === 850)!;
    const own = { wall: wall.id, from: 0, widths: [300, 150, 50, 50, 300] };
    const pinned = { ...project, units: [{ ...first!, pinned: [own] }, ...others] };
    const fill = optimised(pinned);
    const kept = keepSet({ project: pinned, kit: kitOf(project), union }, fill);
    expect(kept.units[0]!.pinned[0]).toEqual(own);
    expect(kept.units[0]!.pinned.slice(1).every(({ by, wall: at }) => by === "set" && at !== wall.id)).toBe(
      true,
    );
    // Kept without the engineer's pin, then pinned over.
    const free = keepSet({ project, kit: kitOf(project), union }, optimised(project));
    const over = {
      ...free,
      units: free.units.map((unit, k) => (k === 0 ? { ...unit, pinned: [...unit.pinned, own] } : unit)),
    };
    const after = filled(over);
    const face = after.units[0]!.faces.find(
      ({ walls, length }) => walls.includes(wall.id) && length === 850,
    )!;
    expect(face.pieces.map(({ width }) => width).sort()).toEqual([...own.widths].sort());
    expect(after.units[0]!.problems.map(({ kind }) => kind)).toContain("set-outdated");
  });

  it("that no longer fits is left aside with one warning a unit, and chosen anew", () => {
    const project = drawn("tiny-02", {});
    const kept = keepSet({ project, kit: kitOf(project), union }, optimised(project));
    const moved = {
      ...kept,
      units: kept.units.map((unit) => ({
        ...unit,
        walls: unit.walls.map((wall) => ({ ...wall, to: [wall.to[0] + 50, wall.to[1]] as const })),
      })),
    };
    const fill = filled(moved);
    for (const { problems } of fill.units) {
      const outdated = problems.filter(({ kind }) => kind === "set-outdated");
      expect(outdated).toHaveLength(1);
      expect(outdated[0]!.severity).toBe("warning");
      expect(problemText(outdated[0]!.message, "pt")).not.toBe(outdated[0]!.message);
    }
    const bare = { ...moved, units: moved.units.map((unit) => ({ ...unit, pinned: [] })) };
    expect(fill.units.map(({ bill }) => bill)).toEqual(filled(bare).units.map(({ bill }) => bill));
    expect(optimised(moved)).toEqual(optimised(bare));
  });

  it("refuses the fill of another project", () => {
    const project = sampleProject("one-room");
    const other = sampleProject("two-bedroom");
    expect(() => keepSet({ project, kit: kitOf(project), union }, filled(other))).toThrow(RangeError);
  });
});
