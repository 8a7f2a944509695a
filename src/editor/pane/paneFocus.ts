// What the hand is on in the elevation: a face, a stretch of it, a piece or a tie. Kept as places, not as numbers of
// pieces, so that it outlasts the next fill.

import type { FilledFace } from "../../fill/result.ts";
import type { ItemRef, UnitDocument } from "../../plan/document.ts";
import { find } from "../../plan/document.ts";
import type { Mm } from "../../units.ts";

export type PaneLevel = "face" | "stretch" | "piece" | "tie";

export interface PaneFocus {
  readonly unit: string;
  /** Id of the face. */
  readonly face: string;
  readonly level: PaneLevel;
  /** A place on the face, inside what the hand is on. */
  readonly x: Mm;
  readonly z: Mm;
}

/** The wall that is selected, or that of the opening that is. */
export function selectedWall(unit: UnitDocument, items: readonly ItemRef[]): string | null {
  const [first] = items;
  if (first === undefined) return null;
  if (first.bucket === "walls") return first.id;
  return first.bucket === "openings" ? (find(unit.openings, first.id)?.wall ?? null) : null;
}

/**
 * The focus as it stands for a fill: the one given while its face is there and belongs to the wall selected, else the
 * whole of a face of that wall, one in a room first, the longest first; without a wall the first face of a room.
 */
export function focusOn(
  given: PaneFocus | null,
  {
    unit,
    faces,
    wall,
  }: { readonly unit: string; readonly faces: readonly FilledFace[]; readonly wall: string | null },
): PaneFocus | null {
  const kept = given === null || given.unit !== unit ? undefined : faces.find(({ id }) => id === given.face);
  if (given !== null && kept !== undefined && (wall === null || kept.walls.includes(wall))) return given;
  const own = wall === null ? faces : faces.filter(({ walls }) => walls.includes(wall));
  const [best] = [...own].sort(
    (a, b) => Number(b.room !== null) - Number(a.room !== null) || (wall === null ? 0 : b.length - a.length),
  );
  return best === undefined ? null : { unit, face: best.id, level: "face", x: 0, z: 0 };
}

/** The next face of the same wall, round and round: the other side first. Free ends are passed over. */
export function otherFace(focus: PaneFocus, faces: readonly FilledFace[]): PaneFocus {
  const own = faces.findIndex(({ id }) => id === focus.face);
  const face = faces[own];
  if (face === undefined) return focus;
  const shares = (other: FilledFace) => other.walls.some((wall) => face.walls.includes(wall));
  const isAcross = ({ from, to }: FilledFace) =>
    (to[0] - from[0]) * (face.to[0] - face.from[0]) + (to[1] - from[1]) * (face.to[1] - face.from[1]) < 0;
  const ring = [...faces.slice(own + 1), ...faces.slice(0, own)].filter(shares);
  const next = ring.find(isAcross) ?? ring[0];
  return next === undefined ? focus : { ...focus, face: next.id, level: "face", x: 0, z: 0 };
}
