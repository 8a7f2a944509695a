// Storeys, kits, rooms of other kinds and the engineer's own choice, each worked by hand. Common practice, no source; the
// rules are those of the format.

import { describe, expect, it } from "vitest";
import { demoKit } from "../../src/kit/demo.ts";
import type { Piece } from "../../src/kit/kit.ts";
import type { Pour, RoomLabel } from "../../src/plan/project.ts";
import { auditAny, auditSquare } from "../support/audit.ts";
import { type FillCase, fillOf, holdCase } from "../support/fillCase.ts";
import { fillDocument, fillOne, opening, projectOf, STOREY } from "../support/filled.ts";
import { kitOf, panel, piece } from "../support/kits.ts";
import { faceAt, problemKinds, quantities, runUpward } from "../support/runs.ts";
import { roundRoom, unitOf, type WallLine } from "../support/walls.ts";

const WALL: readonly WallLine[] = [[0, 0, 3000, 0, 100]];
/** Clear 3000 by 3600 within walls of 100. */
const ROOM = roundRoom([-50, -50], [3050, 3650], 100);
const PLAIN = "600 600 600 600 600";

const heightsOf = (fill: ReturnType<typeof fillOne>, at: readonly [number, number]) =>
  [...new Set(faceAt(fill, at).pieces.map(({ z, height, family }) => `${z}+${height} ${family}`))].sort();

function room(given: Partial<RoomLabel>): readonly RoomLabel[] {
  return [{ name: "R", at: [1500, 1800], kind: "room", soffitDrop: 0, ...given }];
}

describe("storeys", () => {
  it("without a slab has panels to the soffit, no connector, no cap", () => {
    const fill = holdCase({
      why: "",
      walls: WALL,
      storey: { clearHeight: 2400, slab: 0 },
      runs: [[100, 50, PLAIN]],
    });
    expect(fill.faces.map(({ height }) => height)).toEqual([2400, 2400, 2400, 2400]);
    expect(heightsOf(fill, [100, 50])).toEqual(["0+2400 wall-panel"]);
    expect(fill.bill.filter(({ code }) => /^(Conn|Cap)/.test(code))).toEqual([]);
  });

  it("two of one unit make two entries with ids of their own, and totals that add up", () => {
    const unit = unitOf(WALL);
    const pour = (id: string, given: Partial<Pour> = {}): Pour => ({
      ...{ id, name: "", unit: "A", mirror: false, day: null, storey: null },
      ...given,
    });
    const high = { clearHeight: 2600, slab: 100 };
    const pours = [pour("p1"), pour("p2", { storey: high }), pour("p3", { mirror: true })];
    const document = fillDocument(projectOf(unit, { pours }));
    const [low, tall] = document.units;
    expect(document.units.map((entry) => [entry.unit, entry.pours])).toEqual([
      ["A", ["p1", "p3"]],
      ["A", ["p2"]],
    ]);
    expect(low?.faces.every(({ id }) => id.startsWith("A/f"))).toBe(true);
    expect(tall?.faces.every(({ id }) => id.startsWith("A@2/f"))).toBe(true);
    expect(tall?.faces[0]?.pieces.every((one) => one.piece.startsWith("A@2/p"))).toBe(true);
    expect(tall?.storey).toEqual(high);
    // 2600 = 2400 + 200: two pieces, the tallest lowest panel; outside 200 + 100.
    expect(heightsOf(tall!, [100, 50])).toEqual(["0+2400 wall-panel", "2400+300 slab-edge-cap"]);
    expect(document.totals.panels).toBe(20);
    expect(auditSquare(tall!, { unit, storey: high, kit: demoKit })).toEqual([]);
  });

  it("a dropped soffit takes a stack of its own: 2100 and a connector of 100 in 2200", () => {
    const fill = holdCase({
      why: "",
      walls: ROOM,
      more: { rooms: room({ soffitDrop: 200 }) },
      runs: [
        [1500, 3600, "C150 600 600 600 600 300 C150"],
        [1500, 3700, "250 600 600 600 600 300 250"],
      ],
    });
    expect(faceAt(fill, [1500, 3600]).height).toBe(2200);
    expect(heightsOf(fill, [1500, 3600])).toEqual([
      "0+2100 inside-corner",
      "0+2100 wall-panel",
      "2100+100 connector-corner",
      "2100+100 wall-slab-connector",
    ]);
    expect(heightsOf(fill, [1500, 3700])).toEqual(["0+2250 wall-panel", "2250+250 slab-edge-cap"]);
  });
});

describe("kits", () => {
  const WIDTHS = [600, 500, 450, 400, 350, 300, 250, 200, 150, 100];
  const bare = (height: number): readonly Piece[] => [
    ...WIDTHS.map((width) => panel(width, height, { standard: width === 600 })),
    piece({ family: "inside-corner", code: "C", legs: [150, 150], height }),
  ];

  it("of wall panels and one corner fill plain walls, and say what is missing", () => {
    const kit = kitOf(bare(2400));
    const storey = { clearHeight: 2400, slab: 0 };
    const unit = unitOf(ROOM);
    const fill = fillOne(unit, storey, kit);
    expect(runUpward(faceAt(fill, [1500, 3600]))).toBe("C150 600 600 600 600 300 C150");
    expect(runUpward(faceAt(fill, [3100, 1000]))).toBe("250 600 600 600 600 600 300 250");
    expect(fill.faces.flatMap(({ unfilled }) => unfilled)).toEqual([]);
    expect(auditAny(fill, { unit, storey, kit })).toEqual([]);
    expect(problemKinds(fill)).toContain("missing-piece");
  });

  it("without connectors fill up to the clear height, the rest of each face is unfilled with its problem", () => {
    const kit = kitOf(bare(2400));
    const unit = unitOf(ROOM);
    const fill = fillOne(unit, STOREY, kit);
    expect(heightsOf(fill, [1500, 3600])).toEqual(["0+2400 inside-corner", "0+2400 wall-panel"]);
    const outside = faceAt(fill, [1500, 3700]);
    expect(outside.unfilled.map(({ z, height }) => [z, height])).toEqual([[2400, 100]]);
    expect(outside.unfilled.map(({ problem }) => fill.problems[problem]?.kind)).toEqual(["missing-piece"]);
    expect(auditAny(fill, { unit, storey: STOREY, kit })).toEqual([]);
  });

  // With panels of 2250 alone nothing reaches 2400: they stand as under a connector of 150 and a cap of 250.
  it("without connectors and with panels that end under one, leave its place unfilled, one problem a room", () => {
    const kit = kitOf(bare(2250));
    const unit = unitOf(ROOM);
    const fill = fillOne(unit, STOREY, kit);
    expect(heightsOf(fill, [1500, 3600])).toEqual(["0+2250 inside-corner", "0+2250 wall-panel"]);
    const gaps = fill.faces.map(({ room: name, unfilled }) =>
      [name, ...unfilled.map(({ z, height }) => `${z}+${height}`)].join(" "),
    );
    expect(new Set(gaps)).toEqual(new Set([" 2250+250", "Room 1 2250+150"]));
    const inside = fill.faces.filter(({ room: name }) => name !== null);
    const reasons = new Set(inside.flatMap(({ unfilled }) => unfilled.map(({ problem }) => problem)));
    expect([...reasons].map((problem) => fill.problems[problem]?.kind)).toEqual(["missing-piece"]);
    expect(auditAny(fill, { unit, storey: STOREY, kit })).toEqual([]);
  });

  it("without a width that fits leave the interval unfilled whole on both faces, with one problem", () => {
    const kit = kitOf([panel(600, 2400, { standard: true })]);
    const row: FillCase = {
      why: "",
      walls: [[0, 0, 3100, 0, 100]],
      storey: { clearHeight: 2400, slab: 0 },
      kit,
      runs: [],
    };
    const fill = fillOf(row);
    expect(runUpward(faceAt(fill, [100, 50]))).toBe("?3100?");
    expect(runUpward(faceAt(fill, [100, -50]))).toBe("?3100?");
    expect(problemKinds(fill).filter((kind) => kind === "no-exact-cover")).toHaveLength(1);
    expect(fill.totals.panels).toBe(0);
  });
});

describe("rooms and slabs", () => {
  it("an open room has caps, no connectors and no corner of them", () => {
    const fill = holdCase({
      why: "",
      walls: ROOM,
      more: { rooms: room({ kind: "open" }) },
      runs: [[1500, 3600, "C150 600 600 600 600 300 C150"]],
    });
    expect(faceAt(fill, [1500, 3600]).height).toBe(2500);
    expect(quantities(fill)).toMatchObject({ Cap250inside: 4, Cap250outside: 4 });
    expect(fill.bill.filter(({ code }) => code.startsWith("Conn"))).toEqual([]);
  });

  // Clear 900: 900 - 300 = 600, one panel on each face and nothing to take out first.
  it("a shaft of 900 locks itself: an error", () => {
    const fill = holdCase({
      why: "",
      walls: roundRoom([-50, -50], [950, 950], 100),
      more: { rooms: room({ kind: "open", at: [450, 450] }) },
      runs: [[450, 900, "C150 600 C150"]],
      problems: ["locked-ring"],
    });
    expect(problemKinds(fill, "error")).toEqual(["locked-ring"]);
  });

  // The slab lies along x 500..2000 of the south face. Its ends are ends of faces, so joints on both: 350, 1500 =
  // 2 · 600 + 300 and 850 = 600 + 250; where no corner is, the filler is at the greater x.
  it("a balcony slab makes a face of its own with the clear height and a connector", () => {
    const fill = holdCase({
      why: "",
      walls: ROOM,
      more: {
        slabs: [
          {
            id: "b",
            outline: [
              [500, -100],
              [2000, -100],
              [2000, -1300],
              [500, -1300],
            ],
          },
        ],
      },
      runs: [
        [1000, 0, "C150 350 600 600 300 600 250 C150"],
        [0, -100, "250 350"],
        [1000, -100, "600 600 300"],
        [2500, -100, "600 250 250"],
      ],
    });
    expect(heightsOf(fill, [1000, -100])).toEqual(["0+2250 wall-panel", "2250+150 wall-slab-connector"]);
    expect(heightsOf(fill, [2500, -100])).toEqual(["0+2250 wall-panel", "2250+250 slab-edge-cap"]);
    expect([0, 1000, 2500].map((x) => faceAt(fill, [x, -100]).height)).toEqual([2500, 2400, 2500]);
  });
});

describe("a kit whose narrowest panel is wider than ta + c", () => {
  it("is asked for the panel that lacks, not for walls that meet", () => {
    const corner = piece({ family: "inside-corner", code: "C", legs: [150, 150], height: 2400 });
    const kit = kitOf([panel(600, 2400), corner]);
    const fill = fillOf({ why: "", walls: ROOM, kit, runs: [] });
    const zones = fill.problems.filter(({ message }) => message.startsWith("The 250 mm on wall "));
    expect(zones).toHaveLength(8);
    for (const { message } of zones) expect(message).toMatch(/: add a panel 250 mm wide\.$/);
    expect(fill.problems.filter(({ message }) => /move one of the (two|them)/.test(message))).toEqual([]);
  });
});

describe("the engineer's own choice", () => {
  const pinned = (from: number, widths: readonly number[]): FillCase => ({
    why: "",
    walls: WALL,
    more: { pinned: [{ wall: "w1", from, widths }] },
    runs: [],
  });

  // 200..1850 pinned; before it 200, behind it 1150 = 600 + 550 with the filler at the greater x.
  it("is kept on both faces, and the rest is filled round it", () => {
    const row = pinned(200, [600, 600, 450]);
    const fill = fillOf(row);
    expect(runUpward(faceAt(fill, [100, 50]))).toBe("200 600 600 450 600 550");
    expect(runUpward(faceAt(fill, [100, -50]))).toBe("200 600 600 450 600 550");
    expect(problemKinds(fill, "error")).toEqual([]);
    expect(auditAny(fill, { unit: unitOf(WALL), storey: STOREY, kit: demoKit })).toEqual([]);
  });

  // 0..600 and 1800..2250 pinned; between them 1200 = 600 + 600, behind 750 = 600 + 150 with the filler at the greater x.
  it("twice on one interval is kept both times", () => {
    const row = pinned(0, [600]);
    const both = { wall: "w1", widths: [450] };
    const fill = fillOf({ ...row, more: { pinned: [{ ...both, from: 1800 }, ...(row.more?.pinned ?? [])] } });
    expect(runUpward(faceAt(fill, [100, 50]))).toBe("600 600 600 450 600 150");
    expect(problemKinds(fill, "error")).toEqual([]);
    expect(auditAny(fill, { unit: unitOf(WALL), storey: STOREY, kit: demoKit })).toEqual([]);
  });

  it("over another pinned piece is said with its place, and the one of lesser place is kept", () => {
    const pins = [400, 200].map((from) => ({ wall: "w1", from, widths: [600, 450] }));
    const fill = fillOf({ ...pinned(0, []), more: { pinned: pins } });
    expect(runUpward(faceAt(fill, [100, 50])).startsWith("200 600 450 ")).toBe(true);
    expect(
      fill.problems.filter(({ severity }) => severity === "error").map(({ message }) => message),
    ).toEqual([
      expect.stringMatching(/^The sequence 600 \+ 450 mm pinned on wall w1 from 400 mm does not fit /),
    ]);
  });

  // Stems on both sides at one place part the wall's faces into two lines; the pin is for the first alone.
  it("west of a crossing says nothing of the faces east of it", () => {
    const walls: readonly WallLine[] = [
      [0, 0, 6000, 0, 100],
      [3000, 0, 3000, 2500, 100],
      [3000, 0, 3000, -2500, 100],
    ];
    const fill = fillOf({ ...pinned(0, [450]), walls });
    expect(runUpward(faceAt(fill, [100, 50])).startsWith("450 ")).toBe(true);
    expect(problemKinds(fill, "error")).toEqual([]);
  });

  it("in a zone keeps the wall and the leg apart in its reason", () => {
    const pins = [{ wall: "w1", from: -50, widths: [250] }];
    const fill = fillOf({ why: "", walls: ROOM, runs: [], more: { pinned: pins } });
    const reasons = fill.faces.flatMap(({ pieces }) => pieces.map(({ reason }) => reason ?? ""));
    expect(reasons.filter((reason) => reason.endsWith("leg 0"))).toEqual([]);
  });

  // The zone opposite the corner is 250 wide, from the outer corner at -50 to the leg's end at 200.
  it("of two panels in a zone is refused: no joint can face their joint", () => {
    const pins = [{ wall: "w1", from: -50, widths: [100, 150] }];
    const fill = fillOf({ why: "", walls: ROOM, runs: [], more: { pinned: pins } });
    expect(problemKinds(fill, "error")).toEqual(["pinned-impossible"]);
  });

  // A start drawn 1.4 mm off the end of the wall is the end of the wall.
  it("that begins a hair off a joint begins at the joint", () => {
    const fill = fillOf(pinned(1.4, [600, 450]));
    expect(runUpward(faceAt(fill, [100, 50])).startsWith("600 450 ")).toBe(true);
    expect(problemKinds(fill, "error")).toEqual([]);
  });

  it("is the same of two for one place, in whatever order the file names them", () => {
    const both = [
      [600, 450],
      [450, 600],
    ].map((widths) => ({ wall: "w1", from: 0, widths }));
    const runs = [both, [...both].reverse()].map((pins) =>
      runUpward(faceAt(fillOf({ ...pinned(0, []), more: { pinned: pins } }), [100, 50])),
    );
    expect(runs[0]).toBe(runs[1]);
    expect(runs[0]?.startsWith("600 450 ")).toBe(true);
  });

  it.each([
    { why: "a width the kit has not", from: 0, widths: [610] },
    { why: "beyond the end of the wall", from: 2700, widths: [600] },
    { why: "before its beginning", from: -300, widths: [600] },
  ])("that cannot be is said and the wall filled as without it: $why", ({ from, widths }) => {
    const fill = fillOf(pinned(from, widths));
    expect(runUpward(faceAt(fill, [100, 50]))).toBe(PLAIN);
    expect(fill.problems.filter(({ kind }) => kind !== "too-heavy")).toHaveLength(1);
    expect(auditAny(fill, { unit: unitOf(WALL), storey: STOREY, kit: demoKit })).toEqual([]);
  });

  it("that runs over a door is said and the wall filled as without it", () => {
    const row = { ...pinned(600, [600, 600]), openings: [opening("d", "w1", [1000, 900, 0, 2100])] };
    const fill = fillOf(row);
    expect(runUpward(faceAt(fill, [100, 50]))).toBe("600 400 /900/ 600 500");
    expect(fill.problems.filter(({ kind }) => kind !== "too-heavy")).toHaveLength(1);
  });
});
