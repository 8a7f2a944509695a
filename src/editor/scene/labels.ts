// Widths printed at pieces: beside them while they are thin on the screen, on them when they are not. A label that would
// touch another slides along its wall and, if that does not help, goes; those of closures and fillers come first.

import { inkOnFiller } from "../theme/palette.ts";
import { alongOf, pieceRing, piecesInView } from "./drawPieces.ts";
import { readable } from "./openings.ts";
import { fontOf, type Pen } from "./pen.ts";
import type { ScenePiece } from "./pieces.ts";
import type { Scene } from "./scene.ts";
import type { Pixel, Viewport } from "./viewport.ts";

export interface Label {
  readonly piece: string;
  readonly text: string;
  readonly at: Pixel;
  readonly turn: number;
  readonly isBold: boolean;
  readonly isInside: boolean;
  readonly kind: ScenePiece["kind"];
  readonly width: number;
}

const HEIGHT = 10; // px of the figures
const FIGURE = 6.1; // px, width of one figure at that size
const BESIDE = 8; // px from the edge of the piece to the middle of the label
const LEAST_DEEP = 13; // px a piece must be deep to take its label
const SLIDES: readonly number[] = [0, 8, -8, 14, -14, 20, -20, 26, -26];

interface Wanted {
  readonly piece: ScenePiece;
  readonly text: string;
  readonly rank: number;
}

/** Which widths a scene prints, in the order in which they take their places. */
function wantedLabels(scene: Scene): readonly Wanted[] {
  const { detail, selectedWalls, allWidths, lettering } = scene;
  return piecesInView(scene)
    .flatMap((piece): readonly Wanted[] => {
      if (piece.isUnderCut) return [];
      const isOfSelected = piece.walls.some((wall) => selectedWalls.has(wall));
      const text = lettering.mm(piece.width);
      switch (piece.kind) {
        case "closure":
          return detail.fillerWidths || isOfSelected ? [{ piece, text, rank: 0 }] : [];
        case "filler":
          return detail.fillerWidths || isOfSelected ? [{ piece, text, rank: 1 }] : [];
        case "corner":
          return detail.frames ? [{ piece, text, rank: 2 }] : [];
        case "panel":
          return detail.standardWidths || allWidths || isOfSelected ? [{ piece, text, rank: 3 }] : [];
        default:
          return [];
      }
    })
    .sort((a, b) => a.rank - b.rank);
}

/** The labels of a scene in their places. */
export function placeLabels(scene: Scene): readonly Label[] {
  const taken: Rect[] = [];
  const labels: Label[] = [];
  for (const wanted of wantedLabels(scene)) {
    const label = placed(scene.viewport, wanted, taken);
    if (label !== null) labels.push(label);
  }
  return labels;
}

interface Rect {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function placed(viewport: Viewport, { piece, text, rank }: Wanted, taken: Rect[]): Label | null {
  const [a, b, c, d] = pieceRing(viewport, piece);
  if (a === undefined || b === undefined || c === undefined || d === undefined) return null;
  const [ux, uy] = alongOf(viewport, piece);
  const wide = text.length * FIGURE;
  const [ex, ey] = [d[0] - a[0], d[1] - a[1]];
  const deep = Math.sqrt(ex * ex + ey * ey);
  const long = Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2);
  const isInside = deep >= LEAST_DEEP && long >= wide * 0.86 + 2;
  const isSolid = piece.kind === "corner";
  if (isSolid && !isInside) return null;
  // On the screen a leg of a corner is labelled on its free part, clear of the other leg.
  const away = deep === 0 ? 0 : isInside ? 0.5 : (deep + BESIDE) / deep;
  const middle: Pixel = [(a[0] + b[0]) / 2 + ex * away, (a[1] + b[1]) / 2 + ey * away];
  const turn = readable(Math.atan2(uy, ux));
  const slides = isInside || rank > 1 ? [0] : SLIDES;
  for (const slide of slides) {
    const at: Pixel = [middle[0] + ux * slide, middle[1] + uy * slide];
    const rect = rectOf(at, turn, wide);
    if (taken.some((other) => touches(other, rect))) continue;
    taken.push(rect);
    const isBold = rank < 3;
    return { piece: piece.id, text, at, turn, isBold, isInside, kind: piece.kind, width: piece.width };
  }
  return null;
}

function rectOf([x, y]: Pixel, turn: number, wide: number): Rect {
  const [cosine, sine] = [Math.abs(Math.cos(turn)), Math.abs(Math.sin(turn))];
  const across = (wide * cosine + HEIGHT * sine) / 2 + 1;
  const upright = (wide * sine + HEIGHT * cosine) / 2;
  return { left: x - across, right: x + across, top: y - upright, bottom: y + upright };
}

function touches(a: Rect, b: Rect): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

export function drawLabels(pen: Pen, scene: Scene): void {
  if (!scene.detail.pieces || scene.isStale) return;
  const { palette, detail } = scene;
  const size = detail.frames ? 12 : 10;
  for (const label of placeLabels(scene)) {
    pen.save();
    pen.translate(label.at[0], label.at[1]);
    pen.rotate(label.turn);
    pen.textAlign = "center";
    pen.textBaseline = "middle";
    pen.font = fontOf(size, label.isBold ? 600 : 400);
    if (!label.isInside) {
      pen.strokeStyle = palette.ground;
      pen.lineWidth = 3;
      pen.lineJoin = "round";
      pen.strokeText(label.text, 0, 0.5);
    }
    pen.fillStyle = labelColour(scene, label);
    pen.fillText(label.text, 0, 0.5);
    pen.restore();
  }
}

function labelColour({ palette, theme }: Scene, { kind, width, isInside, isBold }: Label): string {
  if (isInside && kind === "corner") return palette["on-corner"];
  if (isInside && kind === "filler") return inkOnFiller(palette, theme, width);
  return isBold ? palette.ink : palette.ink2;
}
