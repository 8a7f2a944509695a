// What the sections of a calculation sheet are made from: one entry of the fill with its checks, and which of them counts
// most.

import type { Check, CheckDocument } from "../../assess/checkDocument.ts";
import type { CheckedEntry } from "../../assess/entry.ts";
import type { Envelope } from "../../check/envelope.ts";
import type { Language } from "../../plan/project.ts";
import { checkText } from "../checkWords/checkText.ts";
import type { SheetInfo } from "../info.ts";
import { plainText } from "../plainText.ts";
import type { CalcWords } from "./calcWords.ts";
import { stated, worked } from "./figures.ts";
import type { TieModel } from "./tieModel.ts";

export interface Calculation {
  readonly entry: CheckedEntry;
  readonly document: CheckDocument;
  /** Those of the entry, in the order of the document. */
  readonly checks: readonly Check[];
  readonly info: SheetInfo;
  readonly language: Language;
  readonly words: CalcWords;
  /** Said behind a heading that goes on. */
  readonly continued: string;
  /** Of a column, mm. */
  readonly width: number;
  /** The pressure; null where the method does not hold. */
  readonly envelope: Envelope | null;
  readonly ties: TieModel | null;
  /** Numbers of the props, as on all sheets of the unit. */
  readonly props: { readonly [piece: string]: number };
}

export function ofKind({ checks }: Calculation, kind: string): readonly Check[] {
  return checks.filter((check) => check.kind === kind);
}

/** The check that is used most; where no limit is known, the one with the greatest value. */
export function worstOf(checks: readonly Check[]): Check | null {
  return checks.reduce<Check | null>((worst, check) => {
    if (worst === null) return check;
    const [a, b] = [worst.utilisation ?? -1, check.utilisation ?? -1];
    if (a !== b) return b > a ? check : worst;
    return (check.value ?? -1) > (worst.value ?? -1) ? check : worst;
  }, null);
}

/** Units of which there are whole ones only, or which were stated as such. */
const COUNTED: readonly string[] = ["mm", "d", "faults", "stretches", "pairs"];

/** "62.50 kPa"; a count of faults or a whole length as it is. */
export function valueText(value: number | null, unit: string, calculation: Calculation): string {
  const { language } = calculation;
  if (value === null) return "–";
  const isWhole = Number.isInteger(value) && COUNTED.includes(unit);
  return `${isWhole ? stated(value, language) : worked(value, language)} ${checkText(unit, language)}`.trim();
}

/** Those of an entry; with the first entry also those of all pours together, which stand once. */
export function checksOf({ checks }: CheckDocument, name: string): readonly Check[] {
  const first = checks.find(({ where }) => where.unit !== "")?.where.unit;
  return checks.filter(({ where }) => where.unit === name || (where.unit === "" && name === first));
}

/** Where a check is: room, piece or opening, the place on the plan and the height, mm. */
export function placeText({ where }: Check, { props, language, words }: Calculation): string {
  if (where.unit === "") return words.allPours;
  const prop = props[where.piece];
  const at = (where.at ?? []).map((each) => stated(Math.round(each), language)).join("; ");
  const parts = [
    where.room === "" ? (where.face === undefined ? "" : words.outside) : plainText(where.room),
    where.opening === undefined ? "" : words.opening(plainText(where.opening)),
    prop === undefined ? plainText(where.code) : words.prop(prop),
    at === "" ? "" : `(${at})`,
    where.z === undefined ? "" : words.up(stated(Math.round(where.z), language)),
  ].filter((part) => part !== "");
  return parts.length === 0 ? words.wholeUnit : parts.join(", ");
}

export const COMPLETENESS_UNIT = "faults";

/** Counts of faults in the plan: ticked off, not computed. */
export function isTicked(check: Check): boolean {
  return check.unit === COMPLETENESS_UNIT;
}
