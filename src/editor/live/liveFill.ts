// The fill of the unit in view, always there and never a step: worked out once for each state of a unit and kept, in
// the page while that is quick, beside it in a worker when it is not.

import type { FilledUnit, FillInput } from "../../fill/fillUnit.ts";
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
}

/** The fill of the unit in view, or while it is being worked out the last one there was. */
export interface FillInView {
  readonly live: LiveFill | null;
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
   * The same fill with its drafts, on which choices and reasons stand. Where it came from beside the page it has none:
   * with `mayFill` it is worked out in the page, else it is null, as it is where the fill breaks down.
   */
  readonly whole: (
    document: PlanDocument,
    unit: UnitDocument,
    kit: Kit,
    mayFill: boolean,
  ) => FilledUnit | null;
  /** The fill of a plan that is only tried: nothing of it is kept. Throws where it breaks down. */
  readonly trial: (document: PlanDocument, unit: Unit, kit: Kit) => FilledUnit;
  /** Wakes `listener` when a fill has come in. Returns the way to stop. */
  readonly subscribe: (listener: () => void) => () => void;
  /** Counts the fills that came in, for `useSyncExternalStore`. */
  readonly version: () => number;
}

export interface LiveFillSettings {
  readonly fillNow: (ask: FillAsk) => FilledUnit;
  /**
   * Works beside the page; null = there is nothing beside it. Answers null where a newer ask has put this one aside,
   * and rejects where the fill breaks down.
   */
  readonly fillBeside: ((ask: FillAsk) => Promise<Filled | null>) | null;
  readonly clock: () => number;
  /** A unit whose last fill took longer is filled beside the page, ms. */
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
  readonly known: LiveFillSource["known"];
  readonly keep: (ask: FillAsk, unit: UnitDocument, filled: Filled) => LiveFill;
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
    keep: ({ storey, fillers, kit }, unit, { outline, fill }) => {
      const live = { outline, fill, kit };
      kept.set(unit, { storey, fillers, live });
      return live;
    },
  };
}

/** Makes the source of live fills. */
export function createLiveFill(settings: LiveFillSettings): LiveFillSource {
  const { clock, fillNow, fillBeside, quick } = settings;
  const shelf = createShelf();
  const listeners = new Set<() => void>();
  let last: { readonly unit: string; readonly live: LiveFill } | null = null;
  let [took, version] = [0, 0];
  let asked: UnitDocument | null = null;
  const broken = new WeakSet<UnitDocument>();
  const wholes = new WeakMap<LiveFill["fill"], FilledUnit>();
  const now = (ask: FillAsk): FilledUnit => {
    const filled = fillNow(ask);
    wholes.set(filled.fill, filled);
    return filled;
  };

  const shown = (unit: UnitDocument, live: LiveFill): FillInView => {
    last = { unit: unit.id, live };
    return { live, isStale: false, isBroken: false };
  };
  const lastOf = (unit: UnitDocument, isBroken: boolean): FillInView => ({
    live: last?.unit === unit.id ? last.live : null,
    isStale: true,
    isBroken,
  });
  const askFor = async (beside: NonNullable<typeof fillBeside>, ask: FillAsk, unit: UnitDocument) => {
    asked = unit;
    const start = clock();
    try {
      const filled = await beside(ask);
      if (filled !== null) {
        last = { unit: unit.id, live: shelf.keep(ask, unit, filled) };
        took = clock() - start;
      }
    } catch {
      broken.add(unit);
    }
    version += 1;
    if (asked === unit) asked = null;
    for (const listener of [...listeners]) listener();
  };
  return {
    known: shelf.known,
    inView: (document, unit, kit) => {
      const found = shelf.known(document, unit, kit);
      if (found !== null) return shown(unit, found);
      if (broken.has(unit)) return lastOf(unit, true);
      const ask = askOf(document, documentToUnit(unit), kit);
      if (fillBeside !== null && took >= quick && last?.unit === unit.id) {
        if (asked !== unit) void askFor(fillBeside, ask, unit);
        return lastOf(unit, false);
      }
      const start = clock();
      try {
        const filled = now(ask);
        // The first fill of a page warms the engine up and says little about the next.
        took = last === null ? 0 : clock() - start;
        return shown(unit, shelf.keep(ask, unit, filled));
      } catch {
        broken.add(unit);
        return lastOf(unit, true);
      }
    },
    whole: (document, unit, kit, mayFill) => {
      const kept = shelf.known(document, unit, kit);
      const found = kept === null ? undefined : wholes.get(kept.fill);
      if (found !== undefined) return found;
      if (!mayFill) return null;
      try {
        const filled = fillNow(askOf(document, documentToUnit(unit), kit));
        if (kept !== null) wholes.set(kept.fill, filled);
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
