// All tools as one: which there are, how one is begun, and which function an event goes to.

import { CALIBRATE_TOOL, type CalibrateTool, turnCalibrateTool } from "./calibrateTool.ts";
import { COLUMN_TOOL, type ColumnTool, turnColumnTool } from "./columnTool.ts";
import { type LineTool, lineTool, turnLineTool } from "./lineTools.ts";
import { type OpeningTool, openingTool, turnOpeningTool } from "./openingTool.ts";
import { type PathTool, pathTool, turnPathTool } from "./pathTool.ts";
import type { ToolContext, ToolEvent, Turned } from "./protocol.ts";
import { ROOM_TOOL, type RoomTool, turnRoomTool } from "./roomTool.ts";
import { SELECT_TOOL, type SelectTool, turnSelectTool } from "./selectTool.ts";
import { turnWallTool, WALL_TOOL, type WallTool } from "./wallTool.ts";

export type Tool =
  | SelectTool
  | WallTool
  | OpeningTool
  | ColumnTool
  | RoomTool
  | PathTool
  | LineTool
  | CalibrateTool;
export type ToolName = Tool["name"];

/** A tool at rest. */
export function startTool(name: ToolName): Tool {
  switch (name) {
    case "select":
      return SELECT_TOOL;
    case "wall":
      return WALL_TOOL;
    case "door":
    case "window":
      return openingTool(name);
    case "column":
      return COLUMN_TOOL;
    case "room":
      return ROOM_TOOL;
    case "service":
    case "slab":
    case "slab-opening":
      return pathTool(name);
    case "control-line":
    case "measure":
      return lineTool(name);
    case "calibrate":
      return CALIBRATE_TOOL;
    default:
      return name satisfies never;
  }
}

/** One event on whichever tool is in hand. */
export function turnTool(tool: Tool, event: ToolEvent, context: ToolContext): Turned<Tool> {
  switch (tool.name) {
    case "select":
      return turnSelectTool(tool, event, context);
    case "wall":
      return turnWallTool(tool, event, context);
    case "door":
    case "window":
      return turnOpeningTool(tool, event, context);
    case "column":
      return turnColumnTool(tool, event, context);
    case "room":
      return turnRoomTool(tool, event, context);
    case "service":
    case "slab":
    case "slab-opening":
      return turnPathTool(tool, event, context);
    case "control-line":
    case "measure":
      return turnLineTool(tool, event, context);
    case "calibrate":
      return turnCalibrateTool(tool, event, context);
    default:
      return tool satisfies never;
  }
}

/** Whether letters go to the tool rather than to commands: a room is being named. */
export function takesLetters(tool: Tool): boolean {
  return tool.name === "room" && tool.naming !== null;
}

/** Whether a gesture is under way, so that Escape means it and not the tool. */
export function isBusy(tool: Tool): boolean {
  switch (tool.name) {
    case "select":
    case "door":
    case "window":
    case "service":
    case "slab":
    case "slab-opening":
    case "calibrate":
      return tool.phase.kind !== "idle";
    case "wall":
    case "control-line":
    case "measure":
      return tool.segment.kind !== "idle";
    case "room":
      return tool.naming !== null;
    case "column":
      return tool.isPressed;
    default:
      return tool satisfies never;
  }
}
