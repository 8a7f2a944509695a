// How do the faces of a fill go on in one straight line, and what stands along it?
//
//   face f3        face f4 (under a balcony)
//   ├──────────────┤──────────┤      one run: ties, jambs and both ends by their place along it
//
// A tie is found again on both of its faces by its place in the plan.

import type { FilledFace, TieLine, UnitFill } from "../fill/result.ts";
import { alongLine } from "../geom/line.ts";
import type { Mm } from "../units.ts";
import { lineOf } from "./wallSides.ts";

/** A tie line where it stands on a run. */
export interface RunTie {
  readonly place: Mm;
  /** Index in the fill's list of ties. */
  readonly tie: number;
  readonly heights: readonly Mm[];
  /** Whether the face here is the one that is set first. */
  readonly isOwner: boolean;
}

/** An opening between jambs. */
export interface RunOpening {
  readonly low: Mm;
  readonly high: Mm;
  readonly sill: Mm;
  readonly head: Mm;
}

export interface FaceRun {
  /** Faces along the run, each with the place of its `from`. */
  readonly faces: readonly { readonly face: FilledFace; readonly start: Mm }[];
  readonly length: Mm;
  /** By place. */
  readonly ties: readonly RunTie[];
  /** Bands only: a box is no end of the form beside it. */
  readonly openings: readonly RunOpening[];
}

/** Where two ends are one point: settled ends are shared exactly, drawn ones to a thousandth. */
const SAME: Mm = 0.5;
/** Sine of the angle up to which two faces count as one straight line. */
const STRAIGHT = 0.002;

/** The runs of a fill, in the order of their first faces. */
export function faceRuns(fill: UnitFill): readonly FaceRun[] {
  const byFrom = new Map<string, FilledFace[]>();
  for (const face of fill.faces) {
    const key = keyOf(face.settled[0]);
    byFrom.set(key, [...(byFrom.get(key) ?? []), face]);
  }
  const nextOf = (face: FilledFace) =>
    (byFrom.get(keyOf(face.settled[1])) ?? []).find((other) => other !== face && isStraightOn(face, other));
  const continued = new Set(fill.faces.map(nextOf).filter((face) => face !== undefined));
  const onFace = tiesByFace(fill.ties);
  return fill.faces
    .filter((face) => !continued.has(face) && face.length > 0)
    .map((first) => {
      const faces: { face: FilledFace; start: Mm }[] = [];
      let start = 0;
      for (let face: FilledFace | undefined = first; face !== undefined; face = nextOf(face)) {
        if (faces.some((each) => each.face === face)) break;
        faces.push({ face, start });
        start += face.length;
      }
      return runOf(faces, start, onFace);
    });
}

function runOf(
  faces: FaceRun["faces"],
  length: Mm,
  onFace: ReadonlyMap<string, readonly { readonly index: number; readonly tie: TieLine }[]>,
): FaceRun {
  const ties = faces.flatMap(({ face, start }) =>
    (onFace.get(face.id) ?? []).map(
      ({ tie, index }): RunTie => ({
        place: start + alongFace(face, tie),
        tie: index,
        heights: tie.heights,
        isOwner: tie.faces[0] === face.id,
      }),
    ),
  );
  const openings = faces.flatMap(({ face, start }) =>
    face.openings
      .filter(({ formed }) => formed === "band")
      .map(
        ({ x, width, sill, head }): RunOpening => ({
          low: start + x,
          high: start + x + width,
          sill,
          head,
        }),
      ),
  );
  return { faces, length, ties: ties.sort((a, b) => a.place - b.place), openings };
}

function tiesByFace(ties: readonly TieLine[]) {
  const found = new Map<string, { readonly index: number; readonly tie: TieLine }[]>();
  ties.forEach((tie, index) => {
    for (const id of tie.faces) {
      const list = found.get(id);
      if (list === undefined) found.set(id, [{ index, tie }]);
      else list.push({ index, tie });
    }
  });
  return found;
}

/** The place of a tie along a face, mm from its `from`. */
function alongFace(face: FilledFace, { at }: TieLine): Mm {
  return alongLine(lineOf(face), at);
}

function isStraightOn(a: FilledFace, b: FilledFace): boolean {
  const [ax, ay] = [a.settled[1][0] - a.settled[0][0], a.settled[1][1] - a.settled[0][1]];
  const [bx, by] = [b.settled[1][0] - b.settled[0][0], b.settled[1][1] - b.settled[0][1]];
  const lengths = Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by));
  return ax * bx + ay * by > 0 && Math.abs(ax * by - ay * bx) <= STRAIGHT * lengths;
}

function keyOf([x, y]: readonly [Mm, Mm]): string {
  return `${Math.round(x / SAME)} ${Math.round(y / SAME)}`;
}
