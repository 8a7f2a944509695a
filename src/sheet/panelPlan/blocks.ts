// What stands on the floor, from above: panels as blocks as deep as their frames along both sides of every wall,
// corners solid, closures hatched, openings as gaps in the concrete, ties as strokes across the wall.
//
//   ┌────┬────┬──┐
//   ╞════╪════╪══╡  concrete     A stroke crosses the wall where a tie does; the dot is at the side that is set
//   └────┴────┴──┘               first and puts the ties in.

import type { FaceOpening, FacePiece, FilledFace, TieLine, UnitFill } from "../../fill/result.ts";
import { distance } from "../../geom/point.ts";
import type { Mm } from "../../units.ts";
import { ringsOf, turnAt } from "../faceRing.ts";
import type { SheetInfo } from "../info.ts";
import type { Ink, Mark, Point, Stroke } from "../mark.ts";
import { isHeadPiece } from "../pieceKind.ts";
import { FINE, lookOf, THIN } from "../pieceMark.ts";
import { intoConcrete, onPlan, type PlanView } from "../planView.ts";

/** Depth of a frame where the kit does not state one, mm. Common practice, no source. */
const USUAL_DEPTH: Mm = 65;

const GAP: Stroke = { weight: 0.25, ink: "ink", dash: [0.8, 0.6] };

export function frameDepth(info: SheetInfo): Mm {
  return info.frameDepth ?? USUAL_DEPTH;
}

/** The pieces of a face that stand on the floor, left to right as the person before it sees them. */
export function standing(face: FilledFace): readonly FacePiece[] {
  return face.pieces.filter((piece) => piece.z === 0 && !isHeadPiece(piece.family)).sort((a, b) => a.x - b.x);
}

/** The four places of a block on paper: along the face, then back along the outside of the frames. */
export function blockOutline(
  face: FilledFace,
  part: { readonly x: Mm; readonly width: Mm },
  depth: Mm,
  view: PlanView,
): readonly [Point, Point, Point, Point] {
  const place = (x: Mm, deep: Mm) => view.at(onPlan(face, x, -deep));
  const end = part.x + part.width;
  return [place(part.x, 0), place(end, 0), place(end, depth), place(part.x, depth)];
}

/** Blocks and gaps along one face, the corner legs last, for they cover the ends of what stands beside them. */
export function faceMarks(face: FilledFace, info: SheetInfo, view: PlanView): readonly Mark[] {
  const depth = frameDepth(info);
  const pieces = standing(face);
  const isCorner = (piece: FacePiece) => piece.family === "inside-corner";
  return [
    ...face.unfilled
      .filter(({ z }) => z === 0)
      .map((gap): Mark => {
        const points = blockOutline(face, gap, depth, view);
        return { kind: "polygon", points, fill: "paper", stroke: GAP };
      }),
    ...[...pieces.filter((piece) => !isCorner(piece)), ...pieces.filter(isCorner)].flatMap((piece) =>
      blockMarks(piece, blockOutline(face, piece, depth, view), info),
    ),
  ];
}

function blockMarks(
  piece: FacePiece,
  points: readonly [Point, Point, Point, Point],
  info: SheetInfo,
): readonly Mark[] {
  const body = (fill: Ink, stroke: Stroke = FINE): Mark => ({ kind: "polygon", points, fill, stroke });
  switch (piece.family) {
    case "inside-corner":
      return [body("ink")];
    case "closure-strip":
      return [body("paper"), ...hatchLines(points)];
    case "wall-panel":
      return piece.firstOut === true
        ? [body(lookOf(piece, info).tone), notch(points)]
        : [body(lookOf(piece, info).tone)];
    default:
      return [body("band")];
  }
}

/** Lines at 45° to the face, 0.8 mm apart, across a block of any direction. */
function hatchLines([a, b, , d]: readonly [Point, Point, Point, Point]): readonly Mark[] {
  const [width, height] = [length(a, b), length(a, d)];
  if (width === 0 || height === 0) return [];
  const at = (x: number, y: number): Point => [
    a[0] + ((b[0] - a[0]) * x) / width + ((d[0] - a[0]) * y) / height,
    a[1] + ((b[1] - a[1]) * x) / width + ((d[1] - a[1]) * y) / height,
  ];
  const marks: Mark[] = [];
  for (let start = 0.4 - height; start < width; start += 0.8) {
    const from = Math.max(start, 0);
    const to = Math.min(start + height, width);
    marks.push({
      kind: "line",
      from: at(from, from - start),
      to: at(to, to - start),
      stroke: { weight: 0.25, ink: "ink" },
    });
  }
  return marks;
}

/** A notch in the outer edge of the piece that comes out first. */
function notch([a, b, c, d]: readonly [Point, Point, Point, Point]): Mark {
  const middle = (p: Point, q: Point, share: number): Point => [
    p[0] + (q[0] - p[0]) * share,
    p[1] + (q[1] - p[1]) * share,
  ];
  const half = Math.min(0.35, 0.8 / Math.max(length(c, d), 0.01));
  const tip = middle(middle(a, b, 0.5), middle(d, c, 0.5), 0.15);
  const points = [middle(d, c, 0.5 - half), tip, middle(d, c, 0.5 + half)];
  return { kind: "polygon", points, fill: "paper", stroke: THIN };
}

function length(a: Point, b: Point): number {
  return Math.sqrt((a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]));
}

/** The angle in every outside corner, where the frames of both faces leave a square free. */
export function outsideCornerMarks(unit: UnitFill, info: SheetInfo, view: PlanView): readonly Mark[] {
  const depth = frameDepth(info);
  const uprights = unit.corners.filter(({ from, to }) => from[0] === to[0] && from[1] === to[1]);
  return ringsOf(unit.faces).flatMap(({ faces }) =>
    faces.flatMap((face, index): readonly Mark[] => {
      const before = faces[(index + faces.length - 1) % faces.length]!;
      if (distance(before.to, face.from) > 0.01 || turnAt(before, face) === "inside") return [];
      if (!uprights.some(({ from }) => distance([from[0], from[1]], face.from) < 5)) return [];
      const [ax, ay] = intoConcrete(before);
      const [bx, by] = intoConcrete(face);
      const [x, y] = face.from;
      const places = [
        [x, y],
        [x - ax * depth, y - ay * depth],
        [x - (ax + bx) * depth, y - (ay + by) * depth],
        [x - bx * depth, y - by * depth],
      ] as const;
      return [{ kind: "polygon", points: places.map(view.at), fill: "band", stroke: FINE }];
    }),
  );
}

/** Openings: a door is a gap in the concrete, a window a pale one, a box opening an outline in it; jambs at their ends. */
export function openingMarks(unit: UnitFill, info: SheetInfo, view: PlanView): readonly Mark[] {
  const seen = new Set<string>();
  return unit.faces.flatMap((face) =>
    face.openings.flatMap((opening): readonly Mark[] => {
      if (seen.has(opening.id)) return [];
      seen.add(opening.id);
      const deep = wallDepth(face, opening, unit, info);
      const quad = (from: Mm, to: Mm): readonly Point[] =>
        [
          [from, 0],
          [to, 0],
          [to, deep],
          [from, deep],
        ].map(([x, depth]) => view.at(onPlan(face, x!, depth!)));
      const [from, to] = [opening.x, opening.x + opening.width];
      if (opening.formed === "box") return [{ kind: "polygon", points: quad(from, to), stroke: GAP }];
      const jamb = Math.min(frameDepth(info), opening.width / 4);
      const hasJambs = unit.reveals.some(
        ({ opening: id, side, pieces }) => id === opening.id && side === "left" && pieces.length > 0,
      );
      const jambs = hasJambs ? [quad(from, from + jamb), quad(to - jamb, to)] : [];
      const isDoor = opening.sill === 0;
      return [
        { kind: "polygon", points: quad(from, to), fill: isDoor ? "paper" : "band", stroke: THIN },
        ...jambs.map((points): Mark => ({ kind: "polygon", points, fill: "band", stroke: FINE })),
      ];
    }),
  );
}

/** How deep the wall is at an opening: as far as the face where the opening shows again, else as the wall is drawn. */
function wallDepth(face: FilledFace, opening: FaceOpening, unit: UnitFill, info: SheetInfo): Mm {
  const other = unit.faces.find((some) => some !== face && some.openings.some(({ id }) => id === opening.id));
  const across = other === undefined ? 0 : depthOf(face, onPlan(other, 0, 0));
  return across > 0 ? across : (info.thickness[face.walls[0] ?? ""] ?? 100);
}

/** How far a place lies from the line of the face, on the side of the concrete. */
function depthOf(face: FilledFace, [x, y]: readonly [Mm, Mm]): Mm {
  const [nx, ny] = intoConcrete(face);
  return (x - face.from[0]) * nx + (y - face.from[1]) * ny;
}

/** The ends of the stroke of a tie on paper: at the outside of the frames of its first face, and of its second. */
export function tieEnds(
  tie: TieLine,
  unit: UnitFill,
  info: SheetInfo,
  view: PlanView,
): readonly [Point, Point] | null {
  const face = unit.faces.find(({ id }) => id === tie.faces[0]);
  if (face === undefined) return null;
  const [nx, ny] = intoConcrete(face);
  const reach = tie.length / 2 + frameDepth(info);
  const [x, y] = tie.at;
  return [view.at([x - nx * reach, y - ny * reach]), view.at([x + nx * reach, y + ny * reach])];
}

/** One stroke for each tie line, its dot at the side that puts the ties in. */
export function tieMarks(unit: UnitFill, info: SheetInfo, view: PlanView): readonly Mark[] {
  return unit.ties.flatMap((tie): readonly Mark[] => {
    const ends = tieEnds(tie, unit, info, view);
    if (ends === null) return [];
    return [
      { kind: "line", from: ends[0], to: ends[1], stroke: { weight: 0.5, ink: "ink" } },
      { kind: "circle", centre: ends[0], radius: 0.55, fill: "ink" },
    ];
  });
}
