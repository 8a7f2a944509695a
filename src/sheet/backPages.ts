// The back of a room sheet: the soffit to scale with its list, and beside it the order in which everything comes down.
//
//   ┌──────────────────────────┬───────────┐
//   │ soffit                   │ picture   │     What the front had no paper for comes first in the columns of words;
//   │                          │ 1 …       │     what the columns cannot hold goes on over further pages.
//   │ list of its pieces       │ 2 …       │
//   └──────────────────────────┴───────────┘

import type { FilledFace, Soffit } from "../fill/result.ts";
import type { RoomParts } from "../fill/roomParts.ts";
import type { Box } from "./box.ts";
import { listHeight, listMarks } from "./countList.ts";
import { type CountRow, overheadRows } from "./countRows.ts";
import type { SheetRing } from "./faceOrder.ts";
import type { Mark } from "./mark.ts";
import { bullet, heading, type NoteBlock, notesMarks } from "./notes.ts";
import { type RoomPage, roomPage } from "./page.ts";
import { plainText } from "./plainText.ts";
import { boundsOfPlan, planView } from "./planView.ts";
import { scaleText } from "./scale.ts";
import { type Band, bandNames, bandsOf } from "./soffit/bands.ts";
import { doorMarks } from "./soffit/doorMarks.ts";
import { soffitLabels, soffitPaper } from "./soffit/soffitLabels.ts";
import { type SoffitDrawing, soffitMarks } from "./soffit/soffitMarks.ts";
import { type Unplaced, unplacedText } from "./soffit/unplaced.ts";
import type { RibbonContext } from "./stretch.ts";
import { type StrikeContext, strikeBlocks } from "./strike/strikeBlocks.ts";
import { type StrikeStep, strikeSteps } from "./strike/strikeOrder.ts";
import { strikePicture } from "./strike/strikePicture.ts";
import { BACK_WORDS } from "./strike/words.ts";
import { WORDS } from "./words.ts";

export interface BackPage {
  readonly marks: readonly Mark[];
  /** As "1:50"; "" where nothing is drawn to scale. */
  readonly scale: string;
}

export interface Back {
  readonly parts: RoomParts;
  readonly rings: readonly SheetRing[];
  readonly context: RibbonContext;
  readonly faces: readonly FilledFace[];
  readonly props: { readonly [piece: string]: number };
  /** What the front had no paper for. */
  readonly rest: readonly NoteBlock[];
}

/** Scales of a soffit on a room sheet, the largest first: that of the ribbon where it can be. */
const SCALES = [50, 75, 100, 125, 150, 200, 500, 1000, 2000, 5000, 10_000] as const;

/** Paper round a soffit for the letters of its bands. */
const BORDER = 14;
const HEAD = 7;
const GAP = 5;
/** Least width of the list under a soffit. */
const LIST_WIDTH = 58;

/** The pages behind the front of one room; none for a room of which nothing stands. */
export function backPages(back: Back): readonly BackPage[] {
  const { parts, rings, context } = back;
  const page = roomPage(context.info.paper);
  const bands = bandsOf(parts.soffits, rings);
  const names = { ...context.names, ...bandNames(bands.flat()) };
  const strike: StrikeContext = { parts, info: context.info, names, props: back.props };
  const steps = strikeSteps(parts, rings, bands);
  let rows = overheadRows(parts, context.info);
  const on = { rows, page };
  const drawn = parts.soffits.map((soffit, index) => drawSoffit(soffit, bands[index]!, back, on));
  const full = page.right - page.left;
  // As wide as the notes of the front, which may go on here.
  const columnsBeside = (taken: number) => columnsOf(full - taken, page.left + taken, page.notes.width);
  const width = Math.min(
    ...[0, ...drawn.map((each) => each.width + GAP)].map((taken) => columnsBeside(taken)[0]!.width),
  );
  const aside = drawn.length === 1 ? pictureUnder(drawn[0]!, { back, rows, steps, page }) : null;
  const picture = aside === null ? strikePicture(rings, steps, context.info, width) : null;
  const pieces = parts.faces.flatMap((face) => face.pieces).length + parts.overhead.length;
  let words: readonly NoteBlock[] = [
    ...(back.rest.length > 0 ? [heading(WORDS[context.info.language].notes.cautions), ...back.rest] : []),
    ...overheadBlocks(parts.soffits, bands.flat(), back, {
      width,
      unplaced: drawn.flatMap(({ unplaced }) => unplaced),
    }),
    ...(pieces === 0 ? [] : strikeWithPicture(strikeBlocks(steps, strike, width), picture)),
  ];
  const pages: BackPage[] = [];
  for (let index = 0; index < drawn.length || words.length > 0 || rows.length > 0; index++) {
    const soffit = drawn[index];
    const marks: Mark[] = [...(soffit?.marks ?? []), ...(index === 0 ? (aside ?? []) : [])];
    const isLast = index >= drawn.length - 1;
    const top = soffit === undefined ? page.top : soffit.end;
    const list = {
      x: page.left,
      y: top + 2.2,
      width: soffit?.width ?? full / 2,
      height: page.bottom - top - 2.2,
    };
    const listed = rows.length > 0 && isLast ? listMarks(rows, list, context.info.language, 1) : null;
    if (listed !== null) {
      marks.push(...listed.marks);
      rows = listed.rest;
    }
    const taken = soffit !== undefined ? soffit.width + GAP : listed !== null ? list.width + GAP : 0;
    for (const column of columnsBeside(taken)) {
      const noted = notesMarks(words, { x: column.x, y: page.top + 1, height: page.bottom - page.top - 1 });
      marks.push(...noted.marks);
      words = noted.rest;
    }
    pages.push({ marks, scale: soffit?.scale ?? "" });
  }
  return pages;
}

/** The picture at the foot of the page under the list, where both have paper there. */
function pictureUnder(
  { width, end }: DrawnSoffit,
  made: {
    readonly back: Back;
    readonly rows: readonly CountRow[];
    readonly steps: readonly StrikeStep[];
    readonly page: RoomPage;
  },
): readonly Mark[] | null {
  const { back, rows, steps, page } = made;
  const { info } = back.context;
  const picture = strikePicture(back.rings, steps, info, width);
  const top = end + 2.2 + listHeight(rows, width) + 3;
  if (picture === null || top + HEAD + picture.height > page.bottom) return null;
  const title = heading(BACK_WORDS[info.language].strike);
  return notesMarks([title, picture], { x: page.left, y: top, height: page.bottom - top }).marks;
}

/** The picture under the heading and the permit, before the steps. */
function strikeWithPicture(blocks: readonly NoteBlock[], picture: NoteBlock | null): readonly NoteBlock[] {
  return picture === null ? blocks : [...blocks.slice(0, 2), picture, ...blocks.slice(2)];
}

function columnsOf(
  width: number,
  x: number,
  least: number,
): readonly { readonly x: number; readonly width: number }[] {
  const count = Math.max(1, Math.floor((width + GAP) / (least + GAP)));
  const each = (width - GAP * (count - 1)) / count;
  return Array.from({ length: count }, (_, index) => ({ x: x + index * (each + GAP), width: each }));
}

interface DrawnSoffit {
  readonly marks: readonly Mark[];
  readonly scale: string;
  readonly width: number;
  /** Lower edge, mm. */
  readonly end: number;
  readonly unplaced: readonly Unplaced[];
}

function drawSoffit(
  soffit: Soffit,
  bands: readonly Band[],
  back: Back,
  { rows, page }: { readonly rows: readonly CountRow[]; readonly page: RoomPage },
): DrawnSoffit {
  const { parts, rings, context } = back;
  const bounds = boundsOfPlan(soffit.outline);
  const widest = page.right - page.left - GAP - page.notes.width;
  const size = (scale: number) => ({
    width: Math.max(LIST_WIDTH, (bounds.right - bounds.left) / scale + 2 * BORDER),
    height: (bounds.high - bounds.low) / scale + 2 * BORDER,
  });
  const most = page.bottom - page.top - HEAD;
  const fits = (scale: number) => {
    const { width, height } = size(scale);
    return width <= widest && height + Math.min(most / 2, listHeight(rows, width) + 2.2) <= most;
  };
  const scale = SCALES.find(fits) ?? SCALES.at(-1)!;
  const { width, height } = size(scale);
  const area: Box = { x: page.left, y: page.top + HEAD, width: Math.min(width, widest), height };
  const view = planView(bounds, scale, area);
  const claims = new Set([
    ...parts.overhead.map(({ piece }) => piece),
    ...soffit.props.map(({ piece }) => piece),
  ]);
  const drawing: SoffitDrawing = { soffit, bands, view, info: context.info, faces: back.faces, claims };
  const paper = soffitPaper([drawing], area);
  const labels = soffitLabels(drawing, { style: "figure", props: back.props, paper });
  const word = BACK_WORDS[context.info.language].soffit;
  const title = soffit.isSlab === true ? `${word} ${plainText(soffit.room)}` : word;
  return {
    marks: [
      {
        kind: "text",
        at: [page.left, page.top + 5.6],
        text: `${title} ${scaleText(scale)}`,
        height: 3.5,
        weight: 600,
        ink: "ink",
        anchor: "start",
      },
      ...soffitMarks(drawing),
      ...doorMarks(soffit, rings, view, { taken: paper.texts, area }),
      ...labels.marks,
    ],
    scale: scaleText(scale),
    width: area.width,
    end: area.y + height,
    unplaced: labels.unplaced,
  };
}

function overheadBlocks(
  soffits: readonly Soffit[],
  bands: readonly Band[],
  { parts, context }: Back,
  { width, unplaced }: { readonly width: number; readonly unplaced: readonly Unplaced[] },
): readonly NoteBlock[] {
  if (soffits.length === 0) return [];
  const words = BACK_WORDS[context.info.language];
  const strips = parts.overhead.filter(({ family }) => family === "shoring-strip").length;
  const props = soffits.reduce((sum, soffit) => sum + soffit.props.length, 0);
  const letters = bands.map(({ letter }) => letter);
  const said = [
    parts.isOutside ? words.edge : words.ring,
    ...(strips + props > 0 ? [words.strips(strips, props)] : []),
    ...(letters.length > 0 ? [words.bands(letters.join(", ")), words.lay, words.twoLift] : []),
    words.fromAbove,
    ...(unplaced.length > 0 ? [words.noPaper(unplacedText(unplaced, context.info.language))] : []),
  ];
  return [heading(words.overhead), ...said.map((text) => bullet(text, width))];
}
