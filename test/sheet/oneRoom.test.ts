// The sheets of the room laid by hand, against figures worked out before the program: who starts where, what is
// called what, how many of each, how wide on paper.

import { describe, expect, it } from "vitest";
import type { UnitFill } from "../../src/fill/result.ts";
import { roomPartsOf } from "../../src/fill/roomParts.ts";
import { countRows } from "../../src/sheet/countRows.ts";
import { faceLetter, sheetRings } from "../../src/sheet/faceOrder.ts";
import type { Mark, Sheet } from "../../src/sheet/mark.ts";
import { pieceNames } from "../../src/sheet/pieceNames.ts";
import { roomSheets } from "../../src/sheet/roomSheet.ts";
import { oneRoomFill, oneRoomInfo } from "../support/fixtureFill.ts";
import { timesDrawn } from "../support/sheetClaims.ts";

const info = oneRoomInfo();
const unit = oneRoomFill();
const [room, outside] = roomPartsOf(unit);
const rings = sheetRings(room!.faces, info);

function texts(sheets: readonly Sheet[]): readonly string[] {
  return sheets.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])));
}

function drawn(sheets: readonly Sheet[], piece: string): Mark {
  return sheets.flatMap(({ marks }) => marks).find((mark) => mark.piece === piece)!;
}

describe("the order of the work", () => {
  it("letters the faces clockwise from the wall with the door", () => {
    const letters = rings[0]!.faces.map(({ letter, face }) => [letter, face.walls[0]]).sort();
    expect(letters).toEqual([
      ["A", "s"],
      ["B", "w"],
      ["C", "n"],
      ["D", "e"],
    ]);
  });

  it("starts at the corner farthest from the door, every corner but one having one closing end beside it", () => {
    const [start] = rings[0]!.corners;
    expect(start).toMatchObject({ name: "BC", at: [100, 3700], turn: "inside", role: "start" });
  });

  it("closes at the far corner, where a filler stands", () => {
    expect(
      rings[0]!.corners.filter((corner) => corner?.role === "close").map((corner) => corner?.name),
    ).toEqual(["DA"]);
  });

  it("works both ways in turn", () => {
    const order = [...rings[0]!.faces]
      .sort((a, b) => a.rank - b.rank)
      .map(({ letter, direction }) => letter + direction);
    expect(order).toEqual(["Cright", "Bleft", "Dright", "Aleft"]);
  });

  it("names the pieces of a face in working order, panels first, then the frame, then the head", () => {
    const names = pieceNames(rings, room!);
    const numberOf = (piece: string) => `${names[piece]?.letters}${names[piece]?.number ?? ""}`;
    // Face A is worked from west to east: 450, lintel over the door, 600, 600, and 150 last.
    const a = [
      "s-in-5",
      "s-in-lintel",
      "s-in-3",
      "s-in-2",
      "s-in-1",
      "r-left",
      "r-right",
      "r-head",
      "s-in-h2",
    ];
    expect(a.map((id) => numberOf(`A/${id}`))).toEqual([
      "A1",
      "A2",
      "A3",
      "A4",
      "A5",
      "A6",
      "A7",
      "A8",
      "A9",
    ]);
    expect(["c-nw", "c-ne", "c-se", "c-sw", "k-nw"].map((id) => numberOf(`A/${id}`))).toEqual([
      "BC",
      "CD",
      "DA",
      "AB",
      "BC",
    ]);
  });

  it.each([
    { index: 0, letter: "A" },
    { index: 8, letter: "J" }, // I would read as 1
    { index: 23, letter: "Z" },
    { index: 24, letter: "AA" },
  ])("calls face $index $letter", ({ index, letter }) => {
    expect(faceLetter(index)).toBe(letter);
  });

  it("takes out last in, first out", () => {
    const tags = texts(roomSheets(unit, info)).filter((text) => text.startsWith("out "));
    expect([...tags].sort()).toEqual(["out 1", "out 2", "out 3", "out 4"]);
  });
});

describe("the count", () => {
  // The worked example's bill, room and outside together; ties are the room's, which sets them.
  it.each([
    { code: "Corner150", quantity: 4 },
    { code: "P600", quantity: 32 },
    { code: "P450", quantity: 2 },
    { code: "P300", quantity: 6 },
    { code: "P250", quantity: 8 },
    { code: "P150", quantity: 2 },
    { code: "P900x150", quantity: 2 },
    { code: "Jamb2100", quantity: 2 },
    { code: "Reveal900", quantity: 1 },
    { code: "Angle2250", quantity: 4 },
    { code: "Angle2100", quantity: 4 },
    { code: "Angle900", quantity: 2 },
    { code: "Conn1200", quantity: 8 },
    { code: "Conn600", quantity: 2 },
    { code: "Conn300", quantity: 4 },
    { code: "ConnCorner", quantity: 4 },
    { code: "Cap1200", quantity: 10 },
    { code: "Cap600", quantity: 2 },
    { code: "Cap200", quantity: 4 },
    { code: "CapCorner", quantity: 4 },
    { code: "Tie100", quantity: 120 },
  ])("of $code over both sheets is $quantity", ({ code, quantity }) => {
    const rows = [room!, outside!].flatMap((parts) => countRows(parts, info)).filter((row) => row.isOwn);
    expect(rows.filter((row) => row.code === code).reduce((sum, row) => sum + row.quantity, 0)).toBe(
      quantity,
    );
  });

  it("is of the pieces the sheets draw, each once", () => {
    const sheets = roomSheets(unit, info);
    const times = timesDrawn(sheets);
    const rows = [room!, outside!].flatMap((parts) => countRows(parts, info));
    const pieces = rows.filter(({ family }) => family !== "tie").reduce((sum, row) => sum + row.quantity, 0);
    expect([...times.values()].every((count) => count === 1)).toBe(true);
    expect(times.size).toBe(pieces);
  });
});

describe("the drawing", () => {
  const sheets = roomSheets(unit, info);

  it("has one sheet for the room, front and back", () => {
    expect(sheets.map(({ name }) => name)).toEqual([
      "a-01-bedroom-2-p1",
      "a-01-bedroom-2-p2",
      "a-02-outside-p1",
      "a-02-outside-p2",
      "a-02-outside-p3",
    ]);
  });

  it.each([
    { piece: "A/n-in-2", width: 12, height: 45, why: "600 × 2250 at 1:50" },
    { piece: "A/n-in-5", width: 6, height: 45, why: "300 × 2250 at 1:50" },
    { piece: "A/n-in-h0", width: 24, height: 3, why: "1200 × 150 at 1:50" },
    { piece: "A/c-ne", width: 3, height: 45, why: "one leg of the corner; the other is drawn beside it" },
  ])("draws $piece as $why", ({ piece, width, height }) => {
    const mark = drawn(sheets, piece);
    if (mark.kind !== "rect") throw new TypeError("a piece is drawn as a rectangle");
    expect(mark.box.width).toBeCloseTo(width, 9);
    expect(mark.box.height).toBeCloseTo(height, 9);
  });

  it("doubles the outline of what is over the stated limit, and of nothing else", () => {
    // 22 kg/m² × 0.6 × 2.25 = 29.7 kg against 25 kg; 450 wide is 22.3 kg.
    const inner = (piece: string) => {
      const mark = drawn(sheets, piece);
      const box = mark.kind === "rect" ? mark.box : null;
      return sheets[0]!.marks.filter(
        (other) =>
          other.kind === "rect" && box && Math.abs(other.box.x - box.x - 0.75) < 1e-9 && other.box.y > box.y,
      );
    };
    expect(inner("A/n-in-2")).toHaveLength(1);
    expect(inner("A/s-in-5")).toHaveLength(0);
  });

  it("never calls a lift more than within the stated limit", () => {
    const words = texts(sheets).join(" ");
    expect(words).toContain("within the stated limit of 25 kg");
    expect(words.toLowerCase()).not.toMatch(/\bsafe/);
  });

  it("says when no limit is stated", () => {
    const words = texts(roomSheets(unit, oneRoomInfo({ personLimit: null }))).join(" ");
    expect(words).toContain("lifts not checked");
    expect(words).not.toContain("within the stated limit");
  });

  it("gives a problem the same number at the gap and in the list", () => {
    const gapped: UnitFill = {
      ...unit,
      faces: unit.faces.map((face) =>
        face.id !== "A/n-in"
          ? face
          : {
              ...face,
              pieces: face.pieces.filter(({ piece }) => piece !== "A/n-in-5"),
              unfilled: [{ x: 2550, z: 0, width: 300, height: 2250, problem: 1 }],
            },
      ),
      problems: [
        { severity: "warning", kind: "settled", message: "Wall s was moved.", where: { wall: "s" } },
        {
          severity: "error",
          kind: "no-exact-cover",
          message: "Nothing closes 300.",
          where: { face: "A/n-in", x: 2550 },
        },
      ],
    };
    const [first, ...rest] = roomSheets(gapped, info);
    const rings = first!.marks.filter((mark) => mark.kind === "circle" && mark.radius > 2);
    expect(rings).toHaveLength(3); // one at the gap, two in the list
    expect(texts([first!])).toContain("Nothing closes 300.");
    expect(texts(rest)).not.toContain("Nothing closes 300.");
    expect(texts(rest)).toContain("Wall s was moved.");
  });
});
