// Do the rectangles of a face tile it exactly? By cutting the face along every edge of every rectangle and counting what
// covers each cell.
//
//   height ┌──┬─────┬──┐   pieces + unfilled cover each cell once, openings formed with bands cover it with nothing
//        0 └──┴──┬──┴──┘

import type { FilledFace, Problem } from "../../../src/fill/result.ts";

interface Rectangle {
  readonly x: number;
  readonly z: number;
  readonly width: number;
  readonly height: number;
}

/** Gaps, overlaps, overhangs and fractions on one face; unfilled stretches without an error that says why. */
export function tilingFaults(face: FilledFace, problems: readonly Problem[]): string[] {
  const faults: string[] = [];
  const solid: readonly Rectangle[] = [...face.pieces, ...face.unfilled];
  if (!Number.isInteger(face.length) || !Number.isInteger(face.height))
    faults.push(`${face.id} is not whole`);
  for (const one of solid) {
    const { x, z, width, height } = one;
    if (![x, z, width, height].every(Number.isInteger)) faults.push(`${face.id}: ${show(one)} is not whole`);
    if (width <= 0 || height <= 0) faults.push(`${face.id}: ${show(one)} is empty`);
    if (x < 0 || z < 0 || x + width > face.length || z + height > face.height)
      faults.push(`${face.id}: ${show(one)} hangs over the face of ${face.length} by ${face.height}`);
  }
  for (const gap of face.unfilled) {
    if (problems[gap.problem]?.severity !== "error")
      faults.push(`${face.id}: unfilled ${show(gap)} points at no error`);
  }
  return [...faults, ...coverFaults(face, solid)];
}

function coverFaults(face: FilledFace, solid: readonly Rectangle[]): string[] {
  const holes = face.openings
    .filter((opening) => opening.formed === "band")
    .map((o) => ({ x: o.x, z: o.sill, width: o.width, height: Math.min(o.head, face.height) - o.sill }));
  const all = [...solid, ...holes];
  const xs = cuts([0, face.length, ...all.flatMap(({ x, width }) => [x, x + width])], face.length);
  const zs = cuts([0, face.height, ...all.flatMap(({ z, height }) => [z, z + height])], face.height);
  const faults: string[] = [];
  for (let i = 0; i + 1 < xs.length; i++) {
    for (let k = 0; k + 1 < zs.length; k++) {
      const x = (xs[i]! + xs[i + 1]!) / 2;
      const z = (zs[k]! + zs[k + 1]!) / 2;
      const count = solid.filter((one) => holds(one, x, z)).length;
      const due = holes.some((one) => holds(one, x, z)) ? 0 : 1;
      if (count !== due) {
        const cell = { x: xs[i]!, z: zs[k]!, width: xs[i + 1]! - xs[i]!, height: zs[k + 1]! - zs[k]! };
        faults.push(`${face.id}: ${show(cell)} is covered ${count} times, not ${due}`);
      }
    }
  }
  return faults;
}

function cuts(places: readonly number[], most: number): number[] {
  return [...new Set(places)].filter((place) => place >= 0 && place <= most).sort((a, b) => a - b);
}

function holds({ x, z, width, height }: Rectangle, px: number, pz: number): boolean {
  return px > x && px < x + width && pz > z && pz < z + height;
}

function show({ x, z, width, height }: Rectangle): string {
  return `x ${x}..${x + width}, z ${z}..${z + height}`;
}
