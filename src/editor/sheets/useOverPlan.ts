// While the sheets lie over the plan, what is under them takes no focus; whatever is called there sends them away.

import { useEffect } from "react";
import { changeScreen } from "../live/actions.ts";
import type { Workbench } from "../live/workbench.ts";

const UNDER = ".middle, .pane";

export function useOverPlan(bench: Workbench): void {
  useEffect(() => {
    const { editor, screen } = bench;
    const before = document.activeElement;
    changeScreen(bench, { panel: null, isKitOpen: false });
    for (const part of document.querySelectorAll(UNDER)) part.setAttribute("inert", "");
    const { tool } = editor.get().session;
    const leave = () => {
      const { panel, isKitOpen, isUnderlayOpen } = screen.get();
      const isCalled = panel !== null || isKitOpen || isUnderlayOpen !== underlay;
      if (isCalled || editor.get().session.tool.name !== tool.name)
        changeScreen(bench, { isSheetsOpen: false });
    };
    const { isUnderlayOpen: underlay } = screen.get();
    const stops = [screen.subscribe(leave), editor.subscribe(leave)];
    return () => {
      for (const stop of stops) stop();
      for (const part of document.querySelectorAll(UNDER)) part.removeAttribute("inert");
      if (before instanceof HTMLElement) before.focus();
    };
  }, [bench]);
}
