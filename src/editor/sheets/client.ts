// The maker as the page asks it: every ask with the answer it has.

import type { SheetFields } from "../../sheet/info.ts";
import type { Table } from "../../sheet/tables.ts";
import type { WorkPlan } from "../over/workPlan.ts";
import { createPlanClient, type StartPlanWorker } from "../workers/planClient.ts";
import type { FontAddresses } from "./maker.ts";
import type { Answer, Ask } from "./protocol.ts";
import type { SheetList } from "./sheetList.ts";

/** Every answer but that of `make` is for the sheets made last, and rejects with the reason where there is none. */
export interface SheetClient {
  /** Null where a newer ask has taken its place. `onPart`: the list so far, while more is on the way. */
  readonly make: (
    plan: WorkPlan,
    fields: SheetFields,
    onPart: (list: SheetList) => void,
  ) => Promise<SheetList | null>;
  readonly svg: (key: string) => Promise<string>;
  readonly html: (keys: readonly string[], fonts: FontAddresses) => Promise<string>;
  readonly pdf: (keys: readonly string[]) => Promise<Uint8Array>;
  readonly tables: () => Promise<readonly Table[]>;
  readonly end: () => void;
}

export function createSheetClient(start: StartPlanWorker<Ask, Answer>): SheetClient {
  const jobs = createPlanClient(start);
  const asked = async <Found>(ask: Ask, read: (answer: Answer) => Found | null): Promise<Found> => {
    const answer = await jobs.ask(ask);
    const found = read(answer);
    if (found === null) throw new Error(answer.kind === "gone" ? GONE : answer.kind);
    return found;
  };
  return {
    make: async (plan, fields, onPart) => {
      const answer = await jobs.about(plan, { kind: "make", fields }, (part) => {
        if (part.kind === "list") onPart(part.list);
      });
      return answer?.kind === "list" ? answer.list : null;
    },
    svg: (key) => asked({ kind: "svg", key }, textOf),
    html: (keys, fonts) => asked({ kind: "html", keys, fonts }, textOf),
    pdf: (keys) => asked({ kind: "pdf", keys }, (answer) => (answer.kind === "bytes" ? answer.bytes : null)),
    tables: () => asked({ kind: "tables" }, (answer) => (answer.kind === "tables" ? answer.tables : null)),
    end: jobs.end,
  };
}

const GONE = "this sheet is not there any more";

function textOf(answer: Answer): string | null {
  return answer.kind === "text" ? answer.text : null;
}
