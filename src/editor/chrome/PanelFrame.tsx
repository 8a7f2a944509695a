// The frame of a side panel: its title, a note beside it, the way to send it away.

import type { ReactNode } from "react";
import { changeScreen, REGION } from "../live/actions.ts";
import { useBench, useSpeech } from "../live/useWorkbench.tsx";
import { words } from "../words/say.ts";

export interface PanelFrameProps {
  readonly title: string;
  readonly note: string;
  readonly children: ReactNode;
}

export function PanelFrame({ title, note, children }: PanelFrameProps) {
  const bench = useBench();
  const { t } = useSpeech();
  return (
    <aside className="panel" aria-label={title} {...{ [REGION]: "panel" }}>
      <header>
        <h2>{title}</h2>
        <small>{note}</small>
        <button
          type="button"
          className="close"
          aria-label={t(words("problems.close"))}
          title={t(words("problems.close"))}
          onClick={() => changeScreen(bench, { panel: null })}
        >
          <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
            <path d="M3 3l8 8M11 3l-8 8" />
          </svg>
        </button>
      </header>
      <div className="panel-body">{children}</div>
    </aside>
  );
}
