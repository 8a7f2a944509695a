// Draws a placed row of the ribbon: the wall, its corners, the labels round it and the heights at its left.

import type { EdgePiece, FacePiece } from "../fill/result.ts";
import type { Mm } from "../units.ts";
import { labelMarks, leaderMark, leaderOffset } from "./label.ts";
import { cutToWidth, textWidth } from "./lettering.ts";
import { levelScale } from "./levelScale.ts";
import type { Mark, Point } from "./mark.ts";
import { foldMark, GHOST, OUTLINE } from "./pieceMark.ts";
import { placedMark } from "./placeMark.ts";
import type { PlacedCorner, PlacedRow, PlacedStretch } from "./rowPlace.ts";
import { letterHeight, letterWidth, POST } from "./rowPlan.ts";
import type { RibbonContext } from "./stretch.ts";
import { type Showing, stretchMarks } from "./stretchMarks.ts";

/** How a piece shows in one stretch of all rows of a sheet. */
export type ShowingIn = (piece: FacePiece, at: PlacedStretch) => Showing;

/** The marks of a row whose upper edge lies at `top`. */
export function rowMarks(
  row: PlacedRow,
  top: number,
  context: RibbonContext,
  showing: ShowingIn,
): readonly Mark[] {
  const floor = top + row.heights.floor;
  return [
    ...wallMarks(row, top, context, showing),
    ...heightScale(row, floor, context),
    ...row.cornerHeads.flatMap((head) => cornerHeadMarks(head, top, row)),
    ...row.letters.flatMap((letter) => letterMarks(letter, top + row.heights.letters, context)),
  ];
}

/** The wall alone with the labels over and under it. */
export function wallMarks(
  row: PlacedRow,
  top: number,
  context: RibbonContext,
  showing: ShowingIn,
): readonly Mark[] {
  const { heights } = row;
  const floor = top + heights.floor;
  return [
    ...row.stretches.flatMap((at) =>
      stretchMarks(at.plan, context, (piece) => showing(piece, at)).map((mark) =>
        placedMark(mark, at.x, floor),
      ),
    ),
    ...row.corners.flatMap((at) => cornerMarks(at, floor, context)),
    ...row.widths.flatMap(({ label, x }) => labelMarks(label.parts, x, top + tapeTop(row))),
    ...row.flags.flatMap((flag) => flagMarks(flag, row, floor)),
    ...row.head.flatMap((label) => headMarks(label, top, row)),
  ];
}

/** Upper edge of the labels that hold the widths: their letters stand in the middle. */
function tapeTop({ heights, widths }: PlacedRow): number {
  const letters = widths[0]?.label.parts[0]?.isSmall === true ? 2.5 : 3.5;
  return heights.tape - (heights.labels + letters) / 2;
}

/** The fold of an inside corner, or the edge pieces of an outside corner between its two faces. */
function cornerMarks(at: PlacedCorner, floor: number, context: RibbonContext): readonly Mark[] {
  const height = Math.min(
    ...[at.previous, at.next].flatMap((side) => (side === null ? [] : [side.plan.height])),
  );
  if (at.corner.turn === "inside") {
    const isJoint = at.previous !== null && at.next !== null;
    return isJoint ? [foldMark(at.x, floor - height, floor)] : [];
  }
  const edges = context.cornerEdges[at.corner.name] ?? [];
  const axis: Mark = {
    kind: "line",
    from: [at.x, floor - height],
    to: [at.x, floor],
    stroke: { weight: 0.18, ink: "ink", dash: [2, 1.2] },
  };
  return [...edges.map((edge) => postMark(edge, at, floor, context.scale)), axis];
}

function postMark(edge: EdgePiece, at: PlacedCorner, floor: number, scale: number): Mark {
  const [low, high] = [edge.from[2], edge.to[2]].sort((a, b) => a - b) as [Mm, Mm];
  const box = {
    x: at.x - POST / 2 + 0.5,
    y: floor - high / scale,
    width: POST - 1,
    height: Math.max((high - low) / scale, 0.8),
  };
  const fill = edge.family === "outside-corner" ? "paper" : "band";
  return at.isAgain
    ? { kind: "rect", box, fill: "paper", stroke: GHOST }
    : { kind: "rect", box, fill, stroke: OUTLINE, piece: edge.piece };
}

/** Heights of the tie rows and of the wall above the floor, at the left of the row. */
function heightScale(row: PlacedRow, floor: number, context: RibbonContext): readonly Mark[] {
  const faces = row.stretches.map(({ plan }) => plan.stretch.sheetFace.face);
  const ids = new Set(faces.map(({ id }) => id));
  const ties = [...context.parts.ownTies, ...context.parts.otherTies];
  const rows = ties.filter((tie) => tie.faces.some((id) => ids.has(id))).flatMap((tie) => tie.heights);
  const heights = [...new Set([...rows, ...faces.map(({ height }) => height)])].sort((a, b) => b - a);
  return levelScale(
    heights.map((height) => ({ height, isStrong: false })),
    {
      left: context.span.left,
      floor,
      head: floor - row.heights.floor + row.heights.wall,
      scale: context.scale,
    },
  );
}

function flagMarks(flag: PlacedRow["flags"][number], row: PlacedRow, floor: number): readonly Mark[] {
  const top = floor + row.heights.flags - row.heights.floor;
  const isUnderWidth = row.widths.some(({ x }) => Math.abs(x - flag.wish) < 0.01);
  const bend = floor + row.heights.tape - row.heights.floor + 0.2;
  const to: Point = [flag.x + leaderOffset(flag.label.parts), top + labelTop(flag.label.parts[0]?.kind)];
  const leader = leaderMark([flag.wish, isUnderWidth ? bend : floor + 0.35], bend, to);
  return [leader, ...labelMarks(flag.label.parts, flag.x, top)];
}

/** Upper edge of the first part below the upper edge of its label. */
function labelTop(kind: string | undefined): number {
  return kind === "flag" || kind === "ring" ? 0 : 1;
}

function headMarks(head: PlacedRow["head"][number], top: number, row: PlacedRow): readonly Mark[] {
  const { label, x, wish } = head;
  const wall = top + row.heights.wall;
  const target: Point = [wish, top + row.heights.floor + label.y];
  const foot: Point = [
    x + leaderOffset(label.parts),
    top + row.heights.head + row.heights.labels - (label.hasDot ? 0 : 0.2),
  ];
  const needsLeader = label.hasDot || Math.abs(x - wish) > 0.5 || target[1] > wall + 0.5;
  const leader = needsLeader ? [leaderMark(target, wall - 0.3, foot)] : [];
  const dot: readonly Mark[] = label.hasDot
    ? [{ kind: "circle", centre: target, radius: 0.45, fill: "ink" }]
    : [];
  return [...leader, ...dot, ...labelMarks(label.parts, x, top + row.heights.head)];
}

function cornerHeadMarks(
  head: PlacedRow["cornerHeads"][number],
  top: number,
  row: PlacedRow,
): readonly Mark[] {
  const { at, x, stem } = head;
  const foot = top + row.heights.letters;
  const height = 7;
  const width = textWidth(at.corner.name, { height: 5, weight: 700 }) + 1.8;
  const box = { x: x - width / 2, y: foot - height, width, height };
  const isSolid = at.corner.turn === "inside" && !at.isAgain;
  const wallTop = Math.max(...[at.previous, at.next].map((side) => side?.plan.height ?? 0));
  const onWall: Point = [at.x, top + row.heights.floor - wallTop];
  const points: Point[] = [
    onWall,
    [at.x, top + row.heights.wall - 0.3],
    [stem, top + row.heights.head + row.heights.labels],
  ];
  const word = at.corner.roleWord;
  return [
    {
      kind: "polyline",
      points: [...points, [stem, top + row.heights.head], [x, foot]],
      stroke: at.isAgain ? GHOST : OUTLINE,
    },
    { kind: "rect", box, fill: isSolid ? "ink" : "paper", stroke: at.isAgain ? GHOST : OUTLINE },
    {
      kind: "text",
      at: [x, foot - (height - 5) / 2],
      text: at.corner.name,
      height: 5,
      weight: 700,
      ink: isSolid ? "paper" : "ink",
      anchor: "middle",
    },
    ...(word === null
      ? []
      : [
          {
            kind: "text",
            at: [x, foot - height - 0.7],
            text: word,
            height: 2.5,
            weight: 700,
            ink: "ink",
            anchor: "middle",
          } satisfies Mark,
        ]),
  ];
}

/** The letter of a face; behind it, as far as there is paper, what lies behind the face, its length and its direction. */
function letterMarks(
  letter: PlacedRow["letters"][number],
  baseline: number,
  context: RibbonContext,
): readonly Mark[] {
  const { plan } = letter.at;
  const { face, letter: name, direction } = plan.stretch.sheetFace;
  const height = letterHeight(plan);
  const left = letter.x + letterWidth(plan) / 2 + 1.6;
  const room = letter.room - 2;
  const names = (context.behind[face.id] ?? []).join(", ");
  const size = textWidth(names, { height: 3.5, weight: 600 }) <= room ? 3.5 : 2.5;
  const behind = cutToWidth(names, room, { height: size, weight: 600 });
  const length = `${face.length}`;
  const lengthWidth = textWidth(length, { height: 3.5, weight: 400 });
  const marks: Mark[] = [
    { kind: "text", at: [letter.x, baseline], text: name, height, weight: 700, ink: "ink", anchor: "middle" },
  ];
  if (height < 10 || room < lengthWidth) return marks;
  const line = { kind: "text", height: 3.5, ink: "ink", anchor: "start" } as const;
  if (behind !== "")
    marks.push({ ...line, at: [left, baseline - 5.4], text: behind, height: size, weight: 600 });
  marks.push({ ...line, at: [left, baseline], text: length, weight: 400 });
  if (room > lengthWidth + 9)
    marks.push(...arrowMarks(left + lengthWidth + 1.8, baseline - 1.75, 6, direction));
  return marks;
}

/** A level arrow from `x`, `length` long, its head at the end it points to. */
function arrowMarks(x: number, y: number, length: number, direction: "left" | "right"): readonly Mark[] {
  const [tail, tip] = direction === "right" ? [x, x + length] : [x + length, x];
  const back = direction === "right" ? -2 : 2;
  return [
    { kind: "line", from: [tail, y], to: [tip + back, y], stroke: { weight: 0.35, ink: "ink" } },
    {
      kind: "polygon",
      points: [
        [tip, y],
        [tip + back, y - 0.9],
        [tip + back, y + 0.9],
      ],
      fill: "ink",
    },
  ];
}
