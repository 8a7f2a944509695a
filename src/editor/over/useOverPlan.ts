// While a view lies over the plan, what is under it takes no focus; whatever is called there sends the view away.

import { useEffect } from "react";
import { changeScreen } from "../live/actions.ts";
import type { Workbench } from "../live/workbench.ts";

const UNDER = ".middle, .pane";

/** @param away - sends the view away; the same function as long as it is the same view */
export function useOverPlan(bench: Workbench, away: () => void): void {
  useEffect(() => {
    const { editor, screen } = bench;
    const before = document.activeElement;
    changeScreen(bench, { panel: null, isKitOpen: false });
    for (const part of document.querySelectorAll(UNDER)) part.setAttribute("inert", "");
    const { tool } = editor.get().session;
    const leave = () => {
      const { panel, isKitOpen, isUnderlayOpen } = screen.get();
      const isCalled = panel !== null || isKitOpen || isUnderlayOpen !== underlay;
      if (isCalled || editor.get().session.tool.name !== tool.name) away();
    };
    const { isUnderlayOpen: underlay } = screen.get();
    const stops = [screen.subscribe(leave), editor.subscribe(leave)];
    return () => {
      for (const stop of stops) stop();
      for (const part of document.querySelectorAll(UNDER)) part.removeAttribute("inert");
      if (before instanceof HTMLElement) before.focus();
    };
  }, [bench, away]);
}
