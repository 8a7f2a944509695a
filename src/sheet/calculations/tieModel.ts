// The different strips that the ties of an entry hold, each with what its rows carry, the most loaded first: S1, S2, …
//
// Hundreds of lines of ties have a few dozen strips between them. Whoever checks one strip has checked every line of it.

import type { CheckedEntry } from "../../assess/entry.ts";
import { surfaceOf } from "../../assess/tieChecks.ts";
import { type LeftOut, stretchForces, type TieForce, tieStripsOf } from "../../assess/tieForces.ts";
import type { TieStretch } from "../../assess/tieStrips.ts";
import type { Envelope } from "../../check/envelope.ts";
import type { StripPart, TieLineInput } from "../../check/tieRows.ts";

export interface StripType {
  readonly name: string;
  readonly line: TieLineInput;
  readonly rows: readonly TieForce[];
  readonly leftOut: LeftOut | null;
  /** Lines of ties that have it on one face or both, by their index in the fill. */
  readonly ties: readonly number[];
}

export interface TieModel {
  readonly types: readonly StripType[];
  /** By tie of the fill: the names of its strips. */
  readonly namesOf: readonly (readonly string[])[];
}

/** null: no ties, or no pressure to load them with. */
export function tieModel(entry: CheckedEntry, envelope: Envelope | null): TieModel | null {
  if (envelope === null || entry.fill.ties.length === 0) return null;
  const surface = surfaceOf(entry);
  const { byTie } = tieStripsOf(entry.fill, surface, entry.concrete.bottomTie);
  const found = new Map<string, Omit<StripType, "name"> & { ties: number[] }>();
  const keys = byTie.map((stretches, tie) =>
    stretches.map((stretch) => {
      const merged = { ...stretch, parts: mergedParts(stretch) };
      const key = `${merged.rows.join(" ")}|${merged.parts.map(({ from, to, width }) => `${from} ${to} ${width}`).join("|")}`;
      const before = found.get(key);
      if (before === undefined) {
        const forces = stretchForces(merged, envelope, surface);
        if (forces.status === "refused") return "";
        const line = { envelope, surface, rows: merged.rows, parts: merged.parts };
        found.set(key, { line, rows: forces.value.rows, leftOut: forces.value.leftOut, ties: [tie] });
      } else if (!before.ties.includes(tie)) before.ties.push(tie);
      return key;
    }),
  );
  const sorted = [...found].sort(
    ([a, one], [b, other]) => greatest(other) - greatest(one) || (a < b ? -1 : 1),
  );
  const names = new Map(sorted.map(([key], index) => [key, `S${index + 1}`]));
  return {
    types: sorted.map(([key, type]) => ({ name: names.get(key)!, ...type })),
    namesOf: keys.map((own) => [...new Set(own.flatMap((key) => names.get(key) ?? []))]),
  };
}

export function greatest({ rows }: Pick<StripType, "rows">): number {
  return Math.max(0, ...rows.map(({ force }) => force));
}

/** Parts that follow each other with one width are one. */
function mergedParts({ parts }: TieStretch): readonly StripPart[] {
  const merged: StripPart[] = [];
  for (const part of parts) {
    const last = merged[merged.length - 1];
    if (last !== undefined && last.width === part.width && last.to === part.from)
      merged[merged.length - 1] = { ...last, to: part.to };
    else merged.push(part);
  }
  return merged;
}
