// The pours table as data: its rows, and the edits that its buttons, fields and handles stand for.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dropPlace } from "../../../src/editor/set/dropPlace.ts";
import { curveInputsOf, inputsOf } from "../../../src/editor/set/inputs.ts";
import {
  changeLimits,
  dropPins,
  isKept,
  keepPins,
  NO_LIMITS,
  toggleForbidden,
} from "../../../src/editor/set/limitEdits.ts";
import { nudgeEdit } from "../../../src/editor/set/nudgeEdit.ts";
import {
  addPour,
  changeStock,
  changeStorey,
  duplicatePour,
  listUnits,
  movePour,
} from "../../../src/editor/set/pourEdits.ts";
import { addedSums, barScale } from "../../../src/editor/set/pourNames.ts";
import { pourRows, unpoured } from "../../../src/editor/set/pourRows.ts";
import type { AddedPiece } from "../../../src/fill/optimise/pourAdds.ts";
import { listed, type PlanDocument } from "../../../src/plan/document.ts";
import { projectToDocument } from "../../../src/plan/documentProject.ts";
import type { Edit } from "../../../src/plan/edit.ts";
import { withEdits } from "../../../src/plan/editCopy.ts";
import type { Pinned, Pour } from "../../../src/plan/project.ts";
import { sampleProject } from "../../support/samples.ts";

const SCHEME = sampleProject("row-of-three");

function scheme(days: readonly (number | null)[]): PlanDocument {
  const pours = days.map(
    (day, k): Pour => ({ id: `p${k + 1}`, name: "", unit: "F", mirror: false, day, storey: null }),
  );
  return projectToDocument({ ...SCHEME, pours });
}

function edited(document: PlanDocument, edits: readonly Edit[]): PlanDocument {
  const { document: next, outcome } = withEdits(document, edits);
  expect(outcome.status).toBe("done");
  return next;
}

const idsOf = (document: PlanDocument) => pourRows(document).map(({ id }) => id);

describe("the rows", () => {
  it.each([
    { why: "a day of its own is shared with nobody", days: [null, null], shared: [null, null] },
    { why: "a day that one pour names is its own", days: [1, 2], shared: [null, null] },
    { why: "two in a row", days: [1, 1], shared: ["1 start", "1 end"] },
    { why: "three in a row", days: [3, 7, 7, 7], shared: [null, "2 start", "2 middle", "2 end"] },
    { why: "one away from the others", days: [7, 7, 3, 7], shared: ["1 start", "1 end", null, "1 apart"] },
    { why: "all apart", days: [7, 3, 7], shared: ["1 apart", null, "1 apart"] },
    { why: "day 0 is a day", days: [0, 0], shared: ["1 start", "1 end"] },
  ])("$why", ({ days, shared }) => {
    const rows = pourRows(scheme(days));
    expect(rows.map((row) => row.shared && `${row.shared.first} ${row.shared.place}`)).toEqual(shared);
    expect(rows.map(({ number }) => number)).toEqual(days.map((_, k) => k + 1));
  });

  it("tell which units nobody pours, once anything is poured", () => {
    expect(unpoured(scheme([null]))).toEqual(["N", "T"]);
    expect(unpoured(scheme([]))).toEqual([]);
  });
});

describe("the order", () => {
  it("is what moving an entry of a list gives", () => {
    const place = fc.integer({ min: -1, max: 7 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 }), fc.nat(5), place, (count, from, to) => {
        const document = scheme(Array.from({ length: count }, () => null));
        const id = `p${(from % count) + 1}`;
        const wanted = idsOf(document).filter((each) => each !== id);
        wanted.splice(Math.max(0, to), 0, id);
        const edits = movePour(document, id, to);
        expect(idsOf(edited(document, edits))).toEqual(wanted);
        // What stands there already is no step.
        if (wanted.join() === idsOf(document).join()) expect(edits).toEqual([]);
      }),
      { seed: 4 },
    );
  });

  it.each([
    { why: "above the first", hand: 0, place: 0 },
    { why: "on the upper half of the second", hand: 49, place: 1 },
    { why: "on its lower half", hand: 51, place: 2 },
    { why: "below the last", hand: 900, place: 3 },
  ])("is found by the hand: $why", ({ hand, place }) => {
    const rows = [0, 33.4, 66.8].map((top) => ({ top, bottom: top + 33.3 }));
    expect(dropPlace(rows, hand)).toBe(place);
  });
});

describe("one step", () => {
  it("lists every unit as a pour, which changes nothing of the set", () => {
    const document = edited(scheme([]), listUnits(scheme([])));
    expect(pourRows(document).map(({ unit }) => unit)).toEqual(["F", "N", "T"]);
  });

  it("adds a pour behind the last", () => {
    const document = edited(scheme([1]), addPour("T"));
    expect(pourRows(document).map(({ id, unit, day }) => [id, unit, day])).toEqual([
      ["p1", "F", 1],
      ["p2", "T", null],
    ]);
  });

  it("duplicates a pour whole, behind itself", () => {
    const document = scheme([4, 5]);
    const storey = { clearHeight: 2700, slab: 120 };
    const high = edited(document, [
      { kind: "change-pour", pour: "p1", set: { storey, mirror: true, name: "A" } },
    ]);
    const copied = edited(high, duplicatePour(high, pourRows(high)[0]!));
    const rows = pourRows(copied);
    expect(rows.map(({ id }) => id)).toEqual(["p1", "p3", "p2"]);
    expect(rows[1]).toMatchObject({ name: "A", mirror: true, day: 4, storey });
  });

  it.each([
    { why: "one height", own: null, change: { clearHeight: 2700 }, storey: { clearHeight: 2700, slab: 100 } },
    { why: "the project's, typed", own: null, change: { clearHeight: 2400 }, storey: null },
    {
      why: "emptied: the other stays",
      own: { clearHeight: 2700, slab: 120 },
      change: { clearHeight: null },
      storey: { clearHeight: 2400, slab: 120 },
    },
    {
      why: "emptied, the last",
      own: { clearHeight: 2700, slab: 100 },
      change: { clearHeight: null },
      storey: null,
    },
    { why: "no slab is a slab of 0", own: null, change: { slab: 0 }, storey: { clearHeight: 2400, slab: 0 } },
  ])("sets the heights of a pour: $why", ({ own, change, storey }) => {
    const document = edited(scheme([null]), [{ kind: "change-pour", pour: "p1", set: { storey: own } }]);
    const changed = edited(document, changeStorey(document, pourRows(document)[0]!, change));
    expect(pourRows(changed)[0]!.storey).toEqual(storey);
  });

  it("changes what is owned, and forgets what is not any more", () => {
    const some = edited(scheme([]), changeStock(scheme([]), "W600x2250", 40));
    expect(some.stock).toEqual({ W600x2250: 40 });
    expect(edited(some, changeStock(some, "W600x2250", 0)).stock).toEqual({});
  });
});

describe("the inputs of a set", () => {
  it.each<{ why: string; edits: readonly Edit[]; isSame: boolean }>([
    { why: "a name", edits: [{ kind: "change-pour", pour: "p1", set: { name: "X" } }], isSame: true },
    { why: "the language", edits: [{ kind: "change-project", set: { language: "es" } }], isSame: true },
    { why: "a unit's name", edits: [{ kind: "change-unit", unit: "F", name: "X" }], isSame: true },
    { why: "a day", edits: [{ kind: "change-pour", pour: "p1", set: { day: 9 } }], isSame: false },
    { why: "a hand", edits: [{ kind: "change-pour", pour: "p1", set: { mirror: true } }], isSame: false },
    { why: "the order", edits: [{ kind: "move-pour", pour: "p2", before: "p1" }], isSame: false },
    { why: "what is owned", edits: [{ kind: "change-project", set: { stock: { A: 1 } } }], isSame: false },
    { why: "buying", edits: [{ kind: "change-project", set: { buy: false } }], isSame: false },
    {
      why: "a wall",
      edits: [{ kind: "delete", unit: "F", items: [{ bucket: "walls", id: "w1" }] }],
      isSame: false,
    },
  ])("know of $why: same = $isSame", ({ edits, isSame }) => {
    const document = scheme([1, 2]);
    expect(inputsOf(edited(document, edits)) === inputsOf(document)).toBe(isSame);
  });

  it("are the same again when a change is taken back", () => {
    const document = scheme([1, 2]);
    const moved = edited(document, movePour(document, "p2", 0));
    expect(inputsOf(edited(moved, movePour(moved, "p2", 1)))).toBe(inputsOf(document));
  });
});

describe("the limits and the pins of a set", () => {
  const pin = (from: number, more: Partial<Pinned> = {}): Pinned => ({
    wall: "w1",
    from,
    widths: [600, 600],
    by: "set",
    ...more,
  });
  const document = scheme([1]);

  it("forbid a panel and allow it again", () => {
    const once = edited(document, toggleForbidden(document, "W600x2250"));
    expect(once.limits).toEqual({ ...NO_LIMITS, forbidden: ["W600x2250"] });
    expect(inputsOf(once)).not.toBe(inputsOf(document));
    const twice = edited(once, toggleForbidden(once, "W600x2250"));
    expect(twice.limits).toEqual(NO_LIMITS);
    // Limits that state nothing are none.
    expect(inputsOf(twice)).toBe(inputsOf(document));
  });

  it("are kept in one step that changes no input of the set, and taken out again", () => {
    const own = edited(document, [{ kind: "pin", unit: "F", pinned: pin(3000, { widths: [450] }) }]);
    const { by: _, ...mine } = pin(0, { widths: [300] });
    const before = edited(own, [{ kind: "pin", unit: "N", pinned: mine }]);
    const pins = [
      { unit: "F", pinned: [pin(0), pin(0, { storey: { clearHeight: 2700, slab: 100 } })] },
      { unit: "N", pinned: [] },
    ];
    expect(isKept(before, pins)).toBe(false);
    const kept = edited(before, keepPins(before, pins));
    // An earlier set's are gone, the engineer's own stay.
    expect(listed(kept.units.F!.pinned).map(({ widths }) => widths)).toEqual([
      [600, 600],
      [600, 600],
    ]);
    expect(listed(kept.units.N!.pinned)).toHaveLength(1);
    expect(isKept(kept, pins)).toBe(true);
    expect(inputsOf(kept)).toBe(inputsOf(before));
    const out = edited(kept, dropPins(kept));
    expect(listed(out.units.F!.pinned)).toEqual([]);
    expect(dropPins(out)).toEqual([]);
  });

  it("are refused on a wall that is gone, and nothing is written", () => {
    const pins = [{ unit: "F", pinned: [pin(0, { wall: "nowhere" })] }];
    expect(withEdits(document, keepPins(document, pins)).outcome).toMatchObject({ status: "refused" });
  });

  it("leave the curves alone that go through them", () => {
    const few = edited(document, changeLimits(document, { mostWidths: 5 }));
    expect(curveInputsOf(few)).toEqual({ ...curveInputsOf(document), mostWidths: 5 });
    const light = edited(document, changeLimits(document, { greatestMass: 25 }));
    expect(curveInputsOf(light).others).not.toBe(curveInputsOf(document).others);
  });
});

describe("what a pour adds, in figures", () => {
  const piece = (family: AddedPiece["family"], count: number, toBuy: number, price: number | null) => ({
    code: family,
    family,
    count,
    toBuy,
    price,
  });

  it("counts small parts apart and money beyond what is owned", () => {
    const adds = [piece("wall-panel", 10, 4, 100), piece("pin", 900, 900, 0.5), piece("prop", 3, 3, null)];
    expect(addedSums(adds)).toEqual({ pieces: 13, small: 900, cost: 850 });
  });

  it.each([
    {
      why: "by money",
      pours: [{ adds: [piece("prop", 9, 9, 2)] }, { adds: [] }],
      scale: { by: "cost", greatest: 18 },
    },
    {
      why: "by pieces without prices",
      pours: [{ adds: [piece("prop", 9, 9, null)] }],
      scale: { by: "pieces", greatest: 9 },
    },
    { why: "of nothing", pours: [{ adds: [] }], scale: { by: "pieces", greatest: 1 } },
  ])("draws bars $why", ({ pours, scale }) => {
    expect(barScale(pours)).toEqual(scale);
  });
});

describe("a move that saves", () => {
  const document = projectToDocument(SCHEME);
  const wall = listed(document.units.F!.walls)[0]!;
  const nudge = { unit: "F", walls: [wall.id], end: null, move: [5, 0] } as const;

  it("is the edit that moves the wall with all that carries it on, or draws its end out", () => {
    expect(nudgeEdit(document, { ...nudge, kind: "wall" })).toEqual({
      kind: "move",
      unit: "F",
      items: [{ bucket: "walls", id: wall.id }],
      dx: 5,
      dy: 0,
      stretch: true,
    });
    const [x, y] = wall.from;
    expect(nudgeEdit(document, { ...nudge, kind: "free-end", end: "from" })).toEqual({
      kind: "move-joint",
      unit: "F",
      at: [x, y],
      to: [x + 5, y],
    });
  });

  it("is none on a wall that is gone", () => {
    expect(nudgeEdit(document, { ...nudge, kind: "wall", walls: ["nowhere"] })).toBeNull();
    expect(nudgeEdit(document, { ...nudge, kind: "wall", unit: "nowhere" })).toBeNull();
  });
});
