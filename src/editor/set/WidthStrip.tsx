// A sequence of widths as a strip: standard panels pale, fillers toned and printed bold, a closure hatched.

import type { ChangedSequence } from "../../fill/setChanges.ts";
import { fillerToken, inkOnFillerRule } from "../theme/palette.ts";

export interface WidthStripProps {
  readonly sequence: ChangedSequence;
  readonly standard: ReadonlySet<number>;
  readonly write: (value: number) => string;
}

const BOX = { width: 300, height: 17 };
const LEAST_LABEL = 9; // px

export function WidthStrip({ sequence: { widths, closure }, standard, write }: WidthStripProps) {
  const length = widths.reduce((sum, width) => sum + width, 0);
  const scale = BOX.width / Math.max(1, length);
  let x = 0;
  return (
    <svg className="strip" viewBox={`-1 -1 ${BOX.width + 2} ${BOX.height + 2}`} aria-hidden="true">
      {widths.map((width, k) => {
        const left = x;
        x += width * scale;
        const isFiller = k !== closure && !standard.has(width);
        const kind = k === closure ? "closure" : isFiller ? "filler" : "panel";
        const text = write(width);
        const wide = width * scale;
        const isLevel = text.length * 5.6 + 2 <= wide;
        const middle = left + wide / 2;
        return (
          <g key={left} className={`strip-${kind}`}>
            <rect
              x={left}
              y="0"
              width={Math.max(3, wide)}
              height={BOX.height}
              style={isFiller ? { fill: `var(--${fillerToken(width)})` } : undefined}
            />
            {wide < LEAST_LABEL || !isLevel ? null : (
              <text x={middle} y="12" style={isFiller ? { fill: inkOnFillerRule(width) } : undefined}>
                {text}
              </text>
            )}
          </g>
        );
      })}
    </svg>
  );
}
