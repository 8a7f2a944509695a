// What makes the fillers between zones: lengths that are no sum of standard widths, and covers with more fillers than the
// length asks for, which are pinned or chosen for the set of all pours.

import type { Mm } from "../units.ts";
import { coverInterval, nearestLengths } from "./cover.ts";
import { type CoverTable, createCoverTable } from "./coverTable.ts";
import { counted } from "./problems.ts";
import type { Cause } from "./result.ts";
import type { Stretch } from "./stretches.ts";

/** The fillers of a free interval on one of its faces. */
export interface StretchFillers {
  readonly stretch: Stretch;
  readonly table: CoverTable;
  readonly fillers: number;
}

/** A length further than this from a sum of standard widths is not moved to it, mm. Common practice, no source. */
const GREATEST_NUDGE: Mm = 50;

interface Gathered {
  faces: number;
  fillers: number;
}

/** By nudge, those without one last, then those that the length does not ask for. */
export function fillerCauses(stretches: readonly StretchFillers[]): readonly Cause[] {
  const byNudge = new Map<Mm | null, Gathered>();
  const chosen = { faces: 0, fillers: 0 };
  for (const { stretch, table, fillers } of stretches) {
    const length = stretch.high - stretch.low;
    const cover = coverInterval(length, table);
    const asked = Math.min(fillers, cover.status === "covered" ? cover.key.fillers : 0);
    if (asked > 0) {
      const nudge = standardNudge(length, table);
      const own = byNudge.get(nudge) ?? { faces: 0, fillers: 0 };
      byNudge.set(nudge, { faces: own.faces + 1, fillers: own.fillers + asked });
    }
    if (fillers > asked) {
      chosen.faces += 1;
      chosen.fillers += fillers - asked;
    }
  }
  const farthest = (nudge: Mm | null) => nudge ?? GREATEST_NUDGE + 1;
  const residues = [...byNudge].sort(([a], [b]) => farthest(a) - farthest(b));
  return [
    ...residues.map(([nudge, gathered]) => residueCause(nudge, gathered)),
    ...(chosen.fillers > 0 ? [chosenCause(chosen)] : []),
  ];
}

interface Standard {
  readonly table: CoverTable;
  /** By length, as found so far: with every move of the hand most lengths are those of before. */
  readonly nudges: Map<Mm, Mm | null>;
}

const standards = new WeakMap<CoverTable, Standard>();

function standardOf(table: CoverTable): Standard {
  const known = standards.get(table);
  if (known !== undefined) return known;
  const widths = table.widths.filter((width) => width.standard);
  const made = { table: createCoverTable(widths, null, table.narrowUnder), nudges: new Map() };
  standards.set(table, made);
  return made;
}

// How far a length is from one that standard widths alone fill, the nearer way.
function standardNudge(length: Mm, table: CoverTable): Mm | null {
  const standard = standardOf(table);
  const known = standard.nudges.get(length);
  if (known !== undefined) return known;
  const { below, above } = nearestLengths(length, standard.table, "plain");
  const ways = [below, above].flatMap((other) => (other === null ? [] : [Math.abs(other - length)]));
  const nearest = Math.min(...ways, Number.POSITIVE_INFINITY);
  const nudge = nearest <= GREATEST_NUDGE ? nearest : null;
  standard.nudges.set(length, nudge);
  return nudge;
}

function residueCause(nudge: Mm | null, { faces, fillers }: Gathered): Cause {
  const message =
    nudge === null
      ? `${counted(faces, "face is", "faces are")} more than ${GREATEST_NUDGE} mm from every sum of standard widths: only other standard widths would remove ${counted(fillers, "filler")}.`
      : `${counted(faces, "face misses", "faces miss")} a sum of standard widths by ${nudge} mm: moving a wall or a jamb there by ${nudge} mm removes ${counted(fillers, "filler")}.`;
  return { message, closures: 0, fillers, places: faces, widths: [] };
}

function chosenCause({ faces, fillers }: Gathered): Cause {
  const message = `${counted(faces, "face has", "faces have")} ${counted(fillers, "filler")} more than the length asks for: pinned, or chosen so that one set serves every pour.`;
  return { message, closures: 0, fillers, places: faces, widths: [] };
}
