// The numbers of the program and what each of them counts.

declare const unit: unique symbol;

/** A length in the plan or the building, millimetres. Whole wherever a piece is concerned. */
export type Mm = number;

/** A length on a sheet of paper, millimetres of paper. Branded, so that a plan length is never drawn unscaled. */
export type PaperMm = number & { readonly [unit]: "PaperMm" };

/** Marks a number as a length on paper. */
export function paperMm(value: number): PaperMm {
  return value as PaperMm;
}

/** A length of formulas whose figures are in metres. */
export type Metre = number;

/** A mass, kg. */
export type Kg = number;

/** An area, m². */
export type SquareMetre = number;

/** A load on an area, kPa = kN/m². */
export type KiloPascal = number;

/** A force, kN. */
export type KiloNewton = number;

/** What a cubic metre weighs, kN/m³. */
export type KiloNewtonPerCubicMetre = number;

/** A time, days. */
export type Day = number;

/** A time, hours. */
export type Hour = number;

/** How fast fresh concrete rises in the forms, m/h. */
export type MetrePerHour = number;

/** A temperature, °C. */
export type Celsius = number;

/** A strength or a stress, MPa = N/mm². */
export type MegaPascal = number;

/** Area of a rectangle given in mm, as m². */
export function squareMetres(width: Mm, height: Mm): SquareMetre {
  return (width * height) / 1e6;
}

const SCALES = [1, 10, 100, 1000, 1e4, 1e5, 1e6] as const;

/**
 * Rounds half away from zero to `decimals` places and never gives −0.
 *
 * The nudge of a few units in the last place undoes binary noise such as 1.005 → 1.00499999…, so that the same
 * figure prints the same on every machine.
 *
 * @param decimals - 0 to 6
 * @throws {RangeError} if `decimals` is not a whole number from 0 to 6
 */
export function roundTo(value: number, decimals: number): number {
  const scale = SCALES[decimals];
  if (scale === undefined) throw new RangeError("decimals must be a whole number from 0 to 6");
  const scaled = Math.abs(value) * scale;
  const rounded = Math.floor(scaled + 0.5 + scaled * 4 * Number.EPSILON) / scale;
  return value < 0 && rounded !== 0 ? -rounded : rounded;
}

/** Digits in which the value of a check is given. */
const SIGNIFICANT = 6;

/**
 * Rounds half away from zero to six significant digits and never gives −0. Works on the fifteen decimal digits that a
 * double surely has, so that binary noise decides nothing and every machine prints the same figure.
 *
 * @throws {RangeError} if `value` is not finite
 */
export function roundSignificant(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError("a number must be finite to be rounded");
  const [mantissa = "", exponent = "0"] = Math.abs(value).toExponential(14).split("e");
  const digits = mantissa.replace(".", "");
  const kept = Number(digits.slice(0, SIGNIFICANT)) + (digits.charAt(SIGNIFICANT) >= "5" ? 1 : 0);
  const rounded = Number(`${kept}e${Number(exponent) - SIGNIFICANT + 1}`);
  return value < 0 && rounded !== 0 ? -rounded : rounded;
}

const PERCENT_STEPS = 1000; // of a percent

/** `part` of `whole` in percent, rounded up to a thousandth; 0 of nothing. */
export function percentUp(part: number, whole: number): number {
  if (part <= 0 || whole <= 0) return 0;
  const exact = (100 * PERCENT_STEPS * part) / whole;
  // A whole number of thousandths but for the dust of the division is that number.
  const nearest = Math.round(exact);
  return (Math.abs(exact - nearest) < 1e-6 ? nearest : Math.ceil(exact)) / PERCENT_STEPS;
}
