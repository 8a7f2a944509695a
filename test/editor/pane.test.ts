import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { becauseOf } from "../../src/editor/because/because.ts";
import { drawnFace, problemNumbers, ringOf } from "../../src/editor/pane/elevation.ts";
import { focusOn, otherFace, type PaneFocus, selectedFaces } from "../../src/editor/pane/paneFocus.ts";
import { type Focused, focused, stepAside, stepIn, stepOut } from "../../src/editor/pane/paneWalk.ts";
import { focusText } from "../../src/editor/pane/paneWords.ts";
import { sortOf } from "../../src/editor/underlay/readPicture.ts";
import { speechOf } from "../../src/editor/words/say.ts";
import { fillUnit } from "../../src/fill/fillUnit.ts";
import type { Problem } from "../../src/fill/result.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { unitToDocument } from "../../src/plan/documentProject.ts";
import { sampleProject } from "../support/samples.ts";

const union = await loadUnion();
const project = sampleProject("two-bedroom");
const unit = project.units[0]!;
const { storey, fillers } = project;
const filled = fillUnit({ unit, storey, kit: demoKit, union, prefix: unit.id, fillers });
const given = { filled, unit, kit: demoKit, fillers };
const { faces } = filled.fill;
const speech = speechOf("en", {});
const at = (face: string, change: Partial<PaneFocus> = {}): PaneFocus => ({
  unit: unit.id,
  face,
  level: "face",
  x: 0,
  z: 0,
  ...change,
});
const plan = unitToDocument(unit, 0);
const facesOf = (wall: string) => selectedFaces(plan, [{ bucket: "walls", id: wall }], filled);
const see = (focus: PaneFocus): Focused => focused(focus, filled, demoKit)!;

describe("a face in the elevation", () => {
  it("is tiled by its parts and its band openings, as the fill promises", () => {
    for (const [index, face] of faces.entries()) {
      const { parts } = drawnFace(filled, demoKit, index);
      const area = parts.reduce((sum, { width, height }) => sum + width * height, 0);
      const open = face.openings
        .filter(({ formed }) => formed === "band")
        .reduce((sum, { width, sill, head }) => sum + width * (Math.min(head, face.height) - sill), 0);
      expect(area + open).toBe(face.length * face.height);
    }
  });

  it("stands at the height its stack adds up to", () => {
    const sums = faces.map((_, k) =>
      drawnFace(filled, demoKit, k).stack.reduce((sum, { height }) => sum + height, 0),
    );
    expect(sums).toEqual(faces.map(({ height }) => height));
  });

  it("has its ties at joints, and inside its length", () => {
    let ties = 0;
    for (const [index, face] of faces.entries()) {
      const drawn = drawnFace(filled, demoKit, index);
      const edges = new Set(drawn.parts.flatMap(({ x, width }) => [x, x + width]));
      for (const { x } of drawn.ties) {
        ties += 1;
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(face.length);
        expect(edges).toContain(x);
      }
    }
    expect(ties).toBe(filled.fill.ties.length * 2);
  });

  it("stands in a ring with every other face of its room, each once, always from the same one on", () => {
    for (const room of filled.fill.rooms) {
      const own = room.faces.map((id) => faces.findIndex((face) => face.id === id));
      const ring = ringOf(filled, own[0]!);
      for (const index of ring) {
        expect(own).toContain(index);
        expect(ringOf(filled, index)).toEqual(ring);
      }
      expect(new Set(ring).size).toBe(ring.length);
    }
  });
});

describe("the focus", () => {
  it("goes to the longest face in a room of the wall that is selected", () => {
    const wall = unit.walls[0]!.id;
    const focus = focusOn(null, { unit: unit.id, faces, own: facesOf(wall) })!;
    const own = faces.filter(({ walls, room }) => walls.includes(wall) && room !== null);
    const face = faces.find(({ id }) => id === focus.face)!;
    expect(face.length).toBe(Math.max(...own.map(({ length }) => length)));
  });

  it("stays in the room that is selected, told by the place of its name", () => {
    // The names alone would not tell them apart.
    const rooms = Object.fromEntries(
      Object.entries(plan.rooms).map(([key, label]) => [key, { ...label, name: "Room" }]),
    );
    for (const { id, name } of Object.values(plan.rooms)) {
      const own = selectedFaces({ ...plan, rooms }, [{ bucket: "rooms", id }], filled);
      const elsewhere = at(faces.find(({ room }) => room !== name)!.id);
      for (const given of [null, elsewhere]) {
        const focus = focusOn(given, { unit: unit.id, faces, own })!;
        expect(faces.find((face) => face.id === focus.face)?.room).toBe(name);
      }
    }
  });

  it.each([
    { why: "a pin shows its wall", bucket: "pinned", id: "p", wall: "w1" },
    {
      why: "a window shows its wall",
      bucket: "openings",
      id: unit.openings[0]!.id,
      wall: unit.openings[0]!.wall,
    },
    { why: "a control line has no faces", bucket: "controlLines", id: "X1", wall: null },
  ] as const)("$why", ({ bucket, id, wall }) => {
    const pinned = { p: { id: "p", rank: 0, wall: "w1", from: 0, widths: [600] } };
    const own = selectedFaces({ ...plan, pinned }, [{ bucket, id }], filled);
    const wanted = faces.filter(({ walls }) => wall !== null && walls.includes(wall));
    expect(own).toEqual(wall === null ? null : wanted);
  });

  it.each([
    { why: "its face is gone", focus: at("H/f999") },
    { why: "its face is of another wall", focus: at(faces.find(({ walls }) => !walls.includes("w1"))!.id) },
    { why: "it is of another unit", focus: { ...at(faces[0]!.id), unit: "other" } },
  ])("is chosen anew where $why", ({ focus }) => {
    const next = focusOn(focus, { unit: unit.id, faces, own: facesOf("w1") })!;
    expect(faces.find(({ id }) => id === next.face)?.walls).toContain("w1");
    expect(next.unit).toBe(unit.id);
  });

  it("comes to every face of a wall by going to the other face again and again", () => {
    for (const { id } of unit.walls) {
      let focus = focusOn(null, { unit: unit.id, faces, own: facesOf(id) })!;
      const seen = new Set<string>();
      for (let k = 0; k < 12; k++) {
        seen.add(focus.face);
        focus = otherFace(focus, faces);
      }
      expect(seen.size).toBeGreaterThan(1);
    }
  });

  it("never leaves the fill however it is walked, and says something wherever it is", () => {
    const keys = fc.array(fc.constantFrom("left", "right", "in", "out"), { maxLength: 40 });
    fc.assert(
      fc.property(fc.nat(faces.length - 1), keys, (first, walk) => {
        let now = see(at(faces[first]!.id));
        for (const key of walk) {
          const next =
            key === "in"
              ? stepIn(now)
              : key === "out"
                ? stepOut(now)
                : stepAside(now, key === "left" ? -1 : 1, filled);
          now = see(next);
          expect(focusText(now, speech, [])).not.toMatch(/[{}]|undefined/);
          if (now.focus.level === "piece") expect(now.part).not.toBeNull();
          if (now.focus.level === "stretch") expect(now.seen).not.toBeNull();
        }
      }),
      { seed: 1905, numRuns: 150 },
    );
  });

  it("walks all pieces of a face from the first to the last by the right arrow", () => {
    let now = see(stepIn(see(stepIn(see(at(faces[1]!.id))))));
    const { parts } = now.drawn;
    for (let k = parts.indexOf(now.part!) + 1; k < parts.length; k++) {
      now = see(stepAside(now, 1, filled));
      expect(now.part).toBe(parts[k]);
    }
    expect(stepAside(now, 1, filled)).toBe(now.focus);
  });
});

describe("the reasons", () => {
  const fillersAt = faces.flatMap((face, index) =>
    drawnFace(filled, demoKit, index)
      .parts.filter(({ kind, z, reason }) => kind === "filler" && z === 0 && reason !== null)
      .map((part) => ({ face, part })),
  );

  it("of each filler name the interval's two joints and an arithmetic that adds up", () => {
    let told = 0;
    for (const { face, part } of fillersAt) {
      const now = see(at(face.id, { level: "piece", x: part.x, z: 0 }));
      const because = becauseOf(now, given, false);
      if (because?.joints === null || because === null) continue;
      told += 1;
      const [left, right] = because.joints;
      expect(right.x - left.x).toBe(now.seen!.length);
      for (const { key, values } of because.arithmetic) {
        if (key !== "because.remains") continue;
        expect(Number(values.rest) + Number(values.taken)).toBe(now.seen!.length);
      }
    }
    expect(told).toBeGreaterThan(10);
  });

  it("give the rule with the origin the kit states for it", () => {
    const { face, part } = fillersAt.find(({ part }) => part.width === 100)!;
    const because = becauseOf(see(at(face.id, { level: "piece", x: part.x })), given, false)!;
    const leg = because.rules.find(({ name }) => name === "cornerLeg");
    expect(leg?.rule).toEqual({ value: "150", unit: "mm", origin: demoKit.rules.cornerLeg?.origin });
  });

  it("say that a rule is missing where the kit has none", () => {
    const { tieEdge: _, ...rules } = demoKit.rules;
    const index = faces.findIndex((_, k) => drawnFace(filled, demoKit, k).ties.length > 0);
    const { ties } = drawnFace(filled, demoKit, index);
    const now = see(at(faces[index]!.id, { level: "tie", x: ties[0]!.x }));
    const because = becauseOf(now, { ...given, kit: { ...demoKit, rules } }, false)!;
    expect(because.rules.find(({ name }) => name === "tieEdge")?.rule).toBeNull();
  });
});

describe("numbers of problems", () => {
  it("are those of the list, which knows of soffits as well and tells errors first", () => {
    const problem = (message: string, face: string): Problem => ({
      ...{ severity: "error", kind: "band-uncovered", message },
      where: { face, x: 100 },
    });
    const [a, b, soffit] = [problem("gap", "A/f1"), problem("gap", "A/f2"), problem("no strip", "")];
    const list = [soffit, b, a].map((each, k) => ({ number: k + 1, problem: each }));
    expect(problemNumbers([a, b, problem("new", "A/f1")], list)).toEqual([3, 2, 0]);
  });
});

describe("what a dropped file is", () => {
  // PNG: ISO/IEC 15948, 5.2. JPEG: ISO/IEC 10918-1, B.1.1.3 (SOI, then a marker). PDF: ISO 32000-1, 7.5.2.
  it.each([
    { why: "a PNG", bytes: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a], sort: "image/png" },
    { why: "a JPEG", bytes: [0xff, 0xd8, 0xff, 0xe0], sort: "image/jpeg" },
    { why: "a PDF", bytes: [0x25, 0x50, 0x44, 0x46, 0x2d], sort: "pdf" },
    { why: "an SVG, which may hold a script", bytes: [0x3c, 0x73, 0x76, 0x67], sort: null },
    { why: "a GIF", bytes: [0x47, 0x49, 0x46, 0x38], sort: null },
    { why: "nothing", bytes: [], sort: null },
  ])("is told by its first bytes: $why", ({ bytes, sort }) => {
    expect(sortOf(new Uint8Array(bytes))).toBe(sort);
  });
});
