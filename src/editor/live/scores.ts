// The figures that are always on the screen, and how they differ from those before the last edit.

import type { PlanDocument } from "../../plan/document.ts";
import type { Kg, Mm } from "../../units.ts";
import type { LiveFill } from "./liveFill.ts";

/** Columns of one width. */
export interface WidthCount {
  readonly width: Mm;
  /** Whether any of them is a filler. Opposite corners and joining walls such a width is none. */
  readonly isFiller: boolean;
  readonly count: number;
}

export interface Scores {
  readonly closures: number;
  readonly fillers: number;
  readonly sizes: number;
  readonly panels: number;
  /** Of all pieces; null while the soffits are on their way. */
  readonly mass: Kg | null;
  /** Widest first. */
  readonly widths: readonly WidthCount[];
}

export type ScoreName = Exclude<keyof Scores, "widths">;
export const SCORE_NAMES: readonly ScoreName[] = ["closures", "fillers", "sizes", "panels", "mass"];

const scored = new WeakMap<LiveFill, Scores>();

/** The figures of a fill, worked out once. `sizes` counts the distinct widths of panels on its faces. */
export function scoresOf(live: LiveFill): Scores {
  const known = scored.get(live);
  if (known !== undefined) return known;
  const { fill } = live;
  const widths = widthsInUse(live);
  const scores: Scores = {
    closures: fill.totals.closures,
    fillers: fill.totals.fillers,
    sizes: widths.length,
    panels: fill.totals.panels,
    mass: live.hasSoffits ? fill.bill.reduce((sum, { mass }) => sum + mass, 0) : null,
    widths,
  };
  scored.set(live, scores);
  return scores;
}

// Columns are counted once however many pieces high: by the piece at the foot that is not under an opening.
function widthsInUse({ fill, kit }: LiveFill): readonly WidthCount[] {
  const standard = new Set(
    kit.pieces.flatMap((piece) => (piece.family === "wall-panel" && piece.standard ? [piece.width] : [])),
  );
  const counts = new Map<Mm, number>();
  const fillers = new Set<Mm>();
  for (const face of fill.faces) {
    for (const piece of face.pieces) {
      if (piece.family !== "wall-panel" || piece.z !== 0) continue;
      const isUnderOpening = face.openings.some(
        ({ x, width, formed }) => formed === "band" && piece.x >= x && piece.x + piece.width <= x + width,
      );
      if (isUnderOpening) continue;
      counts.set(piece.width, (counts.get(piece.width) ?? 0) + 1);
      if (piece.zone !== true && !standard.has(piece.width)) fillers.add(piece.width);
    }
  }
  return [...counts]
    .map(([width, count]) => ({ width, count, isFiller: fillers.has(width) }))
    .sort((a, b) => b.width - a.width);
}

/** What each figure was before; null where nothing is known to compare with. */
export interface Compared {
  readonly now: Scores;
  readonly before: Scores | null;
}

/** The documents to compare with: as it stands, and as it was before the last step taken or walked. */
export interface Steps {
  readonly current: PlanDocument;
  readonly before: PlanDocument | null;
}

/** Takes note of a document: another one than the last is a step. The same steps back where nothing has changed. */
export function stepsAfter(steps: Steps, document: PlanDocument): Steps {
  return steps.current === document ? steps : { current: document, before: steps.current };
}

/** The document whose figures a change is counted from: the one that stands while a gesture shows another. */
export function baseOf(steps: Steps, inView: PlanDocument): PlanDocument | null {
  return inView === steps.current ? steps.before : steps.current;
}

/** Whether a change of a figure is for the better: fewer of everything is. 0 = no change. */
export function judged(change: number): "better" | "worse" | "same" {
  if (change === 0) return "same";
  return change < 0 ? "better" : "worse";
}

/** Widths of either side of a comparison, widest first, with how many there are and were. */
export function comparedWidths({
  now,
  before,
}: Compared): readonly (WidthCount & { readonly change: number | null })[] {
  const old = new Map((before?.widths ?? []).map((entry) => [entry.width, entry]));
  const current = now.widths.map((entry) => ({
    ...entry,
    change: before === null ? null : entry.count - (old.get(entry.width)?.count ?? 0),
  }));
  const gone = (before?.widths ?? [])
    .filter(({ width }) => !now.widths.some((entry) => entry.width === width))
    .map((entry) => ({ ...entry, count: 0, change: -entry.count }));
  return [...current, ...gone].sort((a, b) => b.width - a.width);
}
