// What keeps the forms in line: wall brackets with alignment ledgers, braces, facade aligners, opening braces.
//
//   upper row  ○───○───○───○      brackets spread evenly, ledgers laid along each row
//   lower row  ○───○─┐ ┌─○─○      the lower row stops at doors
//
// Brackets, ledgers and braces stand on the face that is set first, aligners on the outside. Two rows of brackets and
// their spacing, the spacing of aligners and braces in the lower part of openings are common practice, no source.

import { accessoryLengthsOf, accessoryOf } from "../kit/fittings.ts";
import { type AccessoryFamily, type Kit, ruleValue } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import type { FaceDraft } from "./faceDraft.ts";
import type { PieceBook } from "./pieceBook.ts";
import type { FaceOpening, Fitting } from "./result.ts";
import { ownerFirst } from "./ties.ts";

export interface FittingContext {
  readonly drafts: readonly FaceDraft[];
  readonly kit: Kit;
  readonly book: PieceBook;
}

/** Height of a brace's head, mm: on the upper row. */
const OPENING_BRACE_HEIGHT = 300; // above the sill or the floor, where the thrust on the jambs is greatest

/** Fittings face by face, by row and x. A family or a rule the kit does not have gives none of it. */
export function placeFittings({ drafts, kit, book }: FittingContext): readonly Fitting[] {
  const found: Fitting[] = [];
  for (const draft of drafts) {
    if (draft.settled.formed.isFreeEnd || draft.settled.length === 0) continue;
    const add = (family: AccessoryFamily, code: string, at: { x: Mm; z: Mm; length?: Mm }) => {
      found.push({ piece: book.nextId(), code, family, face: draft.id, ...at });
    };
    for (const stretch of firstStretches(draft, drafts)) {
      placeRows(draft, stretch, kit, add);
      placeBraces(draft, stretch, { drafts, kit, add });
      placeOpeningBraces(draft, stretch, kit, add);
    }
    if (draft.settled.formed.exposure === "outside") placeAligners(draft, kit, add);
  }
  return found;
}

type Add = (family: AccessoryFamily, code: string, at: { x: Mm; z: Mm; length?: Mm }) => void;

interface Stretch {
  readonly from: Mm;
  readonly to: Mm;
}

// Where a face is set first: all of it but what stands opposite a face that is set before it. The bits that are left
// beside such stretches, opposite a joining wall or beyond a corner, stand opposite nothing and need nothing.
function firstStretches(draft: FaceDraft, drafts: readonly FaceDraft[]): readonly Stretch[] {
  const { formed, length } = draft.settled;
  const pairs = formed.opposite.map(({ face, start, end }) => ({
    from: Math.floor(start + 0.5),
    to: Math.min(length, Math.floor(end + 0.5)),
    isFirst: ownerFirst(draft, drafts[face]!)[0] === draft,
  }));
  const taken = pairs.filter(({ isFirst }) => !isFirst).sort((a, b) => a.from - b.from);
  const found: Stretch[] = [];
  let from = 0;
  for (const { from: low, to: high } of [...taken, { from: length, to: length }]) {
    if (low > from) found.push({ from, to: low });
    from = Math.max(from, high);
  }
  return found.filter(
    ({ from: low, to }) =>
      pairs.length === 0 || pairs.some((pair) => pair.isFirst && pair.from < to && pair.to > low),
  );
}

function bracketRows(draft: FaceDraft, kit: Kit): readonly Mm[] {
  const rows = (ruleValue(kit, "tieRows") ?? []).filter((z) => z < draft.profile.top);
  const lower = rows[1] ?? rows[0];
  const upper = rows[rows.length - 1];
  if (lower === undefined || upper === undefined) return [];
  return lower === upper ? [lower] : [lower, upper];
}

function placeRows(draft: FaceDraft, stretch: Stretch, kit: Kit, add: Add): void {
  const spacing = ruleValue(kit, "bracketSpacing");
  const bracket = accessoryOf(kit, "wall-bracket");
  if (spacing === undefined || bracket === null) return;
  const ledgers = accessoryLengthsOf(kit, "alignment-ledger");
  for (const z of bracketRows(draft, kit)) {
    for (const { from, to } of formedStretches(draft, stretch, z)) {
      for (const x of evenly(from, to, spacing)) add("wall-bracket", bracket.code, { x, z });
      let at = from;
      while (ledgers.length > 0 && at < to) {
        // The shortest ledger that reaches the end, else the longest.
        const reaching = [...ledgers].reverse().find((ledger) => at + (ledger.length ?? 0) >= to);
        const ledger = reaching ?? ledgers[0]!;
        const length = ledger.length ?? 0;
        if (length <= 0) break;
        // The last one laps the one before it, or the opening beside it, rather than stick out past the wall.
        const x = Math.max(0, Math.min(at, draft.settled.length - length));
        add("alignment-ledger", ledger.code, { x, z, length });
        at += length;
      }
    }
  }
}

/** Where the stretch has form at height `z`: its length less the openings there. */
function formedStretches(draft: FaceDraft, stretch: Stretch, z: Mm): readonly Stretch[] {
  const open = draft.openings
    .filter((opening) => opening.formed === "band" && opening.sill < z && z < opening.head)
    .filter((opening) => holds(stretch, opening))
    .sort((a, b) => a.x - b.x);
  const stretches: Stretch[] = [];
  let { from } = stretch;
  for (const opening of open) {
    stretches.push({ from, to: opening.x });
    from = opening.x + opening.width;
  }
  stretches.push({ from, to: stretch.to });
  return stretches.filter((one) => one.to > one.from);
}

// An opening is in both faces of one wall, so it lies in one stretch.
function holds({ from, to }: Stretch, { x, width }: FaceOpening): boolean {
  return x + width / 2 > from && x + width / 2 < to;
}

/** Places no more than `spacing` apart and no more than half of it from either end, whole mm. */
function evenly(from: Mm, to: Mm, spacing: Mm): readonly Mm[] {
  const count = Math.max(1, Math.ceil((to - from) / spacing));
  return Array.from(
    { length: count },
    (_, k) => from + Math.floor(((to - from) * (2 * k + 1)) / (2 * count)),
  );
}

function placeBraces(
  draft: FaceDraft,
  { from, to }: Stretch,
  { drafts, kit, add }: { readonly drafts: readonly FaceDraft[]; readonly kit: Kit; readonly add: Add },
): void {
  const spacing = ruleValue(kit, "braceSpacing");
  const brace = accessoryOf(kit, "brace");
  const rows = bracketRows(draft, kit);
  const z = rows[rows.length - 1];
  if (spacing === undefined || brace === null || z === undefined) return;
  const { length, formed } = draft.settled;
  const places = new Set<Mm>(evenly(from, to, spacing));
  if (from === 0 && drafts[formed.previous]!.settled.formed.isFreeEnd) places.add(0);
  if (to === length && drafts[formed.next]!.settled.formed.isFreeEnd) places.add(length);
  for (const x of [...places].sort((a, b) => a - b)) add("brace", brace.code, { x, z });
}

function placeOpeningBraces(draft: FaceDraft, stretch: Stretch, kit: Kit, add: Add): void {
  const loose = accessoryOf(kit, "opening-brace");
  if (loose === null) return;
  const sized = accessoryLengthsOf(kit, "opening-brace");
  for (const opening of draft.openings) {
    const { x, width, sill, head, formed } = opening;
    if (formed !== "band" || !holds(stretch, opening)) continue;
    const brace = sized.find((each) => each.length === width) ?? loose;
    const z = Math.min(sill + OPENING_BRACE_HEIGHT, Math.floor((sill + head) / 2));
    add("opening-brace", brace.code, { x, z, length: width });
  }
}

function placeAligners(draft: FaceDraft, kit: Kit, add: Add): void {
  const spacing = ruleValue(kit, "alignerSpacing");
  const aligner = accessoryOf(kit, "facade-aligner");
  if (spacing === undefined || aligner === null) return;
  for (const x of evenly(0, draft.settled.length, spacing)) add("facade-aligner", aligner.code, { x, z: 0 });
}
