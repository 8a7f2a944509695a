// The best layouts of two faces whose joints need not match, when one that does not costs something: for comparison with the rule
// that they match. A dynamic program over both frontiers, the lagging one extended.
//
//   a  ├ leg ┤ 600 │ 600 │ 450 ├ leg ┤        a joint that lies within a piece of the other face is unmatched;
//   b  ├──── 300 ──┤ 600 │ 600 │ …            opposite a gap or an end it is not counted

import type { Element } from "./cutWall.ts";

export interface PieceCost {
  readonly width: number;
  readonly cost: number;
  /** Its place in the caller's list of widths; −1: a closure. */
  readonly kind: number;
}

export interface CoupledCosts {
  readonly pieces: readonly PieceCost[];
  readonly unmatched: number;
}

export interface CoupledLayout {
  readonly cost: number;
  readonly unmatched: number;
  /** By kind. */
  readonly counts: readonly number[];
  /** Widths. */
  readonly closures: readonly number[];
}

interface Face {
  readonly elements: readonly Element[];
  /** By grid place: the element that begins there or covers it, −1 where there is none. */
  readonly at: Int32Array;
}

/** The cheapest layout of both faces; null where there is none. All places and widths are multiples of `grid`. */
export function bestCoupled(
  wall: { readonly a: readonly Element[]; readonly b: readonly Element[] },
  { pieces, unmatched }: CoupledCosts,
  grid: number,
): CoupledLayout | null {
  const all = [...wall.a, ...wall.b];
  const origin = Math.min(...all.map(({ from }) => from));
  const size = (Math.max(...all.map(({ to }) => to)) - origin) / grid + 1;
  const place = (x: number) => (x - origin) / grid;
  const faceOf = (elements: readonly Element[]): Face => {
    const at = new Int32Array(size).fill(-1);
    elements.forEach(({ from, to }, k) => {
      at.fill(k, place(from), place(to));
    });
    return { elements, at };
  };
  const faces = [faceOf(wall.a), faceOf(wall.b)] as const;
  const ends = faces.map(({ elements }) => place(elements.at(-1)!.to));
  const isMaterial = ({ elements, at }: Face, cell: number) =>
    cell >= 0 && cell < size && at[cell]! >= 0 && elements[at[cell]!]!.kind !== "gap";
  const isJoint = (face: Face, x: number) => isMaterial(face, x - 1) && isMaterial(face, x);
  const least = new Float64Array(size * size).fill(Number.POSITIVE_INFINITY);
  const before = new Int32Array(size * size).fill(-1);
  const taken = new Int32Array(size * size).fill(-1);
  const start = place(wall.a[0]!.from) * size + place(wall.b[0]!.from);
  least[start] = 0;
  const extend = (a: number, b: number): void => {
    const state = a * size + b;
    if (least[state] === Number.POSITIVE_INFINITY) return;
    const isA = b === ends[1] ? a !== ends[0] : a !== ends[0] && a <= b;
    const [face, other] = isA ? faces : [faces[1], faces[0]];
    const [me, ot] = isA ? [a, b] : [b, a];
    if (me === ends[isA ? 0 : 1]) return;
    const element = face.elements[face.at[me]!]!;
    const go = (to: number, cost: number, piece: number): void => {
      const hasMaterial = element.kind !== "gap";
      let missed = 0;
      if (to < ot && isJoint(face, to) && isMaterial(other, to)) missed = 1;
      if (to > ot && ot > me && hasMaterial && isJoint(other, ot)) missed = 1;
      const next = isA ? to * size + b : a * size + to;
      const total = least[state]! + cost + missed * unmatched;
      if (total >= least[next]!) return;
      least[next] = total;
      before[next] = state;
      taken[next] = missed === 0 ? piece : piece + 1000;
    };
    if (element.kind !== "run") {
      go(place(element.to), 0, 999);
      return;
    }
    pieces.forEach(({ width, cost }, k) => {
      if (me * grid + width + origin <= element.to) go(me + width / grid, cost, k);
    });
  };
  for (let low = 0; low < size; low++) {
    for (let high = low; high < size; high++) extend(low, high);
    for (let high = low + 1; high < size; high++) extend(high, low);
  }
  const end = ends[0]! * size + ends[1]!;
  if (least[end] === Number.POSITIVE_INFINITY) return null;
  const counts = pieces.filter(({ kind }) => kind >= 0).map(() => 0);
  const closures: number[] = [];
  let missed = 0;
  for (let state = end; state !== start; state = before[state]!) {
    const step = taken[state]!;
    if (step >= 1000) missed += 1;
    const piece = pieces[step % 1000];
    if (step % 1000 === 999 || piece === undefined) continue;
    if (piece.kind < 0) closures.push(piece.width);
    else counts[piece.kind]! += 1;
  }
  return { cost: least[end]!, unmatched: missed, counts, closures };
}
