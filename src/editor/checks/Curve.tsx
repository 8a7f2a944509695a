// A curve over the hours since placing: temperature or strength, with marks on either axis.

import { ticksBetween, ticksTo } from "./axis.ts";
import { useCheckWords } from "./useCheckWords.ts";

const WIDTH = 640;
const HEIGHT = 190;
const IN = { left: 46, right: 16, top: 24, bottom: 34 } as const;

export interface CurveMark {
  readonly at: number;
  readonly text: string;
}

export interface CurveProps {
  readonly label: string;
  readonly unit: string;
  readonly points: readonly (readonly [hour: number, value: number])[];
  /** The axis reaches so far whatever the points. */
  readonly until: number;
  readonly hours: readonly CurveMark[];
  readonly values: readonly CurveMark[];
}

export function Curve({ label, unit, points, until, hours, values }: CurveProps) {
  const { w, rough: text } = useCheckWords();
  const all = [...points.map(([, value]) => value), ...values.map(({ at }) => at)];
  const across = ticksTo(Math.max(until, ...points.map(([hour]) => hour), ...hours.map(({ at }) => at)));
  const up = ticksBetween(Math.min(...all), Math.max(...all));
  const [last, low, high] = [across.at(-1) ?? 1, up[0] ?? 0, up.at(-1) ?? 1];
  const x = (hour: number) => IN.left + (hour / last) * (WIDTH - IN.left - IN.right);
  const y = (value: number) =>
    HEIGHT - IN.bottom - ((value - low) / (high - low)) * (HEIGHT - IN.top - IN.bottom);
  return (
    <svg className="check-picture" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label}>
      {up.map((value) => (
        <g key={value}>
          <path className="grid-line" d={`M${IN.left} ${y(value)}H${WIDTH - IN.right}`} />
          <text x={IN.left - 8} y={y(value) + 4} textAnchor="end">
            {text(value)}
          </text>
        </g>
      ))}
      {across.map((hour) => (
        <text key={hour} x={x(hour)} y={HEIGHT - IN.bottom + 16} textAnchor="middle">
          {text(hour)}
        </text>
      ))}
      <path className="axis-line" d={`M${IN.left} ${IN.top}V${y(low)}H${WIDTH - IN.right}`} />
      {values.map(({ at, text: said }) => (
        <g key={said} className="curve-mark">
          <path d={`M${IN.left} ${y(at)}H${WIDTH - IN.right}`} />
          <text x={IN.left + 6} y={y(at) - 5}>
            {said}
          </text>
        </g>
      ))}
      {hours.map(({ at, text: said }) => (
        <g key={said} className="curve-mark">
          <path d={`M${x(at)} ${IN.top - 4}V${y(low)}`} />
          <text x={x(at)} y={IN.top - 9} textAnchor={x(at) > WIDTH - 80 ? "end" : "middle"}>
            {said}
          </text>
        </g>
      ))}
      <polyline
        className="curve-line"
        points={points.map(([hour, value]) => `${x(hour)},${y(value)}`).join(" ")}
      />
      {points.length <= 60
        ? points.map(([hour, value]) => (
            <circle key={hour} className="curve-dot" cx={x(hour)} cy={y(value)} r="2.2" />
          ))
        : null}
      <text x={IN.left - 8} y={IN.top - 10} textAnchor="end">
        {unit}
      </text>
      <text x={WIDTH - IN.right} y={HEIGHT - 4} textAnchor="end">
        {w("hours")}
      </text>
    </svg>
  );
}
