// What must hold for every drawing, whatever it is: random plans of housing against the audit, and against themselves
// mirrored, turned, shuffled, renamed and drawn a hair off.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { UnitFill } from "../../src/fill/result.ts";
import { writeFillDocument } from "../../src/fill/writeFill.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Position, Unit } from "../../src/plan/project.ts";
import { auditAny, auditHair, auditSquare } from "../support/audit.ts";
import { fillDocument, fillOne, projectOf, STOREY } from "../support/filled.ts";
import { houseArbitrary } from "../support/housePlan.ts";
import { messyArbitrary } from "../support/messyPlan.ts";
import { networkArbitrary, networkWalls } from "../support/wallNetwork.ts";
import { unitOf, unitOfWalls } from "../support/walls.ts";

const THICKNESSES = [100, 120, 150, 200];
const houses = houseArbitrary({ columns: 2, rows: 2, thicknesses: THICKNESSES, isMixed: false });
const mixed = houseArbitrary({ columns: 2, rows: 2, thicknesses: THICKNESSES, isMixed: true });
const audited = (unit: Unit) => ({ unit, storey: STOREY, kit: demoKit });
const textOf = (unit: Unit) => writeFillDocument(fillDocument(projectOf(unit)));

function moved(unit: Unit, move: (at: Position) => Position): Unit {
  const walls = unit.walls.map((wall) => ({ ...wall, from: move(wall.from), to: move(wall.to) }));
  return { ...unit, walls };
}

/** The same walls drawn the other way where `flips` says so, with their openings measured from the other end. */
function reversed(unit: Unit, flips: readonly boolean[]): Unit {
  const isFlipped = new Set(unit.walls.filter((_, k) => flips[k % flips.length]).map(({ id }) => id));
  const lengths = new Map(
    unit.walls.map(({ id, from, to }) => [id, Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1])]),
  );
  return {
    ...unit,
    walls: unit.walls.map((wall) =>
      isFlipped.has(wall.id) ? { ...wall, from: wall.to, to: wall.from } : wall,
    ),
    openings: unit.openings.map((one) =>
      isFlipped.has(one.wall) ? { ...one, at: lengths.get(one.wall)! - one.at - one.width } : one,
    ),
  };
}

function shuffled<T>(list: readonly T[], keys: readonly number[]): T[] {
  return list
    .map((one, k) => ({ one, key: keys[k % keys.length]! + k / 1000 }))
    .sort((a, b) => a.key - b.key)
    .map(({ one }) => one);
}

// Ties and pins depend on where in an interval a filler stands; brackets, ledgers, braces and aligners on which side of a
// free wall is set first. Both are settled by the place in the plan, so an image may differ in them.
const BY_PLACE = [
  "tie",
  "tie-sleeve",
  "pin",
  "wedge",
  "wall-bracket",
  "alignment-ledger",
  "brace",
  "facade-aligner",
  // Where a line of strips is jointed, and how many heads stand under it, goes with the end at which its bands close.
  "shoring-strip",
  "prop",
];

function panelsBilled(fill: UnitFill): string[] {
  return fill.bill
    .filter(({ family }) => !BY_PLACE.includes(family))
    .map(({ code, quantity }) => `${quantity} ${code}`);
}

describe("every house", () => {
  it("passes the audit", () => {
    fc.assert(
      fc.property(houses, (unit) => {
        expect(auditSquare(fillOne(unit), audited(unit))).toEqual([]);
      }),
      { seed: 1, numRuns: 50 },
    );
  });

  it("passes the audit where every wall has a thickness of its own", () => {
    fc.assert(
      fc.property(mixed, (unit) => {
        expect(auditSquare(fillOne(unit), audited(unit))).toEqual([]);
      }),
      { seed: 2, numRuns: 40 },
    );
  });

  it("takes the same counts and the same bill drawn as its mirror image", () => {
    fc.assert(
      fc.property(houses, (unit) => {
        const fill = fillOne(unit);
        const image = fillOne(moved(unit, ([x, y]) => [0 - x, y]));
        expect(image.totals).toEqual(fill.totals);
        expect(panelsBilled(image)).toEqual(panelsBilled(fill));
      }),
      { seed: 3, numRuns: 40 },
    );
  });

  it("takes the same counts and the same bill turned by a quarter", () => {
    fc.assert(
      fc.property(houses, (unit) => {
        const fill = fillOne(unit);
        const image = fillOne(moved(unit, ([x, y]) => [0 - y, x]));
        expect(image.totals).toEqual(fill.totals);
        expect(panelsBilled(image)).toEqual(panelsBilled(fill));
      }),
      { seed: 4, numRuns: 40 },
    );
  });

  it("is the same to the byte with its walls and openings in any order and direction, and twice", () => {
    const keys = fc.array(fc.nat(1000), { minLength: 20, maxLength: 20 });
    const flips = fc.array(fc.boolean(), { minLength: 20, maxLength: 20 });
    fc.assert(
      fc.property(mixed, keys, flips, (unit, order, turns) => {
        const text = textOf(unit);
        expect(textOf(unit)).toBe(text);
        const other = reversed(unit, turns);
        const { walls, openings } = other;
        expect(textOf({ ...other, walls: shuffled(walls, order), openings: shuffled(openings, order) })).toBe(
          text,
        );
      }),
      { seed: 5, numRuns: 30 },
    );
  });

  it("is the same but for the names with every wall and opening renamed", () => {
    fc.assert(
      fc.property(mixed, (unit) => {
        // Names that sort the other way round.
        const name = (id: string) => `${id[0]}${900 - Number(id.slice(1))}`;
        const renamed = {
          ...unit,
          walls: unit.walls.map((wall) => ({ ...wall, id: name(wall.id) })),
          openings: unit.openings.map((one) => ({ ...one, id: name(one.id), wall: name(one.wall) })),
        };
        expect(textOf(renamed)).toBe(textOf(unit).replace(/\b[wo]\d+\b/g, name));
      }),
      { seed: 6, numRuns: 30 },
    );
  });
});

describe("careless drawings", () => {
  const meant = houseArbitrary({
    columns: 2,
    rows: 2,
    thicknesses: [100, 200],
    isMixed: false,
    isOnGrid: true,
  });
  const hairs = (most: number) =>
    fc.array(fc.double({ min: -most, max: most, noNaN: true }), { minLength: 41, maxLength: 41 });

  it("settle on what was meant where ends are off along their walls and the plan is off as a whole", () => {
    fc.assert(
      fc.property(meant, hairs(0.2), (unit, hair) => {
        let next = 0;
        const off = (): number => hair[next++ % hair.length]!;
        const [x, y] = [off(), off()];
        const slid = {
          ...unit,
          walls: unit.walls.map((wall) => {
            const axis = wall.from[0] === wall.to[0] ? 1 : 0;
            const slide = (at: Position, by: number): Position =>
              axis === 0 ? [at[0] + by + x, at[1] + y] : [at[0] + x, at[1] + by + y];
            return { ...wall, from: slide(wall.from, off()), to: slide(wall.to, off()) };
          }),
        };
        const fill = fillOne(slid);
        const due = fillOne(unit);
        expect(auditHair(fill, audited(slid))).toEqual([]);
        expect(fill.totals).toEqual(due.totals);
        expect(panelsBilled(fill)).toEqual(panelsBilled(due));
      }),
      { seed: 7, numRuns: 40 },
    );
  });

  it("leave no sliver where every end is almost a millimetre off either way", () => {
    fc.assert(
      fc.property(meant, hairs(0.9), (unit, hair) => {
        let next = 0;
        const off = (): number => hair[next++ % hair.length]!;
        const drawn = moved(unit, ([x, y]) => [x + off(), y + off()]);
        expect(auditHair(fillOne(drawn), audited(drawn))).toEqual([]);
      }),
      { seed: 10, numRuns: 40 },
    );
  });

  it("are tiled or reported at any angle", () => {
    fc.assert(
      fc.property(networkArbitrary(700), (network) => {
        const unit = unitOf(networkWalls(network));
        expect(auditAny(fillOne(unit), audited(unit))).toEqual([]);
      }),
      { seed: 8, numRuns: 40 },
    );
  });

  it("are tiled or reported however walls cross, overlap and miss one another", () => {
    fc.assert(
      fc.property(messyArbitrary(7), (walls) => {
        const unit = unitOfWalls(walls);
        expect(auditAny(fillOne(unit), audited(unit))).toEqual([]);
      }),
      { seed: 9, numRuns: 60, endOnFailure: true },
    );
  });
});
