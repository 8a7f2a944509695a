// What the drawing needs of a canvas: a small part of its 2D context, so that a test can record what is drawn.

export type Pen = Pick<
  CanvasRenderingContext2D,
  | "arc"
  | "beginPath"
  | "clip"
  | "closePath"
  | "fill"
  | "fillRect"
  | "fillStyle"
  | "fillText"
  | "font"
  | "globalAlpha"
  | "lineCap"
  | "lineJoin"
  | "lineTo"
  | "lineWidth"
  | "measureText"
  | "moveTo"
  | "rect"
  | "restore"
  | "rotate"
  | "save"
  | "setLineDash"
  | "stroke"
  | "strokeStyle"
  | "strokeText"
  | "textAlign"
  | "textBaseline"
  | "translate"
>;

/** The typeface of the drawing at a size in px. `narrow` sets numbers into narrow pieces. */
export function fontOf(px: number, weight: 400 | 500 | 600, narrow = false): string {
  return `${weight} ${narrow ? "semi-condensed " : ""}${px}px "Plex Sans", sans-serif`;
}

/** How a line is drawn. */
export interface LineStyle {
  readonly colour: string;
  readonly width: number;
  readonly dash?: readonly number[];
}

/** Strokes the path under way. */
export function strokePath(pen: Pen, { colour, width, dash }: LineStyle): void {
  pen.strokeStyle = colour;
  pen.lineWidth = width;
  pen.setLineDash(dash === undefined ? [] : [...dash]);
  pen.stroke();
  if (dash !== undefined) pen.setLineDash([]);
}

/** Strokes lines from the lower left to the upper right over a box, px; whoever calls clips them to the form. */
export function strokeHatch(
  pen: Pen,
  {
    left,
    top,
    right,
    bottom,
  }: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number },
  { gap, colour }: { readonly gap: number; readonly colour: string },
): void {
  const rise = bottom - top;
  pen.beginPath();
  for (let x = left - rise; x < right; x += gap) {
    pen.moveTo(x, bottom);
    pen.lineTo(x + rise, top);
  }
  strokePath(pen, { colour, width: 1.4 });
}
