// What is on the paper of a plan before any label: walls and blocks, which labels keep off and never look through;
// and the labels themselves, which keep off each other.

import type { UnitFill } from "../../fill/result.ts";
import type { Box } from "../box.ts";
import type { SheetInfo } from "../info.ts";
import type { Point } from "../mark.ts";
import { type Occupied, occupied } from "../occupied.ts";
import type { PlanView } from "../planView.ts";
import { blockOutline, frameDepth, standing, tieEnds } from "./blocks.ts";

export interface PaperTaken {
  readonly solids: Occupied;
  readonly texts: Occupied;
}

/** Breadth that a tie with its dot takes, mm of paper. */
const TIE_BREADTH = 1.2;

export function paperTaken(unit: UnitFill, info: SheetInfo, view: PlanView, area: Box): PaperTaken {
  const solids = occupied(area);
  const depth = frameDepth(info);
  for (const face of unit.faces) {
    solids.takeLine(view.at(face.from), view.at(face.to), 0.5);
    const gaps = face.unfilled.filter(({ z }) => z === 0);
    for (const part of [...standing(face), ...gaps]) takeQuad(solids, blockOutline(face, part, depth, view));
  }
  for (const tie of unit.ties) {
    const ends = tieEnds(tie, unit, info, view);
    if (ends !== null) solids.takeLine(ends[0], ends[1], TIE_BREADTH);
  }
  return { solids, texts: occupied(area) };
}

/** A block is at most a few millimetres deep: lines along it cover it. */
function takeQuad(solids: Occupied, [a, b, c, d]: readonly [Point, Point, Point, Point]): void {
  const deep = Math.sqrt((d[0] - a[0]) * (d[0] - a[0]) + (d[1] - a[1]) * (d[1] - a[1]));
  const lines = Math.max(1, Math.ceil(deep / 0.25));
  for (let line = 0; line <= lines; line++) {
    const share = line / lines;
    const between = (p: Point, q: Point): Point => [
      p[0] + (q[0] - p[0]) * share,
      p[1] + (q[1] - p[1]) * share,
    ];
    solids.takeLine(between(a, d), between(b, c), 0.25);
  }
}

/** Whether the box is free of everything. */
export function isFree({ solids, texts }: PaperTaken, box: Box): boolean {
  return solids.isFree(box) && texts.isFree(box);
}
