// Typing into a figure of the drawing: which of the live dimensions, what stands in its field, and the edit it makes.

import type { ItemRef } from "../../plan/document.ts";
import type { Edit } from "../../plan/edit.ts";
import type { WallEnd } from "../../plan/editAxis.ts";
import { lengthEdit, liveDimensions } from "../dimensions.ts";
import type { LiveDimension } from "../liveDimension.ts";
import { parseTyped } from "../words/numbers.ts";
import { words } from "../words/say.ts";
import { DISCARD, type Intent, type Mark, type ToolContext } from "./protocol.ts";

export interface Typing {
  /** Whose dimensions are typed. */
  readonly items: readonly ItemRef[];
  /** The end under the hand: a typed length moves this one. */
  readonly end: WallEnd | null;
  /** Which of the dimensions. */
  readonly key: string;
  readonly text: string;
}

/** Typing into the dimension `key`, or for null into the first there is; null where there is none. */
export function beginTyping(
  wanted: Omit<Typing, "key"> & { readonly key: string | null },
  context: ToolContext,
): Typing | null {
  const all = liveDimensions(context.unit, wanted.items);
  const dimension = wanted.key === null ? all[0] : all.find(({ key }) => key === wanted.key);
  return dimension === undefined ? null : { ...wanted, key: dimension.key };
}

export function typedOn(typing: Typing, text: string): Typing {
  return { ...typing, text: typing.text + text };
}

/** The field and what its value would give; null where the dimension is not there any more. */
export function typingPreview(typing: Typing, context: ToolContext): Intent | null {
  const dimension = dimensionOf(typing, context);
  if (dimension === undefined) return null;
  const edit = typedEdit(typing, dimension, context);
  const mark: Mark = { kind: "typing", key: typing.key, text: typing.text, was: dimension.value };
  return { kind: "preview", edits: edit === null ? [] : [edit], marks: [mark] };
}

/** What keeping the text asks for: one step, or nothing where it says what was there already. */
export function keepTyped(typing: Typing, context: ToolContext): readonly Intent[] {
  const dimension = dimensionOf(typing, context);
  if (dimension === undefined || typing.text === "") return [DISCARD];
  if (parseTyped(typing.text) === null) {
    return [DISCARD, { kind: "message", said: words("message.not-a-number", { text: typing.text }) }];
  }
  const edit = typedEdit(typing, dimension, context);
  if (edit === null) return [DISCARD];
  return [{ kind: "commit", label: words("step.resize"), edits: [edit], select: typing.items }];
}

/** The next dimension of the thing with an empty field, or the one before; null where there is none. */
export function nextTyping(typing: Typing, isBack: boolean, context: ToolContext): Typing | null {
  const all = liveDimensions(context.unit, typing.items);
  const index = all.findIndex(({ key }) => key === typing.key);
  const next = all[(index + (isBack ? all.length - 1 : 1)) % all.length];
  return next === undefined ? null : { ...typing, key: next.key, text: "" };
}

function dimensionOf({ items, key }: Typing, context: ToolContext): LiveDimension | undefined {
  return liveDimensions(context.unit, items).find((dimension) => dimension.key === key);
}

function typedEdit(
  { text, key, end, items }: Typing,
  dimension: LiveDimension,
  context: ToolContext,
): Edit | null {
  const value = parseTyped(text);
  if (value === null || value === dimension.value) return null;
  const [only] = items;
  const isEnd = key === "length" && end !== null && only !== undefined;
  return (isEnd ? lengthEdit(context.unit, only.id, end, value) : null) ?? dimension.edit(value);
}
