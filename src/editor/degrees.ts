// From an angle that somebody typed to the cosine and sine that edits take. The way back is `geom/angle.ts`.

/** Cosine and sine of a turn. */
export interface TurnPair {
  readonly cosine: number;
  readonly sine: number;
}

const DEGREE = Math.PI / 180;
const TERMS = 12; // at 45° the first term left out is below 1e-20

/**
 * Cosine and sine of an angle in degrees, counter-clockwise positive. Quarter turns are exact.
 *
 * @throws {RangeError} if the angle is not finite
 */
export function degreesToTurn(degrees: number): TurnPair {
  if (!Number.isFinite(degrees)) throw new RangeError("an angle must be a finite number");
  const quarters = Math.round(degrees / 90);
  const rest = degrees - quarters * 90; // −45 to 45
  const cosine = series(rest * DEGREE, 0);
  const sine = series(rest * DEGREE, 1);
  switch (((quarters % 4) + 4) % 4) {
    case 0:
      return { cosine, sine };
    case 1:
      return { cosine: 0 - sine, sine: cosine };
    case 2:
      return { cosine: 0 - cosine, sine: 0 - sine };
    default:
      return { cosine: sine, sine: 0 - cosine };
  }
}

// The alternating power series from x^first / first! on: cosine from 0, sine from 1.
function series(x: number, first: 0 | 1): number {
  let sum = 0;
  let term = first === 0 ? 1 : x;
  for (let n = first + 1; n < first + 2 * TERMS; n += 2) {
    sum += term;
    term *= (-x * x) / (n * (n + 1));
  }
  return sum;
}
