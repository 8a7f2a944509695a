// The area each tie holds, by painting: every cell of a face goes to what holds the form nearer, left or right of it.
//
// Slow and simple, and made from the fill alone: it shares no code with the checks it is held against.

import type { FilledFace, UnitFill } from "../../src/fill/result.ts";

const CELL = 10; // mm

/** m² by `tie index / row` on one face, for a face that goes on in no other. Tie rows and openings on multiples of 10. */
export function tieCells(fill: UnitFill, face: FilledFace, surface: number): ReadonlyMap<string, number> {
  const [a, b] = [face.from, face.to];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const lines = fill.ties.flatMap((tie, index) => {
    if (!tie.faces.includes(face.id)) return [];
    const x = ((tie.at[0] - a[0]) * (b[0] - a[0]) + (tie.at[1] - a[1]) * (b[1] - a[1])) / length;
    return [{ index, x: Math.round(x), rows: tie.heights }];
  });
  const bands = face.openings.filter(({ formed }) => formed === "band");
  const isOpen = (x: number, z: number) =>
    bands.some((o) => x > o.x && x < o.x + o.width && z > o.sill && z < o.head);

  /** The part of a line between openings that a height is in, if the line is not in an opening there. */
  const stretchAt = (x: number, z: number): readonly [number, number] | null => {
    let low = 0;
    let high = surface;
    for (const o of bands) {
      if (x < o.x || x > o.x + o.width) continue;
      if (z > o.sill && z < o.head) return null;
      if (z < o.sill) high = Math.min(high, o.sill);
      else low = Math.max(low, o.head);
    }
    return [low, high];
  };
  const rowAt = (line: (typeof lines)[number], z: number): number | null => {
    const stretch = stretchAt(line.x, z);
    if (stretch === null) return null;
    const rows = line.rows.filter((row) => row > stretch[0] && row < stretch[1]);
    if (rows.length === 0) return null;
    return rows.reduce((best, row) => (Math.abs(row - z) < Math.abs(best - z) ? row : best));
  };

  const areas = new Map<string, number>();
  for (let z = CELL / 2; z < surface; z += CELL) {
    const holds: { x: number; key: string | null }[] = [
      { x: 0, key: null },
      { x: face.length, key: null },
    ];
    for (const line of lines) {
      const row = rowAt(line, z);
      if (row !== null) holds.push({ x: line.x, key: `${line.index}/${row}` });
    }
    for (const o of bands) {
      if (z > o.sill && z < o.head) holds.push({ x: o.x, key: null }, { x: o.x + o.width, key: null });
    }
    for (let x = CELL / 2; x < face.length; x += CELL) {
      if (isOpen(x, z)) continue;
      const nearest = holds.reduce((best, hold) =>
        Math.abs(hold.x - x) < Math.abs(best.x - x) ? hold : best,
      );
      if (nearest.key === null) continue;
      areas.set(nearest.key, (areas.get(nearest.key) ?? 0) + (CELL * CELL) / 1e6);
    }
  }
  return areas;
}
