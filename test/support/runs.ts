// Runs written the way an assembler reads them off: "C150 600 600 (20) 300 /900/ E100".

import type { FilledFace, UnitFill } from "../../src/fill/result.ts";

const MARKS: Readonly<Record<string, (width: number) => string>> = {
  "wall-panel": (width) => `${width}`,
  "closure-strip": (width) => `(${width})`,
  "inside-corner": (width) => `C${width}`,
  "stop-end": (width) => `E${width}`,
};

/** What stands on the floor from the face's `from` to its `to`; openings of full width as "/900/", gaps as "?275?". */
export function runOf({ pieces, openings, unfilled }: FilledFace): string {
  const standing = pieces
    .filter(({ z, family }) => z === 0 && MARKS[family] !== undefined)
    .map(({ x, width, family }) => ({ x, text: MARKS[family]!(width) }));
  const open = openings
    .filter(({ formed, sill }) => formed === "band" && sill === 0)
    .map(({ x, width }) => ({ x, text: `/${width}/` }));
  const gaps = unfilled.filter(({ z }) => z === 0).map(({ x, width }) => ({ x, text: `?${width}?` }));
  return [...standing, ...open, ...gaps]
    .sort((a, b) => a.x - b.x)
    .map(({ text }) => text)
    .join(" ");
}

/** The same run read along the axes of the plan: west to east or south to north. */
export function runUpward(face: FilledFace): string {
  const isUp = face.to[0] + face.to[1] > face.from[0] + face.from[1];
  return isUp ? runOf(face) : runOf(face).split(" ").reverse().join(" ");
}

/** The face on which `[x, y]` lies, so that tests name faces by places and never by ids. */
export function faceAt(fill: UnitFill, [x, y]: readonly [number, number]): FilledFace {
  const between = (a: number, b: number, p: number) =>
    p >= Math.min(a, b) - 0.01 && p <= Math.max(a, b) + 0.01;
  const found = fill.faces.filter(({ from, to }) => between(from[0], to[0], x) && between(from[1], to[1], y));
  if (found.length !== 1) throw new RangeError(`${found.length} faces at ${x}, ${y}`);
  return found[0]!;
}

/** How often each code is billed. */
export function quantities(fill: UnitFill): Record<string, number> {
  return Object.fromEntries(fill.bill.map(({ code, quantity }) => [code, quantity]));
}

/** Kinds of the problems, sorted, each as often as it occurs. */
export function problemKinds(fill: UnitFill, severity?: "error" | "warning"): string[] {
  return fill.problems
    .filter((one) => severity === undefined || one.severity === severity)
    .map(({ kind }) => kind)
    .sort();
}
