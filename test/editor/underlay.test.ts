import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { startEditor, takeStep, takeTool, unitInHand, walk } from "../../src/editor/state/editorState.ts";
import {
  calibrated,
  LONGEST_IMAGE,
  laidUnder,
  picturePlaceOf,
  planPlaceOf,
  readUnderlay,
  turnedTo,
  type Underlay,
  underlayJson,
} from "../../src/editor/underlay/underlay.ts";
import { words } from "../../src/editor/words/say.ts";
import type { JsonObject } from "../../src/json/value.ts";
import { documentToProject, projectToDocument } from "../../src/plan/documentProject.ts";
import { readProject } from "../../src/plan/read.ts";
import { writeProject } from "../../src/plan/write.ts";
import { documentOf, twoRooms } from "../plan/editFixture.ts";
import { sampleProject } from "../support/samples.ts";
import { play } from "./fixture.ts";

const PICTURE = { name: "plan.png", image: "data:image/png;base64,iVBORw0KGgo=", width: 1000, height: 800 };
/** Ten metres wide, its lower left corner at 0, 0: ten millimetres to the pixel. */
const LAID = laidUnder(PICTURE, { middle: [5000, 4000], width: 10_000 });

const turned = fc.record({
  middle: fc.tuple(fc.integer({ min: -50_000, max: 50_000 }), fc.integer({ min: -50_000, max: 50_000 })),
  width: fc.integer({ min: 100, max: 100_000 }),
  turn: fc.constantFrom({ cosine: 1, sine: 0 }, { cosine: 0, sine: 1 }, { cosine: 0.6, sine: -0.8 }),
});

function anyUnderlay(): fc.Arbitrary<Underlay> {
  return turned.map(({ middle, width, turn }) => turnedTo(laidUnder(PICTURE, { middle, width }), turn));
}

describe("where a picture lies", () => {
  it("is found from the plan as from the picture", () => {
    fc.assert(
      fc.property(anyUnderlay(), fc.nat(1000), fc.nat(800), (underlay, u, v) => {
        const [backU, backV] = picturePlaceOf(underlay, planPlaceOf(underlay, [u, v]));
        expect(backU).toBeCloseTo(u, 6);
        expect(backV).toBeCloseTo(v, 6);
      }),
      { seed: 31, numRuns: 100 },
    );
  });

  it("turns about its middle", () => {
    const quarter = turnedTo(LAID, { cosine: 0, sine: 1 });
    expect(planPlaceOf(quarter, [500, 400])).toEqual([5000, 4000]);
    // The lower right corner, 5000 right and 4000 below the middle, comes to 4000 right and 5000 above it.
    expect(planPlaceOf(quarter, [1000, 0])).toEqual([9000, 9000]);
  });
});

describe("calibrating", () => {
  it("makes the two places as far apart as was typed and leaves the first where it was", () => {
    const distance = fc.double({ min: 100, max: 20_000, noNaN: true });
    fc.assert(
      fc.property(anyUnderlay(), distance, (underlay, wanted) => {
        const a = planPlaceOf(underlay, [100, 100]);
        const b = planPlaceOf(underlay, [700, 300]);
        const scaled = calibrated(underlay, { from: a, to: b, distance: wanted })!;
        const [ax, ay] = planPlaceOf(scaled, [100, 100]);
        const [bx, by] = planPlaceOf(scaled, [700, 300]);
        expect(Math.sqrt((bx - ax) ** 2 + (by - ay) ** 2)).toBeCloseTo(wanted, 5);
        expect([ax, ay][0]).toBeCloseTo(a[0], 5);
        expect([ax, ay][1]).toBeCloseTo(a[1], 5);
      }),
      { seed: 32, numRuns: 100 },
    );
  });

  it.each([
    { why: "one place twice", from: [0, 0], to: [0, 0], distance: 1000 },
    { why: "no distance", from: [0, 0], to: [100, 0], distance: 0 },
    { why: "a picture larger than any plan", from: [0, 0], to: [1, 0], distance: 1e9 },
  ] as const)("is refused for $why", ({ from, to, distance }) => {
    expect(calibrated(LAID, { from, to, distance })).toBeNull();
  });
});

describe("the record in the project", () => {
  it("comes back as it was, through the file and without a warning", () => {
    const [unit, ...others] = sampleProject("one-room").units;
    const project = {
      ...sampleProject("one-room"),
      units: [{ ...unit!, underlay: underlayJson(LAID) }, ...others],
    };
    const again = readProject(writeProject(documentToProject(projectToDocument(project))));
    expect(again).toEqual({ status: "ok", project, warnings: [] });
    if (again.status !== "ok") return;
    expect(readUnderlay(again.project.units[0]?.underlay)).toEqual({ status: "ok", underlay: LAID });
  });

  const good = underlayJson(LAID);
  it.each<{ why: string; json: JsonObject }>([
    { why: "a picture from elsewhere", json: { ...good, image: "https://example.com/plan.png" } },
    { why: "a script in place of a picture", json: { ...good, image: "javascript:alert(1)" } },
    {
      why: "a drawing that may hold a script",
      json: { ...good, image: "data:image/svg+xml;base64,PHN2Zz4=" },
    },
    { why: "signs that are no base64", json: { ...good, image: 'data:image/png;base64," onload="x' } },
    {
      why: "a picture too large",
      json: { ...good, image: `data:image/png;base64,${"A".repeat(LONGEST_IMAGE)}` },
    },
    { why: "a side of nothing", json: { ...good, width: 0 } },
    { why: "a place outside the plan", json: { ...good, at: [1e9, 0] } },
    { why: "no scale", json: { ...good, scale: 0 } },
    { why: "a turn that stretches", json: { ...good, turn: { cosine: 1, sine: 1 } } },
    { why: "a picture not to be seen", json: { ...good, opacity: 0 } },
    { why: "a word for locked", json: { ...good, locked: "no" } },
    { why: "nothing at all", json: {} },
  ])("is refused for $why", ({ json }) => {
    expect(readUnderlay(json).status).toBe("invalid");
  });

  it("is none where there is none", () => expect(readUnderlay(undefined)).toEqual({ status: "none" }));
});

describe("the tool that sets the scale", () => {
  function editorWith(underlay: Underlay | null) {
    const start = startEditor(documentOf(twoRooms()));
    const unit = unitInHand(start).id;
    const edit = {
      kind: "set-underlay",
      unit,
      underlay: underlay === null ? null : underlayJson(underlay),
    } as const;
    return takeTool(takeStep(start, words("step.calibrate"), [edit], []), "calibrate");
  }
  const shown = (state: ReturnType<typeof editorWith>) => {
    const answer = readUnderlay(unitInHand(state).underlay);
    return answer.status === "ok" ? answer.underlay : null;
  };
  const press = { shift: false, alt: false, ctrl: false };
  const at = (kind: "press" | "move" | "release", x: number, y: number) =>
    ({ kind, at: [x, y], hit: null, modifiers: press }) as const;
  const click = (x: number, y: number) => [at("press", x, y), at("release", x, y)] as const;

  it("takes two clicks and a distance, and makes one step that one undo takes back", () => {
    const before = editorWith(LAID);
    const after = play(before, ...click(1000, 1000), ...click(3000, 1000), "4", "000", "Enter");
    expect(shown(after)?.scale).toBe(20);
    expect(planPlaceOf(shown(after)!, [100, 100])).toEqual([1000, 1000]);
    expect(after.history.past.length).toBe(before.history.past.length + 1);
    expect(shown(walk(after, "undo") as typeof after)).toEqual(LAID);
  });

  it("drags the picture, not one that is locked", () => {
    const drag = [at("press", 1000, 1000), at("move", 1500, 1200), at("release", 1600, 1200)] as const;
    expect(shown(play(editorWith(LAID), ...drag))?.at).toEqual([600, 200]);
    expect(shown(play(editorWith({ ...LAID, locked: true }), ...drag))?.at).toEqual([0, 0]);
  });

  it.each([
    { why: "Escape", end: ["Escape"] as const },
    { why: "a distance of nothing", end: ["0", "Enter"] as const },
    { why: "Enter with nothing typed", end: ["Enter"] as const },
  ])("leaves the picture as it was after $why", ({ end }) => {
    const before = editorWith(LAID);
    const after = play(before, ...click(1000, 1000), ...click(3000, 1000), ...end);
    expect(after.history.doc).toBe(before.history.doc);
  });

  it.each([
    { why: "there is none", underlay: null, place: [1000, 1000] },
    { why: "the click is beside it", underlay: LAID, place: [-5000, 0] },
  ] as const)("says so where $why", ({ underlay, place: [x, y] }) => {
    expect(play(editorWith(underlay), at("press", x, y)).session.message).not.toBeNull();
  });
});
