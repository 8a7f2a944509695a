// What a colleague works out with a pocket calculator: pressure on a form, strips, a beam over supports, shoring. It
// shares no code with the program and takes other ways: numbers instead of closed forms where that is plainer.

/** Pressure in kPa at a height of z m under a surface at H m. */
export type Pressure = (z: number) => number;

export interface Width {
  readonly from: number;
  readonly to: number;
  readonly width: number;
}

const POINTS = 400;

/** ∫ f over a stretch, by the midpoints of many slices. */
function integral(f: (z: number) => number, a: number, b: number): number {
  const step = (b - a) / POINTS;
  let sum = 0;
  for (let k = 0; k < POINTS; k++) sum += f(a + (k + 0.5) * step);
  return sum * step;
}

/** Over every place where width or pressure has a kink, so that the slices never straddle one. */
export function cutIntegral(
  f: (z: number) => number,
  a: number,
  b: number,
  kinks: readonly number[],
): number {
  const places = [a, ...kinks.filter((z) => z > a && z < b).sort((x, y) => x - y), b];
  return places.slice(1).reduce((sum, end, k) => sum + integral(f, places[k]!, end), 0);
}

export interface Line {
  readonly rows: readonly number[];
  readonly widths: readonly Width[];
  readonly pressure: Pressure;
  readonly knee: number;
}

export function widthAt(widths: readonly Width[], z: number): number {
  return widths.find(({ from, to }) => z >= from && z < to)?.width ?? 0;
}

export function stripLoads({ rows, widths, pressure, knee }: Line) {
  const foot = widths[0]!.from;
  const top = widths[widths.length - 1]!.to;
  const load = (z: number) => pressure(z) * widthAt(widths, z);
  const kinks = [knee, ...widths.flatMap(({ from, to }) => [from, to])];
  return rows.map((row, k) => {
    const from = k === 0 ? foot : (rows[k - 1]! + row) / 2;
    const to = k === rows.length - 1 ? top : (rows[k + 1]! + row) / 2;
    const area = cutIntegral((z) => widthAt(widths, z), from, to, kinks);
    return { from, to, area, force: cutIntegral(load, from, to, kinks) };
  });
}

/** Reactions and moments by the deflections that supports undo: force method with a beam on its outer supports. */
export function beamOver(line: Line): {
  readonly reactions: readonly number[];
  readonly moments: readonly number[];
} {
  const { rows, widths, pressure, knee } = line;
  const foot = widths[0]!.from;
  const top = widths[widths.length - 1]!.to;
  const kinks = [knee, ...widths.flatMap(({ from, to }) => [from, to]), ...rows];
  const load = (z: number) => pressure(z) * widthAt(widths, z);
  const total = cutIntegral(load, foot, top, kinks);
  if (rows.length === 1) return { reactions: [total], moments: [0] };
  const [a, b] = [rows[0]!, rows[rows.length - 1]!];
  const inner = rows.slice(1, -1);
  // Bending of the beam on its outer supports alone, under the load and under one at each inner support.
  const grid = gridOf(
    [...new Set([foot, top, ...kinks].filter((z) => z >= foot && z <= top))].sort((x, y) => x - y),
  );
  const momentOfLoad = (z: number) => bending(z, load, { a, b, foot, top, kinks });
  const momentOfOne = (at: number) => (z: number) =>
    z <= a || z >= b ? 0 : z < at ? -((b - at) / (b - a)) * (z - a) : -((at - a) / (b - a)) * (b - z);
  const loads = grid.map(({ z }) => momentOfLoad(z));
  const ones = inner.map((at) => grid.map(({ z }) => momentOfOne(at)(z)));
  const dot = (p: readonly number[], q: readonly number[]) =>
    grid.reduce((sum, { weight }, k) => sum + weight * p[k]! * q[k]!, 0);
  const matrix = ones.map((one) => ones.map((other) => dot(one, other)));
  const right = ones.map((one) => -dot(one, loads));
  const redundant = solved(matrix, right);
  const momentAt = (z: number) =>
    momentOfLoad(z) + inner.reduce((sum, at, k) => sum + redundant[k]! * momentOfOne(at)(z), 0);
  const turn = cutIntegral((z) => load(z) * (z - a), foot, top, kinks);
  const last = (turn - inner.reduce((sum, at, k) => sum + redundant[k]! * (at - a), 0)) / (b - a);
  const first = total - last - redundant.reduce((sum, force) => sum + force, 0);
  return { reactions: [first, ...redundant, last], moments: rows.map(momentAt) };
}

interface Span {
  readonly a: number;
  readonly b: number;
  readonly foot: number;
  readonly top: number;
  readonly kinks: readonly number[];
}

// From the foot up: load below turns the beam over, the first support holds it from a on.
function bending(z: number, load: (z: number) => number, { a, b, foot, top, kinks }: Span): number {
  const turn = cutIntegral((s) => load(s) * (b - s), foot, top, kinks);
  const reaction = turn / (b - a);
  const far = cutIntegral(load, foot, top, kinks) - reaction;
  const over = cutIntegral((s) => load(s) * (z - s), foot, Math.max(z, foot), kinks);
  return -over + (z > a ? reaction * (z - a) : 0) + (z > b ? far * (z - b) : 0);
}

/** Gauss points: two a stretch, many stretches between the kinks. */
function gridOf(places: readonly number[]): readonly { readonly z: number; readonly weight: number }[] {
  const cuts = 24;
  return places.slice(1).flatMap((end, k) => {
    const start = places[k]!;
    const step = (end - start) / cuts;
    return Array.from({ length: cuts }, (_, n) => n).flatMap((n) => {
      const middle = start + (n + 0.5) * step;
      const aside = step / 2 / Math.sqrt(3);
      return [middle - aside, middle + aside].map((z) => ({ z, weight: step / 2 }));
    });
  });
}

function solved(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const rows = matrix.map((row, k) => [...row, right[k]!]);
  for (let k = 0; k < rows.length; k++) {
    for (let i = k + 1; i < rows.length; i++) {
      const part = rows[i]![k]! / rows[k]![k]!;
      for (let j = k; j <= rows.length; j++) rows[i]![j]! -= part * rows[k]![j]!;
    }
  }
  const answer = new Array<number>(rows.length).fill(0);
  for (let k = rows.length - 1; k >= 0; k--) {
    let rest = rows[k]![rows.length]!;
    for (let j = k + 1; j < rows.length; j++) rest -= rows[k]![j]! * answer[j]!;
    answer[k] = rest / rows[k]![k]!;
  }
  return answer;
}

/** Slab and shore loads step by step, told by the names of the steps alone. */
export function shoringBook(steps: readonly string[]) {
  let slabs: number[] = [];
  let stands: boolean[] = [];
  return steps.map((step) => {
    const [what, which] = step.split(" ");
    const level = Number(which);
    const under = (k: number) => slabs.slice(k).reduce((sum, carried) => sum + 1 - carried, 0);
    if (what === "pour") {
      const lowest = stands.lastIndexOf(false); // the highest slab that nothing props
      const sharing = slabs.length - lowest;
      slabs = slabs.map((carried, k) => (lowest >= 0 && k >= lowest ? carried + 1 / sharing : carried));
      slabs.push(0);
      stands.push(true);
    } else if (what === "remove") {
      const given = under(level - 1) / (slabs.length - level + 1);
      slabs = slabs.map((carried, k) => (k >= level - 1 ? carried + given : 1));
      stands = stands.map((stood, k) => (k === level - 1 ? false : stood));
    } else stands[level - 1] = true;
    return { slabs: [...slabs], shores: slabs.map((_, k) => (stands[k] ? under(k) : 0)) };
  });
}
