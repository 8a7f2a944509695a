// The concrete in section: the outline of all walls together, and near by the usual hatch of dots and triangles.

import { listed } from "../../plan/document.ts";
import { wallLength } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { bodyCorners, boxAround, boxesMeet } from "../box.ts";
import { type Pen, strokePath } from "./pen.ts";
import type { Scene } from "./scene.ts";
import { toPixel, toScreen, type Viewport, visibleBox } from "./viewport.ts";

/** Adds a closed ring to the path under way. */
export function ringPath(pen: Pen, viewport: Viewport, places: readonly Position[]): void {
  places.forEach((place, k) => {
    const [x, y] = toPixel(viewport, place);
    if (k === 0) pen.moveTo(x, y);
    else pen.lineTo(x, y);
  });
  pen.closePath();
}

export function drawConcrete(pen: Pen, scene: Scene): void {
  const { viewport, palette, detail } = scene;
  pen.lineJoin = "miter";
  pen.beginPath();
  for (const ring of concreteRings(scene)) ringPath(pen, viewport, ring);
  pen.fillStyle = palette.concrete;
  pen.fill("nonzero");
  if (detail.hatch) hatch(pen, scene);
  if (!scene.isStale) {
    pen.beginPath();
    for (const ring of concreteRings(scene)) ringPath(pen, viewport, ring);
    strokePath(pen, { colour: palette.ink2, width: detail.edge });
  }
}

/** The rings of the concrete in view: the outline's, or while the fill is on its way the bodies of the walls. */
export function concreteRings({
  live,
  isStale,
  unit,
  viewport,
}: Pick<Scene, "live" | "isStale" | "unit" | "viewport">): readonly (readonly Position[])[] {
  if (live !== null && !isStale) {
    const { faces, rings } = live.outline;
    return rings.map((ring) => ring.faces.map((index) => faces[index]?.from ?? [0, 0]));
  }
  const view = visibleBox(viewport);
  return listed(unit.walls)
    .map((wall) => bodyCorners(wall, 0, wallLength(wall)))
    .filter((corners) => boxesMeet(view, boxAround(corners)));
}

const HATCH_STEP: Mm = 46;

// Marks scattered by a fixed rule of their place, so that they stay on the concrete when the view moves.
function hatch(pen: Pen, scene: Scene): void {
  const { viewport, palette } = scene;
  const box = visibleBox(viewport);
  pen.save();
  pen.beginPath();
  for (const ring of concreteRings(scene)) ringPath(pen, viewport, ring);
  pen.clip("nonzero");
  const triangles: (readonly [number, number, number])[] = [];
  pen.beginPath();
  for (let i = Math.floor(box.minX / HATCH_STEP); i * HATCH_STEP <= box.maxX; i++) {
    for (let j = Math.floor(box.minY / HATCH_STEP); j * HATCH_STEP <= box.maxY; j++) {
      const chance = scatter(i, j);
      const place: Position = [
        (i + scatter(j + 91, i)) * HATCH_STEP,
        (j + scatter(i + 37, j + 11)) * HATCH_STEP,
      ];
      const [x, y] = toScreen(viewport, place);
      if (chance < 0.12) triangles.push([x, y, chance]);
      else if (chance < 0.75) {
        pen.moveTo(x + 1, y);
        pen.arc(x, y, 1, 0, 2 * Math.PI);
      }
    }
  }
  pen.fillStyle = palette.ink3;
  pen.fill();
  pen.beginPath();
  for (const [x, y, chance] of triangles)
    triangle(pen, { x, y, size: Math.min(7, 10 * viewport.scale), turn: chance * 50 });
  strokePath(pen, { colour: palette.ink3, width: 0.8 });
  pen.restore();
}

function triangle(
  pen: Pen,
  {
    x,
    y,
    size,
    turn,
  }: { readonly x: number; readonly y: number; readonly size: number; readonly turn: number },
): void {
  for (let k = 0; k < 3; k++) {
    const angle = turn + (k * 2 * Math.PI) / 3;
    const [px, py] = [x + Math.cos(angle) * size, y + Math.sin(angle) * size];
    if (k === 0) pen.moveTo(px, py);
    else pen.lineTo(px, py);
  }
  pen.closePath();
}

/** A number from 0 to 1 that depends on its two whole arguments alone. */
export function scatter(i: number, j: number): number {
  let bits = Math.imul(i, 374_761_393) + Math.imul(j, 668_265_263);
  bits = Math.imul(bits ^ (bits >>> 13), 1_274_126_177);
  return ((bits ^ (bits >>> 16)) >>> 0) / 4_294_967_296;
}
