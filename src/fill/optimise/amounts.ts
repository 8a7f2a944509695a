// Amounts as whole numbers of one smallest unit, so that sums and bounds are exact.

export interface Amounts {
  /** Units in 1: a power of ten. */
  readonly scale: number;
  /** In units; an amount finer than the unit is rounded. */
  readonly whole: (amount: number) => number;
}

const MOST_DECIMALS = 6;
const DUST = 1e-7;

/**
 * The unit in which all of these amounts are whole, 10⁻⁶ at the finest.
 *
 * @param times - how often amounts may add up at most: with so many the sums of thousandths stay below 2^53
 */
export function amountsOf(values: readonly number[], times: number): Amounts {
  const greatest = values.reduce((most, value) => Math.max(most, value), 1);
  let scale = 1;
  for (let decimals = 0; decimals < MOST_DECIMALS; decimals++) {
    if (values.every((value) => isWhole(value * scale))) break;
    if (greatest * scale * 10 * times * 1000 > Number.MAX_SAFE_INTEGER / 2) break;
    scale *= 10;
  }
  return { scale, whole: (amount) => Math.round(amount * scale) };
}

function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) < DUST * Math.max(1, Math.abs(value));
}

/** The greatest number that divides all of these; 1 where all are 0. */
export function greatestDivisor(values: readonly number[]): number {
  let divisor = 0;
  for (const value of values) for (let b = value; b !== 0; ) [divisor, b] = [b, divisor % b];
  return Math.abs(divisor) || 1;
}
