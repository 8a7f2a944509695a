// The fill of a project, as written to a file: the format "panelwright-fill", version 1.
//
// Lengths mm, areas m², masses kg. x runs along a face from its `from`, left to right as the assembler sees it;
// z is up from the floor. The order of the members is the order in the file.

import type { Family } from "../kit/kit.ts";
import type { Forming, Position, Storey } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { SetChanges, SetParts } from "./setChanges.ts";

/** A piece on a face: the rectangle of concrete it forms. An inside corner stands on two faces under one `piece`. */
export interface FacePiece {
  readonly piece: string;
  readonly code: string;
  readonly family: Family;
  readonly x: Mm;
  readonly z: Mm;
  readonly width: Mm;
  readonly height: Mm;
  /** Cut or ordered to a length of its own, counted apart. */
  readonly madeToMeasure?: true;
  /** Why a filler or a closure is there. */
  readonly reason?: string;
  readonly firstOut?: true;
  /** Stands opposite a corner or a joining wall. */
  readonly zone?: true;
}

/** A rectangle that cannot be built, with the index of the problem that says why. */
export interface Unfilled {
  readonly x: Mm;
  readonly z: Mm;
  readonly width: Mm;
  readonly height: Mm;
  readonly problem: number;
}

/** An opening where it stands on a face. */
export interface FaceOpening {
  readonly id: string;
  readonly x: Mm;
  readonly width: Mm;
  readonly sill: Mm;
  readonly head: Mm;
  readonly formed: Forming;
}

/** Ends of a face on whole millimetres. */
export type SettledEnds = readonly [from: Position, to: Position];

export interface FilledFace {
  readonly id: string;
  readonly walls: readonly string[];
  /** null = outside. */
  readonly room: string | null;
  readonly from: Position;
  readonly to: Position;
  /** The same two ends as settled, on whole millimetres: what is marked out. Not written to a file. */
  readonly settled: SettledEnds;
  readonly length: Mm;
  readonly height: Mm;
  readonly openings: readonly FaceOpening[];
  readonly pieces: readonly FacePiece[];
  readonly unfilled: readonly Unfilled[];
}

export interface FilledRoom {
  readonly name: string;
  readonly kind: "room" | "open";
  readonly area: number;
  readonly faces: readonly string[];
}

/** A piece along an edge of the concrete: outside corners, jamb, lintel and sill edges, corners without width. */
export interface EdgePiece {
  readonly piece: string;
  readonly code: string;
  readonly family: Family;
  readonly from: readonly [x: Mm, y: Mm, z: Mm];
  readonly to: readonly [x: Mm, y: Mm, z: Mm];
  readonly madeToMeasure?: true;
}

export type RevealSide = "left" | "right" | "head" | "sill";

/** A piece in a reveal: `at` and `length` along the reveal, upward at a jamb, left to right at head and sill. */
export interface RevealPiece {
  readonly piece: string;
  readonly code: string;
  readonly family: Family;
  readonly at: Mm;
  readonly length: Mm;
  /** Across the wall. */
  readonly width: Mm;
  readonly madeToMeasure?: true;
}

export interface Reveal {
  readonly opening: string;
  readonly side: RevealSide;
  readonly pieces: readonly RevealPiece[];
}

export interface SoffitPiece {
  readonly piece: string;
  readonly code: string;
  readonly family: Family;
  readonly outline: readonly Position[];
  readonly madeToMeasure?: true;
  /** Why a filler or a closure is there. */
  readonly reason?: string;
  /** Of a strip that reaches past the last head: the prop that holds it when the connectors have gone. */
  readonly heldBy?: string;
}

/** A prop: its head lies within its strip and is no piece of the tiling. */
export interface SoffitProp {
  readonly piece: string;
  readonly code: string;
  readonly at: Position;
  /** Soffit it carries, m². */
  readonly area: number;
}

/** The counts a soffit was chosen by. */
export interface SoffitCounts {
  readonly closures: number;
  /** Slab panels that are not standard. */
  readonly fillers: number;
  /** Slab panels. */
  readonly panels: number;
  /** Lines of strips. */
  readonly strips: number;
}

/** The soffit of a room, or of a slab outside the walls, which then goes by the slab's id. */
export interface Soffit {
  readonly room: string;
  readonly outline: readonly Position[];
  readonly holes: readonly (readonly Position[])[];
  /** Connectors, then slab panels and closures in the order of laying, then strips. */
  readonly pieces: readonly SoffitPiece[];
  readonly unfilled: readonly { readonly outline: readonly Position[]; readonly problem: number }[];
  readonly props: readonly SoffitProp[];
  /** True for a slab outside the walls. */
  readonly isSlab?: true;
  /**
   * The axis of the plan along which, or nearest to which, the slab panels lie with their lengths, across the strips;
   * null: there are neither.
   */
  readonly along: "x" | "y" | null;
  /** Floor to soffit: what the props reach, mm. */
  readonly height: Mm;
  readonly counts: SoffitCounts;
}

/** The ties of one joint. `faces`: the owner first, the side that is set first. */
export interface TieLine {
  readonly at: Position;
  readonly heights: readonly Mm[];
  readonly faces: readonly [string, string];
  readonly length: Mm;
  readonly code: string;
}

export interface Fitting {
  readonly piece: string;
  readonly code: string;
  readonly family: Family;
  readonly face: string;
  readonly x: Mm;
  readonly z: Mm;
  readonly length?: Mm;
}

export interface AccessoryCount {
  readonly code: string;
  readonly family: Family;
  readonly quantity: number;
  readonly rule: string;
}

export interface BillLine {
  readonly code: string;
  readonly family: Family;
  readonly quantity: number;
  /** Of all of them, kg. */
  readonly mass: number;
  /** Concrete they form, m². */
  readonly area: number;
}

export type Severity = "error" | "warning";

export interface Problem {
  readonly severity: Severity;
  readonly kind: string;
  /** One sentence a person can act on. */
  readonly message: string;
  readonly where: {
    readonly face?: string;
    readonly x?: Mm;
    readonly room?: string;
    readonly wall?: string;
    readonly opening?: string;
    readonly at?: Position;
    readonly code?: string;
  };
}

/** Findings with one cause, gathered: what in the drawing or the kit makes them, and what would take them away. */
export interface Cause {
  readonly message: string;
  readonly closures: number;
  /** Not those in zones, which no choice takes away. */
  readonly fillers: number;
  readonly places: number;
  /** Widths that would take the closures away if the kit had them. */
  readonly widths: readonly Mm[];
}

export interface Totals {
  readonly closures: number;
  readonly narrow: number;
  readonly fillers: number;
  readonly zones: number;
  readonly panels: number;
}

export interface UnitFill {
  readonly unit: string;
  readonly storey?: Storey;
  readonly pours: readonly string[];
  readonly rooms: readonly FilledRoom[];
  readonly faces: readonly FilledFace[];
  readonly corners: readonly EdgePiece[];
  readonly reveals: readonly Reveal[];
  readonly soffits: readonly Soffit[];
  readonly ties: readonly TieLine[];
  readonly fittings: readonly Fitting[];
  readonly accessories: readonly AccessoryCount[];
  readonly bill: readonly BillLine[];
  /** Of this entry alone; {@link FillDocument.totals} is the sum over all entries. */
  readonly totals: Totals;
  readonly causes: readonly Cause[];
  readonly problems: readonly Problem[];
}

/** A kind of piece in the set. */
export interface SetPiece {
  readonly code: string;
  readonly family: Family;
  /** Greatest need of any day; of pieces that stay, over so many days more in turn. */
  readonly needed: number;
  readonly owned: number;
  readonly toBuy: number;
  /** Of a wall panel in what the set is counted by, of others in the kit's currency; null where the kit does not say. */
  readonly price: number | null;
}

/** A kind of piece of which there are too few. */
export interface MissingPiece {
  readonly code: string;
  readonly quantity: number;
  readonly pours: readonly string[];
  readonly units: readonly string[];
}

/** The one set for every pour. */
export interface PanelSet {
  readonly status: "optimal" | "gap" | "infeasible" | "stopped";
  /** What a panel counts for: its price or, where the kit does not price every panel, its mass (kg) or area (m²). */
  readonly countedBy: "price" | "mass" | "area";
  readonly pieces: readonly SetPiece[];
  readonly cost: number;
  readonly parts: SetParts;
  /** No choice costs less, proven in whole numbers. */
  readonly lowerBound: number;
  /**
   * What is known beyond the plan. "certificate": the prices of a bound prove the status; "enumeration": every choice that
   * could be cheaper was gone through; both in whole numbers. "search": only the solver's own search, which reckons with
   * rounded numbers, came to its end: no choice has pieces enough ("infeasible"), or none is cheaper ("gap"). Null: nothing.
   */
  readonly proof: "certificate" | "enumeration" | "search" | null;
  /** What the choice placed: how many distinct widths, and how many fillers, each counted in every pour. */
  readonly chosen: { readonly widths: number; readonly fillers: number };
  /** No choice does with as few widths as the limits say, or none was found: this one has more. */
  readonly lacks?: "widths";
  /** The cost of filling every interval by itself, with what the limits forbid left out; null where that takes more panels or widths than there may be. */
  readonly wallByWall: number | null;
  /** Wall panels that the choice takes beyond what is owned where none may be bought, with the pours and units of the days that lack them. */
  readonly missing?: readonly MissingPiece[];
  /** What the choice changed against filling every interval by itself. */
  readonly changes?: SetChanges;
}

export interface FillDocument {
  readonly format: "panelwright-fill";
  readonly version: 1;
  readonly project: string;
  readonly units: readonly UnitFill[];
  readonly totals: Totals;
  /** Where the fill of all units was chosen together. */
  readonly set?: PanelSet;
}
