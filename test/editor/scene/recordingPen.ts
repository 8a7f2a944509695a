// A pen that draws nothing and remembers what it was told, in the order it was told.

import type { Pen } from "../../../src/editor/scene/pen.ts";

export interface Stroke {
  readonly kind: "fill" | "stroke" | "text" | "rect";
  readonly colour: string;
  /** Of the path, in the coordinates it was given in; the place of a text. */
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly width: number;
  readonly dash: readonly number[];
  readonly text: string;
}

export interface Recorder {
  readonly pen: Pen;
  readonly strokes: Stroke[];
}

export function recordingPen(): Recorder {
  const strokes: Stroke[] = [];
  let points: [number, number][] = [];
  let dash: number[] = [];
  let offset: readonly [number, number] = [0, 0];
  const kept: { offset: readonly [number, number]; style: Partial<Pen> }[] = [];
  const style = {
    fillStyle: "",
    strokeStyle: "",
    lineWidth: 1,
    font: "",
    globalAlpha: 1,
    lineCap: "butt",
    lineJoin: "miter",
    textAlign: "start",
    textBaseline: "alphabetic",
  };
  const record = (kind: Stroke["kind"], more: Partial<Stroke> = {}) =>
    strokes.push({
      kind,
      colour: String(kind === "stroke" ? style.strokeStyle : style.fillStyle),
      points: [...points],
      width: style.lineWidth,
      dash: [...dash],
      text: "",
      ...more,
    });
  const at = (x: number, y: number): [number, number] => [x + offset[0], y + offset[1]];
  const does = {
    beginPath: () => {
      points = [];
    },
    moveTo: (x: number, y: number) => points.push(at(x, y)),
    lineTo: (x: number, y: number) => points.push(at(x, y)),
    arc: (x: number, y: number) => points.push(at(x, y)),
    rect: (x: number, y: number, w: number, h: number) => points.push(at(x, y), at(x + w, y + h)),
    closePath: () => undefined,
    clip: () => undefined,
    rotate: () => undefined,
    fill: () => record("fill"),
    stroke: () => record("stroke"),
    strokeText: () => undefined,
    fillRect: (x: number, y: number, w: number, h: number) =>
      record("rect", { points: [at(x, y), at(x + w, y + h)] }),
    fillText: (text: string, x: number, y: number) => record("text", { text, points: [at(x, y)] }),
    measureText: (text: string) => ({ width: text.length * 6 }) as TextMetrics,
    setLineDash: (pattern: number[]) => {
      dash = pattern;
    },
    translate: (x: number, y: number) => {
      offset = at(x, y);
    },
    save: () => kept.push({ offset, style: { ...style } as Partial<Pen> }),
    restore: () => {
      const last = kept.pop();
      if (last === undefined) throw new Error("restored more often than saved");
      offset = last.offset;
      Object.assign(style, last.style);
    },
  };
  return { pen: Object.assign(style, does) as unknown as Pen, strokes };
}
