// Which of the known words did somebody mean who wrote another one?

/**
 * The known word nearest to `word` by slips of the keyboard (a letter missing, added, changed, two swapped), or
 * null if none is near. A word that begins another counts as near. Equals: the first known.
 */
export function nearest(word: string, known: readonly string[]): string | null {
  const written = word.toLowerCase();
  let best: string | null = null;
  let least = Math.max(2, Math.floor(written.length / 3)) + 1;
  for (const candidate of known) {
    const begins = written.length > 1 && (candidate.startsWith(written) || written.startsWith(candidate));
    const slips = begins ? 1 : slipsBetween(written, candidate);
    if (slips < least && slips < candidate.length) {
      best = candidate;
      least = slips;
    }
  }
  return best;
}

/**
 * The least number of slips that turn one word into the other, none of them touching a letter twice.
 *
 * @see F. J. Damerau, A technique for computer detection and correction of spelling errors, CACM 7 (1964)
 */
function slipsBetween(one: string, other: string): number {
  const width = other.length + 1;
  const slips = new Int32Array((one.length + 1) * width);
  for (let i = 0; i <= one.length; i++) {
    for (let j = 0; j <= other.length; j++) {
      if (i === 0 || j === 0) {
        slips[i * width + j] = i + j;
        continue;
      }
      const changed = slips[(i - 1) * width + j - 1]! + (one[i - 1] === other[j - 1] ? 0 : 1);
      let least = Math.min(changed, slips[(i - 1) * width + j]! + 1, slips[i * width + j - 1]! + 1);
      const isSwap = i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1];
      if (isSwap) least = Math.min(least, slips[(i - 2) * width + j - 2]! + 1);
      slips[i * width + j] = least;
    }
  }
  return slips[slips.length - 1]!;
}
