// What the page knows beside the document: what is selected, which tool is in hand, where the view stands. None of it
// is undone and none of it is saved with the project.

import type { PlanDocument } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import type { Clip } from "../../plan/editClip.ts";
import type { Position } from "../../plan/project.ts";
import type { Selection } from "../selection.ts";
import type { Hit } from "../snap/hit.ts";
import type { DrawSettings, Mark } from "../tools/protocol.ts";
import { startTool, type Tool } from "../tools/tool.ts";
import type { Words } from "../words/say.ts";

/** What the running gesture would give. */
export interface Preview {
  /** The document with the gesture's edits; the one in the history itself where it makes none. */
  readonly document: PlanDocument;
  readonly edits: readonly Edit[];
  readonly marks: readonly Mark[];
}

/** Which part of the plan is on the screen. */
export interface View {
  readonly centre: Position;
  /** Pixels for one millimetre. */
  readonly scale: number;
}

export interface Session {
  readonly selection: Selection;
  readonly hovered: Hit | null;
  /** The piece under the pointer, in the plan or in the pane: lit up in both. */
  readonly hoveredPiece: string | null;
  readonly tool: Tool;
  readonly settings: DrawSettings;
  readonly view: View;
  readonly preview: Preview | null;
  /** The last thing said to the person; stays until the next event that says something or succeeds. */
  readonly message: Words | null;
  /** What was copied last, and the unit it came from. */
  readonly clip: { readonly unit: string; readonly clip: Clip } | null;
}

/** Settings to begin with: 100 mm walls, a 50 mm grid, a door and a window of usual size (common practice, no source). */
const FIRST_SETTINGS: DrawSettings = {
  thickness: 100,
  justify: "centre",
  ortho: true,
  snapping: true,
  grid: 50,
  door: { width: 900, sill: 0, head: 2100 },
  window: { width: 1200, sill: 900, head: 2100 },
  column: { width: 300, depth: 300 },
  clearance: 60,
};

/** About 11 mm to the pixel: a small apartment fills a window. */
export const FIRST_SCALE = 0.09;

export function startSession(unit: string): Session {
  return {
    selection: { unit, items: [] },
    hovered: null,
    hoveredPiece: null,
    tool: startTool("select"),
    settings: FIRST_SETTINGS,
    view: { centre: [0, 0], scale: FIRST_SCALE },
    preview: null,
    message: null,
    clip: null,
  };
}
