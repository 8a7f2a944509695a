// Do the pieces of a soffit tile it exactly, holes apart, and is each of them a piece of the kit of that size?
//
//   ┌──┬┊─┬─┐   cut at every corner's u: along the middle of each column pieces and unfilled places follow one another
//   ├──┼┊─┤ │   from edge to edge without a gap; and the areas of all of them add up, which catches what slopes
//   └──┴┊─┴─┘

import type { Problem, UnitFill } from "../../../src/fill/result.ts";
import type { Kit, Piece } from "../../../src/kit/kit.ts";
import { type AuditSoffit, areaOf, type BoxPiece, type Shape } from "./soffitShapes.ts";

/** Gaps, overlaps and overhangs; unfilled places without an error that says why. */
export function soffitTilingFaults(read: AuditSoffit, problems: readonly Problem[]): string[] {
  const { soffit, outline, holes, connectors, panels, closures, lines, unfilled } = read;
  const { room } = soffit;
  const faults = read.askew.map((piece) => `${room}: ${piece} is no rectangle along its panels`);
  for (const { problem } of unfilled) {
    if (problems[problem]?.severity !== "error") faults.push(`${room}: unfilled points at no error`);
  }
  const rectangles = [...panels, ...closures, ...lines.flatMap(({ parts }) => parts)];
  for (const { one, u0, u1, v0, v1 } of rectangles) {
    if (![u0, u1, v0, v1].every(Number.isInteger)) faults.push(`${room}: ${one.piece} is not on whole mm`);
  }
  const solid: Shape[] = [
    ...rectangles.map(
      ({ u0, u1, v0, v1 }): Shape => [
        [u0, v0],
        [u1, v0],
        [u1, v1],
        [u0, v1],
      ],
    ),
    ...[...connectors, ...unfilled].map(({ shape }) => shape),
  ];
  const due = Math.abs(areaOf(outline)) - sum(holes.map((hole) => Math.abs(areaOf(hole))));
  const found = sum(solid.map((shape) => Math.abs(areaOf(shape))));
  if (Math.abs(due - found) > slackOf([outline, ...holes, ...solid]))
    faults.push(`${room}: ${found} mm² listed for a soffit of ${due} mm²`);
  return [...faults, ...columnFaults(room, outline, holes, solid)];
}

// Corners are given to 0.001 mm: along every edge that slopes so much may be lost.
function slackOf(shapes: readonly Shape[]): number {
  let slack = 1;
  for (const shape of shapes) {
    shape.forEach(([u, v], k) => {
      const [a, b] = shape[(k + 1) % shape.length]!;
      if (![u, v, a, b].every(Number.isInteger)) slack += 0.01 * Math.hypot(a - u, b - v);
    });
  }
  return slack;
}

// Along the middle of every column the pieces follow one another from edge to edge of the soffit.
function columnFaults(
  room: string,
  outline: Shape,
  holes: readonly Shape[],
  solid: readonly Shape[],
): string[] {
  const all = [outline, ...holes, ...solid];
  const us = cuts(all.flatMap((shape) => shape.map(([u]) => u)));
  const isWhole = all.every((shape) => shape.every((corner) => corner.every(Number.isInteger)));
  const spans = solid.map((shape) => ({ shape, ...spanOf(shape) }));
  const faults: string[] = [];
  for (let i = 0; i + 1 < us.length; i++) {
    const [u0, u1] = [us[i]!, us[i + 1]!];
    const u = (u0 + u1) / 2;
    const due = without(
      stretchesAt(outline, u),
      holes.flatMap((hole) => stretchesAt(hole, u)),
    );
    const here = spans.filter(({ low, high }) => low < u && high > u);
    const found = here.flatMap(({ shape }) => stretchesAt(shape, u)).sort((a, b) => a[0] - b[0]);
    const off = [...without(due, found), ...without(found, due), ...overlapsOf(found)];
    const most = off.reduce((sum, [from, to]) => sum + to - from, 0);
    // Where edges slope, what is smaller than a square millimetre is left out.
    if (most === 0 || (!isWhole && most * (u1 - u0) < SLIVERS)) continue;
    faults.push(
      `${room}: u ${u0}..${u1} is not covered once at v ${off.map((one) => one.join("..")).join(", ")}`,
    );
  }
  return faults;
}

/** Left out in one column at most, mm². */
const SLIVERS = 5;

function overlapsOf(sorted: readonly Stretch[]): Stretch[] {
  let reached = Number.NEGATIVE_INFINITY;
  const found: Stretch[] = [];
  for (const [low, high] of sorted) {
    if (low < reached - HAIR) found.push([low, Math.min(reached, high)]);
    reached = Math.max(reached, high);
  }
  return found;
}

/** Corners are given to 0.001 mm. */
const HAIR = 0.02;

type Stretch = readonly [low: number, high: number];

function spanOf(shape: Shape) {
  const us = shape.map(([u]) => u);
  return { low: Math.min(...us), high: Math.max(...us) };
}

function cuts(places: readonly number[]): number[] {
  const sorted = [...new Set(places)].sort((a, b) => a - b);
  return sorted.filter((place, k) => k === 0 || place - sorted[k - 1]! > HAIR);
}

/** Where a line of one u lies within the shape. */
function stretchesAt(shape: Shape, u: number): Stretch[] {
  const crossings = shape
    .flatMap(([a, b], k) => {
      const [c, d] = shape[(k + 1) % shape.length]!;
      return a > u !== c > u ? [b + ((u - a) / (c - a)) * (d - b)] : [];
    })
    .sort((a, b) => a - b);
  return crossings.flatMap((v, k): Stretch[] =>
    k % 2 === 0 && crossings[k + 1]! - v > HAIR ? [[v, crossings[k + 1]!]] : [],
  );
}

function without(stretches: readonly Stretch[], holes: readonly Stretch[]): Stretch[] {
  let left = [...stretches];
  for (const [low, high] of holes) {
    left = left.flatMap(([a, b]): Stretch[] => {
      if (high <= a || low >= b) return [[a, b]];
      return (
        [
          [a, low],
          [high, b],
        ] as const
      ).filter(([from, to]) => to - from > HAIR);
    });
  }
  return left;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** Codes, families and sizes of slab panels, closures, strips and props. */
export function soffitSizeFaults(read: AuditSoffit, kit: Kit): string[] {
  const { room, height, props } = read.soffit;
  const faults: string[] = [];
  const check = (one: BoxPiece, fits: (piece: Piece, made: number | null) => boolean) => {
    const [, base = one.one.code, made] = /^(.+)\/(\d+)$/.exec(one.one.code) ?? [];
    const plain = kit.pieces.find(({ code }) => code === one.one.code);
    const piece = plain ?? kit.pieces.find(({ code }) => code === base);
    const isRight =
      piece?.family === one.one.family && fits(piece, plain === undefined ? Number(made) : null);
    if (!isRight) faults.push(`${room}: ${one.one.code} is ${one.u1 - one.u0} × ${one.v1 - one.v0}`);
  };
  const sizes = ({ u0, u1, v0, v1 }: BoxPiece) => [u1 - u0, v1 - v0] as const;
  for (const one of read.panels) {
    const [along, across] = sizes(one);
    check(one, (piece) => {
      if (piece.family !== "slab-panel") return false;
      const isStraight = piece.length === along && piece.width === across;
      return isStraight || (piece.length === across && piece.width === along);
    });
  }
  for (const one of read.closures) {
    check(
      one,
      (piece) =>
        piece.family === "closure-strip" &&
        sizes(one).some((size) => size >= piece.least && size <= piece.greatest),
    );
  }
  for (const one of read.lines.flatMap(({ parts }) => parts)) {
    const [along, across] = sizes(one);
    check(
      one,
      (piece, made) =>
        piece.family === "shoring-strip" &&
        piece.width === along &&
        (made === null
          ? piece.length === across && one.one.madeToMeasure === undefined
          : made === across && piece.length >= across && one.one.madeToMeasure === true),
    );
  }
  for (const { code } of props) {
    const prop = kit.pieces.find((piece) => piece.code === code);
    if (prop?.family !== "prop" || height < prop.least || height > prop.greatest)
      faults.push(`${room}: ${code} is no prop that reaches ${height}`);
  }
  return faults;
}

/** A connector is listed on a face or at an outside corner too, under one id and code; nothing else is listed twice. */
export function soffitIdFaults(fill: UnitFill): string[] {
  const faults: string[] = [];
  const standing = new Map<string, string>();
  for (const { piece, code } of [...fill.faces.flatMap(({ pieces }) => pieces), ...fill.corners])
    standing.set(piece, code);
  const others = new Set([
    ...standing.keys(),
    ...[...fill.reveals.flatMap(({ pieces }) => pieces), ...fill.fittings].map(({ piece }) => piece),
  ]);
  const seen = new Set<string>();
  for (const { room, pieces, props } of fill.soffits) {
    for (const { piece, code, family } of [
      ...pieces,
      ...props.map((prop) => ({ ...prop, family: "prop" })),
    ]) {
      if (seen.has(piece)) faults.push(`${room}: ${piece} is listed twice in soffits`);
      seen.add(piece);
      const isConnector = family === "wall-slab-connector" || family === "connector-corner";
      if (isConnector && standing.get(piece) !== code) faults.push(`${room}: ${piece} hangs on no face`);
      if (!isConnector && others.has(piece)) faults.push(`${room}: ${piece} names two pieces`);
    }
  }
  return faults;
}
