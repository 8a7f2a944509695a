// The page's side of the maker: sends it kit and project when they change, and matches answers to asks. Of several asks
// to make the sheets anew only the newest waits, so that the maker never falls behind the hand.

import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import type { SheetFields } from "../../sheet/info.ts";
import type { Table } from "../../sheet/tables.ts";
import type { FontAddresses, Plan } from "./maker.ts";
import type { Answer, Ask, FromMaker, ToMaker } from "./protocol.ts";
import type { SheetList } from "./sheetList.ts";

/** What the client needs of whoever makes the sheets. */
export interface MakerPort {
  readonly send: (message: ToMaker) => void;
  readonly end: () => void;
}

export interface MakerEvents {
  readonly onAnswer: (answer: FromMaker) => void;
  /** It did not start, or broke down outside a job. */
  readonly onFailure: (reason: string) => void;
}

/** Every answer but that of `make` is for the sheets made last, and rejects with the reason where there is none. */
export interface SheetClient {
  /** Null where a newer ask has taken its place. `onPart`: the list so far, while more is on the way. */
  readonly make: (
    plan: Plan,
    fields: SheetFields,
    onPart: (list: SheetList) => void,
  ) => Promise<SheetList | null>;
  readonly svg: (key: string) => Promise<string>;
  readonly html: (keys: readonly string[], fonts: FontAddresses) => Promise<string>;
  readonly pdf: (keys: readonly string[]) => Promise<Uint8Array>;
  readonly tables: () => Promise<readonly Table[]>;
  readonly end: () => void;
}

type Settle = (answer: Answer) => void;

interface Waiting {
  readonly plan: Plan;
  readonly fields: SheetFields;
  readonly settle: (answer: Answer | null) => void;
}

/** @param start - begins a maker that tells its events to the listeners given */
export function createSheetClient(start: (events: MakerEvents) => MakerPort): SheetClient {
  const jobs = new Map<number, Settle>();
  let last = 0;
  let port: MakerPort | null = null;
  let sent: { readonly project: Project | null; readonly kit: Kit | null } = NOTHING;
  let [making, waiting]: [number | null, Waiting | null] = [null, null];

  const settle = (job: number, answer: Answer) => {
    const found = jobs.get(job);
    if (answer.kind !== "part") jobs.delete(job);
    if (answer.kind !== "part" && job === making) making = null;
    found?.(answer);
    next();
  };
  const end = () => {
    port?.end();
    port = null;
    sent = NOTHING;
  };
  // The next ask begins another.
  const fail = (reason: string) => {
    end();
    for (const job of [...jobs.keys()]) settle(job, { kind: "broken", reason });
  };
  const begun = (): MakerPort => {
    const own: MakerPort = start({
      onAnswer: ({ job, ...answer }) => settle(job, answer),
      onFailure: (reason) => {
        if (port === own) fail(reason);
      },
    });
    return own;
  };
  const post = (job: number, ask: Ask, plan: Plan | null) => {
    try {
      port ??= begun();
      if (plan !== null && sent.kit !== plan.kit) port.send({ kind: "kit", kit: plan.kit });
      if (plan !== null && (sent.kit !== plan.kit || sent.project !== plan.project))
        port.send({ kind: "project", project: plan.project });
      if (plan !== null) sent = plan;
      port.send({ job, ...ask });
    } catch (reason) {
      fail(String(reason));
    }
  };
  const give = (ask: Ask, plan: Plan | null, done: Settle) => {
    last += 1;
    jobs.set(last, done);
    post(last, ask, plan);
  };
  const next = () => {
    if (making !== null || waiting === null) return;
    const { plan, fields, settle: done } = waiting;
    waiting = null;
    making = last + 1;
    give({ kind: "make", fields }, plan, done);
  };
  const asked = <Found>(ask: Ask, read: (answer: Answer) => Found | null) =>
    new Promise<Found>((resolve, reject) => {
      give(ask, null, (answer) => {
        const found = read(answer);
        if (found === null) reject(new Error(answer.kind === "broken" ? answer.reason : answer.kind));
        else resolve(found);
      });
    });
  return {
    make: (plan, fields, onPart) =>
      new Promise((resolve, reject) => {
        waiting?.settle(null);
        waiting = {
          plan,
          fields,
          settle: (answer) => {
            if (answer?.kind === "broken") reject(new Error(answer.reason));
            else if (answer?.kind === "part") onPart(answer.list);
            else resolve(answer?.kind === "list" ? answer.list : null);
          },
        };
        next();
      }),
    svg: (key) => asked({ kind: "svg", key }, textOf),
    html: (keys, fonts) => asked({ kind: "html", keys, fonts }, textOf),
    pdf: (keys) => asked({ kind: "pdf", keys }, (answer) => (answer.kind === "bytes" ? answer.bytes : null)),
    tables: () => asked({ kind: "tables" }, (answer) => (answer.kind === "tables" ? answer.tables : null)),
    end,
  };
}

const NOTHING = { project: null, kit: null };

function textOf(answer: Answer): string | null {
  return answer.kind === "text" ? answer.text : null;
}
