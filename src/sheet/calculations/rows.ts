// The checks that are not written out in full, kind by kind, each a row: where it is, value, limit, part of the limit.

import { checkText } from "../checkWords/checkText.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { type Calculation, isTicked, ofKind, placeText, valueText } from "./calculation.ts";
import { percent } from "./figures.ts";
import { headStrip, rowStrip, section, type TableColumn, wordsStrip } from "./strips.ts";
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
  const rows = checks.map((check) => {
    const number =
      reasons.length > 1 && check.reason !== undefined ? ` (${reasons.indexOf(check.reason) + 1})` : "";
    const cells = [
      placeText(check, calculation) + number,
      valueText(check.value, check.unit, calculation),
      check.limit === null ? "–" : valueText(check.limit, check.unit, calculation),
      check.utilisation === null ? "–" : percent(check.utilisation, language).replace(" %", ""),
    ];
    return rowStrip(cells, columns, { width, isStrong: check.status === "over" });
  });
  const notes = reasons.map((reason, k) =>
    wordsStrip(`${reasons.length > 1 ? `(${k + 1}) ` : ""}${checkText(reason, language)}`, width),
  );
  return [...rows, ...notes];
}
