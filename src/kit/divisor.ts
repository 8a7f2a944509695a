// The grid a set of lengths lies on.

/** Greatest common divisor of two whole numbers that are not negative. */
export function commonDivisor(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}
