// What the hand is on in the elevation: a face, a stretch of it, a piece or a tie. Kept as places, not as numbers of
// pieces, so that it outlasts the next fill.

import type { FilledUnit } from "../../fill/fillWalls.ts";
import type { FilledFace } from "../../fill/result.ts";
import type { ItemRef, UnitDocument } from "../../plan/document.ts";
import { find } from "../../plan/document.ts";
import type { Mm } from "../../units.ts";
import { roomAt } from "../soffit/roomEdits.ts";

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

/** The faces of the first thing selected: a wall, or that of an opening or a pin; a room. null = it has none of its own. */
export function selectedFaces(
  unit: UnitDocument,
  [first]: readonly ItemRef[],
  { outline, fill }: Pick<FilledUnit, "outline" | "fill">,
): readonly FilledFace[] | null {
  if (first === undefined) return null;
  const { bucket, id } = first;
  if (bucket === "rooms") {
    // By its place: two rooms may have one name.
    const label = find(unit.rooms, id);
    const room = label === undefined ? null : roomAt({ outline }, label.at);
    const own = room === null ? undefined : fill.rooms[outline.rooms.indexOf(room)];
    return own === undefined ? null : fill.faces.filter((face) => own.faces.includes(face.id));
  }
  const wall = bucket === "walls" ? id : wallHolding(unit, first);
  return wall === undefined ? null : fill.faces.filter(({ walls }) => walls.includes(wall));
}

function wallHolding(unit: UnitDocument, { bucket, id }: ItemRef): string | undefined {
  if (bucket === "openings") return find(unit.openings, id)?.wall;
  return bucket === "pinned" ? find(unit.pinned, id)?.wall : undefined;
}

/**
 * The focus as it stands for a fill: the one given while its face is there and belongs to what is selected, else the
 * whole of a face of that, one in a room first, the longest first; where nothing selected has faces the first of a room.
 */
export function focusOn(
  given: PaneFocus | null,
  {
    unit,
    faces,
    own,
  }: {
    readonly unit: string;
    readonly faces: readonly FilledFace[];
    /** Those of what is selected. */
    readonly own: readonly FilledFace[] | null;
  },
): PaneFocus | null {
  const kept = given === null || given.unit !== unit ? undefined : faces.find(({ id }) => id === given.face);
  if (given !== null && kept !== undefined && (own === null || own.includes(kept))) return given;
  const [best] = [...(own ?? faces)].sort(
    (a, b) => Number(b.room !== null) - Number(a.room !== null) || (own === null ? 0 : b.length - a.length),
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
