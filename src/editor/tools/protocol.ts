// What goes into a tool and what comes out of it. A tool is a pure function of its own state, one event and a view of
// the plan; it asks for things by intents and touches nothing itself.

import type { ItemRef, UnitDocument } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import type { Justify, Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import type { Box } from "../box.ts";
import type { Hit } from "../snap/hit.ts";
import type { Snap, SnapQuery, SnapReason } from "../snap/snap.ts";
import type { WordKey } from "../words/en.ts";
import type { Words } from "../words/say.ts";

/** Keys held down. Alt suspends snapping, Shift leaves the straight, Ctrl (or the command key) copies. */
export interface Modifiers {
  readonly shift: boolean;
  readonly alt: boolean;
  readonly ctrl: boolean;
}

export const NO_MODIFIERS: Modifiers = { shift: false, alt: false, ctrl: false };

/** Keys that tools know by name; characters come as `text`. */
export type ToolKey =
  | "Escape"
  | "Enter"
  | "Tab"
  | "Backspace"
  | "ArrowLeft"
  | "ArrowRight"
  | "ArrowUp"
  | "ArrowDown";

export interface PointerEvent {
  readonly kind: "press" | "move" | "release" | "double";
  /** In the plan, mm, not yet snapped. */
  readonly at: Position;
  readonly hit: Hit | null;
  readonly modifiers: Modifiers;
}

export type ToolEvent =
  | PointerEvent
  | { readonly kind: "key"; readonly key: ToolKey; readonly modifiers: Modifiers }
  /** Characters typed on the drawing: they go behind what is there. */
  | { readonly kind: "text"; readonly text: string }
  /** The whole text of the active field, from an input on the page. */
  | { readonly kind: "field"; readonly text: string };

/** What tools draw with, kept from one use to the next. */
export interface DrawSettings {
  readonly thickness: Mm;
  readonly justify: Justify;
  /** Whether lines run along the axes unless Shift is held. */
  readonly ortho: boolean;
  /** Whether places snap unless Alt is held. */
  readonly snapping: boolean;
  /** Step of the grid, mm; 0 = none. */
  readonly grid: Mm;
  readonly door: OpeningSize;
  readonly window: OpeningSize;
  readonly column: { readonly width: Mm; readonly depth: Mm };
  readonly clearance: Mm;
}

export interface OpeningSize {
  readonly width: Mm;
  readonly sill: Mm;
  readonly head: Mm;
}

/** The view of the plan a tool works on. The functions are pure: the same plan, the same answer. */
export interface ToolContext {
  readonly unit: UnitDocument;
  readonly selection: readonly ItemRef[];
  readonly settings: DrawSettings;
  /** How near the pointer counts as on a thing, mm: some ten pixels at the zoom in use. */
  readonly reach: Mm;
  readonly snap: (query: SnapQuery) => Snap;
  /** The wall under a place, by its id. */
  readonly wallAt: (at: Position) => string | null;
  readonly itemsInWindow: (window: Box, touching: boolean) => readonly ItemRef[];
}

/** What a tool shows on the drawing beside what its edits would give. */
export type Mark =
  | { readonly kind: "snap"; readonly reason: SnapReason }
  | { readonly kind: "line"; readonly from: Position; readonly to: Position }
  | { readonly kind: "path"; readonly places: readonly Position[]; readonly isClosed: boolean }
  | { readonly kind: "window"; readonly box: Box; readonly touching: boolean }
  /** A figure on the drawing; `typed` is what stands in its field, null where nothing has been typed into it. */
  | {
      readonly kind: "figure";
      readonly name: WordKey & `dimension.${string}`;
      readonly value: number;
      readonly unit: "mm" | "degrees";
      readonly from: Position;
      readonly to: Position;
      readonly typed: string | null;
      readonly isActive: boolean;
    }
  /** One of the live dimensions of the selection is being typed. */
  | { readonly kind: "typing"; readonly key: string; readonly text: string; readonly was: Mm }
  /** A name being typed at a place. */
  | { readonly kind: "name"; readonly at: Position; readonly text: string };

export type Intent =
  | { readonly kind: "select"; readonly items: readonly ItemRef[] }
  /** What the gesture would give if it ended here: the edits on the plan as it stands, and the marks. */
  | { readonly kind: "preview"; readonly edits: readonly Edit[]; readonly marks: readonly Mark[] }
  /** One undoable step. `select` null: what the step made is selected if it made anything. */
  | {
      readonly kind: "commit";
      readonly label: Words;
      readonly edits: readonly Edit[];
      readonly select: readonly ItemRef[] | null;
    }
  | { readonly kind: "discard-preview" }
  | { readonly kind: "message"; readonly said: Words };

export const DISCARD: Intent = { kind: "discard-preview" };

/** What a tool returns: itself in its next phase, and what it asks for, in order. */
export type Turned<T> = readonly [T, readonly Intent[]];

/** The mark of a snap, or none where the place was free. */
export function snapMarks(snap: Snap): readonly Mark[] {
  return snap.reason === null ? [] : [{ kind: "snap", reason: snap.reason }];
}

/** A query for the place under the pointer with nothing else asked. */
export function plainQuery(at: Position, modifiers: Modifiers, context: ToolContext): SnapQuery {
  const { settings, reach } = context;
  return {
    at,
    reach,
    grid: settings.grid,
    from: null,
    rail: null,
    exclude: new Set(),
    isFree: modifiers.alt || !settings.snapping,
  };
}
