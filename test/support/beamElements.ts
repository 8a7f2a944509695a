// Reactions of a stiff beam on rigid supports by finite elements: an outside answer for the three-moment equation.

/**
 * @param supports - whole multiples of `step` above 0
 * @param load - kN/m at a height in m
 */
export function beamElements(
  { supports, height, step = 0.05 }: { supports: readonly number[]; height: number; step?: number },
  load: (z: number) => number,
): readonly number[] {
  const elements = Math.round(height / step);
  const size = 2 * (elements + 1);
  const stiffness = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const force = new Array<number>(size).fill(0);
  const [l, l2, l3] = [step, step * step, step * step * step];
  const element = [
    [12 / l3, 6 / l2, -12 / l3, 6 / l2],
    [6 / l2, 4 / l, -6 / l2, 2 / l],
    [-12 / l3, -6 / l2, 12 / l3, -6 / l2],
    [6 / l2, 2 / l, -6 / l2, 4 / l],
  ];
  for (let e = 0; e < elements; e++) {
    const [p, q] = [load(e * l + 1e-9), load((e + 1) * l - 1e-9)];
    const loads = [
      (l * (7 * p + 3 * q)) / 20,
      l2 * (p / 20 + q / 30),
      (l * (3 * p + 7 * q)) / 20,
      -l2 * (p / 30 + q / 20),
    ];
    for (let i = 0; i < 4; i++) {
      force[2 * e + i]! += loads[i]!;
      for (let j = 0; j < 4; j++) stiffness[2 * e + i]![2 * e + j]! += element[i]![j]!;
    }
  }
  const held = new Set(supports.map((z) => 2 * Math.round(z / step)));
  const free = Array.from({ length: size }, (_, k) => k).filter((k) => !held.has(k));
  const solved = solve(
    free.map((i) => free.map((j) => stiffness[i]![j]!)),
    free.map((i) => force[i]!),
  );
  const moved = new Array<number>(size).fill(0);
  free.forEach((i, k) => {
    moved[i] = solved[k]!;
  });
  return supports.map((z) => {
    const i = 2 * Math.round(z / step);
    return force[i]! - stiffness[i]!.reduce((sum, s, j) => sum + s * moved[j]!, 0);
  });
}

function solve(matrix: number[][], right: number[]): number[] {
  const n = right.length;
  for (let k = 0; k < n; k++) {
    for (let i = k + 1; i < n; i++) {
      const part = matrix[i]![k]! / matrix[k]![k]!;
      if (part === 0) continue;
      for (let j = k; j < n; j++) matrix[i]![j]! -= part * matrix[k]![j]!;
      right[i]! -= part * right[k]!;
    }
  }
  const found = new Array<number>(n).fill(0);
  for (let k = n - 1; k >= 0; k--) {
    let sum = right[k]!;
    for (let j = k + 1; j < n; j++) sum -= matrix[k]![j]! * found[j]!;
    found[k] = sum / matrix[k]![k]!;
  }
  return found;
}
