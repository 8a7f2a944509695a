// Which inside corners stand. A corner leg takes c on both faces; where a run is too short for its legs, the corner is
// left out, the run stays unfilled from end to end, and the other face loses the leg's length.
//
//   ├─leg─┤········ run ········├─leg─┤        needs at least two legs
//   ├──────── short run ───┤                   both corners left out

import type { Mm } from "../units.ts";
import type { FaceEnd } from "./formedFace.ts";
import { lengthText, type ProblemLog } from "./problems.ts";
import type { SettledFace } from "./settled.ts";

/** What an inside corner at one end of a face does there. */
export type LegState =
  | { readonly kind: "none" }
  /** The corner stands: its leg is formed. */
  | { readonly kind: "stands" }
  /** The corner is left out: the leg's length is unfilled, for the problem given. */
  | { readonly kind: "left-out"; readonly problem: number }
  /** The run itself is too short: all of it is unfilled. */
  | { readonly kind: "short"; readonly problem: number };

export interface FaceLegs {
  readonly low: LegState;
  readonly high: LegState;
}

export interface CornerContext {
  readonly faces: readonly SettledFace[];
  readonly leg: Mm;
  /** Whether the kit has the corner for the panel heights of a face; where not, the corner is left out. */
  readonly hasPiece: (face: number) => boolean;
  readonly roomName: (face: SettledFace) => string | null;
  readonly faceId: (face: number) => string;
  readonly log: ProblemLog;
}

export function isInside(end: FaceEnd): boolean {
  return end === "inside" || end === "inside-special";
}

/** A run from one end of a face to its first band opening, or to the other end. */
export interface EndRun {
  readonly low: Mm;
  readonly high: Mm;
  readonly cornerAtLow: boolean;
  readonly cornerAtHigh: boolean;
}

/** The band openings of a face, by place. */
export function bandOpenings(face: SettledFace) {
  return face.openings.filter(({ placed }) => placed.opening.formed === "band");
}

/** The stretches of a face between its ends and its band openings, by place. */
export function runsOf(face: SettledFace): readonly EndRun[] {
  const bands = bandOpenings(face);
  const runs: EndRun[] = [];
  let low = face.low;
  bands.forEach((band, k) => {
    runs.push({ low, high: band.low, cornerAtLow: k === 0 && isInside(face.lowEnd), cornerAtHigh: false });
    low = band.high;
  });
  const isOnly = bands.length === 0;
  runs.push({
    low,
    high: face.high,
    cornerAtLow: isOnly && isInside(face.lowEnd),
    cornerAtHigh: isInside(face.highEnd),
  });
  return runs;
}

/** Legs at both ends of every face. Files one problem for each run too short and each corner that is not square. */
export function placeCorners(context: CornerContext): readonly FaceLegs[] {
  const { faces, leg, hasPiece, log } = context;
  const short = faces.map((face) => shortRuns(face, context));
  let missing: number | null = null;
  // Corner k is the one at the `from` of face k; it is shared with the face before.
  const cornerState = faces.map((face): LegState => {
    if (!isInside(face.formed.fromEnd)) return { kind: "none" };
    const before = faces[face.formed.previous]!;
    const own = short[face.index]![face.isReversed ? "high" : "low"];
    const other = short[before.index]![before.isReversed ? "low" : "high"];
    if (face.formed.fromEnd === "inside-special") {
      return { kind: "left-out", problem: own ?? other ?? specialCorner(face, before, context) };
    }
    const problem = own ?? other;
    if (problem !== null) return { kind: "left-out", problem };
    if (hasPiece(face.index) && hasPiece(before.index)) return { kind: "stands" };
    missing ??= log.add(
      "error",
      "missing-piece",
      `The kit has no inside corner with two legs of ${leg} mm for the panel heights of this storey: add it to the kit.`,
      {},
    );
    return { kind: "left-out", problem: missing };
  });
  reportOutsideSpecials(context);
  return faces.map((face): FaceLegs => {
    const from = cornerState[face.index]!;
    const to = cornerState[face.formed.next]!;
    const atTo: LegState = isInside(face.formed.toEnd) ? to : { kind: "none" };
    const own = short[face.index]!;
    const resolve = (state: LegState, problem: number | null): LegState =>
      state.kind === "left-out" && problem !== null ? { kind: "short", problem } : state;
    return {
      low: resolve(face.isReversed ? atTo : from, own.low),
      high: resolve(face.isReversed ? from : atTo, own.high),
    };
  });
}

interface ShortEnds {
  low: number | null;
  high: number | null;
}

function shortRuns(face: SettledFace, context: CornerContext): ShortEnds {
  const found: ShortEnds = { low: null, high: null };
  if (!isInside(face.lowEnd) && !isInside(face.highEnd)) return found;
  for (const run of runsOf(face)) {
    const legs = (run.cornerAtLow ? 1 : 0) + (run.cornerAtHigh ? 1 : 0);
    if (run.high - run.low >= legs * context.leg) continue;
    const problem = reportShort(face, run, context);
    if (run.cornerAtLow) found.low = problem;
    if (run.cornerAtHigh) found.high = problem;
  }
  return found;
}

function reportShort(face: SettledFace, run: EndRun, context: CornerContext): number {
  const { faces, leg, roomName, log } = context;
  const length = run.high - run.low;
  const room = roomName(face);
  const place = room === null ? "on the outside" : `of ${room}`;
  const wall = face.formed.walls[0] ?? "";
  const x = face.isReversed ? face.high - run.high : run.low - face.low;
  const where = { face: context.faceId(face.index), x, wall };
  if (run.cornerAtLow && run.cornerAtHigh) {
    const mover = faces[face.formed.next]!.formed.walls[0] ?? "";
    const lacking = 2 * leg - length;
    return log.add(
      "error",
      "run-too-short",
      `The run between the two inside corners ${place} on wall ${wall} is ${length} mm; two ${leg} mm corner legs need ` +
        `${2 * leg}: move ${mover} by ${lacking} mm, or use a special or a lost form.`,
      where,
    );
  }
  const jamb = bandOpenings(face).find((band) => band.low === run.high || band.high === run.low);
  if (jamb !== undefined) {
    const { id } = jamb.placed.opening;
    // The same pier seen from both its sides is one thing to mend.
    return log.addOnce(`pier ${id} ${run.low} ${run.high}`, {
      severity: "error",
      kind: "opening-at-corner",
      message:
        `The pier between opening ${id} and the corner ${place} is ${length} mm; an inside corner needs ${leg}: move the ` +
        `opening by ${leg - length} mm, or choose a special.`,
      where: { ...where, opening: id },
    });
  }
  const isStub = faces[face.formed.next]!.formed.isFreeEnd || faces[face.formed.previous]!.formed.isFreeEnd;
  if (isStub) {
    return log.add(
      "error",
      "wall-too-short",
      `Wall ${wall} stands ${length} mm out of the corner ${place}; an inside corner leg needs ${leg}: make it ` +
        `${leg - length} mm longer, or use a special.`,
      where,
    );
  }
  return log.add("error", "jog-too-small", jogMessage({ length, place, wall, leg }), where);
}

const FLUSH_STEP = 20; // mm: no form closes a smaller step; the walls are to be made flush

function jogMessage(jog: { length: Mm; place: string; wall: string; leg: Mm }): string {
  const { length, place, wall, leg } = jog;
  if (length < FLUSH_STEP) {
    return (
      `The step ${place} at wall ${wall} is ${lengthText(length)} mm; a step under ${FLUSH_STEP} mm cannot be formed: ` +
      `move ${wall} by ${lengthText(length)} mm so that this side is flush, or give the walls one thickness and one line.`
    );
  }
  return (
    `The jog ${place} at wall ${wall} is ${length} mm; the leg of an inside corner needs ${leg}: make the jog ` +
    `${leg - length} mm deeper, take it away, or use a special${length <= 50 ? " (up to 50 mm a build-out strip)" : ""}.`
  );
}

function specialCorner(face: SettledFace, before: SettledFace, { faceId, log }: CornerContext): number {
  const angle = 360 - face.formed.outlineFace.fromCorner.angle;
  return log.add(
    "error",
    "special-corner",
    `The inside corner of ${before.formed.walls[0] ?? ""} and ${face.formed.walls[0] ?? ""} opens ${lengthText(angle)}°: ` +
      `the kit's corners are square; order a special or hinged corner of that angle.`,
    { face: faceId(face.index), x: 0, wall: face.formed.walls[0] ?? "", at: face.formed.from },
  );
}

function reportOutsideSpecials({ faces, faceId, log }: CornerContext): void {
  for (const face of faces) {
    if (face.formed.fromEnd !== "outside-special") continue;
    const before = faces[face.formed.previous]!;
    const angle = face.formed.outlineFace.fromCorner.angle;
    log.add(
      "error",
      "special-corner",
      `The outside corner of ${before.formed.walls[0] ?? ""} and ${face.formed.walls[0] ?? ""} is ${lengthText(angle)}°: ` +
        `the kit's angles are square; order a special or hinged angle.`,
      { face: faceId(face.index), x: 0, wall: face.formed.walls[0] ?? "", at: face.formed.from },
    );
  }
}
