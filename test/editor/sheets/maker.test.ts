// The sheets as the page makes them against those of the command line, and the page's way to whoever makes them.

import { describe, expect, it } from "vitest";
import { coreTools } from "../../../src/cli/coreTools.ts";
import { fontFiles } from "../../../src/cli/fontFiles.ts";
import type { WorkPlan } from "../../../src/editor/over/workPlan.ts";
import { createSheetClient } from "../../../src/editor/sheets/client.ts";
import { EMPTY_FIELDS } from "../../../src/editor/sheets/fields.ts";
import { createSheetMaker } from "../../../src/editor/sheets/maker.ts";
import { type Answer, type Ask, sheetAnswers } from "../../../src/editor/sheets/protocol.ts";
import { allSheets, type SheetList } from "../../../src/editor/sheets/sheetList.ts";
import {
  createAnswerer,
  type FromPlanWorker,
  type ToPlanWorker,
} from "../../../src/editor/workers/planProtocol.ts";
import type { PortEvents } from "../../../src/editor/workers/port.ts";
import { loadUnion } from "../../../src/geom/union.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import { sheetsToHtml } from "../../../src/sheet/html.ts";
import { sheetsToPdf } from "../../../src/sheet/pdf/write.ts";
import { fileTitle } from "../../../src/sheet/sheetSet.ts";
import { sheetToSvg } from "../../../src/sheet/svg.ts";
import { sampleProject } from "../../support/samples.ts";

const union = await loadUnion();
const kit = demoKit;
const fonts = await fontFiles();
const plan: WorkPlan = { project: sampleProject("mirrored-pair"), kit };
const fields = { ...EMPTY_FIELDS, date: "2026-03-04", document: "D-12", madeBy: "A. Mason" };
const noPause = async () => {};
const noPart = () => {};

const fill = await coreTools.fill(plan.project, kit);
const sets = await coreTools.sheets({ ...plan, fill }, fields);

function newMaker() {
  return createSheetMaker(union, async () => fonts, noPause);
}

describe("the sheets of the page", () => {
  it("are those of the command line, sheet by sheet to the last byte", async () => {
    const maker = newMaker();
    const list = await maker.make(plan, fields, noPart);
    expect(list.sets.map(({ name }) => name)).toEqual(sets.map(({ name }) => name));
    for (const { name, sheets } of sets) {
      const own = list.sets.find((set) => set.name === name)?.sheets ?? [];
      expect(own.map(({ title }) => title)).toEqual(sheets.map(({ title }) => title));
      for (const [index, sheet] of sheets.entries()) {
        expect(maker.svg(own[index]?.key ?? "") === sheetToSvg(sheet)).toBe(true);
      }
    }
  });

  it("are bound in order, whatever order they are asked for in", async () => {
    const maker = newMaker();
    const list = await maker.make(plan, fields, noPart);
    const [first] = sets;
    const keys = list.sets[0]?.sheets.map(({ key }) => key) ?? [];
    const title = fileTitle(plan.project.name, first?.name);
    const about = { title, author: "", language: "en", date: fields.date } as const;
    const two = [first!.sheets[0]!, first!.sheets[2]!];
    const pdf = await maker.pdf([keys[2]!, "h/nothing", keys[0]!]);
    expect(Buffer.compare(pdf, sheetsToPdf(two, fonts, about))).toBe(0);
    const addresses = { 400: "a.ttf", 600: "b.ttf", 700: "c.ttf" };
    expect(maker.html([keys[2]!, keys[0]!], addresses)).toBe(
      sheetsToHtml(two, { title, language: "en", fonts: addresses }),
    );
  });

  it("come with the tables of the command line, and the list of codes", async () => {
    const maker = newMaker();
    const list = await maker.make(plan, fields, noPart);
    const tables = maker.tables();
    expect(tables.map(({ name }) => name)).toEqual(list.tables);
    expect(tables.slice(0, -1)).toEqual(coreTools.tables({ ...plan, fill }));
    const codes = tables.at(-1)?.text ?? "";
    for (const { key = "none" } of sets.flatMap(({ sheets }) => sheets)) expect(codes).toContain(key);
  });

  it("can be looked at one hand before the other", async () => {
    const maker = newMaker();
    const parts: SheetList[] = [];
    const whole = await maker.make(plan, fields, (list) => parts.push(list));
    expect(whole.sets.map(({ isMirrored }) => isMirrored)).toEqual([false, true]);
    expect(parts.map(({ sets: some }) => some)).toEqual([whole.sets.slice(0, 1)]);
  });

  it("tell what is not built, in the language of the project", async () => {
    const project = { ...sampleProject("awkward"), language: "es" } as const;
    const list = await newMaker().make({ project, kit }, fields, noPart);
    expect(list.unfilled).toBeGreaterThan(0);
    expect(list.faults.length).toBeGreaterThan(0);
    expect(list.faults.join(" ")).not.toMatch(/\bthe\b/i);
    const good = await newMaker().make(plan, fields, noPart);
    expect([good.unfilled, good.faults]).toEqual([0, []]);
  }, 60_000);
});

interface Beside {
  readonly heard: ToPlanWorker<Ask>[];
  readonly events: PortEvents<FromPlanWorker<Answer>>;
  isEnded: boolean;
}

/** A client, and makers of the test's own that answer when they are let. */
function desk() {
  const begun: Beside[] = [];
  const client = createSheetClient((events) => {
    const beside: Beside = { heard: [], events, isEnded: false };
    begun.push(beside);
    return {
      // Sent messages are copies, as in a browser.
      send: (message) => beside.heard.push(structuredClone(message)),
      end: () => {
        beside.isEnded = true;
      },
    };
  });
  return { client, begun };
}

async function answerAll({ heard, events }: Beside): Promise<void> {
  const answers: FromPlanWorker<Answer>[] = [];
  const answer = createAnswerer(sheetAnswers(newMaker()), (each) => answers.push(structuredClone(each)));
  for (const message of heard) await answer(message);
  for (const each of answers) events.onAnswer(each);
}

const kinds = (beside: Beside | undefined) =>
  beside?.heard.map((each) => (each.kind === "job" ? each.ask.kind : each.kind)).join(" ");

describe("the way to the maker", () => {
  it("gives back what was asked for, through copies", async () => {
    const { client, begun } = desk();
    const parts: number[] = [];
    const made = client.make(plan, fields, ({ sets: some }) => parts.push(some.length));
    const key = `${sets[0]!.name}/${sets[0]!.sheets[0]!.name}`;
    const svg = client.svg(key);
    const missing = client.svg("h/nothing");
    const pdf = client.pdf([key]);
    const tables = client.tables();
    missing.catch(() => {});
    await answerAll(begun[0]!);
    const list = await made;
    expect(allSheets(list ?? { sets: [] })).toHaveLength(sets.flatMap(({ sheets }) => sheets).length);
    expect(parts).toEqual([1]);
    expect(await svg).toBe(sheetToSvg(sets[0]!.sheets[0]!));
    expect(new TextDecoder("latin1").decode(await pdf)).toMatch(/^%PDF-/);
    expect((await tables).length).toBe(list?.tables.length);
    await expect(missing).rejects.toThrow("not there any more");
  });

  it("sends kit and project once, the project again when it changes", async () => {
    const { client, begun } = desk();
    const settle = (job: number) =>
      begun[0]?.events.onAnswer({ job, kind: "done", answer: { kind: "list", list: EMPTY } });
    void client.make(plan, fields, noPart);
    settle(1);
    void client.make(plan, { ...fields, date: "" }, noPart);
    settle(2);
    void client.make({ ...plan, project: { ...plan.project, name: "Other" } }, fields, noPart);
    settle(3);
    expect(kinds(begun[0])).toBe("kit project make make project make");
  });

  it("lets only the newest ask wait while the maker is at work", async () => {
    const { client, begun } = desk();
    const first = client.make(plan, { ...fields, date: "2026-01-01" }, noPart);
    const second = client.make(plan, { ...fields, date: "2026-01-02" }, noPart);
    const third = client.make(plan, { ...fields, date: "2026-01-03" }, noPart);
    expect(await second).toBeNull();
    begun[0]?.events.onAnswer({ job: 1, kind: "done", answer: { kind: "list", list: EMPTY } });
    expect(await first).toEqual(EMPTY);
    expect(begun[0]?.heard.at(-1)).toMatchObject({ ask: { kind: "make", fields: { date: "2026-01-03" } } });
    begun[0]?.events.onAnswer({ job: 2, kind: "done", answer: { kind: "list", list: EMPTY } });
    expect(await third).toEqual(EMPTY);
  });

  it("says when the maker broke down, and begins another with all it needs", async () => {
    const { client, begun } = desk();
    const first = client.make(plan, fields, noPart);
    begun[0]?.events.onFailure("out of memory");
    await expect(first).rejects.toThrow("out of memory");
    expect(begun[0]?.isEnded).toBe(true);
    void client.make(plan, fields, noPart);
    expect(kinds(begun[1])).toBe("kit project make");
  });

  it("says when there is no maker to be had", async () => {
    const client = createSheetClient(() => {
      throw new Error("no workers here");
    });
    await expect(client.make(plan, fields, noPart)).rejects.toThrow("no workers here");
    await expect(client.svg("a/b")).rejects.toThrow("no workers here");
  });
});

const EMPTY: SheetList = { sets: [], tables: [], unfilled: 0, faults: [] };
