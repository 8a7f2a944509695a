// The bill: the count by code of what the fill lists, a piece once, never a second computation.

import { ringArea } from "../geom/ring.ts";
import { FAMILIES, type Family } from "../kit/kit.ts";
import { roundTo } from "../units.ts";
import type { PieceBook } from "./pieceBook.ts";
import type { BillLine, UnitFill } from "./result.ts";

interface Line {
  readonly code: string;
  readonly family: Family;
  quantity: number;
  area: number;
}

/** Everything a bill is counted from. */
export type Billed = Pick<
  UnitFill,
  "faces" | "corners" | "reveals" | "soffits" | "ties" | "fittings" | "accessories"
>;

/** The bill, by family in the order of the kit's table, then by code. Masses kg to 0.01, areas m² to 0.0001. */
export function billOf(unit: Billed, book: Pick<PieceBook, "entry">): readonly BillLine[] {
  const lines = new Map<string, Line>();
  const counted = new Set<string>();
  const lineOf = (code: string, family: Family): Line => {
    const known = lines.get(code);
    if (known !== undefined) return known;
    const line = { code, family, quantity: 0, area: 0 };
    lines.set(code, line);
    return line;
  };
  const add = (line: Line, piece: string, area: number) => {
    line.area += area;
    // A corner or a connector stands on two faces under one number: its areas add up, it counts once.
    if (SHARED.has(line.family)) {
      if (counted.has(piece)) return;
      counted.add(piece);
    }
    line.quantity += 1;
  };
  for (const face of unit.faces) {
    for (const { piece, code, family, width, height } of face.pieces) {
      add(lineOf(code, family), piece, width * height);
    }
  }
  for (const { piece, code, family } of unit.corners) add(lineOf(code, family), piece, 0);
  for (const reveal of unit.reveals) {
    for (const { piece, code, family, length, width } of reveal.pieces) {
      add(lineOf(code, family), piece, length * width);
    }
  }
  for (const soffit of unit.soffits) {
    for (const { piece, code, family, outline } of soffit.pieces)
      add(lineOf(code, family), piece, Math.abs(ringArea(outline)));
    for (const { piece, code } of soffit.props) add(lineOf(code, "prop"), piece, 0);
  }
  for (const { code, heights } of unit.ties) lineOf(code, "tie").quantity += heights.length;
  for (const { piece, code, family } of unit.fittings) add(lineOf(code, family), piece, 0);
  for (const { code, family, quantity } of unit.accessories) lineOf(code, family).quantity += quantity;
  return [...lines.values()].sort(compareLines).map(({ code, family, quantity, area }) => ({
    code,
    family,
    quantity,
    mass: roundTo((book.entry(code)?.mass ?? 0) * quantity, 2),
    area: roundTo(area / 1e6, 4),
  }));
}

/** Families of which one piece may be listed twice, under one number. */
const SHARED: ReadonlySet<Family> = new Set([
  "inside-corner",
  "connector-corner",
  "cap-corner",
  "wall-slab-connector",
]);

/** By family in the order of the kit's table, then by code. */
export function compareLines(
  a: Pick<BillLine, "family" | "code">,
  b: Pick<BillLine, "family" | "code">,
): number {
  const byFamily = FAMILIES.indexOf(a.family) - FAMILIES.indexOf(b.family);
  return byFamily !== 0 ? byFamily : compareNaturally(a.code, b.code);
}

/** Codes by their characters, runs of digits by their number: "W600" before "W1200". The same on every machine. */
export function compareNaturally(a: string, b: string): number {
  const parts = (code: string) => code.match(/\d+|\D+/g) ?? [];
  const p = parts(a);
  const q = parts(b);
  for (let k = 0; k < Math.min(p.length, q.length); k++) {
    const x = p[k]!;
    const y = q[k]!;
    if (x === y) continue;
    const bothNumbers = /^\d/.test(x) && /^\d/.test(y);
    if (bothNumbers && Number(x) !== Number(y)) return Number(x) - Number(y);
    return x < y ? -1 : 1;
  }
  return p.length - q.length;
}
