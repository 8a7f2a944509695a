// What the pointer is on, and which shape the pointer takes there: it names the only motion a drag would make.

import { isInside } from "../../geom/ring.ts";
import { find, type UnitDocument } from "../../plan/document.ts";
import { wallLine } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import type { LiveFill } from "../live/liveFill.ts";
import { detailAt } from "../scene/detail.ts";
import { scenePieces } from "../scene/pieces.ts";
import type { Hit } from "../snap/hit.ts";
import type { Tool } from "../tools/tool.ts";

/** The piece whose rectangle a place lies in, or null; none while pieces do not show. */
export function pieceAt(live: LiveFill | null, [x, y]: Position, scale: number): string | null {
  if (live === null || !detailAt(scale).pieces) return null;
  const near = scenePieces(live).index.search({ minX: x, minY: y, maxX: x, maxY: y });
  return near.find(({ corners, isUnderCut }) => !isUnderCut && isInside(corners, [x, y]))?.id ?? null;
}

export type Cursor =
  | "default"
  | "crosshair"
  | "grab"
  | "grabbing"
  | "move"
  | "ns-resize"
  | "ew-resize"
  | "nesw-resize"
  | "nwse-resize"
  | "text";

export function cursorFor(unit: UnitDocument, tool: Tool, hovered: Hit | null): Cursor {
  if (tool.name === "room") return "text";
  if (tool.name !== "select") return "crosshair";
  if (hovered === null) return "default";
  if (hovered.kind === "end") return "move";
  if (hovered.kind === "dimension") return "text";
  const { bucket, id } = hovered.item;
  if (bucket === "walls") return across(unit, id, false);
  if (bucket === "openings") return across(unit, find(unit.openings, id)?.wall ?? "", true);
  return "move";
}

// A wall moves across itself, an opening along its wall.
function across(unit: UnitDocument, wall: string, isAlong: boolean): Cursor {
  const found = find(unit.walls, wall);
  if (found === undefined) return "default";
  const { ux, uy } = wallLine(found);
  const [wx, wy] = isAlong ? [ux, uy] : [-uy, ux];
  if (Math.abs(wx) > 0.92) return "ew-resize";
  if (Math.abs(wy) > 0.92) return "ns-resize";
  return wx * wy > 0 ? "nesw-resize" : "nwse-resize";
}
