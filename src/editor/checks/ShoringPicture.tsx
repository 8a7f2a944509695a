// The storeys after one step: slabs darker the more they carry, shores as props, reshores dashed, each with its load.

import type { ShoringLevel } from "./shoringLevels.ts";
import { useCheckWords } from "./useCheckWords.ts";

const WIDTH = 420;
const STOREY = 62;
const SLAB = 17;
const MOST = 9; // storeys drawn; those below stand as they stood
const IN = { left: 76, right: 92, top: 12 } as const;
const PROPS = [0.1, 0.37, 0.63, 0.9] as const;

export interface ShoringPictureProps {
  readonly levels: readonly ShoringLevel[];
  /** The most a slab carries in any step: the darkest. */
  readonly greatest: number;
  readonly label: string;
}

export function ShoringPicture({ levels, greatest, label }: ShoringPictureProps) {
  const { w, rough } = useCheckWords();
  const drawn = levels.slice(-MOST);
  const bottom = IN.top + drawn.length * STOREY + 8;
  const [left, right] = [IN.left, WIDTH - IN.right];
  return (
    <svg
      className="check-picture shores"
      viewBox={`0 0 ${WIDTH} ${bottom + 12}`}
      role="img"
      aria-label={label}
    >
      {drawn.toReversed().map(({ level, slab, shore, support }, index) => {
        const top = IN.top + index * STOREY;
        const isLowest = index === drawn.length - 1;
        const foot = isLowest ? bottom : top + STOREY;
        return (
          <g key={level}>
            <rect
              className="shore-slab"
              x={left}
              y={top}
              width={right - left}
              height={SLAB}
              style={{ fillOpacity: 0.12 + 0.78 * Math.min(1, slab / (greatest || 1)) }}
            />
            <rect className="shore-edge" x={left} y={top} width={right - left} height={SLAB} />
            <text x={left - 10} y={top + 13} textAnchor="end">
              {w("level", { level })}
            </text>
            <text className="shore-figure" x={right + 10} y={top + 13}>
              {rough(slab)}
            </text>
            {support === "none"
              ? null
              : PROPS.map((part) => {
                  const x = left + part * (right - left);
                  return (
                    <path
                      key={part}
                      className={`shore-prop ${support}`}
                      d={`M${x} ${top + SLAB}V${foot}M${x - 7} ${top + SLAB + 1}h14M${x - 7} ${foot - 1}h14`}
                    />
                  );
                })}
            {support === "none" ? null : (
              <text className="shore-load" x={right + 10} y={(top + SLAB + foot) / 2 + 5}>
                ↓ {rough(shore)}
              </text>
            )}
          </g>
        );
      })}
      <path className="shore-ground" d={`M${left - 22} ${bottom}H${right + 22}`} />
      {levels.length > drawn.length ? (
        <text x={left - 10} y={bottom + 4} textAnchor="end">
          …
        </text>
      ) : null}
    </svg>
  );
}
