// Marks of the gesture in hand: the chain line of a snap with its point, the line or outline being drawn, the window.

import type { Palette } from "../theme/palette.ts";
import type { Mark } from "../tools/protocol.ts";
import { tracePath } from "./lines.ts";
import { type Pen, strokePath } from "./pen.ts";
import { toPixel, toScreen, type Viewport } from "./viewport.ts";

export interface MarkScene {
  readonly viewport: Viewport;
  readonly palette: Palette;
  readonly marks: readonly Mark[];
}

export function drawMarks(pen: Pen, scene: MarkScene): void {
  for (const mark of scene.marks) drawMark(pen, scene, mark);
}

function drawMark(pen: Pen, { viewport, palette }: MarkScene, mark: Mark): void {
  switch (mark.kind) {
    case "snap": {
      const [x, y] = toScreen(viewport, mark.reason.to);
      if (mark.reason.kind !== "grid") {
        pen.beginPath();
        tracePath(pen, viewport, [mark.reason.from, mark.reason.to]);
        strokePath(pen, { colour: palette.accent, width: 1.1, dash: [7, 3, 1.5, 3] });
      }
      if (mark.reason.kind !== "grid") {
        pen.beginPath();
        pen.arc(x, y, 5, 0, 2 * Math.PI);
        strokePath(pen, { colour: palette.accent, width: 1.5 });
      }
      pen.beginPath();
      pen.arc(x, y, 1.75, 0, 2 * Math.PI);
      pen.fillStyle = palette.accent;
      pen.fill();
      return;
    }
    case "line":
      pen.beginPath();
      tracePath(pen, viewport, [mark.from, mark.to]);
      strokePath(pen, { colour: palette.accent, width: 1, dash: [7, 3, 1.5, 3] });
      return;
    case "path":
      pen.beginPath();
      tracePath(pen, viewport, mark.places);
      if (mark.isClosed) pen.closePath();
      strokePath(pen, { colour: palette.accent, width: 1.25, dash: [7, 3, 1.5, 3] });
      return;
    case "window":
      drawWindow(pen, { viewport, palette }, mark);
      return;
    case "figure":
    case "typing":
    case "name":
      return;
    default:
      mark satisfies never;
  }
}

// A full line takes what lies within, a broken one also what it touches.
function drawWindow(
  pen: Pen,
  { viewport, palette }: Omit<MarkScene, "marks">,
  { box, touching }: Extract<Mark, { readonly kind: "window" }>,
): void {
  const [left, top] = toPixel(viewport, [box.minX, box.maxY]);
  const [right, bottom] = toPixel(viewport, [box.maxX, box.minY]);
  pen.beginPath();
  pen.rect(left, top, right - left, bottom - top);
  pen.globalAlpha = 0.3;
  pen.fillStyle = palette.wash;
  pen.fill();
  pen.globalAlpha = 1;
  strokePath(pen, { colour: palette.accent, width: 1.25, ...(touching ? { dash: [5, 3] } : {}) });
}
