// The section on tolerances: how far the struck concrete may be from the drawing, by several rules side by side.

import type { ToleranceRow } from "../../assess/checkDocument.ts";
import { checkText } from "../checkWords/checkText.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { levelRule, SMALL, SMALL_STRONG, textBlock, textLine } from "../lists/listText.ts";
import type { Calculation } from "./calculation.ts";
import { stated } from "./figures.ts";
import { fixedStrip, headStrip, ROW, section, signedStrip, type TableColumn, wordsStrip } from "./strips.ts";

/** Paper for the rule and for the figure behind it, mm. */
const RULE = 48;
const FIGURE = 22;
const GAP = 3;

/** One row a rule, what it is of said once for all its rules; none where the document has none of this entry. */
export function toleranceSections(calculation: Calculation, width: number): readonly Section[] {
  const { document, entry, words, language, continued } = calculation;
  const own = document.tolerances.filter(({ unit }) => unit === entry.name);
  if (own.length === 0) return [];
  const room = width - RULE - FIGURE - 2 * GAP;
  const columns: readonly TableColumn[] = [
    { x: 0, anchor: "start", room },
    { x: room + GAP, anchor: "start", room: RULE },
    { x: width, anchor: "end" },
  ];
  const notes = [...new Set(own.map(({ note }) => note).filter((note) => note !== ""))];
  const kinds = [...new Set(own.map(({ what }) => what))];
  const groups = kinds.map((what): Strip => {
    const rows = own.filter((row) => row.what === what);
    const block = textBlock(checkText(what, language), SMALL, { x: 0, top: 0.7, width: room });
    const height = Math.max(rows.length * ROW, block.height + 0.4);
    const cells = rows.flatMap((row, k) => {
      const y = k * ROW + 3.2;
      const number = row.note === "" ? "" : ` (${notes.indexOf(row.note) + 1})`;
      return [
        ...textLine(checkText(row.rule, language), SMALL, { x: room + GAP, y, room: RULE }),
        ...textLine(`${deviation(row, calculation)}${number}`, SMALL_STRONG, { x: width, y, anchor: "end" }),
      ];
    });
    return fixedStrip([...block.marks, ...cells, levelRule(0, height - 0.2, width, 0.13)], height);
  });
  return [
    section(
      words.tolerances,
      [
        ...groups,
        wordsStrip(words.tolerancesText, width),
        ...notes.map((note, k) => wordsStrip(`(${k + 1}) ${checkText(note, language)}`, width)),
        signedStrip(`${words.source}: ${sourcesOf(own, calculation)}`, width, "soft"),
      ],
      {
        continued,
        isWhole: false,
        under: headStrip([words.toleranceOf, words.rule, words.deviation], columns, width),
      },
    ),
  ];
}

/** "± 8" or "− 6; + 10", mm; a dash where the rule says nothing. */
function deviation({ less, more }: ToleranceRow, { language }: Calculation): string {
  if (less === null || more === null) return "–";
  if (less === more) return `± ${figure(less, language)}`;
  return `−${figure(less, language)}; +${figure(more, language)}`;
}

function figure(value: number, language: Calculation["language"]): string {
  return stated(Math.round(value * 100) / 100, language);
}

function sourcesOf(rows: readonly ToleranceRow[], { language }: Calculation): string {
  return [...new Set(rows.map(({ source }) => source))]
    .map((source) => checkText(source, language))
    .join("; ");
}
