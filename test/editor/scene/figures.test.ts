// Where the figures of dimensions stand, and where problems stand in the plan.

import { describe, expect, it } from "vitest";
import { liveDimensions } from "../../../src/editor/dimensions.ts";
import { liveFigures, markFigures } from "../../../src/editor/scene/figures.ts";
import { grownBody } from "../../../src/editor/scene/overlay.ts";
import { placeProblems } from "../../../src/editor/scene/problemPlaces.ts";
import type { Viewport } from "../../../src/editor/scene/viewport.ts";
import type { Mark } from "../../../src/editor/tools/protocol.ts";
import type { Problem } from "../../../src/fill/result.ts";
import { openSample } from "./sampleScene.ts";

const sample = openSample("two-bedroom");
const view: Viewport = { centre: [5500, 3800], scale: 0.08, width: 1440, height: 676 };
const dimensions = liveDimensions(sample.unit, [{ bucket: "walls", id: "w8" }]);
const plain = { marks: [], halfWall: 115, inTheWay: [] };

describe("figures of the selected wall", () => {
  const figures = liveFigures(view, dimensions, plain);

  it("are those that have a line in the plan", () => {
    expect(figures.map(({ key }) => key)).toEqual(["clear-left", "clear-right", "length"]);
    expect(figures.every(({ isOpen, isActive }) => isOpen && !isActive)).toBe(true);
  });

  it("stand off the wall for its length, and in the room for its clear widths", () => {
    const length = figures.find(({ key }) => key === "length");
    const clear = figures.find(({ key }) => key === "clear-right");
    // Wall w8 lies level at y 4050, hence on the screen at 338 − 250 × 0.08 = 318.
    expect(length?.from[1]).toBe(length?.to[1]);
    expect((length?.at[1] ?? 0) - 318).toBeGreaterThan(115 * 0.08 + 20);
    expect(clear?.from[0]).toBe(clear?.to[0]);
  });

  it("hold the text that is being typed, and the value before", () => {
    const typing: Mark = { kind: "typing", key: "length", text: "61", was: 6225 };
    const typed = liveFigures(view, dimensions, { ...plain, marks: [typing] }).find(
      ({ isActive }) => isActive,
    );
    expect(typed).toMatchObject({ key: "length", typed: "61", was: 6225 });
  });

  it("step aside for the name of a room", () => {
    const clear = figures.find(({ key }) => key === "clear-right");
    if (clear === undefined) throw new Error("no clear width");
    const moved = liveFigures(view, dimensions, { ...plain, inTheWay: [clear.at] });
    const at = moved.find(({ key }) => key === "clear-right")?.at ?? clear.at;
    expect(at[0]).toBe(clear.at[0]);
    expect(Math.abs(at[1] - clear.at[1])).toBeGreaterThan(26);
  });

  it("stay in view when the middle of their line is off the screen", () => {
    const near: Viewport = { ...view, centre: [10_500, 4050], scale: 0.5 };
    const length = liveFigures(near, dimensions, plain).find(({ key }) => key === "length");
    expect(length?.at[0]).toBeGreaterThan(0);
    expect(length?.at[0]).toBeLessThan(1440);
  });
});

describe("figures of a gesture", () => {
  it("keep length and angle apart and close to their line", () => {
    const line = { kind: "figure", from: [0, 0], to: [3000, 0], typed: null, isActive: false } as const;
    const marks: readonly Mark[] = [
      { ...line, name: "dimension.length", value: 3000, unit: "mm" },
      { ...line, name: "dimension.angle", value: 0, unit: "degrees" },
    ];
    const [length, angle] = markFigures({ ...view, centre: [0, 0] }, marks, 115);
    expect(length?.at[0]).toBeCloseTo(720 + 120, -1);
    expect(length?.at[1]).toBeGreaterThan(338);
    expect(angle?.at[1]).toBeLessThan(338);
  });
});

describe("the outline of a selected thing", () => {
  it("stands clear of the body on all sides, half a thickness beyond the ends", () => {
    // Wall w8 runs from 4700 to 10925 at y 4050, 100 thick.
    const corners = grownBody(sample.unit, { bucket: "walls", id: "w8" }, 79);
    expect(corners).toEqual([
      [4650, 3921],
      [10_975, 3921],
      [10_975, 4179],
      [4650, 4179],
    ]);
  });

  it("is nothing where the thing is not there any more", () => {
    expect(grownBody(sample.unit, { bucket: "walls", id: "none" }, 79)).toEqual([]);
  });
});

describe("the place of a problem", () => {
  const face = sample.live.fill.faces[3];
  const at = (where: Problem["where"], severity: Problem["severity"] = "warning") => {
    const problem: Problem = { severity, kind: "test", message: "", where };
    const fill = { ...sample.live.fill, problems: [problem] };
    return placeProblems(sample.unit, { ...sample.live, fill })[0]?.at;
  };
  if (face === undefined) throw new Error("the sample has changed");

  type Row = readonly [where: Problem["where"], expected: readonly number[] | null, why: string];
  const ROWS: readonly Row[] = [
    [{ at: [12, 34] as const }, [12, 34], "it says where"],
    [{ face: face.id, x: 0 }, [...face.from], "at the beginning of a face"],
    [{ face: face.id, x: face.length }, [...face.to], "at the end of a face"],
    [{ wall: "w8" }, [7812.5, 4050], "the middle of a wall"],
    [{ opening: "d3" }, [7450, 4050], "the middle of an opening"],
    [{ room: "Hall" }, [7800, 4700], "the name of a room"],
    [{ code: "X" }, null, "a piece of the kit stands nowhere"],
  ];
  it.each(ROWS)("%j: %j, %s", (where, expected) => {
    expect(at(where)).toEqual(expected);
  });

  it("comes after all errors when it is a warning", () => {
    const make = (severity: Problem["severity"], kind: string): Problem => ({
      severity,
      kind,
      message: "",
      where: {},
    });
    const problems = [make("warning", "a"), make("error", "b"), make("warning", "c"), make("error", "d")];
    const fill = { ...sample.live.fill, problems };
    const placed = placeProblems(sample.unit, { ...sample.live, fill });
    expect(placed.map(({ number, problem }) => `${number}${problem.kind}`)).toEqual(["1b", "2d", "3a", "4c"]);
  });
});
