// Round figures along an axis of a picture.

/** From 0 to at least `greatest` in some five steps of 1, 2 or 5. */
export function ticksTo(greatest: number): readonly number[] {
  const step = stepFor(greatest);
  const count = Math.max(1, Math.ceil(greatest / step - 1e-9));
  return Array.from({ length: count + 1 }, (_, k) => k * step);
}

/** From a round figure at or under `least` to one at or over `greatest`. */
export function ticksBetween(least: number, greatest: number): readonly number[] {
  const step = stepFor(greatest - least);
  const first = Math.floor(least / step + 1e-9);
  const last = Math.max(first + 1, Math.ceil(greatest / step - 1e-9));
  return Array.from({ length: last - first + 1 }, (_, k) => (first + k) * step);
}

const STEPS = 5;

function stepFor(range: number): number {
  if (!(range > 0)) return 1;
  const rough = range / STEPS;
  const power = 10 ** Math.floor(Math.log10(rough));
  const found = [1, 2, 5, 10].find((each) => each * power >= rough * (1 - 1e-9)) ?? 10;
  return found * power;
}
