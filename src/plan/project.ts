// The project as the rest of the program sees it: read, checked and with every default filled in.
//
// Plan axes: x right (east), y up (north). Lengths are millimetres and may be fractional as drawn;
// settling to whole millimetres is the business of `fill`.

import type { JsonObject } from "../json/value.ts";
import type { Mm } from "../units.ts";

/** Members of the file that this version does not know, kept so that writing loses nothing. Absent where there are none. */
interface Extended {
  readonly extra?: JsonObject;
}

/** A place in the plan, mm. */
export type Position = readonly [x: Mm, y: Mm];

/** One storey: floor to soffit, and the slab above it. `slab` 0 means no slab is poured with the walls. */
export interface Storey extends Extended {
  readonly clearHeight: Mm;
  readonly slab: Mm;
}

/** Which part of the body the drawn line is, looking from `from` to `to`. */
export type Justify = "centre" | "left" | "right";

export interface Wall extends Extended {
  readonly id: string;
  readonly from: Position;
  readonly to: Position;
  readonly thickness: Mm;
  readonly justify: Justify;
}

/** How an opening is formed: "band" between jambs with panels over and under it, "box" boxed out inside unbroken panels. */
export type Forming = "band" | "box";

/** A door or window. `at` runs along the wall's drawn line from its `from` to the nearer jamb. Heights are above the floor. */
export interface Opening extends Extended {
  readonly id: string;
  readonly wall: string;
  readonly at: Mm;
  readonly width: Mm;
  readonly sill: Mm;
  readonly head: Mm;
  readonly formed: Forming;
}

/** "room" has a slab over it; "open" is a shaft or courtyard: no slab, a cap round its head. */
export type RoomKind = "room" | "open";

/** A room is named by any point inside it. `kind` is null where the file does not say: a small enclosed room is then asked about. */
export interface RoomLabel extends Extended {
  readonly name: string;
  readonly at: Position;
  readonly kind: RoomKind | null;
  readonly soffitDrop: Mm;
  /** The axis along which its slab panels are to lie with their lengths. Absent: the better of the two. */
  readonly soffitAlong?: "x" | "y";
}

/** A slab outside the walls (balcony), or an opening in a slab. The ring is not closed: first and last point differ. */
export interface SlabOutline extends Extended {
  readonly id: string;
  readonly outline: readonly Position[];
}

/** A service in the slab or floor. No layout pin and no tie within `clearance` of its path. */
export interface Service extends Extended {
  readonly id: string;
  readonly path: readonly Position[];
  readonly clearance: Mm;
}

export interface ControlLine extends Extended {
  readonly id: string;
  readonly from: Position;
  readonly to: Position;
}

/**
 * A sequence of widths on a wall, `from` measured as an opening's `at`: the engineer's own, or with `by` "set" one of those
 * chosen for all pours together, which covers one free interval from end to end.
 */
export interface Pinned extends Extended {
  readonly wall: string;
  readonly from: Mm;
  readonly widths: readonly Mm[];
  readonly by?: "set";
  /** Which of `widths`, counted from 0, is the closure. Absent: one that no panel has. */
  readonly closure?: number;
  /** The only storey it stands at. Absent: at each that the unit is poured at. */
  readonly storey?: Storey;
}

/** A unit type: drawn once, poured many times. */
export interface Unit extends Extended {
  readonly id: string;
  readonly name: string;
  readonly walls: readonly Wall[];
  readonly openings: readonly Opening[];
  readonly rooms: readonly RoomLabel[];
  readonly slabs: readonly SlabOutline[];
  readonly slabOpenings: readonly SlabOutline[];
  readonly services: readonly Service[];
  readonly controlLines: readonly ControlLine[];
  readonly pinned: readonly Pinned[];
  /** A picture to draw over, as it came; what it says is read where it is shown. Absent where there is none. */
  readonly underlay?: JsonObject;
}

/** One placing of concrete. Pours of one `day` add up; null = a day of its own. `storey` null = the project's. */
export interface Pour extends Extended {
  readonly id: string;
  readonly name: string;
  readonly unit: string;
  readonly mirror: boolean;
  readonly day: number | null;
  readonly storey: Storey | null;
}

/** Weights of the common choice over all pours, in the kit's currency. */
export interface Objective extends Extended {
  readonly handling: number;
  readonly closure: number;
  readonly closurePerMm: number;
  readonly distinctSize: number;
  /** For each filler handled. Absent: 0. */
  readonly filler?: number;
}

/** What the common choice keeps to. */
export interface Limits extends Extended {
  /** Codes of wall panels it may not use. */
  readonly forbidden: readonly string[];
  /** Most distinct widths among the panels it chooses; null: any number. */
  readonly mostWidths: number | null;
  /** Of one panel it chooses, kg; null: any. */
  readonly greatestMass: number | null;
}

/**
 * Where fillers stand in an interval. "corner" (the rule): at the closing end. "middle": between the standard panels,
 * which then stand at both ends. "jamb": at the end away from the closing end.
 */
export type FillerPlace = "corner" | "middle" | "jamb";

export type Language = "en" | "es" | "pt";

export interface Project {
  readonly name: string;
  readonly revision: string;
  readonly language: Language;
  readonly storey: Storey;
  /** A shipped kit by name, or the kit object as it stood in the file (read it with `kit/parse`). */
  readonly kit: string | JsonObject;
  readonly units: readonly Unit[];
  /** Working order. Empty: every unit is one pour, in the order listed. */
  readonly pours: readonly Pour[];
  readonly stock: { readonly [code: string]: number };
  readonly buy: boolean;
  readonly fillers: FillerPlace;
  readonly objective: Objective;
  /** Absent: the common choice keeps to none. */
  readonly limits?: Limits;
  /** Inputs of the checks, kept as they came. */
  readonly concrete: JsonObject;
  readonly loads: JsonObject;
  /** Top members this version does not know; empty where there are none. */
  readonly extra: JsonObject;
}
