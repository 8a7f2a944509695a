// The places of a soffit that are not built, each with the problem that says why. With the pieces they tile the soffit.

import { type Box, type Ring, ringArea, ringBox } from "../../geom/ring.ts";
import { familyOf } from "../../kit/byFamily.ts";
import type { Kit } from "../../kit/kit.ts";
import { roundTo } from "../../units.ts";
import type { PieceBook } from "../pieceBook.ts";
import type { ProblemLog } from "../problems.ts";
import { areaOfCells, cellArea, cellRing, cellsInBoth, cellsOf, type Rect, rectRing } from "./cells.ts";
import type { SoffitField } from "./field.ts";
import type { Leg } from "./legs.ts";
import { turnedRing } from "./localFrame.ts";
import type { SoffitPlan } from "./planSoffit.ts";

export interface OpenPlace {
  readonly ring: Ring;
  readonly problem: number;
}

/** mm²: less than this is rounding. */
const SLIVER = 1;

/**
 * Legs that lie within the soffit and over no other; the others cannot be there. The place of a connector that is missing
 * anyway is in nobody's way.
 */
export function fittingLegs(
  legs: readonly Leg[],
  outline: Ring,
  columns: readonly Ring[],
): { readonly kept: readonly Leg[]; readonly crossing: readonly Leg[] } {
  const built = legs.filter(({ piece }) => piece !== null).map(({ ring }) => ring);
  const whole = areaOfCells(cellsOf(outline, columns));
  const left = areaOfCells(cellsOf(outline, [...columns, ...built]));
  const sum = built.reduce((total, ring) => total + Math.abs(ringArea(ring)), 0);
  if (Math.abs(whole - left - sum) < SLIVER) return { kept: legs, crossing: [] };
  const isCrossing = ({ ring, piece }: Leg) => {
    if (piece === null) return false;
    const box = ringBox(ring);
    const others = [...columns, ...built].filter((other) => other !== ring && overlaps(ringBox(other), box));
    const alone = areaOfCells(cellsOf(ring, others));
    const outside = areaOfCells(cellsOf(ring, [outline]));
    return Math.abs(ringArea(ring)) - alone > SLIVER || outside > SLIVER;
  };
  const crossing = legs.filter(isCrossing);
  return { kept: legs.filter((leg) => !crossing.includes(leg)), crossing };
}

/** Whether two boxes have more than an edge in common. */
export function overlaps(a: Box, b: Box): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}

interface Situation {
  readonly field: SoffitField;
  readonly plan: SoffitPlan | null;
  readonly kept: readonly Leg[];
  readonly crossing: readonly Leg[];
  readonly holes: readonly Ring[];
  /** The problem of a row of connectors that the kit lacks. */
  readonly missing: number | null;
}

export function openPlaces(
  situation: Situation,
  context: { readonly kit: Kit; readonly book: PieceBook; readonly log: ProblemLog },
): readonly OpenPlace[] {
  const { field, plan, kept, crossing, holes, missing } = situation;
  const built = kept.flatMap(({ ring, piece }) => (piece === null ? [] : [ring]));
  const turn = plan?.direction === "v" ? turnedRing : (ring: Ring) => ring;
  const tiles = [...(plan?.tiles ?? []), ...(plan?.strips.map(({ line }) => line) ?? [])]
    .map(rectRing)
    .map(turn);
  const taken = [...holes, ...built, ...tiles];
  const total = Math.abs(ringArea(field.outline));
  if (Math.abs(total - taken.reduce((sum, ring) => sum + Math.abs(ringArea(ring)), 0)) < SLIVER) return [];

  const open: OpenPlace[] = [];
  // What is said of a place is taken off before the next reason is looked for.
  const claim = (places: readonly Ring[], problemOf: () => number) => {
    let problem: number | null = null;
    for (const place of places) {
      const before = [...taken, ...open.map(({ ring }) => ring)];
      // A leg that cannot be there may reach beyond the soffit.
      for (const cell of cellsInBoth(field.outline, place, before)) {
        if (cellArea(cell) < SLIVER) continue;
        problem ??= problemOf();
        open.push({ ring: cellRing(cell), problem });
      }
    }
  };
  if (missing !== null) {
    claim([field.outline], () => missing);
    return open;
  }
  const unbuilt = (plan?.unbuilt ?? []).map(rectRing).map(turn);
  claim(unbuilt, () => reportUnbuilt(plan?.unbuilt ?? [], field, context));
  claim(
    crossing.map(({ ring }) => ring),
    () => reportCrossing(crossing, field, context.log),
  );
  const gaps = kept.filter(({ piece }) => piece === null);
  claim(
    gaps.map(({ ring }) => ring),
    () => reportGap(gaps, field, context.log),
  );
  claim([field.outline], () => reportBeside(field, remainingArea(), context.log));
  return open;

  function remainingArea(): number {
    return areaOfCells(cellsOf(field.outline, [...taken, ...open.map(({ ring }) => ring)]));
  }
}

function reportUnbuilt(
  rects: readonly Rect[],
  { room }: SoffitField,
  { kit, log }: { readonly kit: Kit; readonly log: ProblemLog },
): number {
  if (familyOf(kit, "slab-panel").length === 0) {
    return log.addOnce("slab panel", {
      severity: "error",
      kind: "missing-piece",
      message: "The kit has no slab panel: the soffits of all rooms stay open; add slab panels to the kit.",
      where: { room },
    });
  }
  if (familyOf(kit, "shoring-strip").length === 0) {
    return log.addOnce("shoring strip", {
      severity: "error",
      kind: "missing-piece",
      message:
        "The kit has no shoring strip: soffits longer than one slab panel stay open; add strips to the kit.",
      where: { room },
    });
  }
  const first = rects[0]!;
  const more = rects.length === 1 ? "" : `, and ${rects.length - 1} more`;
  return log.add(
    "error",
    "no-exact-cover",
    `In the soffit of ${room} no slab panels, strips and closure of the kit make up a field of ` +
      `${first.u1 - first.u0} × ${first.v1 - first.v0} mm${more}: add a size to the kit, move a wall, or plan it as made to ` +
      `measure.`,
    { room },
  );
}

function reportCrossing(legs: readonly Leg[], { room }: SoffitField, log: ProblemLog): number {
  const { face } = legs[0]!;
  return log.add(
    "error",
    "connectors-cross",
    `In the soffit of ${room} the connectors by wall ${face.settled.formed.walls[0] ?? ""} reach over each other: the ` +
      `walls stand too near for their depth; form that place to measure or move a wall.`,
    { room, face: face.id },
  );
}

function reportGap(legs: readonly Leg[], { room }: SoffitField, log: ProblemLog): number {
  const { face } = legs[0]!;
  return log.add(
    "error",
    "connector-gap",
    `In the soffit of ${room} the row of connectors by wall ${face.settled.formed.walls[0] ?? ""} is broken: nothing forms ` +
      `the edge of the slab there; form that place to measure.`,
    { room, face: face.id },
  );
}

function reportBeside({ room }: SoffitField, area: number, log: ProblemLog): number {
  return log.add(
    "error",
    "special-soffit",
    `The soffit of ${room} is not square at its edges: ${roundTo(area / 1e6, 2)} m² beside the slab panels is made to ` +
      `measure, on supports that the engineer draws.`,
    { room },
  );
}
