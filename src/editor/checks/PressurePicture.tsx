// The pressure of the fresh concrete over the height of a placing, with what panels bear as a line.

import type { PressureTable } from "../../assess/checkDocument.ts";
import { ticksTo } from "./axis.ts";
import { useCheckWords } from "./useCheckWords.ts";

const WIDTH = 460;
const HEIGHT = 330;
const IN = { left: 46, right: 30, top: 34, bottom: 42 } as const;

export interface PressurePictureProps {
  readonly table: PressureTable;
  /** What panels bear, kPa, as the pressure is given; null = the kit does not say. */
  readonly limit: number | null;
}

export function PressurePicture({ table, limit }: PressurePictureProps) {
  const { w, rough: text } = useCheckWords();
  const { points, greatest } = table;
  const top = Math.max(...points.map(({ z }) => z));
  const across = ticksTo(Math.max(greatest, limit ?? 0) * 1.08);
  const up = ticksTo(top / 1000);
  const [most, highest] = [across.at(-1) ?? 1, Math.max(up.at(-2) ?? 0, top / 1000)];
  const x = (pressure: number) => IN.left + (pressure / most) * (WIDTH - IN.left - IN.right);
  const y = (metres: number) => HEIGHT - IN.bottom - (metres / highest) * (HEIGHT - IN.top - IN.bottom);
  const outline = points.map(({ z, pressure }) => `${x(pressure)},${y(z / 1000)}`);
  const isOver = limit !== null && greatest > limit;
  return (
    <svg
      className="check-picture"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={w("pressure-diagram", { greatest: text(greatest), height: text(top / 1000) })}
    >
      <defs>
        <pattern
          id="pressed"
          width="7"
          height="7"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0v7" className="press-hatch" />
        </pattern>
      </defs>
      {up
        .filter((metres) => metres <= highest)
        .map((metres) => (
          <g key={metres}>
            <path className="grid-line" d={`M${IN.left} ${y(metres)}H${WIDTH - IN.right}`} />
            <text x={IN.left - 8} y={y(metres) + 4} textAnchor="end">
              {text(metres)}
            </text>
          </g>
        ))}
      {across.map((pressure) => (
        <text key={pressure} x={x(pressure)} y={HEIGHT - IN.bottom + 18} textAnchor="middle">
          {text(pressure)}
        </text>
      ))}
      <polygon
        className="press-area"
        points={[`${x(0)},${y(0)}`, ...outline, `${x(0)},${y(top / 1000)}`].join(" ")}
      />
      <polygon
        fill="url(#pressed)"
        points={[`${x(0)},${y(0)}`, ...outline, `${x(0)},${y(top / 1000)}`].join(" ")}
      />
      <polyline className="press-line" points={outline.join(" ")} />
      <path className="axis-line" d={`M${x(0)} ${IN.top - 6}V${y(0)}H${WIDTH - IN.right}`} />
      {limit === null ? null : (
        <g className={isOver ? "press-limit over" : "press-limit"}>
          <path d={`M${x(limit)} ${IN.top - 8}V${y(0)}`} />
          <text x={Math.min(x(limit), WIDTH - 78)} y={IN.top - 14} textAnchor="middle">
            {w("panel-limit", { limit: text(limit) })}
          </text>
        </g>
      )}
      <circle className="press-dot" cx={x(greatest)} cy={y(0)} r="3.5" />
      <text className="press-figure" x={x(greatest) - 7} y={y(0) - 9} textAnchor="end">
        {text(greatest)}
      </text>
      <text x={WIDTH - IN.right} y={HEIGHT - 6} textAnchor="end">
        {w("pressure-axis")}
      </text>
      <text x={IN.left - 8} y={IN.top - 14} textAnchor="end">
        m
      </text>
    </svg>
  );
}
