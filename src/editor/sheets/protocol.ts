// What the worker that makes sheets is asked, and how it answers. It knows no worker.

import type { SheetFields } from "../../sheet/info.ts";
import type { Table } from "../../sheet/tables.ts";
import { type AnswerAsk, sentPlan } from "../workers/planProtocol.ts";
import type { FontAddresses, SheetMaker } from "./maker.ts";
import type { SheetList } from "./sheetList.ts";

/** A job for the maker. */
export type Ask =
  | { readonly kind: "make"; readonly fields: SheetFields }
  | { readonly kind: "svg"; readonly key: string }
  | { readonly kind: "html"; readonly keys: readonly string[]; readonly fonts: FontAddresses }
  | { readonly kind: "pdf"; readonly keys: readonly string[] }
  | { readonly kind: "tables" };

export type Answer =
  | { readonly kind: "list"; readonly list: SheetList }
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "bytes"; readonly bytes: Uint8Array }
  | { readonly kind: "tables"; readonly tables: readonly Table[] }
  /** It asked for a sheet that is not there any more. */
  | { readonly kind: "gone" };

export function sheetAnswers(maker: SheetMaker): AnswerAsk<Ask, Answer> {
  return (plan, ask, onPart) => {
    switch (ask.kind) {
      case "make":
        return maker
          .make(sentPlan(plan), ask.fields, (list) => onPart({ kind: "list", list }))
          .then((list) => ({ kind: "list", list }));
      case "svg": {
        const text = maker.svg(ask.key);
        return text === null ? { kind: "gone" } : { kind: "text", text };
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
  };
}
