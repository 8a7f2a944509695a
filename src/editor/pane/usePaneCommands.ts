// The commands that the pane carries out while it is on the page.

import { useEffect } from "react";
import { changeScreen } from "../live/actions.ts";
import { useBench } from "../live/useWorkbench.tsx";
import type { Workbench } from "../live/workbench.ts";
import { showOtherFace, swapWithNext, togglePin, tryNudge } from "./paneActions.ts";

/** @param onAsk - shows or hides the reasons of what the hand is on */
export function usePaneCommands(onAsk: () => void): void {
  const bench = useBench();
  useEffect(() => {
    const { calls } = bench;
    calls.set("command.other-face", () => showOtherFace(bench));
    calls.set("command.pin", () => togglePin(bench));
    calls.set("command.swap", () => swapWithNext(bench));
    calls.set("command.nudge", () => tryNudge(bench));
    calls.set("command.covers", () => enterCovers(bench));
    calls.set("command.because", onAsk);
    return () => {
      for (const id of ["other-face", "pin", "swap", "nudge", "covers", "because"] as const)
        calls.delete(`command.${id}`);
    };
  }, [bench, onAsk]);
}

// The list of covers takes the focus; with no interval in hand, the elevation does.
function enterCovers(bench: Workbench): void {
  changeScreen(bench, { isPaneOpen: true });
  const list = document.querySelector<HTMLElement>(".covers [role=radio][tabindex='0']");
  (list ?? document.querySelector<HTMLElement>(".elevation"))?.focus();
}
