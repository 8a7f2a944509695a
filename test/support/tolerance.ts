// Is a figure near enough to a published one, as a part of it?

/** For `toSatisfy`: |figure − expected| ≤ part × |expected|. */
export function within(expected: number, part: number): (figure: number) => boolean {
  return (figure) => Math.abs(figure - expected) <= part * Math.abs(expected);
}
