// Whether ties stand near enough along every row, and the rows on the panels' holes.
//
// Spacing runs between restraint lines: ties, jambs, free ends, outside corners, corner legs, joining walls. A closure
// counts as part of its joint: its own width is not counted.

import { type Kit, ruleValue } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { counted, type ProblemLog } from "./problems.ts";
import { ownerFirst, type PlacedTie } from "./ties.ts";

export interface SpacingContext {
  readonly drafts: readonly FaceDraft[];
  readonly ties: readonly PlacedTie[];
  readonly kit: Kit;
  readonly log: ProblemLog;
}

/** Files every stretch of a row that is longer than the kit allows, once a face and stretch. */
export function checkTieSpacing({ drafts, ties, kit, log }: SpacingContext): void {
  const rows = ruleValue(kit, "tieRows");
  const greatest = ruleValue(kit, "tieSpacing");
  if (rows === undefined || greatest === undefined) return;
  const heights = drafts.map((): Map<Mm, readonly Mm[]> => new Map());
  for (const { tie, place, owner, other } of ties) {
    heights[owner]!.set(place, tie.heights);
    heights[other]!.set(place, tie.heights);
  }
  const wide = drafts.map((draft) =>
    draft.settled.formed.isFreeEnd
      ? new Map<string, WideStretch>()
      : wideStretches(draft, { rows, greatest, ties: heights[draft.settled.index]! }),
  );
  for (const draft of drafts) {
    for (const [key, stretch] of wide[draft.settled.index]!) {
      if (!isOthersToReport(draft, key, { drafts, wide })) reportWide(draft, stretch, greatest, log);
    }
  }
}

interface WideStretch {
  readonly from: Mm;
  readonly length: Mm;
  readonly rows: Mm[];
}

function wideStretches(
  draft: FaceDraft,
  given: {
    readonly rows: readonly Mm[];
    readonly greatest: Mm;
    readonly ties: ReadonlyMap<Mm, readonly Mm[]>;
  },
): ReadonlyMap<string, WideStretch> {
  const wide = new Map<string, WideStretch>();
  for (const z of given.rows) {
    for (const { from, to, length } of stretchesAt(draft, z, given.ties)) {
      if (length <= given.greatest) continue;
      const key = `${from} ${to}`;
      const known = wide.get(key);
      if (known === undefined) wide.set(key, { from, length, rows: [z] });
      else known.rows.push(z);
    }
  }
  return wide;
}

// Both faces of a wall share their ties: where both have the stretch, the one that is set first speaks for the pair.
function isOthersToReport(
  draft: FaceDraft,
  key: string,
  { drafts, wide }: { drafts: readonly FaceDraft[]; wide: readonly ReadonlyMap<string, WideStretch>[] },
): boolean {
  return draft.settled.formed.opposite.some(
    ({ face }) => wide[face]!.has(key) && ownerFirst(draft, drafts[face]!)[0] !== draft,
  );
}

function reportWide(
  draft: FaceDraft,
  { from, length, rows }: WideStretch,
  greatest: Mm,
  log: ProblemLog,
): void {
  const wall = draft.settled.formed.walls[0] ?? "";
  const x = draft.settled.isReversed ? draft.settled.high - from : from - draft.settled.low;
  log.add(
    "warning",
    "tie-spacing",
    `On wall ${wall} the ${counted(rows.length, "tie row")} at ${rows.join(", ")} mm ${rows.length === 1 ? "has" : "have"} ` +
      `${length} mm between restraints; the greatest spacing is ${greatest} mm: the engineer decides on ties or supports there.`,
    { face: draft.id, x: Math.max(0, x) },
  );
}

interface RowStretch {
  readonly from: Mm;
  readonly to: Mm;
  readonly length: Mm;
}

// Walks the pieces that stand in a row from low to high, breaking wherever something restrains them.
function stretchesAt(draft: FaceDraft, z: Mm, ties: ReadonlyMap<Mm, readonly Mm[]>): readonly RowStretch[] {
  const { isReversed, low: faceLow, high: faceHigh } = draft.settled;
  const { pieces } = draft;
  const found: RowStretch[] = [];
  let from: Mm | null = null;
  let length = 0;
  let reached = Number.NEGATIVE_INFINITY;
  const close = (to: Mm) => {
    if (from !== null && length > 0) found.push({ from, to, length });
    from = null;
    length = 0;
  };
  for (let k = 0; k < pieces.length; k++) {
    const piece = pieces[isReversed ? pieces.length - 1 - k : k]!;
    if (piece.z >= z || z >= piece.z + piece.height || piece.z >= draft.profile.top) continue;
    const low = isReversed ? faceHigh - piece.x - piece.width : faceLow + piece.x;
    const high = low + piece.width;
    if (low !== reached) close(reached); // a jamb, or something unfilled that has its own problem
    reached = high;
    if (piece.family === "inside-corner") {
      close(low);
      continue;
    }
    if (from === null) from = low;
    if (piece.family !== "closure-strip") length += piece.width;
    if (ties.get(high)?.includes(z)) close(high);
  }
  close(reached);
  return found;
}

/** Files tie rows off the hole pattern, and a topmost row too far below the top of the panels. */
export function checkTieRows({ drafts, kit, log }: Omit<SpacingContext, "ties">): void {
  const rows = ruleValue(kit, "tieRows");
  const holes = ruleValue(kit, "holes");
  if (rows === undefined || drafts.length === 0) return;
  const profile = drafts[0]!.profile;
  if (holes !== undefined) {
    const off = rows.filter((z) => {
      const row = profile.rows.find((each) => each.z < z && z < each.z + each.height);
      return row !== undefined && row.kind === "panel" && (z - row.z - holes.first) % holes.pitch !== 0;
    });
    if (off.length > 0) {
      const message =
        `Tie ${off.length === 1 ? "row" : "rows"} at ${off.join(", ")} mm ${off.length === 1 ? "misses" : "miss"} the panels' ` +
        `holes (first ${holes.first}, then every ${holes.pitch} mm): move the rows to holes; no panel is to be drilled.`;
      log.add("error", "tie-row-off-hole", message, {});
    }
  }
  const greatest = ruleValue(kit, "tieSpacing");
  const highest = Math.max(...rows.filter((z) => z < profile.top), 0);
  if (greatest !== undefined && profile.top - highest > greatest) {
    const message =
      `The highest tie row is at ${highest} mm and the panels reach ${profile.top} mm: ${profile.top - highest} mm without a tie; ` +
      `the greatest spacing is ${greatest} mm: add a row to the kit's tie rows.`;
    log.add("warning", "tie-spacing", message, {});
  }
}
