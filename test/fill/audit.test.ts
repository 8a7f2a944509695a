// The audit must be able to fail: a right fill spoiled in one way at a time, and what the audit says of it.

import { describe, expect, it } from "vitest";
import type { FacePiece, FilledFace, UnitFill } from "../../src/fill/result.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { auditSquare } from "../support/audit.ts";
import { fillOne, opening, STOREY } from "../support/filled.ts";
import { faceAt } from "../support/runs.ts";
import { roundRoom, unitOf } from "../support/walls.ts";

const unit = {
  ...unitOf(roundRoom([-50, -50], [3050, 3670], 100)),
  openings: [opening("d1", "w1", [650, 900, 0, 2100])],
};
const fill = fillOne(unit);
const faults = (spoiled: UnitFill) => auditSquare(spoiled, { unit, storey: STOREY, kit: demoKit });

function withFace(at: readonly [number, number], change: (face: FilledFace) => FilledFace): UnitFill {
  const { id } = faceAt(fill, at);
  return { ...fill, faces: fill.faces.map((face) => (face.id === id ? change(face) : face)) };
}

const withPieces = (
  at: readonly [number, number],
  change: (pieces: readonly FacePiece[]) => readonly FacePiece[],
) => withFace(at, (face) => ({ ...face, pieces: change(face.pieces) }));

const isWide = ({ family, width, z }: FacePiece) => family === "wall-panel" && width === 600 && z === 0;
const NORTH = [1500, 3620] as const;

/** Two pieces that stand side by side change places. */
function swapped(pieces: readonly FacePiece[], a: number, b: number): readonly FacePiece[] {
  const [left, right] = [
    pieces.find(({ x, z }) => x === a && z === 0)!,
    pieces.find(({ x, z }) => x === b && z === 0)!,
  ];
  return pieces.map((one) =>
    one === left ? { ...one, x: a + right.width } : one === right ? { ...one, x: a } : one,
  );
}

describe("the audit", () => {
  it("finds nothing in a right fill", () => {
    expect(faults(fill)).toEqual([]);
  });

  it.each([
    {
      why: "a piece left out",
      says: /covered 0 times/,
      spoiled: withPieces(NORTH, (all) => all.filter((one) => !isWide(one))),
    },
    {
      why: "a piece laid twice",
      says: /covered 2 times/,
      spoiled: withPieces(NORTH, (all) => [...all, all.find(isWide)!]),
    },
    {
      why: "a fraction",
      says: /not whole/,
      spoiled: withPieces(NORTH, (all) => all.map((one) => ({ ...one, x: one.x + 0.5 }))),
    },
    {
      why: "a gap no error explains",
      says: /points at no error/,
      spoiled: withFace(NORTH, (face) => ({
        ...face,
        pieces: face.pieces.filter((one) => one !== face.pieces.find(isWide)),
        unfilled: face.pieces
          .filter(isWide)
          .slice(0, 1)
          .map(({ x, z, width, height }) => ({ x, z, width, height, problem: 99 })),
      })),
    },
    {
      why: "a code the kit has not",
      says: /the kit has no W9x9/,
      spoiled: withPieces(NORTH, (all) => all.map((one) => (isWide(one) ? { ...one, code: "W9x9" } : one))),
    },
    {
      why: "a code of another size",
      says: /another family or size/,
      spoiled: withPieces(NORTH, (all) =>
        all.map((one) => (isWide(one) ? { ...one, code: "W550x2250" } : one)),
      ),
    },
    {
      why: "an inside corner of two ids",
      says: /stands on 1 faces/,
      spoiled: withPieces(NORTH, (all) => all.map((one) => ({ ...one, piece: `${one.piece}b` }))),
    },
    {
      why: "one face in another order than the face across",
      says: /the joint at .* meets the inside/,
      spoiled: withPieces([0, 900], (all) => swapped(all, 2550, 3150)),
    },
    {
      why: "a filler away from the closing end",
      says: /interval .* instead of/,
      spoiled: withPieces([0, 900], (all) => swapped(all, 2550, 3150)),
    },
    {
      why: "two pieces where one would do",
      says: /interval .* instead of/,
      spoiled: withPieces(NORTH, (all) =>
        all.flatMap((one) =>
          isWide(one)
            ? [
                { ...one, width: 300, code: "W300x2250" },
                { ...one, piece: `${one.piece}b`, x: one.x + 300, width: 300, code: "W300x2250" },
              ]
            : [one],
        ),
      ),
    },
    {
      why: "a wrong total",
      says: /totals: zones 9, counted 8/,
      spoiled: { ...fill, totals: { ...fill.totals, zones: 9 } },
    },
    { why: "a short bill", says: /bill: 0 of/, spoiled: { ...fill, bill: fill.bill.slice(1) } },
    { why: "a missing tie line", says: /no tie at/, spoiled: { ...fill, ties: fill.ties.slice(1) } },
    {
      why: "a tie too many",
      says: /none belongs/,
      spoiled: { ...fill, ties: fill.ties.map((tie) => ({ ...tie, heights: [...tie.heights, 2000] })) },
    },
    {
      why: "ties owned from outside",
      says: /belongs to/,
      spoiled: {
        ...fill,
        ties: fill.ties.map((tie) => ({ ...tie, faces: [tie.faces[1], tie.faces[0]] as const })),
      },
    },
    {
      why: "a face walked the wrong way",
      says: /no concrete on its left/,
      spoiled: withFace(NORTH, (face) => ({ ...face, from: face.to, to: face.from })),
    },
    {
      why: "a wrong room area",
      says: /m², not 9/,
      spoiled: { ...fill, rooms: fill.rooms.map((room) => ({ ...room, area: 9 })) },
    },
    {
      why: "the wrong piece out first",
      says: /to come out first/,
      spoiled: withPieces(NORTH, (all) =>
        all
          .filter(({ firstOut }) => firstOut !== true)
          .map((one) => (one === all.find(isWide) ? { ...one, firstOut: true } : one)),
      ),
    },
    {
      why: "a locked ring that is none",
      says: /not locked/,
      spoiled: {
        ...fill,
        problems: [
          { severity: "warning", kind: "locked-ring", message: "", where: { room: fill.rooms[0]!.name } },
        ],
      } satisfies UnitFill,
    },
    {
      why: "an edge without an angle",
      says: /outside corner|jamb of/,
      spoiled: { ...fill, corners: fill.corners.slice(1) },
    },
    {
      why: "a reveal without a closure",
      says: /reveal/,
      spoiled: { ...fill, reveals: fill.reveals.slice(1) },
    },
  ])("finds $why", ({ says, spoiled }) => {
    expect(faults(spoiled).filter((fault) => says.test(fault))).not.toEqual([]);
  });
});
