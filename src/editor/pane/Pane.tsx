// The pane under the plan: a header that stays, and a body that opens, closes and is dragged to the height wanted.

import { type PointerEvent, useCallback, useRef, useState } from "react";
import { BecauseCard } from "../because/BecauseCard.tsx";
import { commandTip } from "../chrome/commandTip.ts";
import { changeScreen, REGION, run } from "../live/actions.ts";
import { keptPaneHeight, PANE } from "../live/screen.ts";
import { useBench, useScreen, useSpeech } from "../live/useWorkbench.tsx";
import { words } from "../words/say.ts";
import { PaneBody } from "./PaneBody.tsx";
import { PaneTitle } from "./PaneTitle.tsx";
import { usePane } from "./usePane.ts";
import { usePaneCommands } from "./usePaneCommands.ts";

export function Pane() {
  const bench = useBench();
  const { isPaneOpen, paneHeight } = useScreen();
  const { t } = useSpeech();
  const tip = commandTip("command.elevation", t);
  const view = usePane();
  const [isAsked, setAsked] = useState(false);
  const ask = useCallback(() => setAsked((asked) => !asked), []);
  const show = useCallback(() => setAsked(true), []);
  usePaneCommands(ask);
  return (
    <section
      className="pane"
      aria-label={t(words("region.pane"))}
      style={{ height: PANE.header + (isPaneOpen ? paneHeight : 0) }}
      {...{ [REGION]: "pane" }}
    >
      {isPaneOpen ? <PaneEdge /> : null}
      <header className="pane-header">
        <PaneTitle view={view} />
        <button
          type="button"
          className="pane-toggle"
          aria-expanded={isPaneOpen}
          aria-label={tip}
          title={tip}
          onClick={() => run(bench, "command.elevation")}
        >
          <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
            <path d={isPaneOpen ? "M3 5l4 4 4-4" : "M3 9l4-4 4 4"} />
          </svg>
        </button>
      </header>
      {isPaneOpen ? <PaneBody view={view} height={paneHeight} onAsk={show} /> : null}
      {isPaneOpen && isAsked && view !== null ? (
        <BecauseCard view={view} onClose={() => setAsked(false)} />
      ) : null}
    </section>
  );
}

const STEP = 16; // px by an arrow key

function PaneEdge() {
  const bench = useBench();
  const { paneHeight } = useScreen();
  const { t } = useSpeech();
  const grip = useRef<{ readonly y: number; readonly height: number } | null>(null);
  const resize = (height: number) => changeScreen(bench, { paneHeight: keptPaneHeight(height) });
  const onMove = (event: PointerEvent) => {
    if (grip.current !== null) resize(grip.current.height + grip.current.y - event.clientY);
  };
  return (
    <hr
      className="pane-edge"
      tabIndex={0}
      aria-orientation="horizontal"
      aria-label={t(words("pane.size"))}
      aria-valuenow={paneHeight}
      aria-valuemin={PANE.least}
      aria-valuemax={PANE.greatest}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        grip.current = { y: event.clientY, height: paneHeight };
      }}
      onPointerMove={onMove}
      onPointerUp={() => {
        grip.current = null;
      }}
      onKeyDown={(event) => {
        const step = event.key === "ArrowUp" ? STEP : event.key === "ArrowDown" ? -STEP : 0;
        if (step === 0) return;
        event.preventDefault();
        event.stopPropagation();
        resize(paneHeight + step);
      }}
    />
  );
}
