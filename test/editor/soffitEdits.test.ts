// What is done to a soffit in the page: the way its panels lie, the hand on its pieces, the check of a prop.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { assessFill } from "../../src/assess/assessFill.ts";
import { changeScreen } from "../../src/editor/live/actions.ts";
import { createLiveFill } from "../../src/editor/live/liveFill.ts";
import { createWorkbench, inViewOf, type Workbench } from "../../src/editor/live/workbench.ts";
import { soffitAt, soffitId } from "../../src/editor/scene/soffitHit.ts";
import { middleOf, sceneSoffit } from "../../src/editor/scene/soffitPieces.ts";
import { propCheckOf } from "../../src/editor/soffit/propCheck.ts";
import { alongEdit, labelOf, roomAt, soffitOver } from "../../src/editor/soffit/roomEdits.ts";
import {
  letGoOfSoffit,
  showProp,
  showSoffitAt,
  takeSoffit,
  walkSoffit,
} from "../../src/editor/soffit/soffitActions.ts";
import { fillUnit } from "../../src/fill/fillUnit.ts";
import { loadUnion } from "../../src/geom/union.ts";
import type { Kit } from "../../src/kit/kit.ts";
import { readConcrete } from "../../src/plan/concrete.ts";
import { listed, type PlanDocument } from "../../src/plan/document.ts";
import { withEdits } from "../../src/plan/editCopy.ts";
import { readLoads } from "../../src/plan/loads.ts";
import type { Position } from "../../src/plan/project.ts";
import { filled, openSample } from "./scene/sampleScene.ts";

const sample = openSample("two-bedroom");
const union = await loadUnion();

const bare: PlanDocument = {
  ...sample.document,
  units: {
    ...sample.document.units,
    [Object.keys(sample.document.units)[0] ?? ""]: { ...sample.unit, rooms: {} },
  },
};

describe("the way slab panels lie", () => {
  const wayOf = (document: PlanDocument, at: Position) => {
    const { live } = filled(document);
    return soffitOver(live, at)?.along;
  };

  it.each(["x", "y"] as const)("is what is asked for, in a room that has a label: %s", (along) => {
    for (const label of listed(sample.unit.rooms)) {
      const room = roomAt(sample.live, label.at);
      if (room === null || room.kind === "open") continue;
      const edit = alongEdit(sample.unit, sample.live, { at: label.at, along });
      expect(edit).toMatchObject({ kind: "change-room", room: label.id, set: { soffitAlong: along } });
      const { document, outcome } = withEdits(sample.document, edit === null ? [] : [edit]);
      expect(outcome.status).toBe("done");
      expect(wayOf(document, label.at)).toBe(along);
    }
  });

  it("names a room that had no name as it was called, and nothing else changes", () => {
    const before = filled(bare);
    const [{ at } = { at: [0, 0] as const }] = listed(sample.unit.rooms);
    const name = roomAt(before.live, at)?.name;
    const edit = alongEdit(before.unit, before.live, { at, along: "x" });
    expect(edit).toMatchObject({ kind: "add-room", room: { name, soffitAlong: "x" } });
    const after = filled(withEdits(bare, edit === null ? [] : [edit]).document);
    expect(after.live.fill.rooms.map((room) => room.name)).toEqual(
      before.live.fill.rooms.map((room) => room.name),
    );
    expect(soffitOver(after.live, at)?.along).toBe("x");
  });

  it("is given back to the better of the two by null, and asks for nothing where nothing changes", () => {
    const [label] = listed(sample.unit.rooms);
    if (label === undefined) throw new Error("the sample has no rooms");
    const at = label.at;
    expect(alongEdit(sample.unit, sample.live, { at, along: null })).toBeNull();
    expect(alongEdit(sample.unit, sample.live, { at: [-9000, -9000], along: "x" })).toBeNull();
    const edit = alongEdit(sample.unit, sample.live, { at, along: "x" });
    const forced = filled(withEdits(sample.document, edit === null ? [] : [edit]).document);
    expect(alongEdit(forced.unit, forced.live, { at, along: "x" })).toBeNull();
    const back = alongEdit(forced.unit, forced.live, { at, along: null });
    const after = withEdits(forced.document, back === null ? [] : [back]).document;
    expect(after).toEqual(sample.document);
  });

  it("finds the label of each room by its place, not by its name alone", () => {
    for (const room of sample.live.outline.rooms) {
      const label = labelOf(sample.unit, sample.live, room);
      expect(label === null ? null : roomAt(sample.live, label.at)).toBe(room.isNamed ? room : null);
    }
  });
});

function workbench(document = sample.document): Workbench {
  const fills = createLiveFill({
    fillNow: (ask) => fillUnit({ ...ask, union }),
    fillBeside: null,
    clock: () => 0,
    quick: 8,
  });
  const bench = createWorkbench(document, fills);
  changeScreen(bench, { showsSoffit: true, size: { width: 1000, height: 600 } });
  return bench;
}

function thingOf(bench: Workbench) {
  const focus = bench.soffit.get();
  const { live } = inViewOf(bench, bench.editor.get());
  return focus === null ? null : soffitAt(live, focus.at, focus.reach);
}

describe("the hand on the soffit", () => {
  it("takes what lies there, and lets go beside it or when the soffit is not shown", () => {
    const bench = workbench();
    const [{ prop } = { prop: null }] = sceneSoffit(sample.live).props;
    const at = prop?.at ?? [0, 0];
    takeSoffit(bench, at, 60);
    expect(thingOf(bench)).toMatchObject({ kind: "prop", place: { prop: { piece: prop?.piece } } });
    takeSoffit(bench, [-9000, 0], 60);
    expect(bench.soffit.get()).toBeNull();
    takeSoffit(bench, at, 60);
    letGoOfSoffit(bench);
    expect(bench.soffit.get()).toBeNull();
    changeScreen(bench, { showsSoffit: false });
    takeSoffit(bench, at, 60);
    expect(bench.soffit.get()).toBeNull();
  });

  it("walks through all of a room's panels, strips and props, and round again", () => {
    const bench = workbench();
    changeScreen(bench, { showsSoffit: false });
    const [{ at } = { at: [0, 0] as const }] = listed(sample.unit.rooms);
    showSoffitAt(bench, at);
    expect(bench.screen.get().showsSoffit).toBe(true);
    const soffit = soffitOver(sample.live, at);
    const wanted = new Set([
      ...(soffit?.pieces ?? [])
        .filter(({ family }) => !family.includes("connector"))
        .map(({ piece }) => piece),
      ...(soffit?.props ?? []).map(({ piece }) => piece),
    ]);
    const seen = new Set<string>();
    for (let k = 0; k < wanted.size; k++) {
      const thing = thingOf(bench);
      if (thing === null) throw new Error("the hand lost the soffit");
      seen.add(soffitId(thing));
      walkSoffit(bench, thing, 1);
    }
    expect(seen).toEqual(wanted);
    const first = thingOf(bench);
    if (first !== null) walkSoffit(bench, first, -1);
    expect(seen.has(soffitId(thingOf(bench) ?? sceneFirst()))).toBe(true);
  });

  it("goes from a strip to the prop that holds its end", () => {
    const bench = workbench();
    const held = sceneSoffit(sample.live).shapes.filter(({ piece }) => piece?.heldBy !== undefined);
    expect(held.length).toBeGreaterThan(0);
    for (const { piece, soffit, outline, ...box } of held) {
      takeSoffit(bench, middleOf(box), 0);
      showProp(bench, piece?.heldBy ?? "");
      const thing = thingOf(bench);
      expect(thing === null ? null : soffitId(thing)).toBe(piece?.heldBy);
      expect(soffit.props.some((prop) => prop.piece === piece?.heldBy)).toBe(true);
      expect(outline.length).toBeGreaterThan(2);
    }
  });
});

function sceneFirst() {
  const [shape] = sceneSoffit(sample.live).shapes;
  if (shape === undefined) throw new Error("the sample has no soffit");
  return { kind: "shape", shape } as const;
}

describe("the check of a prop", () => {
  const props = sceneSoffit(sample.live).props.map(({ prop }) => prop.piece);

  it("is that of the command line", () => {
    const read = readLoads(sample.document.loads);
    if (read.status === "invalid") throw new Error("loads");
    const { storey, name } = sample.document;
    const fill = {
      ...({
        format: "panelwright-fill",
        version: 1,
        project: name,
        totals: sample.live.fill.totals,
      } as const),
      units: [{ ...sample.live.fill, pours: [] }],
    };
    const concrete = readConcrete({});
    if (concrete.status === "invalid") throw new Error("concrete");
    const given = {
      project: { name, storey, units: [], pours: [], stock: {}, buy: true },
      kit: sample.live.kit,
      fill,
      loads: read.value,
      defaults: [],
      concrete: concrete.value,
      concreteDefaults: [],
    };
    const all = assessFill(given).checks;
    fc.assert(
      fc.property(fc.constantFrom(...props), (prop) => {
        const { check, reason } = propCheckOf(sample.document, sample.live, prop);
        expect(check).toEqual(all.find(({ where }) => where.piece === prop));
        expect(reason === null).toBe(check?.status === "within" || check?.status === "over");
      }),
      { seed: 5, numRuns: 20 },
    );
  });

  const [first = ""] = props;
  const withProps = (change: (piece: Kit["pieces"][number]) => readonly Kit["pieces"][number][]): Kit => ({
    ...sample.live.kit,
    pieces: sample.live.kit.pieces.flatMap((piece) => (piece.family === "prop" ? change(piece) : [piece])),
  });
  const key = (document: PlanDocument, kit: Kit = sample.live.kit) => {
    const { check, reason } = propCheckOf(document, { ...sample.live, kit }, first);
    return [check?.status ?? null, reason?.key ?? null];
  };

  it("says in words of its own why there is no verdict", () => {
    const { document } = sample;
    expect(key({ ...document, loads: { slabModel: "none" } })).toEqual([null, "check.bad-loads"]);
    expect(key({ ...document, storey: { ...document.storey, slab: 0 } })).toEqual([
      "not-applicable",
      "check.no-slab",
    ]);
    expect(
      key(
        document,
        withProps(() => []),
      ),
    ).toEqual(["not-checked", "check.no-piece"]);
    const unclassed = withProps((piece) => (piece.family === "prop" ? [{ ...piece, class: null }] : []));
    expect(key(document, unclassed)).toEqual(["not-checked", "check.no-class"]);
    const far = { ...document, storey: { ...document.storey, slab: 1999 } };
    expect(key(far)[0]).not.toBe("within");
  });
});
