// One piece of the table: what is owned can be typed, the rest is counted.

import { useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import { formatChange, formatNumber } from "../words/numbers.ts";
import { useKitAmounts } from "./Adds.tsx";
import { FigureField } from "./fields.tsx";
import { ForbidSign } from "./icons.tsx";
import { NO_LIMITS, toggleForbidden } from "./limitEdits.ts";
import { changeOf, costOf, type PieceRow } from "./pieceRows.ts";
import { changeStock } from "./pourEdits.ts";
import { useSetWords } from "./useSetWords.ts";
import { useStep } from "./useStep.ts";

export function PieceLine({ row, most }: { row: PieceRow; most: number }) {
  const w = useSetWords();
  const { speech } = useSpeech();
  const { doc } = useEditorState().history;
  const step = useStep();
  const amount = useKitAmounts();
  const { code, owned, wallByWall, chosen, toBuy } = row;
  const change = changeOf(row);
  const cost = costOf(row);
  const figure = (value: number) => formatNumber(value, speech.language);
  return (
    <tr className="piece-row" data-piece={code}>
      <th scope="row">
        {row.family === "wall-panel" ? <ForbidButton code={code} /> : <span className="forbid-gap" />}
        <span className="piece-code">{code}</span>
      </th>
      <td className="of-owned">
        <FigureField
          className="boxed"
          label={w("owned-of", { piece: code })}
          value={owned === 0 ? null : owned}
          placeholder="0"
          mayBeEmpty
          greatest={1e6}
          onKeep={(count) => step("step.set-stock", changeStock(doc, code, count ?? 0))}
        />
      </td>
      <td className="of-wallByWall">
        {chosen === null ? <NeedFigure row={row} most={most} /> : figure(wallByWall)}
      </td>
      {chosen === null || change === null ? null : (
        <>
          <td className="of-chosen">
            <NeedFigure row={row} most={most} />
          </td>
          <td>
            {change === 0 ? (
              <span className="chip same">±0</span>
            ) : (
              <span className={change < 0 ? "chip better" : "chip worse"}>
                {formatChange(change, speech.language)}
              </span>
            )}
          </td>
        </>
      )}
      <td className="of-toBuy">{figure(toBuy)}</td>
      <td className="of-cost">{cost === null ? "–" : cost === 0 ? "" : amount(cost)}</td>
    </tr>
  );
}

function NeedFigure({ row: { owned, wallByWall, chosen }, most }: { row: PieceRow; most: number }) {
  const { speech } = useSpeech();
  const need = chosen ?? wallByWall;
  const used = Math.min(owned, need);
  const part = (of: "used" | "bought", count: number) =>
    count === 0 ? null : <span className={`of-${of}`} style={{ width: `${(100 * count) / most}%` }} />;
  return (
    <span className={chosen === null ? "need-figure" : "need-figure is-chosen"}>
      <span className="need-bar" aria-hidden="true">
        {part("used", used)}
        {part("bought", need - used)}
      </span>
      {formatNumber(need, speech.language)}
    </span>
  );
}

function ForbidButton({ code }: { code: string }) {
  const w = useSetWords();
  const { doc } = useEditorState().history;
  const step = useStep();
  const isForbidden = (doc.limits ?? NO_LIMITS).forbidden.includes(code);
  const label = w(isForbidden ? "allow" : "forbid", { piece: code });
  return (
    <button
      type="button"
      className="forbid"
      aria-pressed={isForbidden}
      aria-label={label}
      title={label}
      onClick={() => step("step.set-weights", toggleForbidden(doc, code))}
    >
      <ForbidSign />
    </button>
  );
}
