// The canvas behind the drawing: three layers of one shape each, drawn sharp on any screen.
//
//   ground   paper, grid, underlay         only when the view or the theme changes
//   plan     concrete, pieces, names       when the plan or its fill changes
//   hand     selection, snaps, dimensions  with every movement

import { Layer } from "konva/lib/Layer.js";
import { Shape } from "konva/lib/Shape.js";
import { Stage } from "konva/lib/Stage.js";

export type LayerName = "ground" | "plan" | "hand";

/** Draws one layer. Coordinates are px of the page, whatever the pixels of the screen. */
export type Painter = (pen: CanvasRenderingContext2D) => void;

export interface PlanStage {
  readonly resize: (width: number, height: number) => void;
  /** Replaces what a layer draws and has it drawn with the next frame. */
  readonly paint: (layer: LayerName, painter: Painter) => void;
  readonly destroy: () => void;
}

const NAMES: readonly LayerName[] = ["ground", "plan", "hand"];

export function createStage(container: HTMLDivElement): PlanStage {
  const stage = new Stage({ container, width: 1, height: 1, listening: false });
  const painters = new Map<LayerName, Painter>();
  const layers = new Map(
    NAMES.map((name) => {
      const layer = new Layer({ listening: false });
      const shape = new Shape({
        listening: false,
        perfectDrawEnabled: false,
        sceneFunc: (context) => {
          const pen = context._context;
          pen.save();
          painters.get(name)?.(pen);
          pen.restore();
        },
      });
      layer.add(shape);
      stage.add(layer);
      return [name, layer] as const;
    }),
  );
  return {
    resize: (width, height) => {
      const ratio = globalThis.devicePixelRatio;
      for (const layer of layers.values()) {
        if (layer.getCanvas().getPixelRatio() !== ratio) layer.getCanvas().setPixelRatio(ratio);
      }
      stage.size({ width, height });
    },
    paint: (name, painter) => {
      painters.set(name, painter);
      layers.get(name)?.batchDraw();
    },
    destroy: () => {
      stage.destroy();
    },
  };
}
