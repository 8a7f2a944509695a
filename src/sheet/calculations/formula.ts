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
}

const HEIGHT = 3.5;
const SMALL = 2.5;
const BELOW = 0.9;
const ABOVE = -1.5;
/** Distance of baselines, and what a line that goes on is set in by, mm. */
const LEADING = 5.7;
const INDENT = 5;

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
  const parts = word.matchAll(/_([A-Za-z0-9]+)|\^\(([^)]*)\)|((?:(?!_[A-Za-z0-9]|\^\().)+)/gu);
  return [...parts].map(([, below, above, line]): Run => {
    if (below !== undefined) return { text: below, level: "below" };
    return above === undefined ? { text: line ?? "", level: "line" } : { text: above, level: "above" };
  });
}

function lettering({ level }: Run, weight: Weight) {
  return { height: level === "line" ? HEIGHT : SMALL, weight } as const;
}

function wordWidth(word: string, weight: Weight): number {
  return runsOf(word).reduce((sum, run) => sum + textWidth(run.text, lettering(run, weight)), 0);
}

interface Word {
  readonly text: string;
  readonly weight: Weight;
}

/** The lines of a formula and the height they take; each mark stands from the upper left corner of the first line. */
export function formulaBlock(
  stretches: readonly Stretch[],
  width: number,
  ink: Ink = "ink",
): { readonly marks: readonly Mark[]; readonly height: number } {
  const lines = linesOf(stretches, width);
  const marks = lines.flatMap((line, index) =>
    lineMarks(line, index === 0 ? 0 : INDENT, index * LEADING + 4.3, ink),
  );
  return { marks, height: lines.length * LEADING };
}

function linesOf(stretches: readonly Stretch[], width: number): readonly (readonly Word[])[] {
  const words = stretches.flatMap(({ text, weight }) =>
    paperSigns(text)
      .split(" ")
      .filter((word) => word !== "")
      .map((word): Word => ({ text: word, weight })),
  );
  const lines: Word[][] = [];
  let used = 0;
  for (const word of words) {
    const own = wordWidth(word.text, word.weight);
    const gap = textWidth(" ", { height: HEIGHT, weight: 400 });
    const last = lines[lines.length - 1];
    if (last === undefined || used + gap + own > width) {
      lines.push([word]);
      used = (last === undefined ? 0 : INDENT) + own;
    } else {
      last.push(word);
      used += gap + own;
    }
  }
  return lines;
}

// Words of one weight and level that follow each other are one text, so that a line can be read and copied.
function lineMarks(line: readonly Word[], start: number, y: number, ink: Ink): readonly Mark[] {
  const marks: TextMark[] = [];
  let x = start;
  let open: { text: string; from: number; weight: Weight } | null = null;
  const close = () => {
    if (open === null) return;
    marks.push(textAt(open.text, [open.from, y], { height: HEIGHT, weight: open.weight }, ink));
    open = null;
  };
  const gap = textWidth(" ", { height: HEIGHT, weight: 400 });
  line.forEach((word, index) => {
    if (index > 0) {
      x += gap;
      if (open !== null && open.weight === word.weight && word.weight === 400) open.text += " ";
      else close();
    }
    for (const run of runsOf(word.text)) {
      const own = lettering(run, word.weight);
      if (run.level === "line") {
        if (open === null) open = { text: run.text, from: x, weight: word.weight };
        else open.text += run.text;
      } else {
        close();
        const dy = run.level === "below" ? BELOW : ABOVE;
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
  at: readonly [number, number],
  { height, weight }: { readonly height: 3.5 | 2.5; readonly weight: Weight },
  ink: Ink,
): TextMark {
  // Blanks at the ends would be trimmed by the writers: they are place, not text.
  const lead = text.length - text.trimStart().length;
  const x = at[0] + lead * textWidth(" ", { height, weight });
  return { kind: "text", at: [x, at[1]], text: text.trim(), height, weight, ink, anchor: "start" };
}
