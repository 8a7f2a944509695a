// The calculation sheets of one entry of a fill, for another engineer to follow by hand.
//
//   figures ─ at a glance, inputs ─ each kind's worst check written out ─ tables of all the others ─ cautions
//
// Two columns for what is written out, the full width for tables; the first caution stands at the foot of every page.

import { type ProjectChecks, unreadFaults } from "../../assess/checkProject.ts";
import type { CheckedEntry } from "../../assess/entry.ts";
import { CAUTIONS } from "../../check/cautions.ts";
import type { UnitFill } from "../../fill/result.ts";
import type { Kit } from "../../kit/kit.ts";
import type { Storey } from "../../plan/project.ts";
import type { Box } from "../box.ts";
import { checkText } from "../checkWords/checkText.ts";
import { isAllMirrored, type SheetInfo } from "../info.ts";
import { flowed, type Section } from "../lists/flow.ts";
import { bodyBox, columnsOf, figureStrip, listSheets } from "../lists/listPage.ts";
import { levelRule, SMALL, textBlock } from "../lists/listText.ts";
import { LIST_WORDS } from "../lists/words.ts";
import type { Mark, Sheet } from "../mark.ts";
import { plainText } from "../plainText.ts";
import { propNumbers } from "../soffit/bands.ts";
import { type Calculation, checksOf } from "./calculation.ts";
import { envelopeOf } from "./entryPressure.ts";
import { rowSections } from "./rows.ts";
import { shoringTable } from "./shoring.ts";
import { strikingTable } from "./striking.ts";
import { bulletStrip, section, wordsStrip } from "./strips.ts";
import { headline } from "./summary.ts";
import { tieModel } from "./tieModel.ts";
import { stripTable, tieRegister } from "./tieTables.ts";
import { toleranceSections } from "./tolerances.ts";
import { CALC_WORDS } from "./words.ts";
import { writtenSections } from "./writtenSections.ts";

export interface CalculationSource {
  /** As drawn, whatever hands it is poured in. */
  readonly fill: UnitFill;
  /** As the ids of its faces begin. */
  readonly name: string;
  readonly storey: Storey;
  readonly kit: Kit;
  /** As drawn: what no fill lists. */
  readonly plan: CheckedEntry["plan"];
  readonly info: SheetInfo;
  readonly checks: ProjectChecks;
}

const GAP = 7;
const FOOT_GAP = 1.6;

/** The pages of one entry; none where there is nothing to check. */
export function calculationSheets(source: CalculationSource): readonly Sheet[] {
  const { fill, info, checks } = source;
  const words = CALC_WORDS[info.language];
  const body = (page: number, taken: number) => pageBody(info, page, taken);
  const description = words.description(plainText(info.unitName));
  const sheets = (pages: readonly (readonly Mark[])[]) =>
    listSheets(fill, info, LIST_WORDS[info.language], {
      name: "calculations",
      title: words.title,
      description,
      pages: pages.map((marks) => [...marks, ...footMarks(info)]),
    });
  if (checks.status === "unread") return sheets(unreadPages(unreadFaults(checks.issues), info));
  const calculation = calculationOf(source, checks, columnWidth(info));
  if (calculation.checks.length === 0) return [];
  const strip = figureStrip(headline(calculation), info);
  const columns = flowed(writtenSections(calculation), {
    boxes: (page) => columnsOf(body(page, strip.height), 2, GAP),
  });
  const full = body(1, 0).width;
  const tables = pagesOf(tableSections(calculation, full), columns.length, (page) => [body(page, 0)]);
  const narrow = columnsOf(body(1, 0), 2, GAP)[0]!.width;
  const model = calculation.ties;
  const lists = pagesOf(
    [
      ...(model === null ? [] : tieRegister(calculation, model, narrow)),
      ...rowSections(calculation, elsewhere(model !== null), narrow),
      ...toleranceSections(calculation, narrow),
      ...grantedSections(calculation, narrow),
    ],
    columns.length + tables.length,
    (page) => columnsOf(body(page, 0), 2, GAP),
  );
  return sheets(
    [...columns, ...tables, ...lists].map((page, index) =>
      index === 0 ? [...strip.marks, ...page()] : page(),
    ),
  );
}

type LaidPages = ReturnType<typeof flowed>;

function pagesOf(
  sections: readonly Section[],
  before: number,
  boxes: (page: number) => readonly Box[],
): LaidPages {
  return sections.length === 0 ? [] : flowed(sections, { boxes: (page) => boxes(page + before) });
}

function calculationOf(
  { fill, name, plan, storey, kit, info }: CalculationSource,
  { document }: Extract<ProjectChecks, { status: "checked" }>,
  width: number,
): Calculation {
  const entry: CheckedEntry = {
    name,
    fill,
    plan,
    storey,
    kit,
    loads: document.loads,
    concrete: document.concrete,
  };
  const envelope = envelopeOf(entry);
  return {
    entry,
    envelope,
    ties: tieModel(entry, envelope),
    props: propNumbers(fill.soffits),
    document,
    checks: checksOf(document, name),
    info,
    language: info.language,
    words: CALC_WORDS[info.language],
    continued: LIST_WORDS[info.language].continued,
    width,
  };
}

function columnWidth(info: SheetInfo): number {
  return columnsOf(pageBody(info, 1, 0), 2, GAP)[0]!.width;
}

function pageBody(info: SheetInfo, page: number, taken: number): Box {
  const body = bodyBox(info, page, taken);
  return { ...body, height: body.height - footHeight(info) };
}

function footText(info: SheetInfo): string {
  const places = isAllMirrored(info) ? ` ${CALC_WORDS[info.language].placesAsDrawn}` : "";
  return checkText(CAUTIONS[0]!, info.language) + places;
}

function footHeight(info: SheetInfo): number {
  const { width } = bodyBox(info, 1, 0);
  return textBlock(footText(info), SMALL, { x: 0, top: 0, width }).height + FOOT_GAP;
}

/** What stands on every page: that this is an aid and no design. */
function footMarks(info: SheetInfo): readonly Mark[] {
  const body = bodyBox(info, 1, 0);
  const top = body.y + body.height - footHeight(info);
  const text = textBlock(footText(info), SMALL, { x: body.x, top: top + FOOT_GAP - 0.4, width: body.width });
  return [levelRule(body.x, top + 0.4, body.width, 0.35), ...text.marks];
}

/** Tables that take the full width. */
function tableSections(calculation: Calculation, width: number): readonly Section[] {
  const model = calculation.ties;
  return [
    ...(model === null ? [] : stripTable(calculation, model, width)),
    ...strikingTable(calculation, width),
    ...shoringTable(calculation, width),
  ];
}

/** Kinds whose checks stand in tables of their own. */
function elsewhere(hasTies: boolean): readonly string[] {
  return ["lift", ...(hasTies ? ["tie-load", "tie-left-out"] : [])];
}

/** What the checks take for granted, and what goes with every result. */
function grantedSections(calculation: Calculation, width: number): readonly Section[] {
  const { document, words, language, continued } = calculation;
  const bullets = (texts: readonly string[]) =>
    texts.map((text) => bulletStrip(checkText(text, language), width));
  return [
    section(words.assumptions, bullets(document.assumptions), { continued, isWhole: false }),
    section(words.cautions, bullets(document.cautions), { continued, isWhole: false }),
  ];
}

function unreadPages(faults: readonly string[], info: SheetInfo): readonly (readonly Mark[])[] {
  const words = CALC_WORDS[info.language];
  const { width } = pageBody(info, 0, 0);
  const rows = [
    wordsStrip(words.unread, width),
    ...faults.map((fault) => bulletStrip(plainText(fault), width)),
  ];
  const sections = [
    section(words.notMade, rows, { continued: LIST_WORDS[info.language].continued, isWhole: false }),
  ];
  return flowed(sections, { boxes: (page) => [pageBody(info, page, 0)] }).map((page) => page());
}
