// A set that was found: its cost against wall by wall, how sure it is the cheapest, what the cost is made of.

import type { NeededPiece } from "../../fill/optimise/pourAdds.ts";
import type { PanelSet } from "../../fill/result.ts";
import { useSpeech } from "../live/useWorkbench.tsx";
import { formatChange, formatNumber } from "../words/numbers.ts";
import { claimOf } from "./claim.ts";
import type { SetResult } from "./optimiser.ts";
import { panelCount } from "./pieceRows.ts";
import { type SayAmount, useAmounts, useSetWords } from "./useSetWords.ts";

const PARTS = ["set", "handling", "closures", "distinctSizes", "fillers"] as const;
const SHOWN_LACKING = 6;

export interface SetResultViewProps {
  readonly result: SetResult;
  /** The project has changed since. */
  readonly isOld: boolean;
  readonly currency: string | null;
  /** What filling wall by wall needs of the same state; null where that is not counted. */
  readonly needed: readonly NeededPiece[] | null;
}

export function SetResultView({ result: { set }, isOld, currency, needed }: SetResultViewProps) {
  const w = useSetWords();
  const amount = useAmounts(set.countedBy, currency);
  // Of the other pieces the kit's prices count, whatever the panels are counted by.
  const price = useAmounts("price", currency);
  return (
    <div className="set-result" data-old={isOld}>
      {isOld ? (
        <p className="set-old" role="note">
          <b>{w("old")}</b> {w("old-why")}
        </p>
      ) : null}
      <div className="set-found">
        <p className="set-cost">
          <span className="set-name">{w("cost")}</span> <b className="set-sum">{amount(set.cost, 2)}</b>
        </p>
        <ClaimView set={set} amount={amount} />
        <Compared set={set} amount={amount} />
        <Counts set={set} needed={needed} />
        <dl className="set-figures of-parts">
          {PARTS.filter((part) => part === "set" || (set.parts[part] ?? 0) !== 0).map((part) => (
            <div key={part}>
              <dt>{w(`part.${part}`)}</dt>
              <dd>{amount(set.parts[part] ?? 0, 2)}</dd>
            </div>
          ))}
          <div>
            <dt>{w("part.fixed")}</dt>
            <dd>{price(set.parts.fixed, 2)}</dd>
          </div>
        </dl>
        {set.countedBy === "price" ? null : <p className="set-why">{w(`by-${set.countedBy}`)}</p>}
      </div>
    </div>
  );
}

function ClaimView({ set, amount }: { set: PanelSet; amount: SayAmount }) {
  const w = useSetWords();
  const { speech } = useSpeech();
  const { status, why, percent, gap } = claimOf(set);
  const { missing = [] } = set;
  const shown = missing.slice(0, SHOWN_LACKING).map(({ code, quantity }) => `${quantity} ${code}`);
  const more = missing.length - shown.length;
  return (
    <div className="set-claim" data-status={set.status}>
      <p role="status">
        <b className="set-status">{w(status, { percent: formatNumber(percent, speech.language, 3) })}</b>
      </p>
      <p className="set-because">
        {w(why, { amount: amount(why === "why.widths" ? set.lowerBound : gap, 2) })}
      </p>
      {missing.length === 0 ? null : (
        <p className="set-lacking">
          {w("lacking", { pieces: shown.join(", ") })}
          {more > 0 ? ` ${w("lacking-more", { count: more })}` : ""}
        </p>
      )}
    </div>
  );
}

function Compared({ set: { cost, wallByWall }, amount }: { set: PanelSet; amount: SayAmount }) {
  const w = useSetWords();
  const { speech } = useSpeech();
  if (wallByWall === null) return <p className="set-why">{w("wall-short")}</p>;
  const saved = wallByWall - cost;
  const percent = (100 * saved) / Math.max(wallByWall, 1);
  return (
    <dl className="set-figures">
      <div>
        <dt>{w("wall-by-wall")}</dt>
        <dd>{amount(wallByWall, 2)}</dd>
      </div>
      <div>
        <dt>{w("saved")}</dt>
        <dd>
          {saved > 0 ? (
            <span className="chip better">
              {amount(saved, 2)} · {formatNumber(percent, speech.language, percent < 0.1 ? 3 : 2)}
              {" %"}
            </span>
          ) : (
            w("saved-nothing")
          )}
        </dd>
      </div>
    </dl>
  );
}

function Counts({ set, needed }: { set: PanelSet; needed: readonly NeededPiece[] | null }) {
  const w = useSetWords();
  const { speech } = useSpeech();
  const now = panelCount(set.pieces);
  const before = needed === null ? now : panelCount(needed);
  return (
    <dl className="set-figures">
      {(["panels", "sizes"] as const).map((name) => {
        const change = now[name] - before[name];
        const judged = change < 0 ? "better" : change > 0 ? "worse" : "same";
        return (
          <div key={name}>
            <dt>{w(name)}</dt>
            <dd>
              {change === 0 ? "" : `${formatNumber(before[name], speech.language)} → `}
              <b>{formatNumber(now[name], speech.language)}</b>{" "}
              {needed === null ? null : (
                <span className={`chip ${judged}`}>{formatChange(change, speech.language)}</span>
              )}
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
