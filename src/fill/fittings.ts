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
import type { Fitting } from "./result.ts";
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
    if (setsFirst(draft, drafts)) {
      placeRows(draft, kit, add);
      placeBraces(draft, drafts, kit, add);
      placeOpeningBraces(draft, kit, add);
    }
    if (draft.settled.formed.exposure === "outside") placeAligners(draft, kit, add);
  }
  return found;
}

type Add = (family: AccessoryFamily, code: string, at: { x: Mm; z: Mm; length?: Mm }) => void;

// A face alone, or one that is set before every face opposite it.
function setsFirst(draft: FaceDraft, drafts: readonly FaceDraft[]): boolean {
  return draft.settled.formed.opposite.every((pair) => ownerFirst(draft, drafts[pair.face]!)[0] === draft);
}

function bracketRows(draft: FaceDraft, kit: Kit): readonly Mm[] {
  const rows = (ruleValue(kit, "tieRows") ?? []).filter((z) => z < draft.profile.top);
  const lower = rows[1] ?? rows[0];
  const upper = rows[rows.length - 1];
  if (lower === undefined || upper === undefined) return [];
  return lower === upper ? [lower] : [lower, upper];
}

function placeRows(draft: FaceDraft, kit: Kit, add: Add): void {
  const spacing = ruleValue(kit, "bracketSpacing");
  const bracket = accessoryOf(kit, "wall-bracket");
  if (spacing === undefined || bracket === null) return;
  const ledgers = accessoryLengthsOf(kit, "alignment-ledger");
  for (const z of bracketRows(draft, kit)) {
    for (const { from, to } of formedStretches(draft, z)) {
      for (const x of evenly(from, to, spacing)) add("wall-bracket", bracket.code, { x, z });
      let at = from;
      while (ledgers.length > 0 && at < to) {
        // The shortest ledger that reaches the end, else the longest: ledgers lap, so the last may overrun.
        const reaching = [...ledgers].reverse().find((ledger) => at + (ledger.length ?? 0) >= to);
        const ledger = reaching ?? ledgers[0]!;
        const length = ledger.length ?? 0;
        if (length <= 0) break;
        add("alignment-ledger", ledger.code, { x: at, z, length });
        at += length;
      }
    }
  }
}

/** Where the face has form at height `z`: its length less the openings there. */
function formedStretches(draft: FaceDraft, z: Mm): readonly { from: Mm; to: Mm }[] {
  const open = draft.openings
    .filter((opening) => opening.formed === "band" && opening.sill < z && z < opening.head)
    .sort((a, b) => a.x - b.x);
  const stretches: { from: Mm; to: Mm }[] = [];
  let from = 0;
  for (const opening of open) {
    stretches.push({ from, to: opening.x });
    from = opening.x + opening.width;
  }
  stretches.push({ from, to: draft.settled.length });
  return stretches.filter((stretch) => stretch.to > stretch.from);
}

/** Places no more than `spacing` apart and no more than half of it from either end, whole mm. */
function evenly(from: Mm, to: Mm, spacing: Mm): readonly Mm[] {
  const count = Math.max(1, Math.ceil((to - from) / spacing));
  return Array.from(
    { length: count },
    (_, k) => from + Math.floor(((to - from) * (2 * k + 1)) / (2 * count)),
  );
}

function placeBraces(draft: FaceDraft, drafts: readonly FaceDraft[], kit: Kit, add: Add): void {
  const spacing = ruleValue(kit, "braceSpacing");
  const brace = accessoryOf(kit, "brace");
  const rows = bracketRows(draft, kit);
  const z = rows[rows.length - 1];
  if (spacing === undefined || brace === null || z === undefined) return;
  const { length, formed } = draft.settled;
  const places = new Set<Mm>(evenly(0, length, spacing));
  if (drafts[formed.previous]!.settled.formed.isFreeEnd) places.add(0);
  if (drafts[formed.next]!.settled.formed.isFreeEnd) places.add(length);
  for (const x of [...places].sort((a, b) => a - b)) add("brace", brace.code, { x, z });
}

function placeOpeningBraces(draft: FaceDraft, kit: Kit, add: Add): void {
  const loose = accessoryOf(kit, "opening-brace");
  if (loose === null) return;
  const sized = accessoryLengthsOf(kit, "opening-brace");
  for (const { x, width, sill, head, formed } of draft.openings) {
    if (formed !== "band") continue;
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
