// The section on completeness: every rule that the plan is held to, ticked off or with what is wrong.

import type { Check } from "../../assess/checkDocument.ts";
import { checkText } from "../checkWords/checkText.ts";
import type { Section, Strip } from "../lists/flow.ts";
import { SMALL, SMALL_STRONG, textBlock, textLine } from "../lists/listText.ts";
import type { Mark } from "../mark.ts";
import { type Calculation, isTicked } from "./calculation.ts";
import { fixedStrip, section } from "./strips.ts";

const SIDE = 3.4;
const INDENT = 6;

export function completenessSections(calculation: Calculation): readonly Section[] {
  const checks = calculation.checks.filter(isTicked);
  if (checks.length === 0) return [];
  const { words, continued } = calculation;
  const rows = checks.map((check) => tickStrip(check, calculation));
  return [section(words.completeness, rows, { continued, isWhole: false })];
}

function tickStrip(check: Check, { language, words, width }: Calculation): Strip {
  const isDone = check.status === "within";
  const rule = checkText(check.formula, language);
  const text = isDone
    ? rule
    : `${rule}: ${words.status[check.status]}, ${check.value ?? 0}. ${checkText(check.reason ?? "", language)}`;
  const block = textBlock(text, isDone ? SMALL : SMALL_STRONG, {
    x: INDENT,
    top: 0.9,
    width: width - INDENT,
  });
  const marks: readonly Mark[] = [
    {
      kind: "rect",
      box: { x: 0.2, y: 0.5, width: SIDE, height: SIDE },
      stroke: { weight: isDone ? 0.25 : 0.5, ink: "ink" },
    },
    ...(isDone ? textLine("✓", SMALL_STRONG, { x: 0.2 + SIDE / 2, y: 3.4, anchor: "middle" }) : []),
    ...block.marks,
  ];
  return fixedStrip(marks, Math.max(SIDE + 1, block.height + 1));
}
