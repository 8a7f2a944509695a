// The soffit over the plan: everything the fill has is there, and drawn so that walls stay on top.

import { describe, expect, it } from "vitest";
import { drawPlan } from "../../../src/editor/scene/drawPlan.ts";
import { drawSoffit, propRadius, sizeLabels } from "../../../src/editor/scene/drawSoffit.ts";
import type { Scene } from "../../../src/editor/scene/scene.ts";
import { focusOf, soffitAt, soffitId, soffitThing } from "../../../src/editor/scene/soffitHit.ts";
import { middleOf, sceneSoffit } from "../../../src/editor/scene/soffitPieces.ts";
import { toScreen } from "../../../src/editor/scene/viewport.ts";
import { fillerTone } from "../../../src/editor/theme/palette.ts";
import { serializeKit } from "../../../src/kit/serialize.ts";
import { recordingPen, type Stroke } from "./recordingPen.ts";
import { filled, openSample, paletteOf, sceneOf } from "./sampleScene.ts";

const sample = openSample("two-bedroom");
const { live } = sample;
const light = paletteOf("light");

function drawn(change: Partial<Scene> & { scale?: number } = {}, draw = drawSoffit): readonly Stroke[] {
  const { pen, strokes } = recordingPen();
  draw(pen, sceneOf(sample, { showsSoffit: true, ...change }));
  return strokes;
}

describe("the soffit of a fill", () => {
  it("has every piece and every prop of the fill, each once", () => {
    const { shapes, props } = sceneSoffit(live);
    const pieces = live.fill.soffits.flatMap((soffit) => soffit.pieces);
    expect(shapes.map(({ id }) => id)).toEqual(pieces.map(({ piece }) => piece));
    expect(props.map(({ prop }) => prop)).toEqual(live.fill.soffits.flatMap((soffit) => soffit.props));
    expect(sceneSoffit(live)).toBe(sceneSoffit(live));
  });

  it("counts fillers and closures as the fill does", () => {
    const { shapes } = sceneSoffit(live);
    for (const soffit of live.fill.soffits) {
      const own = (kind: string) => shapes.filter((shape) => shape.soffit === soffit && shape.kind === kind);
      expect(own("filler")).toHaveLength(soffit.counts.fillers);
      expect(own("closure")).toHaveLength(soffit.counts.closures);
      expect(own("panel").length + own("filler").length).toBe(soffit.counts.panels);
    }
  });

  it("gives the sides of what is a rectangle, the shorter first", () => {
    for (const { size, minX, maxX, minY, maxY, outline } of sceneSoffit(live).shapes) {
      if (outline.length !== 4) continue;
      const [a, b] = [maxX - minX, maxY - minY];
      expect(size).toEqual([Math.min(a, b), Math.max(a, b)]);
    }
  });
});

describe("what lies at a place of the soffit", () => {
  it("is each piece at its own middle, and each prop at its head", () => {
    const { shapes, props } = sceneSoffit(live);
    for (const shape of shapes) {
      if (shape.size === null) continue;
      expect(soffitAt(live, middleOf(shape), 0)).toEqual({ kind: "shape", shape });
    }
    for (const { prop } of props) {
      const thing = soffitAt(live, [prop.at[0] + 20, prop.at[1]], 60);
      expect(thing === null ? null : soffitId(thing)).toBe(prop.piece);
    }
  });

  it("is nothing outside, and nothing while the soffits are on their way", () => {
    expect(soffitAt(live, [-9000, 0], 100)).toBeNull();
    const [{ prop } = { prop: null }] = sceneSoffit(live).props;
    expect(soffitAt({ ...live, hasSoffits: false }, prop?.at ?? [0, 0], 60)).toBeNull();
  });

  it("is found again by the place that is kept of it", () => {
    const { shapes, props } = sceneSoffit(live);
    const things = [
      ...props.slice(0, 9).map((place) => ({ kind: "prop", place }) as const),
      ...shapes
        .filter(({ kind }) => kind !== "connector")
        .map((shape) => ({ kind: "shape", shape }) as const),
    ];
    for (const thing of things) {
      const { at, reach } = focusOf("H", thing);
      const found = soffitAt(live, at, reach);
      expect(found).toEqual(thing);
      expect(soffitThing(live, soffitId(thing))).toEqual(thing);
    }
    expect(soffitThing(live, "no such piece")).toBeNull();
  });
});

describe("the drawing of the soffit", () => {
  it("is there when it is asked for, near enough, and filled", () => {
    expect(drawn().length).toBeGreaterThan(0);
    expect(drawn({ showsSoffit: false })).toEqual([]);
    expect(drawn({ isStale: true })).toEqual([]);
    expect(drawn({ live: null })).toEqual([]);
    expect(drawn({ scale: 0.02 })).toEqual([]);
  });

  it("lies under the concrete: all of it is drawn before the first piece of a wall", () => {
    const whole = drawn({}, drawPlan);
    const own = drawn();
    const concrete = whole.findIndex(
      ({ kind, colour, points }) => kind === "fill" && colour === light.concrete && points.length > 20 * 4,
    );
    const isOwn = ({ kind, colour }: Stroke) => kind === "stroke" && colour === light.ink;
    const last = whole.findLastIndex((stroke) => own.some((each) => isOwn(each) && same(each, stroke)));
    expect(last).toBeGreaterThan(0);
    expect(concrete).toBeGreaterThanOrEqual(0);
    const walls = whole.findIndex(({ kind, colour }) => kind === "fill" && colour === light.corner);
    expect(last).toBeLessThan(walls);
  });

  it("shows every prop in view as a circle with a cross", () => {
    const scene = sceneOf(sample, { showsSoffit: true });
    const strokes = drawn();
    const centres = sceneSoffit(live).props.map(({ prop }) => toScreen(scene.viewport, prop.at));
    const [circles, crosses] = strokes.filter(({ kind, width }) => kind === "stroke" && width === 1.1);
    expect(circles?.points).toHaveLength(centres.length * 2);
    expect(crosses?.points).toHaveLength(centres.length * 4);
    for (const [x, y] of centres) expect(circles?.points).toContainEqual([x, y]);
  });

  it("gives fillers the tone of their narrower side", () => {
    const colours = new Set(drawn().map(({ colour }) => colour));
    const { shapes } = sceneSoffit(live);
    for (const shape of shapes.filter(({ kind }) => kind === "filler")) {
      expect(colours.has(fillerTone(light, shape.size?.[0] ?? 0))).toBe(true);
    }
  });

  it("never draws a prop larger than it may be, nor too small to be seen", () => {
    for (const scale of [0.004, 0.03, 0.08, 0.2, 0.6, 4]) {
      expect(propRadius(scale)).toBeGreaterThanOrEqual(3);
      expect(propRadius(scale)).toBeLessThanOrEqual(8);
    }
  });
});

describe("sizes in the soffit", () => {
  it.each([0.06, 0.09, 0.13, 0.3, 0.7])(
    "lie within their pieces at %d px per mm, clear of props",
    (scale) => {
      const scene = sceneOf(sample, { showsSoffit: true, scale, allWidths: true });
      const labels = sizeLabels(scene, sceneSoffit(live).shapes);
      if (scale > 0.1) expect(labels.length).toBeGreaterThan(10);
      for (const { shape, text, at, turn } of labels) {
        const [left, top] = toScreen(scene.viewport, [shape.minX, shape.maxY]);
        const [right, bottom] = toScreen(scene.viewport, [shape.maxX, shape.minY]);
        const [wide, high] = turn === 0 ? [text.length * 5.5, 9] : [9, text.length * 5.5];
        expect(at[0] - wide / 2).toBeGreaterThanOrEqual(left - 1);
        expect(at[0] + wide / 2).toBeLessThanOrEqual(right + 1);
        expect(at[1] - high / 2).toBeGreaterThanOrEqual(top - 1);
        expect(at[1] + high / 2).toBeLessThanOrEqual(bottom + 1);
        for (const { at: place } of shape.soffit.props) {
          const [x, y] = toScreen(scene.viewport, place);
          const isOver = Math.abs(x - at[0]) < wide / 2 && Math.abs(y - at[1]) < high / 2;
          expect(isOver).toBe(false);
        }
      }
    },
  );

  it("of standard panels are written when near or asked for", () => {
    const kinds = (change: Partial<Scene> & { scale?: number }) =>
      new Set(
        sizeLabels(sceneOf(sample, { showsSoffit: true, ...change }), sceneSoffit(live).shapes).map(
          ({ shape }) => shape.kind,
        ),
      );
    expect(kinds({ scale: 0.1 })).toEqual(new Set(["filler"]));
    expect(kinds({ scale: 0.1, allWidths: true }).has("panel")).toBe(true);
    expect(kinds({ scale: 0.3 }).has("panel")).toBe(true);
  });
});

describe("what cannot be built", () => {
  it("is crossed out in the colour of faults, and its problem stands in it", () => {
    const { document } = sample;
    const kit = {
      ...live.kit,
      pieces: live.kit.pieces.filter((piece) => piece.family !== "slab-panel" || piece.width >= 600),
    };
    const poor = filled({ ...document, kit: serializeKit(kit) });
    const open = sceneSoffit(poor.live).shapes.filter(({ kind }) => kind === "unfilled");
    expect(open.length).toBeGreaterThan(0);
    const { pen, strokes } = recordingPen();
    const scene = sceneOf(poor, { showsSoffit: true });
    drawSoffit(pen, scene);
    const faults = strokes.filter(({ kind, colour }) => kind === "stroke" && colour === light.fault);
    expect(faults).toHaveLength(open.length * 2);
    const told = scene.problems.filter(({ problem }) =>
      open.some((shape) => poor.live.fill.problems[shape.problem ?? -1] === problem),
    );
    expect(told.length).toBeGreaterThan(0);
    for (const { at } of told) {
      expect(
        open.some(
          ({ minX, maxX, minY, maxY }) =>
            at !== null && at[0] >= minX && at[0] <= maxX && at[1] >= minY && at[1] <= maxY,
        ),
      ).toBe(true);
    }
  });
});

function same(a: Stroke, b: Stroke): boolean {
  return a.kind === b.kind && a.colour === b.colour && JSON.stringify(a.points) === JSON.stringify(b.points);
}
