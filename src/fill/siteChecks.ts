// What the site says of a plan before anybody carries a panel: room to pin, room at wall ends, legs and frames, rooms
// nobody has named.

import { distanceToPath } from "../geom/path.ts";
import { type Kit, ruleValue } from "../kit/kit.ts";
import type { Outline } from "../plan/face.ts";
import type { Storey, Unit } from "../plan/project.ts";
import { type Mm, roundTo } from "../units.ts";
import { lookAcross, nearestPair } from "./clearances.ts";
import type { FaceDraft } from "./faceDraft.ts";
import { counted, lengthText, type ProblemLog } from "./problems.ts";
import { soffitDropOf } from "./profile.ts";
import type { SettledFace } from "./settled.ts";
import type { PlacedTie } from "./ties.ts";

/** Room behind a frame for pin and hammer to pass, mm. Common practice, no source. */
const SWING = 250;
/** Room between a frame and the neighbour's for a pin, mm. Common practice, no source. */
const PIN_ROOM = 80;

export interface SiteContext {
  readonly outline: Outline;
  readonly unit: Unit;
  readonly storey: Storey;
  readonly drafts: readonly FaceDraft[];
  readonly kit: Kit;
  readonly ties: readonly PlacedTie[];
  readonly leg: Mm;
  readonly log: ProblemLog;
}

/** Files the findings, rooms first, then wall ends, openings, services. */
export function checkSite(context: SiteContext): void {
  checkSoffitDrops(context);
  const depth = ruleValue(context.kit, "frameDepth");
  checkUnnamedRooms(context);
  checkServices(context);
  if (depth === undefined) return;
  if (context.leg < depth + PIN_ROOM) {
    context.log.add(
      "error",
      "leg-too-short",
      `A corner leg of ${context.leg} mm less a frame of ${depth} leaves ${context.leg - depth} mm; a pin needs ${PIN_ROOM}: ` +
        `use corners with longer legs.`,
      {},
    );
  }
  checkNarrowRooms(context, depth);
  checkWallEnds(context, depth);
  checkNarrowOpenings(context, depth);
}

function checkSoffitDrops({ outline, storey, log }: SiteContext): void {
  for (const room of outline.rooms) {
    if (room.soffitDrop === soffitDropOf(room, storey)) continue;
    log.add(
      "error",
      "soffit-drop",
      `The soffit of ${room.name} is dropped by ${lengthText(room.soffitDrop)} mm of ${lengthText(storey.clearHeight)}: no ` +
        `room is left under it; make the drop smaller. It is filled without a drop.`,
      { room: room.name },
    );
  }
}

function facesOfRooms({ drafts }: SiteContext): ReadonlyMap<number, readonly FaceDraft[]> {
  const byRoom = new Map<number, FaceDraft[]>();
  for (const draft of drafts) {
    const { room } = draft.settled.formed;
    if (room === null) continue;
    const list = byRoom.get(room);
    if (list === undefined) byRoom.set(room, [draft]);
    else list.push(draft);
  }
  return byRoom;
}

function checkNarrowRooms(context: SiteContext, depth: Mm): void {
  const { outline, log } = context;
  const least = 2 * depth + SWING;
  for (const [room, drafts] of facesOfRooms(context)) {
    // A wall's end before a face is no passage to stand in: `checkWallEnds` speaks of it.
    const ring = drafts.filter(
      ({ settled: { formed } }) => formed.outlineFace.ring === outline.rooms[room]!.ring && !formed.isFreeEnd,
    );
    const pair = nearestPair(ring.map((draft) => draft.settled));
    if (pair === null || pair.distance >= least) continue;
    const [a, b] = pair.faces;
    const clear = lengthText(roundTo(pair.distance, 1));
    const { name } = outline.rooms[room]!;
    log.add(
      "error",
      "too-narrow",
      `${name} is ${clear} mm clear between ${wallOf(a)} and ${wallOf(b)}; two frames of ${depth} mm and room for a hammer ` +
        `need ${least}: it cannot be pinned from inside; use a lost form or a box, or widen it.`,
      { room: name },
    );
  }
}

function checkWallEnds(context: SiteContext, depth: Mm): void {
  const { drafts, log } = context;
  const least = depth + SWING;
  const nearestTo = lookAcross(
    drafts.map(({ settled }) => settled),
    least,
  );
  for (const draft of drafts) {
    const face = draft.settled;
    const nearest = face.formed.isFreeEnd ? nearestTo(face) : null;
    if (nearest === null) continue;
    log.add(
      "error",
      "too-near",
      `The end of wall ${wallOf(face)} is ${lengthText(roundTo(nearest.distance, 1))} mm from wall ${wallOf(nearest.face)}; ` +
        `its stop-end needs ${least} to be set and struck: shorten the wall or join the two.`,
      { face: draft.id, x: 0 },
    );
  }
}

function checkNarrowOpenings({ drafts, log }: SiteContext, depth: Mm): void {
  const least = 2 * depth + SWING;
  const said = new Set<string>();
  for (const draft of drafts) {
    for (const { id, width, formed, x } of draft.openings) {
      if (formed !== "band" || width >= least || said.has(id)) continue;
      said.add(id);
      log.add(
        "warning",
        "too-narrow",
        `Opening ${id} is ${width} mm wide; two jamb frames of ${depth} mm and room for a hammer need ${least}: form it as ` +
          `a box between unbroken panels, or make it wider.`,
        { face: draft.id, x, opening: id },
      );
    }
  }
}

// A void nobody has named and nobody can walk into may be a duct: it has a slab over it only if somebody says so.
function checkUnnamedRooms(context: SiteContext): void {
  const byRoom = facesOfRooms(context);
  context.outline.rooms.forEach((room, k) => {
    if (room.isNamed || room.kind !== null) return;
    const faces = byRoom.get(k) ?? [];
    if (faces.some((draft) => draft.openings.some(({ sill, formed }) => formed === "band" && sill === 0)))
      return;
    context.log.add(
      "warning",
      "room-kind",
      `${room.name} (${roundTo(room.area, 2)} m²) is enclosed, has no door and no name: slab or void? Name it and give its ` +
        `kind, "room" or "open"; it is filled as a room.`,
      { room: room.name },
    );
  });
}

function checkServices({ unit, ties, log }: SiteContext): void {
  for (const service of unit.services) {
    const near = ties.filter(({ tie }) => distanceToPath(tie.at, service.path) < service.clearance);
    if (near.length === 0) continue;
    const first = near[0]!.tie;
    log.add(
      "warning",
      "tie-on-service",
      `Service ${service.id} passes within ${lengthText(service.clearance)} mm of ties at ` +
        `${counted(near.length, "joint")}: the service moves, not the tie.`,
      { face: first.faces[0], at: first.at },
    );
  }
}

function wallOf(face: SettledFace): string {
  return face.formed.walls[0] ?? "";
}
