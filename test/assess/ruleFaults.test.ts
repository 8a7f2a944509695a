// Each rule of completeness finds the one fault that is put in for it, and nothing in the fill before.

import { describe, expect, it } from "vitest";
import type { Check } from "../../src/assess/checkDocument.ts";
import type { CheckedEntry } from "../../src/assess/entry.ts";
import { wholeChecks } from "../../src/assess/wholeChecks.ts";
import type { FacePiece, FilledFace, SoffitPiece, UnitFill } from "../../src/fill/result.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Project } from "../../src/plan/project.ts";
import { entryOf } from "../support/assessed.ts";
import { fillDocument, opening, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";
import { filled as sampleFill, sampleProject } from "../support/samples.ts";

const room: Project = projectOf({
  ...roomPlan(0),
  openings: [opening("d1", "w1", [1050, 900, 0, 2100])],
  services: [
    {
      id: "s1",
      path: [
        [1000, 1000],
        [1400, 1000],
      ],
      clearance: 60,
    },
  ],
  controlLines: [
    { id: "X", from: [500, -500], to: [500, 3000] },
    { id: "Y", from: [-500, 500], to: [4000, 500] },
  ],
});
const plain = entryOf({ project: room, fill: fillDocument(room) });
const two = sampleProject("two-bedroom");
const flat = entryOf({ project: two, fill: sampleFill(two) });

const of = (entry: CheckedEntry, kind: string): Check =>
  wholeChecks(entry).find((each) => each.kind === kind)!;
const spoiled = (entry: CheckedEntry, change: (fill: UnitFill) => Partial<UnitFill>): CheckedEntry => ({
  ...entry,
  fill: { ...entry.fill, ...change(entry.fill) },
});
const onFaces =
  (change: (piece: FacePiece, face: FilledFace) => FacePiece | null) =>
  (fill: UnitFill): Partial<UnitFill> => ({
    faces: fill.faces.map((face) => ({
      ...face,
      pieces: face.pieces.map((piece) => change(piece, face)).filter((piece) => piece !== null),
    })),
  });
const onSoffits =
  (change: (piece: SoffitPiece) => SoffitPiece | null) =>
  (fill: UnitFill): Partial<UnitFill> => ({
    soffits: fill.soffits.map((soffit) => ({
      ...soffit,
      pieces: soffit.pieces.map(change).filter((piece) => piece !== null),
    })),
  });
const once = <A extends readonly unknown[]>(is: (...given: A) => boolean) => {
  let done = false;
  return (...given: A): boolean => {
    if (done || !is(...given)) return false;
    done = true;
    return true;
  };
};

/** Without the fittings of a family on the first face that has any. */
const without =
  (family: string) =>
  ({ fittings }: UnitFill): Partial<UnitFill> => {
    const first = fittings.find((each) => each.family === family)!.face;
    return { fittings: fittings.filter((each) => each.family !== family || each.face !== first) };
  };

interface Row {
  readonly kind: string;
  readonly why: string;
  readonly entry: CheckedEntry;
  readonly spoil: (fill: UnitFill) => Partial<UnitFill>;
}

const ROWS: readonly Row[] = [
  {
    kind: "faces-tiled",
    why: "a panel over its neighbour, the area the same",
    entry: plain,
    spoil: (fill) => {
      const second = once((piece: FacePiece) => piece.family === "wall-panel" && piece.x > 0);
      return onFaces((piece) => (second(piece) ? { ...piece, x: piece.x - 50 } : piece))(fill);
    },
  },
  {
    kind: "joint-levels",
    why: "a level joint on one face that the other has not",
    entry: plain,
    spoil: (fill) => {
      const first = once((piece: FacePiece) => piece.family === "wall-panel" && piece.height > 1000);
      return onFaces((piece) => (first(piece) ? { ...piece, height: 900 } : piece))(fill);
    },
  },
  {
    kind: "outer-runs",
    why: "an outer corner piece as wide as the leg alone, its neighbour wider for it",
    entry: plain,
    spoil: (fill) => ({
      faces: fill.faces.map((face) => {
        const [low, high] = [250, face.length - 250];
        const moved = (x: number) => (x === low ? low - 100 : x === high ? high + 100 : x);
        const pieces = face.pieces.map((piece) => {
          const [from, to] = [moved(piece.x), moved(piece.x + piece.width)];
          return { ...piece, x: from, width: to - from };
        });
        return face.room === null ? { ...face, pieces } : face;
      }),
    }),
  },
  {
    kind: "joining-pieces",
    why: "the piece opposite a joining wall in two",
    entry: flat,
    spoil: (fill) => ({
      faces: fill.faces.map((face) => ({
        ...face,
        pieces: face.pieces.flatMap((piece) =>
          piece.zone && piece.width === 400
            ? [
                { ...piece, width: 200 },
                { ...piece, x: piece.x + 200, width: 200 },
              ]
            : [piece],
        ),
      })),
    }),
  },
  {
    kind: "ties-complete",
    why: "one row of one tie forgotten",
    entry: plain,
    spoil: ({ ties }) => ({
      ties: ties.map((tie, k) => (k === 3 ? { ...tie, heights: tie.heights.slice(1) } : tie)),
    }),
  },
  {
    kind: "ties-complete",
    why: "a line of ties forgotten",
    entry: flat,
    spoil: ({ ties }) => ({ ties: ties.slice(1) }),
  },
  {
    kind: "ties-on-faces",
    why: "a tie beyond the end of its face",
    entry: plain,
    spoil: ({ ties }) => ({ ties: ties.map((tie, k) => (k === 0 ? { ...tie, at: [-400, -400] } : tie)) }),
  },
  {
    kind: "ties-on-holes",
    why: "a row between two holes",
    entry: plain,
    spoil: ({ ties }) => ({ ties: ties.map((tie, k) => (k === 0 ? { ...tie, heights: [150, 500] } : tie)) }),
  },
  {
    kind: "ties-one-owner",
    why: "one tie of a wall hung from the other face",
    entry: plain,
    spoil: ({ ties }) => ({
      ties: ties.map((tie, k) => (k === 0 ? { ...tie, faces: [tie.faces[1], tie.faces[0]] as const } : tie)),
    }),
  },
  {
    kind: "joints-opposite",
    why: "a joint of one face 50 mm beside that of the other",
    entry: plain,
    spoil: (fill) => ({
      faces: fill.faces.map((face) => {
        const joint = face.pieces.find(
          ({ family, zone, x }) => family === "wall-panel" && !zone && x > 250,
        )?.x;
        const moved = (x: number) => (x === joint ? x + 50 : x);
        const pieces = face.pieces.map((piece) => {
          const [from, to] = [moved(piece.x), moved(piece.x + piece.width)];
          return { ...piece, x: from, width: to - from };
        });
        return face === fill.faces[0] ? { ...face, pieces } : face;
      }),
    }),
  },
  {
    kind: "ties-off-services",
    why: "a tie by the path of a service",
    entry: plain,
    spoil: ({ ties }) => ({ ties: ties.map((tie, k) => (k === 0 ? { ...tie, at: [1200, 1040] } : tie)) }),
  },
  {
    kind: "fittings-placed",
    why: "no ledger on a face",
    entry: plain,
    spoil: without("alignment-ledger"),
  },
  { kind: "fittings-placed", why: "no bracket on a face", entry: plain, spoil: without("wall-bracket") },
  { kind: "fittings-placed", why: "no brace on a face", entry: plain, spoil: without("brace") },
  {
    kind: "fittings-placed",
    why: "no aligner on a facade",
    entry: plain,
    spoil: without("facade-aligner"),
  },
  {
    kind: "openings-braced",
    why: "a brace shorter than the door",
    entry: plain,
    spoil: ({ fittings }) => ({
      fittings: fittings.map((each) => (each.family === "opening-brace" ? { ...each, length: 800 } : each)),
    }),
  },
  {
    kind: "soffits-tiled",
    why: "a slab panel missing",
    entry: plain,
    spoil: (fill) => {
      const first = once((piece: SoffitPiece) => piece.family === "slab-panel");
      return onSoffits((piece) => (first(piece) ? null : piece))(fill);
    },
  },
  {
    kind: "soffits-tiled",
    why: "two slab panels in one place, the area the same",
    entry: plain,
    spoil: ({ soffits }) => ({
      soffits: soffits.map((soffit) => {
        const panels = soffit.pieces.filter(({ family }) => family === "slab-panel");
        const [a] = panels;
        const twin = panels.find((piece) => piece !== a && piece.code === a!.code)!;
        return {
          ...soffit,
          pieces: soffit.pieces.map((piece) => (piece === twin ? { ...piece, outline: a!.outline } : piece)),
        };
      }),
    }),
  },
  {
    kind: "slab-panels-held",
    why: "the strips taken away",
    entry: flat,
    spoil: onSoffits((piece) => (piece.family === "shoring-strip" ? null : piece)),
  },
  {
    kind: "joint-drift",
    why: "every panel of one face in two",
    entry: plain,
    spoil: ({ faces }) => {
      const outer = faces.find(
        ({ room: inside, openings, length }) => inside === null && openings.length === 0 && length === 3200,
      );
      const halves = (piece: FacePiece) => [
        { ...piece, width: 100 },
        { ...piece, x: piece.x + 100, width: piece.width - 100 },
      ];
      return {
        faces: faces.map((face) =>
          face === outer ? { ...face, pieces: face.pieces.flatMap(halves) } : face,
        ),
      };
    },
  },
];

describe("one fault", () => {
  it.each(ROWS)("$kind: $why", ({ kind, entry, spoil }) => {
    expect(of(entry, kind)).toMatchObject({ status: "within", value: 0 });
    const found = of(spoiled(entry, spoil), kind);
    expect(found.status).toBe("over");
    expect(found.reason).toBeTruthy();
  });
});

describe("what a plan or a kit does not say", () => {
  const bare: CheckedEntry = { ...plain, plan: { services: [], controlLines: [] } };

  it.each([
    { kind: "ties-off-services", status: "not-applicable", reason: /no services drawn/ },
    { kind: "pins-off-services", status: "not-applicable", reason: /no services drawn/ },
    { kind: "datum", status: "not-checked", reason: /reads from the least corner/ },
    { kind: "ties-off-movement-joints", status: "not-checked", reason: /no member for movement joints/ },
    { kind: "crew-balance", status: "not-applicable", reason: /fewer than two rooms/ },
    { kind: "joint-growth", status: "not-checked", reason: /take what it has grown off the last filler/ },
  ])("$kind is $status, with the reason", ({ kind, status, reason }) => {
    const found = of(bare, kind);
    expect(found.status).toBe(status);
    expect(found.reason).toMatch(reason);
  });

  it("two control lines that never cross give no datum, two that do give one", () => {
    const [x] = plain.plan.controlLines;
    expect(of({ ...plain, plan: { services: [], controlLines: [x!, x!] } }, "datum").status).toBe(
      "not-checked",
    );
    expect(of(plain, "datum").status).toBe("within");
  });

  it("a service along a wall leaves no place for a layout pin; one across it does", () => {
    const along = {
      id: "s2",
      path: [
        [0, 0],
        [3100, 0],
      ] as const,
      clearance: 120,
    };
    const across = {
      id: "s3",
      path: [
        [1500, -500],
        [1500, 500],
      ] as const,
      clearance: 120,
    };
    const withService = (service: typeof along | typeof across): CheckedEntry => ({
      ...plain,
      plan: { services: [service], controlLines: [] },
    });
    expect(of(withService(along), "pins-off-services").status).toBe("over");
    expect(of(withService(across), "pins-off-services").status).toBe("within");
  });

  it("tells widths that look alike, and leaves it to a mark", () => {
    const odd = once((piece: FacePiece) => piece.family === "wall-panel");
    const widest = Math.max(
      ...plain.fill.faces.flatMap(({ pieces }) =>
        pieces.map((piece) => (piece.family === "wall-panel" ? piece.width : 0)),
      ),
    );
    expect(of(plain, "near-widths").status).toBe("within");
    const entry = spoiled(
      plain,
      onFaces((piece) => (odd(piece) ? { ...piece, width: widest - 20 } : piece)),
    );
    expect(of(entry, "near-widths")).toMatchObject({
      status: "not-checked",
      value: 1,
      reason: `${widest - 20}/${widest} mm: mark them so that nobody takes one for the other`,
    });
  });

  it("a kit without rows, tolerance or accessories is not judged by them", () => {
    const { tieRows: _rows, tieTolerance: _tolerance, holes: _holes, ...rules } = demoKit.rules;
    const none = {
      ...demoKit,
      rules,
      pieces: demoKit.pieces.filter(({ family }) => family === "wall-panel"),
    };
    const entry: CheckedEntry = { ...plain, kit: none };
    expect(of(entry, "ties-complete").status).toBe("not-checked");
    expect(of(entry, "joint-drift").status).toBe("not-checked");
    expect(of(entry, "ties-on-holes").status).toBe("not-checked");
    expect(of(entry, "fittings-placed").status).toBe("not-applicable");
    expect(of(entry, "openings-braced").status).toBe("not-applicable");
  });
});
