// What stands in the void of an opening: its size, and the numbers of the pieces that frame it.
//
//   ┌───────────┐
//   │     8     │     Each number stands by the reveal it names. What finds no place in the void is put over the
//   │6 900×2100 7│    head of the wall, with a leader.
//   │           │
//
import type { FaceOpening } from "../fill/result.ts";
import { type Box, centreOf, freePlace, grown } from "./box.ts";
import { heightOfLabels, labelMarks, labelWidth, leaderMark } from "./label.ts";
import { textWidth } from "./lettering.ts";
import type { LetterHeight, Mark, Point } from "./mark.ts";
import { type FramePiece, frameDepth, framePieces } from "./openingFrame.ts";
import {
  boxIn,
  type NameStyle,
  type RibbonContext,
  type Stretch,
  shownName,
  styled,
  voidOf,
} from "./stretch.ts";
import type { HeadLabel, StretchLabels } from "./stretchLabels.ts";
import { WORDS } from "./words.ts";

export interface OpeningLabels {
  readonly marks: readonly Mark[];
  readonly head: readonly HeadLabel[];
}

/** Distance of baselines as a multiple of the height of the letters. */
const LINE_PITCH = 1.5;

/** Farthest a number may stand from the reveal it names, mm of paper. */
const NUMBER_REACH = 7;

/** Farthest the size may stand from where it is looked for, mm of paper. */
const SIZE_REACH = 24;

interface NumberLettering {
  readonly height: LetterHeight;
  readonly weight: 400;
}

const NUMBER: { readonly [S in NameStyle]: NumberLettering } = {
  figure: { height: 5, weight: 400 },
  whole: { height: 2.5, weight: 400 },
};

const SIZE_HEIGHTS: { readonly [S in NameStyle]: readonly (2.5 | 3.5)[] } = {
  figure: [3.5, 2.5],
  whole: [2.5],
};

/** Labels of one opening. Numbers are given only on the face from which its frame is set. */
export function openingLabels(
  opening: FaceOpening,
  labels: StretchLabels,
  stretch: Stretch,
  context: RibbonContext,
): OpeningLabels {
  const box = boxIn(stretch, context.scale, voidOf(opening));
  if (box === null) return { marks: [], head: [] };
  const depth = opening.formed === "box" ? 0 : frameDepth(opening, context);
  const area = grown(box, -(depth / context.scale + 0.5));
  const taken: Box[] = opening.formed === "box" ? labels.inside.map((label) => label.box) : [];
  const marks: Mark[] = [];
  const head: HeadLabel[] = [];
  for (const frame of framePieces(opening, box, context)) {
    const name = context.names[frame.piece.piece];
    if (name?.letters !== stretch.sheetFace.letter) continue;
    placeNumber(shownName(frame.piece.piece, context), frame, { area, taken, marks, head }, context);
  }
  const under = labels.underVoid.filter((flag) => flag.opening === opening.id);
  for (const { label } of under) placeFlag(label, { area, taken, marks, head }, context);
  const said = { ...opening, sillText: WORDS[context.info.language].sill(opening.sill) };
  const size = sizeMarks(said, { area, taken, style: context.nameStyle });
  if (size !== null) return { marks: [...marks, ...size], head };
  const part = styled({ kind: "width", text: shortSize(said), isVoid: true }, context);
  // Beside the number of the head, which stands in the middle.
  const [x, y] = [box.x + box.width / 5, area.y + 1];
  return { marks, head: [...head, { x, y, hasDot: true, parts: [part] }] };
}

interface Void {
  readonly area: Box;
  readonly taken: Box[];
  readonly marks: Mark[];
  readonly head: HeadLabel[];
}

function placeNumber(text: string, frame: FramePiece, into: Void, context: RibbonContext): void {
  const number = NUMBER[context.nameStyle];
  const width = textWidth(text, number);
  const [x, y] = centreOf(frame.box);
  const wish = {
    left: [into.area.x + width / 2 + 0.5, y],
    right: [into.area.x + into.area.width - width / 2 - 0.5, y],
    head: [x, into.area.y + number.height / 2 + 0.5],
    sill: [x, into.area.y + into.area.height - number.height / 2 - 0.5],
  }[frame.side] as [number, number];
  const place = freePlace({ width: width + 0.6, height: number.height + 0.6 }, wish, {
    area: into.area,
    taken: into.taken,
    reach: NUMBER_REACH,
    step: 1,
  });
  if (place === null) {
    into.head.push({ x, y, hasDot: true, parts: [styled({ kind: "flag", text }, context)] });
    return;
  }
  into.taken.push(place);
  const [middle, centre] = centreOf(place);
  into.marks.push({ kind: "rect", box: place, fill: "paper" });
  into.marks.push(textMark(text, [middle, centre + number.height / 2], number));
}

/** The flag of a low piece under the opening, close over it, with a leader down to it. */
function placeFlag(label: HeadLabel, into: Void, context: RibbonContext): void {
  const high = heightOfLabels(context.nameStyle === "whole");
  const size = { width: labelWidth(label.parts) + 0.8, height: high + 1.4 };
  const wish: Point = [label.x, into.area.y + into.area.height - size.height / 2];
  const place = freePlace(size, wish, { area: into.area, taken: into.taken, reach: NUMBER_REACH, step: 1 });
  if (place === null) {
    into.head.push(label);
    return;
  }
  into.taken.push(place);
  const x = place.x + place.width / 2;
  into.marks.push(
    leaderMark([label.x, label.y], place.y + place.height - 0.2, [x, place.y + 0.4 + high]),
    { kind: "circle", centre: [label.x, label.y], radius: 0.45, fill: "ink" },
    ...labelMarks(label.parts, x, place.y + 0.4),
  );
}

function textMark(
  text: string,
  at: readonly [number, number],
  lettering: { readonly height: LetterHeight; readonly weight: 400 | 600 },
): Mark {
  return { kind: "text", at, text, ...lettering, ink: "ink", anchor: "middle" };
}

/** An opening with the height of its sill in words. */
interface SaidOpening extends FaceOpening {
  readonly sillText: string;
}

/** What a label outside the void still has to say: how high it stands, or how high it is. */
function shortSize(opening: SaidOpening): string {
  const height = opening.head - opening.sill;
  if (opening.formed === "box") return `${opening.width} × ${height}, ${opening.sillText}`;
  return opening.sill === 0 ? `${opening.head}` : opening.sillText;
}

/**
 * Ways to write the size, the best first. The width of a door stands under it too, that of a window
 * is that of the panels under it; a box opening has to say all of its size.
 */
function sizeLines(opening: SaidOpening): readonly (readonly string[])[] {
  const [width, height] = [`${opening.width} ×`, `${opening.head - opening.sill}`];
  if (opening.sill === 0) return [[`${width} ${height}`], [width, height], [height]];
  const whole = [
    [`${width} ${height}`, opening.sillText],
    [width, height, opening.sillText],
  ];
  return opening.formed === "box" ? whole : [...whole, [opening.sillText], opening.sillText.split(" ")];
}

function sizeMarks(
  opening: SaidOpening,
  into: { readonly area: Box; readonly taken: readonly Box[]; readonly style: NameStyle },
): readonly Mark[] | null {
  const { area, taken, style } = into;
  // Under the numbers of a door's jambs, which stand half way up; in the middle of a window.
  const wish: Point = [area.x + area.width / 2, area.y + area.height * (opening.sill === 0 ? 0.72 : 0.5)];
  for (const height of SIZE_HEIGHTS[style]) {
    const lettering = { height, weight: 400 } as const;
    for (const lines of sizeLines(opening)) {
      const width = Math.max(...lines.map((line) => textWidth(line, lettering))) + 0.6;
      const block = height * (LINE_PITCH * (lines.length - 1) + 1.3) + 0.6;
      const reach = Math.min(SIZE_REACH, Math.ceil(Math.max(area.width, area.height)));
      const place = freePlace({ width, height: block }, wish, { area, taken, reach, step: 1 });
      if (place === null) continue;
      const x = place.x + place.width / 2;
      const texts = lines.map((line, index) =>
        textMark(line, [x, place.y + 0.3 + height * (1 + LINE_PITCH * index)], lettering),
      );
      // Joints of the panels round a box opening, and ledgers across a void, must not run through its size.
      return [{ kind: "rect", box: place, fill: "paper" }, ...texts];
    }
  }
  return null;
}
