// Names rooms: click in a room (or on its name) and type.

import { find } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import type { Position } from "../../plan/project.ts";
import { wholePlace } from "../snap/openSnap.ts";
import { words } from "../words/say.ts";
import {
  DISCARD,
  type Intent,
  type PointerEvent,
  type ToolContext,
  type ToolEvent,
  type Turned,
} from "./protocol.ts";

export interface RoomTool {
  readonly name: "room";
  /** What is being named; `room` null = a label not there yet. */
  readonly naming: { readonly at: Position; readonly room: string | null; readonly text: string } | null;
}

export const ROOM_TOOL: RoomTool = { name: "room", naming: null };

export function turnRoomTool(tool: RoomTool, event: ToolEvent, context: ToolContext): Turned<RoomTool> {
  const { naming } = tool;
  switch (event.kind) {
    case "press": {
      // A click elsewhere keeps the name just typed.
      const [, kept] = naming === null ? [tool, []] : finish(tool, context);
      const [next, shownNow] = begin(event, context);
      return [next, [...kept, ...shownNow]];
    }
    case "move":
    case "release":
    case "double":
      return [tool, []];
    case "text":
      return naming === null ? [tool, []] : shown({ ...naming, text: naming.text + event.text }, context);
    case "field":
      return naming === null ? [tool, []] : shown({ ...naming, text: event.text }, context);
    case "key":
      if (naming === null) return [tool, []];
      if (event.key === "Escape") return [ROOM_TOOL, [DISCARD]];
      if (event.key === "Enter" || event.key === "Tab") return finish(tool, context);
      return event.key === "Backspace"
        ? shown({ ...naming, text: withoutLast(naming.text) }, context)
        : [tool, []];
    default:
      return event satisfies never;
  }
}

type Naming = NonNullable<RoomTool["naming"]>;

function begin(event: PointerEvent, context: ToolContext): Turned<RoomTool> {
  const id = event.hit?.kind === "item" && event.hit.item.bucket === "rooms" ? event.hit.item.id : null;
  const room = id === null ? undefined : find(context.unit.rooms, id);
  return shown({ at: room?.at ?? wholePlace(event.at), room: id, text: room?.name ?? "" }, context);
}

function shown(naming: Naming, context: ToolContext): Turned<RoomTool> {
  const edit = nameEdit(naming, context);
  const marks = [{ kind: "name", at: naming.at, text: naming.text }] as const;
  return [{ name: "room", naming }, [{ kind: "preview", edits: edit === null ? [] : [edit], marks }]];
}

function finish(tool: RoomTool, context: ToolContext): Turned<RoomTool> {
  const edit = tool.naming === null ? null : nameEdit(tool.naming, context);
  const intent: Intent =
    edit === null ? DISCARD : { kind: "commit", label: words("step.add-room"), edits: [edit], select: null };
  return [ROOM_TOOL, [intent]];
}

// No name, no label: an emptied name leaves an old label as it was.
function nameEdit({ at, room, text }: Naming, { unit }: ToolContext): Edit | null {
  const name = text.trim();
  if (name === "") return null;
  if (room !== null) return { kind: "change-room", unit: unit.id, room, set: { name } };
  return { kind: "add-room", unit: unit.id, room: { name, at, kind: null, soffitDrop: 0 } };
}

function withoutLast(text: string): string {
  return [...text].slice(0, -1).join("");
}
