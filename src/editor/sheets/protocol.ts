// What the page and the worker that makes sheets say to each other, and how the worker answers. It knows no worker.
//
//   page ── kit ── project ── make 4, svg 5, pdf 6 … ──▶ worker
//   page ◀── 4: part of the list, then all of it   5: a text   6: bytes ── worker
//
// Kit and project are sent when they change and are then in hand for every job that follows.

import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import type { SheetFields } from "../../sheet/info.ts";
import type { Table } from "../../sheet/tables.ts";
import type { FontAddresses, Plan, SheetMaker } from "./maker.ts";
import type { SheetList } from "./sheetList.ts";

export type ToMaker =
  | { readonly kind: "kit"; readonly kit: Kit }
  | { readonly kind: "project"; readonly project: Project }
  | ({ readonly job: number } & Ask);

/** A job for the maker. */
export type Ask =
  | { readonly kind: "make"; readonly fields: SheetFields }
  | { readonly kind: "svg"; readonly key: string }
  | { readonly kind: "html"; readonly keys: readonly string[]; readonly fonts: FontAddresses }
  | { readonly kind: "pdf"; readonly keys: readonly string[] }
  | { readonly kind: "tables" };

export type FromMaker = { readonly job: number } & Answer;

export type Answer =
  | { readonly kind: "list"; readonly list: SheetList }
  /** What there is of the list so far; more of the same job follows. */
  | { readonly kind: "part"; readonly list: SheetList }
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "bytes"; readonly bytes: Uint8Array }
  | { readonly kind: "tables"; readonly tables: readonly Table[] }
  /** The job broke down, or asked for what is not there. */
  | { readonly kind: "broken"; readonly reason: string };

/** Makes what takes messages in and answers by `tell`. */
export function createAnswerer(
  maker: SheetMaker,
  tell: (answer: FromMaker) => void,
): (message: ToMaker) => Promise<void> {
  let kit: Kit | null = null;
  let plan: Plan | null = null;
  return async (message) => {
    if (message.kind === "kit") {
      ({ kit } = message);
      return;
    }
    if (message.kind === "project") {
      plan = kit === null ? null : { project: message.project, kit };
      return;
    }
    const { job } = message;
    try {
      tell({ job, ...(await answer(maker, plan, message, (list) => tell({ job, kind: "part", list }))) });
    } catch (reason) {
      tell({ job, kind: "broken", reason: String(reason) });
    }
  };
}

// Not async, so that every job looks at the sheets as they are when its turn comes.
function answer(
  maker: SheetMaker,
  plan: Plan | null,
  ask: Ask,
  onPart: (list: SheetList) => void,
): Answer | Promise<Answer> {
  switch (ask.kind) {
    case "make":
      if (plan === null) return { kind: "broken", reason: "no project was sent" };
      return maker.make(plan, ask.fields, onPart).then((list) => ({ kind: "list", list }));
    case "svg": {
      const text = maker.svg(ask.key);
      return text === null
        ? { kind: "broken", reason: "this sheet is not there any more" }
        : { kind: "text", text };
    }
    case "html":
      return { kind: "text", text: maker.html(ask.keys, ask.fonts) };
    case "pdf":
      return maker.pdf(ask.keys).then((bytes) => ({ kind: "bytes", bytes }));
    case "tables":
      return { kind: "tables", tables: maker.tables() };
    default:
      return ask satisfies never;
  }
}
