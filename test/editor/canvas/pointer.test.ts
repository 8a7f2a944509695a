// Wheel and pinch, and what the pointer is on.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cursorFor, pieceAt } from "../../../src/editor/canvas/hover.ts";
import { pinched } from "../../../src/editor/canvas/pinch.ts";
import { wheeled } from "../../../src/editor/canvas/usePointer.ts";
import { scenePieces } from "../../../src/editor/scene/pieces.ts";
import { type Pixel, toPlan, toScreen, type Viewport } from "../../../src/editor/scene/viewport.ts";
import type { Hit } from "../../../src/editor/snap/hit.ts";
import { startTool } from "../../../src/editor/tools/tool.ts";
import type { Position } from "../../../src/plan/project.ts";
import { openSample } from "../scene/sampleScene.ts";

const view: Viewport = { centre: [5000, 4000], scale: 0.1, width: 800, height: 600 };
const still = { deltaX: 0, deltaY: 0, deltaMode: 0, shiftKey: false, ctrlKey: false };

describe("the wheel", () => {
  it.each([
    [-100, "nearer"],
    [100, "further"],
  ])("by %i goes %s and keeps the place under the pointer", (deltaY, way) => {
    const after = { ...view, ...wheeled(view, { ...still, deltaY }, [200, 150]) };
    expect(after.scale > view.scale).toBe(way === "nearer");
    const [x, y] = toPlan(after, [200, 150]);
    const [a, b] = toPlan(view, [200, 150]);
    expect(x).toBeCloseTo(a, 6);
    expect(y).toBeCloseTo(b, 6);
  });

  it("comes back where it was by as much the other way", () => {
    const there = { ...view, ...wheeled(view, { ...still, deltaY: -120 }, [300, 300]) };
    expect(wheeled(there, { ...still, deltaY: 120 }, [300, 300]).scale).toBeCloseTo(view.scale, 12);
  });

  it("takes lines for lines, and never more than one step at a time", () => {
    const byLines = wheeled(view, { ...still, deltaY: -3, deltaMode: 1 }, [0, 0]).scale;
    expect(byLines).toBeCloseTo(wheeled(view, { ...still, deltaY: -90 }, [0, 0]).scale, 12);
    const huge = wheeled(view, { ...still, deltaY: -9000 }, [0, 0]).scale;
    expect(huge).toBeCloseTo(wheeled(view, { ...still, deltaY: -300 }, [0, 0]).scale, 12);
  });

  it("goes sideways with Shift", () => {
    const after = wheeled(view, { ...still, deltaY: 50, shiftKey: true }, [0, 0]);
    expect(after).toEqual({ scale: view.scale, centre: [5500, 4000] });
  });
});

describe("a pinch", () => {
  const finger = fc.tuple(fc.integer({ min: 0, max: 800 }), fc.integer({ min: 0, max: 600 }));
  it("keeps the paper under both fingers when they move apart or together in line", () => {
    fc.assert(
      fc.property(
        finger,
        finger,
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        finger,
        ([ax, ay], [bx, by], grow, [dx, dy]) => {
          fc.pre((ax - bx) ** 2 + (ay - by) ** 2 > 100);
          const place = ([x, y]: Pixel): Pixel => [x * grow + dx - 400, y * grow + dy - 300];
          const [a, b]: readonly Pixel[] = [
            [ax, ay],
            [bx, by],
          ];
          if (a === undefined || b === undefined) return;
          const corner: Pixel = [30, 40];
          const inside = ([x, y]: Pixel): Pixel => [x - corner[0], y - corner[1]];
          const next = pinched(view, {
            before: new Map([
              [1, a],
              [2, b],
            ]),
            after: new Map([
              [1, place(a)],
              [2, place(b)],
            ]),
            corner,
          });
          const after = { ...view, ...next };
          for (const each of [a, b]) {
            const [x, y] = toScreen(after, toPlan(view, inside(each)));
            const [u, v] = inside(place(each));
            expect(x).toBeCloseTo(u, 4);
            expect(y).toBeCloseTo(v, 4);
          }
        },
      ),
      { seed: 3102 },
    );
  });

  it("needs two fingers", () => {
    const one = new Map<number, Pixel>([[1, [0, 0]]]);
    expect(pinched(view, { before: one, after: one, corner: [0, 0] })).toBeNull();
  });
});

describe("what the pointer is on", () => {
  const { live, unit } = openSample("two-bedroom");

  it("is the piece whose rectangle it is in, while pieces show", () => {
    for (const piece of scenePieces(live).all) {
      // Inside corners overlap in the corner itself, where either leg may be found: it is one piece.
      const [a, , c] = piece.corners;
      const middle: Position = [(a[0] + c[0]) / 2, (a[1] + c[1]) / 2];
      const found = pieceAt(live, middle, 0.1);
      if (piece.isUnderCut) expect(found).not.toBe(piece.id);
      else expect(found, piece.id).toBe(piece.id);
      expect(pieceAt(live, middle, 0.01)).toBeNull();
    }
    expect(pieceAt(live, [6000, 2500], 0.1)).toBeNull();
    expect(pieceAt(null, [6000, 2500], 0.1)).toBeNull();
  });

  const item = (bucket: "walls" | "openings" | "rooms", id: string): Hit => ({
    kind: "item",
    item: { bucket, id },
  });
  const ROWS: readonly (readonly [hit: Hit | null, cursor: string, why: string])[] = [
    [item("walls", "w8"), "ns-resize", "a level wall moves up and down"],
    [item("walls", "w10"), "ew-resize", "an upright wall moves left and right"],
    [item("openings", "d3"), "ew-resize", "a door moves along its level wall"],
    [item("openings", "d2"), "ns-resize", "a door moves along its upright wall"],
    [item("rooms", "r1"), "move", "a name moves anywhere"],
    [{ kind: "end", wall: "w8", end: "to" }, "move", "a joint moves anywhere"],
    [{ kind: "dimension", key: "length" }, "text", "a figure can be typed"],
    [null, "default", "nothing there"],
  ];
  it.each(ROWS)("%j gives the pointer the shape %s: %s", (hit, cursor) => {
    expect(cursorFor(unit, startTool("select"), hit)).toBe(cursor);
  });

  it("is of no matter while something is drawn", () => {
    expect(cursorFor(unit, startTool("wall"), item("walls", "w8"))).toBe("crosshair");
    expect(cursorFor(unit, startTool("room"), null)).toBe("text");
  });
});
