// The key plan: the room from above with the letters of its faces, where the work starts, which way it runs.

import type { FilledFace } from "../fill/result.ts";
import type { Position } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import { type Box, boxAround, freePlace } from "./box.ts";
import type { SheetFace, SheetRing } from "./faceOrder.ts";
import type { SheetInfo } from "./info.ts";
import { textWidth } from "./lettering.ts";
import type { LetterHeight, Mark, Point } from "./mark.ts";
import { OUTLINE, THIN } from "./pieceMark.ts";
import { intoConcrete, northMarks } from "./planView.ts";
import { WORDS } from "./words.ts";

const HEAD = 7;
/** Paper round the plan for letters of faces seen from outside and for the heads of corners. */
const BORDER = 6;

interface Frame {
  /** Where a place of the plan lies on paper. */
  readonly at: (position: Position) => Point;
  readonly area: Box;
  readonly taken: Box[];
}

interface Plan {
  readonly at: Frame["at"];
  readonly info: SheetInfo;
}

/** Draws the key plan into the area as large as it fits. It is a diagram: sizes are read off the ribbon. */
export function keyPlanMarks(rings: readonly SheetRing[], area: Box, info: SheetInfo): readonly Mark[] {
  const faces = rings.flatMap((ring) => ring.faces);
  if (faces.length === 0) return [];
  const at = placed(
    faces.map(({ face }) => face),
    area,
  );
  const inside: Box = { x: area.x, y: area.y + HEAD, width: area.width, height: area.height - HEAD };
  const frame: Frame = {
    at,
    area: inside,
    taken: faces.flatMap(({ face }) => lineBoxes(at(face.from), at(face.to))),
  };
  return [
    heading(area, WORDS[info.language].keyPlan),
    ...northMarks(area.x + area.width - 3, area.y + 3.2),
    ...wallMarks(rings, at, info),
    ...rings.flatMap((ring) => cornerHeads(ring, frame)),
    ...faces.flatMap((face) => letterMarks(face, frame)),
  ];
}

/** The walls of these rings with their openings, at the places of a plan on paper. */
export function wallMarks(
  rings: readonly SheetRing[],
  at: (position: Position) => Point,
  info: SheetInfo,
): readonly Mark[] {
  return rings.flatMap((ring) =>
    ring.faces.flatMap((face, index) => faceMarks(face, bodyEnds(ring, index, info), { at, info })),
  );
}

function placed(faces: readonly FilledFace[], area: Box) {
  const points = faces.flatMap(({ from, to }) => [from, to]);
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const room = { width: area.width - 2 * BORDER, height: area.height - HEAD - 2 * BORDER };
  // At least a metre across, so that a single short face does not fill the paper.
  const scale = Math.max((right - left) / room.width, (high - low) / room.height, 1000 / room.width);
  const x0 = area.x + area.width / 2 - (left + right) / 2 / scale;
  const y0 = area.y + HEAD + (area.height - HEAD) / 2 + (low + high) / 2 / scale;
  return ([x, y]: Position): Point => [x0 + x / scale, y0 - y / scale];
}

/** The paper of a line, which letters keep clear of: boxes along it, for it may run aslant. */
function lineBoxes(from: Point, to: Point): readonly Box[] {
  const steps = Math.ceil(Math.max(Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])));
  return Array.from({ length: steps + 1 }, (_, step) => {
    const share = steps === 0 ? 0 : step / steps;
    return boxAround(from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share, 1.4, 1.4);
  });
}

function heading(area: Box, text: string): Mark {
  return {
    kind: "text",
    at: [area.x, area.y + 4.6],
    text,
    height: 3.5,
    weight: 600,
    ink: "ink",
    anchor: "start",
  };
}

/** The concrete behind the face and its line, both interrupted by openings; in a window's gap stands a thin line. */
function faceMarks(sheetFace: SheetFace, ends: readonly [Mm, Mm], plan: Plan): readonly Mark[] {
  const { face } = sheetFace;
  const thickness = plan.info.thickness[face.walls[0] ?? ""] ?? 0;
  const [nx, ny] = intoConcrete(face);
  const point = (x: Mm, depth: Mm): Point => {
    const share = face.length === 0 ? 0 : x / face.length;
    return plan.at([
      face.from[0] + (face.to[0] - face.from[0]) * share + nx * depth,
      face.from[1] + (face.to[1] - face.from[1]) * share + ny * depth,
    ]);
  };
  const body = (from: Mm, to: Mm): Mark => ({
    kind: "polygon",
    points: [point(from, 0), point(to, 0), point(to, thickness), point(from, thickness)],
    fill: "faint",
  });
  const bodies: Mark[] = [];
  const lines: Mark[] = [];
  let from = 0;
  for (const opening of [...face.openings].sort((a, b) => a.x - b.x)) {
    if (opening.x > from) {
      bodies.push(body(from === 0 ? -ends[0] : from, opening.x));
      lines.push(wallMark(point(from, 0), point(opening.x, 0)));
    }
    if (opening.sill > 0) {
      lines.push({
        kind: "line",
        from: point(opening.x, 0),
        to: point(opening.x + opening.width, 0),
        stroke: THIN,
      });
    }
    from = Math.max(from, opening.x + opening.width);
  }
  if (from < face.length) {
    bodies.push(body(from === 0 ? -ends[0] : from, face.length + ends[1]));
    lines.push(wallMark(point(from, 0), point(face.length, 0)));
  }
  return [...bodies, ...lines];
}

/** How far the concrete of a face runs on beyond its two ends: round an inside corner as far as it is thick. */
function bodyEnds(ring: SheetRing, index: number, info: SheetInfo): readonly [Mm, Mm] {
  const thickness = (at: number) => {
    const face = ring.faces[(at + ring.faces.length) % ring.faces.length]!.face;
    return info.thickness[face.walls[0] ?? ""] ?? 0;
  };
  const isInside = (at: number) => ring.corners[at % ring.corners.length]?.turn === "inside";
  return [isInside(index) ? thickness(index - 1) : 0, isInside(index + 1) ? thickness(index + 1) : 0];
}

function wallMark(from: Point, to: Point): Mark {
  return { kind: "line", from, to, stroke: { weight: 0.5, ink: "ink" } };
}

/** Heads of the start and the closing corner, beside their corner on the far side of the person. */
function cornerHeads(ring: SheetRing, frame: Frame): readonly Mark[] {
  return ring.corners.flatMap((corner, index): readonly Mark[] => {
    if (corner === null || corner.role === null) return [];
    const before = ring.faces[(index + ring.faces.length - 1) % ring.faces.length]!;
    const [x, y] = frame.at(corner.at);
    const [ax, ay] = intoConcrete(before.face);
    const [bx, by] = intoConcrete(ring.faces[index]!.face);
    const width = textWidth(corner.name, { height: 3.5, weight: 700 }) + 1.4;
    const wish: Point = [x + (ax + bx) * (width / 2 + 0.4), y - (ay + by) * 3];
    const place = freePlace({ width: width + 0.6, height: 5.6 }, wish, { ...frame, reach: 8, step: 0.5 });
    if (place === null) return [];
    frame.taken.push(place);
    const isStart = corner.role === "start";
    const box = { x: place.x + 0.3, y: place.y + 0.3, width, height: 5 };
    return [
      { kind: "rect", box, fill: isStart ? "ink" : "paper", stroke: OUTLINE },
      {
        kind: "text",
        at: [box.x + width / 2, box.y + 4.25],
        text: corner.name,
        height: 3.5,
        weight: 700,
        ink: isStart ? "paper" : "ink",
        anchor: "middle",
      },
    ];
  });
}

/** The letter on the person's side of the face, and by the face an arrowhead the way the work runs. */
function letterMarks(sheetFace: SheetFace, frame: Frame): readonly Mark[] {
  const { face, letter, direction } = sheetFace;
  const [a, b] = [frame.at(face.from), frame.at(face.to)];
  const [nx, ny] = intoConcrete(face);
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const paper = Math.sqrt((b[0] - a[0]) * (b[0] - a[0]) + (b[1] - a[1]) * (b[1] - a[1]));
  const marks: Mark[] = paper > 9 ? [arrowHead(a, b, direction)] : [];
  for (const height of [5, 3.5, 2.5] as const satisfies readonly LetterHeight[]) {
    const width = textWidth(letter, { height, weight: 700 });
    const wish: Point = [middle[0] - nx * (1.8 + width / 2), middle[1] + ny * (1.8 + height / 2)];
    const size = { width: width + 0.6, height: height + 0.6 };
    const place = freePlace(size, wish, { ...frame, reach: 4, step: 0.5 });
    if (place === null) continue;
    frame.taken.push(place);
    const [x, y] = [place.x + place.width / 2, place.y + place.height / 2 + height / 2];
    marks.push({ kind: "text", at: [x, y], text: letter, height, weight: 700, ink: "ink", anchor: "middle" });
    break;
  }
  return marks;
}

/** On the line of the face, short of its end in the direction of the work. */
function arrowHead(a: Point, b: Point, direction: "left" | "right"): Mark {
  const [from, to] = direction === "right" ? [a, b] : [b, a];
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const size = Math.sqrt(dx * dx + dy * dy);
  const [ux, uy] = [dx / size, dy / size];
  const [x, y] = [to[0] - ux * 3.4, to[1] - uy * 3.4];
  const points: readonly Point[] = [
    [x + ux * 1.4, y + uy * 1.4],
    [x - ux * 1.4 - uy * 1.2, y - uy * 1.4 + ux * 1.2],
    [x - ux * 1.4 + uy * 1.2, y - uy * 1.4 - ux * 1.2],
  ];
  return { kind: "polygon", points, fill: "ink" };
}
