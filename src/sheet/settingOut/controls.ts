// Control lines: what each reads from the datum, how far it is from the nearest wall faces, and where two of them cross.

import { distance } from "../../geom/point.ts";
import type { ControlLine, Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import type { Axis, SetFace } from "./setFace.ts";

export interface Control {
  readonly id: string;
  readonly from: Position;
  readonly to: Position;
  /** Along which axis it runs; null: aslant. */
  readonly axis: Axis;
  /** From the line to the nearest parallel faces below and above it (left and right of it), mm; null: none there. */
  readonly offsets: readonly [below: Mm | null, above: Mm | null];
}

/** Lines a hair off an axis count as parallel to it, mm over their whole length. */
const HAIR = 0.5;

export function controlsOf(lines: readonly ControlLine[], faces: readonly SetFace[]): readonly Control[] {
  return lines.map(({ id, from, to }): Control => {
    const axis = axisOf(from, to);
    const across = axis === "y" ? 0 : 1;
    const along = axis === "y" ? 1 : 0;
    const [low, high] = [Math.min(from[along], to[along]), Math.max(from[along], to[along])];
    const at = from[across];
    const parallel = faces
      .filter((face) => axis !== null && face.axis === axis)
      .filter((face) => Math.max(face.from[along], face.to[along]) > low)
      .filter((face) => Math.min(face.from[along], face.to[along]) < high)
      .map((face) => face.from[across]);
    const below = parallel.filter((place) => place <= at);
    const above = parallel.filter((place) => place > at);
    return {
      ...{ id, from, to, axis },
      offsets: [
        below.length === 0 ? null : at - Math.max(...below),
        above.length === 0 ? null : Math.min(...above) - at,
      ],
    };
  });
}

function axisOf(from: Position, to: Position): Axis {
  const [dx, dy] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
  if (dx <= HAIR && dy <= HAIR) return null;
  return dx <= HAIR ? "y" : dy <= HAIR ? "x" : null;
}

/** Where control lines cross, to 1 mm, row by row from the least y, each row towards greater x. */
export function controlPoints(lines: readonly ControlLine[]): readonly Position[] {
  const found: Position[] = [];
  lines.forEach((line, k) => {
    for (const other of lines.slice(k + 1)) {
      const at = crossing(line, other);
      if (at !== null && !found.some((known) => distance(known, at) < 1)) found.push(at);
    }
  });
  return found.sort((a, b) => a[1] - b[1] || a[0] - b[0]);
}

function crossing(a: ControlLine, b: ControlLine): Position | null {
  const [ax, ay] = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
  const [bx, by] = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
  const sine = ax * by - ay * bx;
  if (Math.abs(sine) < 1e-6 * distance(a.from, a.to) * distance(b.from, b.to)) return null;
  const [dx, dy] = [b.from[0] - a.from[0], b.from[1] - a.from[1]];
  const along = (dx * by - dy * bx) / sine;
  const other = (dx * ay - dy * ax) / sine;
  if (along < 0 || along > 1 || other < 0 || other > 1) return null;
  return [Math.round(a.from[0] + ax * along) + 0, Math.round(a.from[1] + ay * along) + 0];
}
