// How is an allowed deviation written: one figure where less and more are alike, else both with their signs?

import type { ToleranceRow } from "../../assess/checkDocument.ts";

const MINUS = "\u2212";

/** "± 10" or "− 6 / + 10", figures as `figure` writes them; null where the rule gives none. */
export function deviationText(
  { less, more }: Pick<ToleranceRow, "less" | "more">,
  figure: (value: number) => string,
): string | null {
  if (less === null || more === null) return null;
  if (less === more) return `\u00b1\u202f${figure(more)}`;
  return `${MINUS}\u202f${figure(less)} / +\u202f${figure(more)}`;
}
