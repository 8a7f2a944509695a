// How a formula stands on paper: signs with small letters below them, powers raised, broken at spaces where a line ends.
//
//   "N = q·A·k"   "P_max"  ▶  P with a small "max" below   "(w/w_s)^(1/0.6)"  ▶  1/0.6 raised

import { textWidth } from "../lettering.ts";
import type { Ink, Mark, TextMark } from "../mark.ts";

type Weight = 400 | 600;

/** A stretch of a formula in one weight. */
export interface Stretch {
  readonly text: string;
  readonly weight: Weight;
  /** Stands on one line. */
  readonly isWhole?: boolean;
}

const SMALL = 2.5;

/** A size of formulas: letters, how far small ones stand below and above, distance of baselines, what goes on set in by. */
interface Size {
  readonly height: 3.5 | 2.5;
  readonly below: number;
  readonly above: number;
  readonly leading: number;
  readonly indent: number;
}

const LARGE_SIZE: Size = { height: 3.5, below: 0.9, above: -1.5, leading: 5.7, indent: 5 };
const SMALL_SIZE: Size = { height: SMALL, below: 0.75, above: -1, leading: 4.2, indent: 0 };

/** Greek letters that the typeface lacks, by letters that stand for the same or are free; the last of each pair is written. */
const SIGNS: readonly (readonly [string, string])[] = [
  ["γ_F", "k_F"],
  ["γ", "w"],
  ["β", "b"],
  ["σ", "f"],
  ["Σ", "∑"],
  ["Δ", "∆"],
];

/** The text with signs that the typeface has. */
export function paperSigns(text: string): string {
  return SIGNS.reduce((shown, [sign, instead]) => shown.replaceAll(sign, instead), text);
}

interface Run {
  readonly text: string;
  readonly level: "line" | "below" | "above";
}

function runsOf(word: string): readonly Run[] {
  const parts = word.matchAll(
    /_(?:\{([^}]*)\}|([A-Za-z0-9]+))|\^\(([^)]*)\)|((?:(?!_[A-Za-z0-9{]|\^\().)+)/gu,
  );
  return [...parts].map(([, bracketed, plain, above, line]): Run => {
    const below = bracketed ?? plain;
    if (below !== undefined) return { text: below, level: "below" };
    return above === undefined ? { text: line ?? "", level: "line" } : { text: above, level: "above" };
  });
}

function lettering({ level }: Run, weight: Weight, { height }: Size) {
  return { height: level === "line" ? height : SMALL, weight } as const;
}

function wordWidth(word: Word, size: Size): number {
  return runsOf(word.text).reduce(
    (sum, run) => sum + textWidth(run.text, lettering(run, word.weight, size)),
    0,
  );
}

interface Word {
  readonly text: string;
  readonly weight: Weight;
}

/** The lines of a formula and the height they take; marks stand from the upper left corner of the first line. */
export function formulaBlock(
  stretches: readonly Stretch[],
  width: number,
  { isSmall = false, ink = "ink" }: { readonly isSmall?: boolean; readonly ink?: Ink } = {},
): { readonly marks: readonly Mark[]; readonly height: number } {
  const size = isSmall ? SMALL_SIZE : LARGE_SIZE;
  const lines = linesOf(stretches, width, size);
  const marks = lines.flatMap((line, index) =>
    lineMarks(line, [index === 0 ? 0 : size.indent, index * size.leading + size.height + 0.8], size, ink),
  );
  return { marks, height: lines.length * size.leading };
}

function linesOf(stretches: readonly Stretch[], width: number, size: Size): readonly (readonly Word[])[] {
  const words = stretches.flatMap(({ text, weight, isWhole }) =>
    (isWhole === true ? [paperSigns(text)] : wordsOf(paperSigns(text)))
      .filter((word) => word !== "")
      .map((word): Word => ({ text: word, weight })),
  );
  const lines: Word[][] = [];
  let used = 0;
  for (const word of words) {
    const own = wordWidth(word, size);
    const gap = gapOf(size);
    const last = lines[lines.length - 1];
    if (last === undefined || used + gap + own > width) {
      lines.push([word]);
      used = (last === undefined ? 0 : size.indent) + own;
    } else {
      last.push(word);
      used += gap + own;
    }
  }
  return lines;
}

// What stands in the braces below a sign is not torn from it.
function wordsOf(text: string): readonly string[] {
  return text.match(/(?:\{[^}]*\}|\S)+/gu) ?? [];
}

function gapOf({ height }: Size): number {
  return textWidth(" ", { height, weight: 400 });
}

// Runs on the line that follow each other in one weight are one text, so that a line can be read and copied.
function lineMarks(
  line: readonly Word[],
  [start, y]: readonly [number, number],
  size: Size,
  ink: Ink,
): readonly Mark[] {
  const marks: TextMark[] = [];
  let x = start;
  let open: { text: string; from: number; weight: Weight } | null = null;
  const close = () => {
    if (open !== null)
      marks.push(textAt(open.text, [open.from, y], { height: size.height, weight: open.weight }, ink));
    open = null;
  };
  line.forEach((word, index) => {
    if (index > 0) {
      const isSame = open?.weight === word.weight;
      x += isSame ? textWidth(" ", { height: size.height, weight: word.weight }) : gapOf(size);
      if (open !== null && isSame) open.text += " ";
      else close();
    }
    for (const run of runsOf(word.text)) {
      const own = lettering(run, word.weight, size);
      if (run.level === "line") {
        if (open === null) open = { text: run.text, from: x, weight: word.weight };
        else open.text += run.text;
      } else {
        close();
        const dy = run.level === "below" ? size.below : size.above;
        marks.push(textAt(run.text, [x, y + dy], own, ink));
      }
      x += textWidth(run.text, own);
    }
  });
  close();
  return marks;
}

function textAt(
  text: string,
  [x, y]: readonly [number, number],
  { height, weight }: { readonly height: 3.5 | 2.5; readonly weight: Weight },
  ink: Ink,
): TextMark {
  // A blank in front would be trimmed by the writers: it is place, not text.
  const lead = (text.length - text.trimStart().length) * textWidth(" ", { height, weight });
  return { kind: "text", at: [x + lead, y], text: text.trim(), height, weight, ink, anchor: "start" };
}
