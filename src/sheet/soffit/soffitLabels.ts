// The lettering of a soffit: letters of bands, numbers or sizes of panels, numbers of props, flags on what is too narrow.
//
//        E ↓              A letter stands where its band begins, its arrow the way it is laid. Where it has no paper
//      ┌─────┐            there, the panels of the band are named whole: "E1". What finds no place at all is given back
//      │  1  │   ┌─┐      to be listed in words.
//      ├─────┤───│2│
//      └─────┘   └─┘

import type { Soffit, SoffitPiece } from "../../fill/result.ts";
import { distance } from "../../geom/point.ts";
import type { Position } from "../../plan/project.ts";
import { type Box, boxAround, boxRound, grown } from "../box.ts";
import { type Lettering, textBox, textWidth } from "../lettering.ts";
import type { LetterHeight, Mark, Point } from "../mark.ts";
import { type Occupied, occupied } from "../occupied.ts";
import { OUTLINE } from "../pieceMark.ts";
import type { PlanView } from "../planView.ts";
import { type Band, isLaid } from "./bands.ts";
import { endsOf, heldEnds } from "./heldEnds.ts";
import { sidesOf } from "./overheadPiece.ts";
import { flagLabel, propLabel, ringAt } from "./placeLabel.ts";
import {
  isNotchAside,
  layingWay,
  middleOf,
  notchReach,
  outerEdge,
  propRadius,
  type SoffitDrawing,
} from "./soffitMarks.ts";
import { type Unplaced, unplacedOf } from "./unplaced.ts";

export interface LabelStyle {
  /** "figure": the number, as large as it fits; "size": name and size in small letters. */
  readonly style: "figure" | "size";
  readonly props: { readonly [piece: string]: number };
  readonly paper: SoffitPaper;
}

/** Which paper is taken: shared by all soffits of a sheet. */
export interface SoffitPaper {
  /** By pieces and all lettering: letters of bands stand clear of both. */
  readonly pieces: Occupied;
  /** By lettering, props and holes. */
  readonly texts: Occupied;
}

export interface SoffitLabels {
  readonly marks: readonly Mark[];
  /** What no paper was found for, in the order of the bands. */
  readonly unplaced: readonly Unplaced[];
}

const STEP = 0.5;

/** Nearer than this two places of one problem share its ring, mm of paper. */
const RING_REACH = 30;

/** The paper that the soffits of a sheet take before any of them is lettered; labels keep to the area. */
export function soffitPaper(
  drawings: readonly Pick<SoffitDrawing, "soffit" | "view">[],
  area: Box,
): SoffitPaper {
  const pieces = occupied(area);
  const texts = occupied(area);
  for (const { soffit, view } of drawings) {
    for (const { outline } of soffit.pieces) pieces.take(boxRound(outline.map(view.at)));
    for (const { at } of soffit.props) {
      const radius = propRadius(view.scale) + 0.3;
      const [x, y] = view.at(at);
      for (const grid of [pieces, texts]) grid.take(boxAround(x, y, 2 * radius, 2 * radius));
    }
    for (const hole of soffit.holes) texts.take(boxRound(hole.map(view.at)));
    for (const { end, prop } of heldEnds(soffit)) texts.takeLine(view.at(prop.at), view.at(end), 0.9);
  }
  return { pieces, texts };
}

export function soffitLabels(drawing: SoffitDrawing, label: LabelStyle): SoffitLabels {
  const { soffit, view, bands } = drawing;
  const { pieces, texts: taken } = label.paper;
  const marks: Mark[] = [];
  const put = (placed: readonly Mark[]) => {
    marks.push(...placed);
    for (const mark of placed) {
      const box = mark.kind === "text" ? textBox(mark) : mark.kind === "rect" ? mark.box : null;
      if (box === null) continue;
      pieces.take(grown(box, 0.3));
      taken.take(grown(box, 0.3));
    }
  };
  // One ring for places of one problem that lie near each other.
  const rings: { readonly problem: number; readonly at: Point }[] = [];
  for (const { outline, problem } of soffit.unfilled) {
    const box = boxRound(outline.map(view.at));
    const at: Point = [box.x + box.width / 2, box.y + box.height / 2];
    if (rings.some((ring) => ring.problem === problem && distance(ring.at, at) < RING_REACH)) continue;
    rings.push({ problem, at });
    const found = ringAt(box, `${problem + 1}`, taken);
    if (found !== null) put(found);
  }
  const whole = new Set<Band>();
  for (const band of bands) {
    const letter = label.style === "size" ? null : letterMarks(band, drawing, label.paper);
    if (letter === null) whole.add(band);
    else put(letter);
    if (label.style === "size") marks.push(...layingArrow(band, view, taken));
  }
  const pending: { readonly letter: string; readonly number: number; readonly piece: SoffitPiece }[] = [];
  for (const band of bands) {
    band.pieces.forEach((piece, index) => {
      const isWhole = whole.has(band) || label.style === "size";
      const name = isWhole ? `${band.letter}${index + 1}` : `${index + 1}`;
      const isLast = index === band.pieces.length - 1;
      const clear =
        isLast && !isNotchAside(band, view.scale) ? notchReach(band, view.scale) : ([0, 0] as const);
      const placed = panelLabel(name, { piece, clear }, drawing, label.style, taken);
      if (placed === null) pending.push({ letter: band.letter, number: index + 1, piece });
      else put(placed);
    });
  }
  for (const { piece, at } of soffit.props) {
    const number = label.props[piece];
    if (number === undefined) continue;
    const place = view.at(at);
    const tag = { radius: propRadius(view.scale), way: stripWay(at, soffit) };
    // A prop whose number nobody finds cannot be looked up in its table: rather a flag than none.
    const placed = propLabel(`${number}`, place, tag, taken) ?? flagLabel(`${number}`, place, taken);
    if (placed !== null) put(placed);
  }
  const sizeless = new Set<SoffitPiece>();
  const nameless = new Set<SoffitPiece>();
  for (const { letter, number, piece } of pending) {
    const placed = flagLabel(`${letter}${number}`, view.at(middleOf(piece.outline)), taken);
    if (placed === null) nameless.add(piece);
    else put(placed);
    // Closures are listed with what is made to measure.
    if (label.style === "size" && piece.family !== "closure-strip") sizeless.add(piece);
  }
  return { marks, unplaced: unplacedOf(bands, sizeless, nameless) };
}

/** What a piece can hold: its rectangle, or the square inside one that lies aslant. */
function innerBox(points: readonly Point[]): Box {
  const box = boxRound(points);
  const isUpright = points.every(
    ([x, y]) =>
      (Math.abs(x - box.x) < 0.01 || Math.abs(x - box.x - box.width) < 0.01) &&
      (Math.abs(y - box.y) < 0.01 || Math.abs(y - box.y - box.height) < 0.01),
  );
  if (isUpright) return box;
  const [a, b, c] = points;
  const side =
    a === undefined || b === undefined || c === undefined ? 0 : Math.min(distance(a, b), distance(b, c));
  return boxAround(box.x + box.width / 2, box.y + box.height / 2, side * 0.7, side * 0.7);
}

interface Line extends Lettering {
  readonly text: string;
}

const LINE_GAP = 1.1;
/** Between a label and the outline of its piece. */
const CLEAR = 0.9;

/** `clear`: how far a notch reaches into the piece, as a vector on paper; the label gives way by half of it. */
function panelLabel(
  name: string,
  { piece, clear }: { readonly piece: SoffitPiece; readonly clear: Point },
  { view }: SoffitDrawing,
  style: LabelStyle["style"],
  taken: Occupied,
): readonly Mark[] | null {
  const whole = innerBox(piece.outline.map(view.at));
  const [dx, dy] = [Math.abs(clear[0]), Math.abs(clear[1])];
  const box: Box = {
    x: whole.x + Math.max(0, clear[0]),
    y: whole.y + Math.max(0, clear[1]),
    width: whole.width - dx,
    height: whole.height - dy,
  };
  for (const lines of variants(name, piece, style, box)) {
    const width = Math.max(...lines.map((line) => textWidth(line.text, line)));
    const height = lines.reduce((sum, line) => sum + line.height, LINE_GAP * (lines.length - 1));
    if (width > box.width - 2 * CLEAR || height > box.height - 2 * CLEAR) continue;
    const [x, top] = [box.x + box.width / 2, box.y + (box.height - height) / 2];
    if (!taken.isFree({ x: x - width / 2, y: top, width, height })) continue;
    return stacked(lines, x, top);
  }
  return null;
}

/** From the most that is wanted to the least that is enough. */
function variants(
  name: string,
  piece: SoffitPiece,
  style: LabelStyle["style"],
  box: Box,
): readonly (readonly Line[])[] {
  if (piece.family === "closure-strip") return [];
  const { short, long } = sidesOf(piece.outline);
  const small = (text: string): Line => ({ text, height: 2.5, weight: 400 });
  // Across first where the piece lies on its long side.
  const size = box.width >= box.height ? [`${long} × ${short}`] : [`${short} ×`, `${long}`];
  const sizes = [[small(size.join(" "))], size.map(small), []];
  if (style === "size") {
    const strong: Line = { text: name, height: 2.5, weight: 700 };
    return sizes.map((lines) => [strong, ...lines]);
  }
  const heights: readonly LetterHeight[] = [7, 5, 3.5];
  return heights.flatMap((height) =>
    sizes.map((lines): readonly Line[] => [{ text: name, height, weight: 700 }, ...lines]),
  );
}

function stacked(lines: readonly Line[], x: number, top: number): readonly Mark[] {
  let y = top;
  return lines.map(({ text, height, weight }): Mark => {
    y += height;
    const mark: Mark = { kind: "text", at: [x, y], text, height, weight, ink: "ink", anchor: "middle" };
    y += LINE_GAP;
    return mark;
  });
}

/** Along the strip under which the prop stands, as a vector on paper. */
function stripWay(at: Position, { pieces }: Soffit): Point {
  const ends = pieces
    .filter(({ family }) => family === "shoring-strip")
    .map(({ outline }) => endsOf(outline))
    .find(
      ([a, b]) =>
        a !== undefined && b !== undefined && distance(a, at) + distance(at, b) < distance(a, b) + 1,
    );
  const [a, b] = [ends?.[0], ends?.[1]];
  if (a === undefined || b === undefined) return [1, 0];
  return Math.abs(b[0] - a[0]) >= Math.abs(b[1] - a[1]) ? [1, 0] : [0, -1];
}

/** Before the side where the band begins, over its middle; null where pieces or letters are in the way. */
function letterMarks(
  band: Band,
  { view, soffit }: SoffitDrawing,
  { pieces, texts }: SoffitPaper,
): readonly Mark[] | null {
  const first = band.pieces[0];
  if (first === undefined) return null;
  const way = layingWay(band.pieces);
  const edge = outerEdge(first.outline, [-way[0], -way[1]]);
  if (edge === null) return null;
  const middle = view.at([(edge[0][0] + edge[1][0]) / 2, (edge[0][1] + edge[1][1]) / 2]);
  const back: Point = [-way[0], way[1]];
  const height: LetterHeight = 7;
  const width = textWidth(band.letter, { height, weight: 700 });
  const size = { width: width + 1 + ARROW, height };
  // Past the connector, which is as deep as any of them is wide.
  const deepest = Math.max(
    0,
    ...soffit.pieces.filter((piece) => !isLaid(piece)).map(({ outline }) => sidesOf(outline).short),
  );
  for (let away = 1.2; away <= deepest / view.scale + 4; away += STEP) {
    const reach = away + (Math.abs(back[0]) * size.width + Math.abs(back[1]) * size.height) / 2;
    for (const aside of [0, 1, -1, 2, -2, 3, -3]) {
      const [x, y] = [
        middle[0] + back[0] * reach - back[1] * aside,
        middle[1] + back[1] * reach + back[0] * aside,
      ];
      const box = boxAround(x, y, size.width, size.height);
      if (!pieces.isFree(box)) continue;
      for (const grid of [pieces, texts]) grid.take(grown(box, 0.5));
      const at: Point = [box.x + width / 2, box.y + height];
      return [
        { kind: "text", at, text: band.letter, height, weight: 700, ink: "ink", anchor: "middle" },
        ...arrowMarks([box.x + width + 1 + ARROW / 2, box.y + height / 2], [way[0], -way[1]], ARROW),
      ];
    }
  }
  return null;
}

/** Length of the arrow, and the side of the square it turns in, mm of paper. */
const ARROW = 5;

function arrowMarks([x, y]: Point, [wx, wy]: Point, length: number): readonly Mark[] {
  const half = length / 2;
  const head = Math.min(2, length / 2);
  const tip: Point = [x + wx * half, y + wy * half];
  const neck: Point = [x + wx * (half - head), y + wy * (half - head)];
  const side = head / 2;
  return [
    { kind: "line", from: [x - wx * half, y - wy * half], to: neck, stroke: OUTLINE },
    {
      kind: "polygon",
      points: [tip, [neck[0] - wy * side, neck[1] + wx * side], [neck[0] + wy * side, neck[1] - wx * side]],
      fill: "ink",
    },
  ];
}

/** In the first panel of a band, beside the end of its length, the way the band is laid. */
function layingArrow({ pieces }: Band, view: PlanView, taken: Occupied): readonly Mark[] {
  const first = pieces[0];
  if (first === undefined || first.family === "closure-strip") return [];
  const [wx, wy] = layingWay(pieces);
  const box = boxRound(first.outline.map(view.at));
  const isAcross = Math.abs(wx) >= Math.abs(wy);
  const [deep, long] = isAcross ? [box.width, box.height] : [box.height, box.width];
  const length = Math.min(6, deep - 2.4);
  if (length < 2 || long < 6) return [];
  const [x, y] = isAcross
    ? [box.x + box.width / 2, box.y + box.height - 2]
    : [box.x + 2, box.y + box.height / 2];
  taken.take(boxAround(x, y, isAcross ? length : 2.4, isAcross ? 2.4 : length));
  return arrowMarks([x, y], [wx, -wy], length);
}
