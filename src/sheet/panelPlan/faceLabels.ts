// Labels of one face on a plan: the width of each block beside it, the mark that names its elevation.
//
//      600    600          A width stands outside its block. Where the block is too narrow for it, it moves away on a
//   ┌──────┬──────┬┐       leader; where no place is free it is left to the list. Nothing is ever laid over anything.
//   └──────┴──────┴┘ ╲100

import type { FilledFace } from "../../fill/result.ts";
import type { Mm } from "../../units.ts";
import { type Box, boxAround, grown } from "../box.ts";
import { ringMarks } from "../label.ts";
import { textWidth } from "../lettering.ts";
import type { LetterHeight, Mark, Point } from "../mark.ts";
import { THIN } from "../pieceMark.ts";
import { intoConcrete, onPlan, type PlanView } from "../planView.ts";
import { standing } from "./blocks.ts";
import { isFree, type PaperTaken } from "./paperTaken.ts";

/** What labels of one face share. */
export interface FaceOnPlan {
  readonly face: FilledFace;
  readonly depth: Mm;
  readonly view: PlanView;
  readonly taken: PaperTaken;
}

/** Something on the floor that says its width. */
export interface WidthLabel {
  readonly x: Mm;
  readonly width: Mm;
  readonly text: string;
  /** "run": several equal panels side by side, each too narrow for its number. */
  readonly kind: "panel" | "run" | "void" | "ring";
}

/** Clear between a block, with the dots of ties on it, and its width; mm of paper. */
const OFF = 0.9;
const CLEAR = 0.3;
const WIDTH_HEIGHT = 2.5;
const RING = 4.6;
/** Paper that the line under the text of a run takes. */
const RUN_LINE = 0.7;
/** How far leaders reach from the block, nearest first, and how far they lean; mm of paper. */
const LEADER_REACHES = [3.8, 6.6, 9.4, 12.2] as const;
/** A leader that cannot run straight to its width first leaves the row of widths by the blocks. */
const KNEE = 3.6;
const LEADER_LEANS = [0, 1.5, -1.5, 3, -3, 4.5, -4.5, 6, -6, 8, -8] as const;

/** The widths of a face in order: panels, fillers and closures, doors, places that stay empty. */
export function widthLabels(face: FilledFace): readonly WidthLabel[] {
  return [
    ...standing(face)
      .filter(({ family }) => family !== "inside-corner")
      .map(({ x, width }) => ({ x, width, text: `${width}`, kind: "panel" as const })),
    ...face.openings
      .filter(({ sill, formed }) => sill === 0 && formed === "band")
      .map(({ x, width }) => ({ x, width, text: `${width}`, kind: "void" as const })),
    ...face.unfilled
      .filter(({ z }) => z === 0)
      .map(({ x, width, problem }) => ({ x, width, text: `${problem + 1}`, kind: "ring" as const })),
  ].sort((a, b) => a.x - b.x);
}

/** The labels with equal panels that are too narrow for their numbers drawn together: "5 × 600". */
export function withRuns(labels: readonly WidthLabel[], at: FaceOnPlan): readonly WidthLabel[] {
  return gathered(labels, 2, (label) => slackOf(label, at) < 0);
}

/** A list of widths with three or more equal ones drawn together. */
export function shortened(labels: readonly WidthLabel[]): readonly WidthLabel[] {
  return gathered(labels, 3, () => true);
}

function gathered(
  labels: readonly WidthLabel[],
  least: number,
  isIn: (label: WidthLabel) => boolean,
): readonly WidthLabel[] {
  const runs: WidthLabel[][] = [];
  for (const label of labels) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    const goesOn =
      last !== undefined &&
      label.kind === "panel" &&
      last.kind === "panel" &&
      last.width === label.width &&
      last.x + last.width === label.x &&
      isIn(label) &&
      isIn(last);
    if (goesOn) run!.push(label);
    else runs.push([label]);
  }
  return runs.flatMap((run): readonly WidthLabel[] => {
    const first = run[0]!;
    if (run.length < least) return run;
    return [
      { ...first, width: first.width * run.length, text: `${run.length} × ${first.width}`, kind: "run" },
    ];
  });
}

function slackOf(label: WidthLabel, at: FaceOnPlan): number {
  const { along } = anchorOf(at, label.x);
  return label.width / at.view.scale / 2 - halfIn(sizeOf(label), along) - CLEAR / 2;
}

function lettering(kind: WidthLabel["kind"]): { readonly height: LetterHeight; readonly weight: 400 | 600 } {
  return { height: WIDTH_HEIGHT, weight: kind === "void" ? 400 : 600 };
}

function sizeOf(label: WidthLabel): { readonly width: number; readonly height: number } {
  const width = textWidth(label.text, lettering(label.kind));
  return label.kind === "ring"
    ? { width: Math.max(RING, width + 2), height: Math.max(RING, width + 2) }
    : { width, height: WIDTH_HEIGHT };
}

/** Where a label begins to look for its place: the middle of the outer edge of its block, and the way out from there. */
function anchorOf(
  at: FaceOnPlan,
  x: Mm,
): { readonly from: Point; readonly out: Point; readonly along: Point } {
  const [nx, ny] = intoConcrete(at.face);
  return {
    from: at.view.at(onPlan(at.face, x, -at.depth)),
    out: [-nx, ny],
    along: [ny, nx],
  };
}

/** Half of what a box takes in a direction. */
function halfIn({ width, height }: { width: number; height: number }, [x, y]: Point): number {
  return (Math.abs(x) * width + Math.abs(y) * height) / 2;
}

function moved(from: Point, out: Point, reach: number, along: Point, shift: number): Point {
  return [from[0] + out[0] * reach + along[0] * shift, from[1] + out[1] * reach + along[1] * shift];
}

/** The width close by its block; null where the block is too narrow or the paper is taken. */
export function placeBeside(label: WidthLabel, at: FaceOnPlan): readonly Mark[] | null {
  const { from, out, along } = anchorOf(at, label.x + label.width / 2);
  const size = sizeOf(label);
  const slack = slackOf(label, at);
  if (slack < 0) return null;
  const reach = OFF + halfIn(size, out) + (label.kind === "run" ? RUN_LINE : 0);
  for (let shift = 0; shift <= slack + 1e-9; shift += 0.5) {
    for (const side of shift === 0 ? [1] : [1, -1]) {
      const centre = moved(from, out, reach, along, shift * side);
      const box = boxAround(centre[0], centre[1], size.width, size.height);
      if (!isFree(at.taken, grown(box, CLEAR / 2))) continue;
      at.taken.texts.take(grown(box, CLEAR / 2));
      return [...(label.kind === "run" ? runLine(label, at) : []), ...labelMarks(label, centre)];
    }
  }
  return null;
}

/** A line as long as the run, between its blocks and the text. */
function runLine(label: WidthLabel, at: FaceOnPlan): readonly Mark[] {
  const inset = 0.6 * at.view.scale;
  const [from, to] = [label.x + inset, label.x + label.width - inset].map((x): Point => {
    const anchor = anchorOf(at, x);
    return moved(anchor.from, anchor.out, OFF, anchor.along, 0);
  }) as [Point, Point];
  at.taken.texts.takeLine(from, to, 0.4);
  return [{ kind: "line", from, to, stroke: THIN }];
}

/** The width farther out, on a leader that crosses nothing; null where no place is free. */
export function placeOnLeader(label: WidthLabel, at: FaceOnPlan): readonly Mark[] | null {
  const { from, out, along } = anchorOf(at, label.x + label.width / 2);
  const size = sizeOf(label);
  const foot = moved(from, out, 0.5, along, 0);
  for (const far of LEADER_REACHES) {
    for (const lean of LEADER_LEANS) {
      const centre = moved(from, out, far + halfIn(size, out) - WIDTH_HEIGHT / 2, along, lean);
      const box = boxAround(centre[0], centre[1], size.width, size.height);
      const end = moved(centre, out, -halfIn(size, out) - 0.3, along, 0);
      if (!isFree(at.taken, grown(box, CLEAR))) continue;
      const path = [[end], [moved(from, out, KNEE, along, 0), end]].find((points) =>
        isClear(at.taken, [foot, ...points]),
      );
      if (path === undefined) continue;
      at.taken.texts.take(grown(box, CLEAR));
      const points = [from, ...path];
      for (const [index, point] of path.entries()) at.taken.texts.takeLine(points[index]!, point, 0.4);
      return [{ kind: "polyline", points, stroke: THIN }, ...labelMarks(label, centre)];
    }
  }
  return null;
}

function isClear({ solids, texts }: PaperTaken, points: readonly Point[]): boolean {
  return points
    .slice(1)
    .every((to, index) => solids.isFreeLine(points[index]!, to) && texts.isFreeLine(points[index]!, to));
}

function labelMarks(label: WidthLabel, [x, y]: Point): readonly Mark[] {
  const style = label.kind === "ring" ? ({ height: 2.5, weight: 700 } as const) : lettering(label.kind);
  const text: Mark = {
    kind: "text",
    at: [x, y + style.height / 2],
    text: label.text,
    ...style,
    ink: "ink",
    anchor: "middle",
  };
  return label.kind === "ring" ? [...ringMarks(x, y, sizeOf(label).width / 2 - 0.4), text] : [text];
}

/** The mark of a section: the letter of the face and the sheet of its elevation. */
export interface SectionMark {
  readonly letter: string;
  readonly sheet: string;
  readonly isSmall: boolean;
}

interface TagSize {
  readonly height: LetterHeight;
  readonly box: number;
}

const TAG_SIZES: readonly TagSize[] = [
  { height: 3.5, box: 4.5 },
  { height: 2.5, box: 3.4 },
];
const TAG_PAD = 0.6;
const POINTER = 1.3;
const FARTHEST_TAG = 16;

/** The tag of the face as near to its middle as it can be, its pointer towards the wall; null where no place is free. */
export function placeSection(mark: SectionMark, at: FaceOnPlan): readonly Mark[] | null {
  for (const size of mark.isSmall ? TAG_SIZES.slice(1) : TAG_SIZES) {
    const letter = textWidth(mark.letter, { height: size.height, weight: 700 }) + 2 * TAG_PAD;
    const sheet = textWidth(mark.sheet, { height: 2.5, weight: 400 }) + 2 * TAG_PAD;
    const place = tagPlace(letter + sheet, size.box, at);
    if (place === null) continue;
    at.taken.texts.take(grown(place.whole, CLEAR));
    return tagMarks(mark, { ...place, letter, height: size.height });
  }
  return null;
}

interface TagPlace {
  readonly box: Box;
  /** With the pointer. */
  readonly whole: Box;
  readonly pointer: readonly [Point, Point, Point];
}

function tagPlace(width: number, height: number, at: FaceOnPlan): TagPlace | null {
  const { out, along } = anchorOf(at, 0);
  const paper = at.face.length / at.view.scale;
  const most = Math.max(0, paper / 2 - 1);
  for (let cost = 0; cost <= FARTHEST_TAG; cost += 0.75) {
    for (let shift = 0; shift <= Math.min(most, cost * 4); shift += 1.5) {
      const reach = cost - shift / 4;
      for (const side of shift === 0 ? [1] : [1, -1]) {
        const { from } = anchorOf(at, at.face.length / 2 + shift * side * at.view.scale);
        const place = tagAt(width, height, { from, out, along }, reach);
        const eye = moved(from, out, 0.5, along, 0);
        if (!isFree(at.taken, grown(place.whole, CLEAR))) continue;
        if (!at.taken.solids.isFreeLine(eye, place.pointer[0])) continue;
        return place;
      }
    }
  }
  return null;
}

/** The tag `reach` out from the wall. The pointer stands on the side of the box that looks to the wall most. */
function tagAt(
  width: number,
  height: number,
  { from, out, along }: { readonly from: Point; readonly out: Point; readonly along: Point },
  reach: number,
): TagPlace {
  const isUpright = Math.abs(out[1]) >= Math.abs(out[0]);
  const half = halfIn({ width, height }, out);
  const [cx, cy] = moved(from, out, OFF + reach + POINTER + half, along, 0);
  const box = boxAround(cx, cy, width, height);
  const sign = isUpright ? (out[1] > 0 ? -1 : 1) : out[0] > 0 ? -1 : 1;
  const edge: Point = isUpright ? [cx, cy + (sign * height) / 2] : [cx + (sign * width) / 2, cy];
  const tip: Point = isUpright ? [edge[0], edge[1] + sign * POINTER] : [edge[0] + sign * POINTER, edge[1]];
  const [dx, dy] = isUpright ? [1.1, 0] : [0, 1.1];
  const x = Math.min(box.x, tip[0]);
  const y = Math.min(box.y, tip[1]);
  return {
    box,
    whole: {
      x,
      y,
      width: Math.max(box.x + width, tip[0]) - x,
      height: Math.max(box.y + height, tip[1]) - y,
    },
    pointer: [tip, [edge[0] - dx, edge[1] - dy], [edge[0] + dx, edge[1] + dy]],
  };
}

function tagMarks(
  mark: SectionMark,
  { box, pointer, letter, height }: TagPlace & { readonly letter: number; readonly height: LetterHeight },
): readonly Mark[] {
  const middle = box.y + box.height / 2;
  return [
    { kind: "polygon", points: pointer, fill: "ink" },
    { kind: "rect", box, fill: "paper", stroke: THIN },
    { kind: "rect", box: { ...box, width: letter }, fill: "ink" },
    {
      kind: "text",
      at: [box.x + letter / 2, middle + height / 2],
      text: mark.letter,
      height,
      weight: 700,
      ink: "paper",
      anchor: "middle",
    },
    {
      kind: "text",
      at: [box.x + (letter + box.width) / 2, middle + 1.25],
      text: mark.sheet,
      height: 2.5,
      weight: 400,
      ink: "ink",
      anchor: "middle",
    },
  ];
}
