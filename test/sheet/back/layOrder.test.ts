// The order of laying overhead: what is laid rests on something that stands, and each band runs away from its first piece
// to the door.

import { describe, expect, it } from "vitest";
import type { FilledFace, Soffit } from "../../../src/fill/result.ts";
import { roomPartsOf } from "../../../src/fill/roomParts.ts";
import type { Position } from "../../../src/plan/project.ts";
import { sheetRings } from "../../../src/sheet/faceOrder.ts";
import { bandNames, bandsOf, isLaid } from "../../../src/sheet/soffit/bands.ts";
import { oneRoomInfo } from "../../support/fixtureFill.ts";
import { filled, sampleProject } from "../../support/samples.ts";

const info = oneRoomInfo();
const SAMPLES = ["one-room", "two-bedroom", "mirrored-pair", "row-of-three", "awkward"];
const rooms = SAMPLES.flatMap((name) =>
  filled(sampleProject(name)).units.flatMap((unit) =>
    roomPartsOf(unit).flatMap((parts) => {
      const bands = bandsOf(parts.soffits, sheetRings(parts.faces, info));
      return parts.soffits.map((soffit, k) => ({
        name,
        room: soffit.room,
        soffit,
        faces: parts.faces,
        bands: bands[k]!,
      }));
    }),
  ),
);

function span(outline: readonly Position[], axis: 0 | 1): readonly [number, number] {
  const values = outline.map((point) => point[axis]);
  return [Math.min(...values), Math.max(...values)];
}

/** Whether the rectangles round two outlines share part of a side. */
function meet(a: readonly Position[], b: readonly Position[]): boolean {
  const shared = ([0, 1] as const).map((axis) => {
    const [p, q] = [span(a, axis), span(b, axis)];
    return Math.min(p[1], q[1]) - Math.max(p[0], q[0]);
  });
  const [x, y] = [shared[0]!, shared[1]!];
  return (Math.abs(x) < 1 && y > 1) || (Math.abs(y) < 1 && x > 1);
}

/** On which sides across the bands the room has a door: toward lesser and toward greater values. */
function doorSides(
  faces: readonly FilledFace[],
  axis: 0 | 1,
  soffit: Soffit,
): { low: boolean; high: boolean } {
  const [least, most] = span(soffit.outline, axis);
  const doors = faces.filter(({ openings }) =>
    openings.some(({ sill, formed }) => sill === 0 && formed === "band"),
  );
  const lies = (at: number) =>
    doors.some(({ from, to }) => Math.abs(from[axis] - at) < 5 && Math.abs(to[axis] - at) < 5);
  return { low: lies(least), high: lies(most) };
}

describe.each(rooms)("overhead in $room of $name", ({ soffit, bands, faces }) => {
  it("letters every panel and plank once, and numbers each band from 1", () => {
    const names = bandNames(bands);
    const laid = soffit.pieces.filter(isLaid).map(({ piece }) => piece);
    expect(Object.keys(names).sort()).toEqual([...laid].sort());
    const shown = Object.values(names).map(({ letters, number }) => `${letters}${number}`);
    expect(new Set(shown).size).toBe(shown.length);
    for (const { letter, pieces } of bands) {
      expect(pieces.map(({ piece }) => names[piece])).toEqual(
        pieces.map((_, k) => ({ letters: letter, number: k + 1 })),
      );
    }
  });

  it("keeps the order of the fill", () => {
    expect(bands.flatMap(({ pieces }) => pieces)).toEqual(soffit.pieces.filter(isLaid));
  });

  it("lays nothing that touches no connector, no strip and nothing laid before", () => {
    const standing = soffit.pieces.filter((piece) => !isLaid(piece)).map(({ outline }) => outline);
    for (const { pieces } of bands) {
      for (const { piece, outline } of pieces) {
        const isHeld = standing.some((other) => meet(other, outline));
        // Beside what is not built a piece may hang free: that is a problem of its own.
        const isByGap = soffit.unfilled.some((gap) => meet(gap.outline, outline));
        expect([piece, isHeld || isByGap]).toEqual([piece, true]);
        standing.push(outline);
      }
    }
  });

  it("lays each band side by side, from the end away from the door", () => {
    const axis = soffit.along === "x" ? 1 : 0;
    const { low, high } = doorSides(faces, axis, soffit);
    for (const { pieces } of bands) {
      const middles = pieces.map(({ outline }) => {
        const [from, to] = span(outline, axis);
        return (from + to) / 2;
      });
      const steps = middles.slice(1).map((at, k) => Math.sign(at - middles[k]!));
      expect(new Set(steps).size).toBeLessThanOrEqual(1);
      if (soffit.isSlab === true || low === high || steps.length === 0) continue;
      expect(steps[0]).toBe(low ? -1 : 1);
    }
  });
});
