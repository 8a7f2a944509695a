// Where a check is looked at in the plan, held to what plan and elevation find there.

import { describe, expect, it } from "vitest";
import { createChecker } from "../../../src/editor/checks/checker.ts";
import type { CheckDetail } from "../../../src/editor/checks/checkList.ts";
import { spotOf } from "../../../src/editor/checks/spot.ts";
import { drawnFace } from "../../../src/editor/pane/elevation.ts";
import { focused } from "../../../src/editor/pane/paneWalk.ts";
import { fillUnit } from "../../../src/fill/fillUnit.ts";
import { loadUnion } from "../../../src/geom/union.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import { filled as filledProject, sampleProject } from "../../support/samples.ts";

const union = await loadUnion();
const project = sampleProject("two-bedroom");
const unit = project.units[0]!;
const filled = fillUnit({
  unit,
  storey: project.storey,
  kit: demoKit,
  union,
  prefix: unit.id,
  fillers: project.fillers,
});
const checker = createChecker(union);
const made = checker.make({ project, kit: demoKit }, { loads: {}, concrete: {} }, 1);
const list = made.status === "checked" ? made.list : null;
const details = (list?.rows ?? []).flatMap(({ index }) => checker.detail(list?.version ?? 0, index) ?? []);
const of = (kind: string): readonly CheckDetail[] => details.filter(({ check }) => check.kind === kind);

describe("the place of a check", () => {
  it("is of a face of the unit as the plan fills it, with walls that it has", () => {
    const spots = details.flatMap(({ spot }) => (spot?.face == null ? [] : [spot.face]));
    expect(spots.length).toBeGreaterThan(400);
    const walls = new Set(unit.walls.map(({ id }) => id));
    for (const { id, walls: own, x } of spots) {
      const face = filled.fill.faces.find((each) => each.id === id);
      expect(face).toBeDefined();
      expect(own.every((wall) => walls.has(wall))).toBe(true);
      expect(x >= 0 && x <= (face?.length ?? 0)).toBe(true);
    }
  });

  it("of a tie is one that the elevation draws", () => {
    const ties = of("tie-load");
    expect(ties.length).toBeGreaterThan(100);
    for (const { spot } of ties) {
      expect(spot?.face?.level).toBe("tie");
      const index = filled.fill.faces.findIndex(({ id }) => id === spot?.face?.id);
      const { ties: drawn } = drawnFace(filled, demoKit, index);
      expect(drawn.map(({ x }) => x)).toContain(spot?.face?.x);
    }
  });

  it("of a piece on a face is one on which the elevation puts the hand", () => {
    const lifts = of("lift").filter(({ spot }) => spot?.face != null);
    expect(lifts.length).toBeGreaterThan(5);
    for (const { check, spot } of lifts) {
      const { id: face, x, z } = spot!.face!;
      const now = focused({ unit: unit.id, face, level: "piece", x, z }, filled, demoKit);
      const piece = filled.fill.faces
        .find(({ id }) => id === face)
        ?.pieces.find((each) => each.x === now?.part?.x && each.z === now.part.z);
      expect(piece?.code).toBe(check.where.code);
    }
  });

  it("of a prop is the prop's own, over which the soffit shows", () => {
    for (const { check, spot } of of("prop-load")) {
      expect(spot).toMatchObject({ overhead: "prop", at: check.where.at, face: null });
    }
  });

  it("of an opening names the opening", () => {
    for (const { check, spot } of of("sill-uplift")) expect(spot?.opening).toBe(check.where.opening);
  });

  it("of a whole unit is none", () => {
    for (const { spot } of of("panel-pressure")) expect(spot).toBeNull();
  });

  it("on a later storey of a unit is on the face that the plan shows", () => {
    const pours = [2400, 2600].map((clearHeight, index) => ({
      id: `p${index + 1}`,
      name: "",
      unit: "R",
      mirror: false,
      day: null,
      storey: { ...project.storey, clearHeight },
    }));
    const room = sampleProject("one-room");
    const own = room.units[0]!.id;
    const fill = filledProject({ ...room, pours: pours.map((pour) => ({ ...pour, unit: own })) });
    const [, second] = fill.units;
    const face = second!.faces[0]!;
    const where = { room: "", piece: "", code: "", at: null, face: face.id, x: 10, z: 0 };
    expect(face.id).toContain("@2");
    expect(spotOf(where, second!)?.face?.id).toBe(fill.units[0]!.faces[0]!.id);
  });
});
