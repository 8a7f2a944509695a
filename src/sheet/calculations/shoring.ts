// The sections on shoring through the storeys: the step at which most is carried as a picture with the steps before it,
// the checks, and every step as a table in slabs' own weights.
//
//   ▬▬▬ 0     slab 3, and what it carries itself
//   │││ 1     the shores under it, and what comes down through them

import type { ShoringRow } from "../../assess/checkDocument.ts";
import { checkText } from "../checkWords/checkText.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { SMALL, SMALL_STRONG, textLine } from "../lists/listText.ts";
import type { Mark } from "../mark.ts";
import { type Calculation, ofKind } from "./calculation.ts";
import { worked } from "./figures.ts";
import {
  fixedStrip,
  gapStrip,
  headStrip,
  ROW,
  rowStrip,
  section,
  type TableColumn,
  wordsStrip,
} from "./strips.ts";
import { NOTHING_SAID, writtenStrips } from "./written.ts";

const STEP_WIDTH = 26.5;
const STOREY = 7.2;
/** Levels of a step in the picture, from the newest down, and steps in it. */
const LEVELS = 6;
const STEPS = 10;

export function shoringSections(calculation: Calculation): readonly Section[] {
  const { document, words, continued, width, entry } = calculation;
  const checks = [...ofKind(calculation, "shoring-slab"), ...ofKind(calculation, "shoring-prop")];
  if (entry.loads.shoring === null || checks.length === 0) return [];
  const peak = peakIndex(document.shoring);
  const shown = document.shoring.slice(Math.max(0, peak + 1 - STEPS), peak + 1);
  const perRow = Math.max(1, Math.floor(width / STEP_WIDTH));
  const lines = Array.from({ length: Math.ceil(shown.length / perRow) }, (_, k) =>
    shown.slice(k * perRow, (k + 1) * perRow),
  );
  const picture = lines.map((steps) => stepsStrip(steps, calculation));
  return [
    section(words.shoring, [wordsStrip(words.shoringPicture, width), ...picture], { continued }),
    ...checks.map((check) =>
      section(words.kindOf(check.kind), [gapStrip(0.5), ...writtenStrips(check, NOTHING_SAID, calculation)], {
        continued,
      }),
    ),
  ];
}

function peakIndex(rows: readonly ShoringRow[]): number {
  let [peak, at] = [0, 0];
  rows.forEach(({ slabs }, index) => {
    const most = Math.max(0, ...slabs);
    if (most > peak + 1e-12) [peak, at] = [most, index];
  });
  return at;
}

function stepsStrip(steps: readonly ShoringRow[], calculation: Calculation): Strip {
  const levels = Math.min(LEVELS, Math.max(...steps.map(({ slabs }) => slabs.length)));
  const height = levels * STOREY + 8;
  const marks = steps.flatMap((step, index) => stepMarks(step, index * STEP_WIDTH, levels, calculation));
  return fixedStrip(marks, height);
}

/** The newest slabs of a step, the newest on top; what each carries right of it. */
function stepMarks(
  { step, slabs, shores }: ShoringRow,
  x: number,
  levels: number,
  { language }: Calculation,
): readonly Mark[] {
  const most = Math.max(...slabs);
  const lowest = Math.max(0, slabs.length - levels);
  const floor = 5 + levels * STOREY;
  const marks: Mark[] = [
    ...textLine(checkText(step, language), SMALL_STRONG, { x, y: 3.6, room: STEP_WIDTH - 1 }),
  ];
  for (let k = lowest; k < slabs.length; k++) {
    const top = floor - (k - lowest + 1) * STOREY;
    const [slab, shore] = [slabs[k]!, shores[k]!];
    const isMost = slab > 1 && slab >= most - 1e-12;
    marks.push(
      {
        kind: "rect",
        box: { x: x + 4, y: top, width: 10, height: 1.6 },
        fill: isMost ? "ink" : "tone2",
        stroke: { weight: 0.18, ink: "ink" },
      },
      ...textLine(`${k + 1}`, SMALL, { x: x + 2.8, y: top + 2, anchor: "end", ink: "soft" }),
      ...textLine(worked(slab, language), isMost ? SMALL_STRONG : SMALL, { x: x + 15, y: top + 2 }),
    );
    if (shore <= 1e-12) continue;
    for (const dx of [5.5, 9, 12.5])
      marks.push({
        kind: "line",
        from: [x + dx, top + 1.6],
        to: [x + dx, top + STOREY],
        stroke: { weight: 0.35, ink: "ink" },
      });
    marks.push(...textLine(worked(shore, language), SMALL, { x: x + 15, y: top + 5.4, ink: "soft" }));
  }
  return [
    ...marks,
    {
      kind: "line",
      from: [x + 3, floor],
      to: [x + 15, floor],
      stroke: { weight: lowest === 0 ? 0.7 : 0.13, ink: "ink" },
    },
  ];
}

/** Every step: what each slab carries and what the shores under it carry. Levels that carry just themselves are left out. */
export function shoringTable(calculation: Calculation, width: number): readonly Section[] {
  const { document, words, language, continued, entry } = calculation;
  if (entry.loads.shoring === null || document.shoring.length === 0) return [];
  if (ofKind(calculation, "shoring-slab").length === 0) return [];
  const { shores, reshores } = entry.loads.shoring;
  const levels = shores + reshores + 2;
  const each = Math.min(34, (width - 30) / levels);
  const columns: readonly TableColumn[] = [
    { x: 0, anchor: "start", room: 28 },
    ...Array.from(
      { length: levels },
      (_, k): TableColumn => ({ x: 30 + (k + 1) * each, anchor: "end", room: each }),
    ),
  ];
  const rows = document.shoring.map(({ step, slabs, shores: under }) => {
    const lowest = Math.max(0, slabs.length - levels);
    const cells = slabs
      .slice(lowest)
      .map(
        (slab, k) => `${lowest + k + 1}: ${worked(slab, language)} | ${worked(under[lowest + k]!, language)}`,
      );
    return rowStrip([checkText(step, language), ...cells], columns.slice(0, cells.length + 1), { width });
  });
  const under = headStrip(
    [words.step, words.levelSlabShore],
    [columns[0]!, { x: 33, anchor: "start" }],
    width,
  );
  return rows.length * ROW > 0
    ? [section(words.shoringSteps, rows, { continued, isWhole: false, under })]
    : [];
}
