// The soffit as a layer of the plan, under the walls: panels paler than anything else, strips as bands, props as circles
// with a cross. Walls, their pieces and ties are drawn over it, so that it never hides them.

import { fillerTone, inkOnFiller } from "../theme/palette.ts";
import { ringPath } from "./concrete.ts";
import { fontOf, type Pen, strokeHatch, strokePath } from "./pen.ts";
import type { Scene } from "./scene.ts";
import { type SoffitKind, type SoffitShape, sceneSoffit } from "./soffitPieces.ts";
import { type Pixel, toPixel, toScreen, visibleBox } from "./viewport.ts";

const HATCH_GAP = 5; // px
/** Tones of fillers end at this width, mm; what is wider is large in a soffit and takes a share of the last tone. */
const RAMP_END = 275;
const WIDE_TONE = 0.45;
/** Radius of a prop on the drawing, px: the least, and the greatest. */
const RADIUS = [3, 8] as const;
const PROP_SIZE = 110; // mm across the head plate, drawn to scale between the two (common practice, no source)

/** Radius of a prop at a zoom, px. */
export function propRadius(scale: number): number {
  return Math.min(RADIUS[1], Math.max(RADIUS[0], (PROP_SIZE / 2) * scale));
}

export function drawSoffit(pen: Pen, scene: Scene): void {
  const { live, detail, palette } = scene;
  if (!scene.showsSoffit || live === null || scene.isStale || !detail.pieces) return;
  const seen = sceneSoffit(live).index.search(visibleBox(scene.viewport, 8));
  const of = (kind: SoffitKind) => seen.filter((shape) => shape.kind === kind);
  pen.lineJoin = "miter";
  // Connectors are the pale frame that parts walls from slab panels.
  filled(pen, scene, of("connector"), palette.ground);
  if (detail.joints) strokePath(pen, { colour: palette.ink3, width: 0.6 });
  filled(pen, scene, of("panel"), palette.panel);
  if (detail.joints) strokePath(pen, { colour: palette.pline, width: 0.6 });
  for (const shape of of("filler")) {
    const width = shape.size?.[0] ?? 0;
    pen.globalAlpha = width > RAMP_END ? WIDE_TONE : 1;
    filled(pen, scene, [shape], fillerTone(palette, width));
    pen.globalAlpha = 1;
    if (detail.joints) strokePath(pen, { colour: palette.ink, width: 0.6 });
  }
  pen.globalAlpha = 0.6;
  filled(pen, scene, of("strip"), palette.concrete);
  pen.globalAlpha = 1;
  strokePath(pen, { colour: palette.ink2, width: detail.joints ? 1 : 0.6 });
  for (const shape of of("closure")) hatched(pen, scene, shape);
  for (const shape of of("unfilled")) crossed(pen, scene, shape);
  if (detail.joints) drawSizes(pen, scene, seen);
  drawProps(pen, scene);
}

function filled(pen: Pen, { viewport }: Scene, shapes: readonly SoffitShape[], colour: string): void {
  pen.beginPath();
  for (const { outline } of shapes) ringPath(pen, viewport, outline);
  pen.fillStyle = colour;
  pen.fill();
}

function pixelBox({ viewport }: Scene, { minX, minY, maxX, maxY }: SoffitShape) {
  const [left, top] = toPixel(viewport, [minX, maxY]);
  const [right, bottom] = toPixel(viewport, [maxX, minY]);
  return { left, top, right, bottom };
}

function hatched(pen: Pen, scene: Scene, shape: SoffitShape): void {
  const { viewport, palette } = scene;
  pen.save();
  filled(pen, scene, [shape], palette.raise);
  pen.clip();
  strokeHatch(pen, pixelBox(scene, shape), { gap: HATCH_GAP, colour: palette.closure });
  pen.restore();
  pen.beginPath();
  ringPath(pen, viewport, shape.outline);
  strokePath(pen, { colour: palette.ink, width: 0.75 });
}

// As on a face: crossed out in the colour of faults. The cross is cut to the outline, whatever its form.
function crossed(pen: Pen, scene: Scene, shape: SoffitShape): void {
  const { viewport, palette } = scene;
  const { left, top, right, bottom } = pixelBox(scene, shape);
  const dash = [4, 2];
  pen.save();
  pen.beginPath();
  ringPath(pen, viewport, shape.outline);
  pen.clip();
  pen.beginPath();
  pen.moveTo(left, top);
  pen.lineTo(right, bottom);
  pen.moveTo(left, bottom);
  pen.lineTo(right, top);
  strokePath(pen, { colour: palette.fault, width: 1.25, dash });
  pen.restore();
  pen.beginPath();
  ringPath(pen, viewport, shape.outline);
  strokePath(pen, { colour: palette.fault, width: 1.25, dash });
}

export interface SizeLabel {
  readonly shape: SoffitShape;
  readonly text: string;
  readonly at: Pixel;
  readonly turn: number;
}

const HEIGHT = 10; // px of the figures
const FIGURE = 5.9; // px, width of one figure at that size
const SPARE = 4; // px round a label

/** Sizes that fit on their pieces: both sides, or where only that fits the shorter one. None reaches over an edge. */
export function sizeLabels(scene: Scene, shapes: readonly SoffitShape[]): readonly SizeLabel[] {
  const { detail, viewport, lettering, allWidths } = scene;
  const { scale } = viewport;
  return shapes.flatMap((shape): readonly SizeLabel[] => {
    const { kind, size } = shape;
    const isWanted =
      kind === "filler" || kind === "closure" ? detail.fillerWidths : detail.standardWidths || allWidths;
    if (!isWanted || size === null || kind === "connector" || kind === "unfilled") return [];
    const { left, top, right, bottom } = pixelBox(scene, shape);
    const isUpright = right - left < bottom - top;
    const [deep, long] = isUpright ? [right - left, bottom - top] : [bottom - top, right - left];
    const whole = `${lettering.mm(size[0])}\u2009×\u2009${lettering.mm(size[1])}`;
    const text = [whole, lettering.mm(size[0])].find((each) => each.length * FIGURE + SPARE <= long);
    if (text === undefined || deep < HEIGHT + 1 || size[0] * scale < HEIGHT) return [];
    const isTurned = isUpright && text.length * FIGURE + SPARE > deep;
    const half = (isUpright === isTurned ? text.length * FIGURE : HEIGHT) / 2;
    // Clear of the props: in the middle, else a little to one side.
    const shifts = SHIFTS.filter((share) => Math.abs(share) * long + half + 1 <= long / 2);
    const at = shifts
      .map((share): Pixel => {
        const shift = share * long;
        const [x, y] = [(left + right) / 2, (top + bottom) / 2];
        return isUpright ? [x, y + shift] : [x + shift, y];
      })
      .find((place) => isClear(scene, shape, { place, half, isUpright }));
    return at === undefined ? [] : [{ shape, text, at, turn: isTurned ? -Math.PI / 2 : 0 }];
  });
}

const SHIFTS: readonly number[] = [0, 0.25, -0.25];

function isClear(
  { viewport }: Scene,
  { soffit, minX, minY, maxX, maxY }: SoffitShape,
  { place, half, isUpright }: { readonly place: Pixel; readonly half: number; readonly isUpright: boolean },
): boolean {
  const reach = half + propRadius(viewport.scale) + 2;
  return soffit.props.every(({ at: [x, y] }) => {
    if (x < minX || x > maxX || y < minY || y > maxY) return true;
    const [px, py] = toScreen(viewport, [x, y]);
    return Math.abs(isUpright ? py - place[1] : px - place[0]) >= reach;
  });
}

function drawSizes(pen: Pen, scene: Scene, shapes: readonly SoffitShape[]): void {
  const { palette, theme } = scene;
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  for (const { shape, text, at, turn } of sizeLabels(scene, shapes)) {
    const isFiller = shape.kind === "filler";
    pen.save();
    pen.translate(at[0], at[1]);
    pen.rotate(turn);
    pen.font = fontOf(10, isFiller || shape.kind === "closure" ? 600 : 400);
    if (shape.kind === "closure") {
      pen.strokeStyle = palette.raise;
      pen.lineWidth = 4;
      pen.lineJoin = "round";
      pen.strokeText(text, 0, 0.5);
    }
    pen.fillStyle = isFiller ? inkOnFiller(palette, theme, shape.size?.[0] ?? 0) : palette.ink2;
    pen.fillText(text, 0, 0.5);
    pen.restore();
  }
}

function drawProps(pen: Pen, { live, viewport, palette }: Scene): void {
  if (live === null) return;
  const radius = propRadius(viewport.scale);
  const arm = radius * 0.7;
  const seen = sceneSoffit(live)
    .props.map(({ prop }) => toScreen(viewport, prop.at))
    .filter(
      ([x, y]) => x > -radius && y > -radius && x < viewport.width + radius && y < viewport.height + radius,
    );
  pen.beginPath();
  for (const [x, y] of seen) {
    pen.moveTo(x + radius, y);
    pen.arc(x, y, radius, 0, 2 * Math.PI);
  }
  pen.fillStyle = palette.ground;
  pen.fill();
  strokePath(pen, { colour: palette.ink, width: 1.1 });
  pen.beginPath();
  for (const [x, y] of seen) {
    pen.moveTo(x - arm, y - arm);
    pen.lineTo(x + arm, y + arm);
    pen.moveTo(x - arm, y + arm);
    pen.lineTo(x + arm, y - arm);
  }
  strokePath(pen, { colour: palette.ink, width: 1.1 });
}
