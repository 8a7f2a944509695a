// What is drawn with lines alone: services with the strip they keep clear, control lines, balcony slabs, holes in slabs.

import { lineThrough, offsetLine, pointAt } from "../../geom/line.ts";
import { listed } from "../../plan/document.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { ringPath } from "./concrete.ts";
import { fontOf, type Pen, strokePath } from "./pen.ts";
import type { Scene } from "./scene.ts";
import { toPixel, toScreen, type Viewport } from "./viewport.ts";

export function drawSlabs(pen: Pen, { unit, viewport, palette }: Scene): void {
  const slabs = listed(unit.slabs);
  pen.beginPath();
  for (const { outline } of slabs) ringPath(pen, viewport, outline);
  pen.globalAlpha = 0.35;
  pen.fillStyle = palette.concrete;
  pen.fill();
  pen.globalAlpha = 1;
  strokePath(pen, { colour: palette.ink2, width: 1 });
  pen.beginPath();
  for (const { outline } of listed(unit.slabOpenings)) {
    ringPath(pen, viewport, outline);
    const [a, b, c, d] = outline;
    if (outline.length !== 4 || !a || !b || !c || !d) continue;
    for (const [from, to] of [
      [a, c],
      [b, d],
    ] as const) {
      pen.moveTo(...toPixel(viewport, from));
      pen.lineTo(...toPixel(viewport, to));
    }
  }
  strokePath(pen, { colour: palette.ink2, width: 0.75, dash: [6, 3] });
}

/** Adds an open path. */
export function tracePath(pen: Pen, viewport: Viewport, places: readonly Position[]): void {
  places.forEach((place, k) => {
    const [x, y] = toPixel(viewport, place);
    if (k === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
  });
}

export function drawServices(pen: Pen, { unit, viewport, palette }: Scene): void {
  const services = listed(unit.services);
  pen.beginPath();
  for (const { path, clearance } of services) {
    for (const stretch of besidePath(path, clearance)) tracePath(pen, viewport, stretch);
  }
  strokePath(pen, { colour: palette.ink3, width: 0.75, dash: [1.5, 3] });
  pen.beginPath();
  for (const { path } of services) tracePath(pen, viewport, path);
  strokePath(pen, { colour: palette.ink2, width: 1.1, dash: [9, 3, 2, 3, 2, 3] });
  pen.beginPath();
  for (const [x, y] of services.flatMap(({ path }) => path.map((place) => toScreen(viewport, place)))) {
    pen.moveTo(x + 2.5, y);
    pen.arc(x, y, 2.5, 0, 2 * Math.PI);
  }
  pen.fillStyle = palette.ground;
  pen.fill();
  strokePath(pen, { colour: palette.ink2, width: 1.2 });
}

/** The edges of the strip kept clear on either side of a path, stretch by stretch. */
export function besidePath(
  path: readonly Position[],
  clearance: Mm,
): readonly (readonly [Position, Position])[] {
  return path.slice(1).flatMap((to, k) => {
    const from = path[k] ?? to;
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const length = Math.sqrt(dx * dx + dy * dy);
    if (length === 0) return [];
    const line = lineThrough(from, to);
    return [clearance, -clearance].map((aside) => {
      const beside = offsetLine(line, aside);
      return [pointAt(beside, 0, 0), pointAt(beside, length, 0)] as const;
    });
  });
}

const BUBBLE = 11; // px, radius of the name at the ends of a control line

export function drawControlLines(pen: Pen, { unit, viewport, palette }: Scene): void {
  const lines = listed(unit.controlLines);
  pen.beginPath();
  for (const { from, to } of lines) tracePath(pen, viewport, [from, to]);
  strokePath(pen, { colour: palette.ink2, width: 0.75, dash: [14, 3, 2, 3] });
  pen.font = fontOf(10.5, 600);
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  for (const { id, from, to } of lines) {
    for (const place of [from, to]) {
      const [x, y] = toScreen(viewport, place);
      pen.beginPath();
      pen.arc(x, y, BUBBLE, 0, 2 * Math.PI);
      pen.fillStyle = palette.ground;
      pen.fill();
      strokePath(pen, { colour: palette.ink2, width: 1 });
      pen.fillStyle = palette.ink;
      pen.fillText(id, x, y + 0.5);
    }
  }
}
