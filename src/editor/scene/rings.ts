// Problems on the plan: an open ring with the number of the list, and a leader to a dot on the place. An error has a
// second ring; the form says it without the colour.

import { fontOf, type Pen, strokePath } from "./pen.ts";
import { scenePieces } from "./pieces.ts";
import type { PlacedProblem } from "./problemPlaces.ts";
import type { Scene } from "./scene.ts";
import { type Pixel, toPlan, toScreen } from "./viewport.ts";

export const RING_RADIUS = 9.5; // px

export interface Ring {
  readonly placed: PlacedProblem;
  readonly dot: Pixel;
  readonly centre: Pixel;
}

const REACHES: readonly number[] = [34, 52, 74];
const WAYS: readonly Pixel[] = [
  [-0.71, -0.71],
  [0.71, -0.71],
  [0.71, 0.71],
  [-0.71, 0.71],
  [0, -1],
  [0, 1],
  [-1, 0],
  [1, 0],
];

const EDGE = 40; // px beyond the drawing from where a ring may still reach into it
const MOST = 60; // rings whose places are chosen with care; more of them would cover everything anyhow

/** Rings in view beside their places, clear of pieces and of each other as far as there is room. */
export function placeRings(scene: RingScene): readonly Ring[] {
  const rings: Ring[] = [];
  const seen = dotsInView(scene);
  if (seen.length > MOST) {
    return seen.map(({ placed, dot: [x, y] }) => ({ placed, dot: [x, y], centre: [x - 24, y - 24] }));
  }
  for (const { placed, dot } of seen) {
    let best: { readonly centre: Pixel; readonly cost: number } | null = null;
    for (const reach of REACHES) {
      for (const [wx, wy] of WAYS) {
        const centre: Pixel = [dot[0] + wx * reach, dot[1] + wy * reach];
        const cost = costOf(scene, centre, rings) + reach / 100;
        if (best === null || cost < best.cost) best = { centre, cost };
      }
    }
    rings.push({ placed, dot, centre: best?.centre ?? dot });
  }
  return rings;
}

function dotsInView({ problems, viewport }: RingScene): readonly Pick<Ring, "placed" | "dot">[] {
  return problems.flatMap((placed) => {
    if (placed.at === null) return [];
    const dot = toScreen(viewport, placed.at);
    const isSeen =
      dot[0] > -EDGE && dot[1] > -EDGE && dot[0] < viewport.width + EDGE && dot[1] < viewport.height + EDGE;
    return isSeen ? [{ placed, dot }] : [];
  });
}

/** What the places of rings depend on. */
export type RingScene = Pick<Scene, "viewport" | "live" | "problems">;

function costOf({ viewport, live }: RingScene, centre: Pixel, rings: readonly Ring[]): number {
  const near = (other: Pixel, least: number) =>
    (other[0] - centre[0]) ** 2 + (other[1] - centre[1]) ** 2 < least ** 2;
  let cost = rings.filter((ring) => near(ring.centre, 26) || near(ring.dot, 18)).length * 3;
  if (live === null) return cost;
  const [x, y] = toPlan(viewport, centre);
  const reach = (RING_RADIUS + 5) / viewport.scale;
  const box = { minX: x - reach, minY: y - reach, maxX: x + reach, maxY: y + reach };
  if (scenePieces(live).index.collides(box)) cost += 2;
  return cost;
}

export function drawRings(pen: Pen, scene: Scene): void {
  const { palette } = scene;
  for (const { placed, dot, centre } of placeRings(scene)) {
    const [dx, dy] = [dot[0] - centre[0], dot[1] - centre[1]];
    const far = Math.sqrt(dx * dx + dy * dy) || 1;
    const outer = placed.problem.severity === "error" ? RING_RADIUS + 3.25 : RING_RADIUS;
    pen.beginPath();
    pen.moveTo(centre[0] + (dx / far) * outer, centre[1] + (dy / far) * outer);
    pen.lineTo(...dot);
    strokePath(pen, { colour: palette.fault, width: 1 });
    pen.beginPath();
    pen.arc(dot[0], dot[1], 2.5, 0, 2 * Math.PI);
    pen.fillStyle = palette.fault;
    pen.fill();
    pen.beginPath();
    pen.arc(centre[0], centre[1], outer, 0, 2 * Math.PI);
    pen.fillStyle = palette.ground;
    pen.fill();
    const isChosen = placed.number === scene.chosenProblem;
    const width = placed.problem.severity === "error" ? 1 : 1.75;
    strokePath(pen, { colour: palette.fault, width: isChosen ? width + 1.25 : width });
    if (outer > RING_RADIUS) {
      pen.beginPath();
      pen.arc(centre[0], centre[1], RING_RADIUS, 0, 2 * Math.PI);
      strokePath(pen, { colour: palette.fault, width: 1.75 });
    }
    pen.font = fontOf(11, 600);
    pen.textAlign = "center";
    pen.textBaseline = "middle";
    pen.fillStyle = palette.fault;
    pen.fillText(String(placed.number), centre[0], centre[1] + 0.5);
  }
}
