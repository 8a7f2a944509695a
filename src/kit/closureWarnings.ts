// Can the closure strips of a kit make up what its panels leave, and can they be built?
//
//   grid 50:   |   600   |   600   |  450  | 7 |      residue 7: panels of 600 600 400 and a strip of 57

import { quoted } from "../json/issue.ts";
import { type ClosureRange, closureRanges } from "./closures.ts";
import { commonDivisor } from "./divisor.ts";
import { type Kit, piecesOf } from "./kit.ts";
import { listed } from "./wording.ts";

/** A narrower strip cannot be cut to hold, a wider one needs a backing of its own: common practice, no source. */
const CLOSURE_LEAST = 10;
const CLOSURE_GREATEST = 59;

/** Residues of the grid of panel widths that no closure makes up, in one sentence. */
export function closureGaps(kit: Kit): readonly string[] {
  const panels = piecesOf(kit, "wall-panel");
  if (panels.length === 0) return ["The kit has no wall panel, so no face can be filled."];
  const grid = panels.map((panel) => panel.width).reduce(commonDivisor);
  const ranges = closureRanges(kit);
  const open = residuesLeft(grid, ranges);
  if (open.length === 0) return [];
  const runs = asRanges(open);
  const all = `The panel widths are multiples of ${grid} mm`;
  if (ranges.length === 0) {
    return [`${all} and the kit has no closure strip: no length off this grid can be filled.`];
  }
  const have = ranges.map(({ least, greatest }) => `${least} to ${greatest} mm`).join(" and ");
  const least = ranges[0]?.least ?? CLOSURE_LEAST;
  return [
    `${all}; closures of ${have} leave ${open.length} of its ${grid - 1} residues open (${runs}). ` +
      `Closures of ${least} to ${least + grid - 1} mm would make up every one.`,
  ];
}

function residuesLeft(grid: number, ranges: readonly ClosureRange[]): readonly number[] {
  const isClosed = new Array<boolean>(grid).fill(false);
  for (const { least, greatest } of ranges) {
    for (let width = least; width <= Math.min(greatest, least + grid - 1); width++)
      isClosed[width % grid] = true;
  }
  return [...isClosed.keys()].filter((residue) => residue > 0 && !isClosed[residue]);
}

function asRanges(numbers: readonly number[]): string {
  const starts = numbers.filter((each, i) => i === 0 || each !== numbers[i - 1]! + 1);
  const ends = numbers.filter((each, i) => i === numbers.length - 1 || each !== numbers[i + 1]! - 1);
  return listed(starts.map((start, i) => (start === ends[i] ? `${start}` : `${start} to ${ends[i]}`)));
}

/** Closure strips too narrow to hold or too wide to go without a backing, a sentence for each sort. */
export function closureWidths(kit: Kit): readonly string[] {
  const strips = piecesOf(kit, "closure-strip");
  const narrow = strips.filter((strip) => strip.least < CLOSURE_LEAST);
  const wide = strips.filter((strip) => strip.greatest > CLOSURE_GREATEST);
  const sentences: string[] = [];
  if (narrow.length > 0) {
    const ends = listed(narrow.map(({ code, least }) => `${quoted(code)} down to ${least} mm`));
    sentences.push(`Closures narrower than ${CLOSURE_LEAST} mm cannot be cut to hold: ${ends}.`);
  }
  if (wide.length > 0) {
    const ends = listed(wide.map(({ code, greatest }) => `${quoted(code)} up to ${greatest} mm`));
    sentences.push(`Closures wider than ${CLOSURE_GREATEST} mm need a backing of their own: ${ends}.`);
  }
  return sentences;
}
