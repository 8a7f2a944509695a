// The striking order against a rule checked by points: what comes out has a whole side beside which nothing stands.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { FacePiece, FilledFace, SoffitPiece, UnitFill } from "../../../src/fill/result.ts";
import { type RoomParts, roomPartsOf } from "../../../src/fill/roomParts.ts";
import type { Position } from "../../../src/plan/project.ts";
import { sheetRings } from "../../../src/sheet/faceOrder.ts";
import { bandsOf } from "../../../src/sheet/soffit/bands.ts";
import { type StrikeStep, strikeSteps } from "../../../src/sheet/strike/strikeOrder.ts";
import { fillOne } from "../../support/filled.ts";
import { oneRoomFill, oneRoomInfo } from "../../support/fixtureFill.ts";
import { houseArbitrary } from "../../support/housePlan.ts";
import { filled, sampleProject } from "../../support/samples.ts";

const info = oneRoomInfo();
const SAMPLES = ["one-room", "two-bedroom", "mirrored-pair", "row-of-three", "awkward"];
const rooms = SAMPLES.flatMap((name) =>
  filled(sampleProject(name)).units.flatMap((unit) =>
    roomPartsOf(unit).map((parts) => ({ name, room: parts.name || "outside", parts })),
  ),
);
const houses = houseArbitrary({ columns: 2, rows: 2, thicknesses: [100, 150], isMixed: false });

function stepsOf(parts: RoomParts): readonly StrikeStep[] {
  const rings = sheetRings(parts.faces, info);
  return strikeSteps(parts, rings, bandsOf(parts.soffits, rings));
}

function piecesOf(step: StrikeStep): readonly string[] {
  switch (step.kind) {
    case "fittings":
      return [];
    case "frames":
      return [...step.pieces, ...step.edges];
    case "band":
      return [...step.pieces, ...step.connectors];
    case "stay":
      return [...step.caps, ...step.strips, ...step.props];
    default:
      return step.pieces;
  }
}

const HEADS = new Set(["wall-slab-connector", "slab-edge-cap", "connector-corner", "cap-corner"]);

/**
 * Every 5 mm along the four sides, 1 mm outside: a side is open if no standing piece holds one of its points. The ring at the
 * head of the wall lies on what it stands on and holds nothing beside it.
 */
function hasOpenSide(piece: FacePiece, standing: readonly FacePiece[]): boolean {
  const holds = (x: number, z: number, isAbove: boolean) =>
    standing.some(
      (other) =>
        other !== piece &&
        (isAbove || !HEADS.has(other.family)) &&
        x > other.x &&
        x < other.x + other.width &&
        z > other.z &&
        z < other.z + other.height,
    );
  const along = (from: number, length: number) =>
    Array.from({ length: Math.ceil(length / 5) }, (_, k) => from + Math.min(length - 0.5, k * 5 + 0.5));
  const { x, z, width, height } = piece;
  const sides: readonly (readonly (readonly [number, number])[])[] = [
    along(z, height).map((at) => [x - 1, at] as const),
    along(z, height).map((at) => [x + width + 1, at] as const),
    ...(z > 0 ? [along(x, width).map((at) => [at, z - 1] as const)] : []),
    along(x, width).map((at) => [at, z + height + 1] as const),
  ];
  return sides.some((side) => side.every(([atX, atZ]) => !holds(atX, atZ, atZ > z + height)));
}

/** Walks through the steps of a room and asks of every wall piece whether it can come out. */
function holdWalls(parts: RoomParts): void {
  const out = new Set<string>();
  const isPanel = ({ family }: FacePiece) => !HEADS.has(family) && family !== "inside-corner";
  const cleared = new Set<FilledFace>(parts.faces.filter(({ pieces }) => !pieces.some(isPanel)));
  for (const step of stepsOf(parts)) {
    if (step.kind === "corners") {
      // Nothing but corners and heads is left on any face, so both neighbours of every corner are out.
      for (const { pieces } of parts.faces) {
        const left = pieces.filter(({ piece, family }) => !out.has(piece) && !HEADS.has(family));
        expect(left.every(({ family }) => family === "inside-corner")).toBe(true);
      }
    }
    if (step.kind !== "face") continue;
    const { face } = step.face;
    const byId = new Map(face.pieces.map((piece) => [piece.piece, piece]));
    const first = face.pieces.find(({ firstOut }) => firstOut === true);
    const order = step.pieces.map((id) => byId.get(id)!);
    // What stands on the first-out piece is out before it; the column is the first all the same.
    const column = (piece: FacePiece) =>
      first !== undefined && piece.x >= first.x && piece.x + piece.width <= first.x + first.width;
    if (first !== undefined) {
      expect(step.start).toBe("first-out");
      expect(column(order[0]!)).toBe(true);
    }
    const eased = new Set([...cleared].flatMap(({ pieces }) => pieces.map(({ piece }) => piece)));
    order.forEach((piece, index) => {
      const standing = face.pieces.filter(
        (other) => !out.has(other.piece) && !(other.family === "inside-corner" && eased.has(other.piece)),
      );
      const above = standing.filter(
        (other) =>
          !HEADS.has(other.family) &&
          other.z === piece.z + piece.height &&
          other.x < piece.x + piece.width &&
          other.x + other.width > piece.x,
      );
      expect(above).toEqual([]);
      const isForced = index === 0 && step.start === "forced";
      if (!column(piece) && !isForced)
        expect([piece.piece, hasOpenSide(piece, standing)]).toEqual([piece.piece, true]);
      out.add(piece.piece);
    });
    cleared.add(face);
  }
}

/** Whether two outlines with upright sides share part of a side, by the rectangles round them. */
function touch(a: readonly Position[], b: readonly Position[]): boolean {
  const span = (ring: readonly Position[], axis: 0 | 1) => {
    const values = ring.map((point) => point[axis]);
    return [Math.min(...values), Math.max(...values)] as const;
  };
  const shared = (axis: 0 | 1) => {
    const [p, q] = [span(a, axis), span(b, axis)];
    return Math.min(p[1], q[1]) - Math.max(p[0], q[0]);
  };
  const [x, y] = [shared(0), shared(1)];
  return (Math.abs(x) < 0.5 && y > 1.5) || (Math.abs(y) < 0.5 && x > 1.5);
}

function holdOverhead(parts: RoomParts): void {
  const down = new Set<string>();
  for (const step of stepsOf(parts)) {
    if (step.kind !== "band" && step.kind !== "connectors") continue;
    for (const piece of step.kind === "band" ? step.pieces : []) down.add(piece);
    const pulled = step.kind === "band" ? step.connectors : step.pieces;
    for (const { pieces } of parts.soffits) {
      const isPanel = ({ family }: SoffitPiece) => family === "slab-panel" || family === "closure-strip";
      const hanging = pieces.filter((piece) => isPanel(piece) && !down.has(piece.piece));
      for (const connector of pieces.filter(({ piece }) => pulled.includes(piece))) {
        expect(hanging.filter(({ outline }) => touch(outline, connector.outline))).toEqual([]);
      }
    }
  }
}

/** Everything that stands in the room, each in one step. */
function holdWhole(parts: RoomParts): void {
  const told = stepsOf(parts).flatMap(piecesOf);
  const expected = new Set([
    ...parts.faces.flatMap(({ pieces }) => pieces.map(({ piece }) => piece)),
    ...parts.edges.map(({ piece }) => piece),
    ...parts.reveals.flatMap(({ pieces }) => pieces.map(({ piece }) => piece)),
    ...parts.soffits.flatMap(({ pieces, props }) => [...pieces, ...props].map(({ piece }) => piece)),
  ]);
  expect(told.length).toBe(new Set(told).size);
  expect([...told].sort()).toEqual([...expected].sort());
}

const ORDER: readonly StrikeStep["kind"][] = [
  "fittings",
  "frames",
  "face",
  "corners",
  "band",
  "connectors",
  "stay",
];

describe.each(rooms)("striking $room of $name", ({ parts }) => {
  it("begins with accessories, ends with what stays, and tells every piece once", () => {
    const kinds = stepsOf(parts).map(({ kind }) => ORDER.indexOf(kind));
    expect(kinds[0]).toBe(0);
    expect(kinds).toEqual([...kinds].sort((a, b) => a - b));
    holdWhole(parts);
  });

  it("takes out nothing that is locked", () => {
    holdWalls(parts);
  });

  it("pulls no connector from which a panel still hangs", () => {
    holdOverhead(parts);
  });

  it("takes a band down from the piece that closed it", () => {
    const bands = bandsOf(parts.soffits, sheetRings(parts.faces, info)).flat();
    for (const step of stepsOf(parts)) {
      if (step.kind !== "band") continue;
      const laid = bands.find(({ letter }) => letter === step.letter)!.pieces.map(({ piece }) => piece);
      expect(step.pieces).toEqual([...laid].reverse());
    }
  });
});

describe("striking random houses", () => {
  it("locks nothing, forgets nothing", () => {
    fc.assert(
      fc.property(houses, (unit) => {
        for (const parts of roomPartsOf(fillOne(unit))) {
          holdWhole(parts);
          holdWalls(parts);
          holdOverhead(parts);
        }
      }),
      { seed: 20_260_402, numRuns: 10, endOnFailure: true },
    );
  }, 120_000);
});

function plugs(face: FilledFace): readonly FacePiece[] {
  return face.openings.map(({ id, x, width, head }) => {
    const place = { x, z: 0, width, height: head };
    return { piece: `${face.id}-${id}`, code: "P", family: "wall-panel", ...place };
  });
}

describe("striking the room laid by hand", () => {
  const unit: UnitFill = oneRoomFill();
  const [room] = roomPartsOf(unit);
  const steps = stepsOf(room!).filter((step) => step.kind === "face");

  // Worked C, B, D, A; every face has a first-out piece, so they come out A, D, B, C.
  it("goes from the last face to the first", () => {
    expect(steps.map(({ face }) => face.letter)).toEqual(["A", "D", "B", "C"]);
  });

  it("begins at the filler and goes on to its two sides", () => {
    const east = [1, 2, 3, 4, 5, 6].map((place) => `A/e-in-${place}`);
    expect(steps[1]!.pieces).toEqual(east);
    expect(steps.every(({ start }) => start === "first-out")).toBe(true);
    expect(steps.map(({ pieces }) => pieces[0])).toEqual(["A/s-in-1", "A/e-in-1", "A/w-in-6", "A/n-in-5"]);
  });

  it("of a face without one says so, unless a corner has let go", () => {
    const without = (ids: readonly string[]): UnitFill => ({
      ...unit,
      faces: unit.faces.map((face) => ({
        ...face,
        openings: [],
        // A panel in place of the door, so that the ring is closed.
        pieces: [...face.pieces, ...plugs(face)].map(({ firstOut, ...piece }) =>
          firstOut === true && !ids.includes(face.id) ? { ...piece, firstOut } : piece,
        ),
      })),
    });
    const starts = (fill: UnitFill) =>
      stepsOf(roomPartsOf(fill)[0]!).flatMap((step) =>
        step.kind === "face" ? [`${step.face.face.id} ${step.start}`] : [],
      );
    const all = ["A/n-in", "A/e-in", "A/s-in", "A/w-in"];
    // Face w stands beside face s, which is clear by then.
    expect(starts(without(["A/w-in"])).at(-1)).toBe("A/w-in free");
    expect(starts(without(all)).filter((start) => start.endsWith("forced"))).toHaveLength(1);
  });
});
