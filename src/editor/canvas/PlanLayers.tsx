// The canvas behind the drawing: three layers of one shape each, drawn sharp on any screen.
//
//   ground   paper, grid, underlay         only when the view or the theme changes
//   plan     concrete, pieces, names       when the plan or its fill changes
//   hand     selection, snaps, dimensions  with every movement
//
// One shape a layer, and no element a piece: ten thousand elements would cost ten times the drawing itself.

import type { Context } from "konva/lib/Context.js";
import type { Layer as LayerNode } from "konva/lib/Layer.js";
import { memo, useEffect, useMemo, useRef } from "react";
import { Layer, Shape, Stage } from "react-konva/lib/ReactKonvaCore";

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
  const painters = useRef(new Map<LayerName, Painter>());
  const layers = useRef(new Map<LayerName, LayerNode>());
  const drawn = useMemo(() => NAMES.map((name) => ({ name, draw: drawer(painters.current, name) })), []);
  useEffect(() => {
    onReady({
      paint: (name, painter) => {
        painters.current.set(name, painter);
        layers.current.get(name)?.batchDraw();
      },
    });
    return () => onReady(null);
  }, [onReady]);
  useEffect(() => {
    const ratio = globalThis.devicePixelRatio;
    for (const layer of layers.current.values()) {
      if (layer.getCanvas().getPixelRatio() !== ratio) layer.getCanvas().setPixelRatio(ratio);
    }
  });
  return (
    <Stage width={Math.max(1, size.width)} height={Math.max(1, size.height)} listening={false}>
      {drawn.map(({ name, draw }) => (
        <Layer
          key={name}
          listening={false}
          ref={(layer: LayerNode | null) => {
            if (layer === null) layers.current.delete(name);
            else layers.current.set(name, layer);
          }}
        >
          <Shape listening={false} perfectDrawEnabled={false} sceneFunc={draw} />
        </Layer>
      ))}
    </Stage>
  );
});

function drawer(painters: ReadonlyMap<LayerName, Painter>, name: LayerName): (context: Context) => void {
  return (context) => {
    const pen = context._context;
    pen.save();
    painters.get(name)?.(pen);
    pen.restore();
  };
}
