// One line of a list as people look for it: the piece as it is drawn on the wall, its size, and its code.

import type { Box } from "../box.ts";
import { symbolMarks } from "../countList.ts";
import { cutToWidth, type Lettering, textWidth } from "../lettering.ts";
import type { Mark } from "../mark.ts";
import { FINE, OUTLINE, pieceMarks } from "../pieceMark.ts";
import { plainText } from "../plainText.ts";
import type { ListItem } from "./listItems.ts";
import { SMALL, SMALL_STRONG, STRONG, textLine } from "./listText.ts";
import type { ListWords } from "./listWords.ts";

/** Heights of a row; the lower ones are taken where they save a page. */
export const ROWS: readonly number[] = [5.6, 5.2, 4.8];
/** Height of a symbol and side of a box to tick. */
export const TICK = 4.2;
const SYMBOL_WIDTH = 7;
/** Where the text of a row begins, from the left edge of its column. */
const TEXT_START = 8.6;
const WORD_GAP = 1.6;

/** How a row names its piece. */
interface Naming {
  /** Paper from the left edge of the row on, mm. */
  readonly room: number;
  /** Behind the code stands the first of these for which there is paper. */
  readonly more: readonly string[];
  /** In small letters, so that the rows of a group look alike. */
  readonly isSmall?: boolean;
}

/** Symbol, size and code in a row. */
export function itemMarks(item: ListItem, box: Box, naming: Naming): readonly Mark[] {
  const middle = box.y + box.height / 2;
  const symbol = { x: box.x + 0.3, y: middle - TICK / 2, width: SYMBOL_WIDTH, height: TICK };
  return [...itemSymbol(item, symbol), ...nameMarks(item, box.x + TEXT_START, middle, naming)];
}

/** Whether the row has paper for the size in large letters. */
export function isNamedLarge(item: ListItem, naming: Naming): boolean {
  return waysToName(item, naming)[0]?.lettering === STRONG;
}

interface Name {
  readonly lettering: Lettering;
  readonly name: string;
  readonly tail: string;
}

/** The size large and the code small; where the kit gives no size, or there is no room for both, the code alone. */
function nameMarks(item: ListItem, x: number, middle: number, naming: Naming): readonly Mark[] {
  const best = waysToName(item, naming)[0];
  if (best === undefined) {
    // Whatever else is lost, the code by which the piece is marked is not.
    const shown = cutToWidth(plainText(item.code), naming.room - TEXT_START, SMALL_STRONG);
    return textLine(shown, SMALL_STRONG, { x, y: middle + 1.25 });
  }
  const { lettering, name, tail } = best;
  const behind = x + textWidth(name, lettering) + WORD_GAP;
  return [
    ...textLine(name, lettering, { x, y: middle + lettering.height / 2 }),
    ...textLine(tail, SMALL, { x: behind, y: middle + 1.6, ink: "soft" }),
  ];
}

/** Those for which there is paper, the best first. */
function waysToName(item: ListItem, { room, more, isSmall }: Naming): readonly Name[] {
  const code = plainText(item.code);
  const name = item.size === "" ? code : item.size;
  const behind = [...more.filter((text) => text !== "").map((text) => [text]), []];
  const tails = item.size === "" ? behind : behind.map((text) => [code, ...text]);
  const letterings = isSmall === true ? [SMALL_STRONG] : [STRONG, SMALL_STRONG];
  const ways = letterings.flatMap((lettering) =>
    tails.map((tail) => ({ lettering, name, tail: tail.join(", ") })),
  );
  // A code of a piece made to measure is written on no piece: rather than its size the code is left out.
  const last =
    item.kind === "made" && item.size !== "" ? [{ lettering: letterings[0]!, name, tail: "" }] : [];
  return [...ways, ...last].filter(
    ({ lettering, tail }) =>
      textWidth(name, lettering) + WORD_GAP + textWidth(tail, SMALL) <= room - TEXT_START,
  );
}

/** What the lists show of pieces that stand on no wall; everything else looks as it does on a room sheet. */
function itemSymbol(item: ListItem, box: Box): readonly Mark[] {
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  switch (item.family) {
    case "pin":
      return [
        { kind: "line", from: [x - 3, y], to: [x + 3, y], stroke: { weight: 0.7, ink: "ink" } },
        { kind: "line", from: [x - 3, y - 1.3], to: [x - 3, y + 1.3], stroke: { weight: 1, ink: "ink" } },
      ];
    case "wedge":
      return [
        {
          kind: "polygon",
          points: [
            [x - 3.2, y - 0.9],
            [x + 3.2, y - 0.3],
            [x + 3.2, y + 0.3],
            [x - 3.2, y + 0.9],
          ],
          fill: "ink",
        },
      ];
    case "tie-sleeve":
      return [
        { kind: "rect", box: { x: x - 3, y: y - 0.8, width: 6, height: 1.6 }, fill: "paper", stroke: FINE },
        { kind: "line", from: [x - 3, y], to: [x + 3, y], stroke: { weight: 0.13, ink: "ink" } },
      ];
    case "prop":
      return [
        { kind: "circle", centre: [x, y], radius: 1.9, fill: "paper", stroke: OUTLINE },
        { kind: "line", from: [x - 1.3, y - 1.3], to: [x + 1.3, y + 1.3], stroke: FINE },
        { kind: "line", from: [x - 1.3, y + 1.3], to: [x + 1.3, y - 1.3], stroke: FINE },
      ];
    case "slab-panel": {
      // Seen from below, its length across.
      const wide = Math.max(1.4, Math.min(SYMBOL_WIDTH, item.height / 171));
      const tall = Math.max(1.4, Math.min(TICK, item.width / 143));
      return pieceMarks(item.look, { x: x - wide / 2, y: y - tall / 2, width: wide, height: tall });
    }
    default:
      return symbolMarks({ ...item, isMade: item.kind === "made", isOwn: true }, box);
  }
}

/** What kind of piece it is, where that says something; the fuller answer first. */
export function kindWords({ kind }: ListItem, words: ListWords): readonly string[] {
  switch (kind) {
    case "standard":
      return [words.standard];
    case "filler":
      return [words.filler];
    case "zone":
      return [words.zone];
    case "filler-and-zone":
      return [`${words.filler}, ${words.zone}`, words.filler];
    case "made":
      return [words.made];
    case "plain":
      return [];
    default:
      return kind satisfies never;
  }
}
