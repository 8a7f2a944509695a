// The dimensions that stand on the drawing now: those of the gesture in hand, else those of what is selected.

import { useMemo } from "react";
import { find, type ItemRef, type UnitDocument } from "../../plan/document.ts";
import type { Mm } from "../../units.ts";
import { liveDimensions } from "../dimensions.ts";
import { useEditorState } from "../live/useWorkbench.tsx";
import type { InView } from "../live/workbench.ts";
import { type Figure, liveFigures, markFigures } from "../scene/figures.ts";
import { scenePieces } from "../scene/pieces.ts";
import { roomNames } from "../scene/rooms.ts";
import type { Scene } from "../scene/scene.ts";
import { toScreen } from "../scene/viewport.ts";

export function useFigures(scene: Scene, { unit }: InView): readonly Figure[] {
  const { viewport, live } = scene;
  const { session } = useEditorState();
  const { selection, preview, tool, settings } = session;
  return useMemo(() => {
    const marks = preview?.marks ?? [];
    const depth = live === null ? 0 : scenePieces(live).depth;
    const drawn = markFigures(viewport, marks, settings.thickness / 2 + depth);
    if (drawn.length > 0 || tool.name !== "select") return drawn;
    const dimensions = liveDimensions(unit, selection.items);
    return liveFigures(viewport, dimensions, {
      marks,
      halfWall: halfOf(unit, selection.items) + depth,
      inTheWay: roomNames(scene).map(({ at }) => toScreen(viewport, at)),
    });
  }, [scene, viewport, live, unit, selection, preview, tool, settings]);
}

// Half the thickness of the wall the selected thing is, or stands in.
function halfOf(unit: UnitDocument, [first]: readonly ItemRef[]): Mm {
  if (first === undefined) return 0;
  const opening = first.bucket === "openings" ? find(unit.openings, first.id) : undefined;
  return (find(unit.walls, opening?.wall ?? first.id)?.thickness ?? 0) / 2;
}
