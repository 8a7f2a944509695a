// A soffit from above, without its lettering: connectors round it, strips on their props, panels and planks between.
//
//   ┌────────────────┐
//   │▒┌───┐══┌───┐▒▒▒│      Drawn through a plan view, so room sheet and soffit plan show the same thing at their scales.
//   │▒│   │⊗ │   │▒▒▒│
//   └────────────────┘

import type { FilledFace, Soffit, SoffitPiece } from "../../fill/result.ts";
import { comparePoints, distance } from "../../geom/point.ts";
import type { Position } from "../../plan/project.ts";
import { boxRound } from "../box.ts";
import type { SheetInfo } from "../info.ts";
import type { Mark, Point, Stroke } from "../mark.ts";
import { FINE, GHOST, OUTLINE, THIN } from "../pieceMark.ts";
import type { PlanView } from "../planView.ts";
import { type Band, isLaid } from "./bands.ts";
import { heldEnds } from "./heldEnds.ts";
import { overheadLook } from "./overheadPiece.ts";
import { propMarks } from "./propMark.ts";

export interface SoffitDrawing {
  readonly soffit: Soffit;
  readonly bands: readonly Band[];
  readonly view: PlanView;
  readonly info: SheetInfo;
  /** Of the unit: a hole that their ends run round is a column. */
  readonly faces: readonly FilledFace[];
  /** Pieces whose marks carry their id here; on a sheet that only refers to them none. */
  readonly claims: ReadonlySet<string>;
}

const CONCRETE: Stroke = { weight: 0.5, ink: "ink" };
const HELD: Stroke = { weight: 0.7, ink: "ink" };

/** Farthest a corner of a hole may lie from the end of a face, mm: the fill settles faces first. */
const AT_FACE = 5;

/** Of a prop, mm of paper: a little less than a strip of 150 is wide. */
export function propRadius(scale: number): number {
  return Math.min(1.15, 90 / scale);
}

export function soffitMarks(drawing: SoffitDrawing): readonly Mark[] {
  const { soffit, view } = drawing;
  const at = (outline: readonly Position[]) => outline.map(view.at);
  const { pieces } = soffit;
  return [
    ...shape(at(soffit.outline), { kind: "polygon", points: [], fill: "paper", stroke: CONCRETE }),
    ...pieces.filter(isConnector).map((piece) => bandMark(piece, drawing)),
    ...pieces.filter(isLaid).flatMap((piece) => laidMarks(piece, drawing)),
    ...pieces.filter(isStrip).flatMap((piece) => stripMarks(piece, drawing)),
    ...soffit.unfilled.flatMap(({ outline }) =>
      shape(at(outline), { kind: "polygon", points: [], fill: "paper", stroke: GHOST }),
    ),
    ...soffit.holes.flatMap((hole) => holeMarks(at(hole), isColumn(hole, drawing.faces))),
    ...drawing.bands.flatMap((band) => notchMarks(band, view)),
    ...heldEnds(soffit).map(
      ({ end, prop }): Mark => ({ kind: "line", from: view.at(prop.at), to: view.at(end), stroke: HELD }),
    ),
    ...soffit.props.flatMap(({ piece, at: place }) =>
      propMarks(view.at(place), propRadius(view.scale), drawing.claims.has(piece) ? piece : undefined),
    ),
  ];
}

function isStrip({ family }: SoffitPiece): boolean {
  return family === "shoring-strip";
}

function isConnector(piece: SoffitPiece): boolean {
  return !isStrip(piece) && !isLaid(piece);
}

type PolygonStyle = Extract<Mark, { kind: "polygon" }>;

function shape(points: readonly Point[], style: PolygonStyle): readonly Mark[] {
  return points.length < 3 ? [] : [{ ...style, points }];
}

/** The mark with the id of the piece it draws, where this sheet claims it. */
function claimed(mark: Mark, piece: SoffitPiece, { claims }: SoffitDrawing): Mark {
  return claims.has(piece.piece) ? { ...mark, piece: piece.piece } : mark;
}

function bandMark(piece: SoffitPiece, drawing: SoffitDrawing): Mark {
  const points = piece.outline.map(drawing.view.at);
  return claimed({ kind: "polygon", points, fill: "band", stroke: FINE }, piece, drawing);
}

/** Two lines along it, as in the list: in grey its tone alone is that of a wide filler. */
function stripMarks(piece: SoffitPiece, drawing: SoffitDrawing): readonly Mark[] {
  const points = piece.outline.map(drawing.view.at);
  const body: Mark = { kind: "polygon", points, fill: "band", stroke: OUTLINE };
  return [claimed(body, piece, drawing), ...railMarks(points)];
}

/** Narrower on paper than this a strip has no place for its two lines, mm. */
const LEAST_RAILS = 1.2;

function railMarks([a, b, c, d]: readonly Point[]): readonly Mark[] {
  if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
  const [p, q, r, s] = distance(a, b) <= distance(b, c) ? [a, b, c, d] : [b, c, d, a];
  if (distance(p, q) < LEAST_RAILS) return [];
  const between = (from: Point, to: Point, share: number): Point => [
    from[0] + (to[0] - from[0]) * share,
    from[1] + (to[1] - from[1]) * share,
  ];
  return [0.3, 0.7].map((share) => ({
    kind: "line",
    from: between(p, q, share),
    to: between(s, r, share),
    stroke: THIN,
  }));
}

function laidMarks(piece: SoffitPiece, drawing: SoffitDrawing): readonly Mark[] {
  const points = piece.outline.map(drawing.view.at);
  if (piece.family === "closure-strip") {
    const body: Mark = { kind: "polygon", points, fill: "paper", stroke: CONCRETE };
    return [claimed(body, piece, drawing), ...hatched(points)];
  }
  const look = overheadLook(piece, drawing.info);
  const body: Mark = { kind: "polygon", points, fill: look.tone, stroke: OUTLINE };
  const inner = look.isTwoPerson ? inset(points, 0.75) : null;
  return [
    claimed(body, piece, drawing),
    ...(inner === null ? [] : [{ kind: "polygon", points: inner, stroke: THIN } satisfies Mark]),
  ];
}

/** Lines rising at 45° in an upright rectangle; one that lies aslant gets its diagonals. */
function hatched(points: readonly Point[]): readonly Mark[] {
  const [a, b, c, d] = points;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
  const isUpright = (a[0] === b[0] || a[1] === b[1]) && (b[0] === c[0] || b[1] === c[1]);
  if (!isUpright) {
    return [
      { kind: "line", from: a, to: c, stroke: FINE },
      { kind: "line", from: b, to: d, stroke: FINE },
    ];
  }
  return [{ kind: "hatch", box: boxRound(points), pattern: "lines", pitch: 1.6, weight: 0.5, ink: "ink" }];
}

/** A parallelogram drawn in by `by` on all sides; null where it is too narrow to hold a second outline. */
function inset(points: readonly Point[], by: number): readonly Point[] | null {
  if (points.length !== 4) return null;
  const step = (from: Point, to: Point): Point => {
    const size = distance(from, to);
    return size < 3.2 * by
      ? [Number.NaN, Number.NaN]
      : [((to[0] - from[0]) / size) * by, ((to[1] - from[1]) / size) * by];
  };
  const inner = points.map((point, index): Point => {
    const [nx, ny] = step(point, points[(index + 1) % 4]!);
    const [px, py] = step(point, points[(index + 3) % 4]!);
    return [point[0] + nx + px, point[1] + ny + py];
  });
  return inner.every(([x]) => Number.isFinite(x)) ? inner : null;
}

function holeMarks(points: readonly Point[], isConcrete: boolean): readonly Mark[] {
  const body = shape(points, {
    kind: "polygon",
    points: [],
    fill: isConcrete ? "faint" : "paper",
    stroke: CONCRETE,
  });
  const [a, b, c, d] = points;
  if (isConcrete || points.length !== 4) return body;
  return [
    ...body,
    { kind: "line", from: a!, to: c!, stroke: THIN },
    { kind: "line", from: b!, to: d!, stroke: THIN },
  ];
}

export function isColumn(hole: readonly Position[], faces: readonly FilledFace[]): boolean {
  return hole.every((corner) => faces.some(({ from }) => distance(from, corner) <= AT_FACE));
}

/** The notch of the piece that closes a band and comes out first, as on a wall: at the end where the row stops. */
function notchMarks(band: Band, view: PlanView): readonly Mark[] {
  const { pieces } = band;
  const last = pieces.at(-1);
  if (last === undefined) return [];
  const way = layingWay(pieces);
  const edge = outerEdge(last.outline, way);
  if (edge === null) return [];
  const [a, b] = edge.map(view.at) as [Point, Point];
  const length = distance(a, b);
  // On a long side off the middle, where the label of the piece stands.
  const share = isNotchAside(band, view.scale) ? 0.15 : 0.5;
  const [cx, cy] = [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
  const [rx, ry] = notchReach(band, view.scale);
  const half = Math.min(1.3, length * 0.2);
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const points: readonly Point[] = [
    [cx - ux * half, cy - uy * half],
    [cx + rx, cy + ry],
    [cx + ux * half, cy + uy * half],
  ];
  return [{ kind: "polygon", points, fill: "paper", stroke: OUTLINE }];
}

/** Whether the closing side of a band is so long that its notch stands beside the label of the piece. */
export function isNotchAside({ pieces }: Band, scale: number): boolean {
  const edge = outerEdge(pieces.at(-1)?.outline ?? [], layingWay(pieces));
  return edge !== null && distance(edge[0], edge[1]) / scale >= 16;
}

/** How far the notch of a band reaches into its last piece, as a vector on paper, where y points down. */
export function notchReach({ pieces }: Band, scale: number): Point {
  const way = layingWay(pieces);
  const depth = Math.min(2, depthOf(pieces.at(-1)?.outline ?? [], way) / scale / 2);
  return [-way[0] * depth, way[1] * depth];
}

/** Unit vector in which the row is laid; of a single piece along its shorter side, away from its least corner. */
export function layingWay(pieces: readonly SoffitPiece[]): Point {
  const middles = pieces.map(({ outline }) => middleOf(outline));
  const [first, last] = [middles[0]!, middles.at(-1)!];
  const size = distance(first, last);
  if (size > 0) return [(last[0] - first[0]) / size, (last[1] - first[1]) / size];
  const [a, b, c] = pieces[0]!.outline;
  if (a === undefined || b === undefined || c === undefined) return [1, 0];
  const [from, to] = distance(a, b) < distance(b, c) ? [a, b] : [b, c];
  const [low, high] = comparePoints(from, to) <= 0 ? [from, to] : [to, from];
  const length = distance(low, high);
  return length === 0 ? [1, 0] : [(high[0] - low[0]) / length, (high[1] - low[1]) / length];
}

export function middleOf(outline: readonly Position[]): Position {
  const count = Math.max(1, outline.length);
  return [
    outline.reduce((sum, [x]) => sum + x, 0) / count,
    outline.reduce((sum, [, y]) => sum + y, 0) / count,
  ];
}

/** The side that lies farthest along the way. */
export function outerEdge(outline: readonly Position[], way: Point): readonly [Position, Position] | null {
  let best: { readonly edge: readonly [Position, Position]; readonly reach: number } | null = null;
  outline.forEach((from, index) => {
    const to = outline[(index + 1) % outline.length]!;
    const reach = ((from[0] + to[0]) / 2) * way[0] + ((from[1] + to[1]) / 2) * way[1];
    if (best === null || reach > best.reach) best = { edge: [from, to], reach };
  });
  return best === null ? null : (best as { readonly edge: readonly [Position, Position] }).edge;
}

function depthOf(outline: readonly Position[], way: Point): number {
  const along = outline.map(([x, y]) => x * way[0] + y * way[1]);
  return Math.max(...along) - Math.min(...along);
}
