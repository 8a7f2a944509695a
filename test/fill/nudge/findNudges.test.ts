// The nudge list of a whole scheme: what it says a move saves is what choosing the set anew, from nothing, makes of it.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findNudges, type NudgeProgress } from "../../../src/fill/nudge/findNudges.ts";
import { type NudgeList, type SchemeNudge, writeNudges } from "../../../src/fill/nudge/nudgeList.ts";
import { type ChosenSet, chooseSet } from "../../../src/fill/optimise/optimiseProject.ts";
import type { FillDocument } from "../../../src/fill/result.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import type { Kit } from "../../../src/kit/kit.ts";
import type { PlanDraft } from "../../../src/plan/document.ts";
import { documentToProject, projectToDocument } from "../../../src/plan/documentProject.ts";
import { applyEdit, type Edit } from "../../../src/plan/edit.ts";
import type { Position, Pour, Project, Unit } from "../../../src/plan/project.ts";
import { finished, solver, union } from "../../support/optimised.ts";
import { sampleProject } from "../../support/samples.ts";

/** The shipped kit with few widths, so that the search ends on small schemes: 250 and 400 for the zones of walls of 100. */
const WIDTHS: readonly number[] = [600, 400, 250, 150];
const kit: Kit = {
  ...demoKit,
  pieces: demoKit.pieces.filter((piece) => piece.family !== "wall-panel" || WIDTHS.includes(piece.width)),
};
const bare = { openings: [], slabs: [], slabOpenings: [], services: [], controlLines: [], pinned: [] };

function chosenOf(project: Project): ChosenSet {
  return finished(chooseSet({ project, kit, union, solver }));
}

interface Listed {
  readonly chosen: ChosenSet;
  readonly list: NudgeList;
  readonly progress: readonly NudgeProgress[];
}

function listed(project: Project, most?: number): Listed {
  const chosen = chosenOf(project);
  const work = findNudges({
    project,
    kit,
    union,
    solver,
    chosen,
    ...(most !== undefined && { most }),
  });
  const progress: NudgeProgress[] = [];
  let step = work.next();
  for (; step.done !== true; step = work.next()) progress.push(step.value);
  return { chosen, list: step.value, progress };
}

/** Two rooms, 4000 deep in the clear, the wall between them at `across`, a stub out of the west wall that ends free. */
function twoRooms(id: string, across: number, stub: number): Unit {
  const lines: readonly (readonly [Position, Position])[] = [
    [
      [0, 0],
      [7300, 0],
    ],
    [
      [7300, 0],
      [7300, 4100],
    ],
    [
      [7300, 4100],
      [0, 4100],
    ],
    [
      [0, 4100],
      [0, 0],
    ],
    [
      [across, 0],
      [across, 4100],
    ],
    ...(stub > 0
      ? [
          [
            [0, 1850],
            [stub, 1850],
          ] as const,
        ]
      : []),
  ];
  const walls = lines.map(([from, to], k) => ({
    id: `w${k + 1}`,
    from,
    to,
    thickness: 100,
    justify: "centre" as const,
  }));
  const rooms = [
    { name: "West", at: [300, 300] as const, kind: "room" as const, soffitDrop: 0 },
    { name: "East", at: [7000, 300] as const, kind: "room" as const, soffitDrop: 0 },
  ];
  return { id, name: id, walls, ...bare, rooms };
}

function pour(id: string, unit: string, mirror: boolean, day: number | null = null): Pour {
  return { id, name: id, unit, mirror, day, storey: null };
}

function scheme(units: readonly Unit[], pours: readonly Pour[]): Project {
  return {
    ...sampleProject("one-room"),
    kit: "demo",
    units,
    pours,
    stock: {},
    objective: { handling: 0.6, closure: 500, closurePerMm: 0.3, distinctSize: 0 },
  };
}

/** The edit a person would make, from what the list says and nothing else. */
function editOf({ unit, kind, walls, end, move: [dx, dy] }: SchemeNudge, project: Project): Edit {
  if (kind === "wall") {
    const items = walls.map((id) => ({ bucket: "walls" as const, id }));
    return { kind: "move", unit, items, dx, dy, stretch: true };
  }
  const wall = project.units.find(({ id }) => id === unit)!.walls.find(({ id }) => id === walls[0])!;
  const at = wall[end!];
  return { kind: "move-joint", unit, at, to: [at[0] + dx, at[1] + dy] };
}

function edited(project: Project, edit: Edit): Project | null {
  const draft: PlanDraft = projectToDocument(project);
  return applyEdit(draft, edit).status === "done" ? documentToProject(draft) : null;
}

const errorsOf = (fill: FillDocument) =>
  fill.units.flatMap(({ problems }) => problems).filter(({ severity }) => severity === "error").length;

describe("a wall drawn 10 mm off, poured and mirrored", () => {
  // Between legs of 150: 3160 − 50 − 50 − 300 = 2760 west and 3740 east of it, on two walls, two faces each.
  const project = scheme(
    [twoRooms("A", 3160, 0), twoRooms("B", 3150, 0)],
    [pour("p1", "A", false), pour("p2", "B", false), pour("p3", "A", true)],
  );
  const { chosen, list, progress } = listed(project);
  const [first] = list.nudges;

  it("asks for a closure at every interval beside it, in both pours", () => {
    expect(chosen.fill.units[0]!.totals.closures).toBe(8);
  });

  it("is moved by 10, and all of them are gone", () => {
    expect(list.status).toBe("done");
    expect(first).toMatchObject({
      unit: "A",
      pours: ["p1", "p3"],
      kind: "wall",
      walls: ["w5"],
      way: "left",
      by: 10,
      move: [-10, 0],
      closures: { before: 16, after: 0 },
    });
    expect(first!.proven).toBeGreaterThan(0);
    expect(first!.saving).toBeGreaterThanOrEqual(first!.proven);
    expect(first!.saving).toBeCloseTo(chosen.fill.set!.cost - first!.cost, 6);
  });

  it("tells what becomes of the rooms", () => {
    expect(first!.rooms).toEqual([
      { room: "West", area: { before: 12.24, after: 12.2 }, sizes: [{ before: 3060, after: 3050 }] },
      { room: "East", area: { before: 16.16, after: 16.2 }, sizes: [{ before: 4040, after: 4050 }] },
    ]);
  });

  it("tells two rooms of one name apart", () => {
    const units = project.units.map((unit) => ({
      ...unit,
      rooms: unit.rooms.map((room) => ({ ...room, name: "Bedroom" })),
    }));
    const { list: alike } = listed({ ...project, units });
    expect(alike.nudges[0]!.rooms).toEqual(first!.rooms.map((room) => ({ ...room, room: "Bedroom" })));
  });

  it("tells how far it is, the best never falling", () => {
    expect(progress.map(({ stage }) => stage)).toContain("screen");
    const bests = progress.filter(({ stage }) => stage === "price").map(({ best }) => best);
    expect(bests).toEqual([...bests].sort((a, b) => a - b));
  });

  it("is the same list twice, byte for byte, with all members", () => {
    const text = writeNudges(list);
    expect(writeNudges(listed(project).list)).toBe(text);
    const file = JSON.parse(text);
    expect(text).toBe(`${JSON.stringify(file, null, 2)}\n`);
    expect(file).toMatchObject({ format: "panelwright-nudges", version: 1, status: "done", greatest: 25 });
    expect(Object.keys(file.nudges[0])).toEqual(
      "unit pours kind walls end way by move saving proven cost lowerBound status proof closures fillers fixed rooms".split(
        " ",
      ),
    );
  });
});

describe("what a listed move saves", () => {
  const drawn = fc.record({
    across: fc.integer({ min: 3125, max: 3175 }),
    stub: fc.integer({ min: 1480, max: 1530 }),
    other: fc.integer({ min: 3140, max: 3160 }),
    together: fc.boolean(),
  });

  it("is the cost of the set as drawn less that of the set with the edit made, each chosen from nothing", () => {
    let tried = 0;
    fc.assert(
      fc.property(drawn, ({ across, stub, other, together }) => {
        const day = together ? 1 : null;
        const project = scheme(
          [twoRooms("A", across, stub), twoRooms("B", other, 0)],
          [pour("p1", "A", false), pour("p2", "A", true, day), pour("p3", "B", false, day)],
        );
        const { chosen, list } = listed(project);
        const before = chosen.fill.set!;
        for (const nudge of list.nudges.slice(0, 3)) {
          tried += 1;
          const after = edited(project, editOf(nudge, project));
          const { fill } = chosenOf(after!);
          expect(nudge.saving).toBeGreaterThan(0);
          expect(nudge.saving).toBeGreaterThanOrEqual(nudge.proven);
          expect(Number.isInteger(nudge.by) && nudge.by >= 1 && nudge.by <= 25).toBe(true);
          expect(errorsOf(fill)).toBeLessThanOrEqual(errorsOf(chosen.fill));
          expect(nudge.fixed.before).toBeCloseTo(before.parts.fixed, 6);
          // Pins and ties follow the joints, and two plans of one cost may have other joints.
          expect(Math.abs(fill.set!.parts.fixed - nudge.fixed.after)).toBeLessThan(0.001 * nudge.fixed.after);
          expect(nudge.saving).toBeGreaterThan(nudge.fixed.after - nudge.fixed.before);
          // Each search came to its end, so there is one answer to each.
          expect([before.proof, nudge.proof, fill.set!.proof]).not.toContain(null);
          expect(nudge.saving).toBeCloseTo(before.cost - fill.set!.cost, 6);
          expect(nudge.cost).toBeGreaterThanOrEqual(fill.set!.lowerBound - 1e-6);
          expect(fill.set!.cost).toBeGreaterThanOrEqual(nudge.lowerBound - 1e-6);
        }
      }),
      { seed: 2411, numRuns: 6 },
    );
    expect(tried).toBeGreaterThan(8);
  });

  it("is the most that any move of any wall saves, tried one by one", () => {
    const project = scheme([twoRooms("A", 3157, 0)], [pour("p1", "A", false), pour("p2", "A", true)]);
    const { chosen, list } = listed(project);
    let most = 0;
    for (const wall of project.units[0]!.walls) {
      const isUpright = wall.from[0] === wall.to[0];
      for (let shift = -25; shift <= 25; shift++) {
        if (shift === 0) continue;
        const [dx, dy] = isUpright ? [shift, 0] : [0, shift];
        const items = [{ bucket: "walls" as const, id: wall.id }];
        const after = edited(project, { kind: "move", unit: "A", items, dx, dy, stretch: true });
        const { fill } = chosenOf(after!);
        if (errorsOf(fill) > errorsOf(chosen.fill)) continue;
        expect(fill.set!.proof).not.toBeNull();
        most = Math.max(most, chosen.fill.set!.cost - fill.set!.cost);
      }
    }
    expect(most).toBeGreaterThan(0);
    expect(list.nudges[0]!.saving).toBeCloseTo(most, 6);
  });
});

describe("a step taken away", () => {
  it("is found where a wall stood flush before", () => {
    const sample = sampleProject("two-bedroom");
    const items = [{ bucket: "walls" as const, id: "w4" }];
    const off = edited(sample, { kind: "move", unit: "H", items, dx: 10, dy: 0, stretch: true })!;
    const given = { kit: demoKit, union, solver };
    const chosen = finished(chooseSet({ ...given, project: off }));
    const list = finished(findNudges({ ...given, project: off, chosen }));
    expect(list.nudges[0]).toMatchObject({ unit: "H", walls: ["w4"], way: "left", by: 10 });
    const back = finished(chooseSet({ ...given, project: sample }));
    expect(list.nudges[0]!.saving).toBeCloseTo(chosen.fill.set!.cost - back.fill.set!.cost, 6);
  });

  // Two walls of one line, the east one 12 mm aside: no panel stands behind so small a step.
  const unit = twoRooms("A", 3150, 0);
  const walls = unit.walls.flatMap((wall) =>
    wall.id === "w1"
      ? [
          { ...wall, to: [3150, 0] as const },
          { ...wall, id: "w6", from: [3150, 12] as const, to: [7300, 12] as const },
        ]
      : wall.id === "w2"
        ? [{ ...wall, from: [7300, 12] as const }]
        : [wall],
  );
  const project = scheme([{ ...unit, walls }], [pour("p1", "A", false)]);

  it("lists no move that leaves more that cannot be built", () => {
    const { chosen, list } = listed(project);
    for (const nudge of list.nudges) {
      const { fill } = chosenOf(edited(project, editOf(nudge, project))!);
      expect(errorsOf(fill)).toBeLessThanOrEqual(errorsOf(chosen.fill));
    }
  });
});

describe("no list", () => {
  const project = scheme([twoRooms("A", 3160, 0)], [pour("p1", "A", false)]);

  it.each([
    { why: "every wall is where it is best", name: "one-room", change: {}, status: "done" },
    { why: "no plan has pieces enough", name: null, change: { stock: {}, buy: false }, status: "no-plan" },
  ])("where $why", ({ name, change, status }) => {
    const { list } = listed(name === null ? { ...project, ...change } : sampleProject(name));
    expect(list).toMatchObject({ status, nudges: [] });
  });

  it("where it is stopped at once, and says so", () => {
    const chosen = chosenOf(project);
    const list = finished(findNudges({ project, kit, union, solver, chosen, isStopped: () => true }));
    expect(list).toMatchObject({ status: "stopped", nudges: [] });
  });

  it("longer than the work allowed: what is left is said", () => {
    const { list } = listed(project, 0);
    expect(list).toMatchObject({ status: "limit", priced: 0, nudges: [] });
    expect(list.mostLeft).toBeGreaterThanOrEqual(listed(project).list.nudges[0]!.saving);
  });
});
