// Ties in plan: one line across the wall at each joint that has any, with a nut at either end when near.

import type { TieLine } from "../../fill/result.ts";
import type { Position } from "../../plan/project.ts";
import type { LiveFill } from "../live/liveFill.ts";
import { type Pen, strokePath } from "./pen.ts";
import { alongFace, scenePieces } from "./pieces.ts";
import type { Scene } from "./scene.ts";
import { toPixel, visibleBox } from "./viewport.ts";

/** Both ends of a tie line, on the middle of the frames it runs through. */
export function tieEnds(live: LiveFill, tie: TieLine): readonly [Position, Position] {
  const face = live.fill.faces.find(({ id }) => id === tie.faces[0]);
  const [ux, uy] = face === undefined ? [1, 0] : alongFace(face);
  const reach = tie.length / 2 + scenePieces(live).depth / 2;
  const [x, y] = tie.at;
  return [
    [x + uy * reach, y - ux * reach],
    [x - uy * reach, y + ux * reach],
  ];
}

export function drawTies(pen: Pen, scene: Scene): void {
  const { live, detail, viewport, palette, selectedWalls } = scene;
  if (live === null || scene.isStale || !detail.pieces) return;
  if (!detail.ties && selectedWalls.size === 0) return;
  const view = visibleBox(viewport, 20);
  const wallsOf = new Map(live.fill.faces.map(({ id, walls }) => [id, walls]));
  const shown = live.fill.ties.filter(({ at: [x, y], faces }) => {
    if (x < view.minX || x > view.maxX || y < view.minY || y > view.maxY) return false;
    return detail.ties || faces.some((face) => wallsOf.get(face)?.some((wall) => selectedWalls.has(wall)));
  });
  const ends = shown.map((tie) => tieEnds(live, tie).map((end) => toPixel(viewport, end)));
  pen.beginPath();
  for (const [a, b] of ends) {
    if (a === undefined || b === undefined) continue;
    pen.moveTo(...a);
    pen.lineTo(...b);
  }
  strokePath(pen, { colour: palette.ink, width: detail.frames ? 1.4 : 1 });
  if (!detail.ties) return;
  pen.beginPath();
  const radius = detail.frames ? 3 : 2;
  for (const [x, y] of ends.flat()) {
    pen.moveTo(x + radius, y);
    pen.arc(x, y, radius, 0, 2 * Math.PI);
  }
  pen.fillStyle = palette.raise;
  pen.fill();
  strokePath(pen, { colour: palette.ink, width: 1.2 });
}
