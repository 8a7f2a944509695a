// What a person reads on the screen about what the choice changed: which sizes, where, and why fillers stay.

import type { FillDocument } from "../fill/result.ts";
import type { CodeChange } from "../fill/setChanges.ts";

const SHOWN_SIZES = 6;
const SHOWN_CAUSES = 3;

/** A few lines; empty for a fill without a set, one line where nothing was changed. */
export function changesSummary({ set }: Pick<FillDocument, "set">): string {
  const changes = set?.changes;
  if (changes === undefined) return "";
  const { intervals, codes, causes } = changes;
  if (intervals.length === 0) return "Every interval is filled as by itself.\n";
  const units = new Set(intervals.map(({ unit }) => unit)).size;
  const where = `${plural(intervals.length, "interval")} of ${plural(units, "unit")}`;
  const sizes = codes
    .filter(({ family, needed }) => family === "wall-panel" && needed.before !== needed.after)
    .sort((a, b) => moved(b) - moved(a));
  const shown = sizes
    .slice(0, SHOWN_SIZES)
    .map(({ code, needed }) => `${code} ${needed.before} to ${needed.after}`);
  const more = sizes.length - shown.length;
  const rest = more > 0 ? [`${plural(more, "more size")}`] : [];
  return [
    `Changed against filling every wall by itself: ${where}${shown.length === 0 ? "" : `; needed ${[...shown, ...rest].join(", ")}`}.`,
    ...causes.slice(0, SHOWN_CAUSES).map(({ message }) => `  ${message}`),
    ...(causes.length > SHOWN_CAUSES
      ? [`  … and ${plural(causes.length - SHOWN_CAUSES, "more cause")}.`]
      : []),
    "",
  ].join("\n");
}

const moved = ({ needed }: CodeChange) => Math.abs(needed.after - needed.before);

function plural(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
