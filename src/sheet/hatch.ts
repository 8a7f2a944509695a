// Where the lines and dots of a hatch lie: the same in every format.

import type { HatchMark, Point } from "./mark.ts";

/** Ends of the lines of a hatch, from left to right: lines x + y = constant, cut off at the box. */
export function hatchLines({ box, pitch }: HatchMark): readonly (readonly [Point, Point])[] {
  const lines: [Point, Point][] = [];
  const along = pitch * Math.sqrt(2); // distance of neighbours along an edge of the box
  for (let offset = along / 2; offset < box.width + box.height; offset += along) {
    const low: Point = [box.x + Math.max(0, offset - box.height), box.y + Math.min(offset, box.height)];
    const high: Point = [box.x + Math.min(offset, box.width), box.y + Math.max(0, offset - box.width)];
    lines.push([low, high]);
  }
  return lines;
}

/** Middles of the dots of a hatch: a grid of whole pitches in the middle of the box, dots wholly inside. */
export function hatchDots({ box, pitch, weight }: HatchMark): readonly Point[] {
  const across = Math.max(1, Math.floor((box.width - weight) / pitch) + 1);
  const down = Math.max(1, Math.floor((box.height - weight) / pitch) + 1);
  const left = box.x + (box.width - (across - 1) * pitch) / 2;
  const top = box.y + (box.height - (down - 1) * pitch) / 2;
  const dots: Point[] = [];
  for (let row = 0; row < down; row++) {
    for (let column = 0; column < across; column++) dots.push([left + column * pitch, top + row * pitch]);
  }
  return dots;
}
