// Digits typed while the hand is on something: fields in a row, one of them active.

import { parseTyped } from "../words/numbers.ts";

/** Texts of the fields; null = nothing typed into it. */
export interface Typed {
  readonly texts: readonly (string | null)[];
  readonly active: number;
}

export function nothingTyped(fields: number): Typed {
  return { texts: Array.from({ length: fields }, () => null), active: 0 };
}

export function isTyped(typed: Typed): boolean {
  return typed.texts.some((text) => text !== null);
}

/** What may stand in a field for a length: digits, signs, points and spaces. */
export function isNumeric(text: string): boolean {
  return /^[\d.,\s\u2212-]+$/.test(text);
}

/** Characters behind those of the active field. Anything that is no part of a number is left out. */
export function typeOn(typed: Typed, text: string): Typed {
  return isNumeric(text) ? withActive(typed, (typed.texts[typed.active] ?? "") + text) : typed;
}

/** The active field with another text; empty is as good as untouched. */
export function typeWhole(typed: Typed, text: string): Typed {
  return withActive(typed, text === "" ? null : text);
}

export function eraseLast(typed: Typed): Typed {
  return typeWhole(typed, (typed.texts[typed.active] ?? "").slice(0, -1));
}

/** The next field, or the one before, round and round. */
export function nextField(typed: Typed, isBack: boolean): Typed {
  const count = typed.texts.length;
  return { ...typed, active: (typed.active + (isBack ? count - 1 : 1)) % count };
}

/** The number in a field: null where nothing or no number stands there. */
export function typedNumber(typed: Typed, field: number): number | null {
  const text = typed.texts[field] ?? null;
  return text === null ? null : parseTyped(text);
}

/** The first text that is no number, or null. */
export function unreadable(typed: Typed): string | null {
  return typed.texts.find((text) => text !== null && parseTyped(text) === null) ?? null;
}

function withActive(typed: Typed, text: string | null): Typed {
  return { ...typed, texts: typed.texts.map((old, index) => (index === typed.active ? text : old)) };
}
