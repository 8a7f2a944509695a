// The search as two lines that approach each other: solid the best so far, dashed what no choice can undercut.

import { chartLines } from "./chart.ts";
import type { Told } from "./optimiser.ts";
import { type SayAmount, useSetWords } from "./useSetWords.ts";

const BOX = { width: 320, height: 84 };
const SIDE = 4; // px round the lines, so that they are not cut

export function ProgressChart({ told, amount }: { told: readonly Told[]; amount: SayAmount }) {
  const w = useSetWords();
  const lines = chartLines(told, BOX);
  const last = told.at(-1);
  if (lines === null || last === undefined) return null;
  return (
    <svg
      className="set-chart"
      role="img"
      aria-label={w("chart", { best: amount(last.best, 2), bound: amount(last.bound, 2) })}
      viewBox={`${-SIDE} ${-SIDE} ${BOX.width + 2 * SIDE} ${BOX.height + 2 * SIDE}`}
      preserveAspectRatio="none"
    >
      <path d={lines.between} className="chart-between" />
      <path d={lines.bound} className="chart-bound" />
      <path d={lines.best} className="chart-best" />
    </svg>
  );
}
