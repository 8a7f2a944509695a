// The soffits of a unit: one for every room with a slab over it, one for every slab outside the walls.
//
// Connectors have their numbers already; slab panels, strips and props get theirs here, room by room.

import { ruleValue } from "../../kit/kit.ts";
import type { Outline } from "../../plan/face.ts";
import type { Position, SlabOutline, Unit } from "../../plan/project.ts";
import type { FaceDraft } from "../faceDraft.ts";
import type { Soffit } from "../result.ts";
import { balconiesOf } from "./balconies.ts";
import { buildSoffit } from "./buildSoffit.ts";
import { chainPoints, straightened } from "./chain.ts";
import { closingEnds } from "./closing.ts";
import type { SoffitContext, SoffitField } from "./field.ts";
import { type FaceChain, legsAlong } from "./legs.ts";
import { frameOf, type LocalFrame } from "./localFrame.ts";
import { checkOverlaps, soundOutlines } from "./outlineChecks.ts";

export interface SoffitsInput extends SoffitContext {
  readonly outline: Outline;
  readonly unit: Unit;
  /** Slab thickness, mm; 0: no slab is poured, there is no soffit. */
  readonly slab: number;
}

/** Rooms in the order of the outline, then slabs by their least corner. */
export function placeSoffits(input: SoffitsInput): readonly Soffit[] {
  if (input.slab === 0) return [];
  const rings = ringsOf(input.drafts);
  const openings = soundOutlines(input.unit.slabOpenings, "Slab opening", input.log);
  const slabs = soundOutlines(input.unit.slabs, "Slab", input.log);
  const soffits: Soffit[] = [];
  const chainOf = (drafts: readonly FaceDraft[], isClosed: boolean, frame: LocalFrame): FaceChain => ({
    drafts,
    isClosed,
    points: straightened(chainPoints(drafts, isClosed, input.drafts).map(frame.toLocal), isClosed),
  });
  const common = (faces: readonly FaceDraft[], chains: readonly FaceChain[], frame: LocalFrame) => ({
    frame,
    faces,
    openings: openings.map(({ outline }) => outline.map(frame.toLocal)),
    legs: chains.flatMap((chain) => legsAlong(chain, { corners: input.corners, kit: input.kit, frame })),
    height: faces[0]?.profile.height ?? input.clearHeight,
    closing: closingEnds(faces, frame),
  });
  for (const room of input.outline.rooms) {
    const ring = rings.get(room.ring);
    if (room.kind === "open" || ring === undefined) continue;
    const frame = frameOf(chainPoints(ring, true, input.drafts));
    const outer = chainOf(ring, true, frame);
    const inner = room.inner.flatMap((index) => {
      const drafts = rings.get(index);
      return drafts === undefined ? [] : [chainOf(drafts, true, frame)];
    });
    const field: SoffitField = {
      ...common(ring, [outer, ...inner], frame),
      room: room.name,
      isSlab: false,
      outline: outer.points,
      columns: inner.map(({ points }) => points),
      forced: room.soffitAlong,
    };
    soffits.push(buildSoffit(field, input));
  }
  checkOverlaps(slabs, roomRings(input, rings), input.log);
  for (const { slab, chains } of balconiesOf(slabs, input.drafts)) {
    const frame = frameOf(slab.outline);
    const along = chains.map((drafts) => chainOf(drafts, false, frame));
    const faces = chains.flat();
    if (faces.length === 0) reportOffWall(slab, input);
    const drawn = straightened(slab.outline.map(frame.toLocal), true);
    const field: SoffitField = {
      ...common(faces, along, frame),
      room: slab.id,
      isSlab: true,
      outline: snapped(
        drawn,
        along.flatMap(({ points }) => points),
      ),
      columns: [],
      forced: null,
    };
    soffits.push(buildSoffit(field, input));
  }
  checkPitchRule(input, soffits);
  return soffits;
}

function roomRings(
  { outline, drafts }: SoffitsInput,
  rings: ReadonlyMap<number, readonly FaceDraft[]>,
): readonly { readonly name: string; readonly ring: readonly Position[] }[] {
  return outline.rooms.flatMap(({ name, ring }) => {
    const own = rings.get(ring);
    return own === undefined ? [] : [{ name, ring: chainPoints(own, true, drafts) }];
  });
}

function reportOffWall({ id, outline }: SlabOutline, { log }: SoffitsInput): void {
  log.add(
    "warning",
    "slab-off-wall",
    `Slab ${id} lies along no outside wall: nothing but its own strips carries it; draw its edge on the wall's face if it ` +
      `belongs to one.`,
    { at: outline[0]! },
  );
}

/** Faces by the ring of the outline they belong to, in the order of the ring. */
function ringsOf(drafts: readonly FaceDraft[]): ReadonlyMap<number, readonly FaceDraft[]> {
  const rings = new Map<number, FaceDraft[]>();
  for (const draft of drafts) {
    const { ring } = draft.settled.formed.outlineFace;
    const list = rings.get(ring);
    if (list === undefined) rings.set(ring, [draft]);
    else list.push(draft);
  }
  return rings;
}

/** A slab's edge is drawn on the wall's face but not to the millimetre: it goes where the face was settled. */
const ALONG = 2;

function snapped(ring: readonly Position[], points: readonly Position[]): readonly Position[] {
  return ring.map(([u, v]): Position => {
    const byU = points.find((point) => Math.abs(point[0] - u) <= ALONG);
    const byV = points.find((point) => Math.abs(point[1] - v) <= ALONG);
    return [byU?.[0] ?? u, byV?.[1] ?? v];
  });
}

function checkPitchRule({ kit, log }: SoffitsInput, soffits: readonly Soffit[]): void {
  if (ruleValue(kit, "propPitch") !== undefined || soffits.every(({ props }) => props.length === 0)) return;
  log.add(
    "warning",
    "missing-rule",
    "The kit gives no rule propPitch: props stand where panels meet, and nothing limits how far apart; add the rule.",
  );
}
