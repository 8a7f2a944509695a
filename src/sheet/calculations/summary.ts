// The section that a hurried reader needs: every kind of check in one row, with the one that is used most.

import type { Check, CheckStatus } from "../../assess/checkDocument.ts";
import type { Section, Strip } from "../lists/flow.ts";
import type { Figure } from "../lists/listPage.ts";
import { levelRule, SMALL, SMALL_STRONG, textBlock, textLine } from "../lists/listText.ts";
import type { Mark } from "../mark.ts";
import { type Calculation, isTicked, ofKind, valueText, worstOf } from "./calculation.ts";
import { percent } from "./figures.ts";
import { fixedStrip, headStrip, ROW, section, type TableColumn, usageMarks } from "./strips.ts";

/** The kinds of an entry's checks, in the order of the document. */
export function kindsOf({ checks }: Calculation): readonly string[] {
  return [...new Set(checks.map(({ kind }) => kind))];
}

export function headline(calculation: Calculation): readonly Figure[] {
  const { checks, words, language } = calculation;
  const count = (status: CheckStatus) => `${checks.filter((check) => check.status === status).length}`;
  const most = Math.max(0, ...checks.map(({ utilisation }) => utilisation ?? 0));
  return [
    { value: count("within"), label: words.status.within },
    { value: count("over"), label: words.status.over },
    { value: count("not-checked"), label: words.status["not-checked"] },
    { value: count("not-applicable"), label: words.status["not-applicable"] },
    { value: percent(most, language), label: words.mostUsed },
  ];
}

const BAR = 20;

export function summarySection(calculation: Calculation): Section {
  const { words, width, continued } = calculation;
  const columns = columnsOf(width);
  const heads = ["", words.number, words.value, words.limit, "%", ""];
  const rows = kindsOf(calculation)
    .filter((kind) => !ofKind(calculation, kind).every(isTicked))
    .map((kind) => kindStrip(kind, columns, calculation));
  const ticked = calculation.checks.filter(isTicked);
  const open = (["over", "not-checked"] as const).flatMap((status) => {
    const count = ticked.filter((check) => check.status === status).length;
    return count === 0 ? [] : [`${count} ${words.shortStatus[status]}`];
  });
  const found = open.length === 0 ? "✓" : open.join(", ");
  const last = textRow(words.completeness, `${ticked.length}`, found, columns, width);
  return section(words.atAGlance, ticked.length === 0 ? rows : [...rows, last], {
    continued,
    isWhole: false,
    under: headStrip(heads, columns, width),
  });
}

function columnsOf(width: number): readonly TableColumn[] {
  return [
    { x: 0, anchor: "start", room: width - 86 },
    { x: width - 77, anchor: "end" },
    { x: width - 55, anchor: "end" },
    { x: width - 34, anchor: "end" },
    { x: width - BAR - 3, anchor: "end" },
    { x: width, anchor: "end" },
  ];
}

function kindStrip(kind: string, columns: readonly TableColumn[], calculation: Calculation): Strip {
  const { words, width, language } = calculation;
  const checks = ofKind(calculation, kind);
  const worst = worstOf(checks);
  const share = worst?.utilisation ?? null;
  const status = worstStatus(checks);
  const [name, ...ends] = columns;
  const cells = [
    `${checks.length}`,
    worst === null ? "–" : valueText(worst.value, worst.unit, calculation),
    worst === null ? "–" : valueText(worst.limit, worst.unit, calculation),
    share === null ? "" : percent(share, language).replace(" %", ""),
  ];
  const lettering = status === "over" ? SMALL_STRONG : SMALL;
  const block = textBlock(words.kindOf(kind), lettering, { x: 0, top: 0.7, width: name?.room ?? width });
  const height = Math.max(ROW, block.height + 0.4);
  const marks: readonly Mark[] = [
    ...block.marks,
    ...cells.flatMap((cell, index) =>
      textLine(cell, lettering, { x: ends[index]!.x, y: 3.2, anchor: "end" }),
    ),
    ...(share === null
      ? textLine(words.shortStatus[status], SMALL, {
          x: width,
          y: 3.2,
          anchor: "end",
          ink: "soft",
          room: BAR + 10,
        })
      : usageMarks(share, { x: width - BAR, y: 0.9, width: BAR, height: 2.4 })),
    levelRule(0, height - 0.2, width, 0.13),
  ];
  return fixedStrip(marks, height);
}

function textRow(
  name: string,
  count: string,
  text: string,
  columns: readonly TableColumn[],
  width: number,
): Strip {
  return fixedStrip(
    [
      ...textLine(name, SMALL, { x: 0, y: 3.2, room: columns[0]!.room ?? width }),
      ...textLine(count, SMALL, { x: columns[1]!.x, y: 3.2, anchor: "end" }),
      ...textLine(text, SMALL_STRONG, { x: width, y: 3.2, anchor: "end" }),
      levelRule(0, ROW - 0.2, width, 0.13),
    ],
    ROW,
  );
}

const ORDER: readonly CheckStatus[] = ["over", "not-checked", "within", "not-applicable"];

function worstStatus(checks: readonly Check[]): CheckStatus {
  return ORDER.find((status) => checks.some((check) => check.status === status)) ?? "not-applicable";
}
