// The ticks, carried on from one list to the next as the sheets are made anew.

import { useState } from "react";
import { carried, type LeftOut, toggled } from "./choice.ts";
import type { SheetList } from "./sheetList.ts";

interface Held {
  readonly list: SheetList | null;
  readonly leftOut: LeftOut;
}

/** @returns what is left out, and the way to tick or untick */
export function useChoice(list: SheetList | null): readonly [LeftOut, (keys: readonly string[]) => void] {
  const [held, setHeld] = useState<Held>({ list: null, leftOut: new Set<string>() });
  const isNew = list !== null && list !== held.list;
  const now: Held = isNew
    ? { list, leftOut: held.list === null ? held.leftOut : carried(held.leftOut, held.list, list) }
    : held;
  if (isNew) setHeld(now);
  return [now.leftOut, (keys) => setHeld({ ...now, leftOut: toggled(keys, now.leftOut) })];
}
