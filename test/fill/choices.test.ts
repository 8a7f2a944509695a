import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Choice, choicesOf, type FilledWith, pinOf, withNextSwapped } from "../../src/fill/choices.ts";
import { fillUnit } from "../../src/fill/fillUnit.ts";
import type { OrderedPiece } from "../../src/fill/order.ts";
import { type SeenStretch, stretchAt, stretchesSeen } from "../../src/fill/stretchPieces.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { resolveKit } from "../../src/kit/resolve.ts";
import type { Pinned, Project, Unit } from "../../src/plan/project.ts";
import { sampleProject } from "../support/samples.ts";

const union = await loadUnion();

function fillOf(project: Project, unit: Unit): FilledWith {
  const answer = resolveKit(project.kit);
  if (answer.status !== "ok") throw new Error("the kit of the sample cannot be read");
  const { storey, fillers } = project;
  const filled = fillUnit({ unit, storey, kit: answer.kit, union, prefix: unit.id, fillers });
  return { filled, unit, kit: answer.kit, fillers };
}

const samples = ["one-room", "two-bedroom", "mirrored-pair"].map((name) => {
  const project = sampleProject(name);
  return { name, project, given: project.units.map((unit) => fillOf(project, unit)) };
});

function pinned(project: Project, { unit }: FilledWith, pin: Pinned): FilledWith {
  return fillOf(project, { ...unit, pinned: [pin] });
}

const widthsOf = (pieces: readonly OrderedPiece[]) => pieces.map(({ width, kind }) => `${width} ${kind}`);

function expectKept(project: Project, given: FilledWith, seen: SeenStretch, pieces: readonly OrderedPiece[]) {
  const pin = pinOf(seen, { x: seen.x, pieces }, given);
  if (pin === null) throw new Error("no pin");
  const after = pinned(project, given, pin);
  const { face, opposite } = seen.stretch;
  expect(widthsOf(stretchAt(after.filled, face, seen.x)?.pieces ?? [])).toEqual(widthsOf(pieces));
  if (opposite !== null) {
    const other = stretchesSeen(after.filled, opposite).find(
      ({ stretch }) => stretch.low === seen.stretch.low && stretch.high === seen.stretch.high,
    );
    expect(widthsOf(other?.pieces ?? [])).toEqual(widthsOf([...pieces].reverse()));
  }
  const kinds = after.filled.fill.problems.map(({ kind }) => kind);
  expect(kinds).not.toContain("pinned-impossible");
}

const place = fc.record({
  sample: fc.nat(),
  unit: fc.nat(),
  face: fc.nat(),
  stretch: fc.nat(),
  choice: fc.nat(),
});

/** Some stretch of some face of the samples. */
function pick(at: { sample: number; unit: number; face: number; stretch: number }) {
  const { project, given } = samples[at.sample % samples.length]!;
  const own = given[at.unit % given.length]!;
  const all = own.filled.drafts.flatMap((_, face) => stretchesSeen(own.filled, face));
  return { project, given: own, seen: all[(at.face * 7 + at.stretch) % all.length]! };
}

describe("the choices of a stretch", () => {
  it("begin with the sequence in use and go on with other exact sequences, each once", () => {
    let offered = 0;
    for (const { given } of samples) {
      for (const own of given) {
        own.filled.drafts.forEach((_, face) => {
          for (const seen of stretchesSeen(own.filled, face)) {
            const choices = choicesOf(seen, own, 5);
            offered += choices.length;
            expect(choices.map(({ isInUse }) => isInUse)).toEqual(choices.map((_, k) => k === 0));
            expect(choices[0]?.pieces).toEqual(seen.pieces.map(({ width, kind }) => ({ width, kind })));
            for (const { pieces } of choices)
              expect(pieces.reduce((sum, { width }) => sum + width, 0)).toBe(seen.length);
            const sorted = choices.map(({ pieces }) => widthsOf(pieces).sort().join());
            expect(new Set(sorted).size).toBe(sorted.length);
          }
        });
      }
    }
    expect(offered).toBeGreaterThan(200);
  });

  it("come as the engineer's own when pinned: the fill then carries exactly that sequence on both faces", () => {
    let tried = 0;
    fc.assert(
      fc.property(place, (at) => {
        const { project, given, seen } = pick(at);
        const choices = choicesOf(seen, given, 4);
        const choice: Choice | undefined = choices[at.choice % Math.max(1, choices.length)];
        if (choice === undefined || choice.pinned === null) return;
        tried += 1;
        expectKept(project, given, seen, choice.pieces);
      }),
      { seed: 20261, numRuns: 60 },
    );
    expect(tried).toBeGreaterThan(50);
  });

  it("keep a swapped pair in its new order when pinned", () => {
    let tried = 0;
    fc.assert(
      fc.property(place, (at) => {
        const { project, given, seen } = pick(at);
        const pieces = withNextSwapped(seen, at.choice % Math.max(1, seen.pieces.length - 1));
        if (pieces === null) return;
        tried += 1;
        expectKept(project, given, seen, pieces);
      }),
      { seed: 20262, numRuns: 200 },
    );
    expect(tried).toBeGreaterThan(10);
  });

  it("leave one pinned piece in its place", () => {
    fc.assert(
      fc.property(place, (at) => {
        const { project, given, seen } = pick(at);
        const piece = seen.pieces[at.choice % Math.max(1, seen.pieces.length)];
        const pin = piece === undefined ? null : pinOf(seen, { x: piece.x, pieces: [piece] }, given);
        if (piece === undefined || pin === null) return;
        const after = pinned(project, given, pin);
        const stood = stretchAt(after.filled, seen.stretch.face, piece.x)?.pieces ?? [];
        expect(stood).toContainEqual(piece);
      }),
      { seed: 20263, numRuns: 40 },
    );
  });

  it("say what each costs against the one in use, counted over again", () => {
    const { given } = samples[1]!;
    const own = given[0]!;
    const seen = own.filled.drafts.flatMap((_, face) => stretchesSeen(own.filled, face));
    const withFiller = seen.find((each) => !each.isZone && choicesOf(each, own, 3).length === 3)!;
    for (const { pieces, change } of choicesOf(withFiller, own, 3)) {
      expect(change.pieces).toBe(pieces.length - withFiller.pieces.length);
      const after = fillOf(samples[1]!.project, {
        ...own.unit,
        pinned: [pinOf(withFiller, { x: withFiller.x, pieces }, own)!],
      });
      expect(after.filled.fill.totals.fillers - own.filled.fill.totals.fillers).toBe(change.fillers * 2);
      const sizes = (filled: FilledWith["filled"]) =>
        new Set(
          filled.drafts.flatMap(({ parts }) =>
            parts.filter(({ kind }) => kind === "panel").map(({ low, high }) => high - low),
          ),
        ).size;
      expect(change.sizes).toBe(sizes(after.filled) - sizes(own.filled));
    }
  });
});

describe("a pin on an oblique wall", () => {
  // A square room of 4 m turned by the 3-4-5 triangle: no coordinate along its walls is a plan coordinate.
  const turn = (x: number, y: number) => [0.8 * x - 0.6 * y, 0.6 * x + 0.8 * y] as const;
  const corners = [turn(0, 0), turn(4000, 0), turn(4000, 4000), turn(0, 4000)];
  const unit: Unit = {
    id: "A",
    name: "",
    walls: corners.map((from, k) => ({
      id: `w${k}`,
      from,
      to: corners[(k + 1) % 4]!,
      thickness: 100,
      justify: "centre",
    })),
    openings: [],
    rooms: [],
    slabs: [],
    slabOpenings: [],
    services: [],
    controlLines: [],
    pinned: [],
  };
  const project: Project = { ...samples[0]!.project, units: [unit], pours: [] };

  it.each([0, 1, 2, 3, 4, 5, 6, 7])("keeps every choice of face %i", (face) => {
    const given = fillOf(project, unit);
    for (const seen of stretchesSeen(given.filled, face)) {
      for (const { pieces } of choicesOf(seen, given, 2)) expectKept(project, given, seen, pieces);
    }
  });
});

describe("swapping", () => {
  it.each([
    { why: "the last piece has no next", index: 9, widths: [100, 600] },
    { why: "two equal pieces have no other order", index: 0, widths: [600, 600] },
  ])("gives nothing where $why", ({ index, widths }) => {
    const pieces = widths.map((width, k) => ({ width, kind: "panel" as const, x: k }));
    const seen = { pieces } as unknown as SeenStretch;
    expect(withNextSwapped(seen, index)).toBeNull();
  });

  it("is undone by swapping again", () => {
    const pieces = [100, 600].map((width) => ({ width, kind: "panel" as const, x: 0 }));
    const once = withNextSwapped({ pieces } as unknown as SeenStretch, 0)!;
    expect(once.map(({ width }) => width)).toEqual([600, 100]);
  });
});
