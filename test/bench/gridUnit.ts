// A seeded block of rooms on a grid, to measure how the fill grows: every wall runs from one crossing to the next, with
// doors inside and windows in the facade. Invented; sizes are those of housing.

import type { Opening, Unit, Wall } from "../../src/plan/project.ts";

/** The same block drawn off every grid, with a column in each room and a slab opening beside it. */
export function awkwardUnit(columns: number, rows: number, seed = 2): Unit {
  const random = seeded(seed);
  const unit = gridUnit(columns, rows, seed);
  const stretch = ([x, y]: readonly [number, number]) =>
    [x + Math.floor(x / 31), y + Math.floor(y / 37)] as const;
  const walls = unit.walls.map((wall) => ({ ...wall, from: stretch(wall.from), to: stretch(wall.to) }));
  const corners = [...new Set(walls.map(({ from }) => from.join()))].map((key) => key.split(",").map(Number));
  const islands: Wall[] = [];
  const slabOpenings: { id: string; outline: readonly (readonly [number, number])[] }[] = [];
  for (const [x = 0, y = 0] of corners) {
    const [u, v] = [x + 700 + Math.floor(random() * 300), y + 800 + Math.floor(random() * 300)];
    if (!walls.some(({ from, to }) => from[0] === x && from[1] === y && to[0] > x)) continue;
    if (!walls.some(({ from, to }) => from[0] === x && from[1] === y && to[1] > y)) continue;
    islands.push({
      id: `c${islands.length}`,
      from: [u, v],
      to: [u + 300, v],
      thickness: 200,
      justify: "centre",
    });
    slabOpenings.push({
      id: `h${slabOpenings.length}`,
      outline: [
        [u + 600, v],
        [u + 1400, v],
        [u + 1400, v + 250],
        [u + 600, v + 250],
      ],
    });
  }
  return { ...unit, walls: [...walls, ...islands], slabOpenings };
}

/** A small generator of numbers that is the same on every machine (Numerical Recipes' linear congruence). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** A block of `columns` × `rows` rooms: columns·(rows + 1) + rows·(columns + 1) walls. */
export function gridUnit(columns: number, rows: number, seed = 1): Unit {
  const random = seeded(seed);
  const axis = (count: number): number[] => {
    const places = [0];
    for (let k = 0; k < count; k++) places.push(places[k]! + 2400 + 50 * Math.floor(random() * 48));
    return places;
  };
  const xs = axis(columns);
  const ys = axis(rows);
  const walls: Wall[] = [];
  const openings: Opening[] = [];
  const add = (from: readonly [number, number], to: readonly [number, number], isFacade: boolean) => {
    const id = `w${walls.length + 1}`;
    walls.push({ id, from, to, thickness: 100, justify: "centre" });
    if (random() < 0.4) return;
    const length = Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]);
    const width = isFacade ? 1200 : 900;
    const at = 50 * Math.round((300 + random() * (length - width - 600)) / 50);
    openings.push({
      id: `o${openings.length + 1}`,
      wall: id,
      at,
      width,
      sill: isFacade ? 900 : 0,
      head: 2100,
      formed: "band",
    });
  };
  for (let j = 0; j <= rows; j++) {
    for (let i = 0; i < columns; i++) add([xs[i]!, ys[j]!], [xs[i + 1]!, ys[j]!], j === 0 || j === rows);
  }
  for (let i = 0; i <= columns; i++) {
    for (let j = 0; j < rows; j++) add([xs[i]!, ys[j]!], [xs[i]!, ys[j + 1]!], i === 0 || i === columns);
  }
  return {
    id: "G",
    name: `${columns} × ${rows} rooms`,
    walls,
    openings,
    rooms: [],
    slabs: [],
    slabOpenings: [],
    services: [],
    controlLines: [],
    pinned: [],
  };
}
