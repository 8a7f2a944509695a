// The plan itself: concrete, openings, services that must not be drilled, layout pins and the stretches without any.

import type { Position } from "../../plan/project.ts";
import { type Box, grown } from "../box.ts";
import type { Mark, Point, Stroke } from "../mark.ts";
import { clipped, shared } from "./clip.ts";
import type { OpeningMark } from "./openingMarks.ts";
import type { PlanPlace } from "./planPlace.ts";
import type { SettingOut } from "./settingOut.ts";

const FACE: Stroke = { weight: 0.5, ink: "ink" };
const THIN: Stroke = { weight: 0.18, ink: "ink" };
export const SERVICE: Stroke = { weight: 0.5, ink: "ink", dash: [2, 1] };
const BOXED: Stroke = { weight: 0.18, ink: "ink", dash: [1, 0.7] };
/** Dark and light in turn, so that it is told from a face of concrete. */
const GAP: readonly Stroke[] = [
  { weight: 1, ink: "paper" },
  { weight: 0.7, ink: "ink", dash: [1, 1] },
];

/** Paper beyond the concrete in which a service that goes on is still drawn. */
const BEYOND = 5;

export function planMarks(layout: SettingOut, place: PlanPlace): readonly Mark[] {
  const area = grown(place.concrete, BEYOND);
  // Dots on the two faces of a thin wall would run together where the scale is small.
  const size = place.scale <= 50 ? 1 : place.scale <= 75 ? 0.8 : 0.65;
  const services = layout.services.map(({ path, clearance }) => ({
    path: path.map(place.at),
    clear: clearance / place.scale,
  }));
  return [
    ...layout.outlines.map(
      ({ isConcrete, places }): Mark => ({
        kind: "polygon",
        points: places.map(place.at),
        fill: isConcrete ? "faint" : "paper",
        stroke: FACE,
      }),
    ),
    ...services.flatMap(({ path, clear }) => zoneMarks(path, clear, area)),
    ...layout.openings.flatMap((one) => openingMarks(one, place)),
    ...services.flatMap(({ path }) => pathMarks(path, area)),
    ...layout.gaps.flatMap(({ from, to }) => gapMarks(place.at(from), place.at(to))),
    ...layout.pins.flatMap(({ at, movedOff }) => pinMarks(place.at(at), movedOff.length > 0, size)),
  ];
}

/** A layout pin: a dot, an open ring where it gave way to a service. */
export function pinMarks(centre: Point, isMoved: boolean, size: number): readonly Mark[] {
  return isMoved
    ? [{ kind: "circle", centre, radius: 0.95 * size, fill: "paper", stroke: { weight: 0.35, ink: "ink" } }]
    : [{ kind: "circle", centre, radius: 0.6 * size, fill: "ink" }];
}

/** A stretch of a face without the pins it should have. */
export function gapMarks(from: Point, to: Point): readonly Mark[] {
  return GAP.map((stroke): Mark => ({ kind: "line", from, to, stroke }));
}

/** The clearance on both sides of a service: hatched along the axes, else shown by its two edges. */
export function zoneMarks(path: readonly Point[], clear: number, area: Box): readonly Mark[] {
  if (clear <= 0) return [];
  return path.slice(1).flatMap((to, k): readonly Mark[] => {
    const from = path[k]!;
    if (from[0] !== to[0] && from[1] !== to[1]) return slantedZone(from, to, clear, area);
    const box = shared(area, {
      x: Math.min(from[0], to[0]) - clear,
      y: Math.min(from[1], to[1]) - clear,
      width: Math.abs(from[0] - to[0]) + 2 * clear,
      height: Math.abs(from[1] - to[1]) + 2 * clear,
    });
    if (box === null) return [];
    return [{ kind: "hatch", box, pattern: "lines", pitch: 1.2, weight: 0.18, ink: "soft" }];
  });
}

function slantedZone(from: Point, to: Point, clear: number, area: Box): readonly Mark[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.sqrt(dx * dx + dy * dy);
  if (length === 0) return [];
  const [ux, uy] = [dx / length, dy / length];
  const strokes: (readonly [Point, Point])[] = [];
  const at = (along: number, aside: number): Point => [
    from[0] + ux * along - uy * aside,
    from[1] + uy * along + ux * aside,
  ];
  for (const aside of [-clear, clear]) strokes.push([at(-clear, aside), at(length + clear, aside)]);
  for (let along = 0; along + 2 * clear <= length + clear; along += 1.7)
    strokes.push([at(along - clear, -clear), at(along + clear, clear)]);
  return strokes.flatMap(([a, b]): readonly Mark[] => {
    const part = clipped(a, b, area);
    return part === null
      ? []
      : [{ kind: "line", from: part[0], to: part[1], stroke: { weight: 0.18, ink: "soft" } }];
  });
}

function pathMarks(path: readonly Point[], area: Box): readonly Mark[] {
  return path.slice(1).flatMap((to, k): readonly Mark[] => {
    const part = clipped(path[k]!, to, area);
    return part === null ? [] : [{ kind: "line", from: part[0], to: part[1], stroke: SERVICE }];
  });
}

// A door is a gap, a window a gap with its two faces drawn thin, for the wall goes on below it.
function openingMarks({ near, far, sill, isBoxed }: OpeningMark, { at }: PlanPlace): readonly Mark[] {
  const line = (a: Position, b: Position, stroke: Stroke): Mark => ({
    kind: "line",
    from: at(a),
    to: at(b),
    stroke,
  });
  if (isBoxed) return [line(near[0], far[0], BOXED), line(near[1], far[1], BOXED)];
  return [
    {
      kind: "polygon",
      points: [near[0], near[1], far[1], far[0]].map(at),
      fill: "paper",
      stroke: { weight: 0.5, ink: "paper" },
    },
    line(near[0], far[0], FACE),
    line(near[1], far[1], FACE),
    ...(sill > 0 ? [line(near[0], near[1], THIN), line(far[0], far[1], THIN)] : []),
  ];
}

/** The paper that a straight face covers, for texts to keep off: boxes along it where it runs aslant. */
export function faceBoxes(from: Point, to: Point): readonly Box[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const steps = dx === 0 || dy === 0 ? 0 : Math.ceil(Math.sqrt(dx * dx + dy * dy) / 1.5);
  const margin = 0.4;
  if (steps === 0)
    return [
      {
        x: Math.min(from[0], to[0]) - margin,
        y: Math.min(from[1], to[1]) - margin,
        width: Math.abs(dx) + 2 * margin,
        height: Math.abs(dy) + 2 * margin,
      },
    ];
  return Array.from({ length: steps + 1 }, (_, k) => ({
    x: from[0] + (dx * k) / steps - 1,
    y: from[1] + (dy * k) / steps - 1,
    width: 2,
    height: 2,
  }));
}
