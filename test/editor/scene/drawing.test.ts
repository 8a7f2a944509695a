// What is really drawn: recorded stroke by stroke and held against what there is to draw.

import { describe, expect, it } from "vitest";
import { pieceRing, piecesInView } from "../../../src/editor/scene/drawPieces.ts";
import { drawPlan } from "../../../src/editor/scene/drawPlan.ts";
import { drawGrid, drawGround } from "../../../src/editor/scene/ground.ts";
import { placeLabels } from "../../../src/editor/scene/labels.ts";
import { type PieceKind, type ScenePiece, scenePieces } from "../../../src/editor/scene/pieces.ts";
import { placeRings, RING_RADIUS } from "../../../src/editor/scene/rings.ts";
import type { Scene } from "../../../src/editor/scene/scene.ts";
import { fillerTone } from "../../../src/editor/theme/palette.ts";
import type { Problem } from "../../../src/fill/result.ts";
import { type Recorder, recordingPen, type Stroke } from "./recordingPen.ts";
import { openSample, paletteOf, sceneOf } from "./sampleScene.ts";

const sample = openSample("two-bedroom");
const light = paletteOf("light");

function draw(change: Parameters<typeof sceneOf>[1] = {}): readonly Stroke[] {
  const { pen, strokes } = recordingPen();
  drawPlan(pen, sceneOf(sample, change));
  return strokes;
}

function texts(strokes: readonly Stroke[]): readonly string[] {
  return strokes.filter(({ kind }) => kind === "text").map(({ text }) => text);
}

describe("the plan", () => {
  it("leaves the pen as it was found", () => {
    const recorder: Recorder = recordingPen();
    recorder.pen.save();
    drawPlan(recorder.pen, sceneOf(sample));
    expect(() => recorder.pen.restore()).not.toThrow();
    expect(() => recorder.pen.restore()).toThrow();
  });

  it("draws no piece from afar, and fillers in their tones when nearer", () => {
    const tones = [100, 200, 300].map((width) => fillerTone(light, width));
    const fills = (scale: number) => new Set(draw({ scale }).map(({ colour }) => colour));
    const far = fills(0.02);
    const near = fills(0.04);
    for (const tone of [...tones, light.corner]) {
      expect(far.has(tone)).toBe(false);
      expect(near.has(tone)).toBe(true);
    }
  });

  it("writes the widths of fillers at room zoom and those of standard panels only near or for the selected wall", () => {
    const room = texts(draw({ scale: 0.075 }));
    expect(room).toContain("100");
    expect(room).not.toContain("600");
    expect(texts(draw({ scale: 0.3 }))).toContain("600");
    expect(texts(draw({ scale: 0.075, selectedWalls: new Set(["w8"]) }))).toContain("600");
    expect(texts(draw({ scale: 0.075, allWidths: true }))).toContain("600");
  });

  it("names every room, and gives the area where there is room for it", () => {
    const room = texts(draw());
    for (const { name } of sample.live.fill.rooms) expect(room).toContain(name);
    expect(room).toContain("12.9 m²");
    expect(texts(draw({ scale: 0.02 }))).not.toContain("12.9 m²");
  });

  it("writes the overall dimensions of the concrete", () => {
    expect(texts(draw())).toEqual(expect.arrayContaining(["11\u202f000", "7\u202f600"]));
  });

  it("names walls only at joint zoom", () => {
    expect(texts(draw({ scale: 0.3 })).some((text) => text.startsWith("Wall "))).toBe(false);
    expect(texts(draw({ scale: 0.6 })).some((text) => text.startsWith("Wall "))).toBe(true);
  });

  it("shows the walls alone while the fill is that of an earlier state", () => {
    const strokes = draw({ isStale: true });
    expect(strokes.some(({ colour }) => colour === light.corner)).toBe(false);
    expect(strokes.some(({ colour, kind }) => colour === light.concrete && kind === "fill")).toBe(true);
  });

  it("draws nothing but the paper of an empty plan", () => {
    const { pen, strokes } = recordingPen();
    const unit = {
      ...sample.unit,
      walls: {},
      openings: {},
      rooms: {},
      services: {},
      controlLines: {},
      slabs: {},
      slabOpenings: {},
    };
    drawPlan(pen, sceneOf(sample, { unit, live: null, problems: [] }));
    expect(strokes.flatMap(({ points }) => points)).toEqual([]);
    expect(texts(strokes)).toEqual([]);
  });
});

describe("what is off the screen", () => {
  it("is not gone through", () => {
    const all = piecesInView(sceneOf(sample));
    const scene = sceneOf(sample, { scale: 1 });
    const near = piecesInView(scene);
    expect(all).toHaveLength(scenePieces(sample.live).all.length);
    expect(near.length).toBeLessThan(all.length / 4);
    const view = scene.viewport;
    for (const piece of all) {
      const isSeen = pieceRing(view, piece).some(
        ([x, y]) => x >= 0 && y >= 0 && x <= view.width && y <= view.height,
      );
      if (isSeen) expect(near).toContain(piece);
    }
  });
});

describe("a closure strip", () => {
  const strip = (width: number): ScenePiece => ({
    ...{ id: "c", kind: "closure" as PieceKind, code: "c", face: "f", walls: [], x: 0, width },
    corners: [
      [0, 0],
      [width, 0],
      [width, -65],
      [0, -65],
    ],
    ...{ minX: 0, minY: -65, maxX: width, maxY: 0 },
    ...{ isUnderCut: false, isFirstOut: false, needsTwo: false },
  });
  it.each([
    [10, 0.06, 3],
    [25, 0.09, 3],
    [40, 0.1, 4],
    [90, 0.1, 9],
  ])("%i mm wide at %f px/mm is drawn %i px wide", (width, scale, expected) => {
    const ring = pieceRing({ centre: [0, 0], scale, width: 400, height: 400 }, strip(width));
    const xs = ring.map(([x]) => x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(expected, 6);
  });
});

describe("labels", () => {
  const boxOf = (label: ReturnType<typeof placeLabels>[number]) => {
    const isUpright = Math.abs(Math.sin(label.turn)) > 0.5;
    const long = (label.text.length * 6) / 2;
    const [across, upright] = isUpright ? [4.5, long] : [long, 4.5];
    const [x, y] = label.at;
    return { left: x - across, right: x + across, top: y - upright, bottom: y + upright };
  };
  it.each([0.06, 0.075, 0.12, 0.3, 0.7])("never touch each other at %f px/mm", (scale) => {
    const scene: Scene = sceneOf(sample, { scale, allWidths: true });
    const boxes = placeLabels(scene).map(boxOf);
    expect(boxes.length).toBeGreaterThan(5);
    boxes.forEach((a, i) => {
      for (const b of boxes.slice(i + 1)) {
        const touch = a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
        expect(touch).toBe(false);
      }
    });
  });

  it("read from below or from the right", () => {
    for (const { turn } of placeLabels(sceneOf(sample, { allWidths: true }))) {
      expect(turn).toBeGreaterThanOrEqual(-Math.PI / 2 - 1e-6);
      expect(turn).toBeLessThan(Math.PI / 2);
    }
  });

  it("give the widths of fillers their place first", () => {
    const labels = placeLabels(sceneOf(sample, { allWidths: true }));
    const fillers = new Set(labels.filter(({ kind }) => kind === "filler").map(({ piece }) => piece));
    const bare = placeLabels(sceneOf(sample)).filter(({ kind }) => kind === "filler");
    for (const { piece } of bare) expect(fillers.has(piece)).toBe(true);
  });
});

describe("rings of problems", () => {
  const crowd = Array.from({ length: 10 }, (_, k) => {
    const problem: Problem = {
      severity: k % 2 === 0 ? "error" : "warning",
      kind: "test",
      message: "",
      where: {},
    };
    return { number: k + 1, problem, at: [9000 + k * 60, 2000 + k * 35] as const };
  });
  it("stand apart from each other, ten in one room", () => {
    const rings = placeRings(sceneOf(sample, { problems: crowd }));
    rings.forEach((a, i) => {
      for (const b of rings.slice(i + 1)) {
        const gap = Math.sqrt((a.centre[0] - b.centre[0]) ** 2 + (a.centre[1] - b.centre[1]) ** 2);
        expect(gap).toBeGreaterThan(2 * RING_RADIUS);
      }
    });
  });

  it("carry the number of the list, an error with a second ring", () => {
    const count = (severity: Problem["severity"]) => {
      const problem: Problem = { severity, kind: "test", message: "", where: {} };
      const problems = [{ number: 7, problem, at: [9000, 2000] as const }];
      const strokes = draw({ problems });
      expect(texts(strokes)).toContain("7");
      return strokes.filter(({ kind, colour }) => kind === "stroke" && colour === light.fault).length;
    };
    expect(count("error")).toBe(count("warning") + 1);
  });

  it("leave out what stands nowhere in the plan", () => {
    const problem: Problem = { severity: "warning", kind: "test", message: "", where: { code: "X" } };
    expect(placeRings(sceneOf(sample, { problems: [{ number: 1, problem, at: null }] }))).toEqual([]);
  });
});

describe("the ground", () => {
  it("covers the whole drawing before the dots of the grid", () => {
    const { pen, strokes } = recordingPen();
    const { viewport } = sceneOf(sample);
    drawGround(pen, viewport, light);
    drawGrid(pen, viewport, light);
    const [first, ...dots] = strokes;
    expect(first).toMatchObject({
      colour: light.ground,
      points: [
        [0, 0],
        [1440, 676],
      ],
    });
    expect(dots.length).toBeGreaterThan(100);
    expect(dots.length).toBeLessThan(2000);
    expect(new Set(dots.map(({ colour }) => colour))).toEqual(new Set([light.grid]));
  });
});
