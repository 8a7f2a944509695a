// Random plans whose concrete is known without any of the program's own geometry: walls of one thickness, drawn on
// their centre lines between the nodes of a bent grid, every wall split where it meets another.

import fc from "fast-check";
import type { Point } from "../../src/geom/point.ts";
import type { Ring } from "../../src/geom/ring.ts";
import type { WallLine } from "./walls.ts";

export interface WallNetwork {
  readonly nodes: readonly Point[];
  readonly walls: readonly (readonly [number, number])[];
  readonly thickness: number;
}

/**
 * A grid of nodes 2 m apart, each moved by up to `bend` mm both ways, with walls between some neighbours. Bends are
 * whole millimetres.
 */
export function networkArbitrary(bend: number): fc.Arbitrary<WallNetwork> {
  return fc
    .record({ columns: fc.integer({ min: 2, max: 4 }), rows: fc.integer({ min: 1, max: 4 }) })
    .chain((size) => {
      const count = size.columns * size.rows;
      const spots = Array.from(
        { length: count },
        (_, i) => [i % size.columns, Math.floor(i / size.columns)] as const,
      );
      const pairs = spots.flatMap(([x, y], i) => [
        ...(x + 1 < size.columns ? [[i, i + 1] as const] : []),
        ...(y + 1 < size.rows ? [[i, i + size.columns] as const] : []),
      ]);
      const shift = fc.integer({ min: -bend, max: bend });
      return fc
        .record({
          shifts: fc.array(fc.tuple(shift, shift), { minLength: count, maxLength: count }),
          drawn: fc.array(fc.integer({ min: 0, max: 3 }), {
            minLength: pairs.length,
            maxLength: pairs.length,
          }),
          thickness: fc.constantFrom(80, 100, 120, 200),
        })
        .map(({ shifts, drawn, thickness }) => ({
          nodes: spots.map(([x, y], i): Point => [2000 * x + shifts[i]![0], 2000 * y + shifts[i]![1]]),
          walls: pairs.filter((_, i) => drawn[i] !== 0),
          thickness,
        }))
        .filter((network) => network.walls.length > 0 && !hasSlightBend(network));
    });
}

// A bend of 2 mm or less is settled into one straight wall, which moves the concrete: left to tests of its own.
function hasSlightBend({ nodes, walls }: WallNetwork): boolean {
  return walls.some(([a, b], i) =>
    walls.some(([c, d], k) => {
      if (i === k || (a !== c && a !== d && b !== c && b !== d)) return false;
      const aside = [c, d].map((node) => Math.abs(asideOf(nodes[a]!, nodes[b]!, nodes[node]!)));
      return Math.max(...aside) > 0 && Math.max(...aside) < 5;
    }),
  );
}

function asideOf([ax, ay]: Point, [bx, by]: Point, [px, py]: Point): number {
  return ((bx - ax) * (py - ay) - (by - ay) * (px - ax)) / Math.sqrt((bx - ax) ** 2 + (by - ay) ** 2);
}

/** The walls as drawn. */
export function networkWalls({ nodes, walls, thickness }: WallNetwork): WallLine[] {
  return walls.map(([a, b]): WallLine => [...nodes[a]!, ...nodes[b]!, thickness]);
}

/**
 * The concrete in pieces that overlap: every wall as a rectangle between its nodes, and at every node the kite out to
 * the mitre wherever two neighbouring walls leave more than a half turn open.
 */
export function networkPieces({ nodes, walls, thickness }: WallNetwork): Ring[] {
  const half = thickness / 2;
  const pieces: Ring[] = walls.map(([a, b]) => rectangle(nodes[a]!, nodes[b]!, half));
  nodes.forEach((node, i) => {
    const leaving = walls.flatMap(([a, b]) => (a === i ? [b] : b === i ? [a] : []));
    if (leaving.length < 2) return;
    const angles = leaving
      .map((other) => Math.atan2(nodes[other]![1] - node[1], nodes[other]![0] - node[0]))
      .sort((p, q) => p - q);
    angles.forEach((angle, k) => {
      const next = k + 1 < angles.length ? angles[k + 1]! : angles[0]! + 2 * Math.PI;
      const open = next - angle;
      if (open <= Math.PI + 1e-9) return;
      const reach = half / Math.sin(open / 2);
      // The kite reaches a little into both walls: pieces that share an edge only would leave a slit of rounding.
      const place = (along: number, aside: number, turn: number): Point => [
        node[0] + Math.cos(turn) * along - Math.sin(turn) * aside,
        node[1] + Math.sin(turn) * along + Math.cos(turn) * aside,
      ];
      pieces.push([node, place(10, half, angle), place(reach, 0, angle + open / 2), place(10, -half, next)]);
    });
  });
  return pieces;
}

function rectangle([ax, ay]: Point, [bx, by]: Point, half: number): Ring {
  const length = Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
  const [nx, ny] = [(-(by - ay) / length) * half, ((bx - ax) / length) * half];
  return [
    [ax - nx, ay - ny],
    [bx - nx, by - ny],
    [bx + nx, by + ny],
    [ax + nx, ay + ny],
  ];
}
