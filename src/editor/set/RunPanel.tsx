// The search for the cheapest set: begun, watched, stopped; what it has found, how sure that is, what it saves.

import { useEffect, useState } from "react";
import type { PanelSet } from "../../fill/result.ts";
import { percentUp } from "../../units.ts";
import { useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import { formatNumber } from "../words/numbers.ts";
import { inputsOf } from "./inputs.ts";
import { dropPins, isKept, keepPins } from "./limitEdits.ts";
import type { Optimiser, Run, SetResult } from "./optimiser.ts";
import { ProgressChart } from "./ProgressChart.tsx";
import { SetResultView } from "./SetResultView.tsx";
import type { Needs } from "./useNeeds.ts";
import { useAmounts, useSetWords } from "./useSetWords.ts";
import { useStep } from "./useStep.ts";

export interface RunPanelProps {
  readonly optimiser: Optimiser;
  readonly run: Run;
  readonly needs: Needs;
}

export function RunPanel({ optimiser, run, needs }: RunPanelProps) {
  const w = useSetWords();
  const { doc } = useEditorState().history;
  const { plan, counted } = needs;
  const currency = plan?.kit.currency ?? null;
  const { phase, result, failure } = run;
  const isOld = result !== null && result.inputs !== inputsOf(doc);
  const isEmpty = counted !== null && counted.pieces.length === 0;
  const begin = (isLong: boolean) => {
    if (plan !== null && !isEmpty) optimiser.begin({ plan, inputs: inputsOf(doc), isLong });
  };
  const isOff = plan === null || isEmpty;
  const mayGoOn = result?.set.status === "gap" && !isOld;
  return (
    <section className="set-run" aria-label={w("set")}>
      <h3>{w("set")}</h3>
      {phase === "idle" ? (
        <>
          {result === null ? <p className="set-why">{w("set-why")}</p> : null}
          {result === null ? null : (
            <SetResultView
              {...{ result, isOld, currency }}
              needed={isOld || needs.inputs !== result.inputs ? null : (counted?.pieces ?? null)}
            />
          )}
          {failure === null ? null : (
            <p className="set-fault" role="alert">
              {w("solve-broken", { reason: failure })}
            </p>
          )}
          <p className="set-acts">
            <button
              type="button"
              className={result === null || isOld ? "act strong" : "act"}
              aria-disabled={isOff}
              onClick={() => begin(false)}
            >
              {w(result === null ? "find" : "find-again")}
            </button>
            <KeepButton result={isOld ? null : result} />
            {mayGoOn ? (
              <button type="button" className="act" onClick={() => begin(true)}>
                {w("search-on")}
              </button>
            ) : null}
          </p>
        </>
      ) : (
        <Running optimiser={optimiser} run={run} currency={currency} countedBy={result?.set.countedBy} />
      )}
    </section>
  );
}

// A set is never put into the plan by itself: keeping it is a step of the person, and so is taking it out.
function KeepButton({ result }: { result: SetResult | null }) {
  const w = useSetWords();
  const { doc } = useEditorState().history;
  const step = useStep();
  const out = dropPins(doc);
  const isIn = result !== null && isKept(doc, result.pins);
  return (
    <>
      {result === null || isIn ? null : (
        <button
          type="button"
          className="act strong"
          onClick={() => step("step.set-keep", keepPins(doc, result.pins))}
        >
          {w("keep")}
        </button>
      )}
      {out.length === 0 ? null : (
        <button type="button" className="act" onClick={() => step("step.set-out", out)}>
          {w("take-out")}
        </button>
      )}
      {out.length === 0 ? null : (
        <span className="set-kept" role="note">
          {w(isIn ? "kept" : "kept-other")}
        </span>
      )}
    </>
  );
}

interface RunningProps {
  readonly optimiser: Optimiser;
  readonly run: Run;
  readonly currency: string | null;
  readonly countedBy: PanelSet["countedBy"] | undefined;
}

function Running({ optimiser, run, currency, countedBy = "price" }: RunningProps) {
  const w = useSetWords();
  const { speech } = useSpeech();
  const amount = useAmounts(countedBy, currency);
  const { told, phase, since } = run;
  const last = told.at(-1);
  const seconds = useSeconds(since);
  const stage = last === undefined ? w("loading") : w(`stage.${last.stage}`);
  return (
    <>
      <p className="set-stage">
        <span role="status">{phase === "stopping" ? w("stopping") : stage}</span>
        <span className="set-elapsed">{w("elapsed", { seconds })}</span>
      </p>
      {last === undefined ? (
        <div className="set-chart" aria-hidden="true" />
      ) : (
        <>
          <dl className="set-figures of-run">
            <div className="of-best">
              <dt>{w("best")}</dt>
              <dd>{amount(last.best, 2)}</dd>
            </div>
            <div className="of-bound">
              <dt>{w("bound")}</dt>
              <dd>{amount(last.bound, 2)}</dd>
            </div>
          </dl>
          <ProgressChart told={told} amount={amount} />
          <p className="set-gap">
            {w("gap", {
              percent: formatNumber(percentUp(last.best - last.bound, last.best), speech.language, 3),
            })}
          </p>
        </>
      )}
      <p className="set-acts">
        <button
          type="button"
          className="act strong"
          aria-disabled={phase === "stopping"}
          onClick={optimiser.stop}
        >
          {w("stop")}
        </button>
        <button type="button" className="act" onClick={optimiser.cancel}>
          {w("cancel")}
        </button>
      </p>
    </>
  );
}

/** Whole seconds since a moment of the page's clock, while it is shown. */
function useSeconds(since: number): number {
  const [now, setNow] = useState(() => performance.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(performance.now()), 500);
    return () => clearInterval(timer);
  }, []);
  return Math.max(0, Math.floor((now - since) / 1000));
}
