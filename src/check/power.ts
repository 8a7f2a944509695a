// Powers, exponentials and logarithms, the same to the last bit on every machine.
//
// What the language offers for these may differ in the last digit from one engine to the next, so here they are made of
// + − × ÷ alone: the number is cut down by powers of two, and a short series does the rest. Both are true to within a few
// units in the fifteenth digit.

/** ln 2, whose first part has so few digits that a whole multiple of it up to a thousand is exact, and the rest. */
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
const LN2 = Math.LN2;
const LN10 = Math.LN10;
const SQRT_HALF = Math.SQRT1_2;

/** Beyond these an exponential is no useful figure for a check. */
const GREATEST_EXPONENT = 700;
const TERMS = 22;

/**
 * e to the power `x`.
 *
 * @param x - −700 to 700
 * @throws {RangeError} outside that
 */
export function exponential(x: number): number {
  if (!(Math.abs(x) <= GREATEST_EXPONENT)) throw new RangeError(`no exponential of ${x}`);
  const halvings = Math.round(x / LN2);
  const rest = x - halvings * LN2_HIGH - halvings * LN2_LOW;
  let sum = 1;
  for (let k = TERMS; k >= 1; k--) sum = 1 + (sum * rest) / k;
  return scaledByTwo(sum, halvings);
}

/**
 * The natural logarithm.
 *
 * @param x - greater than 0, finite
 * @throws {RangeError} otherwise
 */
export function logarithm(x: number): number {
  if (!(x > 0) || x === Number.POSITIVE_INFINITY) throw new RangeError(`no logarithm of ${x}`);
  let mantissa = x;
  let doublings = 0;
  for (; mantissa >= 2 * SQRT_HALF; doublings++) mantissa /= 2;
  for (; mantissa < SQRT_HALF; doublings--) mantissa *= 2;
  // ln m = 2·(t + t³/3 + t⁵/5 + …), t = (m − 1)/(m + 1), which is at most 0.1716 here
  const t = (mantissa - 1) / (mantissa + 1);
  const square = t * t;
  let sum = 0;
  for (let odd = 2 * TERMS + 1; odd >= 3; odd -= 2) sum = square * (sum + 1 / odd);
  return doublings * LN2_HIGH + (doublings * LN2_LOW + 2 * t * (1 + sum));
}

/** The logarithm to base ten, of a number greater than 0. */
export function decimalLogarithm(x: number): number {
  return logarithm(x) / LN10;
}

/** `base` to a power that need not be whole; 0 to a positive power is 0. `base` from 0 on, else a RangeError. */
export function power(base: number, exponent: number): number {
  if (base === 0 && exponent > 0) return 0;
  return exponential(exponent * logarithm(base));
}

function scaledByTwo(value: number, doublings: number): number {
  let scaled = value;
  for (let k = 0; k < Math.abs(doublings); k++) scaled = doublings > 0 ? scaled * 2 : scaled / 2;
  return scaled;
}
