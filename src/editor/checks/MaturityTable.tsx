// How far the slab has come at each reading of its log, as a table that opens in pieces.

import { useState } from "react";
import type { MaturityPoint } from "../../assess/checkDocument.ts";
import { useCheckWords } from "./useCheckWords.ts";

const AT_ONCE = 50; // readings

export function MaturityTable({ points }: { points: readonly MaturityPoint[] }) {
  const { w, figure, rough } = useCheckWords();
  const [shown, setShown] = useState(AT_ONCE);
  if (points.length === 0) return null;
  const more = Math.min(AT_ONCE, points.length - shown);
  const text = (value: number | null) => (value === null ? w("none") : rough(value));
  return (
    <details className="maturity">
      <summary>{w("maturity")}</summary>
      <table>
        <thead>
          <tr>
            {(["hour", "temperature", "sum", "age", "strength"] as const).map((head) => (
              <th key={head} scope="col">
                {w(`maturity-${head}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {points.slice(0, shown).map(({ hour, temperature, maturity, age, strength }) => (
            <tr key={hour}>
              <th scope="row">{figure(hour)}</th>
              <td>{figure(temperature)}</td>
              <td>{text(maturity)}</td>
              <td>{text(age)}</td>
              <td>{text(strength)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {more > 0 ? (
        <button type="button" className="act" onClick={() => setShown(shown + more)}>
          {w("more-readings", { count: more })}
        </button>
      ) : null}
    </details>
  );
}
