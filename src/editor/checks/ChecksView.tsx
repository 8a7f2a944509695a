// The checks over the plan: in parts, each with what the project says for it and what comes of it, and under all of them
// the cautions.

import { type KeyboardEvent, useCallback, useEffect, useRef, useState } from "react";
import { changeScreen, REGION } from "../live/actions.ts";
import { useBench } from "../live/useWorkbench.tsx";
import { useOverKeys } from "../over/useOverKeys.ts";
import { useOverPlan } from "../over/useOverPlan.ts";
import { Cautions } from "./Cautions.tsx";
import { ChecksNotice } from "./ChecksNotice.tsx";
import type { CheckDetail } from "./checkList.ts";
import { LiftingTab } from "./LiftingTab.tsx";
import { PressureTab } from "./PressureTab.tsx";
import { ResultsTab } from "./ResultsTab.tsx";
import { ShoringTab } from "./ShoringTab.tsx";
import { StrikingTab } from "./StrikingTab.tsx";
import { showSpot } from "./showSpot.ts";
import { TolerancesTab } from "./TolerancesTab.tsx";
import { type Checks, useChecks } from "./useChecks.ts";
import { useCheckWords } from "./useCheckWords.ts";
import { useListed } from "./useListed.ts";
import "./checks.css";
import "./checkForms.css";

const TABS = ["results", "pressure", "striking", "shoring", "lifting", "tolerances"] as const;
type Tab = (typeof TABS)[number];

export function ChecksView() {
  const bench = useBench();
  const { w } = useCheckWords();
  const checks = useChecks();
  const { list } = checks;
  const listed = useListed(list);
  const [tab, setTab] = useState<Tab>("results");
  const [wanted, setUnit] = useState(bench.editor.get().session.selection.unit);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const close = useCallback(() => changeScreen(bench, { over: null }), [bench]);
  useOverPlan(bench, close);
  useOverKeys([["Escape", close]]);
  const onShow = ({ spot }: CheckDetail) => {
    if (spot !== null) showSpot(bench, spot);
  };
  const unit = list?.units.find(({ name }) => name === wanted)?.name ?? list?.units[0]?.name ?? "";
  const parts = { checks, list, unit, onUnit: setUnit, onShow };
  return (
    <section
      className="checks"
      aria-label={w("title")}
      {...{ [REGION]: "checks" }}
      data-stale={checks.isStale}
    >
      <header className="checks-bar">
        <h2 ref={heading} tabIndex={-1}>
          {w("title")}
        </h2>
        <Tabs tab={tab} onTab={setTab} />
        <Going checks={checks} />
        <button type="button" className="act" onClick={close}>
          {w("close")} <kbd>Esc</kbd>
        </button>
      </header>
      <ChecksNotice checks={checks} />
      <div className="checks-body" role="tabpanel" aria-label={w(`tab.${tab}`)}>
        {tab === "results" && list !== null ? <ResultsTab {...{ checks, list, listed, onShow }} /> : null}
        {tab === "pressure" ? <PressureTab {...parts} /> : null}
        {tab === "striking" ? <StrikingTab {...parts} /> : null}
        {tab === "shoring" ? <ShoringTab {...parts} /> : null}
        {tab === "lifting" ? <LiftingTab {...parts} /> : null}
        {tab === "tolerances" ? <TolerancesTab {...parts} /> : null}
      </div>
      {list === null ? null : <Cautions list={list} />}
    </section>
  );
}

function Going({ checks: { isMaking, isStale } }: { checks: Checks }) {
  const { w } = useCheckWords();
  return <p role="status">{isMaking ? w(isStale ? "renewing" : "making") : ""}</p>;
}

function Tabs({ tab, onTab }: { tab: Tab; onTab: (tab: Tab) => void }) {
  const { w } = useCheckWords();
  const tabs = useRef<HTMLDivElement>(null);
  const onKeyDown = (event: KeyboardEvent) => {
    const by = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    const next = TABS[(TABS.indexOf(tab) + by + TABS.length) % TABS.length];
    if (by === 0 || next === undefined) return;
    onTab(next);
    tabs.current?.querySelector<HTMLElement>(`[data-tab=${next}]`)?.focus();
    event.preventDefault();
  };
  return (
    <div className="checks-tabs" role="tablist" aria-label={w("tabs")} ref={tabs} onKeyDown={onKeyDown}>
      {TABS.map((each) => (
        <button
          key={each}
          type="button"
          role="tab"
          aria-selected={each === tab}
          tabIndex={each === tab ? 0 : -1}
          data-tab={each}
          onClick={() => onTab(each)}
        >
          {w(`tab.${each}`)}
        </button>
      ))}
    </div>
  );
}
