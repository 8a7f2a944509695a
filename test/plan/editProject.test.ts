// Units, pours and settings.

import { describe, expect, it } from "vitest";
import { type Entry, listed } from "../../src/plan/document.ts";
import { documentToProject, projectToDocument } from "../../src/plan/documentProject.ts";
import type { Edit } from "../../src/plan/edit.ts";
import type { Pour } from "../../src/plan/project.ts";
import { edited, projectOf, refusal, twoRooms, unitOf, wallOf } from "./editFixture.ts";

const pour = (id: string, unit = "A"): Pour => ({
  id,
  name: id,
  unit,
  mirror: false,
  day: null,
  storey: null,
});
const project = projectOf([twoRooms(), { ...unitOf([]), id: "B" }], {
  pours: [pour("p1"), pour("p2", "B"), pour("p3")],
});
const plan = projectToDocument(project);

describe("settings", () => {
  it("set what is named: storey, kit, stock", () => {
    const set = {
      storey: { clearHeight: 2600, slab: 120 },
      kit: { name: "own", pieces: [] },
      stock: { P600: 4 },
    };
    expect(documentToProject(edited(plan, { kind: "change-project", set }))).toEqual({ ...project, ...set });
  });
});

describe("units", () => {
  it("are added empty, at the end, under a free id", () => {
    const after = documentToProject(edited(plan, { kind: "add-unit", id: null, name: "Type C" }));
    expect(after.units.map(({ id }) => id)).toEqual(["A", "B", "U1"]);
    expect(after.units[2]).toEqual({ ...unitOf([]), id: "U1", name: "Type C" });
  });

  it("are copied whole, the original untouched", () => {
    const edit: Edit = { kind: "duplicate-unit", unit: "A", id: "A2", name: "Copy", mirror: false };
    const after = documentToProject(edited(plan, edit));
    expect(after.units[2]).toEqual({ ...twoRooms(), id: "A2", name: "Copy" });
    expect(after.units[0]).toEqual(twoRooms());
  });

  it("are copied mirrored within the same box", () => {
    const edit: Edit = { kind: "duplicate-unit", unit: "A", id: "A2", name: "Mirrored", mirror: true };
    const unit = documentToProject(edited(plan, edit)).units[2];
    // x → 7200 − x: w5 at 3600 stays, w6 runs west from it.
    expect(unit?.walls[0]).toEqual(wallOf("w1", [7200, 0], [0, 0]));
    expect(unit?.walls[5]).toEqual(wallOf("w6", [3600, 2000], [0, 2000]));
    expect(unit?.openings).toEqual(twoRooms().openings);
    expect(unit?.rooms[1]?.at).toEqual([1800, 3000]);
    expect(unit?.controlLines[0]?.from).toEqual([6700, 0]);
    expect(unit?.pinned).toEqual(twoRooms().pinned);
  });

  it("mirrored twice draw the same unit again", () => {
    const after = edited(
      plan,
      { kind: "duplicate-unit", unit: "A", id: "M", name: "", mirror: true },
      { kind: "duplicate-unit", unit: "M", id: "MM", name: "Type A", mirror: true },
    );
    expect(documentToProject(after).units[3]).toEqual({ ...twoRooms(), id: "MM" });
  });

  it("take their pours with them when deleted", () => {
    const after = documentToProject(edited(plan, { kind: "delete-unit", unit: "A" }));
    expect([after.units.map(({ id }) => id), after.pours.map(({ id }) => id)]).toEqual([["B"], ["p2"]]);
  });

  it.each<{ why: string; edit: Edit; reason: string }>([
    { why: "an id in use", edit: { kind: "add-unit", id: "B", name: "" }, reason: "id-in-use" },
    {
      why: "a copy of nothing",
      edit: { kind: "duplicate-unit", unit: "Z", id: null, name: "", mirror: true },
      reason: "no-such-unit",
    },
    {
      why: "a copy over another",
      edit: { kind: "duplicate-unit", unit: "A", id: "B", name: "", mirror: true },
      reason: "id-in-use",
    },
    { why: "a name for nothing", edit: { kind: "change-unit", unit: "Z", name: "" }, reason: "no-such-unit" },
    { why: "an edit in no unit", edit: { kind: "delete", unit: "Z", items: [] }, reason: "no-such-unit" },
    {
      why: "an edit in a unit every object has",
      edit: { kind: "delete", unit: "toString", items: [] },
      reason: "no-such-unit",
    },
  ])("refuse $why", ({ edit, reason }) => {
    expect(refusal(plan, edit)).toBe(reason);
  });

  it("keep the last one", () => {
    const one = projectToDocument(projectOf([twoRooms()]));
    expect(refusal(one, { kind: "delete-unit", unit: "A" })).toBe("last-unit");
  });
});

describe("pours", () => {
  const order = (edit: Edit) => listed<Entry<Pour>>(edited(plan, edit).pours).map(({ id }) => id);

  it.each<{ why: string; edit: Edit; ids: readonly string[] }>([
    {
      why: "added last",
      edit: { kind: "add-pour", pour: { ...pour(""), name: "West" } },
      ids: ["p1", "p2", "p3", "p4"],
    },
    {
      why: "moved before another",
      edit: { kind: "move-pour", pour: "p3", before: "p1" },
      ids: ["p3", "p1", "p2"],
    },
    {
      why: "moved to the end",
      edit: { kind: "move-pour", pour: "p1", before: null },
      ids: ["p2", "p3", "p1"],
    },
    {
      why: "moved before itself",
      edit: { kind: "move-pour", pour: "p2", before: "p2" },
      ids: ["p1", "p2", "p3"],
    },
    { why: "deleted", edit: { kind: "delete-pour", pour: "p2" }, ids: ["p1", "p3"] },
  ])("$why", ({ edit, ids }) => {
    expect(order(edit)).toEqual(ids);
  });

  it("change what is named", () => {
    const edit: Edit = { kind: "change-pour", pour: "p2", set: { mirror: true, day: 3 } };
    expect(documentToProject(edited(plan, edit)).pours[1]).toEqual({
      ...pour("p2", "B"),
      mirror: true,
      day: 3,
    });
  });

  it.each<{ why: string; edit: Edit; reason: string }>([
    { why: "of no unit", edit: { kind: "add-pour", pour: pour("", "Z") }, reason: "no-such-unit" },
    {
      why: "given to no unit",
      edit: { kind: "change-pour", pour: "p1", set: { unit: "Z" } },
      reason: "no-such-unit",
    },
    { why: "that is not there", edit: { kind: "change-pour", pour: "p9", set: {} }, reason: "no-such-item" },
    { why: "deleted twice", edit: { kind: "delete-pour", pour: "p9" }, reason: "no-such-item" },
    {
      why: "moved before nothing",
      edit: { kind: "move-pour", pour: "p1", before: "p9" },
      reason: "no-such-item",
    },
  ])("refuse one $why", ({ edit, reason }) => {
    expect(refusal(plan, edit)).toBe(reason);
  });
});
