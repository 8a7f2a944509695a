// The setting-out sheet of a unit: the plan on the first page at the largest scale that fits, the lists beside it and behind.

import type { UnitFill } from "../../fill/result.ts";
import type { Unit } from "../../plan/project.ts";
import { type Frame, frameOf } from "../frame.ts";
import { framedSheet } from "../framedSheet.ts";
import type { SheetInfo } from "../info.ts";
import type { Mark, Sheet } from "../mark.ts";
import { largePaper, type PaperSize } from "../paper.ts";
import { filePart, plainText } from "../plainText.ts";
import { type Block, columnsIn, flow } from "./block.ts";
import { controlMarks, textBoxes } from "./controlMarks.ts";
import {
  cautionBlock,
  checkBlock,
  headingBlock,
  leftOutBlock,
  marksBlock,
  obliqueBlock,
  toleranceBlock,
} from "./notes.ts";
import { type PlanLabels, planLabels } from "./planLabels.ts";
import { planMarks } from "./planMarks.ts";
import { type PlanPlace, planPlace } from "./planPlace.ts";
import { planRows, sideOf } from "./planRows.ts";
import { type SettingOut, settingOutOf } from "./settingOut.ts";
import { openingTable, pointTable } from "./tables.ts";
import { SETTING_OUT_WORDS, type SettingOutWords } from "./words.ts";

export interface SettingOutSource {
  readonly fill: UnitFill;
  /** As drawn, also where the fill is mirrored. */
  readonly unit: Unit;
  readonly isMirrored: boolean;
  readonly info: SheetInfo;
}

/** Least breadth of a column beside the plan, where paper is dear, and on the pages behind it. */
const LEAST_COLUMN = { beside: 69, behind: 84 } as const;

/** The pages of one unit in one hand; none where there is no concrete. `paper`: the large one of the set if not given. */
export function settingOutSheets(source: SettingOutSource, paper?: PaperSize): readonly Sheet[] {
  const { fill, unit, isMirrored, info } = source;
  const layout = settingOutOf(fill, unit, isMirrored);
  if (layout.faces.length === 0) return [];
  const words = SETTING_OUT_WORDS[info.language];
  const size = paper ?? largePaper(info.paper);
  const blank = frameOf(info, { paper: size, title: "", scale: "1:1", sheet: 1, sheets: 1 });
  const inner = new Set(layout.openings.map((one) => sideOf(one, layout)));
  const place = planPlace(layout, blank, (side) => inner.has(side));
  const pages = pagesOf(layout, info, { place, frame: blank, words });
  const unitName = plainText(info.unitName) || plainText(unit.id);
  const description = words.description(unitName, layout.points.length, layout.pins.length);
  return pages.map((marks, page): Sheet => {
    const name = [
      filePart(fill.unit) || "unit",
      "setting-out",
      ...(pages.length > 1 ? [`p${page + 1}`] : []),
    ];
    const entries = {
      name: name.join("-"),
      title: words.title(unitName, isMirrored),
      description,
      paper: size,
    };
    const scale = page === 0 ? `1:${place.scale}` : "";
    return framedSheet(info, { ...entries, scale, sheet: page + 1, sheets: pages.length }, marks);
  });
}

interface Making {
  readonly place: PlanPlace;
  readonly frame: Frame;
  readonly words: SettingOutWords;
}

function pagesOf(layout: SettingOut, info: SheetInfo, making: Making): readonly (readonly Mark[])[] {
  const { place, frame, words } = making;
  const cautions = cautionsBeside(making);
  const plan = drawing(layout, info, making);
  const blocks: readonly (Block | null)[] = [
    headingBlock(layout, info, words),
    checkBlock(layout, plan.unchecked, words),
    marksBlock(layout, words),
    toleranceBlock(info, words),
    leftOutBlock(layout, words),
    obliqueBlock(layout, words),
    cautions === null ? cautionBlock(words) : null,
    pointTable(layout, words),
    openingTable(layout, words),
  ];
  const pages = flow(
    blocks.filter((block) => block !== null),
    (page) =>
      page > 0
        ? columnsIn(frame.content, LEAST_COLUMN.behind)
        : place.side === null
          ? []
          : columnsIn(place.side, LEAST_COLUMN.beside),
  );
  return pages.map((texts, page) => (page === 0 ? [...plan.marks, ...texts, ...(cautions ?? [])] : texts));
}

function drawing(layout: SettingOut, info: SheetInfo, { place, words }: Making): PlanLabels {
  const fixed = [...planRows(layout, place), ...controlMarks(layout, place)];
  const labels = planLabels(layout, place, {
    words,
    clearHeight: info.storey.clearHeight,
    taken: textBoxes(fixed),
  });
  return { ...labels, marks: [...planMarks(layout, place), ...fixed, ...labels.marks] };
}

// On the left of the title block, where the plan leaves that free and all of them fit.
function cautionsBeside({ place, frame, words }: Making): readonly Mark[] | null {
  const { beside } = frame;
  const block = cautionBlock(words);
  if (beside === null || place.isDeep || block.kind !== "whole") return null;
  const made = block.make(beside.width);
  return made.height > beside.height ? null : made.marks(beside.x, beside.y);
}
