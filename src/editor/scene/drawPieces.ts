// Pieces on the faces: standard panels pale, fillers in the tone of their width, closures hatched, corners solid.

import type { Mm } from "../../units.ts";
import { fillerTone } from "../theme/palette.ts";
import { type Pen, strokeHatch, strokePath } from "./pen.ts";
import { type PieceKind, type ScenePiece, scenePieces } from "./pieces.ts";
import type { Scene } from "./scene.ts";
import { type Pixel, toPixel, type Viewport, visibleBox } from "./viewport.ts";

/** A closure strip is drawn at least this wide, px: it must never be lost. */
const LEAST_CLOSURE = 3;
/** A panel that two people lift has a second outline from this length on, px. */
const LEAST_DOUBLE = 40;
const HATCH_GAP = 4; // px

/** Pieces in view, in the order of the faces. */
export function piecesInView({ live, viewport }: Scene): readonly ScenePiece[] {
  if (live === null) return [];
  return scenePieces(live).index.search(visibleBox(viewport, 8));
}

/** The outline of a piece on the screen. */
export function pieceRing(viewport: Viewport, piece: ScenePiece): readonly Pixel[] {
  const ring = piece.corners.map((corner) => toPixel(viewport, corner));
  if (piece.kind !== "closure") return ring;
  const [a, b, c, d] = ring;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return ring;
  const length = Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2);
  if (length >= LEAST_CLOSURE) return ring;
  const [ux, uy] = alongOf(viewport, piece);
  const grow = (LEAST_CLOSURE - length) / 2;
  const out = ([x, y]: Pixel, way: 1 | -1): Pixel => [x + ux * grow * way, y + uy * grow * way];
  return [out(a, -1), out(b, 1), out(c, 1), out(d, -1)];
}

/** The way along a piece's face on the screen, of length 1. */
export function alongOf(
  { scale }: Pick<Viewport, "scale">,
  { corners }: ScenePiece,
): readonly [number, number] {
  const [a, b, , d] = corners;
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const length = Math.sqrt(dx * dx + dy * dy);
  if (length > 0) return [dx / length, -dy / length];
  const [ex, ey] = [d[0] - a[0], d[1] - a[1]];
  const depth = Math.sqrt(ex * ex + ey * ey) || scale;
  return [-ey / depth, -ex / depth];
}

function tracePiece(pen: Pen, viewport: Viewport, piece: ScenePiece): void {
  const ring = pieceRing(viewport, piece);
  ring.forEach(([x, y], k) => {
    if (k === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
  });
  pen.closePath();
}

export function drawPieces(pen: Pen, scene: Scene): void {
  const { detail, palette, viewport } = scene;
  if (!detail.pieces || scene.isStale) return;
  const pieces = piecesInView(scene);
  const of = (kind: PieceKind) => pieces.filter((piece) => piece.kind === kind && !piece.isUnderCut);
  pen.lineJoin = "miter";
  underCut(
    pen,
    scene,
    pieces.filter(({ isUnderCut }) => isUnderCut),
  );
  const standard = [...of("panel"), ...of("stop-end"), ...of("outside-corner")];
  filled(pen, viewport, standard, palette.panel);
  if (detail.joints) strokePath(pen, { colour: palette.pline, width: 0.75 });
  if (detail.frames) drawFrames(pen, scene, standard);
  doubleOutlines(pen, scene, of("panel"));
  for (const [width, fillers] of byWidth(of("filler"))) {
    filled(pen, viewport, fillers, fillerTone(palette, width));
    if (detail.joints) strokePath(pen, { colour: palette.ink, width: 0.75 });
  }
  filled(pen, viewport, of("corner"), palette.corner);
  for (const closure of of("closure")) drawClosure(pen, scene, closure);
  for (const piece of of("unfilled")) drawUnfilled(pen, scene, piece);
  if (detail.ties) drawNotches(pen, scene, pieces);
}

function filled(pen: Pen, viewport: Viewport, pieces: readonly ScenePiece[], colour: string): void {
  pen.beginPath();
  for (const piece of pieces) tracePiece(pen, viewport, piece);
  pen.fillStyle = colour;
  pen.fill();
}

function byWidth(pieces: readonly ScenePiece[]): ReadonlyMap<Mm, readonly ScenePiece[]> {
  const groups = new Map<Mm, ScenePiece[]>();
  for (const piece of pieces) {
    const group = groups.get(piece.width);
    if (group === undefined) groups.set(piece.width, [piece]);
    else group.push(piece);
  }
  return groups;
}

// Panels below a window lie under the cut.
function underCut(pen: Pen, { viewport, palette, detail }: Scene, pieces: readonly ScenePiece[]): void {
  if (!detail.joints) return;
  pen.beginPath();
  for (const piece of pieces) tracePiece(pen, viewport, piece);
  strokePath(pen, { colour: palette.ink3, width: 0.6, dash: [1.5, 2] });
}

const FRAME_INSET = 4; // px

function drawFrames(pen: Pen, { viewport, palette }: Scene, pieces: readonly ScenePiece[]): void {
  pen.beginPath();
  for (const piece of pieces) {
    const [a, b, c, d] = pieceRing(viewport, piece);
    if (piece.kind !== "panel" || a === undefined || b === undefined || c === undefined || d === undefined)
      continue;
    const [ux, uy] = alongOf(viewport, piece);
    const [sx, sy] = [ux * FRAME_INSET, uy * FRAME_INSET];
    pen.moveTo(a[0] + sx, a[1] + sy);
    pen.lineTo(d[0] + sx, d[1] + sy);
    pen.moveTo(b[0] - sx, b[1] - sy);
    pen.lineTo(c[0] - sx, c[1] - sy);
    // The sheet that the concrete touches.
    const away: Pixel = [(d[0] - a[0]) * 0.12, (d[1] - a[1]) * 0.12];
    pen.moveTo(a[0] + away[0], a[1] + away[1]);
    pen.lineTo(b[0] + away[0], b[1] + away[1]);
  }
  strokePath(pen, { colour: palette.pline, width: 0.6 });
}

function doubleOutlines(pen: Pen, { viewport, palette, detail }: Scene, pieces: readonly ScenePiece[]): void {
  if (!detail.ties) return;
  pen.beginPath();
  for (const piece of pieces) {
    if (!piece.needsTwo || piece.width * viewport.scale < LEAST_DOUBLE) continue;
    const [a, b, c, d] = pieceRing(viewport, piece);
    if (a === undefined || b === undefined || c === undefined || d === undefined) continue;
    const [ux, uy] = alongOf(viewport, piece);
    const inset = 2.5;
    const [vx, vy] = [-uy, ux];
    const deep = Math.sign((d[0] - a[0]) * vx + (d[1] - a[1]) * vy) || 1;
    const [px, py] = [vx * deep * inset, vy * deep * inset];
    pen.moveTo(a[0] + ux * inset + px, a[1] + uy * inset + py);
    pen.lineTo(b[0] - ux * inset + px, b[1] - uy * inset + py);
    pen.lineTo(c[0] - ux * inset - px, c[1] - uy * inset - py);
    pen.lineTo(d[0] + ux * inset - px, d[1] + uy * inset - py);
    pen.closePath();
  }
  strokePath(pen, { colour: palette.pline, width: 0.6 });
}

function drawClosure(pen: Pen, { viewport, palette }: Scene, piece: ScenePiece): void {
  pen.save();
  pen.beginPath();
  tracePiece(pen, viewport, piece);
  pen.fillStyle = palette.raise;
  pen.fill();
  pen.clip();
  const ring = pieceRing(viewport, piece);
  const [left, right] = [Math.min(...ring.map(([x]) => x)), Math.max(...ring.map(([x]) => x))];
  const [top, bottom] = [Math.min(...ring.map(([, y]) => y)), Math.max(...ring.map(([, y]) => y))];
  strokeHatch(pen, { left, top, right, bottom }, { gap: HATCH_GAP, colour: palette.closure });
  pen.restore();
  pen.beginPath();
  tracePiece(pen, viewport, piece);
  strokePath(pen, { colour: palette.ink, width: 0.75 });
}

// What cannot be built is a hole in the formwork: crossed out in the colour of faults.
function drawUnfilled(pen: Pen, { viewport, palette }: Scene, piece: ScenePiece): void {
  const [a, b, c, d] = pieceRing(viewport, piece);
  if (a === undefined || b === undefined || c === undefined || d === undefined) return;
  pen.beginPath();
  tracePiece(pen, viewport, piece);
  pen.moveTo(...a);
  pen.lineTo(...c);
  pen.moveTo(...b);
  pen.lineTo(...d);
  strokePath(pen, { colour: palette.fault, width: 1.25, dash: [4, 2] });
}

// The piece that is taken out first has a notch at the edge away from the concrete.
function drawNotches(pen: Pen, { viewport, palette, theme }: Scene, pieces: readonly ScenePiece[]): void {
  pen.beginPath();
  for (const piece of pieces) {
    if (!piece.isFirstOut || piece.isUnderCut) continue;
    const [a, , c, d] = pieceRing(viewport, piece);
    if (a === undefined || c === undefined || d === undefined) continue;
    const [ux, uy] = alongOf(viewport, piece);
    const [mx, my] = [(c[0] + d[0]) / 2, (c[1] + d[1]) / 2];
    const deep = Math.sqrt((d[0] - a[0]) ** 2 + (d[1] - a[1]) ** 2);
    const size = Math.min(8, deep * 0.36);
    const [inX, inY] = [((a[0] - d[0]) / deep) * size, ((a[1] - d[1]) / deep) * size];
    pen.moveTo(mx - ux * size, my - uy * size);
    pen.lineTo(mx + ux * size, my + uy * size);
    pen.lineTo(mx + inX, my + inY);
    pen.closePath();
  }
  pen.fillStyle = theme === "light" ? palette.ink : palette.ground;
  pen.fill();
  strokePath(pen, { colour: palette.ink, width: 0.75 });
}
