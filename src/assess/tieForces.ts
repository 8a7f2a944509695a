// What does each tie of a fill carry, and what do its neighbours up the line carry when one at the foot is left out?
//
// Both faces of a wall press on the same tie; the greater of the two counts. Lines of ties repeat, so equal strips are
// worked out once.

import type { Envelope } from "../check/envelope.ts";
import { type Answer, computed } from "../check/range.ts";
import { forceOf, type RowLoad, type StripPart, tieRowLoads } from "../check/tieRows.ts";
import type { UnitFill } from "../fill/result.ts";
import type { KiloNewton, Mm } from "../units.ts";
import { faceRuns } from "./faceRuns.ts";
import { type TieStretch, tieStretches } from "./tieStrips.ts";

/** A tie with its load, the greater of strip and beam, on the face where it is greater. */
export interface TieForce extends RowLoad {
  readonly force: KiloNewton;
}

/** The worst of leaving out one of the two lowest ties of a line. */
export interface LeftOut {
  /** Height of the tie left out, and of the tie that then carries most; null: there is no other tie in the line. */
  readonly row: Mm;
  readonly carrier: Mm | null;
  readonly force: KiloNewton | null;
}

export interface LineForces {
  /** Row by row, upward. */
  readonly rows: readonly TieForce[];
  readonly leftOut: LeftOut | null;
}

/** How many of the lowest ties may be forgotten, one at a time. */
const FORGOTTEN = 2;

/** The strips of a fill's ties, as the concrete meets them. */
export interface TieStrips {
  /** By tie of the fill: its stretches on both faces. */
  readonly byTie: readonly (readonly TieStretch[])[];
  /** Without repetition. */
  readonly different: readonly TieStretch[];
}

/** The strips of every tie. `bottomTie` "half": the floor takes the lower half of the gap under the lowest tie. */
export function tieStripsOf(fill: UnitFill, surface: Mm, bottomTie: "whole" | "half"): TieStrips {
  const byTie = fill.ties.map((): TieStretch[] => []);
  const different = new Map<string, TieStretch>();
  for (const run of faceRuns(fill)) {
    for (const stretch of tieStretches(run, surface)) {
      const clipped = bottomTie === "half" ? aboveHalfGap(stretch) : stretch;
      byTie[stretch.tie]!.push(clipped);
      different.set(keyOf(clipped), clipped);
    }
  }
  return { byTie, different: [...different.values()] };
}

function aboveHalfGap(stretch: TieStretch): TieStretch {
  const [first] = stretch.rows;
  if (first === undefined || stretch.parts[0]?.from !== 0) return stretch;
  const parts = stretch.parts.flatMap((part): readonly StripPart[] =>
    part.to <= first / 2 ? [] : [{ ...part, from: Math.max(part.from, first / 2) }],
  );
  return { ...stretch, parts };
}

/** Loads of every tie under a pressure, without a load factor, by tie of the fill. */
export function tieForces(strips: TieStrips, envelope: Envelope, surface: Mm): Answer<readonly LineForces[]> {
  const known = new Map<string, LineForces>();
  const lines: LineForces[] = [];
  for (const stretches of strips.byTie) {
    const faces: LineForces[] = [];
    for (const stretch of stretches) {
      const key = keyOf(stretch);
      let forces = known.get(key);
      if (forces === undefined) {
        const answer = stretchForces(stretch, envelope, surface);
        if (answer.status === "refused") return answer;
        forces = answer.value;
        known.set(key, forces);
      }
      faces.push(forces);
    }
    lines.push(together(faces));
  }
  return computed(lines);
}

/** The greatest load of any tie under a pressure. */
export function greatestForce(strips: TieStrips, envelope: Envelope, surface: Mm): Answer<KiloNewton> {
  let greatest = 0;
  for (const { rows, parts } of strips.different) {
    const loads = tieRowLoads({ envelope, surface, rows, parts });
    if (loads.status === "refused") return loads;
    for (const load of loads.value) greatest = Math.max(greatest, forceOf(load));
  }
  return computed(greatest);
}

/** Loads of the rows of one stretch, and the worst of leaving one of its lowest ties out. */
export function stretchForces(
  { rows, parts }: TieStretch,
  envelope: Envelope,
  surface: Mm,
): Answer<LineForces> {
  const loads = tieRowLoads({ envelope, surface, rows, parts });
  if (loads.status === "refused") return loads;
  const leftOut: LeftOut[] = [];
  // Where a strip begins on the floor its lowest ties are the ones somebody forgets behind the starter bars.
  const isLowest = rows[0] !== undefined && (parts[0]?.from ?? 1) <= rows[0] / 2;
  for (let k = 0; isLowest && k < Math.min(FORGOTTEN, rows.length); k++) {
    const others = rows.filter((_, index) => index !== k);
    const without = tieRowLoads({ envelope, surface, rows: others, parts });
    if (without.status === "refused") return without;
    const most = without.value.reduce<RowLoad | null>(
      (worst, load) => (worst === null || forceOf(load) > forceOf(worst) ? load : worst),
      null,
    );
    leftOut.push({
      row: rows[k]!,
      carrier: most?.row ?? null,
      force: most === null ? null : forceOf(most),
    });
  }
  return computed({
    rows: loads.value.map((load) => ({ ...load, force: forceOf(load) })),
    leftOut: leftOut.length === 0 ? null : leftOut.reduce(worse),
  });
}

function together(faces: readonly LineForces[]): LineForces {
  const rows = new Map<Mm, TieForce>();
  for (const row of faces.flatMap((each) => each.rows)) {
    const other = rows.get(row.row);
    if (other === undefined || row.force > other.force) rows.set(row.row, row);
  }
  const leftOut = faces.map((face) => face.leftOut).filter((each) => each !== null);
  return {
    rows: [...rows.values()].sort((a, b) => a.row - b.row),
    leftOut: leftOut.length === 0 ? null : leftOut.reduce(worse),
  };
}

// A tie nobody shares the load of counts as worse than any figure.
function worse(a: LeftOut, b: LeftOut): LeftOut {
  if (a.force === null || b.force === null) return a.force === null ? a : b;
  return b.force > a.force ? b : a;
}

function keyOf({ rows, parts }: TieStretch): string {
  return `${rows.join(" ")}|${parts.map(({ from, to, width }) => `${from} ${to} ${width}`).join("|")}`;
}
