// Joints at an angle, and drawings a little off, against corners worked out by hand.

import { expect, it } from "vitest";
import { loadUnion } from "../../src/geom/union.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import { outlineCorners } from "../support/outlineClaims.ts";
import { unitOf, type WallLine } from "../support/walls.ts";

const union = await loadUnion();
const outlineOf = (walls: readonly WallLine[]) => buildOutline(unitOf(walls), union);

function expectNear(
  found: readonly (readonly [number, number])[],
  expected: readonly (readonly [number, number])[],
) {
  expect(found.length).toBe(expected.length);
  found.forEach(([x, y], i) => {
    expect(x).toBeCloseTo(expected[i]![0], 6);
    expect(y).toBeCloseTo(expected[i]![1], 6);
  });
}

const HALF = 50 / Math.SQRT2; // half of 100 mm, across at 45°

it.each<{ why: string; walls: WallLine[]; ring: [number, number][]; angles: number[] }>([
  {
    why: "two walls that open at 135° meet 50·tan 22.5° beyond the node outside, short of it inside",
    walls: [
      [0, 0, 2000, 0, 100],
      [2000, 0, 3000, 1000, 100],
    ],
    ring: [
      [0, -50],
      [2000 + 50 * (Math.SQRT2 - 1), -50],
      [3000 + HALF, 1000 - HALF],
      [3000 - HALF, 1000 + HALF],
      [2000 - 50 * (Math.SQRT2 - 1), 50],
      [0, 50],
    ],
    angles: [90, 135, 90, 90, 225, 90],
  },
  {
    why: "a stem at 30° meets the face 50/tan 30° further on, 50/sin 30° to either side",
    walls: [
      [0, 0, 4000, 0, 100],
      [1000, 0, 1000 + 2000 * (Math.sqrt(3) / 2), 1000, 100],
    ],
    ring: [
      [0, -50],
      [4000, -50],
      [4000, 50],
      [1000 + 50 * Math.sqrt(3) + 100, 50],
      [1000 + 1000 * Math.sqrt(3) + 25, 1000 - 25 * Math.sqrt(3)],
      [1000 + 1000 * Math.sqrt(3) - 25, 1000 + 25 * Math.sqrt(3)],
      [1000 + 50 * Math.sqrt(3) - 100, 50],
      [0, 50],
    ],
    angles: [90, 90, 90, 330, 90, 90, 210, 90],
  },
  {
    why: "three walls with none in line are mitred with the neighbour on either side (3-4-5)",
    walls: [
      [0, 0, 1000, 0, 100],
      [0, 0, -600, 800, 100],
      [-600, -800, 0, 0, 100],
    ],
    ring: [
      [-640, -770],
      [-560, -830],
      [25, -50],
      [1000, -50],
      [1000, 50],
      [25, 50],
      [-560, 830],
      [-640, 770],
      [-62.5, 0],
    ],
    angles: [90, 90, 233.13, 90, 90, 233.13, 90, 90, 253.74],
  },
  {
    why: "a mitre of less than three thicknesses is kept: tan 10° = 0.176, 50/sin 10° = 287.9 mm",
    walls: [
      [0, 0, 3000, 0, 100],
      [0, 0, 3000 * Math.cos(Math.PI / 9), 3000 * Math.sin(Math.PI / 9), 100],
    ],
    ring: [
      [-50 / Math.tan(Math.PI / 18), -50],
      [3000, -50],
      [3000, 50],
      [50 / Math.tan(Math.PI / 18), 50],
      [
        3000 * Math.cos(Math.PI / 9) + 50 * Math.sin(Math.PI / 9),
        3000 * Math.sin(Math.PI / 9) - 50 * Math.cos(Math.PI / 9),
      ],
      [
        3000 * Math.cos(Math.PI / 9) - 50 * Math.sin(Math.PI / 9),
        3000 * Math.sin(Math.PI / 9) + 50 * Math.cos(Math.PI / 9),
      ],
    ],
    angles: [20, 90, 90, 340, 90, 90],
  },
])("$why", ({ walls, ring, angles }) => {
  const outline = outlineOf(walls);
  expectNear(outlineCorners(outline)[0]!, ring);
  expect(outline.findings).toEqual([]);
  expect(outline.faces.map((face) => face.fromCorner.angle)).toEqual(angles);
  const isInside = outline.faces.map((face) => face.fromCorner.turn === "inside");
  expect(isInside).toEqual(angles.map((angle) => angle > 180));
});

it("cuts a longer mitre square, and says so", () => {
  // 15°: the tip would lie 50/sin 7.5° = 383 mm out. Cut from the square end of one wall to that of the other.
  const [cos, sin] = [Math.cos(Math.PI / 12), Math.sin(Math.PI / 12)];
  const outline = outlineOf([
    [0, 0, 3000, 0, 100],
    [0, 0, 3000 * cos, 3000 * sin, 100],
  ]);
  expectNear(outlineCorners(outline)[0]!, [
    [-50 * sin, 50 * cos],
    [0, -50],
    [3000, -50],
    [3000, 50],
    [50 / Math.tan(Math.PI / 24), 50],
    [3000 * cos + 50 * sin, 3000 * sin - 50 * cos],
    [3000 * cos - 50 * sin, 3000 * sin + 50 * cos],
  ]);
  expect(outline.faces[0]!.isFreeEnd).toBe(false);
  expect(outline.findings).toEqual([
    {
      severity: "warning",
      kind: "special-corner",
      message: expect.stringMatching(/Wall w1 and wall w2 meet at 15° at \(0, 0\).*383 mm.*300 mm/),
      where: { wall: expect.stringMatching(/^w[12]$/), at: [0, 0] },
    },
  ]);
});

it("takes a corner as square within 2 mm over a corner leg of 150 mm", () => {
  const turn = (outline: ReturnType<typeof outlineOf>) =>
    outline.faces.map((face) => face.fromCorner.isSquare);
  // 1.9 and 2.1 mm over 150 mm are 38 and 42 mm over 3 m.
  expect(
    turn(
      outlineOf([
        [0, 0, 3000, 0, 100],
        [3000, 0, 3038, 3000, 100],
      ]),
    )[1],
  ).toBe(true);
  expect(
    turn(
      outlineOf([
        [0, 0, 3000, 0, 100],
        [3000, 0, 3042, 3000, 100],
      ]),
    )[1],
  ).toBe(false);
});

it.each<{ why: string; walls: WallLine[]; ring: [number, number][]; moved: number[] }>([
  {
    why: "a wall that pokes 1 mm out of the corner is flush with the longer face",
    walls: [
      [0, 0, 2050, 0, 100],
      [2000, -51, 2000, 1500, 100],
    ],
    ring: [
      [0, -50],
      [2050, -50],
      [2050, 1500],
      [1950, 1500],
      [1950, 50],
      [0, 50],
    ],
    moved: [1],
  },
  {
    why: "up to half a millimetre goes without saying",
    walls: [
      [0, 0, 2050, 0, 100],
      [2000, -50.5, 2000, 1500, 100],
    ],
    ring: [
      [0, -50],
      [2050, -50],
      [2050, 1500],
      [1950, 1500],
      [1950, 50],
      [0, 50],
    ],
    moved: [],
  },
  {
    why: "a wall in two pieces 1 mm out of line lies on the longer piece",
    walls: [
      [0, 0, 3000, 0, 100],
      [3000, 1, 5000, 1, 100],
    ],
    ring: [
      [0, -50],
      [5000, -50],
      [5000, 50],
      [0, 50],
    ],
    moved: [1, 1],
  },
  {
    why: "2 mm is within the tolerance",
    walls: [
      [0, 0, 3000, 0, 100],
      [3000, 2, 5000, 2, 100],
    ],
    ring: [
      [0, -50],
      [5000, -50],
      [5000, 50],
      [0, 50],
    ],
    moved: [2, 2],
  },
  {
    why: "3 mm is a step",
    walls: [
      [0, 0, 3000, 0, 100],
      [3000, 3, 5000, 3, 100],
    ],
    ring: [
      [0, -50],
      [3000, -50],
      [3000, -47],
      [5000, -47],
      [5000, 53],
      [3000, 53],
      [3000, 50],
      [0, 50],
    ],
    moved: [],
  },
  {
    why: "a thickness step of 1 mm on each side is no step",
    walls: [
      [0, 0, 3000, 0, 100],
      [3000, 0, 5000, 0, 102],
    ],
    ring: [
      [0, -50],
      [5000, -50],
      [5000, 50],
      [0, 50],
    ],
    moved: [1, 1],
  },
])("$why", ({ walls, ring, moved }) => {
  const outline = outlineOf(walls);
  expect(outlineCorners(outline)).toEqual([ring]);
  expect(outline.findings.map(({ kind, severity }) => [kind, severity])).toEqual(
    moved.map(() => ["settled", "warning"]),
  );
  outline.findings.forEach(({ message }, i) => {
    expect(message).toContain(`moved ${moved[i]} mm`);
  });
});
