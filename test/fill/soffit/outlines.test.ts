// Outlines in the slab that cannot be what was meant are told, with the place.

import { describe, expect, it } from "vitest";
import { crossesItself } from "../../../src/fill/soffit/outlineChecks.ts";
import type { SlabOutline, Unit } from "../../../src/plan/project.ts";
import { fillDocument, projectOf } from "../../support/filled.ts";
import { roomPlan } from "../../support/roomPlan.ts";

type Points = readonly (readonly [number, number])[];

describe("an outline that crosses itself", () => {
  it.each<{ why: string; ring: Points; crosses: boolean }>([
    {
      why: "a square",
      ring: [
        [0, 0],
        [9, 0],
        [9, 9],
        [0, 9],
      ],
      crosses: false,
    },
    {
      why: "an L",
      ring: [
        [0, 0],
        [9, 0],
        [9, 4],
        [4, 4],
        [4, 9],
        [0, 9],
      ],
      crosses: false,
    },
    {
      why: "a bow tie",
      ring: [
        [0, 0],
        [9, 9],
        [9, 0],
        [0, 9],
      ],
      crosses: true,
    },
    {
      why: "a triangle has no two edges apart",
      ring: [
        [0, 0],
        [9, 0],
        [0, 9],
      ],
      crosses: false,
    },
  ])("$why", ({ ring, crosses }) => {
    expect(crossesItself(ring)).toBe(crosses);
  });
});

function problemsWith(change: Partial<Pick<Unit, "slabs" | "slabOpenings">>) {
  const unit = { ...roomPlan(0), ...change };
  return fillDocument(projectOf(unit)).units[0]!;
}

/** Points round the middle of the only room of the plan, or far round all of it. */
function square(id: string, [x, y]: readonly [number, number], half: number): SlabOutline {
  return {
    id,
    outline: [
      [x - half, y - half],
      [x + half, y - half],
      [x + half, y + half],
      [x - half, y + half],
    ],
  };
}

describe("what is drawn in the slab", () => {
  const plain = problemsWith({});
  const { room, outline } = plain.soffits[0]!;
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const middle = [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2] as const;

  it("is told where a slab outside the walls reaches over a room", () => {
    const { problems } = problemsWith({ slabs: [square("b1", middle, 500)] });
    const found = problems.find(({ kind }) => kind === "slab-over-room");
    expect(found).toMatchObject({ severity: "error", where: { room } });
    expect(found?.message).toContain(`Slab b1 reaches over ${room} by 1 m²`);
  });

  it("is told where an opening takes a whole soffit", () => {
    const { problems, soffits } = problemsWith({ slabOpenings: [square("o1", middle, 50_000)] });
    expect(soffits[0]!.pieces.every(({ family }) => family !== "slab-panel")).toBe(true);
    expect(problems.find(({ kind }) => kind === "slab-opening")).toMatchObject({ where: { room } });
  });

  it("is left out and told where it crosses itself, and the rest is filled as without it", () => {
    const [x, y] = middle;
    const bow: SlabOutline = {
      id: "o1",
      outline: [
        [x, y],
        [x + 300, y + 300],
        [x + 300, y],
        [x, y + 300],
      ],
    };
    const { problems, soffits } = problemsWith({ slabOpenings: [bow] });
    expect(problems.find(({ kind }) => kind === "outline-crosses")).toMatchObject({
      severity: "error",
      where: { at: [x, y] },
    });
    expect(soffits).toEqual(plain.soffits);
  });
});
