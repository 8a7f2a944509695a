// The striking order in words and names, step by step as the picture and the walls number them.
//
//    3  D7 D6 D5 D4 D3 D2 D1
//    4  A5 A4 A3 A2 A1            A step too long for its column goes on in lines of its own.

import type { RoomParts } from "../../fill/roomParts.ts";
import { textWidth, wrapped } from "../lettering.ts";
import type { Mark } from "../mark.ts";
import { bullet, heading, type NoteBlock } from "../notes.ts";
import type { PieceName } from "../pieceNames.ts";
import { rangesText } from "../ranges.ts";
import { heldEnds } from "../soffit/heldEnds.ts";
import type { RibbonContext } from "../stretch.ts";
import type { StrikeStep } from "./strikeOrder.ts";
import { BACK_WORDS } from "./words.ts";

export interface StrikeContext {
  readonly parts: RoomParts;
  readonly info: RibbonContext["info"];
  readonly names: { readonly [piece: string]: PieceName };
  readonly props: { readonly [piece: string]: number };
}

const INDENT = 7.5;
const SMALL_LINE = 3.6;
const NAME_LINE = 5.6;
const NAMES = { height: 3.5, weight: 600 } as const;
const SMALL = { height: 2.5, weight: 400 } as const;

export function strikeBlocks(
  steps: readonly StrikeStep[],
  context: StrikeContext,
  width: number,
): readonly NoteBlock[] {
  const words = BACK_WORDS[context.info.language];
  const blocks: NoteBlock[] = [heading(words.strike), bullet(words.permit, width)];
  if (context.parts.isOutside) blocks.push(bullet(words.platform, width));
  let section: StrikeStep["kind"] | null = null;
  steps.forEach((step, index) => {
    if (step.kind === "stay") {
      blocks.push(...stayBlocks(step, context, width));
      return;
    }
    const isNew = step.kind !== section;
    section = step.kind;
    if (isNew && step.kind === "face") blocks.push(saying(words.walls, width));
    if (isNew && step.kind === "band") blocks.push(saying(words.panels, width));
    blocks.push(...stepBlocks(`${index + 1}`, linesOf(step, context), width));
  });
  return blocks;
}

/** What stands in a step, top to bottom. */
interface Part {
  readonly text: string;
  readonly isNames: boolean;
}

function linesOf(step: Exclude<StrikeStep, { kind: "stay" }>, context: StrikeContext): readonly Part[] {
  const words = BACK_WORDS[context.info.language];
  const said = (text: string): Part => ({ text, isNames: false });
  const named = (pieces: readonly string[]): readonly Part[] => {
    const text = namesText(pieces, context);
    return text === "" ? [] : [{ text, isNames: true }];
  };
  switch (step.kind) {
    case "fittings":
      return [said(words.fittings)];
    case "frames":
      return [
        ...(step.pieces.length > 0 ? [said(words.frames), ...named(step.pieces)] : []),
        ...(step.edges.length > 0 ? [said(words.edges(step.edges.length))] : []),
      ];
    case "face":
      return [...(step.start === "forced" ? [said(words.forced)] : []), ...named(step.pieces)];
    case "corners":
      return [said(words.corners), ...named(step.pieces)];
    case "band": {
      const after = namesText(step.connectors, context);
      return [...named(step.pieces), ...(after === "" ? [] : [said(`${words.afterwards} ${after}`)])];
    }
    case "connectors":
      return [said(words.connectors), ...named(step.pieces)];
    default:
      return step satisfies never;
  }
}

/** Names in their order, each once: a corner is one piece, whatever it is made of. */
function namesText(pieces: readonly string[], { names }: StrikeContext): string {
  const texts = pieces.flatMap((piece) => {
    const name = names[piece];
    return name === undefined ? [] : [`${name.letters}${name.number ?? ""}`];
  });
  return [...new Set(texts)].join(" ");
}

function stepBlocks(number: string, parts: readonly Part[], width: number): readonly NoteBlock[] {
  const lines = parts.flatMap(({ text, isNames }) =>
    wrapped(text, width - INDENT, isNames ? NAMES : SMALL).map((line) => ({ line, isNames })),
  );
  // What is said stays with the first names under it; a long row of names may be broken.
  const first = lines.findIndex(({ isNames }) => isNames);
  const kept = first < 0 ? lines.length : first + 1;
  const groups = [lines.slice(0, kept), ...lines.slice(kept).map((line) => [line])];
  return groups.map((group, index) =>
    lineBlock(group, index === 0 ? number : null, index === groups.length - 1),
  );
}

interface StepLine {
  readonly line: string;
  readonly isNames: boolean;
}

function lineBlock(lines: readonly StepLine[], number: string | null, isLast: boolean): NoteBlock {
  const marks: Mark[] = [];
  let y = 0;
  lines.forEach(({ line, isNames }, index) => {
    const lettering = isNames ? NAMES : SMALL;
    // A number is taller than small letters: the line it stands on gives it paper.
    if (index === 0 && number !== null && !isNames) y += 0.7;
    const baseline = y + (isNames ? 4.7 : 3.4);
    if (index === 0 && number !== null) marks.push(...numberMarks(number, baseline - lettering.height / 2));
    marks.push({
      kind: "text",
      at: [INDENT, baseline],
      text: line,
      ...lettering,
      ink: "ink",
      anchor: "start",
    });
    y += isNames ? NAME_LINE : SMALL_LINE;
  });
  return { marks, height: y + (isLast ? 1 : 0) };
}

const RADIUS = 2.3;

/** The number of a step in its circle, as the picture has it; `y` is its middle. */
export function numberMarks(text: string, y: number, x = RADIUS + 0.2): readonly Mark[] {
  const height = textWidth(text, { height: 3.5, weight: 700 }) > 2 * RADIUS - 1 ? 2.5 : 3.5;
  return [
    { kind: "circle", centre: [x, y], radius: RADIUS, fill: "ink" },
    { kind: "text", at: [x, y + height / 2], text, height, weight: 700, ink: "paper", anchor: "middle" },
  ];
}

function saying(text: string, width: number): NoteBlock {
  const lines = wrapped(text, width, { height: 2.5, weight: 600 });
  return {
    marks: lines.map((line, index): Mark => {
      const at = [0, 4.4 + index * SMALL_LINE] as const;
      return { kind: "text", at, text: line, height: 2.5, weight: 600, ink: "ink", anchor: "start" };
    }),
    height: lines.length * SMALL_LINE + 2.2,
  };
}

function stayBlocks(
  { caps, strips, props }: Extract<StrikeStep, { kind: "stay" }>,
  { parts, info, props: numbers }: StrikeContext,
  width: number,
): readonly NoteBlock[] {
  const words = BACK_WORDS[info.language];
  const numbered = (pieces: readonly string[]) => rangesText(pieces.flatMap((piece) => numbers[piece] ?? []));
  const holders = parts.soffits.flatMap((soffit) => heldEnds(soffit).map(({ prop }) => prop.piece));
  return [
    heading(words.stays),
    ...(strips.length > 0 ? [bullet(words.staysStrips(strips.length, numbered(props)), width)] : []),
    ...(strips.length === 0 && props.length > 0 ? [bullet(words.staysProps(numbered(props)), width)] : []),
    ...(holders.length > 0 ? [bullet(words.staysEnds(numbered(holders)), width)] : []),
    ...(caps.length > 0 ? [bullet(words.staysCaps, width)] : []),
  ];
}
