// Union of polygons, gaps of up to 2 mm closed, by the Clipper2 library compiled to WebAssembly.
//
//   ┌──────┬───────┐      ┌──────────────┐
//   │      │2 mm   │  →   │              │
//   └──────┴───────┘      └──────────────┘

import type { MainModule, PathsD } from "clipper2-wasm/dist/clipper2z";
import type { Point } from "./point.ts";
import { type Ring, ringArea } from "./ring.ts";

/**
 * Joins rings into the outline of everything they cover. A place counts as covered where the counter-clockwise
 * rings round it outnumber the clockwise ones, so a clockwise ring takes away. What stands within 2 mm is joined.
 * Outer rings come back counter-clockwise, holes clockwise, in the library's order; vertices are good to 0.001 mm.
 *
 * @throws {RangeError} if a coordinate is not a finite number
 */
export type Union = (rings: readonly Ring[]) => Ring[];

const DECIMALS = 4; // the library works in whole steps of 1e-4 mm
const CLOSE = 1.0002; // mm on either side: a gap of exactly 2 mm, rounded to the steps, is closed as well
const MITER_LIMIT = 40; // keeps inside corners of the outline sharp down to 3°
const LEAST_EDGE = 1e-3; // mm; an edge made by rounding points anywhere, and moving it sideways would raise a spike
const LEAST_AREA = 1; // mm²; anything smaller is a rounding sliver

/**
 * Loads the library, and only when asked: its script is as little use to the first view as its WebAssembly. In Node it
 * finds its WebAssembly file itself; a browser build passes the file's URL.
 */
export async function loadUnion(wasmUrl?: string): Promise<Union> {
  const { default: factory } = await import("clipper2-wasm");
  const library: MainModule = await factory(wasmUrl === undefined ? {} : { locateFile: () => wasmUrl });
  return (rings) => unite(library, rings);
}

function unite(library: MainModule, rings: readonly Ring[]): Ring[] {
  const input = new library.PathsD();
  for (const ring of rings) {
    const flat: number[] = [];
    for (const [x, y] of ring) flat.push(x, y);
    if (!flat.every(Number.isFinite))
      throw new RangeError("every coordinate of a ring must be a finite number");
    const path = library.MakePathD(flat);
    input.push_back(path);
    path.delete();
  }
  const { Miter } = library.JoinType;
  const { Polygon } = library.EndType;
  const joined = library.UnionSelfD(input, library.FillRule.Positive, DECIMALS);
  const plain = library.SimplifyPathsD(joined, LEAST_EDGE, true);
  const grown = library.InflatePathsD(plain, CLOSE, Miter, Polygon, MITER_LIMIT, DECIMALS, 0);
  const plainGrown = library.SimplifyPathsD(grown, LEAST_EDGE, true);
  const closed = library.InflatePathsD(plainGrown, -CLOSE, Miter, Polygon, MITER_LIMIT, DECIMALS, 0);
  const outline = readRings(closed).filter((ring) => Math.abs(ringArea(ring)) >= LEAST_AREA);
  for (const paths of [input, joined, plain, grown, plainGrown, closed]) paths.delete();
  return outline;
}

function readRings(paths: PathsD): Ring[] {
  const rings: Ring[] = [];
  for (let i = 0; i < paths.size(); i++) {
    const path = paths.get(i);
    const ring: Point[] = [];
    for (let k = 0; k < path.size(); k++) {
      const point = path.get(k);
      ring.push([point.x, point.y]);
      point.delete();
    }
    path.delete();
    rings.push(ring);
  }
  return rings;
}
