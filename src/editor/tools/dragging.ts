// What a drag of the thing under the hand means: the way it may go, the place that is snapped, and the edits.
//
//   a wall alone     across itself, with all that carries it straight on; what ends on it stretches
//   an end           its joint, every wall that meets there; the free end of one wall along that wall
//   an opening       along its wall
//   anything else    freely; with walls among it, along one axis unless Shift is held

import { alongLine, pointAt } from "../../geom/line.ts";
import { find, type ItemRef, listed, type UnitDocument } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import {
  endAt,
  isOnWall,
  straightChain,
  tidy,
  tidyPosition,
  type WallEnd,
  wallLine,
} from "../../plan/editAxis.ts";
import { copyItems } from "../../plan/editClip.ts";
import { keptAt } from "../../plan/editWalls.ts";
import type { Position, Wall } from "../../plan/project.ts";
import { freeAround } from "../along.ts";
import type { Hit } from "../snap/hit.ts";
import { settleValue } from "../snap/openSnap.ts";
import type { Rail, SnapReason } from "../snap/snap.ts";
import { type Words, words } from "../words/say.ts";
import { type Modifiers, plainQuery, type ToolContext } from "./protocol.ts";

/** What a drag to a place would do. No edits where it has come back to where it began. */
export interface Dragged {
  readonly edits: readonly Edit[];
  readonly label: Words;
  readonly reason: SnapReason | null;
}

export interface DragInput {
  readonly hit: Hit;
  /** What moves: the selection, the thing under the hand among it. */
  readonly items: readonly ItemRef[];
  readonly start: Position;
  readonly pointer: Position;
  readonly modifiers: Modifiers;
}

const NOWHERE = { edits: [], reason: null } as const;

/** What the drag gives at the pointer, always worked out from the plan as it was when it began. */
export function dragTo(input: DragInput, context: ToolContext): Dragged {
  const { hit, items } = input;
  if (hit.kind === "end") return dragEnd(input, hit, context);
  const [only] = items;
  if (items.length === 1 && only !== undefined) {
    const wall = only.bucket === "walls" ? find(context.unit.walls, only.id) : undefined;
    if (wall !== undefined && !input.modifiers.ctrl) return dragWall(input, wall, context);
    if (only.bucket === "openings" && !input.modifiers.ctrl) return dragOpening(input, only.id, context);
  }
  return dragItems(input, context);
}

/** What moves with a selection: a wall alone takes along the walls that carry it straight on. */
export function movingItems(unit: UnitDocument, items: readonly ItemRef[]): readonly ItemRef[] {
  const [only] = items;
  if (only === undefined || items.length > 1 || only.bucket !== "walls") return items;
  return straightChain(unit.walls, only.id).map(({ id }) => ({ bucket: "walls", id }));
}

function dragWall(input: DragInput, wall: Wall, context: ToolContext): Dragged {
  const label = words("step.move", { count: 1 });
  const line = wallLine(wall);
  const origin = tidyPosition(pointAt(line, alongLine(line, input.start), 0));
  const items = movingItems(context.unit, input.items);
  const isFree = context.settings.ortho === input.modifiers.shift;
  const rail: Rail | null = isFree ? null : { origin, ux: 0 - line.uy, uy: line.ux };
  const { at, reason } = context.snap({
    ...plainQuery(carried(input, origin), input.modifiers, context),
    rail,
    exclude: touching(context.unit, items),
  });
  return { ...moved(context.unit.id, items, origin, at), label, reason };
}

function dragEnd(
  input: DragInput,
  hit: { readonly wall: string; readonly end: WallEnd },
  context: ToolContext,
): Dragged {
  const label = words("step.move-joint");
  const wall = find(context.unit.walls, hit.wall);
  if (wall === undefined) return { ...NOWHERE, label };
  const joint = wall[hit.end];
  const meeting = listed(context.unit.walls).filter((other) => endAt(other, joint) !== null);
  const isAlone = meeting.length === 1;
  const line = wallLine(wall);
  const isStraight = context.settings.ortho !== input.modifiers.shift;
  const rail = isAlone && isStraight ? { origin: joint, ux: line.ux, uy: line.uy } : null;
  const { at, reason } = context.snap({
    ...plainQuery(carried(input, joint), input.modifiers, context),
    from: wall[hit.end === "from" ? "to" : "from"],
    rail,
    exclude: new Set(meeting.map(({ id }) => id)),
  });
  if (isSame(at, joint)) return { ...NOWHERE, label };
  return { edits: [{ kind: "move-joint", unit: context.unit.id, at: joint, to: at }], label, reason };
}

function dragOpening(input: DragInput, id: string, context: ToolContext): Dragged {
  const label = words("step.move", { count: 1 });
  const opening = find(context.unit.openings, id);
  const wall = opening && find(context.unit.walls, opening.wall);
  if (opening === undefined || wall === undefined) return { ...NOWHERE, label };
  const line = wallLine(wall);
  const wanted = opening.at + alongLine(line, input.pointer) - alongLine(line, input.start);
  const free = freeAround(context.unit, wall, opening.at + opening.width / 2, id);
  const isFree = input.modifiers.alt || !context.settings.snapping;
  const query = { reach: context.reach, grid: isFree ? 0 : context.settings.grid };
  // Steps are counted from the neighbour on the left, so that the distance to it comes out round.
  const at = keptAt(wall, tidy(free.start + settleValue(wanted - free.start, query)), opening.width);
  if (at === opening.at) return { ...NOWHERE, label };
  const edit: Edit = { kind: "change-opening", unit: context.unit.id, opening: id, set: { at } };
  return { edits: [edit], label, reason: null };
}

function dragItems(input: DragInput, context: ToolContext): Dragged {
  const { items, modifiers } = input;
  const { unit } = context;
  const label = words(modifiers.ctrl ? "step.copy" : "step.move", { count: items.length });
  const origin = handleOf(unit, input);
  const hasWalls = items.some(({ bucket }) => bucket === "walls");
  const isStraight = hasWalls && context.settings.ortho !== modifiers.shift;
  const { at, reason } = context.snap({
    ...plainQuery(carried(input, origin), modifiers, context),
    rail: isStraight ? axisRail(origin, input) : null,
    exclude: modifiers.ctrl ? new Set() : touching(unit, items),
  });
  if (!modifiers.ctrl) return { ...moved(unit.id, items, origin, at), label, reason };
  if (isSame(at, origin)) return { ...NOWHERE, label };
  const [dx, dy] = [tidy(at[0] - origin[0]), tidy(at[1] - origin[1])];
  return { edits: [{ kind: "paste", unit: unit.id, clip: copyItems(unit, items), dx, dy }], label, reason };
}

function moved(unit: string, items: readonly ItemRef[], origin: Position, at: Position) {
  if (isSame(at, origin)) return NOWHERE;
  const [dx, dy] = [tidy(at[0] - origin[0]), tidy(at[1] - origin[1])];
  const edit: Edit = { kind: "move", unit, items, dx, dy, stretch: true };
  return { edits: [edit], reason: null };
}

// The place that is snapped: the end of a dragged wall nearest to the hand, or the label's own place.
function handleOf(unit: UnitDocument, { items, start }: DragInput): Position {
  let best: Position | null = null;
  let nearest = Number.POSITIVE_INFINITY;
  for (const { bucket, id } of items) {
    for (const place of handlesOf(unit, bucket, id)) {
      const gap =
        (place[0] - start[0]) * (place[0] - start[0]) + (place[1] - start[1]) * (place[1] - start[1]);
      if (gap >= nearest) continue;
      nearest = gap;
      best = place;
    }
  }
  return best ?? start;
}

function handlesOf(unit: UnitDocument, bucket: ItemRef["bucket"], id: string): readonly Position[] {
  switch (bucket) {
    case "walls":
    case "controlLines": {
      const line = find<{ readonly from: Position; readonly to: Position }>(unit[bucket], id);
      return line === undefined ? [] : [line.from, line.to];
    }
    case "rooms": {
      const room = find(unit.rooms, id);
      return room === undefined ? [] : [room.at];
    }
    case "slabs":
    case "slabOpenings":
      return find(unit[bucket], id)?.outline ?? [];
    case "services":
      return find(unit.services, id)?.path ?? [];
    case "openings":
    case "pinned":
      return [];
    default:
      return bucket satisfies never;
  }
}

// The handle goes as far as the hand has gone.
function carried({ start, pointer }: DragInput, [x, y]: Position): Position {
  return [x + pointer[0] - start[0], y + pointer[1] - start[1]];
}

function axisRail(origin: Position, { start, pointer }: DragInput): Rail {
  const isLevel = Math.abs(pointer[0] - start[0]) >= Math.abs(pointer[1] - start[1]);
  return { origin, ux: isLevel ? 1 : 0, uy: isLevel ? 0 : 1 };
}

// Walls that move or are stretched: they give no place to snap to, or nothing would ever leave its own joints.
function touching(unit: UnitDocument, items: readonly ItemRef[]): ReadonlySet<string> {
  const ids = new Set(items.filter(({ bucket }) => bucket === "walls").map(({ id }) => id));
  const walls = listed(unit.walls);
  const moving = walls.filter(({ id }) => ids.has(id));
  for (const wall of walls) {
    const meets = moving.some(
      (other) =>
        endAt(other, wall.from) !== null ||
        endAt(other, wall.to) !== null ||
        isOnWall(other, wall.from) ||
        isOnWall(other, wall.to),
    );
    if (meets) ids.add(wall.id);
  }
  return ids;
}

function isSame(a: Position, b: Position): boolean {
  return a[0] === b[0] && a[1] === b[1];
}
