// The best soffit of one field: both directions tried, the better kept.
//
//   lengths along u, strips along v        or        lengths along v, strips along u
//   ┌─────┬─┬─────┬─┬───┐                            ┌───────────────┐
//   │     │ │     │ │   │                            ├───────────────┤
//   └─────┴─┴─────┴─┴───┘                            └───────────────┘

import { type Ring, ringBox } from "../../geom/ring.ts";
import type { Kit } from "../../kit/kit.ts";
import type { Mm } from "../../units.ts";
import { type BandTables, bandTablesOf, type SoffitCost } from "./bandTables.ts";
import { areaOfCells, type Cell, cellsOf, type Rect, rectWithin } from "./cells.ts";
import { compareBands, compareLayouts, layOutCells } from "./layout.ts";
import { turnedRing } from "./localFrame.ts";
import { type ShoredStrip, shoreStrips } from "./shoring.ts";
import { supportsOf } from "./supports.ts";
import { type ClosingEnds, type ClosureTile, type PanelTile, tilesOf } from "./tiles.ts";

/** The axis along which slab panels lie with their lengths; strips run along the other. */
export type Direction = "u" | "v";

export interface SoffitInput {
  readonly outline: Ring;
  /** Columns and slab openings. */
  readonly holes: readonly Ring[];
  /** The connectors' horizontal legs: they are taken off, and carry what ends on them. */
  readonly legs: readonly Ring[];
  readonly kit: Kit;
  /** Widths of strip on offer; empty: none in the kit. */
  readonly stripWidths: readonly Mm[];
  readonly stripLengthsOf: (width: Mm) => readonly Mm[];
  readonly propPitch: Mm | null;
  /** Null: the better one. */
  readonly direction: Direction | null;
  /** Where narrow pieces go, by axis: which end is closed last if lengths, if widths run along it. */
  readonly closing: Readonly<
    Record<Direction, { readonly lengths: "low" | "high"; readonly widths: "low" | "high" }>
  >;
}

export interface SoffitPlan {
  readonly direction: Direction;
  readonly cost: SoffitCost;
  readonly tiles: readonly (PanelTile | ClosureTile)[];
  readonly strips: readonly ShoredStrip[];
  /** Rectangles that no pieces of the kit make up. */
  readonly unbuilt: readonly Rect[];
  /** Area outside every rectangle, beside oblique walls, mm². */
  readonly beside: number;
}

/** Plans a soffit in its own axes, whole millimetres. Null where nothing is left to fill. */
export function planSoffit(input: SoffitInput): SoffitPlan | null {
  const directions: readonly Direction[] = input.direction === null ? ["u", "v"] : [input.direction];
  const box = ringBox(input.outline);
  const isWide = box.maxX - box.minX > box.maxY - box.minY;
  const isLong = box.maxX - box.minX < box.maxY - box.minY;
  const widths = input.stripWidths.length === 0 ? [null] : [...input.stripWidths].sort((a, b) => a - b);
  let best: Candidate | null = null;
  for (const direction of directions) {
    const candidate = bestAlong(direction, input, widths);
    if (candidate === null) continue;
    if (best === null || comesFirst(candidate, best, { isWide, isLong })) best = candidate;
  }
  return best === null ? null : finish(best, input);
}

interface Candidate {
  readonly direction: Direction;
  readonly tables: BandTables;
  readonly layout: ReturnType<typeof layOutCells>;
  readonly legs: readonly Ring[];
  readonly beside: number;
}

function bestAlong(
  direction: Direction,
  { outline, holes, legs, kit }: SoffitInput,
  widths: readonly (Mm | null)[],
): Candidate | null {
  const turn = direction === "u" ? (ring: Ring) => ring : turnedRing;
  const turnedLegs = legs.map(turn);
  const cells = cellsOf(turn(outline), [...holes.map(turn), ...turnedLegs]);
  if (cells.length === 0) return null;
  const rects = cells.map((cell) => rectOf(cell, kit, widths)).filter((rect) => rect !== null);
  const beside = areaOfCells(cells) - rects.reduce((sum, rect) => sum + rectArea(rect), 0);
  const supports = supportsOf(rects, turnedLegs);
  let best: Candidate | null = null;
  for (const width of widths) {
    const tables = bandTablesOf(kit, width);
    const candidate = {
      direction,
      tables,
      layout: layOutCells(rects, supports, tables),
      legs: turnedLegs,
      beside,
    };
    if (best === null || compareCandidates(candidate, best) < 0) best = candidate;
  }
  return best;
}

// Beside a sloping wall a rectangle is worth having only where panels make it up; the rest goes to measure with the slope.
function rectOf(cell: Cell, kit: Kit, widths: readonly (Mm | null)[]): Rect | null {
  const rect = rectWithin(cell);
  if (rect?.isBesideSlope !== true) return rect;
  const [along, across] = [rect.u1 - rect.u0, rect.v1 - rect.v0];
  const isMade = widths.some((width) =>
    [0, 1, 2].some((strips) => {
      const rest = along - strips * (width ?? 0);
      return rest > 0 && bandTablesOf(kit, width).bands(rest, across) !== null;
    }),
  );
  return isMade ? rect : null;
}

function rectArea({ u0, u1, v0, v1 }: Rect): number {
  return (u1 - u0) * (v1 - v0);
}

// The length of the strips is no reason to take one direction before the other.
function compareCandidates(a: Candidate, b: Candidate): number {
  const tally = ({ layout, beside }: Candidate) => ({
    ...layout,
    unbuilt: Math.round(layout.unbuilt + beside),
    stripLength: 0,
  });
  return compareLayouts(tally(a), tally(b));
}

// Of equals the direction along the longer side; of a square field the longer panels, then u.
function comesFirst(
  one: Candidate,
  best: Candidate,
  { isWide, isLong }: { readonly isWide: boolean; readonly isLong: boolean },
): boolean {
  const order = compareCandidates(one, best);
  if (order !== 0) return order < 0;
  if (isWide || isLong) return one.direction === (isWide ? "u" : "v");
  return compareBands(one.layout.bands, best.layout.bands) < 0;
}

function finish({ direction, tables, layout, legs, beside }: Candidate, input: SoffitInput): SoffitPlan {
  const along = direction;
  const across = direction === "u" ? "v" : "u";
  const closing: ClosingEnds = {
    along: input.closing[along].lengths,
    across: input.closing[across].widths,
  };
  const { tiles, strips } = tilesOf(layout.cells, tables, closing);
  const shored = shoreStrips(strips, tiles, legs, {
    pitch: input.propPitch,
    stripLengths: tables.stripWidth === null ? [] : input.stripLengthsOf(tables.stripWidth),
  });
  return {
    direction,
    cost: layout.cost,
    tiles,
    strips: shored,
    unbuilt: layout.cells.flatMap(({ rect, bands }) =>
      bands === null && rect.isBesideSlope !== true ? [rect] : [],
    ),
    beside,
  };
}
