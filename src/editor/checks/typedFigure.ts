// Is what was typed into a form a figure that its field takes? If not, why: the reader would refuse it, far from the field.

import { parseTyped } from "../words/numbers.ts";
import type { Range } from "./fields.ts";

export type TypedFigure =
  | { readonly status: "taken"; readonly value: number }
  | { readonly status: "no-figure" }
  | { readonly status: "out-of-range" | "no-whole"; readonly value: number };

export function typedFigure(text: string, { least, greatest, whole = false }: Range): TypedFigure {
  const value = parseTyped(text);
  if (value === null) return { status: "no-figure" };
  if (value < least || value > greatest) return { status: "out-of-range", value };
  return whole && !Number.isInteger(value) ? { status: "no-whole", value } : { status: "taken", value };
}
