// The engineer's own choice: sequences of widths pinned to a wall, as places on its line.

import type { Pinned, Position, Storey, Unit } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import { placeOf, roundHalfUp } from "./lines.ts";
import type { Settled } from "./settled.ts";

/** A pinned sequence, low to high along the line. */
export interface PlacedPin {
  /** What it is a placing of: a wall whose faces lie on several lines has one placing on each. */
  readonly pinned: Pinned;
  readonly line: number;
  readonly low: Mm;
  readonly high: Mm;
  readonly widths: readonly Mm[];
  /** Which of the widths is said to be the closure; null where the pin does not say. */
  readonly closure: number | null;
  /** The faces of the wall's two sides. */
  readonly faces: readonly number[];
}

/** The pin moved onto the end of a stretch that it begins or ends at within the tolerance. */
export function drawnTo(pin: PlacedPin, { low, high }: { low: Mm; high: Mm }, tolerance: Mm): PlacedPin {
  const atLow = low - pin.low;
  const atHigh = high - pin.high;
  const by = Math.abs(atLow) <= tolerance ? atLow : Math.abs(atHigh) <= tolerance ? atHigh : 0;
  return by === 0 ? pin : { ...pin, low: pin.low + by, high: pin.high + by };
}

/** Pins of a unit that stand at this storey, by line and place, then by their widths. A start is rounded as drawn. */
export function placePins(unit: Unit, storey: Storey, settled: Settled): readonly PlacedPin[] {
  if (unit.pinned.length === 0) return [];
  const walls = new Map(unit.walls.map((wall) => [wall.id, wall]));
  const pins: PlacedPin[] = [];
  for (const pin of unit.pinned) {
    const wall = walls.get(pin.wall);
    if (wall === undefined || pin.widths.length === 0 || !standsAt(pin, storey)) continue;
    const dx = wall.to[0] - wall.from[0];
    const dy = wall.to[1] - wall.from[1];
    const length = Math.sqrt(dx * dx + dy * dy);
    const start: Position = [
      wall.from[0] + (dx * pin.from) / length,
      wall.from[1] + (dy * pin.from) / length,
    ];
    const sides = settled.faces.filter(({ formed }) =>
      formed.outlineFace.walls.some(
        (part) => part.wall === wall.id && (part.side === "left" || part.side === "right"),
      ),
    );
    const sum = pin.widths.reduce((total, width) => total + width, 0);
    for (const line of new Set(sides.map((face) => face.line))) {
      const { direction } = settled.lines[line]!;
      const isAlong = direction[0] * dx + direction[1] * dy > 0;
      const first = roundHalfUp(placeOf(direction, start));
      pins.push({
        pinned: pin,
        line,
        low: isAlong ? first : first - sum,
        high: isAlong ? first + sum : first,
        widths: isAlong ? pin.widths : [...pin.widths].reverse(),
        closure: closureOf(pin, isAlong),
        faces: sides.filter((face) => face.line === line).map((face) => face.index),
      });
    }
  }
  return pins.sort((a, b) => a.line - b.line || a.low - b.low || a.high - b.high || compareWidths(a, b));
}

function standsAt({ storey: own }: Pinned, storey: Storey): boolean {
  return own === undefined || (own.clearHeight === storey.clearHeight && own.slab === storey.slab);
}

function closureOf({ closure, widths }: Pinned, isAlong: boolean): number | null {
  if (closure === undefined) return null;
  return isAlong ? closure : widths.length - 1 - closure;
}

// Widest first, so that of two pins for one place the choice is the same in whatever order the file names them.
function compareWidths({ widths: a }: PlacedPin, { widths: b }: PlacedPin): number {
  for (let k = 0; k < Math.min(a.length, b.length); k++) {
    if (a[k] !== b[k]) return b[k]! - a[k]!;
  }
  return a.length - b.length;
}
