// What the project's `limits` rule out of the choice, and what has to be said where they cannot be kept.
//
// Limits hold for what the choice places. Zones, bands and pinned sequences are not its to choose, and an interval that nothing
// allowed fills stays as it is filled by itself: neither goes unsaid.

import { partnerOf } from "../../kit/handed.ts";
import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import type { Casts } from "../castings.ts";
import type { FilledUnit } from "../fillWalls.ts";
import { xOf } from "../onFace.ts";
import type { Problem } from "../result.ts";
import type { FreeInterval } from "../solve.ts";
import type { Demand } from "./demand.ts";

/** Whether a choice may place a panel of this code. */
export type IsAllowed = (code: string) => boolean;

/** What a casting's panels may be: those of its mirrored pours count as well. */
export function allowedIn(
  {
    project,
    kit,
    days,
  }: { readonly project: Project; readonly kit: Kit; readonly days: readonly (readonly Casts[])[] },
  casting: number,
): IsAllowed {
  const isMirrored = days.some((casts) => casts.some((cast) => cast.casting === casting && cast.mirror));
  const isRuledOut = rulesOut(project, kit);
  const pieces = new Map(kit.pieces.map((piece) => [piece.code, piece]));
  return (code) => {
    const piece = pieces.get(code);
    const partner = isMirrored && piece !== undefined ? partnerOf(kit, piece) : null;
    return !isRuledOut(code) && (partner === null || !isRuledOut(partner.code));
  };
}

function rulesOut({ limits }: Project, kit: Kit): (code: string) => boolean {
  if (limits === undefined) return () => false;
  const greatest = limits.greatestMass ?? Number.POSITIVE_INFINITY;
  const ruledOut = new Set(limits.forbidden);
  for (const { code, mass } of kit.pieces) if (mass > greatest) ruledOut.add(code);
  return (code) => ruledOut.has(code);
}

export interface LimitsSource {
  readonly project: Project;
  readonly kit: Kit;
  /** By casting. */
  readonly filled: readonly FilledUnit[];
  /** By casting. */
  readonly demands: readonly Demand[];
}

/** By casting: where the limits are not kept. */
export function limitProblems({
  project,
  kit,
  filled,
  demands,
}: LimitsSource): readonly (readonly Problem[])[] {
  const { limits } = project;
  if (limits === undefined) return filled.map(() => []);
  const isRuledOut = rulesOut(project, kit);
  const panels = new Set(kit.pieces.filter(({ family }) => family === "wall-panel").map(({ code }) => code));
  const unknown = limits.forbidden.filter((code) => !panels.has(code)).map(unknownCode);
  return filled.map((unit, k) => [
    ...(k === 0 ? unknown : []),
    ...demands[k]!.held.map((interval) => unfilledWithin(interval, unit)),
    ...[...demands[k]!.standing]
      .filter(([code, count]) => count > 0 && isRuledOut(code))
      .map(([code, count]) => standingCode(code, count)),
  ]);
}

function unknownCode(code: string): Problem {
  const message = `The limits forbid ${code}, which is no wall panel of the kit: that rules nothing out.`;
  return { severity: "warning", kind: "limit-not-kept", message, where: { code } };
}

function unfilledWithin({ stretch }: FreeInterval, { drafts }: FilledUnit): Problem {
  const { settled, id } = drafts[stretch.face]!;
  const wall = settled.formed.walls[0] ?? "";
  const message =
    `Nothing that the limits allow fills the ${stretch.high - stretch.low} mm on wall ${wall} between ${stretch.lowJoint.label} and ` +
    `${stretch.highJoint.label} exactly: it is filled as if there were no limits; allow another panel there, or pin a sequence.`;
  return {
    severity: "error",
    kind: "limit-not-kept",
    message,
    where: { face: id, x: xOf(settled, stretch.low, stretch.high), wall },
  };
}

function standingCode(code: string, count: number): Problem {
  const message =
    `The limits rule ${code} out, yet ${count} of it stand where the common choice has no say: ` +
    `in zones, in bands, in pinned sequences or where nothing else fits.`;
  return { severity: "warning", kind: "limit-not-kept", message, where: { code } };
}
