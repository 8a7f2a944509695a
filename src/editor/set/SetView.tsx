// Pours and set over the plan: what is poured when, which pieces that takes, and the search for the one set that serves every
// pour and costs least.

import { useCallback, useEffect, useRef } from "react";
import { changeScreen, REGION } from "../live/actions.ts";
import { useBench, useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import { useOverKeys } from "../over/useOverKeys.ts";
import { useOverPlan } from "../over/useOverPlan.ts";
import { words } from "../words/say.ts";
import { ChangesSection } from "./ChangesSection.tsx";
import { CurveSection } from "./CurveSection.tsx";
import { inputsOf } from "./inputs.ts";
import { NudgeSection } from "./NudgeSection.tsx";
import type { Run } from "./optimiser.ts";
import { PiecesSection } from "./PiecesSection.tsx";
import { PoursSection } from "./PoursSection.tsx";
import { RunPanel } from "./RunPanel.tsx";
import { type Needs, useNeeds } from "./useNeeds.ts";
import { useOptimiser } from "./useOptimiser.ts";
import { useSetWords } from "./useSetWords.ts";
import { WeightsForm } from "./WeightsForm.tsx";
import "./set.css";
import "./pours.css";
import "./pieces.css";
import "./curves.css";
import "./changes.css";

export function SetView() {
  const bench = useBench();
  const { t } = useSpeech();
  const w = useSetWords();
  const { message } = useEditorState().session;
  const needs = useNeeds();
  const { optimiser, run } = useOptimiser();
  const close = useCallback(() => changeScreen(bench, { over: null }), [bench]);
  useOverPlan(bench, close);
  useOverKeys([["Escape", close]]);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <section className="set" aria-label={w("title")} {...{ [REGION]: "set" }}>
      <header className="set-bar">
        <h2 ref={heading} tabIndex={-1}>
          {w("title")}
        </h2>
        <p className="set-said" role="status">
          {message === null ? "" : t(message)}
        </p>
        <button type="button" className="act" onClick={close}>
          {w("close")} <kbd>Esc</kbd>
        </button>
      </header>
      <div className="set-scroll" data-scrolls>
        {needs.plan === null ? (
          <p className="set-fault" role="alert">
            {t(words("problems.kit-broken"))}
          </p>
        ) : null}
        <PoursSection needs={needs} />
        <aside className="set-side">
          <div className="set-stays">
            <RunPanel optimiser={optimiser} run={run} needs={needs} />
            <WeightsForm />
          </div>
        </aside>
        <div className="set-below">
          <CurveSection needs={needs} />
          <Changes needs={needs} run={run} />
          <NudgeSection needs={needs} />
          <PiecesSection needs={needs} result={run.result} />
        </div>
      </div>
    </section>
  );
}

// Only those of the state on the screen: what an earlier one changed is on walls that may be gone.
function Changes({ needs: { plan }, run: { result } }: { needs: Needs; run: Run }) {
  const { doc } = useEditorState().history;
  if (plan === null || result === null || result.inputs !== inputsOf(doc)) return null;
  const { changes } = result.set;
  if (changes === undefined || changes.intervals.length === 0) return null;
  return <ChangesSection kit={plan.kit} result={result} changes={changes} />;
}
