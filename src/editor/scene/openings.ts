// Doors and windows in plan: the concrete left out, the faces dashed across, jamb edges, a leaf with its swing, glass.
//
//      ┃┄┄┄┄┄┄┄┄┃        door: leaf and swing      ┃━━━━━━┃   window: two lines of glass
//      ┃        ┃                                  ┃━━━━━━┃
//      ┃┄┄┄┄┄┄┄┄┃                                  ┃      ┃

import { find, listed, type UnitDocument } from "../../plan/document.ts";
import { bodySpan, wallLine } from "../../plan/editAxis.ts";
import type { Opening, Position, Wall } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { bodyCorners, boxAround, boxesMeet, grownBox } from "../box.ts";
import type { LiveFill } from "../live/liveFill.ts";
import { ringPath } from "./concrete.ts";
import { type Pen, strokePath } from "./pen.ts";
import { CUT, scenePieces } from "./pieces.ts";
import type { Scene } from "./scene.ts";
import { toPixel, toScreen, visibleBox } from "./viewport.ts";

/** Wider doors slide: a leaf of that width would not swing (common practice, no source). */
const WIDEST_LEAF: Mm = 1200;

interface Drawn {
  readonly opening: Opening;
  readonly wall: Wall;
  readonly body: readonly Position[];
}

export function drawOpenings(pen: Pen, scene: Scene): void {
  const drawn = openingsInView(scene);
  const built = builtOpenings(scene);
  const isBuilt = ({ opening }: Drawn) => built === null || built.has(opening.id);
  for (const each of drawn) {
    if (isCut(each.opening) && isBuilt(each)) hollow(pen, scene, each);
  }
  for (const each of drawn) {
    if (!isBuilt(each)) marked(pen, scene, each, scene.palette.fault);
    else if (!isCut(each.opening)) marked(pen, scene, each, scene.palette.ink);
    else if (each.opening.sill > 0) glass(pen, scene, each);
    else if (each.opening.width > WIDEST_LEAF) sliding(pen, scene, each);
    else if (scene.detail.pieces) swing(pen, scene, each);
  }
}

function isCut({ sill, head }: Opening): boolean {
  return sill <= CUT && head > CUT;
}

function openingsInView({ unit, viewport }: Scene): readonly Drawn[] {
  const view = visibleBox(viewport);
  return listed(unit.openings).flatMap((opening) => {
    const wall = find(unit.walls, opening.wall);
    if (wall === undefined) return [];
    const body = bodyCorners(wall, opening.at, opening.at + opening.width);
    const reach = grownBox(boxAround(body), opening.width);
    return boxesMeet(view, reach) ? [{ opening, wall, body }] : [];
  });
}

// The edge of the concrete is taken away with it, hence wider than the body by that edge.
function hollow(pen: Pen, { viewport, palette, detail }: Scene, { wall, opening }: Drawn): void {
  const { ux, uy } = wallLine(wall);
  const by = detail.edge / viewport.scale;
  const [a, b, c, d] = bodyCorners(wall, opening.at, opening.at + opening.width);
  if (a === undefined || b === undefined || c === undefined || d === undefined) return;
  const out = ([x, y]: Position, way: 1 | -1): Position => [x - uy * by * way, y + ux * by * way];
  pen.beginPath();
  ringPath(pen, viewport, [out(a, -1), out(b, -1), out(c, 1), out(d, 1)]);
  pen.fillStyle = palette.ground;
  pen.fill();
  stretches(pen, viewport, [
    [a, b],
    [d, c],
  ]);
  strokePath(pen, { colour: palette.ink3, width: 0.75, dash: [3, 2.5] });
  stretches(pen, viewport, [
    [a, d],
    [b, c],
  ]);
  strokePath(pen, { colour: palette.ink2, width: detail.edge });
}

function stretches(
  pen: Pen,
  viewport: Scene["viewport"],
  lines: readonly (readonly [Position, Position])[],
): void {
  pen.beginPath();
  for (const [from, to] of lines) {
    pen.moveTo(...toPixel(viewport, from));
    pen.lineTo(...toPixel(viewport, to));
  }
}

// Openings the fill has; one that runs into a corner is left out of it. null while there is no fill of this plan.
function builtOpenings({ live, isStale }: Scene): ReadonlySet<string> | null {
  if (live === null || isStale) return null;
  return new Set(live.fill.faces.flatMap(({ openings }) => openings.map(({ id }) => id)));
}

// An opening above or below the cut, or left out of the fill, is only marked.
function marked(pen: Pen, { viewport }: Scene, { body }: Drawn, colour: string): void {
  pen.beginPath();
  ringPath(pen, viewport, body);
  strokePath(pen, { colour, width: 0.75, dash: [2, 2] });
}

function glass(pen: Pen, { viewport, palette }: Scene, { wall, opening }: Drawn): void {
  const { ux, uy } = wallLine(wall);
  const [right, left] = bodySpan(wall);
  const middle = (right + left) / 2;
  const [a, b] = [endOf(wall, opening.at), endOf(wall, opening.at + opening.width)];
  const aside = ([x, y]: Position, by: Mm): Position => [x - uy * by, y + ux * by];
  const gap = (left - right) / 8;
  stretches(pen, viewport, [
    [aside(a, right), aside(b, right)],
    [aside(a, left), aside(b, left)],
  ]);
  strokePath(pen, { colour: palette.ink2, width: 0.75 });
  stretches(pen, viewport, [
    [aside(a, middle - gap), aside(b, middle - gap)],
    [aside(a, middle + gap), aside(b, middle + gap)],
  ]);
  strokePath(pen, { colour: palette.ink2, width: 0.75 });
}

// Two leaves that pass each other in the middle of the wall.
function sliding(pen: Pen, { viewport, palette }: Scene, { wall, opening }: Drawn): void {
  const { ux, uy } = wallLine(wall);
  const [right, left] = bodySpan(wall);
  const middle = (right + left) / 2;
  const gap = (left - right) / 8;
  const aside = ([x, y]: Position, by: Mm): Position => [x - uy * by, y + ux * by];
  const at = (share: number) => endOf(wall, opening.at + opening.width * share);
  stretches(pen, viewport, [
    [aside(at(0), middle - gap), aside(at(0.55), middle - gap)],
    [aside(at(0.45), middle + gap), aside(at(1), middle + gap)],
  ]);
  strokePath(pen, { colour: palette.ink2, width: 1 });
}

function swing(pen: Pen, scene: Scene, { wall, opening }: Drawn): void {
  const { viewport, palette } = scene;
  const { ux, uy } = wallLine(wall);
  const [right, left] = bodySpan(wall);
  const way = swingSide(scene.unit, scene.live, opening);
  const aside = way === 1 ? left : right;
  const [x, y] = endOf(wall, opening.at);
  const hinge: Position = [x - uy * aside, y + ux * aside];
  const open: Position = [hinge[0] - uy * opening.width * way, hinge[1] + ux * opening.width * way];
  const radius = opening.width * viewport.scale;
  const [hx, hy] = toScreen(viewport, hinge);
  // The screen's y points down, so the plan's left turn is a right turn there.
  const along = Math.atan2(-uy, ux);
  const across = along - (Math.PI / 2) * way;
  pen.beginPath();
  pen.arc(hx, hy, radius, along, across, way === 1);
  strokePath(pen, { colour: palette.ink3, width: 0.7 });
  stretches(pen, viewport, [[hinge, open]]);
  strokePath(pen, { colour: palette.ink2, width: 1 });
}

function endOf(wall: Wall, at: Mm): Position {
  const { x, y, ux, uy } = wallLine(wall);
  return [x + ux * at, y + uy * at];
}

/**
 * The side a door opens to: 1 = left of its wall's line, −1 = right. The file does not say; a door is shown opening
 * out of the room with more doors, which is the hall, and never outside. Between equals into the larger room.
 */
export function swingSide(unit: UnitDocument, live: LiveFill | null, opening: Opening): 1 | -1 {
  const wall = find(unit.walls, opening.wall);
  if (wall === undefined || live === null) return 1;
  const [left, right] = [roomBeside(live, wall, opening, 1), roomBeside(live, wall, opening, -1)];
  if (left === null || right === null) return left === null && right !== null ? -1 : 1;
  if (left.doors !== right.doors) return left.doors < right.doors ? 1 : -1;
  return left.area >= right.area ? 1 : -1;
}

interface Beside {
  readonly doors: number;
  readonly area: number;
}

function roomBeside({ fill }: LiveFill, wall: Wall, { id }: Opening, way: 1 | -1): Beside | null {
  const { ux, uy } = wallLine(wall);
  // A face runs with its concrete on the left, so the face on the left of a wall runs against the wall.
  const face = fill.faces.find(
    ({ openings, from, to }) =>
      openings.some((opening) => opening.id === id) &&
      Math.sign((to[0] - from[0]) * ux + (to[1] - from[1]) * uy) === -way,
  );
  const room = fill.rooms.find(({ name }) => name === face?.room);
  if (room === undefined) return null;
  const own = fill.faces.filter((each) => room.faces.includes(each.id));
  const doors = own.flatMap(({ openings }) => openings).filter(({ sill }) => sill === 0).length;
  return { doors, area: room.area };
}

/** Panels in the reveals of what is cut: one across each jamb, as deep as the frames. */
export function drawJambs(pen: Pen, scene: Scene): void {
  const { live, viewport, palette, detail, lettering } = scene;
  if (live === null || scene.isStale || !detail.jambs) return;
  const { depth } = scenePieces(live);
  const lined = new Set(
    live.fill.reveals.filter(({ side }) => side === "left").map(({ opening }) => opening),
  );
  const labels: (readonly [Position, Mm, number])[] = [];
  pen.beginPath();
  for (const { opening, wall } of openingsInView(scene)) {
    if (!isCut(opening) || !lined.has(opening.id)) continue;
    const { ux, uy } = wallLine(wall);
    const turn = Math.atan2(-uy, ux);
    for (const at of [opening.at, opening.at + opening.width - depth]) {
      ringPath(pen, viewport, bodyCorners(wall, at, at + depth));
      const [right, left] = bodySpan(wall);
      const [x, y] = endOf(wall, at + depth / 2);
      const aside = (right + left) / 2;
      labels.push([[x - uy * aside, y + ux * aside], wall.thickness, turn + Math.PI / 2]);
    }
  }
  pen.fillStyle = palette.panel;
  pen.fill();
  strokePath(pen, { colour: palette.pline, width: 0.75 });
  if (!detail.frames) return;
  pen.fillStyle = palette.ink2;
  pen.font = '400 11px "Plex Sans", sans-serif';
  for (const [at, width, turn] of labels) {
    const [x, y] = toScreen(viewport, at);
    pen.save();
    pen.translate(x, y);
    pen.rotate(readable(turn));
    pen.textAlign = "center";
    pen.textBaseline = "middle";
    pen.fillText(lettering.jamb(width), 0, 0);
    pen.restore();
  }
}

/** A turn by which text is read from below or from the right, never upside down. */
export function readable(turn: number): number {
  let angle = turn;
  while (angle > Math.PI / 2 - 1e-6) angle -= Math.PI;
  while (angle < -Math.PI / 2 - 1e-6) angle += Math.PI;
  return angle;
}
