// The drawing: three canvas layers, the fields of its dimensions over them, and everything the hand does to it.

import { useRef, useState } from "react";
import { REGION } from "../live/actions.ts";
import { useEditorState, useInView, useScreen, useSpeech } from "../live/useWorkbench.tsx";
import { scenePieces } from "../scene/pieces.ts";
import { words } from "../words/say.ts";
import { Figures } from "./Figures.tsx";
import { cursorFor } from "./hover.ts";
import { PlanLayers, type PlanStage } from "./PlanLayers.tsx";
import { RoomField } from "./RoomField.tsx";
import { SnapNote } from "./SnapNote.tsx";
import { useDrawingSize } from "./useDrawingSize.ts";
import { useFigures } from "./useFigures.ts";
import { usePainting, useScene } from "./usePainting.ts";
import { usePointer } from "./usePointer.ts";

export function PlanCanvas() {
  const { session } = useEditorState();
  const screen = useScreen();
  const inView = useInView();
  const { t } = useSpeech();
  const host = useRef<HTMLDivElement>(null);
  const [stage, setStage] = useState<PlanStage | null>(null);
  useDrawingSize(host);
  const scene = useScene(inView);
  const handlers = usePointer(host);
  const figures = useFigures(scene, inView);
  usePainting(stage, scene, figures);
  const marks = session.preview?.marks ?? [];
  const { viewport, live, isStale, detail } = scene;
  return (
    <section
      className="plan"
      aria-label={t(words("region.plan"))}
      data-level={detail.level}
      data-pieces={live === null || isStale ? "" : scenePieces(live).all.length}
      data-soffits={live === null || isStale || !live.hasSoffits ? "" : live.fill.soffits.length}
      data-walls={Object.keys(inView.unit.walls).length}
      data-openings={Object.keys(inView.unit.openings).length}
      data-rooms={Object.keys(inView.unit.rooms).length}
      data-scale={viewport.scale}
      data-centre={viewport.centre.join(" ")}
    >
      <div
        className="plan-host"
        ref={host}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the drawing takes keys of its own, as an application does
        tabIndex={0}
        aria-label={t(words("region.plan"))}
        {...{ [REGION]: "plan" }}
        style={{ cursor: screen.isPanning ? "grab" : cursorFor(inView.unit, session.tool, session.hovered) }}
        {...handlers}
        onContextMenu={(event) => event.preventDefault()}
      >
        <PlanLayers size={screen.size} onReady={setStage} />
      </div>
      <Figures figures={figures} />
      <SnapNote marks={marks} viewport={viewport} />
      <RoomField marks={marks} viewport={viewport} />
    </section>
  );
}
