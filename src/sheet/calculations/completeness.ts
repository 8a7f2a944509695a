// The section on completeness: every rule that the plan is held to, ticked off or with what is wrong.

import type { Check, CheckStatus } from "../../assess/checkDocument.ts";
import { checkText } from "../checkWords/checkText.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { SMALL, SMALL_STRONG, textBlock, textLine } from "../lists/listText.ts";
import type { Mark } from "../mark.ts";
import { type Calculation, isTicked } from "./calculation.ts";
import { fixedStrip, section } from "./strips.ts";
import { asSentence } from "./written.ts";

const SIDE = 3.4;
const INDENT = 6;
/** In the box: done, to be mended, to be looked at by somebody, nothing to look at. */
const SIGNS: { readonly [S in CheckStatus]: string } = {
  within: "✓",
  over: "×",
  "not-checked": "?",
  "not-applicable": "–",
};

export function completenessSections(calculation: Calculation): readonly Section[] {
  const checks = calculation.checks.filter(isTicked);
  if (checks.length === 0) return [];
  const { words, continued } = calculation;
  const rows = checks.map((check) => tickStrip(check, calculation));
  return [section(words.completeness, rows, { continued, isWhole: false })];
}

function tickStrip(check: Check, { language, words, width }: Calculation): Strip {
  const isDone = check.status === "within";
  const isOver = check.status === "over";
  const of = check.where.unit === "" ? `${words.allPours}: ` : "";
  const rule = asSentence(`${of}${checkText(check.formula, language)}`);
  const found = isOver ? `${words.status.over}, ${check.value ?? 0}` : words.status[check.status];
  const text = isDone ? rule : `${rule}: ${found}. ${asSentence(checkText(check.reason ?? "", language))}`;
  const block = textBlock(text, isOver ? SMALL_STRONG : SMALL, {
    x: INDENT,
    top: 0.9,
    width: width - INDENT,
    ink: check.status === "not-applicable" ? "soft" : "ink",
  });
  const marks: readonly Mark[] = [
    {
      kind: "rect",
      box: { x: 0.2, y: 0.5, width: SIDE, height: SIDE },
      stroke: { weight: isOver ? 0.5 : 0.25, ink: check.status === "not-applicable" ? "soft" : "ink" },
    },
    ...textLine(SIGNS[check.status], SMALL_STRONG, { x: 0.2 + SIDE / 2, y: 3.4, anchor: "middle" }),
    ...block.marks,
  ];
  return fixedStrip(marks, Math.max(SIDE + 1, block.height + 1));
}
