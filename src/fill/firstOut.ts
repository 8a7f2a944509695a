// Which piece of a room comes out first, and rooms whose ring of forms would lock itself.
//
// Four inside corners hold one another: somewhere between two neighbours a narrow piece, a closure or an opening must
// let go first.

import { type Kit, ruleValue } from "../kit/kit.ts";
import type { Outline } from "../plan/face.ts";
import type { Mm } from "../units.ts";
import { narrowestAcross } from "./clearances.ts";
import type { CoverTable } from "./coverTable.ts";
import type { FaceDraft } from "./faceDraft.ts";
import type { ClosurePart, FacePart, PanelPart } from "./parts.ts";
import type { ProblemLog } from "./problems.ts";

const TIGHT_ROOM = 1000; // mm clear: under it nobody can turn a panel that has come loose

type Column = PanelPart | ClosurePart;

function columnsUpTo(parts: readonly FacePart[], greatest: Mm): readonly Column[] {
  return parts.filter(
    (part): part is Column =>
      (part.kind === "panel" || part.kind === "closure") && part.high - part.low <= greatest,
  );
}

/**
 * The first-out piece of a face: the narrowest full-height panel or closure of at most `firstOutMax`; of equals the one
 * nearer to the closing end of its interval, then the one of greater place. Null where the face has none.
 */
export function firstOutOf(parts: readonly FacePart[], greatest: Mm): Column | null {
  let best: Column | null = null;
  for (const part of columnsUpTo(parts, greatest)) {
    if (best === null || comesOutBefore(part, best)) best = part;
  }
  return best;
}

function comesOutBefore(a: Column, b: Column): boolean {
  const byWidth = a.high - a.low - (b.high - b.low);
  if (byWidth !== 0) return byWidth < 0;
  return a.toClosingEnd === b.toClosingEnd ? a.low > b.low : a.toClosingEnd < b.toClosingEnd;
}

export interface RingContext {
  readonly outline: Outline;
  readonly drafts: readonly FaceDraft[];
  readonly kit: Kit;
  readonly tableFor: (face: number) => CoverTable;
  readonly log: ProblemLog;
}

/** Files one `locked-ring` for each room in which two adjacent faces have neither a first-out piece nor an opening. */
export function checkRings({ outline, drafts, kit, tableFor, log }: RingContext): void {
  const greatest = ruleValue(kit, "firstOutMax");
  if (greatest === undefined) return;
  const byRoom = new Map<number, FaceDraft[]>();
  for (const draft of drafts) {
    const { room, outlineFace } = draft.settled.formed;
    if (room === null || outline.rooms[room]!.ring !== outlineFace.ring) continue;
    const list = byRoom.get(room);
    if (list === undefined) byRoom.set(room, [draft]);
    else list.push(draft);
  }
  for (const [room, ring] of byRoom) {
    const letsGo = ring.map(
      (draft) =>
        draft.openings.some(({ formed }) => formed === "band") ||
        columnsUpTo(draft.parts, greatest).length > 0,
    );
    const locked = ring.findIndex((_, k) => !letsGo[k] && !letsGo[(k + 1) % ring.length]);
    if (locked < 0 || ring.length < 2) continue;
    const pair = [ring[locked]!, ring[(locked + 1) % ring.length]!];
    const { name, kind } = outline.rooms[room]!;
    const hasOpening = ring.some((draft) => draft.openings.length > 0);
    const clear = narrowestAcross(ring.map((draft) => draft.settled));
    const isSevere = (kind === "open" && !hasOpening) || (clear !== null && clear < TIGHT_ROOM);
    const swap = cheapestSwap(pair, greatest, tableFor);
    const mend =
      swap === null
        ? "the kit has no narrower pair of panels: plan a collapsible corner or a lost form"
        : `on wall ${swap.wall} take ${swap.by.join(" + ")} in place of one ${swap.width}, on both faces`;
    log.add(
      isSevere ? "error" : "warning",
      "locked-ring",
      `The forms of ${name} lock themselves: ${wordsFor(pair)} have neither an opening nor a piece of at most ${greatest} mm to take ` +
        `out first; the cheapest swap: ${mend}.`,
      { room: name, face: pair[0]!.id },
    );
  }
}

function wordsFor(pair: readonly FaceDraft[]): string {
  const [one, other] = pair.map((draft) => draft.settled.formed.walls[0] ?? "");
  return one === other ? `two adjacent faces of wall ${one}` : `two adjacent walls, ${one} and ${other},`;
}

interface Swap {
  readonly wall: string;
  readonly width: Mm;
  readonly by: readonly [Mm, Mm];
}

// One panel of a pair of faces for two, one of them narrow enough: fewest panels not standard, then the widest pair.
function cheapestSwap(
  pair: readonly FaceDraft[],
  greatest: Mm,
  tableFor: (face: number) => CoverTable,
): Swap | null {
  let best: { swap: Swap; cost: number } | null = null;
  for (const draft of pair) {
    const table = tableFor(draft.settled.index);
    for (const part of draft.parts) {
      if (part.kind !== "panel" || part.isZone) continue;
      const width = part.high - part.low;
      for (const a of table.widths) {
        const b = table.widths.find((other) => other.width === width - a.width);
        if (b === undefined || a.width < b.width || b.width > greatest || b.width < table.narrowUnder)
          continue;
        const cost = (a.standard ? 0 : 1) + (b.standard ? 0 : 1) - (part.isStandard ? 0 : 1);
        if (best !== null && (cost > best.cost || (cost === best.cost && b.width <= best.swap.by[1])))
          continue;
        best = { cost, swap: { wall: draft.settled.formed.walls[0] ?? "", width, by: [a.width, b.width] } };
      }
    }
  }
  return best?.swap ?? null;
}
