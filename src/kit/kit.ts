// The kit: which pieces there are and which rules of the trade hold, both as data.

import type { Kg, Mm } from "../units.ts";

interface PieceBase {
  readonly code: string;
  readonly mass: Kg;
  readonly price: number | null;
  /** A piece of the regular set; a wall panel that is not standard is a filler. */
  readonly standard: boolean;
  readonly hand: "left" | "right" | null;
  /** Pours a piece remains in place after its own. */
  readonly stays: number;
}

type Of<F extends string, Fields = object> = PieceBase & { readonly family: F } & Readonly<Fields>;

export type Turn = "inside" | "outside";

export type WallPanel = Of<"wall-panel", { width: Mm; height: Mm }>;
/** `legs`: the left leg, then the right one, as the person facing the corner sees them. */
export type InsideCorner = Of<"inside-corner", { legs: readonly [Mm, Mm]; height: Mm }>;
export type OutsideCorner = Of<"outside-corner", { length: Mm }>;
export type StopEnd = Of<"stop-end", { width: Mm; height: Mm }>;
export type RevealClosure = Of<"reveal-closure", { width: Mm; length: Mm }>;
export type RevealCorner = Of<"reveal-corner", { width: Mm; legs: readonly [Mm, Mm] }>;
export type WallSlabConnector = Of<"wall-slab-connector", { height: Mm; depth: Mm; length: Mm }>;
export type ConnectorCorner = Of<
  "connector-corner",
  { turn: Turn; height: Mm; depth: Mm; legs: readonly [Mm, Mm] }
>;
export type SlabEdgeCap = Of<"slab-edge-cap", { height: Mm; length: Mm }>;
export type CapCorner = Of<"cap-corner", { turn: Turn; height: Mm; legs: readonly [Mm, Mm] }>;
export type SlabPanel = Of<"slab-panel", { width: Mm; length: Mm }>;
export type ShoringStrip = Of<"shoring-strip", { width: Mm; length: Mm }>;
/** Class of EN 1065, as marked on the prop. */
export type PropClass = "A" | "B" | "C" | "D" | "E";
/** `class` null: the kit does not say, and what the prop bears cannot be checked. */
export type Prop = Of<"prop", { least: Mm; greatest: Mm; class: PropClass | null }>;
export type Tie = Of<"tie", { length: Mm }>;
export type TieSleeve = Of<"tie-sleeve", { length: Mm }>;
/** Made to measure to any whole width from `least` to `greatest`. */
export type ClosureStrip = Of<"closure-strip", { least: Mm; greatest: Mm }>;
export type AccessoryFamily =
  | "pin"
  | "wedge"
  | "wall-bracket"
  | "alignment-ledger"
  | "brace"
  | "opening-brace"
  | "facade-aligner";
/** `length` null: the kit does not say. */
export type Accessory = { [F in AccessoryFamily]: Of<F, { length: Mm | null }> }[AccessoryFamily];

export type Piece =
  | WallPanel
  | InsideCorner
  | OutsideCorner
  | StopEnd
  | RevealClosure
  | RevealCorner
  | WallSlabConnector
  | ConnectorCorner
  | SlabEdgeCap
  | CapCorner
  | SlabPanel
  | ShoringStrip
  | Prop
  | Tie
  | TieSleeve
  | ClosureStrip
  | Accessory;

export type Family = Piece["family"];

/** Every family, in the order in which bills and files list them. */
export const FAMILIES: readonly Family[] = [
  "wall-panel",
  "inside-corner",
  "outside-corner",
  "stop-end",
  "reveal-closure",
  "reveal-corner",
  "wall-slab-connector",
  "connector-corner",
  "slab-edge-cap",
  "cap-corner",
  "slab-panel",
  "shoring-strip",
  "prop",
  "tie",
  "tie-sleeve",
  "closure-strip",
  "pin",
  "wedge",
  "wall-bracket",
  "alignment-ledger",
  "brace",
  "opening-brace",
  "facade-aligner",
];

/** What a rule's value may be. `holes` and `tieRows` have a shape of their own. */
export interface RuleValues {
  readonly cornerLeg: Mm;
  readonly frameDepth: Mm;
  readonly holes: { readonly first: Mm; readonly pitch: Mm };
  readonly tieTolerance: Mm;
  readonly tieRows: readonly Mm[];
  readonly tieSpacing: Mm;
  readonly tieEdge: Mm;
  readonly narrowUnder: Mm;
  readonly pinPitch: Mm;
  readonly bracketSpacing: Mm;
  readonly alignerSpacing: Mm;
  readonly braceSpacing: Mm;
  readonly propPitch: Mm;
  readonly firstOutMax: Mm;
  readonly personLimit: Kg;
  readonly panelPressure: number;
  readonly tieLoad: number;
}

export type RuleName = keyof RuleValues;

/** A rule with its unit and where it comes from; nobody should have to guess which figure is published. */
export interface Rule<V> {
  readonly value: V;
  readonly unit: string;
  readonly origin: string;
}

/** A missing rule is allowed: what needs it becomes a problem. */
export type Rules = { readonly [K in RuleName]?: Rule<RuleValues[K]> };

export interface Kit {
  readonly name: string;
  readonly currency: string | null;
  readonly pieces: readonly Piece[];
  readonly rules: Rules;
}

/** The pieces of one family, in the order of the kit. */
export function piecesOf<F extends Family>(kit: Kit, family: F): readonly Extract<Piece, { family: F }>[] {
  return kit.pieces.filter((piece): piece is Extract<Piece, { family: F }> => piece.family === family);
}

/** The value of a rule, or undefined where the kit does not give it. */
export function ruleValue<K extends RuleName>(kit: Kit, name: K): RuleValues[K] | undefined {
  return kit.rules[name]?.value;
}
