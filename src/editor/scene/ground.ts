// The ground of the drawing: paper and the dots of the grid.

import type { Mm } from "../../units.ts";
import type { Palette } from "../theme/palette.ts";
import type { Pen } from "./pen.ts";
import { toScreen, type Viewport, visibleBox } from "./viewport.ts";

const STEPS: readonly Mm[] = [100, 500, 1000, 5000, 10_000];
const LEAST_GAP = 30; // px between dots; nearer together they would be a grey

/** The step of the dots at a zoom, mm. */
export function gridStep(scale: number): Mm {
  return STEPS.find((step) => step * scale >= LEAST_GAP) ?? 50_000;
}

export function drawGround(pen: Pen, viewport: Viewport, palette: Palette): void {
  pen.fillStyle = palette.ground;
  pen.fillRect(0, 0, viewport.width, viewport.height);
}

export function drawGrid(pen: Pen, viewport: Viewport, palette: Palette): void {
  const step = gridStep(viewport.scale);
  const box = visibleBox(viewport);
  pen.fillStyle = palette.grid;
  for (let x = Math.ceil(box.minX / step) * step; x <= box.maxX; x += step) {
    for (let y = Math.ceil(box.minY / step) * step; y <= box.maxY; y += step) {
      const [px, py] = toScreen(viewport, [x, y]);
      pen.fillRect(Math.round(px) - 0.5, Math.round(py) - 0.5, 1.5, 1.5);
    }
  }
}
