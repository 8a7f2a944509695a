// The page: loads what the fill needs, opens the sample, and puts the parts of the screen in their places.

import { lazy, Suspense, useEffect, useState } from "react";
import "./theme/tokens.css";
import "./theme/page.css";
import "./theme/plan.css";
import "./theme/chrome.css";
import "./theme/panels.css";
import "./theme/pane.css";
import "./theme/because.css";
import "./theme/underlay.css";
import { PlanCanvas } from "./canvas/PlanCanvas.tsx";
import { useKeyboard } from "./canvas/useKeyboard.ts";
import { useTheme } from "./canvas/usePalette.ts";
import { CommandFinder } from "./chrome/CommandFinder.tsx";
import { Notes } from "./chrome/Notes.tsx";
import { Readouts } from "./chrome/Readouts.tsx";
import { SidePanel } from "./chrome/SidePanel.tsx";
import { ToolOptions } from "./chrome/ToolOptions.tsx";
import { ToolRail } from "./chrome/ToolRail.tsx";
import { TopBar } from "./chrome/TopBar.tsx";
import { WidthsInUse } from "./chrome/WidthsInUse.tsx";
import { openWorkbench } from "./live/openWorkbench.ts";
import { BenchProvider, useScreen } from "./live/useWorkbench.tsx";
import type { Workbench } from "./live/workbench.ts";
import { Pane } from "./pane/Pane.tsx";
import { UnderlayPanel } from "./underlay/UnderlayPanel.tsx";

export function App() {
  const [bench, setBench] = useState<Workbench | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  useEffect(() => {
    let isWanted = true;
    openWorkbench().then(
      (opened) => {
        if (isWanted) setBench(opened);
      },
      (reason: unknown) => setFailure(String(reason)),
    );
    return () => {
      isWanted = false;
    };
  }, []);
  if (failure !== null) return <p className="failure">{failure}</p>;
  if (bench === null) return null;
  return (
    <BenchProvider bench={bench}>
      <Page />
    </BenchProvider>
  );
}

// The table of the kit is loaded when it is first called.
const KitEditor = lazy(async () => ({ default: (await import("./kit/KitEditor.tsx")).KitEditor }));

function Kit() {
  const { isKitOpen } = useScreen();
  if (!isKitOpen) return null;
  return (
    <Suspense>
      <KitEditor />
    </Suspense>
  );
}

function Page() {
  useTheme();
  useKeyboard();
  return (
    <div className="page">
      <TopBar />
      <main className="middle">
        <div className="plan-area">
          <PlanCanvas />
          <ToolRail />
          <ToolOptions />
          <WidthsInUse />
          <Readouts />
          <Notes />
          <UnderlayPanel />
          <Kit />
        </div>
        <SidePanel />
      </main>
      <Pane />
      <CommandFinder />
    </div>
  );
}
