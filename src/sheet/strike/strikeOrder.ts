// The order in which the forms of a room come down, as the back of its sheet tells it.
//
//   fittings, pins, ties ▸ frames of openings ▸ face by face ▸ corners ▸ band by band, each with the connectors
//   that it alone held ▸ what stays: strips on their props
//
// Common practice, no source. Nothing is pulled while something else rests on it, and nothing that another piece locks.

import type { FacePiece, FilledFace, Soffit, SoffitPiece } from "../../fill/result.ts";
import type { RoomParts } from "../../fill/roomParts.ts";
import type { Position } from "../../plan/project.ts";
import type { SheetFace, SheetRing } from "../faceOrder.ts";
import { isHeadPiece } from "../pieceKind.ts";
import { type Band, edgesOf, isLaid } from "../soffit/bands.ts";
import { type FaceOut, faceOut, panelsOf, startOf } from "./faceOut.ts";

export type StrikeStep =
  | { readonly kind: "fittings" }
  /** Reveals and the edge pieces round openings and outside corners. */
  | { readonly kind: "frames"; readonly pieces: readonly string[]; readonly edges: readonly string[] }
  | ({ readonly kind: "face"; readonly face: SheetFace } & FaceOut)
  | { readonly kind: "corners"; readonly pieces: readonly string[] }
  /** `connectors`: those on which nothing rests when the band is down. */
  | {
      readonly kind: "band";
      readonly letter: string;
      readonly pieces: readonly string[];
      readonly connectors: readonly string[];
    }
  /** Connectors under which no slab panel hangs. */
  | { readonly kind: "connectors"; readonly pieces: readonly string[] }
  /** Caps carry the next storey; the strips with their props carry the young slab. */
  | {
      readonly kind: "stay";
      readonly caps: readonly string[];
      readonly strips: readonly string[];
      readonly props: readonly string[];
    };

/** Every piece of the room once, but its ties and fittings, which the first step takes all. */
export function strikeSteps(
  parts: RoomParts,
  rings: readonly SheetRing[],
  bands: readonly (readonly Band[])[],
): readonly StrikeStep[] {
  const heads = new Set(
    parts.faces.flatMap(({ pieces }) =>
      pieces.filter(({ family }) => isHeadPiece(family)).map(({ piece }) => piece),
    ),
  );
  const edges = parts.edges
    .filter(
      ({ piece, family }) => !heads.has(piece) && family !== "cap-corner" && family !== "connector-corner",
    )
    .map(({ piece }) => piece);
  const frames = parts.reveals.flatMap(({ pieces }) => pieces.map(({ piece }) => piece)).reverse();
  const faces = faceSteps(rings);
  const corners = unique(
    rings.flatMap((ring) =>
      ring.faces.flatMap(({ face }) =>
        face.pieces.filter(({ family }) => family === "inside-corner").map(({ piece }) => piece),
      ),
    ),
  );
  const down = overheadSteps(parts, rings, bands);
  const caps = unique(
    [...facesOf(rings).flatMap(({ pieces }) => pieces), ...parts.edges]
      .filter(({ family }) => family === "slab-edge-cap" || family === "cap-corner")
      .map(({ piece }) => piece),
  );
  const strips = parts.overhead.filter(({ family }) => family === "shoring-strip").map(({ piece }) => piece);
  const props = parts.soffits.flatMap((soffit) => soffit.props.map(({ piece }) => piece));
  return [
    { kind: "fittings" },
    ...(frames.length + edges.length > 0 ? [{ kind: "frames" as const, pieces: frames, edges }] : []),
    ...faces,
    ...(corners.length > 0 ? [{ kind: "corners" as const, pieces: corners }] : []),
    ...down,
    ...(caps.length + strips.length + props.length > 0
      ? [{ kind: "stay" as const, caps, strips, props }]
      : []),
  ];
}

/** Faces with a first-out piece from the last of the work to the first, then those that have come free, then the rest. */
function faceSteps(rings: readonly SheetRing[]): readonly StrikeStep[] {
  const steps: StrikeStep[] = [];
  for (const ring of rings) {
    // A face of corners alone is clear from the first.
    const cleared = new Set(ring.faces.filter(({ face }) => panelsOf(face).length === 0));
    const left = new Set(ring.faces.filter((face) => !cleared.has(face)).sort((a, b) => b.rank - a.rank));
    while (left.size > 0) {
      const eased = easedCorners(cleared);
      const order = { "first-out": 0, free: 1, forced: 2 };
      const ranks = [...left].map((face) => ({ face, rank: order[startOf(face.face, eased, leadOf(face))] }));
      const { face: next } = ranks.reduce((a, b) => (b.rank < a.rank ? b : a));
      left.delete(next);
      cleared.add(next);
      steps.push({ kind: "face", face: next, ...faceOut(next.face, eased, leadOf(next)) });
    }
  }
  return steps;
}

/** Later in the work the greater. */
function leadOf({ direction }: SheetFace): (piece: FacePiece) => number {
  return direction === "right" ? ({ x }) => x : ({ x, width }) => -(x + width);
}

/** Corners that stand on a face which is clear already. */
function easedCorners(cleared: ReadonlySet<SheetFace>): ReadonlySet<string> {
  return new Set([...cleared].flatMap(({ face }) => face.pieces.map(({ piece }) => piece)));
}

/** Bands from the last laid to the first; a connector follows the last panel that rests on it. */
function overheadSteps(
  parts: RoomParts,
  rings: readonly SheetRing[],
  bands: readonly (readonly Band[])[],
): readonly StrikeStep[] {
  const steps: StrikeStep[] = [];
  const pulled = new Set<string>();
  parts.soffits.forEach((soffit, index) => {
    const standing = new Set(soffit.pieces.filter(isLaid));
    for (const { letter, pieces } of [...(bands[index] ?? [])].reverse()) {
      for (const piece of pieces) standing.delete(piece);
      const connectors = connectorsOf(soffit).filter(
        (connector) =>
          !pulled.has(connector.piece) &&
          pieces.some((piece) => touches(piece, connector)) &&
          ![...standing].some((piece) => touches(piece, connector)),
      );
      for (const { piece } of connectors) pulled.add(piece);
      steps.push({
        kind: "band",
        letter,
        pieces: [...pieces].reverse().map(({ piece }) => piece),
        connectors: connectors.map(({ piece }) => piece),
      });
    }
  });
  const rest = unique([
    ...parts.soffits.flatMap((soffit) => connectorsOf(soffit).map(({ piece }) => piece)),
    ...facesOf(rings).flatMap(({ pieces }) =>
      pieces
        .filter(({ family }) => family === "wall-slab-connector" || family === "connector-corner")
        .map(({ piece }) => piece),
    ),
    ...parts.edges.filter(({ family }) => family === "connector-corner").map(({ piece }) => piece),
  ]).filter((piece) => !pulled.has(piece));
  return rest.length > 0 ? [...steps, { kind: "connectors", pieces: rest }] : steps;
}

function connectorsOf({ pieces }: Soffit): readonly SoffitPiece[] {
  return pieces.filter((piece) => !isLaid(piece) && piece.family !== "shoring-strip");
}

/** Nearer than this two sides lie on each other, mm. */
const ON = 1;

/** Whether two outlines share part of a side. */
function touches(a: SoffitPiece, b: SoffitPiece): boolean {
  return edgesOf(a.outline).some(([from, to]) =>
    edgesOf(b.outline).some(([start, end]) => sharedLength([from, to], [start, end]) > ON),
  );
}

/** How much of a line lies on another, mm. */
export function sharedLength(
  [from, to]: readonly [Position, Position],
  [start, end]: readonly [Position, Position],
): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.sqrt(dx * dx + dy * dy);
  if (length === 0) return 0;
  const along = ([x, y]: Position) => ((x - from[0]) * dx + (y - from[1]) * dy) / length;
  const aside = ([x, y]: Position) => Math.abs((x - from[0]) * dy - (y - from[1]) * dx) / length;
  if (aside(start) > ON || aside(end) > ON) return 0;
  const [low, high] = [Math.min(along(start), along(end)), Math.max(along(start), along(end))];
  return Math.min(length, high) - Math.max(0, low);
}

/** In the order of their rings, whatever that of the fill. */
function facesOf(rings: readonly SheetRing[]): readonly FilledFace[] {
  return rings.flatMap((ring) => ring.faces.map(({ face }) => face));
}

function unique(pieces: readonly string[]): readonly string[] {
  return [...new Set(pieces)];
}
