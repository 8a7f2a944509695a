// The canvas behind the drawing: three layers of one shape each, drawn sharp on any screen.
//
//   ground   paper, grid, underlay         only when the view or the theme changes
//   plan     concrete, pieces, names       when the plan or its fill changes
//   hand     selection, snaps, dimensions  with every movement
//
// One shape a layer, and no element a piece: ten thousand elements would cost ten times the drawing itself. Four nodes
// that never change need no renderer of their own either: they are made here once.

import { Layer } from "konva/lib/Layer.js";
import { Shape } from "konva/lib/Shape.js";
import { Stage } from "konva/lib/Stage.js";
import { memo, useEffect, useLayoutEffect, useRef } from "react";

export type LayerName = "ground" | "plan" | "hand";

/** Draws one layer. Coordinates are px of the page, whatever the pixels of the screen. */
export type Painter = (pen: CanvasRenderingContext2D) => void;

export interface PlanStage {
  /** Replaces what a layer draws and has it drawn with the next frame. */
  readonly paint: (layer: LayerName, painter: Painter) => void;
}

const NAMES: readonly LayerName[] = ["ground", "plan", "hand"];

interface LayersProps {
  readonly size: { readonly width: number; readonly height: number };
  /** Told once, when the layers stand. */
  readonly onReady: (stage: PlanStage | null) => void;
}

/** Drawn anew only when its size changes: what the layers show reaches them through {@link PlanStage}. */
export const PlanLayers = memo(function PlanLayers({ size, onReady }: LayersProps) {
  const container = useRef<HTMLDivElement>(null);
  const stage = useRef<Stage | null>(null);
  useLayoutEffect(() => {
    if (container.current === null) return;
    const made = new Stage({ container: container.current, width: 1, height: 1, listening: false });
    const painters = new Map<LayerName, Painter>();
    const layers = new Map(NAMES.map((name) => [name, layerOf(name, painters)] as const));
    for (const layer of layers.values()) made.add(layer);
    stage.current = made;
    onReady({
      paint: (name, painter) => {
        painters.set(name, painter);
        layers.get(name)?.batchDraw();
      },
    });
    return () => {
      onReady(null);
      stage.current = null;
      made.destroy();
    };
  }, [onReady]);
  useEffect(() => {
    stage.current?.size({ width: Math.max(1, size.width), height: Math.max(1, size.height) });
    const ratio = globalThis.devicePixelRatio;
    for (const layer of stage.current?.getLayers() ?? []) {
      if (layer.getCanvas().getPixelRatio() !== ratio) layer.getCanvas().setPixelRatio(ratio);
    }
  });
  return <div ref={container} />;
});

function layerOf(name: LayerName, painters: ReadonlyMap<LayerName, Painter>): Layer {
  const layer = new Layer({ listening: false });
  const sceneFunc = ({ _context: pen }: { readonly _context: CanvasRenderingContext2D }) => {
    pen.save();
    painters.get(name)?.(pen);
    pen.restore();
  };
  layer.add(new Shape({ listening: false, perfectDrawEnabled: false, sceneFunc }));
  return layer;
}
