// Drawings that the union can follow but that cannot be meant: walls that cross, walls drawn twice, walls that vanish.

import { buildGridIndex } from "../geom/gridIndex.ts";
import { alongLine, asideOfLine, intersectLines } from "../geom/line.ts";
import { comparePoints, type Point } from "../geom/point.ts";
import type { FaceEdge } from "./attribution.ts";
import type { Body } from "./body.ts";
import type { DrawnWall, DrawnWalls } from "./drawnWall.ts";
import type { OutlineFinding } from "./face.ts";
import type { Joints } from "./joints.ts";
import { TIE_TOLERANCE } from "./tolerance.ts";
import { placeText, sentence, wallText } from "./wording.ts";

const CELL = 1000; // mm

/** Walls drawn twice and walls without a length, by place. */
export function findDoubles({ walls, degenerate }: DrawnWalls): OutlineFinding[] {
  const twice = walls.flatMap((wall): OutlineFinding[] => {
    if (wall.names.length === 1) return [];
    const ids = wall.names.map((name) => name.id);
    const message = `${sentence(wallText(wall))} have the same ends and thickness: one wall is drawn twice. Delete one.`;
    return [{ severity: "error", kind: "wall-twice", message, where: { wall: ids[1]!, at: wall.from } }];
  });
  const short = degenerate
    .map((wall) => ({ id: wall.id, at: comparePoints(wall.from, wall.to) <= 0 ? wall.from : wall.to }))
    .sort((a, b) => comparePoints(a.at, b.at) || (a.id < b.id ? -1 : 1));
  return [...twice, ...short.map(tooShort)];
}

function tooShort({ id, at }: { readonly id: string; readonly at: Point }): OutlineFinding {
  const message =
    `Wall ${id} at ${placeText(at)} is no longer or no thicker than ${TIE_TOLERANCE} mm and gives no concrete. ` +
    "Delete it or draw it in full.";
  return { severity: "error", kind: "wall-too-short", message, where: { wall: id, at } };
}

/** Pairs of walls that cross without a joint, all four arms standing out, by the first wall and then the second. */
export function findCrossings(walls: readonly DrawnWall[]): OutlineFinding[] {
  const index = buildGridIndex(
    walls.map((wall) => [wall.from, wall.to]),
    CELL,
  );
  return walls.flatMap((wall, i) =>
    index.near(wall.from, wall.to, 0).flatMap((j) => {
      const at = j > i ? crossingOf(wall, walls[j]!) : null;
      return at === null ? [] : [crossingFinding(wall, walls[j]!, at)];
    }),
  );
}

function crossingOf(a: DrawnWall, b: DrawnWall): Point | null {
  const at = intersectLines(a.line, b.line);
  if (at === null || !passesThrough(a, b) || !passesThrough(b, a)) return null;
  const isBetween = [a, b].every((wall) => {
    const along = alongLine(wall.line, at);
    return along > TIE_TOLERANCE && along < wall.length - TIE_TOLERANCE;
  });
  return isBetween ? at : null;
}

// Whether the two ends of `wall` stand out on either side of `other`.
function passesThrough(wall: DrawnWall, other: DrawnWall): boolean {
  const [p, q] = [asideOfLine(other.line, wall.from), asideOfLine(other.line, wall.to)];
  return (
    Math.max(p, q) > other.left + TIE_TOLERANCE &&
    Math.min(p, q) < other.right - TIE_TOLERANCE &&
    Math.max(p, q) > TIE_TOLERANCE &&
    Math.min(p, q) < -TIE_TOLERANCE
  );
}

function crossingFinding(a: DrawnWall, b: DrawnWall, at: Point): OutlineFinding {
  const ids = [wallText(a), wallText(b)].sort();
  return {
    severity: "error",
    kind: "walls-cross",
    message: `${sentence(ids[0]!)} and ${ids[1]} cross at ${placeText(at)} without a joint. Split one of them there.`,
    where: { wall: a.names[0]!.id, at },
  };
}

/** Walls that give no face, and walls that a corner cuts away. In geometric order. */
export function findVanished(
  walls: readonly DrawnWall[],
  drawn: {
    readonly joints: Joints;
    readonly bodies: readonly Body[];
    readonly parts: readonly (readonly FaceEdge[])[];
  },
): OutlineFinding[] {
  const shown = new Set(drawn.parts.flatMap((list) => list.map((part) => part.wall)));
  return walls.flatMap((wall, i): OutlineFinding[] => {
    const isHidden = !shown.has(i);
    if (!isHidden && !drawn.bodies[i]!.isCutAway) return [];
    const joined = joinedThickness(walls, drawn.joints, i);
    const where = { wall: wall.names[0]!.id, at: wall.from };
    const name = `${sentence(wallText(wall))} at ${placeText(wall.from)}`;
    if (wall.length <= joined / 2 + TIE_TOLERANCE) {
      const message =
        `${name} is ${Math.round(wall.length)} mm long and does not reach out of the wall it joins, which takes ` +
        `${Math.round(joined / 2)} mm of it. Draw it longer or delete it.`;
      return [{ severity: "error", kind: "wall-too-short", message, where }];
    }
    if (!isHidden) return [];
    const message = `${name} lies wholly inside other walls and gives no face. Delete it, or draw it where it stands.`;
    return [{ severity: "warning", kind: "wall-inside", message, where }];
  });
}

// Thickness of the thickest wall that this one joins at either end.
function joinedThickness(walls: readonly DrawnWall[], joints: Joints, wall: number): number {
  let most = 0;
  for (const end of [2 * wall, 2 * wall + 1]) {
    const joint = joints.ends[end]!;
    const others =
      joint.kind === "line"
        ? joint.walls
        : joint.kind === "corner"
          ? joints.corners[joint.corner]!.ends.map((other) => other >> 1)
          : [];
    for (const other of others) if (other !== wall) most = Math.max(most, walls[other]!.thickness);
  }
  return most;
}
