// The fill of the unit in view, always there and never a step: worked out once for each state of a unit and kept.
//
//   walls     in the page while that is quick, so that panels follow the hand; else beside it, with the soffits
//   soffits   always beside the page, in a worker: they take longer than the walls and come a moment later

import type { FilledUnit, FillInput } from "../../fill/fillWalls.ts";
import type { Kit } from "../../kit/kit.ts";
import type { PlanDocument, UnitDocument } from "../../plan/document.ts";
import { documentToUnit } from "../../plan/documentProject.ts";
import type { Outline } from "../../plan/face.ts";
import type { FillerPlace, Storey, Unit } from "../../plan/project.ts";

/** What the screen needs of a fill. */
export interface LiveFill {
  readonly outline: Outline;
  readonly fill: FilledUnit["fill"];
  readonly kit: Kit;
  /** False while the soffits are on their way: then bill and problems know of walls alone. */
  readonly hasSoffits: boolean;
}

/** The fill of the unit in view, or while it is being worked out the last one there was. */
export interface FillInView {
  readonly live: LiveFill | null;
  /** The last fill of the unit that had its soffits: the same as `live` when the hand rests. */
  readonly whole: LiveFill | null;
  /** The unit has changed since; its own fill is on the way. */
  readonly isStale: boolean;
  /** The fill of this state broke down: a fault of the program, never a reason to lose the drawing. */
  readonly isBroken: boolean;
}

/** Everything a fill depends on, without the union. */
export type FillAsk = Omit<FillInput, "union">;

export interface LiveFillSource {
  /** The fill of a unit of a document, at once where it is known or quick. */
  readonly inView: (document: PlanDocument, unit: UnitDocument, kit: Kit) => FillInView;
  /** The fill of a unit if it is known, and nothing asked for. */
  readonly known: (document: PlanDocument, unit: UnitDocument, kit: Kit) => LiveFill | null;
  /**
   * The walls of the same fill with their drafts, on which choices and reasons stand. A fill from beside the page has
   * none: with `mayFill` they are worked out in the page, else this is null, as it is where the fill breaks down.
   */
  readonly whole: (
    document: PlanDocument,
    unit: UnitDocument,
    kit: Kit,
    mayFill: boolean,
  ) => FilledUnit | null;
  /** The walls of a plan that is only tried: nothing of it is kept. Throws where the fill breaks down. */
  readonly trial: (document: PlanDocument, unit: Unit, kit: Kit) => FilledUnit;
  /** Wakes `listener` when a fill has come in. Returns the way to stop. */
  readonly subscribe: (listener: () => void) => () => void;
  /** Counts the fills that came in, for `useSyncExternalStore`. */
  readonly version: () => number;
}

export interface LiveFillSettings {
  /** The walls alone where there is a worker for the rest, else everything. */
  readonly fillNow: (ask: FillAsk) => FilledUnit;
  /**
   * Fills walls and soffits beside the page; null = there is nothing beside it. Answers null where a newer ask has put
   * this one aside, and rejects where the fill breaks down.
   */
  readonly fillBeside: ((ask: FillAsk) => Promise<Filled | null>) | null;
  readonly clock: () => number;
  /** A unit whose walls took longer in the page is filled beside it, ms. */
  readonly quick: number;
}

/** A fill quicker than this leaves room in a frame for drawing it, ms. */
export const QUICK_MS = 8;

type Filled = Pick<LiveFill, "outline" | "fill">;

// Fills of one unit state differ by what else they depend on.
interface Kept {
  readonly storey: Storey;
  readonly fillers: FillerPlace;
  readonly live: LiveFill;
}

interface Shelf {
  readonly known: (
    on: Pick<PlanDocument, "storey" | "fillers">,
    unit: UnitDocument,
    kit: Kit,
  ) => LiveFill | null;
  readonly keep: (ask: FillAsk, unit: UnitDocument, filled: Filled & { hasSoffits: boolean }) => LiveFill;
}

// Fills are kept as long as the state of the unit they belong to.
function createShelf(): Shelf {
  const kept = new WeakMap<UnitDocument, Kept>();
  return {
    known: ({ storey, fillers }, unit, kit) => {
      const found = kept.get(unit);
      const isSame = found?.storey === storey && found.fillers === fillers && found.live.kit === kit;
      return isSame ? found.live : null;
    },
    keep: ({ storey, fillers, kit }, unit, { outline, fill, hasSoffits }) => {
      const live = { outline, fill, kit, hasSoffits };
      kept.set(unit, { storey, fillers, live });
      return live;
    },
  };
}

interface Shown {
  readonly unit: string;
  readonly live: LiveFill;
}

/** Makes the source of live fills. */
export function createLiveFill(settings: LiveFillSettings): LiveFillSource {
  const { clock, fillNow, fillBeside, quick } = settings;
  const shelf = createShelf();
  const listeners = new Set<() => void>();
  let last: Shown | null = null;
  let lastWhole: Shown | null = null;
  let [took, version] = [0, 0];
  let asked: UnitDocument | null = null;
  const broken = new WeakSet<UnitDocument>();
  const drafted = new WeakMap<LiveFill["fill"], FilledUnit>();
  const now = (ask: FillAsk): FilledUnit => {
    const start = clock();
    const filled = fillNow(ask);
    // The first fill of a page warms the engine up and says little about the next.
    took = last === null ? 0 : clock() - start;
    drafted.set(filled.fill, filled);
    return filled;
  };

  const wholeOf = (unit: UnitDocument) => (lastWhole?.unit === unit.id ? lastWhole.live : null);
  const shown = (unit: UnitDocument, live: LiveFill, isBroken = false): FillInView => {
    last = { unit: unit.id, live };
    if (live.hasSoffits) lastWhole = last;
    return { live, whole: wholeOf(unit), isStale: false, isBroken };
  };
  const lastOf = (unit: UnitDocument, isBroken: boolean): FillInView => ({
    live: last?.unit === unit.id ? last.live : null,
    whole: wholeOf(unit),
    isStale: true,
    isBroken,
  });
  const wake = () => {
    version += 1;
    for (const listener of [...listeners]) listener();
  };
  const askFor = async (
    beside: NonNullable<typeof fillBeside>,
    unit: UnitDocument,
    wanted: () => FillAsk,
  ) => {
    if (asked === unit) return;
    asked = unit;
    try {
      const ask = wanted();
      const filled = await beside(ask);
      // Put aside for a newer ask, which will wake whoever listens.
      if (filled === null && asked !== unit) return;
      if (filled !== null) arrive(ask, unit, filled);
    } catch {
      broken.add(unit);
    }
    if (asked === unit) asked = null;
    wake();
  };
  const arrive = (ask: FillAsk, unit: UnitDocument, filled: Filled) => {
    const walls = shelf.known(ask, unit, ask.kit);
    const live = shelf.keep(ask, unit, { ...filled, hasSoffits: true });
    const drafts = walls === null ? undefined : drafted.get(walls.fill);
    if (drafts !== undefined) drafted.set(live.fill, drafts);
    lastWhole = { unit: unit.id, live };
    if (walls === null) last = lastWhole;
  };
  return {
    known: shelf.known,
    inView: (document, unit, kit) => {
      const found = shelf.known(document, unit, kit);
      if (found === null && broken.has(unit)) return lastOf(unit, true);
      const ask = () => askOf(document, documentToUnit(unit), kit);
      if (found !== null) {
        if (!found.hasSoffits && fillBeside !== null && !broken.has(unit)) void askFor(fillBeside, unit, ask);
        return shown(unit, found, broken.has(unit));
      }
      if (fillBeside !== null && took >= quick && last?.unit === unit.id) {
        void askFor(fillBeside, unit, ask);
        return lastOf(unit, false);
      }
      try {
        const made = ask();
        const live = shelf.keep(made, unit, { ...now(made), hasSoffits: fillBeside === null });
        if (fillBeside !== null) void askFor(fillBeside, unit, () => made);
        return shown(unit, live);
      } catch {
        broken.add(unit);
        return lastOf(unit, true);
      }
    },
    whole: (document, unit, kit, mayFill) => {
      const kept = shelf.known(document, unit, kit);
      const found = kept === null ? undefined : drafted.get(kept.fill);
      if (found !== undefined) return found;
      if (!mayFill) return null;
      try {
        const filled = now(askOf(document, documentToUnit(unit), kit));
        if (kept !== null) drafted.set(kept.fill, filled);
        return filled;
      } catch {
        return null;
      }
    },
    trial: (document, unit, kit) => fillNow(askOf(document, unit, kit)),
    subscribe: (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    version: () => version,
  };
}

function askOf({ storey, fillers }: PlanDocument, unit: Unit, kit: Kit): FillAsk {
  return { unit, storey, kit, prefix: unit.id, fillers };
}
