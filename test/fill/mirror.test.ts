// A mirrored pour is the unit's fill reflected piece for piece, handed pieces swapped; never a fill of its own.

import { describe, expect, it } from "vitest";
import { mirrorFill } from "../../src/fill/mirror.ts";
import type { FilledFace, UnitFill } from "../../src/fill/result.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit, Piece } from "../../src/kit/kit.ts";
import { auditAny } from "../support/audit.ts";
import { fillOne } from "../support/filled.ts";
import { filled, sampleProject } from "../support/samples.ts";

const SAMPLES = ["one-room", "two-bedroom", "row-of-three", "awkward"] as const;

function fillsOf(name: string): readonly UnitFill[] {
  return filled(sampleProject(name)).units;
}

/** Where a piece stands in the plan: the ends of its foot on the face, and its height. */
function footprints(face: FilledFace, sign: 1 | -1): string[] {
  const { from, to, length } = face;
  const at = (x: number) =>
    [0, 1].map((k) => (from[k]! + ((to[k]! - from[k]!) * x) / length) * (k === 0 ? sign : 1));
  return face.pieces
    .map(({ piece, x, width, z, height }) => {
      const ends = [at(x), at(x + width)].map((p) => p.map((v) => (v + 0).toFixed(2)).join(","));
      return `${piece} ${ends.sort().join(" ")} ${z} ${height}`;
    })
    .sort();
}

describe("a mirrored pour", () => {
  it.each(SAMPLES)("of %s stands every piece where its mirror image stood", (name) => {
    for (const fill of fillsOf(name)) {
      const mirrored = mirrorFill(fill, demoKit);
      fill.faces.forEach((face, k) => {
        expect(footprints(mirrored.faces[k]!, -1)).toEqual(footprints(face, 1));
      });
    }
  });

  it.each(SAMPLES)("of %s mirrored again is the fill itself", (name) => {
    for (const fill of fillsOf(name)) {
      expect(mirrorFill(mirrorFill(fill, demoKit), demoKit)).toEqual(fill);
    }
  });

  it("still tiles and keeps every count", () => {
    const project = sampleProject("two-bedroom");
    const [fill] = fillsOf("two-bedroom");
    const mirrored = mirrorFill(fill!, demoKit);
    expect(mirrored.bill).toEqual(fill!.bill);
    expect(mirrored.ties.length).toBe(fill!.ties.length);
    const tiling = auditAny(mirrored, { kit: demoKit, unit: project.units[0]!, storey: project.storey });
    expect(tiling.filter((violation) => /overlap|gap|tile|wide/.test(violation))).toEqual([]);
  });

  it("swaps handed pieces and leaves the others", () => {
    const kit = handedKit();
    const fill = fillOne(sampleProject("one-room").units[0]!, sampleProject("one-room").storey, kit);
    const left = fill.bill.find(({ code }) => code === "Brace-left");
    expect(left?.quantity).toBeGreaterThan(0);
    const mirrored = mirrorFill(fill, kit);
    expect(mirrored.bill.find(({ code }) => code === "Brace-right")?.quantity).toBe(left?.quantity);
    expect(mirrored.bill.some(({ code }) => code === "Brace-left")).toBe(false);
    expect(mirrored.fittings.every(({ code }) => code !== "Brace-left")).toBe(true);
    expect(mirrored.faces.flatMap((face) => face.pieces.map(({ code }) => code)).sort()).toEqual(
      fill.faces.flatMap((face) => face.pieces.map(({ code }) => code)).sort(),
    );
  });
});

/** The demo kit with its brace in a left and a right hand. */
function handedKit(): Kit {
  const others = demoKit.pieces.filter(({ family }) => family !== "brace");
  const brace: Piece | undefined = demoKit.pieces.find(({ family }) => family === "brace");
  if (brace === undefined) throw new Error("the demo kit has a brace");
  const left: Piece = { ...brace, code: "Brace-left", hand: "left" };
  const right: Piece = { ...brace, code: "Brace-right", hand: "right" };
  return { ...demoKit, pieces: [...others, left, right] };
}
