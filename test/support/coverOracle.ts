// The slow and obvious way to the best cover: list every multiset of widths with every closure, sort, take
// the first.

import type { ClosureRange, Width } from "../../src/fill/coverTable.ts";

export interface OracleCover {
  readonly widths: readonly number[];
  readonly closure: number | null;
}

export interface OracleRules {
  readonly widths: readonly Width[];
  readonly closure: ClosureRange;
  readonly narrowUnder: number;
}

/** Every multiset of `widths` of exactly `length`, each widest first. `widths` must come widest first. */
export function everyMultiset(length: number, widths: readonly number[]): number[][] {
  const [width, ...rest] = widths;
  if (width === undefined) return length === 0 ? [[]] : [];
  const found: number[][] = [];
  for (let count = 0; count * width <= length; count++) {
    for (const tail of everyMultiset(length - count * width, rest)) {
      found.push([...new Array<number>(count).fill(width), ...tail]);
    }
  }
  return found;
}

/** All covers of an interval, the best first. */
export function everyCover(length: number, rules: OracleRules): OracleCover[] {
  const widths = rules.widths.map(({ width }) => width).sort((a, b) => b - a);
  const covers: OracleCover[] = everyMultiset(length, widths).map((one) => ({ widths: one, closure: null }));
  for (let closure = rules.closure?.least ?? 1; closure <= (rules.closure?.greatest ?? 0); closure++) {
    if (closure > length) break;
    for (const one of everyMultiset(length - closure, widths)) covers.push({ widths: one, closure });
  }
  return covers.sort((a, b) => compareCovers(a, b, rules));
}

/** Section by section as "best" is defined: counts first, then the ties. */
export function compareCovers(a: OracleCover, b: OracleCover, rules: OracleRules): number {
  const x = [...countsOf(a, rules), a.closure ?? 0];
  const y = [...countsOf(b, rules), b.closure ?? 0];
  for (const [index, value] of x.entries()) if (value !== y[index]) return value - y[index]!;
  for (const [index, width] of a.widths.entries()) {
    if (width !== b.widths[index]) return (b.widths[index] ?? 0) - width;
  }
  return 0;
}

/** Closures, narrow, fillers, pieces, distinct widths. */
export function countsOf({ widths, closure }: OracleCover, rules: OracleRules): number[] {
  const isFiller = (width: number) => rules.widths.some((one) => one.width === width && !one.standard);
  return [
    closure === null ? 0 : 1,
    widths.filter((width) => width < rules.narrowUnder).length,
    widths.filter(isFiller).length,
    widths.length,
    new Set(widths).size,
  ];
}
