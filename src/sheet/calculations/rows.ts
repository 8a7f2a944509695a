// The checks that are not written out in full, kind by kind, each a row: where it is, value, limit, part of the limit.

import type { Check } from "../../assess/checkDocument.ts";
import { checkText } from "../checkWords/checkText.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { levelRule, SMALL, SMALL_STRONG, textBlock, textLine } from "../lists/listText.ts";
import { type Calculation, isTicked, ofKind, placeText, valueText } from "./calculation.ts";
import { carried, percent } from "./figures.ts";
import { fixedStrip, headStrip, ROW, section, type TableColumn, wordsStrip } from "./strips.ts";
import { kindsOf } from "./summary.ts";

/** @param elsewhere - kinds that have a table of their own */
export function rowSections(
  calculation: Calculation,
  elsewhere: readonly string[],
  width: number,
): readonly Section[] {
  const { words, continued } = calculation;
  return kindsOf(calculation)
    .filter((kind) => !elsewhere.includes(kind))
    .filter((kind) => ofKind(calculation, kind).length > 1 && !ofKind(calculation, kind).every(isTicked))
    .map((kind) => {
      const columns = columnsOf(width);
      const under = headStrip([words.place, words.value, words.limit, "%"], columns, width);
      return section(words.kindOf(kind), kindRows(kind, columns, { ...calculation, width }), {
        continued,
        isWhole: false,
        under,
      });
    });
}

function columnsOf(width: number): readonly TableColumn[] {
  return [
    { x: 0, anchor: "start", room: width - 48 },
    { x: width - 29, anchor: "end" },
    { x: width - 10, anchor: "end" },
    { x: width, anchor: "end" },
  ];
}

function kindRows(kind: string, columns: readonly TableColumn[], calculation: Calculation): readonly Strip[] {
  const { language, width } = calculation;
  const checks = ofKind(calculation, kind);
  const reasons = [...new Set(checks.flatMap(({ reason }) => reason ?? []))];
  const differing = differingInputs(checks);
  const rows = checks.map((check) => {
    const number =
      reasons.length > 1 && check.reason !== undefined ? ` (${reasons.indexOf(check.reason) + 1})` : "";
    const cells = [
      valueText(check.value, check.unit, calculation),
      check.limit === null ? "–" : valueText(check.limit, check.unit, calculation),
      check.utilisation === null ? "–" : percent(check.utilisation, language).replace(" %", ""),
    ];
    const told =
      [placeText(check, calculation), ...ownInputs(check, differing, calculation)].join("; ") + number;
    return checkRow(told, cells, columns, { width, isStrong: check.status === "over" });
  });
  const notes = reasons.map((reason, k) =>
    wordsStrip(`${reasons.length > 1 ? `(${k + 1}) ` : ""}${checkText(reason, language)}`, width),
  );
  return [...rows, ...notes];
}

/** Place and inputs on as many lines as they take, the figures on the first. */
function checkRow(
  told: string,
  cells: readonly string[],
  [place, ...ends]: readonly TableColumn[],
  { width, isStrong }: { readonly width: number; readonly isStrong: boolean },
): Strip {
  const lettering = isStrong ? SMALL_STRONG : SMALL;
  const block = textBlock(told, lettering, { x: 0, top: 0.7, width: place?.room ?? width });
  const height = Math.max(ROW, block.height + 0.4);
  const figures = cells.flatMap((cell, index) =>
    textLine(cell, lettering, { x: ends[index]!.x, y: 3.2, anchor: "end" }),
  );
  return fixedStrip([...block.marks, ...figures, levelRule(0, height - 0.2, width, 0.13)], height);
}

/** Inputs that are not the same in all checks of a kind: with them a row can be followed by hand. */
function differingInputs(checks: readonly Check[]): ReadonlySet<string> {
  const known = new Map<string, number | string>();
  const differing = new Set<string>();
  for (const { inputs, value } of checks) {
    for (const each of inputs) {
      if (typeof each.value !== "number" || each.value === value) continue;
      const key = `${each.sign}|${each.name}`;
      const before = known.get(key);
      if (before !== undefined && before !== each.value) differing.add(key);
      known.set(key, each.value);
    }
  }
  return differing;
}

function ownInputs(
  { inputs }: Check,
  differing: ReadonlySet<string>,
  { language }: Calculation,
): readonly string[] {
  return inputs
    .filter(({ sign, name, value }) => typeof value === "number" && differing.has(`${sign}|${name}`))
    .map(({ sign, name, value }) => {
      const figure = typeof value === "number" ? carried(value, language) : value;
      return `${sign === "" ? checkText(name, language) : sign} ${figure}`;
    });
}
