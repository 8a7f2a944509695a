// The overall dimensions of the concrete, above and to the left of it.

import { listed } from "../../plan/document.ts";
import { boxAround } from "../box.ts";
import type { Palette } from "../theme/palette.ts";
import { concreteRings } from "./concrete.ts";
import { fontOf, type Pen, strokePath } from "./pen.ts";
import type { Scene } from "./scene.ts";
import { type Pixel, toPixel } from "./viewport.ts";

const AWAY = 34; // px from the concrete to the line
const TICK = 4.5; // px, half an oblique tick
const LEAST_LINE = 60; // px; a shorter line has no room for its figure

export function drawOverall(pen: Pen, scene: Scene): void {
  const box = boxAround(concreteRings(scene).flat());
  if (!Number.isFinite(box.minX)) return;
  const { viewport, palette, lettering, unit } = scene;
  const [left, top] = toPixel(viewport, [box.minX, box.maxY]);
  const [right, bottom] = toPixel(viewport, [box.maxX, box.minY]);
  const across = lettering.mm(box.maxX - box.minX);
  const upright = lettering.mm(box.maxY - box.minY);
  const inTheWay = listed(unit.controlLines).flatMap(({ from, to }) => [
    toPixel(viewport, from),
    toPixel(viewport, to),
  ]);
  if (right - left > LEAST_LINE) {
    const line = { from: [left, top - AWAY], to: [right, top - AWAY] } as const;
    drawDimension(pen, { ...line, at: freePlace(line, inTheWay), text: across }, palette);
  }
  if (bottom - top > LEAST_LINE) {
    const line = { from: [left - AWAY, bottom], to: [left - AWAY, top] } as const;
    drawDimension(pen, { ...line, at: freePlace(line, inTheWay), text: upright }, palette);
  }
}

interface Line {
  readonly from: Pixel;
  readonly to: Pixel;
}

const CLEAR = 36; // px from the figure to the name of a control line
const SHARES: readonly number[] = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74];

// The place on a line for its figure: the middle, or as near to it as the names of control lines let it be.
function freePlace({ from, to }: Line, inTheWay: readonly Pixel[]): Pixel {
  const places = SHARES.map(
    (share): Pixel => [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share],
  );
  const isFree = ([x, y]: Pixel) =>
    inTheWay.every(([a, b]) => Math.abs(a - x) > CLEAR || Math.abs(b - y) > CLEAR);
  return places.find(isFree) ?? places[0] ?? from;
}

interface Dimension extends Line {
  /** Middle of the figure. */
  readonly at: Pixel;
  readonly text: string;
}

function drawDimension(pen: Pen, { from, to, at, text }: Dimension, palette: Palette): void {
  pen.beginPath();
  pen.moveTo(...from);
  pen.lineTo(...to);
  strokePath(pen, { colour: palette.ink3, width: 0.6 });
  pen.beginPath();
  for (const [x, y] of [from, to]) {
    pen.moveTo(x - TICK, y + TICK);
    pen.lineTo(x + TICK, y - TICK);
  }
  strokePath(pen, { colour: palette.ink2, width: 1.25 });
  pen.save();
  pen.translate(...at);
  if (from[0] === to[0]) pen.rotate(-Math.PI / 2);
  pen.font = fontOf(11.5, 400);
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  const wide = pen.measureText(text).width + 8;
  pen.fillStyle = palette.ground;
  pen.fillRect(-wide / 2, -7, wide, 14);
  pen.fillStyle = palette.ink2;
  pen.fillText(text, 0, 0.5);
  pen.restore();
}
