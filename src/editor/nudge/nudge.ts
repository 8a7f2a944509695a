// Which small move of a wall, an opening or a free end would take a closure or a narrow filler away, and what it would
// cost elsewhere. Every offer has been tried: the counts come from a fill of the plan with the move made.
//
//   ├leg┤ 600 │ 600 │ 300 │25├ leg ▓ wall across        move the wall across by 25 → 1500, no closure

import { produce } from "immer";
import { type FilledWith, sizesInUse, tableFor } from "../../fill/choices.ts";
import { coverInterval } from "../../fill/cover.ts";
import type { CoverTable } from "../../fill/coverTable.ts";
import type { FilledUnit } from "../../fill/fillWalls.ts";
import { narrowUnder } from "../../fill/kitTables.ts";
import { type Mover, moversOf } from "../../fill/movers.ts";
import { type PlacedWidth, type SeenStretch, stretchesSeen } from "../../fill/stretchPieces.ts";
import type { PlanDocument } from "../../plan/document.ts";
import { find } from "../../plan/document.ts";
import { documentToUnit } from "../../plan/documentProject.ts";
import { applyEdits, type Edit } from "../../plan/edit.ts";
import type { EditOutcome } from "../../plan/editOutcome.ts";
import type { Unit } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";

/** The greatest move on offer, mm: further than this it is another plan. Common practice, no source. */
export const GREATEST_NUDGE: Mm = 50;
/** The most offers for one piece. */
const MOST_OFFERS = 5;

/** What a nudge is judged by; fewer of each is better. `errors` are places that cannot be built. */
export interface NudgeCounts {
  readonly errors: number;
  readonly closures: number;
  readonly narrow: number;
  readonly fillers: number;
  readonly sizes: number;
}

/** A piece to be rid of, on the stretch it stands on. */
export interface NudgeTarget {
  readonly seen: SeenStretch;
  readonly piece: PlacedWidth;
}

/** A move that takes the piece away, tried out. */
export interface Nudge {
  readonly mover: Mover;
  /** Along the line of wall, mm, greater than 0; `way` says where to. */
  readonly by: Mm;
  readonly way: "left" | "right" | "up" | "down";
  /** One undo step. */
  readonly edits: readonly Edit[];
  /** Length of the stretch before and after. */
  readonly from: Mm;
  readonly to: Mm;
  readonly here: NudgeCounts;
  readonly elsewhere: NudgeCounts;
  readonly after: NudgeCounts;
  /** Whether the unit is the better for it as a whole. */
  readonly isGain: boolean;
}

export interface NudgeContext {
  readonly document: PlanDocument;
  readonly given: FilledWith;
  /** Fills another state of the same unit. */
  readonly refill: (unit: Unit) => FilledUnit;
}

/** Every closure and every filler narrower than the rule allows, once for both faces; zones keep theirs. */
export function nudgeTargets({ filled, kit }: FilledWith): readonly NudgeTarget[] {
  const least = narrowUnder(kit);
  return filled.drafts.flatMap((_, face) =>
    stretchesSeen(filled, face).flatMap((seen) => {
      const { opposite } = seen.stretch;
      if (opposite === null || opposite < face) return [];
      return seen.pieces
        .filter(({ kind, width }) => kind === "closure" || width < least)
        .map((piece) => ({ seen, piece }));
    }),
  );
}

/**
 * The moves that take `target` away, best for the unit first, five at most; those without gain come, too, and say so.
 * Each costs a fill, and there are some twenty at most. None for a piece in a zone: its length is that of a corner or
 * a joint, which no move changes.
 */
export function nudgesOf(target: NudgeTarget, context: NudgeContext): readonly Nudge[] {
  const { seen } = target;
  if (seen.isZone) return [];
  const table = tableFor(context.given, seen.stretch);
  const before = countsOf(context.given.filled);
  const offers = moversOf(seen, context.given).flatMap(({ mover, lengthens, editOf }) =>
    shiftsOf(target, table, lengthens).flatMap(({ shift, to }) => {
      const edits = [editOf(shift)];
      const after = tried(edits, context);
      if (after === null) return [];
      const here = changeHere(seen, to, table);
      return [{ mover, shift, edits, to, here, after }];
    }),
  );
  const { direction } = context.given.filled.drafts[seen.stretch.face]!.settled;
  const found = offers.map(({ mover, shift, edits, to, here, after }): Nudge => {
    const way = wayOf(direction, shift);
    const elsewhere = minus(minus(after, before), here);
    const isGain = compare(after, before) < 0;
    return { mover, by: Math.abs(shift), way, edits, from: seen.length, to, here, elsewhere, after, isGain };
  });
  return found.sort(betterFirst).slice(0, MOST_OFFERS);
}

/** The counts of a filled unit. */
export function countsOf(filled: FilledUnit): NudgeCounts {
  const { totals, problems } = filled.fill;
  return {
    errors: problems.filter(({ severity }) => severity === "error").length,
    closures: totals.closures,
    narrow: totals.narrow,
    fillers: totals.fillers,
    sizes: sizesInUse(filled).size,
  };
}

// The shifts of a joint that rid the stretch of the piece: in each direction the least, and the least that leaves no
// filler at all.
function shiftsOf(
  { seen, piece }: NudgeTarget,
  table: CoverTable,
  lengthens: 1 | -1,
): readonly { readonly shift: Mm; readonly to: Mm }[] {
  const fillersBefore = coverKey(seen.length, table)?.fillers ?? 0;
  const isNarrow = piece.width < table.narrowUnder;
  const found: { shift: Mm; to: Mm }[] = [];
  for (const sign of [1, -1] as const) {
    let best = Number.POSITIVE_INFINITY;
    for (let by = 1; by <= GREATEST_NUDGE && best > 0; by++) {
      const to = seen.length + lengthens * sign * by;
      const key = coverKey(to, table);
      if (key === null || key.closures > 0 || key.narrow > 0) continue;
      const isRid = piece.kind === "closure" || isNarrow || key.fillers < fillersBefore;
      if (!isRid || key.fillers >= best) continue;
      // The first that helps, and after it only one that leaves nothing to wish for.
      if (best === Number.POSITIVE_INFINITY || key.fillers === 0) {
        found.push({ shift: sign * by, to });
        best = key.fillers;
      }
    }
  }
  return found;
}

function coverKey(length: Mm, table: CoverTable) {
  if (length < 0) return null;
  const cover = coverInterval(length, table);
  return cover.status === "covered" ? cover.key : null;
}

// What the stretch itself gains, on both its faces. Sizes and errors have no place and count elsewhere.
function changeHere({ pieces }: SeenStretch, to: Mm, table: CoverTable): NudgeCounts {
  const after = coverKey(to, table);
  const panels = pieces.filter(({ kind }) => kind === "panel");
  const change = (now: number | undefined, was: number) => 2 * ((now ?? 0) - was);
  return {
    errors: 0,
    closures: change(after?.closures, pieces.length - panels.length),
    narrow: change(after?.narrow, panels.filter(({ width }) => width < table.narrowUnder).length),
    fillers: change(after?.fillers, panels.filter(({ width }) => !table.isStandard(width)).length),
    sizes: 0,
  };
}

// The counts of the unit with the edits made; null where the plan refuses them.
function tried(edits: readonly Edit[], { document, given, refill }: NudgeContext): NudgeCounts | null {
  let outcome: EditOutcome | null = null;
  const after = produce(document, (draft) => {
    outcome = applyEdits(draft, edits);
  });
  const isDone = (outcome as EditOutcome | null)?.status === "done";
  const unit = find(after.units, given.unit.id);
  return !isDone || unit === undefined ? null : countsOf(refill(documentToUnit(unit)));
}

function minus(a: NudgeCounts, b: NudgeCounts): NudgeCounts {
  return {
    errors: a.errors - b.errors,
    closures: a.closures - b.closures,
    narrow: a.narrow - b.narrow,
    fillers: a.fillers - b.fillers,
    sizes: a.sizes - b.sizes,
  };
}

// In the order in which a fill is judged: what cannot be built, closures, narrow pieces, fillers; then sizes.
function compare(a: NudgeCounts, b: NudgeCounts): number {
  return (
    a.errors - b.errors ||
    a.closures - b.closures ||
    a.narrow - b.narrow ||
    a.fillers - b.fillers ||
    a.sizes - b.sizes
  );
}

function betterFirst(a: Nudge, b: Nudge): number {
  return compare(a.after, b.after) || a.by - b.by;
}

function wayOf([dx, dy]: readonly [number, number], shift: Mm): Nudge["way"] {
  const isLevel = Math.abs(dx) >= Math.abs(dy);
  if (isLevel) return dx * shift > 0 ? "right" : "left";
  return dy * shift > 0 ? "up" : "down";
}
