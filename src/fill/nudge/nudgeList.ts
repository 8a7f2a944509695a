// The nudge list as it is told and written: the format "panelwright-nudges", version 1. Lengths mm, amounts in what the set is
// counted by.

import { unitToDocument } from "../../plan/documentProject.ts";
import { straightChain, type WallEnd } from "../../plan/editAxis.ts";
import type { Position, Unit } from "../../plan/project.ts";
import { type Mm, roundTo } from "../../units.ts";
import type { StatedProblem } from "../optimise/problemOf.ts";
import type { SetAnswer } from "../optimise/search.ts";
import type { PanelSet } from "../result.ts";
import type { BeforeAfter } from "../setChanges.ts";
import { amount, area, count, length, position } from "../writeFigures.ts";
import type { RoomChange } from "./clearSizes.ts";
import type { Prospect } from "./screen.ts";

export interface NudgeCounts {
  readonly closures: number;
  readonly fillers: number;
  readonly errors: number;
}

/** One move, tried in all pours of its unit, all other walls as drawn. */
export interface SchemeNudge {
  readonly unit: string;
  /** The pours it is made in. */
  readonly pours: readonly string[];
  /** "wall": across its line, with all that carries it straight on. "free-end": drawn out or in. */
  readonly kind: "wall" | "free-end";
  readonly walls: readonly string[];
  /** Which end of it, for a free end; else null. */
  readonly end: WallEnd | null;
  /** Where the plan shows it going, unmirrored: right is x, up is y. */
  readonly way: "left" | "right" | "up" | "down";
  /** Whole mm, greater than 0. */
  readonly by: Mm;
  readonly move: Position;
  /** Of the cost of the set: cost before less cost after. */
  readonly saving: number;
  /** What it saves whatever the gap before it was: the bound before less the cost after; 0 at least. */
  readonly proven: number;
  readonly cost: number;
  readonly lowerBound: number;
  readonly status: SetAnswer["status"];
  readonly proof: SetAnswer["proof"];
  /** Full-height columns over all pours of the scheme. */
  readonly closures: BeforeAfter;
  readonly fillers: BeforeAfter;
  /** The price of the pieces to buy that the cost leaves out, at the kit's prices. */
  readonly fixed: BeforeAfter;
  readonly rooms: readonly RoomChange[];
}

export interface NudgeList {
  /**
   * "done": no other move of one wall saves more than those listed, within the gap of the set as drawn. "limit": the work allowed for it ran out. "stopped": it was
   * stopped. "no-plan": no plan keeps to the pieces there are and the limits, so that a move could make it cheaper.
   */
  readonly status: "done" | "limit" | "stopped" | "no-plan";
  readonly project: string;
  readonly countedBy: PanelSet["countedBy"];
  /** Of the set as drawn. */
  readonly cost: number;
  /** The greatest move looked at. */
  readonly greatest: Mm;
  /** Walls and free ends looked at. */
  readonly walls: number;
  /** Moves solved again. */
  readonly priced: number;
  /** None of the moves that were not solved again saves more, by the bound. */
  readonly mostLeft: number;
  /** Most first; of equals the smaller move. */
  readonly nudges: readonly SchemeNudge[];
}

export interface ToldMove {
  readonly prospect: Prospect;
  readonly stated: StatedProblem;
  readonly answer: SetAnswer;
  readonly saving: number;
  /** Of the plan before. */
  readonly bound: number;
  readonly unit: Unit;
  readonly pours: readonly string[];
  readonly counts: { readonly before: NudgeCounts; readonly after: NudgeCounts };
  readonly fixed: BeforeAfter;
  readonly rooms: readonly RoomChange[];
}

export function describeNudge(told: ToldMove): SchemeNudge {
  const { prospect, stated, answer, unit, counts } = told;
  const { mover, direction } = prospect.candidate;
  const { shift } = prospect;
  const cost = answer.cost / stated.amounts.scale;
  const chain = straightChain(unitToDocument(unit, 0).walls, mover.wall).map(({ id }) => id);
  const pair = (of: "closures" | "fillers") => ({ before: counts.before[of], after: counts.after[of] });
  return {
    unit: unit.id,
    pours: told.pours,
    kind: mover.kind,
    walls: mover.kind === "wall" ? chain : [mover.wall],
    end: mover.kind === "wall" ? null : mover.end,
    way: wayOf(direction, shift),
    by: Math.abs(shift),
    move: [roundTo(direction[0] * shift, 3), roundTo(direction[1] * shift, 3)],
    saving: told.saving,
    proven: Math.max(0, roundTo(told.bound - cost, 6)),
    cost,
    lowerBound: Math.min(answer.bound, answer.cost) / stated.amounts.scale,
    status: answer.status,
    proof: answer.proof,
    closures: pair("closures"),
    fillers: pair("fillers"),
    fixed: told.fixed,
    rooms: told.rooms,
  };
}

function wayOf([dx, dy]: Position, shift: Mm): SchemeNudge["way"] {
  if (Math.abs(dx) >= Math.abs(dy)) return dx * shift > 0 ? "right" : "left";
  return dy * shift > 0 ? "up" : "down";
}

/** The list as the text of a file: two-space indent, one final newline, members in the order of the types above. */
export function writeNudges(list: NudgeList): string {
  const file = {
    format: "panelwright-nudges",
    version: 1,
    project: list.project,
    status: list.status,
    countedBy: list.countedBy,
    cost: amount(list.cost),
    greatest: length(list.greatest),
    walls: count(list.walls),
    priced: count(list.priced),
    mostLeft: amount(list.mostLeft),
    nudges: list.nudges.map(nudgeEntry),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

function nudgeEntry(nudge: SchemeNudge) {
  const pairOf = ({ before, after }: BeforeAfter, figure: (value: number) => number) => ({
    before: figure(before),
    after: figure(after),
  });
  return {
    unit: nudge.unit,
    pours: nudge.pours,
    kind: nudge.kind,
    walls: nudge.walls,
    end: nudge.end,
    way: nudge.way,
    by: length(nudge.by),
    move: position(nudge.move),
    saving: amount(nudge.saving),
    proven: amount(nudge.proven),
    cost: amount(nudge.cost),
    lowerBound: amount(nudge.lowerBound),
    status: nudge.status,
    proof: nudge.proof,
    closures: pairOf(nudge.closures, count),
    fillers: pairOf(nudge.fillers, count),
    fixed: pairOf(nudge.fixed, amount),
    rooms: nudge.rooms.map(({ room, area: size, sizes }) => ({
      room,
      area: pairOf(size, area),
      sizes: sizes.map((each) => pairOf(each, length)),
    })),
  };
}
