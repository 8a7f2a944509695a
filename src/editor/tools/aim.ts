// Where a line that is being drawn would end: straight unless Shift, snapped unless Alt, and exactly as long and as
// turned as was typed.

import { angleBetween } from "../../geom/angle.ts";
import { listed } from "../../plan/document.ts";
import { endAt, isOnWall, spanLength, tidyPosition, wallLine } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import { roundTo } from "../../units.ts";
import { degreesToTurn } from "../degrees.ts";
import { toStep } from "../snap/openSnap.ts";
import type { Rail, Snap, SnapReason } from "../snap/snap.ts";
import { type Mark, type Modifiers, plainQuery, type ToolContext } from "./protocol.ts";
import { type Typed, typedNumber } from "./typed.ts";

/** Fields of a line being drawn. */
const LENGTH_FIELD = 0;
const ANGLE_FIELD = 1;
export const LINE_FIELDS = 2;

/** The line under way. */
export interface Aim {
  readonly from: Position;
  readonly to: Position;
  readonly length: number;
  /** Counter-clockwise from east, 0 ≤ angle < 360. */
  readonly degrees: number;
  readonly reason: SnapReason | null;
}

export interface AimInput {
  readonly from: Position;
  readonly pointer: Position;
  readonly modifiers: Modifiers;
  readonly typed: Typed;
}

const TYPED_DECIMALS = 3; // a typed length askew gives ends that are not whole; the file keeps 0.001

/** The line from `from` towards the pointer. */
export function aimAt(input: AimInput, context: ToolContext): Aim {
  const degrees = typedNumber(input.typed, ANGLE_FIELD);
  const length = typedNumber(input.typed, LENGTH_FIELD);
  const rail = degrees === null ? straightRail(input, context) : railOf(input.from, degrees);
  const snap = context.snap({
    ...plainQuery(input.pointer, input.modifiers, context),
    from: input.from,
    rail,
  });
  if (length === null)
    return aimOf(input.from, degrees === null ? snap.at : aheadOn(rail, snap), snap.reason);
  const way = rail === null ? directionTo(input.from, snap.at) : forward(rail, snap.at, degrees !== null);
  const [ux, uy] = way;
  const to: Position = tidyPosition([
    roundTo(input.from[0] + ux * length, TYPED_DECIMALS),
    roundTo(input.from[1] + uy * length, TYPED_DECIMALS),
  ]);
  return aimOf(input.from, to, null);
}

/** The rail for straight drawing: an axis, or the run or the square of a wall the line starts on; null with Shift. */
function straightRail(
  { from, pointer, modifiers }: Pick<AimInput, "from" | "pointer" | "modifiers">,
  context: ToolContext,
): Rail | null {
  if (context.settings.ortho === modifiers.shift) return null;
  const ways: (readonly [number, number])[] = [[1, 0]];
  for (const wall of listed(context.unit.walls)) {
    if (endAt(wall, from) === null && !isOnWall(wall, from)) continue;
    const { ux, uy } = wallLine(wall);
    ways.push([ux, uy]);
  }
  const [dx, dy] = [pointer[0] - from[0], pointer[1] - from[1]];
  let best: Rail = { origin: from, ux: 1, uy: 0 };
  let most = -1;
  for (const [ux, uy] of ways) {
    for (const [x, y] of [[ux, uy] as const, [0 - uy, ux] as const]) {
      const along = Math.abs(x * dx + y * dy);
      if (along <= most) continue;
      most = along;
      best = { origin: from, ux: x, uy: y };
    }
  }
  return best;
}

/** Figures of a line under way: its length and its angle, with what has been typed. */
export function aimMarks(aim: Aim, typed: Typed): readonly Mark[] {
  const { from, to } = aim;
  const figure = { kind: "figure", from, to } as const;
  const snapped: readonly Mark[] = aim.reason === null ? [] : [{ kind: "snap", reason: aim.reason }];
  return [
    ...snapped,
    {
      ...figure,
      name: "dimension.length",
      value: aim.length,
      unit: "mm",
      typed: typed.texts[LENGTH_FIELD] ?? null,
      isActive: typed.active === LENGTH_FIELD,
    },
    {
      ...figure,
      name: "dimension.angle",
      value: roundTo(aim.degrees, 1),
      unit: "degrees",
      typed: typed.texts[ANGLE_FIELD] ?? null,
      isActive: typed.active === ANGLE_FIELD,
    },
  ];
}

function aimOf(from: Position, to: Position, reason: SnapReason | null): Aim {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const degrees = dx === 0 && dy === 0 ? 0 : angleBetween(1, 0, dx, dy);
  return { from, to, length: spanLength(from, to), degrees, reason };
}

function railOf(origin: Position, degrees: number): Rail {
  const { cosine, sine } = degreesToTurn(degrees);
  return { origin, ux: cosine, uy: sine };
}

// A typed angle points one way: a pointer behind the start gives the line ahead, as long as the pointer is far.
function aheadOn(rail: Rail | null, snap: Snap): Position {
  if (rail === null) return snap.at;
  const [x, y] = rail.origin;
  const along = (snap.at[0] - x) * rail.ux + (snap.at[1] - y) * rail.uy;
  if (along >= 0) return snap.at;
  const ahead = toStep(-along, 1);
  return tidyPosition([x + rail.ux * ahead, y + rail.uy * ahead]);
}

// The way along a rail to the side on which the place lies.
function forward(rail: Rail, place: Position, isOneWay: boolean): readonly [number, number] {
  const along = (place[0] - rail.origin[0]) * rail.ux + (place[1] - rail.origin[1]) * rail.uy;
  return isOneWay || along >= 0 ? [rail.ux, rail.uy] : [0 - rail.ux, 0 - rail.uy];
}

function directionTo(from: Position, to: Position): readonly [number, number] {
  const length = spanLength(from, to);
  return length === 0 ? [1, 0] : [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}
