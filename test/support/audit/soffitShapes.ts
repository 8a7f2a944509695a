// The soffits of a fill in axes of their own, read from the pieces alone: rectangles with u along the panels' lengths.
//
//   plan y ↑   ╱╲         v ↑  ┌──┬┬──┐     what runs along neither axis stays a polygon
//          └→ x ╲╱           └→ u └──┴┴──┘

import type { Soffit, SoffitPiece, SoffitProp } from "../../../src/fill/result.ts";
import type { Position } from "../../../src/plan/project.ts";

export type Shape = readonly Position[];

export interface Box {
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
}

export interface BoxPiece extends Box {
  readonly one: SoffitPiece;
}

/** Strips that lie end to end, with the props whose heads lie on them, by v. */
export interface Line extends Box {
  readonly parts: readonly BoxPiece[];
  readonly props: readonly PlacedProp[];
}

export interface PlacedProp {
  readonly one: SoffitProp;
  readonly u: number;
  readonly v: number;
}

export interface AuditSoffit {
  readonly soffit: Soffit;
  readonly outline: Shape;
  readonly holes: readonly Shape[];
  readonly connectors: readonly { readonly one: SoffitPiece; readonly shape: Shape }[];
  readonly panels: readonly BoxPiece[];
  readonly closures: readonly BoxPiece[];
  readonly lines: readonly Line[];
  readonly unfilled: readonly { readonly shape: Shape; readonly problem: number }[];
  /** Props that stand under no strip. */
  readonly strays: readonly PlacedProp[];
  /** Pieces that should be rectangles along the axes and are not. */
  readonly askew: readonly string[];
}

/** Coordinates in the plan are given to 0.001 mm; places along a soffit's own axes are whole. */
const HAIR = 0.01;

export function readSoffit(soffit: Soffit): AuditSoffit {
  const toLocal = axesOf(soffit);
  const shapeOf = (outline: readonly Position[]): Shape => outline.map(toLocal);
  const askew: string[] = [];
  const boxesOf = (family: string): BoxPiece[] =>
    soffit.pieces
      .filter((one) => one.family === family)
      .flatMap((one) => {
        const box = boxOf(shapeOf(one.outline));
        if (box === null) askew.push(one.piece);
        return box === null ? [] : [{ ...box, one }];
      });
  const strips = boxesOf("shoring-strip");
  const props = soffit.props.map((one): PlacedProp => {
    const [u, v] = toLocal(one.at);
    return { one, u, v };
  });
  const lines = linesOf(strips, props);
  return {
    soffit,
    outline: shapeOf(soffit.outline),
    holes: soffit.holes.map(shapeOf),
    connectors: soffit.pieces
      .filter(({ family }) => family === "wall-slab-connector" || family === "connector-corner")
      .map((one) => ({ one, shape: shapeOf(one.outline) })),
    panels: boxesOf("slab-panel"),
    closures: boxesOf("closure-strip"),
    lines,
    unfilled: soffit.unfilled.map(({ outline, problem }) => ({ shape: shapeOf(outline), problem })),
    strays: props.filter((prop) => !lines.some((line) => line.props.includes(prop))),
    askew,
  };
}

/** A shape's area, positive counter-clockwise. */
export function areaOf(shape: Shape): number {
  const [origin] = shape;
  if (origin === undefined) return 0;
  let double = 0;
  shape.forEach(([x, y], k) => {
    const [a, b] = shape[(k + 1) % shape.length]!;
    double += (x - origin[0]) * (b - origin[1]) - (a - origin[0]) * (y - origin[1]);
  });
  return double / 2;
}

/** The rectangle that a shape is; null where it is none along the axes. */
export function boxOf(shape: Shape): Box | null {
  const us = shape.map(([u]) => u);
  const vs = shape.map(([, v]) => v);
  const box = { u0: Math.min(...us), u1: Math.max(...us), v0: Math.min(...vs), v1: Math.max(...vs) };
  const isCorner = ([u, v]: Position) => (u === box.u0 || u === box.u1) && (v === box.v0 || v === box.v1);
  const isRectangle = shape.length === 4 && shape.every(isCorner);
  return isRectangle && areaOf(shape) === (box.u1 - box.u0) * (box.v1 - box.v0) ? box : null;
}

// Along a panel or a strip, or along the longest edge of the outline where there is none; turned so that lengths run along u.
function axesOf(soffit: Soffit): (at: Position) => Position {
  const guide =
    soffit.pieces.find(({ family }) => family === "slab-panel" || family === "shoring-strip")?.outline ??
    soffit.outline;
  let edge: Position = [1, 0];
  let longest = 0;
  guide.forEach((from, k) => {
    const to = guide[(k + 1) % guide.length]!;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (length <= longest * 1.0001) return;
    longest = length;
    edge = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  });
  const isAlongX = Math.abs(edge[0]) >= Math.abs(edge[1]);
  const isAlongU = soffit.along === null || (soffit.along === "x") === isAlongX;
  const [e, n] = isAlongU ? [edge, [-edge[1], edge[0]]] : [[edge[1], -edge[0]], edge];
  const origin = guide[0] ?? [0, 0];
  const isSquare = Math.abs(edge[0]) < 1e-9 || Math.abs(edge[1]) < 1e-9;
  return ([x, y]) => {
    const [dx, dy] = isSquare ? [x, y] : [x - origin[0], y - origin[1]];
    return [whole(dx * e![0]! + dy * e![1]!), whole(dx * n![0]! + dy * n![1]!)];
  };
}

function whole(value: number): number {
  const near = Math.round(value);
  return (Math.abs(value - near) < HAIR ? near : value) + 0;
}

function linesOf(strips: readonly BoxPiece[], props: readonly PlacedProp[]): Line[] {
  const lines: { box: Box; parts: BoxPiece[] }[] = [];
  for (const strip of [...strips].sort((a, b) => a.u0 - b.u0 || a.v0 - b.v0)) {
    const before = lines.find(({ box }) => box.u0 === strip.u0 && box.u1 === strip.u1 && box.v1 === strip.v0);
    if (before === undefined) lines.push({ box: strip, parts: [strip] });
    else {
      before.parts.push(strip);
      before.box = { ...before.box, v1: strip.v1 };
    }
  }
  return lines.map(({ box: { u0, u1, v0, v1 }, parts }) => ({
    u0,
    u1,
    v0,
    v1,
    parts,
    props: props.filter(({ u, v }) => u > u0 && u < u1 && v > v0 && v < v1).sort((a, b) => a.v - b.v),
  }));
}
