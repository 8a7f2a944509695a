// How JSON of ours is laid out: two-space indent, one final newline, lists of plain numbers on one line.
//
//   "from": [0, 0],        a point reads as a point, and a difference of two files shows whole points

import { isObject, type Json } from "./value.ts";

/**
 * Writes a value. Members come in the order of the object; −0 is written 0.
 *
 * @throws {RangeError} if a number is not finite: JSON has no way to write it
 */
export function writeJson(value: Json): string {
  return `${written(value, "")}\n`;
}

function written(value: Json, indent: string): string {
  if (typeof value === "number") return writtenNumber(value);
  const deeper = `${indent}  `;
  if (Array.isArray(value)) {
    const items: readonly Json[] = value;
    if (items.length === 0) return "[]";
    if (items.every((item) => typeof item === "number")) return `[${items.map(writtenNumber).join(", ")}]`;
    return block(
      "[",
      "]",
      indent,
      items.map((item) => written(item, deeper)),
    );
  }
  if (!isObject(value)) return JSON.stringify(value);
  const members = Object.entries(value).map(
    ([name, each]) => `${JSON.stringify(name)}: ${written(each, deeper)}`,
  );
  return members.length === 0 ? "{}" : block("{", "}", indent, members);
}

function block(open: string, close: string, indent: string, lines: readonly string[]): string {
  return `${open}\n${lines.map((line) => `${indent}  ${line}`).join(",\n")}\n${indent}${close}`;
}

function writtenNumber(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError("a number must be finite to be written");
  return String(value + 0); // −0 + 0 is 0
}
