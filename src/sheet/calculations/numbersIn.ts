// A formula with its numbers put in: every sign whose value a check lists, in the place of the sign.
//
//   "N = q·A·k" with q 4.5, A 1.215, k 1  ▶  "4.5 × 1.215 × 1", and N from the list as the result

import type { Check, CheckInput } from "../../assess/checkDocument.ts";
import type { Language } from "../../plan/project.ts";
import { checkText } from "../checkWords/checkText.ts";
import { carried, localFormula, worked } from "./figures.ts";

/** A line of a calculation. */
export interface Step {
  readonly formula: string;
  /** The right side with numbers; absent where the list has not all of them. */
  readonly numbers?: string;
  /** The figure that comes out, with its unit. */
  readonly result?: string;
}

/** The equations of a formula in turn: "a = …; b = …, c = …". */
export function formulaParts(formula: string): readonly string[] {
  return formula.split("; ").flatMap((part) => part.split(/, (?=[\p{L}0-9_]+(?:\(t\))? = )/u));
}

/** Equations in the order in which a hand works them out: what another one needs comes before it. */
export function inOrder(parts: readonly string[]): readonly string[] {
  const ordered: string[] = [];
  for (const part of parts) {
    const sign = leftOf(part);
    const user = ordered.findIndex((other) => sign !== null && signsIn(other).includes(sign));
    if (user < 0) ordered.push(part);
    else ordered.splice(user, 0, part);
  }
  return ordered;
}

/** The sign an equation gives, where it gives one. */
function leftOf(part: string): string | null {
  return /^([\p{L}][\p{L}\d_]*) = /u.exec(part)?.[1] ?? null;
}

function signsIn(part: string): readonly string[] {
  return part.slice(part.indexOf(" = ") + 3).match(SIGN) ?? [];
}

/** Values by sign. A sign that stands for two figures stands for none. */
export function valuesBySign(inputs: readonly CheckInput[]): ReadonlyMap<string, CheckInput> {
  const known = new Map<string, CheckInput>();
  const doubtful = new Set<string>();
  for (const each of inputs) {
    if (each.sign === "" || typeof each.value !== "number") continue;
    const before = known.get(each.sign);
    if (before !== undefined && before.value !== each.value) doubtful.add(each.sign);
    known.set(each.sign, each);
  }
  for (const sign of doubtful) known.delete(sign);
  return known;
}

/** What looks like a sign: one letter, or a letter with something below it or a digit behind. */
const SIGN = /(?<![\p{L}\d_])(?:\p{L}+_[\p{L}\d]+|\p{L}\d?|RWL|LI|FM|CM)(?![\p{L}\d_])/gu;
/** "p(sill)": a figure at a place, which no list gives. */
const OTHER_FUNCTION = /(?<![\p{L}_])(?!min|max|exp)[\p{L}_]+\(/u;
const FUNCTIONS: readonly string[] = ["min", "max", "exp"];

/** One equation of a check with its numbers, as far as the check lists them. */
export function stepOf(part: string, check: Check, language: Language): Step {
  const values = valuesBySign(check.inputs);
  const at = part.indexOf(" = ");
  if (at < 0) return { formula: part };
  const [left, right] = [part.slice(0, at), part.slice(at + 3)];
  let isWhole = !OTHER_FUNCTION.test(right);
  let count = 0;
  const numbers = right.replace(SIGN, (sign) => {
    if (FUNCTIONS.includes(sign)) return sign;
    const value = values.get(sign)?.value;
    if (typeof value !== "number") {
      isWhole = false;
      return sign;
    }
    count++;
    return carried(value, language);
  });
  const figure = resultOf(left, check, values);
  const result = figure === null ? {} : { result: `${worked(figure.value, language)} ${figure.unit}`.trim() };
  if (!isWhole || count === 0) return { formula: part, ...result };
  return {
    formula: part,
    numbers: localFormula(checkText(asProduct(numbers), language), language),
    ...result,
  };
}

// The list has what an equation gives; "N ≤ R_perm = …" gives the limit, and the first or the last equation of all the value.
function resultOf(
  left: string,
  check: Check,
  values: ReadonlyMap<string, CheckInput>,
): { readonly value: number; readonly unit: string } | null {
  const known = values.get(left);
  if (known !== undefined && typeof known.value === "number") return { value: known.value, unit: known.unit };
  const { value, limit, unit } = check;
  if (/ [≤≥] /u.test(left)) return limit === null ? null : { value: limit, unit };
  const isFirst = check.formula.startsWith(`${left} = `);
  const isLast = check.formula.split("; ").at(-1)?.startsWith(`${left} = `) === true;
  return (isFirst || isLast) && value !== null ? { value, unit } : null;
}

/** Points between factors become crosses. */
export function asProduct(numbers: string): string {
  return numbers.replaceAll("·", " × ");
}
