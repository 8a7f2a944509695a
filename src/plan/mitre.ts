// Where the sides of walls that meet at a corner run to.
//
//   ────────╲      each side meets the facing side of the neighbour round the corner;
//   ──────╲  │     a tip further out than three thicknesses is cut square
//         │  │

import { angleBetween } from "../geom/angle.ts";
import { cross, distance, type Point } from "../geom/point.ts";
import { roundTo } from "../units.ts";
import type { DrawnWall } from "./drawnWall.ts";
import type { OutlineFinding } from "./face.ts";
import { isDoubled, type Joints, leaving, type MitredCorner } from "./joints.ts";
import { type BodyCorner, type EndCorners, meetSides, sideLines, squareEnd } from "./wallEnd.ts";
import { placeText, sentence, wallText } from "./wording.ts";

/** The corners of each mitred end, by its number. */
export type MitreCorners = ReadonlyMap<number, EndCorners>;

/** Longest mitre, measured from the corner, in thicknesses of the thicker wall. */
const LONGEST_MITRE = 3;

interface Sides {
  /** Corner points on the side left of the leaving direction, from the side inwards. */
  readonly left: readonly BodyCorner[];
  readonly right: readonly BodyCorner[];
  readonly isMitred: boolean;
}

/** Mitres every corner; reports the tips that are cut square. */
export function mitreCorners(
  walls: readonly DrawnWall[],
  joints: Joints,
  findings: OutlineFinding[],
): MitreCorners {
  const points = new Map<number, EndCorners>();
  for (const corner of joints.corners) {
    const { ends, node } = corner;
    const pairs = ends.map((end, i) => {
      const next = ends[(i + 1) % ends.length]!;
      return mitrePair({ walls, corner, findings }, end, next);
    });
    ends.forEach((end, i) => {
      const [left, right] = [pairs[i]!, pairs[(i + ends.length - 1) % ends.length]!];
      const isPlain = ends.length === 2 && left.isMitred && right.isMitred;
      const inner = [
        ...left.left.slice(1),
        ...(isPlain ? [] : [{ at: node, grown: node }]),
        ...[...right.right.slice(1)].reverse(),
      ];
      points.set(end, wallEnd(end, { left: left.left[0]!, between: inner, right: right.right[0]! }));
    });
  }
  return points;
}

// From left and right of the leaving direction to left and right of the wall.
function wallEnd(end: number, { left, between, right }: EndCorners): EndCorners {
  return end % 2 === 0
    ? { left, between, right }
    : { left: right, between: [...between].reverse(), right: left };
}

interface CornerWork {
  readonly walls: readonly DrawnWall[];
  readonly corner: MitredCorner;
  readonly findings: OutlineFinding[];
}

// The left side of one end meets the right side of the next counter-clockwise.
function mitrePair({ walls, corner, findings }: CornerWork, end: number, next: number): Sides {
  const [wall, other] = [walls[end >> 1]!, walls[next >> 1]!];
  const [u, v] = [leaving(walls, end), leaving(walls, next)];
  const own = sideLines(wall, end % 2 === 0 ? "left" : "right");
  const facing = sideLines(other, next % 2 === 0 ? "right" : "left");
  const tip = isDoubled(walls, end, next) ? null : meetSides(own, facing);
  const limit = LONGEST_MITRE * Math.max(wall.thickness, other.thickness);
  if (tip !== null && distance(tip.at, corner.node) <= limit + ROUNDING) {
    return { left: [tip], right: [tip], isMitred: true };
  }
  const left = wallEnd(end, squareEnd(walls, end)).left;
  const right = wallEnd(next, squareEnd(walls, next)).right;
  const isOuter = cross(u[0], u[1], v[0], v[1]) < 0;
  if (!isOuter || tip === null) return { left: [left], right: [right], isMitred: false };
  findings.push(
    cutSquare({ wall, other, tip: tip.at, node: corner.node, angle: angleBetween(v[0], v[1], u[0], u[1]) }),
  );
  const middle = { at: midpoint(left.at, right.at), grown: midpoint(left.grown, right.grown) };
  return { left: [left, middle], right: [right, middle], isMitred: false };
}

function midpoint(a: Point, b: Point): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function cutSquare(cut: {
  readonly wall: DrawnWall;
  readonly other: DrawnWall;
  readonly tip: Point;
  readonly node: Point;
  readonly angle: number;
}): OutlineFinding {
  const reach = Math.round(distance(cut.tip, cut.node));
  const limit = LONGEST_MITRE * Math.max(cut.wall.thickness, cut.other.thickness);
  const names = [wallText(cut.wall), wallText(cut.other)].sort();
  return {
    severity: "warning",
    kind: "special-corner",
    message:
      `${sentence(`${names[0]} and ${names[1]}`)} meet at ${roundTo(cut.angle, 1)}° at ${placeText(cut.node)}: their mitre would ` +
      `reach ${reach} mm past the corner, more than three thicknesses (${roundTo(limit, 1)} mm), so the corner is ` +
      "cut square. Open the angle, or end one wall on the line of the other.",
    where: { wall: cut.wall.names[0]!.id, at: cut.node },
  };
}

const ROUNDING = 1e-6; // mm; a tip at exactly three thicknesses is still mitred
