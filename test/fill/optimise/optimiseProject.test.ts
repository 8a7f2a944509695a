// The set of a whole project: the fill follows the choice, and what the document says is what stands in it.

import { describe, expect, it } from "vitest";
import { fillProject } from "../../../src/fill/fillProject.ts";
import { optimiseProject, type SoFar } from "../../../src/fill/optimise/optimiseProject.ts";
import { writeFillDocument } from "../../../src/fill/writeFill.ts";
import type { Project } from "../../../src/plan/project.ts";
import { readProject } from "../../../src/plan/read.ts";
import { kitOf, optimised, solver, union } from "../../support/optimised.ts";
import { sampleProject } from "../../support/samples.ts";
import { expectTrueSet } from "../../support/setClaims.ts";
import { readInstance } from "../../support/setInstance.ts";
import { drawnInstance } from "../../support/setProject.ts";

function drawn(name: string, change: object = {}): Project {
  const read = readProject(JSON.stringify({ ...drawnInstance(readInstance(name)), ...change }));
  if (read.status !== "ok") throw new Error(JSON.stringify(read.issues));
  return read.project;
}

describe("known optima, drawn as walls", () => {
  it.each(["tiny-01", "tiny-02", "tiny-03", "tiny-04", "tiny-05", "tiny-06", "apt-06x60-a"])(
    "%s costs twice the optimum of one face",
    (name) => {
      const project = drawn(name);
      const fill = optimised(project, name.startsWith("tiny") ? {} : { proofSteps: 1 });
      const optimum = (2 * readInstance(name).optimum) / 100;
      expectTrueSet(fill, project, kitOf(project));
      expect(fill.set!.cost).toBeGreaterThanOrEqual(optimum - 1e-6);
      expect(fill.set!.cost).toBeLessThanOrEqual(optimum * (name.startsWith("tiny") ? 1 : 1.001) + 1e-6);
      expect(fill.set!.lowerBound).toBeLessThanOrEqual(optimum + 1e-6);
      if (name.startsWith("tiny")) expect(fill.set!.status).toBe("optimal");
      expect(
        fill.units.flatMap(({ problems }) => problems).filter(({ severity }) => severity === "error"),
      ).toEqual([]);
    },
  );
});

describe("samples", () => {
  it.each(["one-room", "two-bedroom", "row-of-three", "mirrored-pair"])(
    "%s: true, no dearer than wall by wall, no new error",
    (name) => {
      const project = sampleProject(name);
      const kit = kitOf(project);
      const fill = optimised(project);
      expectTrueSet(fill, project, kit);
      expect(fill.set!.status).toBe("optimal");
      const errors = (document: typeof fill) =>
        document.units.flatMap(({ problems }) => problems).filter(({ severity }) => severity === "error")
          .length;
      expect(errors(fill)).toBe(errors(fillProject(project, kit, union)));
      if (name === "row-of-three")
        expect(writeFillDocument(optimised(project))).toBe(writeFillDocument(fill));
    },
  );

  it("gives every unit one fill for all of its pours, and changes no zone, corner or soffit", () => {
    const project = sampleProject("row-of-three");
    const fill = optimised(project);
    const alone = fillProject(project, kitOf(project), union);
    for (const [k, unit] of fill.units.entries()) {
      expect(unit.pours).toEqual(alone.units[k]!.pours);
      expect(unit.corners).toEqual(alone.units[k]!.corners);
      const zones = (faces: typeof unit.faces) =>
        faces.map(({ pieces }) => pieces.filter(({ zone }) => zone === true).map(({ code, x }) => [code, x]));
      expect(zones(unit.faces)).toEqual(zones(alone.units[k]!.faces));
    }
  });
});

describe("days and stock", () => {
  it("adds up what is poured on one day", () => {
    const apart = drawn("tiny-01");
    const together = { ...apart, pours: apart.pours.map((pour) => ({ ...pour, day: 1 })) };
    const fill = optimised(together);
    expectTrueSet(fill, together, kitOf(together));
    expect(fill.set!.status).toBe("optimal");
    expect(fill.set!.cost).toBeGreaterThan(optimised(apart).set!.cost);
  });

  it("takes what is owned first", () => {
    const project = drawn("tiny-02");
    const bought = optimised(project).set!;
    const stock = Object.fromEntries(bought.pieces.map(({ code, needed }) => [code, needed]));
    const owned = { ...project, stock };
    const fill = optimised(owned);
    expectTrueSet(fill, owned, kitOf(owned));
    expect(fill.set!.parts.set).toBe(0);
  });

  it("is satisfied with exactly the pieces of a plan, and says what lacks with one less", () => {
    const project = drawn("tiny-06");
    const { pieces } = optimised(project).set!;
    const stock = Object.fromEntries(pieces.map(({ code, needed }) => [code, needed]));
    const enough = optimised({ ...project, stock, buy: false });
    expect(enough.set!.status).toBe("optimal");
    expect(enough.set!.missing).toBeUndefined();
    const none = optimised({ ...project, stock: {}, buy: false });
    expect(none.set).toMatchObject({ status: "infeasible" });
    expect(none.set!.missing!.length).toBeGreaterThan(0);
    for (const { code, quantity } of none.set!.missing!)
      expect(none.set!.pieces.find((piece) => piece.code === code)!.needed).toBe(quantity);
  });

  it("counts by mass where a panel has no price", () => {
    const file = drawnInstance(readInstance("tiny-01"));
    const { kit } = file as unknown as { kit: { pieces: { price?: number }[] } };
    delete kit.pieces[0]!.price;
    const read = readProject(JSON.stringify(file));
    if (read.status !== "ok") throw new Error(JSON.stringify(read.issues));
    const { set } = optimised(read.project);
    expect(set).toMatchObject({ countedBy: "mass", status: "optimal" });
    for (const { code, price } of set!.pieces.filter(({ family }) => family === "wall-panel"))
      expect(price).toBeCloseTo((Number(code.slice(1)) * 2400 * 22) / 1e6, 6);
  });
});

describe("what may not be changed", () => {
  it("keeps a pinned sequence", () => {
    const project = drawn("tiny-02");
    const [first, ...others] = project.units;
    const wall = first!.walls.find(({ to }) => to[0] === 850)!;
    const widths = [300, 150, 50, 50, 300];
    const pinned = {
      ...project,
      units: [{ ...first!, pinned: [{ wall: wall.id, from: 0, widths }] }, ...others],
    };
    const fill = optimised(pinned);
    expectTrueSet(fill, pinned, kitOf(pinned));
    const faces = fill.units[0]!.faces.filter(
      ({ walls, length }) => walls.includes(wall.id) && length === 850,
    );
    expect(faces).toHaveLength(2);
    for (const { pieces } of faces)
      expect([...pieces.map(({ width }) => width)].sort()).toEqual([...widths].sort());
  });
});

describe("a search that is ended from outside", () => {
  it("leaves enough for the document of any moment, never dearer and with a bound that holds", () => {
    const project = sampleProject("row-of-three");
    const told: { soFar: SoFar; best: number; bound: number }[] = [];
    const work = optimiseProject({ project, kit: kitOf(project), union, solver });
    let step = work.next();
    for (; step.done !== true; step = work.next()) told.push(step.value);
    const { set } = step.value;
    for (const { soFar, best, bound } of [told[0]!, told.at(-1)!]) {
      // As it would come out of a message, to another search that is told to stop at once.
      const kept = optimised(project, { soFar: structuredClone(soFar), isStopped: () => true });
      expectTrueSet(kept, project, kitOf(project));
      expect(kept.set!.cost).toBeCloseTo(best, 6);
      expect(kept.set!.lowerBound).toBeGreaterThanOrEqual(bound - 1e-6);
      expect(kept.set!.lowerBound).toBeLessThanOrEqual(set!.cost);
      expect(kept.set!.cost).toBeGreaterThanOrEqual(set!.cost);
    }
  });

  it("goes on from there to the same set", () => {
    const project = sampleProject("row-of-three");
    const first = optimiseProject({ project, kit: kitOf(project), union, solver }).next();
    if (first.done === true) throw new Error("the search was done at once");
    const { set } = optimised(project, { soFar: first.value.soFar });
    expect(set!.cost).toBe(optimised(project).set!.cost);
    expect(set!.status).toBe("optimal");
  });

  it("where the pieces there are make no plan, takes no bound of theirs for the set that buys more", () => {
    const project = { ...drawn("tiny-06"), stock: {}, buy: false };
    const { set } = optimised(project);
    expect(set!.status).toBe("infeasible");
    // What was proven of plans that buy nothing: there are none, so any number holds.
    const work = optimiseProject({ project, kit: kitOf(project), union, solver });
    const first = work.next();
    if (first.done === true) throw new Error("the search was done at once");
    const soFar: SoFar = { ...first.value.soFar, bound: 1e9 };
    const again = optimiseProject({ project, kit: kitOf(project), union, solver, soFar, proofSteps: 1 });
    const bought: { best: number; bound: number }[] = [];
    let step = again.next();
    // Before that the panels that lack are paid for a hundredfold.
    for (; step.done !== true; step = again.next())
      if (step.value.best < 10 * set!.cost) bought.push(step.value);
    expect(bought.some(({ best }) => best > set!.cost)).toBe(true);
    for (const { bound } of bought) expect(bound).toBeLessThanOrEqual(set!.cost + 1e-6);
    expect(step.value.set).toMatchObject({ status: "infeasible", cost: set!.cost });
  });
});
