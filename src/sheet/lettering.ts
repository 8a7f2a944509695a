// How wide a text is on paper, and how a text is made to fit.
//
// Heights are those of a capital letter, as in ISO 3098; the type size follows from them. Kerning is off on the
// sheets, so that a width is the sum of the advances.

import type { Box } from "./box.ts";
import { CAPITAL_HEIGHT, CHARACTERS_BY_WIDTH, type FontWeight } from "./fontWidths.ts";
import type { LetterHeight, TextMark } from "./mark.ts";

/** Part of a letter's height that the tails of g, p and the comma hang below the baseline, and accents stand above it. */
const TAIL = 0.3;

/** Advance taken for a character that the table lacks: any face that steps in for it is narrower than its size. */
const UNKNOWN_ADVANCE = 1000;

const ADVANCES: { readonly [W in FontWeight]: ReadonlyMap<string, number> } = {
  400: advancesOf(400),
  600: advancesOf(600),
  700: advancesOf(700),
};

function advancesOf(weight: FontWeight): ReadonlyMap<string, number> {
  const advances = new Map<string, number>();
  for (const [width, characters] of CHARACTERS_BY_WIDTH[weight]) {
    for (const character of characters) advances.set(character, width);
  }
  return advances;
}

export interface Lettering {
  readonly height: LetterHeight;
  readonly weight: FontWeight;
}

/** Type size in mm of paper for capitals of the given height. */
export function typeSize(height: LetterHeight): number {
  return (height * 1000) / CAPITAL_HEIGHT;
}

/** Advance of one character in thousandths of the type size. */
export function advanceOf(character: string, weight: FontWeight): number {
  return ADVANCES[weight].get(character) ?? UNKNOWN_ADVANCE;
}

/** Width of a text on paper, mm. */
export function textWidth(text: string, lettering: Lettering): number {
  let sum = 0;
  for (const character of text) sum += advanceOf(character, lettering.weight);
  return (sum * typeSize(lettering.height)) / 1000;
}

/** The paper a text covers, from the top of its capitals to the foot of its tails. */
export function textBox(mark: TextMark): Box {
  const width = textWidth(mark.text, mark);
  const back = mark.anchor === "start" ? 0 : mark.anchor === "middle" ? width / 2 : width;
  const hasTail = /[^\p{Lu}\p{N} ×·.↑→↓←–-]/u.test(mark.text);
  const height = mark.height * (hasTail ? 1 + TAIL : 1);
  const [x, y] = mark.at;
  return mark.isUpright === true
    ? { x: x - mark.height, y: y + back - width, width: height, height: width }
    : { x: x - back, y: y - mark.height, width, height };
}

/** The text, or as much of its beginning as fits with an ellipsis behind it; empty if not even that fits. */
export function cutToWidth(text: string, width: number, lettering: Lettering): string {
  if (textWidth(text, lettering) <= width) return text;
  const characters = [...text];
  while (characters.length > 0) {
    characters.pop();
    const shorter = `${characters.join("").trimEnd()}…`;
    if (textWidth(shorter, lettering) <= width) return characters.length === 0 ? "" : shorter;
  }
  return "";
}

/** As many of the names as fit whole, with an ellipsis for the others; empty if not even the first fits. */
export function wholeNames(names: readonly string[], width: number, lettering: Lettering): string {
  for (let count = names.length; count > 0; count--) {
    const text = names.slice(0, count).join(", ") + (count < names.length ? " …" : "");
    if (textWidth(text, lettering) <= width) return text;
  }
  return "";
}

/** Breaks a text at its spaces into lines no wider than `width`; a word that is wider alone is broken too. */
export function wrapped(text: string, width: number, lettering: Lettering): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ").flatMap((long) => brokenWord(long, width, lettering))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && textWidth(longer, lettering) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === "" ? lines : [...lines, line];
}

function brokenWord(word: string, width: number, lettering: Lettering): readonly string[] {
  if (textWidth(word, lettering) <= width) return [word];
  const parts: string[] = [];
  let part = "";
  for (const character of word) {
    if (part !== "" && textWidth(part + character, lettering) > width) {
      parts.push(part);
      part = "";
    }
    part += character;
  }
  return [...parts, part];
}
