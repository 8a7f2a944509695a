// What each layer of the canvas draws, handed to it whenever something it is made from has changed.

import { useEffect, useMemo, useSyncExternalStore } from "react";
import { find } from "../../plan/document.ts";
import type { Position } from "../../plan/project.ts";
import { letteringOf } from "../live/lettering.ts";
import { useBench, useEditorState, useScreen, useSpeech } from "../live/useWorkbench.tsx";
import type { InView, Pointer } from "../live/workbench.ts";
import { detailAt } from "../scene/detail.ts";
import { drawPlan } from "../scene/drawPlan.ts";
import type { Figure } from "../scene/figures.ts";
import { drawGrid, drawGround } from "../scene/ground.ts";
import { drawOverlay } from "../scene/overlay.ts";
import type { Scene } from "../scene/scene.ts";
import { type SoffitFocus, type SoffitThing, soffitAt } from "../scene/soffitHit.ts";
import type { Selection } from "../selection.ts";
import type { PlanStage } from "./PlanLayers.tsx";
import { usePalette, useTypeface } from "./usePalette.ts";

/** Walls whose pieces are written out: those selected, and those of selected openings. */
function wallsOf({ items }: Selection, { unit }: InView): ReadonlySet<string> {
  return new Set(
    items.flatMap(({ bucket, id }) => {
      if (bucket === "walls") return [id];
      const opening = bucket === "openings" ? find(unit.openings, id) : undefined;
      return opening === undefined ? [] : [opening.wall];
    }),
  );
}

export function useScene(inView: InView): Scene {
  const state = useEditorState();
  const screen = useScreen();
  const palette = usePalette();
  const { speech } = useSpeech();
  const { selection, view } = state.session;
  const { size, shownTheme, allWidths, showsSoffit } = screen;
  const problem = screen.panel === "problems" ? screen.problem : null;
  const viewport = useMemo(() => ({ ...view, ...size }), [view, size]);
  const selectedWalls = useMemo(() => wallsOf(selection, inView), [selection, inView]);
  const lettering = useMemo(() => letteringOf(speech), [speech]);
  return useMemo(
    () => ({
      viewport,
      detail: detailAt(viewport.scale),
      palette,
      theme: shownTheme,
      lettering,
      unit: inView.unit,
      live: inView.live,
      isStale: inView.isStale,
      selectedWalls,
      problems: inView.problems,
      chosenProblem: problem,
      allWidths,
      showsSoffit,
    }),
    [viewport, palette, shownTheme, lettering, inView, selectedWalls, problem, allWidths, showsSoffit],
  );
}

// A mouse needs no cross-hair, and its movements wake nothing here.
function placeByKeys({ at, byKeys }: Pointer): Position | null {
  return byKeys ? at : null;
}

function soffitOn({ live, unit }: Scene, focus: SoffitFocus | null): SoffitThing | null {
  return focus === null || focus.unit !== unit.id ? null : soffitAt(live, focus.at, focus.reach);
}

export function usePainting(stage: PlanStage | null, scene: Scene, figures: readonly Figure[]): void {
  const { session } = useEditorState();
  const { pointer, backdrop, soffit } = useBench();
  const under = useSyncExternalStore(backdrop.subscribe, backdrop.get);
  const byKeys = useSyncExternalStore(pointer.subscribe, () => placeByKeys(pointer.get()));
  const isThere = useTypeface();
  const focus = useSyncExternalStore(soffit.subscribe, soffit.get);
  const { viewport, palette } = scene;

  useEffect(() => {
    stage?.paint("ground", (pen) => {
      drawGround(pen, viewport, palette);
      under?.(pen, viewport);
      drawGrid(pen, viewport, palette);
    });
  }, [stage, viewport, palette, under]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: drawn again in its own typeface once that is there
  useEffect(() => {
    stage?.paint("plan", (pen) => drawPlan(pen, scene));
  }, [stage, scene, isThere]);

  const { selection, hovered, hoveredPiece, preview, tool } = session;
  const crossHair = tool.name === "select" ? null : byKeys;
  useEffect(() => {
    stage?.paint("hand", (pen) =>
      drawOverlay(pen, {
        viewport: scene.viewport,
        palette: scene.palette,
        unit: scene.unit,
        live: scene.isStale ? null : scene.live,
        selection: selection.items,
        hovered,
        hoveredPiece,
        soffit: scene.showsSoffit && !scene.isStale ? soffitOn(scene, focus) : null,
        marks: preview?.marks ?? [],
        figures,
        crossHair,
      }),
    );
  }, [stage, scene, figures, selection, hovered, hoveredPiece, preview, crossHair, focus]);
}
