// A choice that stays: whatever covers are chosen, the kept project is filled with them, piece for piece.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { coversOf } from "../../src/fill/alternatives.ts";
import { castingsOf } from "../../src/fill/castings.ts";
import { fillCasting, fillDocument, fillProject } from "../../src/fill/fillProject.ts";
import { keepSet } from "../../src/fill/keepSet.ts";
import type { FillDocument } from "../../src/fill/result.ts";
import type { ChooseCover } from "../../src/fill/solve.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit } from "../../src/kit/kit.ts";
import { resolveKit } from "../../src/kit/resolve.ts";
import type { Pour, Project, Unit } from "../../src/plan/project.ts";
import { readProject } from "../../src/plan/read.ts";
import { writeProject } from "../../src/plan/write.ts";
import { projectOf } from "../support/filled.ts";
import { houseArbitrary } from "../support/housePlan.ts";
import { messyArbitrary } from "../support/messyPlan.ts";
import { sampleProject } from "../support/samples.ts";

const union = await loadUnion();

/** Some cover of every free interval, good or bad, with a closure or without. */
function chosenAtRandom(project: Project, kit: Kit, picks: readonly number[]): FillDocument {
  const castings = castingsOf(project);
  let next = 0;
  const choose: ChooseCover = ({ stretch, table, cover }) => {
    const length = stretch.high - stretch.low;
    const pick = picks[next++ % picks.length]!;
    const plain = coversOf(length, table, 8);
    // A strip as wide as a panel is no best cover of anything; a choice within a stock may still take it.
    const strip = table.widths
      .map(({ width }) => width)
      .find((width) => isStrip(width, table.closure) && width < length);
    const rest = strip === undefined ? undefined : coversOf(length - strip, table, 1)[0];
    const odd = rest?.closure === null ? [{ widths: rest.widths, closure: strip! }] : [];
    const all = [cover, ...plain, ...odd];
    return all[pick % all.length]!;
  };
  const filled = castings.map((casting) => fillCasting(casting, { project, kit, union }, choose));
  return fillDocument(project, castings, filled);
}

function isStrip(
  width: number,
  range: { readonly least: number; readonly greatest: number } | null,
): boolean {
  return range !== null && width >= range.least && width <= range.greatest;
}

/** All that stands, without the words of the reasons. */
function standing({ units, totals }: FillDocument) {
  const pieces = units.map(({ faces, corners, ties, fittings, accessories, bill, reveals }) => ({
    faces: faces.map((face) => ({ ...face, pieces: face.pieces.map(({ reason: _, ...piece }) => piece) })),
    corners,
    ties,
    fittings,
    accessories,
    bill,
    reveals,
  }));
  return { pieces, totals };
}

const ofPins = ({ units }: FillDocument) =>
  units.flatMap(({ problems }) =>
    problems.filter(({ kind }) => kind === "pinned-impossible" || kind === "set-outdated"),
  );

function expectKept(project: Project, kit: Kit, picks: readonly number[]): void {
  const fill = chosenAtRandom(project, kit, picks);
  const kept = keepSet({ project, kit, union }, fill);
  const read = readProject(writeProject(kept));
  if (read.status !== "ok") throw new Error(JSON.stringify(read.issues));
  expect(read.project).toEqual(kept);
  const again = fillProject(read.project, kit, union);
  expect(standing(again)).toEqual(standing(fill));
  expect(ofPins(again)).toEqual(ofPins(fill));
  expect(keepSet({ project: kept, kit, union }, again)).toEqual(kept);
}

const picks = fc.array(fc.nat(40), { minLength: 12, maxLength: 12 });

// The demo kit's strips are wider than none of its panels; here every strip from 20 to 90 meets the panels of 50.
const overlapping: Kit = {
  ...demoKit,
  pieces: demoKit.pieces.map((piece) =>
    piece.family === "closure-strip" ? { ...piece, least: 20, greatest: 120 } : piece,
  ),
};

const pour = (id: string, clearHeight: number | null): Pour => ({
  id,
  name: "",
  unit: "A",
  mirror: id === "p2",
  day: null,
  storey: clearHeight === null ? null : { clearHeight, slab: 100 },
});

describe("the kept project is filled as chosen", () => {
  it.each(["one-room", "two-bedroom", "row-of-three", "mirrored-pair", "awkward"])("%s", (name) => {
    const project = sampleProject(name);
    const kit = resolveKit(project.kit);
    if (kit.status !== "ok") throw new Error("the kit cannot be read");
    for (const seed of [1, 2, 3]) expectKept(project, kit.kit, [seed, 3 * seed, 7, 11 * seed, 2, 30, 8]);
  });

  it("houses with openings, walls that join and walls of several thicknesses, at one storey or two", () => {
    const house = houseArbitrary({ columns: 2, rows: 2, thicknesses: [80, 100, 150, 200], isMixed: true });
    fc.assert(
      fc.property(house, picks, fc.boolean(), (unit, own, isTwice) => {
        const named: Unit = { ...unit, id: "A" };
        const pours = isTwice ? [pour("p1", null), pour("p2", null), pour("p3", 2700)] : [];
        expectKept(projectOf(named, { pours }), overlapping, own);
      }),
      { numRuns: 40, seed: 20261128 },
    );
  });

  it("drawings as careless as they come", () => {
    fc.assert(
      fc.property(messyArbitrary(6), picks, (walls, own) => {
        const drawn = walls.filter(({ from, to }) => from[0] !== to[0] || from[1] !== to[1]);
        expectKept(projectOf({ ...EMPTY, walls: drawn }), overlapping, own);
      }),
      { numRuns: 120, seed: 20261128 },
    );
  });
});

const EMPTY: Unit = {
  id: "A",
  name: "",
  walls: [],
  openings: [],
  rooms: [],
  slabs: [],
  slabOpenings: [],
  services: [],
  controlLines: [],
  pinned: [],
};
