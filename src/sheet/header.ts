// The header: the room in large letters, the unit and its pours, and the one sentence to remember.
//
//   Kitchen   Unit A, Level 1 west       Start ■AB  turn right B C  turn left A D  close □CD
//             65 pieces, 11.52 m²

import type { SheetCorner, SheetRing } from "./faceOrder.ts";
import { FRAME_WORDS } from "./frameWords.ts";
import { isAllMirrored, type SheetInfo } from "./info.ts";
import { cutToWidth, textWidth, wholeNames } from "./lettering.ts";
import type { LetterHeight, Mark } from "./mark.ts";
import { type RoomPage, roomPage } from "./page.ts";
import { OUTLINE } from "./pieceMark.ts";
import { plainText } from "./plainText.ts";
import { pourNames } from "./pourNames.ts";
import { type HeaderWords, WORDS } from "./words.ts";

export interface HeaderEntries {
  readonly name: string;
  readonly isOutside: boolean;
  /** m², 0 = not given. */
  readonly area: number;
  readonly pieces: number;
  readonly page: number;
  readonly pages: number;
  /** The ring of the room; undefined where it has no faces. */
  readonly ring: SheetRing | undefined;
}

const GAP = 8;
/** Widest the name may be, so that unit and sentence keep their place, mm. */
const NAME_WIDTH = 92;

export function headerMarks(info: SheetInfo, entries: HeaderEntries): readonly Mark[] {
  const page = roomPage(info.paper);
  const { marks: name, end } = nameMarks(entries.name, page);
  const sentence = sentenceMarks(entries, WORDS[info.language].header, page);
  const place = { x: end + GAP, baseline: page.header.baseline, room: sentence.start - GAP - (end + GAP) };
  return [...name, ...unitMarks(info, entries, place), ...sentence.marks, rule(page)];
}

function rule({ left, right, header }: RoomPage): Mark {
  return { kind: "line", from: [left, header.rule], to: [right, header.rule], stroke: OUTLINE };
}

function nameMarks(
  name: string,
  { left, header }: RoomPage,
): { readonly marks: readonly Mark[]; readonly end: number } {
  const sizes: readonly LetterHeight[] = [10, 7, 5];
  const text = plainText(name);
  const fits = (height: LetterHeight) => textWidth(text, { height, weight: 700 }) <= NAME_WIDTH;
  const height = sizes.find(fits) ?? 5;
  const shown = cutToWidth(text, NAME_WIDTH, { height, weight: 700 });
  const mark: Mark = {
    kind: "text",
    at: [left, header.baseline],
    text: shown,
    height,
    weight: 700,
    ink: "ink",
    anchor: "start",
  };
  return { marks: shown === "" ? [] : [mark], end: left + textWidth(shown, mark) };
}

/** Two lines: where this is poured; how much of it there is. */
function unitMarks(
  info: SheetInfo,
  entries: HeaderEntries,
  { x, baseline, room }: { readonly x: number; readonly baseline: number; readonly room: number },
): readonly Mark[] {
  const isMirrored = isAllMirrored(info);
  const words = WORDS[info.language].header;
  // On the line of the counts, which is never cut: whoever takes this sheet must see which hand it is.
  const counts = [
    ...(isMirrored ? [words.mirrored] : []),
    words.pieces(entries.pieces),
    ...(entries.area > 0 ? [words.area(entries.area)] : []),
    ...(entries.pages > 1 ? [words.continued(entries.page, entries.pages)] : []),
  ];
  return [placeLine(info, room), counts.join(", ")].flatMap((line, index): readonly Mark[] => {
    const lettering = textWidth(line, LARGE) <= room ? LARGE : SMALL;
    const text = cutToWidth(line, room, lettering);
    const at = [x, baseline - 5.8 * (1 - index)] as const;
    return text === "" ? [] : [{ kind: "text", at, text, ...lettering, ink: "ink", anchor: "start" }];
  });
}

const LARGE = { height: 3.5, weight: 400 } as const;
const SMALL = { height: 2.5, weight: 400 } as const;

/** The unit and its pours; where not all have paper, how many they are and the first of them. */
function placeLine(info: SheetInfo, room: number): string {
  const unit = WORDS[info.language].header.unit(plainText(info.unitName));
  const names = pourNames(info);
  const whole = [unit, ...names].join(", ");
  if (names.length < 2 || textWidth(whole, SMALL) <= room) return whole;
  const counted = `${unit}, ${FRAME_WORDS[info.language].countedPours(names.length)}`;
  const some = wholeNames(names, room - textWidth(`${counted}: `, SMALL), SMALL);
  return some === "" ? counted : `${counted}: ${some}`;
}

type Word = { readonly text: string; readonly form: "plain" | "strong" | "solid" | "open" };

/** Ends at the right edge; the names of the two corners in the boxes they have on the ribbon. */
function sentenceMarks(entries: HeaderEntries, said: HeaderWords, { right, header }: RoomPage) {
  const words = sentence(entries, said);
  const marks: Mark[] = [];
  let x = right - words.reduce((sum, word) => sum + wordWidth(word), 0) - 2.4 * Math.max(0, words.length - 1);
  const start = words.length === 0 ? right : x;
  for (const word of words) {
    marks.push(...wordMarks(word, x, header.baseline));
    x += wordWidth(word) + 2.4;
  }
  return { marks, start };
}

function sentence({ ring, isOutside }: HeaderEntries, said: HeaderWords): readonly Word[] {
  const corners = ring?.corners.flatMap((corner) => corner ?? []) ?? [];
  const start = corners.find(({ role }) => role === "start");
  const close = corners.find(({ role }) => role === "close");
  if (ring === undefined || start === undefined || close === undefined) return [];
  const letters = (direction: "right" | "left") =>
    [...ring.faces]
      .filter((face) => face.direction === direction)
      .sort((a, b) => a.rank - b.rank)
      .map(({ letter }) => letter);
  return [
    { text: said.start, form: "plain" },
    cornerWord(start),
    { text: isOutside ? said.outsideRight : said.right, form: "plain" },
    { text: listed(letters("right")), form: "strong" },
    { text: isOutside ? said.outsideLeft : said.left, form: "plain" },
    { text: listed(letters("left")), form: "strong" },
    { text: said.close, form: "plain" },
    cornerWord(close),
  ];
}

/** All letters as long as they are few, else the first and the last. */
function listed(letters: readonly string[]): string {
  return letters.length <= 4 ? letters.join(" ") : `${letters[0]}…${letters.at(-1)}`;
}

function cornerWord(corner: SheetCorner): Word {
  return { text: corner.name, form: corner.turn === "inside" ? "solid" : "open" };
}

function letteringOf(word: Word) {
  return word.form === "plain"
    ? ({ height: 3.5, weight: 400 } as const)
    : ({ height: 5, weight: 700 } as const);
}

function wordWidth(word: Word): number {
  const isBoxed = word.form === "solid" || word.form === "open";
  return textWidth(word.text, letteringOf(word)) + (isBoxed ? 2 : 0);
}

function wordMarks(word: Word, x: number, baseline: number): readonly Mark[] {
  const width = wordWidth(word);
  const isBoxed = word.form === "solid" || word.form === "open";
  const box = { x, y: baseline - 6, width, height: 7 };
  return [
    ...(isBoxed
      ? [{ kind: "rect", box, fill: word.form === "solid" ? "ink" : "paper", stroke: OUTLINE } satisfies Mark]
      : []),
    {
      kind: "text",
      at: [x + width / 2, baseline],
      text: word.text,
      ...letteringOf(word),
      ink: word.form === "solid" ? "paper" : "ink",
      anchor: "middle",
    },
  ];
}
