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

export type StartMaker = (events: MakerEvents) => MakerPort;

/** Every answer but that of `make` is for the sheets made last, and rejects with the reason where there is none. */
export interface SheetClient {
  /** Null where a newer ask has taken its place. */
  readonly make: (plan: Plan, fields: SheetFields) => Promise<SheetList | null>;
  readonly svg: (key: string) => Promise<string>;
  readonly html: (keys: readonly string[], fonts: FontAddresses) => Promise<string>;
  readonly pdf: (keys: readonly string[]) => Promise<Uint8Array>;
  readonly tables: () => Promise<readonly Table[]>;
  readonly end: () => void;
}

interface Job {
  readonly ask: Ask;
  /** For the plan it was asked for. */
  readonly plan: Plan | null;
  readonly settle: (answer: Answer) => void;
}

interface Waiting {
  readonly plan: Plan;
  readonly fields: SheetFields;
  readonly settle: (answer: Answer | null) => void;
}

/**
 * @param start - begins the maker beside the page
 * @param startHere - begins one in the page, which takes over where the other does not start
 */
export function createSheetClient(start: StartMaker, startHere: StartMaker): SheetClient {
  const jobs = new Map<number, Job>();
  let last = 0;
  let port: MakerPort | null = null;
  let isHere = false;
  let sent: { readonly project: Project | null; readonly kit: Kit | null } = { project: null, kit: null };
  let [making, waiting]: [number | null, Waiting | null] = [null, null];
  let made: Pick<Waiting, "plan" | "fields"> | null = null;

  const settle = (job: number, answer: Answer) => {
    const found = jobs.get(job);
    jobs.delete(job);
    if (job === making) making = null;
    found?.settle(answer);
    next();
  };
  const fail = (from: MakerPort | null, reason: string) => {
    if (from !== port) return;
    port?.end();
    port = null;
    sent = { project: null, kit: null };
    if (!isHere) {
      isHere = true;
      // What is asked of the sheets needs them made first.
      if (making === null && made !== null) post(0, { kind: "make", fields: made.fields }, made.plan);
      for (const [job, { ask, plan }] of jobs) post(job, ask, plan);
      return;
    }
    for (const job of [...jobs.keys()]) settle(job, { kind: "broken", reason });
  };
  const begun = (): MakerPort => {
    let own: MakerPort | null = null;
    own = (isHere ? startHere : start)({
      onAnswer: ({ job, ...answer }) => {
        if (own === port) settle(job, answer);
      },
      onFailure: (reason) => fail(own, reason),
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
      fail(port, String(reason));
    }
  };
  const give = (ask: Ask, plan: Plan | null, done: Job["settle"]): number => {
    last += 1;
    jobs.set(last, { ask, plan, settle: done });
    post(last, ask, plan);
    return last;
  };
  const next = () => {
    if (making !== null || waiting === null) return;
    const { plan, fields, settle: done } = waiting;
    waiting = null;
    made = { plan, fields };
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
    make: (plan, fields) =>
      new Promise((resolve, reject) => {
        waiting?.settle(null);
        waiting = {
          plan,
          fields,
          settle: (answer) => {
            if (answer?.kind === "broken") reject(new Error(answer.reason));
            else resolve(answer?.kind === "list" ? answer.list : null);
          },
        };
        next();
      }),
    svg: (key) => asked({ kind: "svg", key }, textOf),
    html: (keys, fonts) => asked({ kind: "html", keys, fonts }, textOf),
    pdf: (keys) => asked({ kind: "pdf", keys }, (answer) => (answer.kind === "bytes" ? answer.bytes : null)),
    tables: () => asked({ kind: "tables" }, (answer) => (answer.kind === "tables" ? answer.tables : null)),
    end: () => {
      port?.end();
      port = null;
    },
  };
}

function textOf(answer: Answer): string | null {
  return answer.kind === "text" ? answer.text : null;
}
