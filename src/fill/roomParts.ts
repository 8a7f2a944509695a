// What belongs to one room: every face, piece and tie of a unit falls to exactly one room, or to the outside.
//
// Faces say their room themselves. A reveal and a tie touch two sides of a wall; each is set from one of them only.

import type { Mm } from "../units.ts";
import type {
  EdgePiece,
  FilledFace,
  FilledRoom,
  Fitting,
  Reveal,
  Soffit,
  SoffitPiece,
  TieLine,
  UnitFill,
} from "./result.ts";

/** A room, or what is left when all rooms have been taken: the outside faces of the building. */
export interface RoomParts {
  readonly name: string;
  readonly isOutside: boolean;
  /** m², 0 outside. */
  readonly area: number;
  readonly faces: readonly FilledFace[];
  /** Reveals set from this side. */
  readonly reveals: readonly Reveal[];
  readonly edges: readonly EdgePiece[];
  /** Ties put in from this side, and ties that the neighbour puts in. */
  readonly ownTies: readonly TieLine[];
  readonly otherTies: readonly TieLine[];
  readonly fittings: readonly Fitting[];
  /** That of the room; outside, those of slabs outside the walls. */
  readonly soffits: readonly Soffit[];
  /** Pieces of the soffits that stand on no face: connectors are on the sheet with their faces already. */
  readonly overhead: readonly SoffitPiece[];
}

/** Farthest an edge may lie from its face, mm: edges follow the settled faces, `from` and `to` the drawn outline. */
const ON_FACE: Mm = 5;

/** A place along a face and across it, mm. */
export function alongFace(
  face: FilledFace,
  at: readonly [x: Mm, y: Mm, ...rest: Mm[]],
): { readonly x: Mm; readonly off: Mm } {
  const [dx, dy] = [face.to[0] - face.from[0], face.to[1] - face.from[1]];
  const drawn = Math.sqrt(dx * dx + dy * dy);
  if (drawn === 0) return { x: 0, off: Number.POSITIVE_INFINITY };
  const [px, py] = [at[0] - face.from[0], at[1] - face.from[1]];
  return { x: (px * dx + py * dy) / drawn, off: Math.abs(px * dy - py * dx) / drawn };
}

/** Whether a vertical or level edge runs along the face or stands at an end of it. */
export function isOnFace(face: FilledFace, edge: EdgePiece): boolean {
  return [edge.from, edge.to].every((end) => {
    const { x, off } = alongFace(face, end);
    return off <= ON_FACE && x >= -ON_FACE && x <= face.length + ON_FACE;
  });
}

/**
 * The rooms in the order of the fill, then the outside. Faces that no room lists, and pieces that lie on no face, are
 * the outside's. The outside is left out when nothing falls to it.
 */
export function roomPartsOf(unit: UnitFill): readonly RoomParts[] {
  const places = placesOf(unit);
  const edges = [...unit.corners].sort((a, b) => bySpace(a.from, b.from) || bySpace(a.to, b.to));
  const ties = [...unit.ties].sort((a, b) => bySpace([...a.at, 0], [...b.at, 0]));
  const fittings = [...unit.fittings].sort((a, b) => a.x - b.x || a.z - b.z);
  const ownFace = new Map(places.flatMap((place) => place.faces.map((face) => [face.id, place] as const)));
  const last = places.at(-1)!;
  const ownerOfOpening = (id: string) =>
    places.find((place) => place.faces.some((face) => face.openings.some((opening) => opening.id === id))) ??
    last;
  const ownerOfEdge = (edge: EdgePiece) =>
    places.find((place) => place.faces.some((face) => isOnFace(face, edge))) ?? last;
  const isOwn = (place: Place, id: string) => (ownFace.get(id) ?? last) === place;
  const soffitsOf = placeSoffits(unit.soffits, places);
  const onWalls = new Set(
    [...unit.faces.flatMap((face) => face.pieces), ...unit.corners].map(({ piece }) => piece),
  );
  return places
    .map((place) => ({
      ...place,
      reveals: unit.reveals.filter((reveal) => ownerOfOpening(reveal.opening) === place),
      edges: edges.filter((edge) => ownerOfEdge(edge) === place),
      ownTies: ties.filter((tie) => isOwn(place, tie.faces[0])),
      otherTies: ties.filter((tie) => !isOwn(place, tie.faces[0]) && isOwn(place, tie.faces[1])),
      fittings: fittings.filter((fitting) => isOwn(place, fitting.face)),
      soffits: soffitsOf.get(place) ?? [],
      overhead: (soffitsOf.get(place) ?? []).flatMap(({ pieces }) =>
        pieces.filter(({ piece }) => !onWalls.has(piece)),
      ),
    }))
    .filter(
      (parts) => parts.faces.length + parts.reveals.length + parts.edges.length + parts.soffits.length > 0,
    );
}

/** Soffits name their room; of several rooms of one name each takes the next soffit. The others are the outside's. */
function placeSoffits(
  soffits: readonly Soffit[],
  places: readonly Place[],
): ReadonlyMap<Place, readonly Soffit[]> {
  const found = new Map<Place, readonly Soffit[]>();
  for (const soffit of soffits) {
    const isFree = (place: Place) => !place.isOutside && place.name === soffit.room && !found.has(place);
    const place = (soffit.isSlab === true ? undefined : places.find(isFree)) ?? places.at(-1)!;
    found.set(place, [...(found.get(place) ?? []), soffit]);
  }
  return found;
}

/** What a fill lists in any order, left to right and from the floor up, so that equal fills give equal sheets. */
function sortedFace(face: FilledFace): FilledFace {
  const along = (a: { x: Mm; z: Mm }, b: { x: Mm; z: Mm }) => a.x - b.x || a.z - b.z;
  return {
    ...face,
    pieces: [...face.pieces].sort(along),
    unfilled: [...face.unfilled].sort(along),
    openings: [...face.openings].sort((a, b) => a.x - b.x || a.sill - b.sill),
  };
}

function bySpace(a: readonly [Mm, Mm, Mm], b: readonly [Mm, Mm, Mm]): number {
  return a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
}

type Place = Pick<RoomParts, "name" | "isOutside" | "area" | "faces">;

function placesOf(unit: UnitFill): readonly Place[] {
  const byId = new Map(unit.faces.map((face) => [face.id, sortedFace(face)]));
  const take = (room: FilledRoom): Place => {
    const faces = room.faces.flatMap((id) => byId.get(id) ?? []);
    for (const face of faces) byId.delete(face.id);
    return { name: room.name, isOutside: false, area: room.area, faces };
  };
  const rooms = unit.rooms.map(take);
  return [...rooms, { name: "", isOutside: true, area: 0, faces: [...byId.values()] }];
}
