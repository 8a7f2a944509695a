// Counts and lists in sentences about a kit.

const MOST_LISTED = 5;

/** "1 tie row", "3 tie rows". */
export function count(number: number, noun: string): string {
  return number === 1 ? `1 ${noun}` : `${number} ${noun}s`;
}

/** The first five words, and how many more there are. */
export function listed(words: readonly string[]): string {
  const shown = words.slice(0, MOST_LISTED).join(", ");
  return words.length > MOST_LISTED ? `${shown} and ${words.length - MOST_LISTED} more` : shown;
}
