// What stands over what on a face: the rows of panels, and the connector or the cap that closes it above.
//
//   room            outside
//   ┌─────────┐     ┌─────────┐ clear height + slab
//   │connector│     │   cap   │
//   ├─────────┤ top ├─────────┤
//   │ panels  │     │ panels  │      the same joint levels on both faces
//   └─────────┘  0  └─────────┘

import { capHeights } from "../kit/caps.ts";
import { connectorHeights } from "../kit/connectors.ts";
import type { Kit } from "../kit/kit.ts";
import { offersAt, panelHeights } from "../kit/offers.ts";
import type { Outline, Room } from "../plan/face.ts";
import type { Storey } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { FormedFace } from "./formedFace.ts";
import { closureRange } from "./kitTables.ts";
import { lengthText, type ProblemLog } from "./problems.ts";
import { chooseStack, droppedStack, type Stack, type StackInput, type StackRow } from "./stack.ts";

export interface Crown {
  readonly family: "wall-slab-connector" | "slab-edge-cap";
  readonly height: Mm;
}

export interface Profile {
  readonly rows: readonly StackRow[];
  /** Heights of the rows of panels, floor upward. */
  readonly heights: readonly Mm[];
  /** Where the panels end. */
  readonly top: Mm;
  /** null: nothing above the panels, or nothing in the kit for it. */
  readonly crown: Crown | null;
  readonly height: Mm;
  /** The problem of what is missing between `top` and `height`; null where nothing is. */
  readonly missing: number | null;
}

export interface ProfileContext {
  readonly faces: readonly FormedFace[];
  readonly outline: Outline;
  readonly storey: Storey;
  readonly kit: Kit;
  readonly log: ProblemLog;
}

/** The profile of every face, equal ones shared. Files what the storey cannot be built of, once for each room. */
export function profilesOf(context: ProfileContext): readonly Profile[] {
  const { faces, outline, storey } = context;
  const noStack = new Map<Mm, number>();
  const made = new Map<string, Profile>();
  return faces.map((face) => {
    const drop =
      face.exposure === "room" && face.room !== null ? soffitDropOf(outline.rooms[face.room]!, storey) : 0;
    const isInner = face.exposure === "room" || face.exposure === "under-slab" || storey.slab === 0;
    const key = `${isInner} ${drop} ${face.room}`;
    const known = made.get(key);
    if (known !== undefined) return known;
    const profile = profileOf(
      { stack: stackOf(context, drop), drop, isInner, room: face.room },
      context,
      noStack,
    );
    made.set(key, profile);
    return profile;
  });
}

/** How far a room's soffit lies below the storey's; a drop that leaves no room to stand in counts as none. */
export function soffitDropOf(room: Room, storey: Storey): Mm {
  return room.soffitDrop < storey.clearHeight - LEAST_CLEAR ? room.soffitDrop : 0;
}

const LEAST_CLEAR = 300; // mm: the least storey a project may have

const remembered = new WeakMap<Kit, Map<string, Stack>>();

// Kept as long as the kit object lives: an editor fills the same storey again and again.
function stackOf(context: ProfileContext, drop: Mm): Stack {
  const { kit, storey } = context;
  const stacks = remembered.get(kit) ?? new Map<string, Stack>();
  remembered.set(kit, stacks);
  const key = `${storey.clearHeight} ${storey.slab} ${drop}`;
  const known = stacks.get(key);
  if (known !== undefined) return known;
  const stack =
    drop === 0
      ? chooseStack(stackInput(context))
      : droppedStack(stackInput(context), drop, stackOf(context, 0).rows);
  stacks.set(key, stack);
  return stack;
}

function stackInput({ kit, storey }: ProfileContext): StackInput {
  return {
    clearHeight: storey.clearHeight,
    slab: storey.slab,
    panelHeights: panelHeights(kit),
    connectorHeights: connectorHeights(kit),
    capHeights: capHeights(kit),
    closure: closureRange(kit),
    heightsByWidth: heightsByWidth(kit),
  };
}

// Rows that share no width could not be filled: the stack must know which width comes in which heights.
function heightsByWidth(kit: Kit): readonly (readonly Mm[])[] {
  const byWidth = new Map<Mm, Mm[]>();
  for (const height of panelHeights(kit)) {
    for (const { width } of offersAt(kit, height)) {
      const list = byWidth.get(width);
      if (list === undefined) byWidth.set(width, [height]);
      else list.push(height);
    }
  }
  return [...byWidth.values()];
}

function profileOf(
  { stack, drop, isInner, room }: { stack: Stack; drop: Mm; isInner: boolean; room: number | null },
  { outline, storey, log }: ProfileContext,
  noStack: Map<Mm, number>,
): Profile {
  const clear = storey.clearHeight - drop;
  const height = isInner ? clear : storey.clearHeight + storey.slab;
  const { rows, top } = stack;
  const heights = rows.filter((row) => row.kind === "panel").map((row) => row.height);
  const base = { rows, heights, top, height };
  if (top === height) return { ...base, crown: null, missing: null };
  if (stack.status === "no-stack") {
    const problem = noStack.get(drop) ?? reportNoStack(stack, clear, drop, log);
    noStack.set(drop, problem);
    return { ...base, crown: null, missing: problem };
  }
  const crownHeight = isInner ? stack.connector : stack.cap;
  if (crownHeight !== null) {
    const family = isInner ? "wall-slab-connector" : "slab-edge-cap";
    return { ...base, crown: { family, height: crownHeight }, missing: null };
  }
  const place = room === null ? "round the outside" : `in ${outline.rooms[room]!.name}`;
  const piece = isInner ? "wall-slab connector" : "slab edge cap";
  const where = room === null ? {} : { room: outline.rooms[room]!.name };
  const missing = log.add(
    "error",
    "missing-piece",
    `The kit has no ${piece} ${lengthText(height - top)} mm high: nothing closes the top of the walls ${place}; add one to ` +
      `the kit.`,
    where,
  );
  return { ...base, crown: null, missing };
}

function reportNoStack(stack: Stack, clear: Mm, drop: Mm, log: ProblemLog): number {
  const which =
    drop === 0 ? `a clear height of ${clear} mm` : `a soffit dropped by ${drop} mm to ${clear} mm clear`;
  return log.add(
    "error",
    "no-stack",
    `No panels, extensions and connector of the kit stack up to ${which}: they reach ${stack.top} mm; add a panel or a ` +
      `connector height to the kit, or change the storey.`,
    {},
  );
}
