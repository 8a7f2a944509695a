// What the outline of the concrete gives: faces in rings, rooms, and which face stands opposite which.
//
//            x →  (as the person facing the concrete sees it)
//   from ●────────────────────────● to      concrete on the left of from → to, the person on the right
//
// Produced by `outline.ts`; read by `fill` and by the editor.

import type { Mm } from "../units.ts";
import type { Position, RoomKind } from "./project.ts";

/** Which side of a wall body a face lies on, looking along the drawn line; "from" and "to" are its two ends. */
export type WallSide = "left" | "right" | "from" | "to";

/** The part of a face that belongs to one side of one wall. `start` and `end` run along the face, mm from its `from`. */
export interface FaceWall {
  readonly wall: string;
  readonly side: WallSide;
  readonly start: Mm;
  readonly end: Mm;
}

/** How the outline turns at the end of a face: an inside corner is concave for the person standing before it. */
export interface Corner {
  readonly turn: "inside" | "outside";
  /** Angle of the concrete, degrees, to 0.001: 90 at a square outside corner, 270 at a square inside corner. */
  readonly angle: number;
  /** Whether it is square within the tie tolerance over a corner leg. */
  readonly isSquare: boolean;
}

/** A stretch of a face with a face of the same concrete opposite it, across bodies parallel to it. */
export interface Opposite {
  /** Index of the opposite face in {@link Outline.faces}. */
  readonly face: number;
  /** Along this face, mm from its `from`. */
  readonly start: Mm;
  readonly end: Mm;
  /** Distance across the concrete, mm. */
  readonly thickness: Mm;
}

/** One straight stretch of formed concrete from corner to corner. */
export interface Face {
  readonly index: number;
  readonly from: Position;
  readonly to: Position;
  /** As drawn, not yet settled. */
  readonly length: Mm;
  readonly ring: number;
  /** The next and the previous face round the ring. */
  readonly next: number;
  readonly previous: number;
  /** The corner at `from` and at `to`. */
  readonly fromCorner: Corner;
  readonly toCorner: Corner;
  readonly walls: readonly FaceWall[];
  readonly opposite: readonly Opposite[];
  /** A body end whose whole width lies on the outline. */
  readonly isFreeEnd: boolean;
  /** Index of the room before this face, null = outside. */
  readonly room: number | null;
}

/** A closed ring of faces. Room rings run clockwise, outer rings of concrete counter-clockwise. */
export interface Ring {
  readonly faces: readonly number[];
  /** True for the outer boundary of a body of concrete, false for a void inside one. */
  readonly isOuter: boolean;
  /** Index of the room this ring bounds or stands in, null = outside. */
  readonly room: number | null;
}

/** A void enclosed by concrete. */
export interface Room {
  readonly name: string;
  /** null: the file does not say. */
  readonly kind: RoomKind | null;
  readonly soffitDrop: Mm;
  /** The axis along which its slab panels are to lie; null: the better of the two. */
  readonly soffitAlong: "x" | "y" | null;
  /** Index of the ring that encloses it. */
  readonly ring: number;
  /** Rings of columns and free-standing walls inside it. */
  readonly inner: readonly number[];
  /** m², columns inside taken off. */
  readonly area: number;
  /** The outline point of least x, then least y. Rooms are listed in this order. */
  readonly lowerLeft: Position;
  /** True where the project names the room; false for "Room 1", "Room 2" … */
  readonly isNamed: boolean;
}

/** Something in the drawing that the outline had to decide or could not follow. */
export interface OutlineFinding {
  readonly severity: "error" | "warning";
  readonly kind: string;
  readonly message: string;
  readonly where: { readonly wall?: string; readonly room?: string; readonly at?: Position };
}

/**
 * The outline of one unit. Rings come by their least corner (x, then y), faces round each ring from that corner,
 * rooms by their lower left point: nothing depends on the order or the names of the walls.
 */
export interface Outline {
  readonly faces: readonly Face[];
  readonly rings: readonly Ring[];
  readonly rooms: readonly Room[];
  readonly findings: readonly OutlineFinding[];
}
