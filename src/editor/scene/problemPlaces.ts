// Where problems stand in the plan, and where their rings go so that they cover as little as may be.

import type { Problem } from "../../fill/result.ts";
import { find, listed, type UnitDocument } from "../../plan/document.ts";
import { placeOnWall, wallLength } from "../../plan/editAxis.ts";
import type { Position } from "../../plan/project.ts";
import { boxAround } from "../box.ts";
import type { LiveFill } from "../live/liveFill.ts";
import { alongFace } from "./pieces.ts";
import { middleOf } from "./soffitPieces.ts";

export interface PlacedProblem {
  /** From 1, as in the list. */
  readonly number: number;
  readonly problem: Problem;
  /** null: it stands nowhere in this plan; it is about the kit or the bill. */
  readonly at: Position | null;
}

/** Errors before warnings, else as the fill tells them; numbered in that order. */
export function placeProblems(unit: UnitDocument, live: LiveFill | null): readonly PlacedProblem[] {
  if (live === null) return [];
  const { problems } = live.fill;
  const ordered = [
    ...problems.filter(({ severity }) => severity === "error"),
    ...problems.filter(({ severity }) => severity === "warning"),
  ];
  const open = openPlaces(live);
  return ordered.map((problem, k) => ({
    ...{ number: k + 1, problem },
    at: open.get(problem) ?? placeOf(unit, live, problem),
  }));
}

// A problem that leaves parts of a soffit open stands in the middle of the first of them.
function openPlaces({ fill }: LiveFill): ReadonlyMap<Problem | undefined, Position> {
  const open = fill.soffits.flatMap(({ unfilled }) => unfilled).reverse();
  return new Map(
    open.map(({ problem, outline }) => [fill.problems[problem], middleOf(boxAround(outline))] as const),
  );
}

function placeOf(unit: UnitDocument, live: LiveFill, { where }: Problem): Position | null {
  if (where.at !== undefined) return where.at;
  const face = live.fill.faces.find(({ id }) => id === where.face);
  if (face !== undefined) {
    const [ux, uy] = alongFace(face);
    const x = where.x ?? face.length / 2;
    return [face.from[0] + ux * x, face.from[1] + uy * x];
  }
  const opening = where.opening === undefined ? undefined : find(unit.openings, where.opening);
  const wall = find(unit.walls, opening?.wall ?? where.wall ?? "");
  if (wall !== undefined) {
    return placeOnWall(wall, opening === undefined ? wallLength(wall) / 2 : opening.at + opening.width / 2);
  }
  const label = listed(unit.rooms).find(({ name }) => name === where.room);
  if (label !== undefined) return label.at;
  const soffit = live.fill.soffits.find(({ room }) => room === where.room);
  if (soffit !== undefined) return middleOf(boxAround(soffit.outline));
  const room = live.outline.rooms.find(({ name }) => name === where.room);
  return room?.lowerLeft ?? null;
}
