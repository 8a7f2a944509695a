// What the document says the choice changed, held to the two fills themselves and to amounts counted anew.

import { describe, expect, it } from "vitest";
import { fillProject } from "../../../src/fill/fillProject.ts";
import type { FillDocument, FilledFace } from "../../../src/fill/result.ts";
import type { IntervalChange, SetChanges } from "../../../src/fill/setChanges.ts";
import { writeFillDocument } from "../../../src/fill/writeFill.ts";
import type { Kit } from "../../../src/kit/kit.ts";
import type { Project } from "../../../src/plan/project.ts";
import { readProject } from "../../../src/plan/read.ts";
import { kitOf, optimised, union } from "../../support/optimised.ts";
import { sampleProject } from "../../support/samples.ts";
import { readInstance } from "../../support/setInstance.ts";
import { drawnInstance } from "../../support/setProject.ts";

interface Told {
  readonly project: Project;
  readonly kit: Kit;
  readonly before: FillDocument;
  readonly after: FillDocument;
  readonly changes: SetChanges;
}

function told(project: Project): Told {
  const kit = kitOf(project);
  const after = optimised(project, { proofSteps: 500 });
  return { project, kit, before: fillProject(project, kit, union), after, changes: after.set!.changes! };
}

function drawn(name: string): Project {
  const read = readProject(JSON.stringify(drawnInstance(readInstance(name))));
  if (read.status !== "ok") throw new Error(JSON.stringify(read.issues));
  return read.project;
}

const TOLD = new Map([
  ...(["row-of-three", "mirrored-pair"] as const).map((name) => [name, told(sampleProject(name))] as const),
  ...(["tiny-01", "tiny-04", "tiny-06"] as const).map((name) => [name, told(drawn(name))] as const),
]);
const NAMES = [...TOLD.keys()];

/** Full-height widths between two places of a face, left to right; a closure as less than 0. */
function columns({ pieces }: FilledFace, from: number, to: number): readonly number[] {
  return pieces
    .filter(({ z, x, width }) => z === 0 && x >= from && x + width <= to)
    .map(({ family, width }) => (family === "closure-strip" ? -width : width));
}

function signed({ widths, closure }: IntervalChange["before"]): readonly number[] {
  return widths.map((width, k) => (k === closure ? -width : width));
}

describe.each(NAMES)("%s", (name) => {
  const { project, before, after, changes } = TOLD.get(name)!;
  const facesOf = (fill: FillDocument) =>
    new Map(fill.units.flatMap(({ faces }) => faces).map((face) => [face.id, face]));
  const was = facesOf(before);
  const is = facesOf(after);

  it("lists each changed interval with the sequences of the two fills", () => {
    expect(changes.intervals.length).toBeGreaterThan(0);
    for (const change of changes.intervals) {
      const [first] = change.faces;
      expect(signed(change.before)).toEqual(columns(was.get(first!)!, change.from, change.to));
      expect(signed(change.after)).toEqual(columns(is.get(first!)!, change.from, change.to));
      expect([...change.before.widths].sort()).not.toEqual([...change.after.widths].sort());
      expect(was.get(first!)!.walls).toContain(change.wall);
    }
  });

  it("lists all of them: everywhere else the two fills are the same", () => {
    const inside = (face: string, x: number, changed: readonly IntervalChange[]) =>
      changed.some(({ faces, from, to }) => faces[0] === face && x >= from && x < to);
    for (const [id, face] of is) {
      if (changes.intervals.some(({ faces }) => faces[1] === id)) continue;
      const left = (each: FilledFace) =>
        each.pieces
          .filter(({ x }) => !inside(id, x, changes.intervals))
          .map(({ code, x, z }) => `${code} ${x} ${z}`);
      expect(left(face)).toEqual(left(was.get(id)!));
    }
  });

  it("counts every pour as its unit's bill does, and adds them up", () => {
    const pours =
      project.pours.length > 0 ? project.pours : project.units.map(({ id }) => ({ id, unit: id }));
    for (const { code, family, placed, pours: own } of changes.codes) {
      if (family !== "wall-panel" && family !== "closure-strip") continue;
      for (const [fill, side] of [
        [before, "before"],
        [after, "after"],
      ] as const) {
        let sum = 0;
        for (const { id, unit } of pours) {
          const entry = fill.units.find(
            (each) => each.unit === unit && (each.pours.length === 0 || each.pours.includes(id)),
          )!;
          const quantity = entry.bill.find((line) => line.code === code)?.quantity ?? 0;
          expect(own.find(({ pour }) => pour === id)?.[side] ?? 0, `${code} in ${id}`).toBe(quantity);
          sum += quantity;
        }
        expect(placed[side]).toBe(sum);
      }
    }
  });

  it("needs after what the set says, and costs before what wall by wall costs", () => {
    const { set } = after;
    for (const { code, needed, cost } of changes.codes) {
      const piece = set!.pieces.find((each) => each.code === code);
      expect(needed.after).toBe(piece?.needed ?? 0);
      if (cost !== null && piece !== undefined)
        expect(cost.after).toBeCloseTo(piece.toBuy * (piece.price ?? 0), 6);
    }
    const { set: panels, handling, closures, distinctSizes } = changes.before;
    expect(panels + handling + closures + distinctSizes).toBeCloseTo(set!.wallByWall!, 6);
  });

  it("gathers the same intervals by cause, and says in each changed filler why it stays", () => {
    expect(changes.causes.reduce((sum, { intervals }) => sum + intervals, 0)).toBe(changes.intervals.length);
    for (const { faces, from, to, because } of changes.intervals) {
      const odd = is
        .get(faces[0]!)!
        .pieces.filter(({ x, reason }) => x >= from && x < to && reason !== undefined);
      for (const { reason } of odd) expect(reason!.endsWith(`; ${because}`)).toBe(true);
    }
  });

  it("is written in the file with all of its members", () => {
    const { set } = JSON.parse(writeFillDocument(after));
    expect(set.changes.intervals).toHaveLength(changes.intervals.length);
    expect(Object.keys(set.changes)).toEqual(["before", "codes", "intervals", "causes"]);
    expect(Object.keys(set.changes.intervals[0])).toEqual(
      "unit wall faces from to before after alone undone because".split(" "),
    );
  });
});

describe.each(["tiny-01", "tiny-04", "tiny-06"] as const)("what each change of %s is worth", (name) => {
  const { project, kit, before, after, changes } = TOLD.get(name)!;
  const price = new Map(kit.pieces.map((piece) => [piece.code, piece.price ?? 0]));
  const { handling, closure, closurePerMm } = project.objective;

  /** The cost of bills by unit, every unit a pour of its own and every panel a wall panel of its width. */
  function costOf(fill: FillDocument, change: IntervalChange | null, way: 1 | -1): number {
    const most = new Map<string, number>();
    let work = 0;
    for (const { unit, bill, faces } of fill.units) {
      const counts = new Map(bill.map(({ code, quantity }) => [code, quantity]));
      for (const { family, width } of faces.flatMap(({ pieces }) => pieces)) {
        if (family === "closure-strip") work += closure + closurePerMm * width;
      }
      if (change?.unit === unit) {
        for (const [sequence, sign] of [
          [change.before, -way],
          [change.after, way],
        ] as const) {
          for (const width of signed(sequence)) {
            if (width < 0) work += 2 * sign * (closure - closurePerMm * width);
            else counts.set(`P${width}`, (counts.get(`P${width}`) ?? 0) + 2 * sign);
          }
        }
      }
      for (const [code, quantity] of counts) {
        if (!code.startsWith("P")) continue;
        work += handling * quantity;
        most.set(code, Math.max(most.get(code) ?? 0, quantity));
      }
    }
    return [...most].reduce((sum, [code, quantity]) => sum + price.get(code)! * quantity, work);
  }

  it("is the difference of two plans that differ in it alone", () => {
    for (const change of changes.intervals) {
      expect(change.undone).toBeCloseTo(costOf(after, change, -1) - costOf(after, null, 1), 6);
      expect(change.alone).toBeCloseTo(costOf(before, null, 1) - costOf(before, change, 1), 6);
    }
  });

  it("is never less than nothing to undo, where the plan is optimal", () => {
    expect(after.set!.status).toBe("optimal");
    for (const { undone } of changes.intervals) expect(undone).toBeGreaterThanOrEqual(0);
  });
});

describe("why an interval is not filled as by itself", () => {
  it("owns to a smaller set where only handling would be dearer", () => {
    // 900 by itself is 3 standard panels a face; two wide ones are owned and lie idle, and those of P2 are free on the day of P1.
    const instance = {
      name: "spare",
      optimum: 0,
      widths: [450, 300],
      standard: 300,
      price: { 450: 12060, 300: 9540 },
      handling: 60,
      closure: { min: 20, max: 90, cost: 50040, perMm: 30 },
      owned: { 450: 2 },
      pours: [
        { id: "P1", runs: [[900, 1]] },
        { id: "P2", runs: [[300, 3]] },
      ],
    } as const;
    const read = readProject(JSON.stringify(drawnInstance(instance)));
    if (read.status !== "ok") throw new Error(JSON.stringify(read.issues));
    const { intervals, causes } = told(read.project).changes;
    expect(intervals.map(({ after }) => after.widths)).toEqual([[450, 450]]);
    expect(intervals[0]!.because).toBe(
      "filled by itself, the set would need 4 P450 less, but handling and closures would cost more",
    );
    expect(causes[0]!.message).toContain("these would take no larger set");
  });
});

describe("the causes of a unit", () => {
  it.each(["one-room", "two-bedroom", "row-of-three", "mirrored-pair", "awkward"])(
    "%s: each closure and filler stands in one of them, in the plain fill and in the chosen one",
    (name) => {
      const { before, after } = told(sampleProject(name));
      for (const { causes, totals } of [...before.units, ...after.units]) {
        expect(causes.reduce((sum, { closures }) => sum + closures, 0)).toBe(totals.closures);
        expect(causes.reduce((sum, { fillers }) => sum + fillers, 0)).toBe(totals.fillers);
      }
    },
  );

  it.each([
    {
      why: "a room of 4000 by 3000 in walls of 100: t + c at four outside corners, on two faces each",
      says: /^Wall 100 with a 150 leg leaves 250 at 8 corners and joining walls\.$/,
    },
    {
      // 4000 less two legs of 150 = 3700 = 6 × 600 + 100: 100 from 3600.
      why: "two faces of two walls of 3700: no sum of 600s within 50",
      says: /^\d+ faces are more than 50 mm from every sum of standard widths: only other standard widths would remove \d+ fillers\.$/,
    },
  ])("of the one room: $why", ({ says }) => {
    const { before } = told(sampleProject("one-room"));
    expect(before.units[0]!.causes.map(({ message }) => message)).toContainEqual(expect.stringMatching(says));
  });
});
