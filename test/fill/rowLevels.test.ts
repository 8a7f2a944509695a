// A row of ties in the joint between two pieces of a stack: nothing holds there, and that is said.

import { describe, expect, it } from "vitest";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit } from "../../src/kit/kit.ts";
import { fillOne } from "../support/filled.ts";
import { unitOf } from "../support/walls.ts";

const HIGH = { clearHeight: 3400, slab: 100 };
const unit = unitOf([[0, 0, 3000, 0, 100]]);

function kitWith(rows: readonly number[]): Kit {
  return { ...demoKit, rules: { ...demoKit.rules, tieRows: { ...demoKit.rules.tieRows!, value: rows } } };
}

/** Where the stack of the wall has joints, floor upward. */
function levels(): readonly number[] {
  const face = fillOne(unit, HIGH, demoKit).faces.find(({ length }) => length === 3000);
  const panels = face!.pieces.filter(({ family }) => family === "wall-panel");
  return [...new Set(panels.map(({ z }) => z))].filter((z) => z > 0).sort((a, b) => a - b);
}

describe("a tie row at the level of a joint of the stack", () => {
  const [level] = levels();

  it("is there to be tried: this wall has two rows of panels", () => {
    expect(level).toBeGreaterThan(0);
  });

  it.each([
    { why: "at the joint", off: 0, said: 1, ties: false },
    { why: "a millimetre over it", off: 1, said: 0, ties: true },
    { why: "a millimetre under it", off: -1, said: 0, ties: true },
  ])("$why", ({ off, said, ties }) => {
    const row = level! + off;
    const fill = fillOne(unit, HIGH, kitWith([150, row]));
    const told = fill.problems.filter(({ kind }) => kind === "tie-row");
    expect(told).toHaveLength(said);
    for (const { severity, message } of told) {
      expect(severity).toBe("warning");
      expect(message).toContain(`at ${row} mm`);
    }
    expect(fill.ties.some(({ heights }) => heights.includes(row))).toBe(ties);
  });

  it("is no fault where the wall ends below it", () => {
    const low = fillOne(unit, { clearHeight: 2400, slab: 100 }, kitWith([150, 5000]));
    expect(low.problems.filter(({ kind }) => kind === "tie-row")).toEqual([]);
  });
});
