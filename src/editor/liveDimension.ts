// What a dimension on the drawing is: a length that can be read and typed.

import type { Edit } from "../plan/edit.ts";
import type { Position } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { WordKey } from "./words/en.ts";

/** One dimension that can be typed. */
export interface LiveDimension {
  /** Which it is among those of the thing: stays the same while the thing is changed. */
  readonly key: string;
  readonly name: WordKey & `dimension.${string}`;
  readonly value: Mm;
  /** Where it stands in the plan; null for what a plan does not show, such as a sill. */
  readonly line: readonly [from: Position, to: Position] | null;
  /** The edit that makes it `value`. */
  readonly edit: (value: Mm) => Edit;
}
