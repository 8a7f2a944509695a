// One row of a table of cases worked by hand: a drawing, and the runs, counts and problems it must come to.

import { expect } from "vitest";
import type { Totals, UnitFill } from "../../src/fill/result.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit } from "../../src/kit/kit.ts";
import type { Opening, Storey, Unit } from "../../src/plan/project.ts";
import { auditSquare } from "./audit.ts";
import { fillOne, STOREY } from "./filled.ts";
import { faceAt, problemKinds, runUpward } from "./runs.ts";
import { unitOf, type WallLine } from "./walls.ts";

export interface FillCase {
  readonly why: string;
  readonly walls: readonly WallLine[];
  readonly openings?: readonly Opening[];
  readonly more?: Partial<Unit>;
  readonly storey?: Storey;
  readonly kit?: Kit;
  /** Read west to east or south to north, at a place on the face. */
  readonly runs: readonly (readonly [x: number, y: number, run: string])[];
  /** Kinds of all problems but those about the mass of a piece or the kind of a room. */
  readonly problems?: readonly string[];
  readonly totals?: Totals;
}

const NOT_COUNTED = ["too-heavy", "room-kind"];

/** Fills the drawing of a case. */
export function fillOf({
  walls,
  openings = [],
  more = {},
  storey = STOREY,
  kit = demoKit,
}: FillCase): UnitFill {
  return fillOne({ ...unitOf(walls), openings, ...more }, storey, kit);
}

/** Holds a case to its row and to the audit, and gives the fill for what else there is to say of it. */
export function holdCase(row: FillCase): UnitFill {
  const fill = fillOf(row);
  const { storey = STOREY, kit = demoKit } = row;
  const unit = { ...unitOf(row.walls), openings: row.openings ?? [], ...row.more };
  expect(row.runs.map(([x, y]) => [x, y, runUpward(faceAt(fill, [x, y]))])).toEqual(row.runs);
  expect(problemKinds(fill).filter((kind) => !NOT_COUNTED.includes(kind))).toEqual(row.problems ?? []);
  if (row.totals !== undefined) expect(fill.totals).toEqual(row.totals);
  expect(auditSquare(fill, { unit, storey, kit })).toEqual([]);
  return fill;
}
