// Gathers what the ribbon of one room needs beside its faces: names, order of taking out, what lies behind each face.

import type { EdgePiece, FilledFace, UnitFill } from "../fill/result.ts";
import { alongFace, isOnFace, type RoomParts } from "../fill/roomParts.ts";
import { comparePoints, distance } from "../geom/point.ts";
import type { Mm } from "../units.ts";
import type { SheetRing } from "./faceOrder.ts";
import type { SheetInfo } from "./info.ts";
import { roomPage } from "./page.ts";
import { pieceNames } from "./pieceNames.ts";
import { plainText } from "./plainText.ts";
import { ribbonScale } from "./scale.ts";
import type { RibbonContext } from "./stretch.ts";
import { WORDS } from "./words.ts";

/** Farthest that two faces of one wall may be apart, mm. */
const THICKEST_WALL: Mm = 1500;

/** Farthest an edge piece may stand from its corner, mm. */
const AT_CORNER: Mm = 5;

export function ribbonContext(
  unit: UnitFill,
  parts: RoomParts,
  rings: readonly SheetRing[],
  info: SheetInfo,
): RibbonContext {
  const tallest = Math.max(0, ...parts.faces.map((face) => face.height));
  return {
    parts,
    info,
    names: pieceNames(rings, parts),
    nameStyle: "figure",
    outOrder: outOrder(rings),
    behind: Object.fromEntries(
      parts.faces.map((face) => [face.id, behind(face, unit, WORDS[info.language].outsideBehind)]),
    ),
    scale: ribbonScale(tallest),
    span: roomPage(info.paper).row,
    numberHeight: numberHeight(parts, info, tallest),
    ...edgePlaces(parts, rings),
  };
}

/** Last in, first out: from the last face of the work to the first. */
function outOrder(rings: readonly SheetRing[]): { readonly [piece: string]: number } {
  const order: { [piece: string]: number } = {};
  let count = 0;
  for (const { faces } of rings) {
    for (const { face } of [...faces].sort((a, b) => b.rank - a.rank)) {
      for (const piece of face.pieces) if (piece.firstOut === true) order[piece.piece] = ++count;
    }
  }
  return order;
}

/** The middle of the widest gap between tie rows, so that numbers and ties keep clear of each other. */
function numberHeight(parts: RoomParts, info: SheetInfo, tallest: Mm): Mm {
  const ties = [...parts.ownTies, ...parts.otherTies].flatMap((tie) => tie.heights);
  const rows = ties.length > 0 ? ties : info.tieRows;
  const levels = [...new Set([0, ...rows.filter((row) => row < tallest), tallest])].sort((a, b) => a - b);
  let best = { gap: 0, middle: tallest / 2 };
  levels.slice(1).forEach((level, index) => {
    const gap = level - levels[index]!;
    // The gap under the head of the wall holds the connectors as well.
    const isHead = index === levels.length - 2 && levels.length > 2;
    if (gap > best.gap && !isHead) best = { gap, middle: (level + levels[index]!) / 2 };
  });
  return best.middle;
}

/** Rooms on the far side of the walls of a face, in the order in which the assembler passes them. */
function behind(face: FilledFace, unit: UnitFill, outside: string): readonly string[] {
  const names = unit.faces
    .flatMap((other) => {
      const from = alongFace(face, other.to);
      const to = alongFace(face, other.from);
      const overlap = Math.min(to.x, face.length) - Math.max(from.x, 0);
      const isOpposite =
        other !== face &&
        other.walls.some((wall) => face.walls.includes(wall)) &&
        overlap > 0 &&
        Math.max(from.off, to.off) <= THICKEST_WALL &&
        isAcross(face, other);
      return isOpposite ? [{ x: Math.max(from.x, 0), from: other.from, name: other.room }] : [];
    })
    .sort((a, b) => a.x - b.x || comparePoints(a.from, b.from))
    .map(({ name }) => (name === null ? outside : plainText(name)));
  return [...new Set(names)];
}

/** Whether the other face runs the other way and lies on the concrete side, on the left. */
function isAcross(face: FilledFace, other: FilledFace): boolean {
  const [dx, dy] = [face.to[0] - face.from[0], face.to[1] - face.from[1]];
  const [ox, oy] = [other.from[0] - face.from[0], other.from[1] - face.from[1]];
  const along = dx * (other.to[0] - other.from[0]) + dy * (other.to[1] - other.from[1]);
  return along < 0 && dx * oy - dy * ox > 0;
}

/** Upright edge pieces in outside corners go by the corner, all others by the first face they lie on. */
function edgePlaces(parts: RoomParts, rings: readonly SheetRing[]) {
  const faces = rings.flatMap((ring) => ring.faces.map(({ face }) => face));
  const corners = rings.flatMap((ring) => ring.corners.flatMap((corner) => corner ?? []));
  const isUpright = ({ from, to }: EdgePiece) => distance([from[0], from[1]], [to[0], to[1]]) < AT_CORNER;
  const edgeFace: { [piece: string]: string | null } = {};
  const cornerEdges: { [corner: string]: EdgePiece[] } = {};
  for (const edge of parts.edges) {
    const corner = corners.find(
      ({ at, turn }) => turn === "outside" && distance(at, [edge.from[0], edge.from[1]]) < AT_CORNER,
    );
    if (corner !== undefined && isUpright(edge)) {
      const known = cornerEdges[corner.name] ?? [];
      known.push(edge);
      cornerEdges[corner.name] = known;
      edgeFace[edge.piece] = null;
    } else edgeFace[edge.piece] = faces.find((face) => isOnFace(face, edge))?.id ?? null;
  }
  return { edgeFace, cornerEdges };
}
