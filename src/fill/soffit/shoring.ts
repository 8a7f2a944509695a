// Strips with their heads, and how much soffit each head carries.
//
//     ┌───────┬═╤───────┐
//     │       │ │   ┊   │    a head carries the strip from halfway to the head before to halfway to the next,
//     │   ┊▒▒▒│●│▒▒▒┊   │    and on either side half of the panels that end there; what lies past the last head
//     │       │ │   ┊   │    hangs on that head
//     └───────┴═╧───────┘

import type { Ring } from "../../geom/ring.ts";
import type { Mm } from "../../units.ts";
import type { Rect } from "./cells.ts";
import { type HeadRules, placeHeads, type StripPart, stripParts } from "./heads.ts";
import type { ClosureTile, PanelTile, StripLine } from "./tiles.ts";

export interface Head {
  readonly u: Mm;
  readonly v: Mm;
  /** Soffit carried, mm². */
  readonly area: number;
}

export interface ShoredStrip {
  readonly line: StripLine;
  readonly heads: readonly Head[];
  readonly parts: readonly StripPart[];
}

type Tile = PanelTile | ClosureTile;

/** Heads and strip parts of every line. */
export function shoreStrips(
  strips: readonly StripLine[],
  tiles: readonly Tile[],
  legs: readonly Ring[],
  rules: Omit<HeadRules, "headWidth">,
): readonly ShoredStrip[] {
  return strips.map((line): ShoredStrip => {
    const bearing = bearingTiles(line, tiles);
    const length = line.v1 - line.v0;
    const joints = bearing.flatMap(({ tile }) => [tile.v0 - line.v0, tile.v1 - line.v0]);
    const corners = [...cornersAt(line.u0, legs), ...cornersAt(line.u1, legs)]
      .filter((v) => v > line.v0 && v < line.v1)
      .map((v) => v - line.v0);
    const places = placeHeads(length, joints, corners, { ...rules, headWidth: line.u1 - line.u0 });
    return {
      line,
      parts: stripParts(length, places, rules.stripLengths),
      heads: places.map((at, k) => {
        const from = k === 0 ? 0 : (places[k - 1]! + at) / 2;
        const to = k === places.length - 1 ? length : (at + places[k + 1]!) / 2;
        return {
          u: (line.u0 + line.u1) / 2,
          v: line.v0 + at,
          area: carried(line, bearing, line.v0 + from, line.v0 + to),
        };
      }),
    };
  });
}

interface Bearing {
  readonly tile: Tile;
  /** How much of its length this strip carries, mm, with the plank between them where there is one. */
  readonly share: Mm;
}

// What ends on the line, and over a plank what ends there; a plank with nothing beyond it lies on a second carrier.
function bearingTiles(line: StripLine, tiles: readonly Tile[]): readonly Bearing[] {
  const found: Bearing[] = [];
  const collect = (side: "low" | "high", u: Mm, planks: Mm, beside: Rect): number => {
    let count = 0;
    for (const tile of tiles) {
      const touches = side === "low" ? tile.u1 === u : tile.u0 === u;
      if (!touches || tile.v1 <= beside.v0 || tile.v0 >= beside.v1) continue;
      count++;
      const width = tile.u1 - tile.u0;
      const far = side === "low" ? tile.u0 : tile.u1;
      const beyond = tile.kind === "plank" ? collect(side, far, planks + width, tile) : 0;
      if (beyond === 0) found.push({ tile, share: planks + width / 2 });
    }
    return count;
  };
  collect("low", line.u0, 0, line);
  collect("high", line.u1, 0, line);
  return found;
}

function carried(line: StripLine, bearing: readonly Bearing[], v0: Mm, v1: Mm): number {
  let area = (line.u1 - line.u0) * (v1 - v0);
  for (const { tile, share } of bearing) {
    const shared = Math.min(tile.v1, v1) - Math.max(tile.v0, v0);
    if (shared > 0) area += shared * share;
  }
  return area;
}

/** Ends of the legs' edges along v at one place of u. */
function cornersAt(u: Mm, legs: readonly Ring[]): readonly Mm[] {
  const found: Mm[] = [];
  for (const leg of legs) {
    leg.forEach((from, k) => {
      const to = leg[(k + 1) % leg.length]!;
      if (from[0] === u && to[0] === u) found.push(from[1], to[1]);
    });
  }
  // Two legs that adjoin make no corner between them.
  return found.filter((v) => found.filter((other) => other === v).length % 2 === 1);
}
