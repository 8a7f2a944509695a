// What a face is made of from end to end: the columns that stand side by side on it, as places on its line of wall.

import type { Mm } from "../units.ts";
import type { Totals } from "./result.ts";

interface Between {
  readonly low: Mm;
  readonly high: Mm;
}

/** A column of panels, floor to connector or cap. */
export interface PanelPart extends Between {
  readonly kind: "panel";
  /** Stands opposite a corner, a joining wall or nothing. */
  readonly isZone: boolean;
  readonly isStandard: boolean;
  /** Distance from the closing end of its stretch. */
  readonly toClosingEnd: Mm;
  readonly reason: string | null;
}

/** A closure strip in one plank. */
export interface ClosurePart extends Between {
  readonly kind: "closure";
  readonly isZone: boolean;
  /** The side towards the closing end; the tie stands on the other. */
  readonly closingSide: "low" | "high";
  readonly toClosingEnd: Mm;
  readonly reason: string;
}

/** The leg of an inside corner; `corner` is the face whose `from` the corner is. */
export interface LegPart extends Between {
  readonly kind: "leg";
  readonly corner: number;
}

/** What cannot be built. `isFullHeight`: nothing runs over it, connector and cap stop there too. */
export interface VoidPart extends Between {
  readonly kind: "void";
  readonly problem: number;
  readonly isFullHeight: boolean;
}

/** The stop-end that closes a free end. */
export interface StopEndPart extends Between {
  readonly kind: "stop-end";
}

/** Between the parts of a face lie its band openings; together they fill it from end to end. */
export type FacePart = PanelPart | ClosurePart | LegPart | VoidPart | StopEndPart;

/** Full-height columns, once each, however many pieces high. A closure in a zone counts as a closure. */
export function countColumns(faces: readonly (readonly FacePart[])[], narrowUnder: Mm): Totals {
  const totals = { closures: 0, narrow: 0, fillers: 0, zones: 0, panels: 0 };
  for (const parts of faces) {
    for (const part of parts) {
      if (part.kind === "closure") totals.closures += 1;
      if (part.kind !== "panel") continue;
      totals.panels += 1;
      if (part.high - part.low < narrowUnder) totals.narrow += 1;
      if (part.isZone) totals.zones += 1;
      else if (!part.isStandard) totals.fillers += 1;
    }
  }
  return totals;
}
