// Covers every stretch of every face: intervals on both faces at once, zones on one.

import type { FillerPlace, Pinned } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import { type ClosingEnd, closingEnd, zoneClosureSide } from "./closingEnd.ts";
import { type Covered, coverInterval } from "./cover.ts";
import type { CoverTable } from "./coverTable.ts";
import { xOf } from "./onFace.ts";
import { type OrderedPiece, orderFromClosingEnd } from "./order.ts";
import type { FacePart } from "./parts.ts";
import { coverPinned } from "./pinnedCover.ts";
import { drawnTo, type PlacedPin } from "./pins.ts";
import { counted, lengthText, type ProblemLog } from "./problems.ts";
import type { Problem } from "./result.ts";
import { isBySet } from "./setPins.ts";
import type { SettledFace } from "./settled.ts";
import type { FaceLayout, Stretch } from "./stretches.ts";
import { coverZone } from "./zoneCover.ts";

/** A free interval that no pin holds, with the cover that is best for it alone. */
export interface FreeInterval {
  readonly stretch: Stretch;
  readonly table: CoverTable;
  readonly cover: Covered;
}

/** What such an interval is to be covered with: widths on offer in its table and at most one closure, in sum its length. */
export type ChooseCover = (interval: FreeInterval) => Chosen;

export interface Chosen extends Pick<Covered, "widths" | "closure"> {
  /** Why not with the cover that is best for it alone, for the reasons of its fillers and closures. */
  readonly because?: string;
}

export interface SolveContext {
  readonly faces: readonly SettledFace[];
  readonly layouts: readonly FaceLayout[];
  /** The cover table for the heights of one face, or of two that share their widths. */
  readonly tableFor: (face: number, opposite: number | null) => CoverTable;
  readonly starts: ReadonlySet<number>;
  readonly leg: Mm;
  readonly faceId: (face: number) => string;
  /** Greatest distance between ties, which no zone may exceed; null where the kit does not say. */
  readonly tieSpacing: Mm | null;
  readonly pins: readonly PlacedPin[];
  /** How near a joint a pinned sequence may begin or end and still be meant to begin or end there, mm. */
  readonly tolerance: Mm;
  readonly fillers: FillerPlace;
  /** Takes the place of the best cover of each interval alone, for a choice over more than one. */
  readonly choose?: ChooseCover;
  readonly log: ProblemLog;
}

/** The parts of every face, by place. */
export function solveStretches(context: SolveContext): readonly (readonly FacePart[])[] {
  const { faces, layouts } = context;
  const parts = faces.map((): FacePart[] => []);
  const usedPins = new Set<Pinned>();
  for (const face of faces) {
    const own = parts[face.index]!;
    const layout = layouts[face.index]!;
    if (face.formed.isFreeEnd) {
      if (face.length > 0) own.push({ kind: "stop-end", low: face.low, high: face.high });
      continue;
    }
    for (const segment of layout.segments) {
      if (segment.kind === "leg") own.push(segment);
      else if (segment.kind === "void") own.push({ ...segment, isFullHeight: true });
    }
    for (const stretch of layout.stretches) {
      const opposite = stretch.opposite === null ? null : matching(stretch, layouts[stretch.opposite]!);
      if (opposite !== null && opposite.face < face.index) continue; // covered from the other face
      const solved = coverStretch(stretch, opposite, usedPins, context);
      own.push(...solved);
      if (opposite !== null) parts[opposite.face]!.push(...solved);
    }
  }
  reportUnusedPins(usedPins, context);
  for (const own of parts) own.sort((a, b) => a.low - b.low || a.high - b.high);
  return parts;
}

function matching(stretch: Stretch, layout: FaceLayout): Stretch | null {
  return (
    layout.stretches.find(
      (other) => other.low === stretch.low && other.high === stretch.high && other.opposite === stretch.face,
    ) ?? null
  );
}

function coverStretch(
  stretch: Stretch,
  opposite: Stretch | null,
  usedPins: Set<Pinned>,
  context: SolveContext,
): readonly FacePart[] {
  const table = context.tableFor(stretch.face, opposite?.face ?? null);
  const closing = opposite === null ? null : closingEnd(stretch, context.starts);
  const { fillers, leg } = context;
  for (const pins of pinsWithin(stretch, context)) {
    const end = closing ?? { side: zoneClosureSide(stretch), hasCorner: true };
    const cover = coverPinned(stretch, pins, { table, closing: end, fillers });
    if (cover === null || (closing === null && !isOnePanel(cover.pieces))) continue;
    for (const { pinned } of cover.kept) usedPins.add(pinned);
    return toParts(stretch, cover.pieces, { table, isZone: closing === null, side: end.side, leg });
  }
  return closing === null
    ? coverOneZone(stretch, table, context)
    : coverOneInterval(stretch, table, closing, context);
}

// No joint can face a joint within a zone, whoever asks for it.
function isOnePanel(pieces: readonly OrderedPiece[]): boolean {
  return pieces.filter(({ kind }) => kind === "panel").length === 1;
}

// The engineer's own pins come first. One of the common choice covers a free interval from end to end, or has had its day.
function pinsWithin(stretch: Stretch, { pins, tolerance }: SolveContext): readonly (readonly PlacedPin[])[] {
  if (pins.length === 0) return [];
  const within = pins
    .filter((each) => each.faces.includes(stretch.face))
    .map((each) => drawnTo(each, stretch, tolerance))
    .filter((each) => each.low >= stretch.low && each.high <= stretch.high);
  const isWhole = ({ low, high }: PlacedPin) => low === stretch.low && high === stretch.high;
  const own = within.filter(({ pinned }) => !isBySet(pinned));
  const chosen = within.filter((each) => isBySet(each.pinned) && stretch.opposite !== null && isWhole(each));
  return [own, ...chosen.map((each) => [each])].filter((group) => group.length > 0);
}

function wallsOf(stretch: Stretch, { faces }: SolveContext): string {
  return faces[stretch.face]!.formed.walls[0] ?? "";
}

// Where a stretch is, for a problem: its face and the x at which it begins.
function placeOn(stretch: Stretch, { faces, faceId }: SolveContext): Problem["where"] {
  const face = faces[stretch.face]!;
  return {
    face: faceId(stretch.face),
    x: xOf(face, stretch.low, stretch.high),
    wall: face.formed.walls[0] ?? "",
  };
}

function coverOneInterval(
  stretch: Stretch,
  table: CoverTable,
  closing: ClosingEnd,
  context: SolveContext,
): readonly FacePart[] {
  const length = stretch.high - stretch.low;
  const wall = wallsOf(stretch, context);
  const cover = coverInterval(length, table);
  if (cover.status !== "covered") {
    const nearest =
      cover.status === "none"
        ? [cover.below, cover.above].filter((other): other is Mm => other !== null && other > 0)
        : [];
    const mend =
      nearest.length > 0
        ? `make it ${nearest.join(" or ")} mm, or add a width to the kit`
        : "add widths to the kit";
    const problem = context.log.add(
      "error",
      "no-exact-cover",
      `No panels of the kit fill the ${length} mm on wall ${wall} between ${stretch.lowJoint.label} and ` +
        `${stretch.highJoint.label} exactly: ${mend}.`,
      placeOn(stretch, context),
    );
    return [{ kind: "void", low: stretch.low, high: stretch.high, problem, isFullHeight: false }];
  }
  const chosen: Chosen = context.choose?.({ stretch, table, cover }) ?? cover;
  const sequence = orderFromClosingEnd(chosen, table.isStandard, {
    cornerAtClosingEnd: closing.hasCorner,
    fillers: context.fillers,
  });
  const lowToHigh = closing.side === "low" ? sequence : [...sequence].reverse();
  const { because } = chosen;
  return toParts(stretch, lowToHigh, {
    table,
    isZone: false,
    side: closing.side,
    ...(because !== undefined && { because }),
  });
}

function coverOneZone(stretch: Stretch, table: CoverTable, context: SolveContext): readonly FacePart[] {
  const length = stretch.high - stretch.low;
  const walls = wallsOf(stretch, context);
  const where = placeOn(stretch, context);
  const cover = coverZone(length, table);
  if (cover.status !== "covered") {
    const problem = context.log.add(
      "error",
      "no-exact-cover",
      uncoveredZone(stretch, walls, table, context.leg),
      where,
    );
    return [{ kind: "void", low: stretch.low, high: stretch.high, problem, isFullHeight: false }];
  }
  if (context.tieSpacing !== null && length > context.tieSpacing) {
    context.log.add(
      "error",
      "tie-spacing",
      `The piece on wall ${walls} ${oppositeText(stretch, context.leg)} is ${length} mm wide and no tie can pass inside it; ` +
        `the greatest tie spacing is ${context.tieSpacing} mm: use a shorter corner leg or a support by the engineer.`,
      where,
    );
  }
  const side = zoneClosureSide(stretch);
  const pieces: OrderedPiece[] = cover.widths.map((width) => ({ width, kind: "panel" }));
  if (cover.closure !== null) {
    const closure: OrderedPiece = { width: cover.closure, kind: "closure" };
    if (side === "low") pieces.unshift(closure);
    else pieces.push(closure);
  }
  return toParts(stretch, pieces, { table, isZone: true, side, leg: context.leg });
}

// Joints nearer to each other than any panel is wide come from walls that are not flush, not from a lack of panels.
function uncoveredZone(stretch: Stretch, walls: string, table: CoverTable, leg: Mm): string {
  const { lowJoint, highJoint } = stretch;
  const length = stretch.high - stretch.low;
  const narrowest = table.widths.at(-1)?.width ?? 0;
  const legs = Math.min(1, lowJoint.corners.length) + Math.min(1, highJoint.corners.length);
  const isBehindWall = legs > 0 && length > legs * leg; // no move of a wall takes such a zone away
  if (narrowest <= length || isBehindWall) {
    return (
      `The ${length} mm on wall ${walls} ${oppositeText(stretch, leg)} take one piece, or one and a closure; the kit has ` +
      `neither: add a panel ${length} mm wide${isBehindWall ? "" : ", or move the wall"}.`
    );
  }
  if (lowJoint.corners.length > 0 && highJoint.corners.length > 0) {
    return (
      `The corner legs on the two faces of wall ${walls} end ${length} mm apart and no panel is so narrow: the walls it ` +
      `joins there are not flush with each other; move one of them by ${length} mm.`
    );
  }
  return (
    `Two joints on wall ${walls}, at ${lowJoint.label} and at ${highJoint.label}, are ${length} mm apart and no panel is ` +
    `so narrow: move one of the two by ${length} mm so that they meet.`
  );
}

function toParts(
  stretch: Stretch,
  lowToHigh: readonly OrderedPiece[],
  options: { table: CoverTable; isZone: boolean; side: "low" | "high"; leg?: Mm; because?: string },
): readonly FacePart[] {
  const reason = options.isZone
    ? zoneReason(stretch, options.leg ?? 0)
    : intervalReason(stretch, lowToHigh, options.table);
  const because = options.because === undefined ? reason : `${reason}; ${options.because}`;
  let at = stretch.low;
  return lowToHigh.map(({ width, kind }): FacePart => {
    const low = at;
    at += width;
    const toClosingEnd = options.side === "low" ? low - stretch.low : stretch.high - at;
    if (kind === "closure") {
      return {
        kind,
        low,
        high: at,
        isZone: options.isZone,
        closingSide: options.side,
        toClosingEnd,
        reason: because,
      };
    }
    const isStandard = options.table.isStandard(width);
    return {
      kind,
      low,
      high: at,
      isZone: options.isZone,
      isStandard,
      toClosingEnd,
      reason: isStandard && !options.isZone ? null : because,
    };
  });
}

function intervalReason(stretch: Stretch, pieces: readonly OrderedPiece[], table: CoverTable): string {
  const length = stretch.high - stretch.low;
  const standard = pieces.filter(({ width, kind }) => kind === "panel" && table.isStandard(width));
  const covered = standard.reduce((sum, { width }) => sum + width, 0);
  const left = length - covered;
  const panels =
    standard.length === 0 ? "no standard panel fits" : counted(standard.length, "standard panel");
  return (
    `${length} between ${stretch.lowJoint.label} and ${stretch.highJoint.label}: ${panels}` +
    `${standard.length === 0 ? "" : ` take${standard.length === 1 ? "s" : ""} ${covered}`}, ${left} left`
  );
}

function zoneReason(stretch: Stretch, leg: Mm): string {
  const length = stretch.high - stretch.low;
  const legs = (stretch.lowJoint.corners.length > 0 ? 1 : 0) + (stretch.highJoint.corners.length > 0 ? 1 : 0);
  const rest = length - legs * leg;
  if (legs === 0 || rest <= 0) return `${length} opposite a corner or a joining wall`;
  return legs === 1
    ? `${length} opposite a corner: wall ${lengthText(rest)} and leg ${leg}`
    : `${length} opposite a joining wall: leg ${leg}, wall ${lengthText(rest)}, leg ${leg}`;
}

function oppositeText(stretch: Stretch, leg: Mm): string {
  return zoneReason(stretch, leg).slice(`${stretch.high - stretch.low} `.length);
}

function reportUnusedPins(used: ReadonlySet<Pinned>, { pins, log }: SolveContext): void {
  const said = new Set(used);
  const outdated: Pinned[] = [];
  for (const { pinned } of pins) {
    if (said.has(pinned)) continue;
    said.add(pinned);
    if (isBySet(pinned)) {
      outdated.push(pinned);
      continue;
    }
    const { wall, from, widths } = pinned;
    log.add(
      "error",
      "pinned-impossible",
      `The sequence ${widths.join(" + ")} mm pinned on wall ${wall} from ${lengthText(from)} mm does not fit between the joints ` +
        `and other pinned pieces there: pin it anew or take the pin away. The wall is filled without it.`,
      { wall },
    );
  }
  const first = outdated[0];
  if (first === undefined) return;
  log.add(
    "warning",
    "set-outdated",
    `${outdated.length} of the covers chosen for all pours no longer fit their walls, the first on wall ${first.wall} from ` +
      `${lengthText(first.from)} mm: these are filled by themselves; choose the set anew.`,
    { wall: first.wall },
  );
}
