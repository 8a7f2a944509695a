// Angles in degrees out of + − × ÷ and square roots alone, so that every machine prints the same figure.

const HALVINGS = 3;
const TERMS = 7; // after three halvings the argument is at most 0.0985, whose 15th power over 15 is below 1e-16
const DEGREES = 180 / Math.PI;

/**
 * Angle from direction (ax, ay) counter-clockwise to (bx, by), degrees, 0 ≤ angle < 360, to 1e-9.
 * The quarter turns come out exactly. The directions need not be of unit length.
 */
export function angleBetween(ax: number, ay: number, bx: number, by: number): number {
  const sine = ax * by - ay * bx;
  const cosine = ax * bx + ay * by;
  if (sine === 0) return cosine < 0 ? 180 : 0;
  if (cosine === 0) return sine > 0 ? 90 : 270;
  const flat = Math.abs(sine) <= Math.abs(cosine);
  const acute = arctangent(flat ? Math.abs(sine / cosine) : Math.abs(cosine / sine)) * DEGREES;
  const first = flat ? acute : 90 - acute;
  const upper = cosine > 0 ? first : 180 - first;
  const angle = sine > 0 ? upper : 360 - upper;
  return angle < 360 ? angle : 0;
}

/**
 * Arctangent of 0 ≤ x ≤ 1, radians. Each halving uses tan(a/2) = tan a / (1 + √(1 + tan² a)); the rest is the
 * alternating series.
 *
 * @see M. Abramowitz, I. Stegun, Handbook of Mathematical Functions, 1964, 4.4.42
 */
function arctangent(x: number): number {
  let t = x;
  for (let i = 0; i < HALVINGS; i++) t /= 1 + Math.sqrt(1 + t * t);
  const square = t * t;
  let sum = 0;
  for (let k = TERMS; k >= 0; k--) sum = 1 / (2 * k + 1) - square * sum;
  return 8 * t * sum;
}
