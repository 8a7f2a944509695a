// A cell as a count of pieces: whole, not negative, whichever signs a language puts into its numbers.

import type { SheetCell } from "../xlsx/readXlsx.ts";

/** As the project file has it: more pieces of a kind nobody owns. */
export const MOST_PIECES = 1_000_000;

export type CountAnswer =
  | { readonly status: "count"; readonly count: number }
  | {
      readonly status: "not-a-number" | "negative" | "fractional" | "huge" | "ambiguous" | "unknown-formula";
    };

/** "1.234" and "1,234" may be a thousand or a fraction: where the two differ, nobody is to guess. */
export function wholeCount({ text, isNumber, isUnknown }: SheetCell): CountAnswer {
  if (isUnknown) return { status: "unknown-formula" };
  if (isNumber) {
    const value = Number(text);
    return text.trim() !== "" && Number.isFinite(value) ? judged(value) : { status: "not-a-number" };
  }
  const spaceless = text.trim().replaceAll(/(?<=\d)[ \u00A0\u2009\u202F'’](?=\d{3}(?!\d))/g, "");
  const parts = /^([+\-−]?)(\d+(?:[.,]\d+)*)$/.exec(spaceless);
  if (parts === null) return { status: "not-a-number" };
  const value = readDigits(parts[2]!);
  if (value === null) return { status: "ambiguous" };
  return judged(parts[1] === "" || parts[1] === "+" ? value : -value);
}

function judged(value: number): CountAnswer {
  if (value < 0) return { status: "negative" };
  if (!Number.isInteger(value)) return { status: "fractional" };
  if (value > MOST_PIECES) return { status: "huge" };
  return { status: "count", count: value === 0 ? 0 : value };
}

/** Null: it may be read in two ways, or in none. */
function readDigits(digits: string): number | null {
  const signs = digits.match(/[.,]/g) ?? [];
  if (signs.length === 0) return Number(digits);
  const last = signs.at(-1)!;
  const [whole = "", part = ""] = [
    digits.slice(0, digits.lastIndexOf(last)),
    digits.slice(digits.lastIndexOf(last) + 1),
  ];
  const isGrouped = (text: string, sign: string) => {
    const groups = text.split(sign);
    return groups.every((group, k) => (k === 0 ? /^\d{1,3}$/ : /^\d{3}$/).test(group));
  };
  if (signs.length === 1) {
    // Three digits behind one sign: thousands, or thousandths of a piece. Zeros alone mean both: still two numbers.
    return part.length === 3 ? null : Number(`${whole}.${part}`);
  }
  const other = signs[0]!;
  if (other === last)
    return signs.every((sign) => sign === last) && isGrouped(digits, last)
      ? Number(digits.replaceAll(last, ""))
      : null;
  const isMixed = signs.slice(0, -1).every((sign) => sign === other) && isGrouped(whole, other);
  return isMixed ? Number(`${whole.replaceAll(other, "")}.${part}`) : null;
}
