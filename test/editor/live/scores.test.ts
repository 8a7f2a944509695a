// The figures on the screen and their change since the last edit.

import { describe, expect, it } from "vitest";
import { createLiveFill } from "../../../src/editor/live/liveFill.ts";
import {
  baseOf,
  comparedWidths,
  judged,
  type Scores,
  scoresOf,
  stepsAfter,
} from "../../../src/editor/live/scores.ts";
import { firstPaneHeight, keptPaneHeight, startScreen, withScreen } from "../../../src/editor/live/screen.ts";
import { comparedScores, createWorkbench, inViewOf } from "../../../src/editor/live/workbench.ts";
import { takeStep, walk, withSession } from "../../../src/editor/state/editorState.ts";
import { words } from "../../../src/editor/words/say.ts";
import { fillUnit } from "../../../src/fill/fillUnit.ts";
import { loadUnion } from "../../../src/geom/union.ts";
import { openSample } from "../scene/sampleScene.ts";

const sample = openSample("two-bedroom");
const union = await loadUnion();

function bench() {
  return createWorkbench(
    sample.document,
    createLiveFill({
      fillNow: (ask) => fillUnit({ ...ask, union }),
      fillBeside: null,
      clock: () => 0,
      quick: 8,
    }),
  );
}

// Wall w10, between the bedrooms, 100 mm to the east: the same walls, other runs on either side of it.
const MOVE = {
  kind: "move",
  unit: "H",
  items: [{ bucket: "walls", id: "w10" }],
  dx: 100,
  dy: 0,
  stretch: true,
} as const;

describe("the figures", () => {
  it("are those of the bill and the counts of the fill", () => {
    const { fill } = sample.live;
    const scores = scoresOf(sample.live);
    expect(scores).toMatchObject({ closures: fill.totals.closures, fillers: fill.totals.fillers });
    expect(scores.mass).toBeCloseTo(
      fill.bill.reduce((sum, { mass }) => sum + mass, 0),
      9,
    );
  });

  it("have nothing to be compared with before the first step", () => {
    const at = bench();
    expect(comparedScores(at, inViewOf(at, at.editor.get()))?.before).toBeNull();
  });

  it("are compared with those before the last step, until the next", () => {
    const at = bench();
    const first = comparedScores(at, inViewOf(at, at.editor.get()))?.now;
    at.editor.set((state) => takeStep(state, words("step.move", { count: 1 }), [MOVE], []));
    const moved = comparedScores(at, inViewOf(at, at.editor.get()));
    expect(moved?.before).toEqual(first);
    expect(moved?.now).not.toEqual(first);
    at.editor.set((state) => withSession(state, { hovered: null }));
    expect(comparedScores(at, inViewOf(at, at.editor.get()))?.before).toEqual(first);
    at.editor.set((state) => walk(state, "undo"));
    const back = comparedScores(at, inViewOf(at, at.editor.get()));
    expect(back?.now).toEqual(first);
    expect(back?.before).toEqual(moved?.now);
  });
});

describe("the steps to compare with", () => {
  const documents = ["a", "b", "c"].map((name) => ({ ...sample.document, name }));
  const [a, b, c] = documents as [typeof sample.document, typeof sample.document, typeof sample.document];

  it("stay while nothing changes and go on with every step", () => {
    const start = { current: a, before: null };
    expect(stepsAfter(start, a)).toBe(start);
    expect(stepsAfter(stepsAfter(start, b), c)).toEqual({ current: c, before: b });
  });

  it("give the document as it stands while a gesture shows another", () => {
    const steps = { current: b, before: a };
    expect(baseOf(steps, b)).toBe(a);
    expect(baseOf(steps, c)).toBe(b);
  });
});

describe("a change", () => {
  it.each([
    [-2, "better", "fewer is better"],
    [0, "same", "nothing has changed"],
    [1, "worse", "more is worse"],
  ] as const)("of %i is %s: %s", (...[change, expected]) => {
    expect(judged(change)).toBe(expected);
  });

  it("of widths tells those that are gone and those that are new", () => {
    const of = (...widths: readonly (readonly [number, number])[]): Scores => ({
      ...{ closures: 0, fillers: 0, sizes: 0, panels: 0, mass: 0 },
      widths: widths.map(([width, count]) => ({ width, count, isFiller: width < 300 })),
    });
    const compared = comparedWidths({ now: of([600, 10], [100, 2]), before: of([600, 12], [200, 3]) });
    expect(compared.map(({ width, count, change }) => [width, count, change])).toEqual([
      [600, 10, -2],
      [200, 0, -3],
      [100, 2, 2],
    ]);
    expect(comparedWidths({ now: of([600, 10]), before: null })[0]?.change).toBeNull();
  });
});

describe("the layout of the screen", () => {
  it.each([
    [900, 156, "a usual window"],
    [800, 140, "a low one: less, so that the plan keeps three quarters"],
    [2000, 156, "never more than the first height"],
    [300, 96, "never less than the least"],
  ])("begins with a pane for a window of %i px: %i, %s", (height, expected) => {
    expect(firstPaneHeight(height)).toBe(expected);
  });

  it("keeps the pane within its limits", () => {
    expect([10, 200.4, 1000].map(keptPaneHeight)).toEqual([96, 200, 420]);
  });

  it("is the same object where nothing changes", () => {
    const screen = startScreen();
    expect(withScreen(screen, { panel: null })).toBe(screen);
    expect(withScreen(screen, { panel: "problems" })).not.toBe(screen);
  });
});
