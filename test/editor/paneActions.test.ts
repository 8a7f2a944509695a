import { describe, expect, it } from "vitest";
import { createLiveFill } from "../../src/editor/live/liveFill.ts";
import { createWorkbench, inViewOf, type Workbench } from "../../src/editor/live/workbench.ts";
import {
  chooseCover,
  isPinned,
  putFocus,
  showOtherFace,
  swapWithNext,
  togglePin,
  tryNudge,
} from "../../src/editor/pane/paneActions.ts";
import { paneViewNow } from "../../src/editor/pane/usePane.ts";
import { walk } from "../../src/editor/state/editorState.ts";
import { choicesOf } from "../../src/fill/choices.ts";
import { fillUnit } from "../../src/fill/fillUnit.ts";
import { type SeenStretch, stretchesSeen } from "../../src/fill/stretchPieces.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { projectToDocument } from "../../src/plan/documentProject.ts";
import type { Project } from "../../src/plan/project.ts";
import { sampleProject } from "../support/samples.ts";

const union = await loadUnion();

function benchOn(project: Project): Workbench {
  const fills = createLiveFill({
    fillNow: (ask) => fillUnit({ ...ask, union }),
    fillBeside: null,
    clock: () => 0,
    quick: 8,
  });
  return createWorkbench(projectToDocument(project), fills);
}

function view(bench: Workbench) {
  const now = paneViewNow(bench, inViewOf(bench, bench.editor.get()));
  if (now === null) throw new Error("nothing in view");
  return now;
}

/** A bench with the hand on the first piece of the first interval that passes. */
function benchOnPiece(
  passes: (seen: SeenStretch) => boolean,
  project = sampleProject("two-bedroom"),
): Workbench {
  const bench = benchOn(project);
  const { filled } = view(bench).given;
  for (const [index, face] of filled.fill.faces.entries()) {
    const seen = stretchesSeen(filled, index).find(passes);
    if (seen === undefined) continue;
    const { unit } = bench.editor.get().session.selection;
    putFocus(bench, { unit, face: face.id, level: "piece", x: seen.x, z: 0 }, face.walls);
    return bench;
  }
  throw new Error("no such interval in the sample");
}

const hasTwoWidths = ({ isZone, pieces }: SeenStretch) =>
  !isZone && pieces.length > 1 && pieces[0]?.width !== pieces[1]?.width;
const widths = (bench: Workbench) => view(bench).now.seen?.pieces.map(({ width }) => width);
const steps = (bench: Workbench) => bench.editor.get().history.past.length;
const pins = (bench: Workbench) => Object.values(inViewOf(bench, bench.editor.get()).unit.pinned);
function undo(bench: Workbench): void {
  bench.editor.set((state) => walk(state, "undo"));
}

describe("on a face", () => {
  it("a piece is pinned and unpinned, one step each", () => {
    const bench = benchOnPiece(hasTwoWidths);
    const before = widths(bench);
    togglePin(bench);
    expect(pins(bench).map((pin) => pin.widths)).toEqual([[before?.[0]]]);
    expect(isPinned(view(bench))).toBe(true);
    expect(widths(bench)?.[0]).toBe(before?.[0]);
    togglePin(bench);
    expect(pins(bench)).toEqual([]);
    expect(steps(bench)).toBe(2);
  });

  it("a whole interval is pinned where the hand is on all of it", () => {
    const bench = benchOnPiece(hasTwoWidths);
    const focus = bench.focus.get()!;
    bench.focus.set(() => ({ ...focus, level: "stretch" }));
    togglePin(bench);
    expect([...(pins(bench)[0]?.widths ?? [])].sort()).toEqual([...(widths(bench) ?? [])].sort());
  });

  it("two pieces change places, the hand goes along, and one undo puts them back", () => {
    const bench = benchOnPiece(hasTwoWidths);
    const [first, second, ...rest] = widths(bench)!;
    swapWithNext(bench);
    expect(widths(bench)).toEqual([second, first, ...rest]);
    expect(view(bench).now.part?.width).toBe(first);
    expect(steps(bench)).toBe(1);
    undo(bench);
    expect(widths(bench)).toEqual([first, second, ...rest]);
  });

  it("swapping twice leaves one pin, never two that overlap", () => {
    const bench = benchOnPiece((seen) => hasTwoWidths(seen) && seen.pieces.length > 2);
    swapWithNext(bench);
    swapWithNext(bench);
    expect(pins(bench)).toHaveLength(1);
    expect(view(bench).given.filled.fill.problems.map(({ kind }) => kind)).not.toContain("pinned-impossible");
  });

  it("another cover is chosen from those offered", () => {
    const bench = benchOnPiece(hasTwoWidths);
    const now = view(bench);
    const other = choicesOf(now.now.seen!, now.given, 4).find(({ isInUse }) => !isInUse)!;
    chooseCover(bench, now, other.pinned!);
    expect(widths(bench)).toEqual(other.pieces.map(({ width }) => width));
    expect(steps(bench)).toBe(1);
  });

  it("the other face of the wall comes into view, the same wall selected", () => {
    const bench = benchOnPiece(hasTwoWidths);
    const before = view(bench).now.drawn.face;
    showOtherFace(bench);
    const after = view(bench).now.drawn.face;
    expect(after.id).not.toBe(before.id);
    expect(after.walls.some((wall) => before.walls.includes(wall))).toBe(true);
  });

  it.each([
    { why: "pinning", act: togglePin },
    { why: "swapping", act: swapWithNext },
    { why: "a nudge", act: tryNudge },
  ])("$why says what is missing where the hand is on nothing, and takes no step", ({ act }) => {
    const bench = benchOn(sampleProject("one-room"));
    act(bench);
    expect(steps(bench)).toBe(0);
    expect(bench.editor.get().session.message).not.toBeNull();
  });

  it("a nudge takes a closure away in one step", () => {
    const project = sampleProject("row-of-three");
    const [first, ...others] = project.units;
    const openings = first!.openings.map((own, k) => (k === 1 ? { ...own, at: own.at + 25 } : own));
    const hasClosure = ({ isZone, pieces }: SeenStretch) =>
      !isZone && pieces.some(({ kind }) => kind === "closure");
    const bench = benchOnPiece(hasClosure, { ...project, units: [{ ...first!, openings }, ...others] });
    const focus = bench.focus.get()!;
    bench.focus.set(() => ({ ...focus, level: "stretch" }));
    const before = view(bench).given.filled.fill.totals.closures;
    tryNudge(bench);
    expect(view(bench).given.filled.fill.totals.closures).toBeLessThan(before);
    expect(steps(bench)).toBe(1);
    undo(bench);
    expect(view(bench).given.filled.fill.totals.closures).toBe(before);
  });
});
