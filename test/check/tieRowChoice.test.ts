// The fewest rows of ties: none fewer does, and none as many does better.

import { describe, expect, it } from "vitest";
import { envelopeOf } from "../../src/check/envelope.ts";
import { chooseTieRows, greatestOnRows } from "../../src/check/tieRowChoice.ts";
import { value } from "../support/answers.ts";

const HOLES = Array.from({ length: 14 }, (_, k) => 150 + 150 * k);
const strip = { envelope: envelopeOf(25, 2500), surface: 2500, width: 600 };
const chosen = (limit: number, holes = HOLES) => value(chooseTieRows({ ...strip, holes, limit }));

describe("rows of ties for 2.5 m of liquid on holes every 150", () => {
  it.each([
    { limit: 47, count: 1 },
    { limit: 20, count: 4 },
    { limit: 13, count: 5 },
    { limit: 11.4, count: 5 },
  ])("$limit kN ask for $count", ({ limit, count }) => {
    const choice = chosen(limit)!;
    expect(choice.rows.length).toBeLessThanOrEqual(count);
    expect(choice.force).toBeLessThanOrEqual(limit);
    expect(value(greatestOnRows(strip, choice.rows))).toBe(choice.force);
  });

  it("are no more than needed: with one row less no set of holes is within, tried by another walk", () => {
    const limit = 12;
    const choice = chosen(limit)!;
    let least = Number.POSITIVE_INFINITY;
    let fewer = 0;
    for (let bits = 1; bits < 1 << HOLES.length; bits++) {
      const rows = HOLES.filter((_, k) => (bits & (1 << k)) !== 0);
      if (rows.length > choice.rows.length) continue;
      const force = value(greatestOnRows(strip, rows));
      if (rows.length === choice.rows.length) least = Math.min(least, force);
      else if (force <= limit) fewer++;
    }
    expect(fewer).toBe(0);
    expect(choice.force).toBe(least);
  });

  it("never grow in number with a greater limit", () => {
    const counts = [9, 10, 12, 14, 17, 25].map(
      (limit) => chosen(limit)?.rows.length ?? Number.POSITIVE_INFINITY,
    );
    counts.slice(1).forEach((count, k) => {
      expect(count).toBeLessThanOrEqual(counts[k]!);
    });
  });

  it("are none where a tie in every hole is not enough, and refused without holes", () => {
    expect(chosen(1)).toBeNull();
    expect(chooseTieRows({ ...strip, holes: [], limit: 10 })).toMatchObject({ status: "refused", least: 1 });
    expect(chooseTieRows({ ...strip, holes: HOLES, limit: 0 })).toMatchObject({ status: "refused" });
  });
});
