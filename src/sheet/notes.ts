// The notes of a room sheet: its problems in sentences, then what to mind at work.

import { distance } from "../geom/point.ts";
import type { Language } from "../plan/project.ts";
import type { SheetRing } from "./faceOrder.ts";
import { ringMarks } from "./label.ts";
import { textWidth, wrapped } from "./lettering.ts";
import type { Mark } from "./mark.ts";
import { isWithinPersonLimit } from "./pieceKind.ts";
import { placedMark } from "./placeMark.ts";
import { plainText } from "./plainText.ts";
import { problemText } from "./problemText.ts";
import type { NumberedProblem } from "./roomProblems.ts";
import type { RibbonContext } from "./stretch.ts";
import { WORDS } from "./words.ts";
import { pinNotes, tieNotes } from "./workNotes.ts";

/** What is kept together on one page: marks from its own upper left corner, and how much of the page it takes. */
export interface NoteBlock {
  readonly marks: readonly Mark[];
  readonly height: number;
}

const LINE = 3.6;
const SMALL = { height: 2.5, weight: 400 } as const;
const STRONG = { height: 2.5, weight: 600 } as const;

/** The notes in their order of weight, wrapped to the width. */
export function noteBlocks(
  rings: readonly SheetRing[],
  problems: readonly NumberedProblem[],
  context: RibbonContext,
  width: number,
): readonly NoteBlock[] {
  const words = WORDS[context.info.language].notes;
  const errors = problems.filter(({ problem }) => problem.severity === "error");
  const warnings = problems.filter(({ problem }) => problem.severity === "warning");
  return [
    ...(errors.length > 0 ? [heading(words.errors)] : []),
    ...errors.map((problem) => problemBlock(problem, context.info.language, width)),
    ...(warnings.length > 0 ? [heading(words.warnings)] : []),
    ...warnings.map((problem) => problemBlock(problem, context.info.language, width)),
    heading(words.cautions),
    ...cautions(rings, context).map((text) => bullet(text, width)),
  ];
}

/** Puts the blocks under each other as long as they fit; `rest` goes to another page. */
export function notesMarks(
  blocks: readonly NoteBlock[],
  area: { readonly x: number; readonly y: number; readonly height: number },
): { readonly marks: readonly Mark[]; readonly rest: readonly NoteBlock[] } {
  const marks: Mark[] = [];
  let y = area.y;
  let count = 0;
  for (const block of blocks) {
    if (y + block.height > area.y + area.height) break;
    marks.push(...block.marks.map((mark) => placedMark(mark, area.x, y)));
    y += block.height;
    count++;
  }
  return { marks, rest: blocks.slice(count) };
}

function line(text: string, x: number, y: number, weight: 400 | 600): Mark {
  return { kind: "text", at: [x, y], text, height: 2.5, weight, ink: "ink", anchor: "start" };
}

export function heading(text: string): NoteBlock {
  const mark: Mark = {
    kind: "text",
    at: [0, 4.6],
    text,
    height: 3.5,
    weight: 600,
    ink: "ink",
    anchor: "start",
  };
  return { marks: [mark], height: 6.2 };
}

/** The sentence of a problem beside its ring. */
export function problemBlock(
  { number, problem }: NumberedProblem,
  language: Language,
  width: number,
): NoteBlock {
  const text = `${number}`;
  const radius = Math.max(2.4, textWidth(text, STRONG) / 2 + 0.9);
  const weight = problem.severity === "error" ? 600 : 400;
  const indent = 2 * radius + 2;
  const lines = wrapped(
    plainText(problemText(problem.message, language)),
    width - indent,
    weight === 600 ? STRONG : SMALL,
  );
  const height = Math.max(lines.length * LINE, 5) + 1;
  return {
    marks: [
      ...ringMarks(radius + 0.4, 3, radius),
      {
        kind: "text",
        at: [radius + 0.4, 4.25],
        text,
        height: 2.5,
        weight: 600,
        ink: "ink",
        anchor: "middle",
      },
      ...lines.map((part, index) => line(part, indent, 4.25 + index * LINE, weight)),
    ],
    height,
  };
}

export function bullet(text: string, width: number): NoteBlock {
  const lines = wrapped(text, width - 3.4, SMALL);
  return {
    marks: [
      { kind: "rect", box: { x: 0, y: 1.35, width: 1.5, height: 1.5 }, fill: "ink" },
      ...lines.map((part, index) => line(part, 3.4, 3.25 + index * LINE, 400)),
    ],
    height: lines.length * LINE + 0.5,
  };
}

function cautions(rings: readonly SheetRing[], context: RibbonContext): readonly string[] {
  const { info, parts } = context;
  const words = WORDS[info.language].notes;
  const pieces = parts.faces.flatMap((face) => face.pieces);
  const isHeavy = pieces.some((piece) => isWithinPersonLimit(piece.code, info) === false);
  const diagonal = rings[0] === undefined || parts.isOutside ? null : equalDiagonals(rings[0]);
  const signs = [
    ...(pieces.some((piece) => piece.firstOut === true) ? [words.firstOut] : []),
    ...(pieces.some((piece) => piece.zone === true) ? [words.zone] : []),
  ];
  return [
    ...(diagonal === null ? [] : [words.diagonals(diagonal)]),
    words.order,
    ...tieNotes(parts, info.language),
    words.hold,
    ...(info.personLimit === null ? [words.noLimit] : isHeavy ? [words.twoLift(info.personLimit)] : []),
    ...(signs.length > 0 ? [signs.join(" ")] : []),
    ...pinNotes(rings, context),
    words.edges,
    words.strike,
  ];
}

/** The diagonal of a room of four faces whose two diagonals are equal, whole mm; null for any other room. */
function equalDiagonals(ring: SheetRing): number | null {
  if (!ring.isClosed || ring.faces.length !== 4) return null;
  const [a, b, c, d] = ring.faces.map(({ face }) => face.from);
  const [first, second] = [Math.round(distance(a!, c!)), Math.round(distance(b!, d!))];
  return first === second ? first : null;
}
