// The page: opens the project that was in hand last, and puts the parts of the screen in their places.

import { type ComponentType, lazy, Suspense, useEffect, useState } from "react";
import "./theme/tokens.css";
import "./theme/page.css";
import "./theme/plan.css";
import "./theme/chrome.css";
import "./theme/panels.css";
import "./theme/pane.css";
import "./theme/because.css";
import "./theme/soffit.css";
import "./theme/underlay.css";
import "./theme/desk.css";
import { PlanCanvas } from "./canvas/PlanCanvas.tsx";
import { useKeyboard } from "./canvas/useKeyboard.ts";
import { useTheme } from "./canvas/usePalette.ts";
import { CommandFinder } from "./chrome/CommandFinder.tsx";
import { Notes } from "./chrome/Notes.tsx";
import { Readouts } from "./chrome/Readouts.tsx";
import { ToolOptions } from "./chrome/ToolOptions.tsx";
import { ToolRail } from "./chrome/ToolRail.tsx";
import { TopBar } from "./chrome/TopBar.tsx";
import { WidthsInUse } from "./chrome/WidthsInUse.tsx";
import { DeskNotices } from "./desk/DeskNotices.tsx";
import { DeskProvider } from "./desk/useDesk.tsx";
import { type OpenedPage, openPage } from "./live/openPage.ts";
import { BenchProvider, useScreen } from "./live/useWorkbench.tsx";
import { Pane } from "./pane/Pane.tsx";
import { SoffitLayer } from "./soffit/SoffitLayer.tsx";
import { useBackdrop } from "./underlay/useBackdrop.ts";
import { usePictureDrop } from "./underlay/usePictureDrop.ts";

export function App() {
  const [opened, setOpened] = useState<OpenedPage | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  useEffect(() => {
    let isWanted = true;
    openPage().then(
      (page) => {
        if (isWanted) setOpened(page);
      },
      (reason: unknown) => setFailure(String(reason)),
    );
    return () => {
      isWanted = false;
    };
  }, []);
  if (failure !== null) return <p className="failure">{failure}</p>;
  if (opened === null) return null;
  return (
    <BenchProvider bench={opened.bench}>
      <DeskProvider {...opened}>
        <Page />
      </DeskProvider>
    </BenchProvider>
  );
}

// What does not belong to the first view is loaded when it is first called.
const KitEditor = lazy(async () => ({ default: (await import("./kit/KitEditor.tsx")).KitEditor }));
const SheetsView = lazy(async () => ({ default: (await import("./sheets/SheetsView.tsx")).SheetsView }));
const SetView = lazy(async () => ({ default: (await import("./set/SetView.tsx")).SetView }));
const ChecksView = lazy(async () => ({ default: (await import("./checks/ChecksView.tsx")).ChecksView }));
const SidePanel = lazy(async () => ({ default: (await import("./chrome/SidePanel.tsx")).SidePanel }));
const UnderlayPanel = lazy(async () => ({
  default: (await import("./underlay/UnderlayPanel.tsx")).UnderlayPanel,
}));

/** One of the above, while it is called for. */
function Called({ part: Part, isOpen }: { readonly part: ComponentType; readonly isOpen: boolean }) {
  if (!isOpen) return null;
  return (
    <Suspense>
      <Part />
    </Suspense>
  );
}

// Apart from the page, which need not be made anew when the picture is.
function Underlay() {
  useBackdrop();
  usePictureDrop();
  return null;
}

function Page() {
  useTheme();
  useKeyboard();
  const { isKitOpen, isUnderlayOpen, over, panel } = useScreen();
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
          <DeskNotices />
          <Underlay />
          <Called part={UnderlayPanel} isOpen={isUnderlayOpen} />
          <SoffitLayer />
          <Called part={KitEditor} isOpen={isKitOpen} />
        </div>
        <Called part={SidePanel} isOpen={panel !== null} />
      </main>
      <Pane />
      <Called part={SheetsView} isOpen={over === "sheets"} />
      <Called part={SetView} isOpen={over === "set"} />
      <Called part={ChecksView} isOpen={over === "checks"} />
      <CommandFinder />
    </div>
  );
}
