// What came of an edit: the things it made, or the reason it could not be done. A refused edit has changed nothing.

import type { Bucket, ItemRef } from "./document.ts";

/** Why an edit was refused. The sentence for each is in the catalogue of words. */
export type Refusal =
  | "no-such-unit"
  | "no-such-item"
  | "id-in-use"
  | "wall-vanishes"
  | "opening-in-the-way"
  | "opening-too-wide"
  | "bad-size"
  | "not-in-line"
  | "not-parallel"
  | "offset-too-far"
  | "not-a-turn"
  | "no-wall-here"
  | "last-unit"
  | "out-of-limits";

export type EditOutcome =
  | { readonly status: "done"; readonly made: readonly ItemRef[] }
  | { readonly status: "refused"; readonly reason: Refusal; readonly item: string | null };

const NOTHING_MADE: EditOutcome = { status: "done", made: [] };

/** The edit is done; `made` lists what it added, in the order it was added. */
export function done(made: readonly ItemRef[] = []): EditOutcome {
  return made.length === 0 ? NOTHING_MADE : { status: "done", made };
}

/** The edit made one thing. */
export function madeOne(bucket: Bucket, id: string): EditOutcome {
  return done([{ bucket, id }]);
}

/** The edit cannot be done; `item` is the id of what stands in the way. */
export function refused(reason: Refusal, item: string | null = null): EditOutcome {
  return { status: "refused", reason, item };
}
