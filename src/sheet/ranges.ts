// Numbers in few words: "1–10, 14".

/** Runs of three and more as first and last; numbers in any order, each once. */
export function rangesText(numbers: readonly number[]): string {
  const sorted = [...new Set(numbers)].sort((a, b) => a - b);
  const parts: string[] = [];
  for (let k = 0; k < sorted.length; ) {
    let end = k;
    while (sorted[end + 1] === sorted[end]! + 1) end++;
    if (end - k >= 2) parts.push(`${sorted[k]}–${sorted[end]}`);
    else parts.push(...sorted.slice(k, end + 1).map(String));
    k = end + 1;
  }
  return parts.join(", ");
}
