// What the page and the worker say to each other, and how the worker answers. Pure: it knows no worker.
//
//   page ── kit 3 ──▶ ── job 7, kit 3, unit … ──▶ worker
//   page ◀── job 7: filled, or why not ────────── worker
//
// A kit is sent once and then named by its number: it is larger than a unit, and the cover tables that the fill
// remembers belong to the object, so a copy with every job would have them worked out anew.

import { fillUnit } from "../../fill/fillUnit.ts";
import type { FilledUnit } from "../../fill/fillWalls.ts";
import type { Union } from "../../geom/union.ts";
import type { Kit } from "../../kit/kit.ts";
import type { FillAsk } from "../live/liveFill.ts";

/** What the screen needs of a fill; all of it plain data that can be sent. */
export type Filled = Pick<FilledUnit, "outline" | "fill">;

export type ToWorker =
  | { readonly kind: "kit"; readonly kit: number; readonly value: Kit }
  | { readonly kind: "job"; readonly job: number; readonly kit: number; readonly ask: Omit<FillAsk, "kit"> };

export type FromWorker =
  | { readonly kind: "filled"; readonly job: number; readonly filled: Filled }
  /** The fill broke down: a fault of the program. */
  | { readonly kind: "broken"; readonly job: number; readonly reason: string };

/** Makes what answers in the worker; a kit is taken in and answered by null. */
export function createAnswerer(union: Union): (message: ToWorker) => FromWorker | null {
  let held: { readonly kit: number; readonly value: Kit } | null = null;
  return (message) => {
    if (message.kind === "kit") {
      held = message;
      return null;
    }
    const { job, ask } = message;
    if (held?.kit !== message.kit) return { kind: "broken", job, reason: "the kit of the job was not sent" };
    try {
      const { outline, fill } = fillUnit({ ...ask, kit: held.value, union });
      return { kind: "filled", job, filled: { outline, fill } };
    } catch (reason) {
      return { kind: "broken", job, reason: String(reason) };
    }
  };
}
