// A plan on paper: its scale, where a place of the plan lies, the concrete as the faces bound it, the north arrow.
//
//      y ↑            A plan has y up and millimetres of building; paper has y down. Concrete lies on the left of every
//        └──→ x       face, so outside rings run counter-clockwise, rooms clockwise.

import type { FilledFace } from "../fill/result.ts";
import type { Position } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { Box } from "./box.ts";
import { ringsOf } from "./faceRing.ts";
import type { Mark, Point } from "./mark.ts";

/** Scales of plans, the largest first. @see ISO 5455, with the 1:25 and 1:75 of building drawings */
export const PLAN_SCALES: readonly number[] = [20, 25, 50, 75, 100, 200, 500, 1000, 2000, 5000, 10_000];

export interface PlanView {
  /** Millimetres of building to one of paper. */
  readonly scale: number;
  /** Where a place of the plan lies on paper. */
  readonly at: (position: Position) => Point;
}

export interface PlanBounds {
  readonly left: Mm;
  readonly right: Mm;
  readonly low: Mm;
  readonly high: Mm;
}

/** Round all places; round the origin when there is none. */
export function boundsOfPlan(places: readonly Position[]): PlanBounds {
  if (places.length === 0) return { left: 0, right: 0, low: 0, high: 0 };
  const xs = places.map(([x]) => x);
  const ys = places.map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) };
}

/** The largest scale at which the plan with `border` mm of paper round it fits the size. */
export function planScale(bounds: PlanBounds, size: Pick<Box, "width" | "height">, border: number): number {
  const [wide, high] = [size.width - 2 * border, size.height - 2 * border];
  const [x, y] = [bounds.right - bounds.left, bounds.high - bounds.low];
  const fitting = PLAN_SCALES.find((scale) => x / scale <= wide && y / scale <= high);
  return fitting ?? Math.ceil(Math.max(x / wide, y / high));
}

/** The plan at this scale, its middle in the middle of the area. */
export function planView(bounds: PlanBounds, scale: number, area: Box): PlanView {
  const x0 = area.x + area.width / 2 - (bounds.left + bounds.right) / 2 / scale;
  const y0 = area.y + area.height / 2 + (bounds.low + bounds.high) / 2 / scale;
  return { scale, at: ([x, y]) => [x0 + x / scale, y0 - y / scale] };
}

/** Unit vector from the face into the concrete, on its left; none for a face without length. */
export function intoConcrete({ from, to }: Pick<FilledFace, "from" | "to">): Point {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const size = Math.sqrt(dx * dx + dy * dy);
  return size === 0 ? [0, 0] : [-dy / size, dx / size];
}

/** The place `x` along the face and `depth` into the concrete; a negative depth lies on the person's side. */
export function onPlan(face: Pick<FilledFace, "from" | "to" | "length">, x: Mm, depth: Mm): Position {
  const [nx, ny] = intoConcrete(face);
  const share = face.length === 0 ? 0 : x / face.length;
  return [
    face.from[0] + (face.to[0] - face.from[0]) * share + nx * depth,
    face.from[1] + (face.to[1] - face.from[1]) * share + ny * depth,
  ];
}

/** The concrete in one grey, rooms and shafts left white: large rings first, so that what lies in a ring lies on it. */
export function concreteMarks(faces: readonly FilledFace[], view: PlanView): readonly Mark[] {
  return ringsOf(faces)
    .map((ring) => ring.faces.map(({ from }) => from))
    .filter((ring) => ring.length > 2)
    .map((ring) => ({ ring, area: twiceArea(ring) }))
    .sort((a, b) => Math.abs(b.area) - Math.abs(a.area))
    .map(
      ({ ring, area }): Mark => ({
        kind: "polygon",
        points: ring.map(view.at),
        fill: area > 0 ? "faint" : "paper",
      }),
    );
}

/** Twice the area of a ring, negative if it runs clockwise. */
export function twiceArea(ring: readonly Position[]): number {
  return ring.reduce((sum, [x, y], index) => {
    const [nx, ny] = ring[(index + 1) % ring.length]!;
    return sum + x * ny - y * nx;
  }, 0);
}

/** Plan north, the y axis of the project, with the middle of its arrow at the place. */
export function northMarks(x: number, y: number): readonly Mark[] {
  return [
    {
      kind: "polygon",
      points: [
        [x, y - 2.6],
        [x + 1.3, y + 2],
        [x, y + 1.1],
        [x - 1.3, y + 2],
      ],
      fill: "ink",
    },
    { kind: "text", at: [x - 2.4, y + 1.6], text: "N", height: 2.5, weight: 600, ink: "ink", anchor: "end" },
  ];
}
