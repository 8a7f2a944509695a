import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { GREATEST_NUDGE, type Nudge, nudgesOf, nudgeTargets } from "../../src/editor/nudge/nudge.ts";
import { startEditor, takeStep, walk } from "../../src/editor/state/editorState.ts";
import { words } from "../../src/editor/words/say.ts";
import { fillWalls } from "../../src/fill/fillWalls.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { find } from "../../src/plan/document.ts";
import { documentToUnit, projectToDocument } from "../../src/plan/documentProject.ts";
import type { Position, Project, Unit } from "../../src/plan/project.ts";
import { sampleProject } from "../support/samples.ts";

const union = await loadUnion();

function refillOf({ storey, fillers }: Project) {
  return (unit: Unit) => fillWalls({ unit, storey, kit: demoKit, union, prefix: unit.id, fillers }, null);
}

/** The nudges for every target of the first unit, with the totals before. */
function offered(project: Project) {
  const unit = project.units[0]!;
  const refill = refillOf(project);
  const given = { filled: refill(unit), unit, kit: demoKit, fillers: project.fillers };
  const document = projectToDocument(project);
  const targets = nudgeTargets(given);
  const nudges = targets.flatMap((target) => nudgesOf(target, { document, given, refill }));
  return { targets, nudges, before: given.filled.fill.totals, document, unit };
}

const bare = { openings: [], rooms: [], slabs: [], slabOpenings: [], services: [], controlLines: [] };

function planOf(lines: readonly (readonly [Position, Position])[]): Project {
  const walls = lines.map(([from, to], k) => ({
    id: `w${k + 1}`,
    from,
    to,
    thickness: 100,
    justify: "centre" as const,
  }));
  const unit: Unit = { id: "A", name: "", walls, ...bare, pinned: [] };
  return { ...sampleProject("one-room"), kit: "demo", units: [unit], pours: [] };
}

/** A room of 4000 by 3000 clear with a stub of a wall that ends free after `stub` from the west wall's line. */
function roomWithStub(stub: number): Project {
  return planOf([
    [
      [0, 0],
      [4100, 0],
    ],
    [
      [4100, 0],
      [4100, 3100],
    ],
    [
      [4100, 3100],
      [0, 3100],
    ],
    [
      [0, 3100],
      [0, 0],
    ],
    [
      [0, 1500],
      [stub, 1500],
    ],
  ]);
}

describe("the targets", () => {
  it("are none where everything is covered by wide panels", () => {
    expect(offered(sampleProject("one-room")).targets).toEqual([]);
  });

  it("are each closure, once for the two faces of its wall", () => {
    // From the leg end at 50 + 150 = 200 to the free end at 1725 are 1525: panels make 1500 and leave 25 on each face.
    const { targets, before } = offered(roomWithStub(1725));
    expect(before.closures).toBe(2);
    expect(targets.map(({ seen, piece }) => [seen.length, piece.kind, piece.width])).toEqual([
      [1525, "closure", 25],
    ]);
  });
});

describe("the nudges of a free end 25 too long", () => {
  const { nudges, before } = offered(roomWithStub(1725));

  it("begin with the move that gains: the end drawn in or out by 25", () => {
    const [first] = nudges;
    expect(first).toMatchObject({ mover: { kind: "free-end", wall: "w5" }, by: 25, isGain: true });
    expect(first?.here.closures).toBe(-2);
    expect(first?.elsewhere.closures).toBe(0);
    expect(first?.after.closures).toBe(before.closures - 2);
    expect([1500, 1550]).toContain(first?.to);
  });

  it("tell of moving the west wall, too, which adds strips to the walls that stretch", () => {
    const wall = nudges.find(({ mover }) => mover.kind === "wall");
    expect(wall).toMatchObject({ mover: { kind: "wall", wall: "w4" }, isGain: false });
    expect(wall?.here.closures).toBe(-2);
    expect(wall?.elsewhere.closures).toBeGreaterThan(0);
  });

  it("come the better ones first", () => {
    const order = nudges.map(({ after }) => after.errors * 1e6 + after.closures * 1e4 + after.narrow * 100);
    expect([...order].sort((a, b) => a - b)).toEqual(order);
  });
});

describe("every nudge", () => {
  const shifts = fc.record({ opening: fc.nat(), by: fc.integer({ min: -49, max: 49 }) });

  function shifted(project: Project, { opening, by }: { opening: number; by: number }): Project {
    const [first, ...others] = project.units;
    const unit = first!;
    const openings = unit.openings.map((own, k) =>
      k === opening % unit.openings.length ? { ...own, at: own.at + by } : own,
    );
    return { ...project, units: [{ ...unit, openings }, ...others] };
  }

  function expectTrue(project: Project, nudge: Nudge, before: { closures: number; fillers: number }) {
    const document = projectToDocument(project);
    const state = startEditor(document);
    const after = takeStep(state, words("step.move", { count: 1 }), nudge.edits, []);
    const unit = documentToUnit(find(after.history.doc.units, project.units[0]!.id)!);
    const { totals } = refillOf(project)(unit).fill;
    expect(totals.closures).toBe(nudge.after.closures);
    expect(totals.fillers).toBe(nudge.after.fillers);
    expect(nudge.here.closures + nudge.elsewhere.closures).toBe(totals.closures - before.closures);
    expect(nudge.here.fillers + nudge.elsewhere.fillers).toBe(totals.fillers - before.fillers);
    expect(after.history.past).toHaveLength(1);
    expect(walk(after, "undo").history.doc).toEqual(document);
  }

  it("does what it says when it is made, is one step, and is gone after one undo", () => {
    let tried = 0;
    fc.assert(
      fc.property(shifts, (shift) => {
        const project = shifted(sampleProject("row-of-three"), shift);
        const { nudges, before } = offered(project);
        for (const nudge of nudges.slice(0, 3)) {
          tried += 1;
          expect(nudge.by).toBeGreaterThan(0);
          expect(nudge.by).toBeLessThanOrEqual(GREATEST_NUDGE);
          expect(Number.isInteger(nudge.by)).toBe(true);
          expectTrue(project, nudge, before);
        }
      }),
      { seed: 4711, numRuns: 8 },
    );
    expect(tried).toBeGreaterThan(10);
  });

  it("is no more than five for one piece", () => {
    const project = shifted(sampleProject("row-of-three"), { opening: 1, by: 25 });
    const { targets, nudges } = offered(project);
    expect(nudges.length).toBeLessThanOrEqual(5 * targets.length);
  });
});
