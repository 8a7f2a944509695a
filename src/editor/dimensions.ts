// The live dimensions of the selected thing: what each measures, where its line stands in the plan, and the edit that
// typing another value makes. The order is that of Tab.

import { find, type ItemRef, listed, type UnitDocument } from "../plan/document.ts";
import type { Edit } from "../plan/edit.ts";
import {
  bodySpan,
  endAt,
  placeOnWall,
  tidy,
  tidyPosition,
  type WallEnd,
  wallLength,
  wallLine,
} from "../plan/editAxis.ts";
import { clearBetween } from "../plan/editClear.ts";
import type { ControlLine, Opening, Position, Wall } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import { baysAlong, freeAround } from "./along.ts";
import type { LiveDimension } from "./liveDimension.ts";
import { faceBeyond } from "./rays.ts";
import { roomDimensions } from "./roomDimensions.ts";

/** The dimensions of what is selected: of one thing, or of two parallel walls the clear width between them. */
export function liveDimensions(unit: UnitDocument, selection: readonly ItemRef[]): readonly LiveDimension[] {
  const [first, second] = selection;
  if (first === undefined || selection.length > 2) return [];
  if (second !== undefined) return betweenWalls(unit, first, second);
  switch (first.bucket) {
    case "walls": {
      const wall = find(unit.walls, first.id);
      return wall === undefined ? [] : wallDimensions(unit, wall);
    }
    case "openings": {
      const opening = find(unit.openings, first.id);
      const wall = opening && find(unit.walls, opening.wall);
      return opening && wall ? openingDimensions(unit, wall, opening) : [];
    }
    case "rooms": {
      const room = find(unit.rooms, first.id);
      return room === undefined ? [] : roomDimensions(unit, room.at);
    }
    case "services": {
      const service = find(unit.services, first.id);
      if (service === undefined) return [];
      return [
        {
          key: "clearance",
          name: "dimension.clearance",
          value: service.clearance,
          line: null,
          edit: (clearance) => ({
            kind: "change-service",
            unit: unit.id,
            service: first.id,
            set: { clearance },
          }),
        },
      ];
    }
    case "controlLines": {
      const line = find(unit.controlLines, first.id);
      return line === undefined ? [] : controlLineDimensions(unit.id, line);
    }
    case "slabs":
    case "slabOpenings":
    case "pinned":
      return [];
    default:
      return first.bucket satisfies never;
  }
}

function wallDimensions(unit: UnitDocument, wall: Wall): readonly LiveDimension[] {
  const length = wallLength(wall);
  const end = movableEnd(unit, wall);
  return [
    ...(["left", "right"] as const).flatMap((side) => clearDimensions(unit, wall, side)),
    {
      key: "length",
      name: "dimension.length",
      value: length,
      line: [wall.from, wall.to],
      edit: (value) => stretchEdit(unit, wall, end, value),
    },
    {
      key: "thickness",
      name: "dimension.thickness",
      value: wall.thickness,
      line: null,
      edit: (thickness) => ({ kind: "change-walls", unit: unit.id, walls: [wall.id], set: { thickness } }),
    },
  ];
}

/** The edit that makes a wall `length` long by moving one of its ends along it; null where the wall is not there. */
export function lengthEdit(unit: UnitDocument, id: string, end: WallEnd, length: Mm): Edit | null {
  const wall = find(unit.walls, id);
  return wall === undefined ? null : stretchEdit(unit, wall, end, length);
}

function stretchEdit(unit: UnitDocument, wall: Wall, end: WallEnd, length: Mm): Edit {
  const { ux, uy } = wallLine(wall);
  const [fixed, way] = end === "to" ? [wall.from, length] : [wall.to, -length];
  const to = tidyPosition([fixed[0] + ux * way, fixed[1] + uy * way]);
  return { kind: "move-joint", unit: unit.id, at: wall[end], to };
}

// The end at which fewer other walls meet gives way; `to` where it is the same.
function movableEnd(unit: UnitDocument, wall: Wall): WallEnd {
  const meeting = (place: Position) =>
    listed(unit.walls).filter((other) => endAt(other, place) !== null).length;
  return meeting(wall.from) < meeting(wall.to) ? "from" : "to";
}

// The wall opposite is looked for from the middle of each stretch between joining walls, the longest first.
function clearDimensions(unit: UnitDocument, wall: Wall, side: "left" | "right"): readonly LiveDimension[] {
  const { ux, uy } = wallLine(wall);
  const [right, left] = bodySpan(wall);
  const [aside, way] = side === "left" ? [left, 1] : [right, -1];
  for (const bay of baysAlong(unit, wall)) {
    const [x, y] = placeOnWall(wall, (bay.start + bay.end) / 2);
    const start = tidyPosition([x - uy * aside, y + ux * aside]);
    const seen = faceBeyond(unit, { from: start, ux: 0 - uy * way, uy: ux * way }, wall.id);
    if (seen === null || clearBetween(seen.wall, wall) === null) continue;
    const other = seen.wall.id;
    return [
      {
        key: `clear-${side}`,
        name: "dimension.clear",
        value: tidy(seen.distance),
        line: [start, seen.at],
        edit: (distance) => ({ kind: "set-clear", unit: unit.id, wall: wall.id, from: other, distance }),
      },
    ];
  }
  return [];
}

function openingDimensions(unit: UnitDocument, wall: Wall, opening: Opening): readonly LiveDimension[] {
  const { id, at, width, sill, head } = opening;
  const free = freeAround(unit, wall, at + width / 2, id);
  const set = (change: Partial<Omit<Opening, "id">>): Edit => ({
    kind: "change-opening",
    unit: unit.id,
    opening: id,
    set: change,
  });
  const span = (start: Mm, end: Mm) => [placeOnWall(wall, start), placeOnWall(wall, end)] as const;
  return [
    {
      key: "left",
      name: "dimension.left",
      value: tidy(at - free.start),
      line: span(free.start, at),
      edit: (value) => set({ at: tidy(free.start + value) }),
    },
    {
      key: "right",
      name: "dimension.right",
      value: tidy(free.end - at - width),
      line: span(at + width, free.end),
      edit: (value) => set({ at: tidy(free.end - value - width) }),
    },
    {
      key: "width",
      name: "dimension.width",
      value: width,
      line: span(at, at + width),
      edit: (value) => set({ width: value }),
    },
    { key: "sill", name: "dimension.sill", value: sill, line: null, edit: (value) => set({ sill: value }) },
    { key: "head", name: "dimension.head", value: head, line: null, edit: (value) => set({ head: value }) },
  ];
}

// An upright or level control line has one distance, from the datum at 0, 0.
function controlLineDimensions(unit: string, { id, from, to }: ControlLine): readonly LiveDimension[] {
  const axis = from[0] === to[0] ? 0 : from[1] === to[1] ? 1 : null;
  if (axis === null) return [];
  const at = (place: Position, value: Mm): Position => (axis === 0 ? [value, place[1]] : [place[0], value]);
  return [
    {
      key: "position",
      name: "dimension.position",
      value: from[axis],
      line: [at(from, 0), from],
      edit: (value) => ({
        kind: "change-control-line",
        unit,
        controlLine: id,
        set: { from: at(from, value), to: at(to, value) },
      }),
    },
  ];
}

function betweenWalls(unit: UnitDocument, first: ItemRef, second: ItemRef): readonly LiveDimension[] {
  const fixed = first.bucket === "walls" ? find(unit.walls, first.id) : undefined;
  const moved = second.bucket === "walls" ? find(unit.walls, second.id) : undefined;
  const clear = fixed && moved ? clearBetween(fixed, moved) : null;
  if (!fixed || !moved || clear === null || clear.distance < 0) return [];
  const [x, y] = placeOnWall(fixed, wallLength(fixed) / 2);
  const [right, left] = bodySpan(fixed);
  const line = wallLine(fixed);
  const aside = clear.ux * -line.uy + clear.uy * line.ux > 0 ? left : -right;
  const start: Position = [x + clear.ux * aside, y + clear.uy * aside];
  return [
    {
      key: "between",
      name: "dimension.clear",
      value: tidy(clear.distance),
      line: [
        tidyPosition(start),
        tidyPosition([start[0] + clear.ux * clear.distance, start[1] + clear.uy * clear.distance]),
      ],
      edit: (distance) => ({ kind: "set-clear", unit: unit.id, wall: moved.id, from: fixed.id, distance }),
    },
  ];
}
