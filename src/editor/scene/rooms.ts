// Names and areas of rooms, and of walls when near.

import { isInside } from "../../geom/ring.ts";
import { find, listed } from "../../plan/document.ts";
import { bodySpan, placeOnWall, wallLength, wallLine } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { baysAlong } from "../along.ts";
import { boxAround } from "../box.ts";
import { readable } from "./openings.ts";
import { fontOf, type Pen } from "./pen.ts";
import type { Scene } from "./scene.ts";
import { toScreen } from "./viewport.ts";

export interface RoomName {
  readonly name: string;
  readonly area: number | null;
  readonly at: Position;
  /** Of the box round the room, mm; null where it is not enclosed. */
  readonly size: readonly [across: Mm, upright: Mm] | null;
}

/** Rooms with the place of their names: where the person has put the label, else the middle of the room. */
export function roomNames({ unit, live, isStale }: Scene): readonly RoomName[] {
  const labels = listed(unit.rooms);
  const loose = ({ name, at }: { readonly name: string; readonly at: Position }): RoomName => ({
    name,
    area: null,
    at,
    size: null,
  });
  if (live === null || isStale) return labels.map(loose);
  const { rooms, rings, faces } = live.outline;
  const used = new Set<string>();
  const enclosed = rooms.flatMap((room): readonly RoomName[] => {
    const ring = (rings[room.ring]?.faces ?? []).map((index): Position => faces[index]?.from ?? [0, 0]);
    const label = labels.find(({ at, name }) => name === room.name && isInside(ring, at));
    if (label !== undefined) used.add(label.id);
    const box = boxAround(ring);
    const at = label?.at ?? ([(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2] as const);
    const size = [box.maxX - box.minX, box.maxY - box.minY] as const;
    return [{ name: room.name, area: room.area, at, size }];
  });
  return [...enclosed, ...labels.filter(({ id }) => !used.has(id)).map(loose)];
}

const LEAST_HIGH = 72; // px a room must be high to take its area, too
const LEAST_WIDE = 70; // px it must be wide for its name in full size

export function drawRoomNames(pen: Pen, scene: Scene): void {
  const { viewport, palette, lettering, detail } = scene;
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  pen.lineJoin = "round";
  for (const { name, area, at, size } of roomNames(scene)) {
    const [x, y] = toScreen(viewport, at);
    if (x < -200 || y < -40 || x > viewport.width + 200 || y > viewport.height + 40) continue;
    const [wide, high] = size ?? [LEAST_WIDE / viewport.scale, LEAST_HIGH / viewport.scale];
    const isSmall = detail.level === "unit" || wide * viewport.scale < LEAST_WIDE;
    const takesArea = area !== null && detail.level !== "unit" && high * viewport.scale >= LEAST_HIGH;
    const font = fontOf(isSmall ? 11 : 13.5, 600);
    print(pen, { text: name, x, y: takesArea ? y - 8 : y, font, colour: palette.ink }, palette.ground);
    if (!takesArea) continue;
    const text = lettering.area(area);
    print(pen, { text, x, y: y + 9, font: fontOf(11, 400), colour: palette.ink2 }, palette.ground);
  }
}

interface Printed {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly font: string;
  readonly colour: string;
}

// A rim of the ground keeps letters readable over lines.
function print(pen: Pen, { text, x, y, font, colour }: Printed, rim: string): void {
  pen.font = font;
  pen.strokeStyle = rim;
  pen.lineWidth = 4;
  pen.strokeText(text, x, y);
  pen.fillStyle = colour;
  pen.fillText(text, x, y);
}

/** Names of walls on their own concrete, in the longest stretch between joining walls. */
export function drawWallNames(pen: Pen, scene: Scene): void {
  const { viewport, palette, lettering, detail, unit } = scene;
  if (!detail.frames) return;
  pen.font = fontOf(11.5, 500);
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  for (const wall of listed(unit.walls)) {
    const [bay] = baysAlong(unit, wall);
    if (bay === undefined || find(unit.walls, wall.id) === undefined || wallLength(wall) < 1) continue;
    const text = lettering.wall(wall.id, wall.thickness);
    const { ux, uy } = wallLine(wall);
    const [right, left] = bodySpan(wall);
    const isRoomy =
      (left - right) * viewport.scale >= 16 && (bay.end - bay.start) * viewport.scale > text.length * 7;
    const [x, y] = placeOnWall(wall, bay.start + (bay.end - bay.start) * 0.5);
    const aside = (left + right) / 2;
    const [px, py] = toScreen(viewport, [x - uy * aside, y + ux * aside]);
    if (!isRoomy || px < -200 || py < -200 || px > viewport.width + 200 || py > viewport.height + 200)
      continue;
    pen.save();
    pen.translate(px, py);
    pen.rotate(readable(Math.atan2(-uy, ux)));
    const wide = pen.measureText(text).width + 10;
    pen.fillStyle = palette.concrete;
    pen.fillRect(-wide / 2, -8, wide, 16);
    pen.fillStyle = palette.ink;
    pen.fillText(text, 0, 0.5);
    pen.restore();
  }
}
