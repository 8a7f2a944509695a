// Piece by piece: owned, needed wall by wall and with the set that was found, to buy and what that costs. What is owned is
// typed here. A click on a head sorts, a second one the other way round.

import { useMemo, useState } from "react";
import type { NeededPiece } from "../../fill/optimise/pourAdds.ts";
import type { Kit } from "../../kit/kit.ts";
import { useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import { formatChange, formatNumber } from "../words/numbers.ts";
import { useKitAmounts } from "./Adds.tsx";
import { SortSign } from "./icons.tsx";
import { inputsOf } from "./inputs.ts";
import type { SetResult } from "./optimiser.ts";
import { PieceLine } from "./PieceLine.tsx";
import {
  type Order,
  type PieceRow,
  pieceRows,
  type Shown,
  type Sorting,
  shownRows,
  sortedRows,
  sumsOf,
} from "./pieceRows.ts";
import { useStockFile } from "./StockFile.tsx";
import type { SetWord } from "./setWord.ts";
import type { Needs } from "./useNeeds.ts";
import { useSetWords } from "./useSetWords.ts";

const SHOWN: readonly Shown[] = ["panels", "used", "kit"];

export interface PiecesSectionProps {
  readonly needs: Needs;
  readonly result: SetResult | null;
}

export function PiecesSection({ needs, result }: PiecesSectionProps) {
  const { plan, counted } = needs;
  if (plan === null || counted === null) return null;
  return <Pieces kit={plan.kit} needed={counted.pieces} of={needs.inputs} result={result} />;
}

interface PiecesProps {
  readonly kit: Kit;
  readonly needed: readonly NeededPiece[];
  /** What they are needed for: see `inputsOf`. */
  readonly of: string | null;
  readonly result: SetResult | null;
}

function Pieces({ kit, needed, of, result }: PiecesProps) {
  const w = useSetWords();
  const file = useStockFile(kit);
  const { doc } = useEditorState().history;
  const [shown, setShown] = useState<Shown>("panels");
  const [sorting, setSorting] = useState<Sorting>({ by: "piece", isTurned: false });
  // The set of another state would stand beside needs that are not its own.
  const isOwn = result !== null && result.inputs === inputsOf(doc) && result.inputs === of;
  const chosen = isOwn ? result.set.pieces : null;
  const rows = useMemo(
    () => pieceRows({ needed, chosen, stock: doc.stock, kit }),
    [needed, chosen, doc.stock, kit],
  );
  const own = sortedRows(shownRows(rows, shown), sorting);
  const onSort = (by: Order) => setSorting({ by, isTurned: sorting.by === by && !sorting.isTurned });
  return (
    <section className="set-pieces" aria-label={w("stock")}>
      <header className="set-head">
        <h3>{w("stock")}</h3>
        {file.button}
        <select
          className="set-select"
          aria-label={w("show")}
          value={shown}
          onChange={({ target }) => setShown(SHOWN.find((each) => each === target.value) ?? "panels")}
        >
          {SHOWN.map((each) => (
            <option key={each} value={each}>
              {w(`show.${each}`)}
            </option>
          ))}
        </select>
      </header>
      {file.notice}
      {own.length === 0 ? (
        <p className="set-note">{w("no-pieces")}</p>
      ) : (
        <div className="set-wide">
          <table className={chosen === null ? "pieces" : "pieces is-chosen"}>
            <Heads isChosen={chosen !== null} buys={doc.buy} sorting={sorting} onSort={onSort} />
            <tbody>
              {own.map((row) => (
                <PieceLine key={row.code} row={row} most={mostOf(own)} />
              ))}
            </tbody>
            <Sums rows={own} isChosen={chosen !== null} />
          </table>
        </div>
      )}
    </section>
  );
}

function mostOf(rows: readonly PieceRow[]): number {
  return rows.reduce((most, { wallByWall, chosen }) => Math.max(most, wallByWall, chosen ?? 0), 1);
}

interface HeadsProps {
  readonly isChosen: boolean;
  readonly buys: boolean;
  readonly sorting: Sorting;
  readonly onSort: (by: Order) => void;
}

function Heads({ isChosen, buys, sorting, onSort }: HeadsProps) {
  const w = useSetWords();
  const columns: readonly (readonly [Order, SetWord])[] = [
    ["piece", "piece"],
    ["owned", "owned"],
    ["wallByWall", isChosen ? "in-plan" : "need"],
    ...(isChosen
      ? ([
          ["chosen", "chosen"],
          ["change", "change"],
        ] as const)
      : []),
    ["toBuy", buys ? "to-buy" : "lack"],
    ["cost", "amount"],
  ];
  return (
    <thead>
      <tr>
        {columns.map(([by, name]) => (
          <th
            key={by}
            scope="col"
            className={`of-${by}`}
            aria-sort={sorting.by === by ? (isRising(sorting) ? "ascending" : "descending") : "none"}
          >
            <button
              type="button"
              className={`sort-button of-${by}`}
              data-sorts={sorting.by === by}
              title={w("sort-by", { column: w(name) })}
              onClick={() => onSort(by)}
            >
              {w(name)}
              {sorting.by === by ? <SortSign isTurned={sorting.isTurned} /> : null}
            </button>
          </th>
        ))}
      </tr>
    </thead>
  );
}

function isRising({ by, isTurned }: Sorting): boolean {
  return (by === "piece") !== isTurned;
}

function Sums({ rows, isChosen }: { rows: readonly PieceRow[]; isChosen: boolean }) {
  const w = useSetWords();
  const { speech } = useSpeech();
  const amount = useKitAmounts();
  const figure = (value: number) => formatNumber(value, speech.language);
  const sums = sumsOf(rows);
  return (
    <tfoot>
      <tr>
        <th scope="row">{w("sum")}</th>
        <td className="of-owned">{figure(sums.owned)}</td>
        <td className="of-wallByWall">{figure(sums.wallByWall)}</td>
        {isChosen ? (
          <>
            <td>{figure(sums.chosen ?? 0)}</td>
            <td>{formatChange((sums.chosen ?? 0) - sums.wallByWall, speech.language)}</td>
          </>
        ) : null}
        <td>{figure(sums.toBuy)}</td>
        <td className="of-cost">
          {amount(sums.cost)}
          {sums.unpriced === 0 ? null : <small>{w("unpriced", { count: sums.unpriced })}</small>}
        </td>
      </tr>
    </tfoot>
  );
}
