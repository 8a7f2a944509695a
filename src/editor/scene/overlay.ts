// What lies over the plan and follows the hand: the outline of what is selected or under the pointer, handles, snaps,
// lines being drawn, the window of a selection, lines of dimensions.

import { isInside } from "../../geom/ring.ts";
import { find, type ItemRef, listed, type UnitDocument } from "../../plan/document.ts";
import { bodySpan, endAt, wallLength, wallLine } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { placesOf } from "../box.ts";
import type { LiveFill } from "../live/liveFill.ts";
import { isAmong } from "../selection.ts";
import type { Hit } from "../snap/hit.ts";
import type { Palette } from "../theme/palette.ts";
import type { Mark } from "../tools/protocol.ts";
import { ringPath } from "./concrete.ts";
import { drawMarks } from "./drawMarks.ts";
import { propRadius } from "./drawSoffit.ts";
import type { Figure } from "./figures.ts";
import { tracePath } from "./lines.ts";
import { type LineStyle, type Pen, strokePath } from "./pen.ts";
import { type ScenePiece, scenePieces } from "./pieces.ts";
import { type SoffitThing, soffitThing } from "./soffitHit.ts";
import { type Pixel, toPixel, toScreen, type Viewport } from "./viewport.ts";

export interface Overlay {
  readonly viewport: Viewport;
  readonly palette: Palette;
  readonly unit: UnitDocument;
  readonly live: LiveFill | null;
  readonly selection: readonly ItemRef[];
  readonly hovered: Hit | null;
  readonly hoveredPiece: string | null;
  /** What the hand is on in the soffit. */
  readonly soffit: SoffitThing | null;
  readonly marks: readonly Mark[];
  readonly figures: readonly Figure[];
  /** Where lines are begun: a cross-hair is shown here; null without one. */
  readonly crossHair: Position | null;
}

const CLEAR: Mm = 14; // of the outline of a selected thing beyond its panels
const HANDLE = 8; // px
const TICK = 4.5; // px
const CROSS = 12; // px, half a cross-hair

export function drawOverlay(pen: Pen, overlay: Overlay): void {
  const { palette, selection, hovered } = overlay;
  drawPieces(pen, overlay);
  if (hovered?.kind === "item" && !isAmong(selection, hovered.item)) {
    outline(pen, overlay, hovered.item, { colour: palette.accent, width: 1.25 });
  }
  for (const item of selection) outline(pen, overlay, item, { colour: palette.accent, width: 2 });
  drawHandles(pen, overlay);
  drawFigureLines(pen, overlay);
  drawMarks(pen, overlay);
  drawCrossHair(pen, overlay);
}

/** How far the outline of a thing in a wall stands from the body. */
export function outlineReach(live: LiveFill | null): Mm {
  return (live === null ? 0 : scenePieces(live).depth) + CLEAR;
}

function outline(pen: Pen, overlay: Overlay, item: ItemRef, style: LineStyle): void {
  const { viewport, unit, live } = overlay;
  pen.beginPath();
  switch (item.bucket) {
    case "walls":
    case "openings":
    case "pinned":
      ringPath(pen, viewport, grownBody(unit, item, outlineReach(live)));
      break;
    case "rooms":
      ringPath(pen, viewport, roomRing(overlay, item.id));
      break;
    case "slabs":
    case "slabOpenings":
      ringPath(pen, viewport, placesOf(unit, item));
      break;
    case "services":
    case "controlLines":
      tracePath(pen, viewport, placesOf(unit, item));
      break;
    default:
      item.bucket satisfies never;
  }
  strokePath(pen, style);
}

/** The body of a wall or an opening, with room for its panels. Empty where it is not there. */
export function grownBody(unit: UnitDocument, { bucket, id }: ItemRef, reach: Mm): readonly Position[] {
  const opening = bucket === "openings" ? find(unit.openings, id) : undefined;
  const pin = bucket === "pinned" ? find(unit.pinned, id) : undefined;
  const wall = find(unit.walls, opening?.wall ?? pin?.wall ?? id);
  if (wall === undefined) return [];
  const { x, y, ux, uy } = wallLine(wall);
  const [right, left] = bodySpan(wall);
  const pinned = pin?.widths.reduce((sum, width) => sum + width, 0) ?? 0;
  const [start, end] =
    opening !== undefined
      ? [opening.at, opening.at + opening.width]
      : pin !== undefined
        ? [pin.from, pin.from + pinned]
        : [-wall.thickness / 2, wallLength(wall) + wall.thickness / 2];
  const corner = (along: Mm, aside: Mm): Position => [
    x + ux * along - uy * aside,
    y + uy * along + ux * aside,
  ];
  return [
    corner(start, right - reach),
    corner(end, right - reach),
    corner(end, left + reach),
    corner(start, left + reach),
  ];
}

// The ring of the room the label stands in; a small box round a label that stands nowhere.
function roomRing({ unit, live, viewport }: Overlay, id: string): readonly Position[] {
  const label = find(unit.rooms, id);
  if (label === undefined) return [];
  const rooms = live?.outline.rooms ?? [];
  for (const room of rooms) {
    const faces = live?.outline.rings[room.ring]?.faces ?? [];
    const ring = faces.map((index): Position => live?.outline.faces[index]?.from ?? label.at);
    if (isInside(ring, label.at)) return ring;
  }
  const [wide, high] = [50 / viewport.scale, 20 / viewport.scale];
  const [x, y] = label.at;
  return [
    [x - wide, y - high],
    [x + wide, y - high],
    [x + wide, y + high],
    [x - wide, y + high],
  ];
}

// What the pointer is on lightly, what the hand has taken in the soffit in full. Looked for in the soffit only where no
// wall has it: a soffit that is not shown is then not laid out either.
function drawPieces(pen: Pen, overlay: Overlay): void {
  const { live, hoveredPiece, soffit } = overlay;
  if (live === null) return;
  const lit = hoveredPiece === null ? [] : scenePieces(live).all.filter(({ id }) => id === hoveredPiece);
  drawWallPieces(pen, overlay, lit);
  const under = hoveredPiece === null || lit.length > 0 ? null : soffitThing(live, hoveredPiece);
  if (under !== null) drawSoffitThing(pen, overlay, { thing: under, width: 1.25 });
  if (soffit !== null) drawSoffitThing(pen, overlay, { thing: soffit, width: 2 });
}

function drawWallPieces(pen: Pen, { viewport, palette }: Overlay, lit: readonly ScenePiece[]): void {
  for (const piece of lit) {
    pen.beginPath();
    ringPath(pen, viewport, piece.corners);
    // A standard panel's tone means nothing, a filler's does.
    if (piece.kind === "panel") {
      pen.globalAlpha = 0.75;
      pen.fillStyle = palette.wash;
      pen.fill();
      pen.globalAlpha = 1;
    }
    strokePath(pen, { colour: palette.accent, width: 1.25 });
  }
}

function drawSoffitThing(
  pen: Pen,
  { viewport, palette }: Overlay,
  { thing, width }: { readonly thing: SoffitThing; readonly width: number },
): void {
  pen.beginPath();
  if (thing.kind === "shape") ringPath(pen, viewport, thing.shape.outline);
  else {
    const [x, y] = toScreen(viewport, thing.place.prop.at);
    pen.arc(x, y, propRadius(viewport.scale) + 3, 0, 2 * Math.PI);
  }
  strokePath(pen, { colour: palette.accent, width });
}

// Square at a free end, round where other walls meet.
function drawHandles(pen: Pen, { unit, selection, viewport, palette }: Overlay): void {
  const walls = selection.flatMap(({ bucket, id }) => {
    const wall = bucket === "walls" ? find(unit.walls, id) : undefined;
    return wall === undefined ? [] : [wall];
  });
  const all = listed(unit.walls);
  for (const wall of walls) {
    for (const end of [wall.from, wall.to]) {
      const [x, y] = toPixel(viewport, end);
      const isJunction = all.some((other) => other.id !== wall.id && endAt(other, end) !== null);
      pen.beginPath();
      if (isJunction) pen.arc(x, y, HANDLE / 2, 0, 2 * Math.PI);
      else pen.rect(x - HANDLE / 2, y - HANDLE / 2, HANDLE, HANDLE);
      pen.fillStyle = palette.raise;
      pen.fill();
      strokePath(pen, { colour: palette.accent, width: 1.5 });
    }
  }
}

function drawFigureLines(pen: Pen, { figures, palette }: Overlay): void {
  const lines = figures.filter(({ unit }) => unit === "mm");
  pen.beginPath();
  for (const { from, to } of lines) {
    pen.moveTo(...from);
    pen.lineTo(...to);
  }
  strokePath(pen, { colour: palette.accent, width: 1 });
  pen.beginPath();
  for (const [x, y] of lines.flatMap(({ from, to }): readonly Pixel[] => [from, to])) {
    pen.moveTo(x - TICK, y + TICK);
    pen.lineTo(x + TICK, y - TICK);
  }
  strokePath(pen, { colour: palette.accent, width: 1.5 });
}

function drawCrossHair(pen: Pen, { crossHair, viewport, palette }: Overlay): void {
  if (crossHair === null) return;
  const [x, y] = toScreen(viewport, crossHair).map((value) => Math.round(value) + 0.5) as [number, number];
  pen.beginPath();
  pen.moveTo(x - CROSS, y);
  pen.lineTo(x + CROSS, y);
  pen.moveTo(x, y - CROSS);
  pen.lineTo(x, y + CROSS);
  strokePath(pen, { colour: palette.accent, width: 1 });
}
