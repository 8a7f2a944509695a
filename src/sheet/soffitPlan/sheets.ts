// The soffit and shoring plan of a unit: all its soffits on one plan, props numbered; beside it or behind it the table of
// props, what stays, what is made to measure, and the cautions.

import type { UnitFill } from "../../fill/result.ts";
import { roomPartsOf } from "../../fill/roomParts.ts";
import type { Kit } from "../../kit/kit.ts";
import type { Position, Project, Unit } from "../../plan/project.ts";
import { type Box, boxRound, grown } from "../box.ts";
import { sheetRings } from "../faceOrder.ts";
import { framedSheet, unitEntries } from "../framedSheet.ts";
import type { SheetInfo } from "../info.ts";
import { cutToWidth, textWidth } from "../lettering.ts";
import type { LetterHeight, Mark, Sheet } from "../mark.ts";
import { besideBox, contentBox, largePaper } from "../paper.ts";
import { plainText } from "../plainText.ts";
import { boundsOfPlan, concreteMarks, northMarks, type PlanView, planScale, planView } from "../planView.ts";
import { scaleText } from "../scale.ts";
import { type Block, COLUMN_GAP, type Column, columnsIn, flow, noteBlock } from "../settingOut/block.ts";
import { readingOf } from "../settingOut/settingOut.ts";
import { bandsOf, propNumbers } from "../soffit/bands.ts";
import { freeNear } from "../soffit/placeLabel.ts";
import { type SoffitPaper, soffitLabels, soffitPaper } from "../soffit/soffitLabels.ts";
import { type SoffitDrawing, soffitMarks } from "../soffit/soffitMarks.ts";
import { unplacedText } from "../soffit/unplaced.ts";
import { madeBlock, openBlock, staysBlock } from "./lists.ts";
import { propTable } from "./propTable.ts";
import { SOFFIT_PLAN_WORDS, type SoffitPlanWords } from "./words.ts";

export interface SoffitPlanSource {
  readonly project: Project;
  readonly kit: Kit;
  readonly unit: Unit;
  readonly fill: UnitFill;
  readonly isMirrored: boolean;
  readonly info: SheetInfo;
}

const BORDER = 8;
/** Least breadth of a column of words and tables. */
const COLUMN = 130;
/** Paper the north arrow takes at the head of the column beside the plan. */
const NORTH = 12;

/** The pages of one unit in one hand; none where no soffit is formed. */
export function soffitPlanSheets(source: SoffitPlanSource): readonly Sheet[] {
  const { fill, info } = source;
  if (fill.soffits.every(({ pieces, unfilled }) => pieces.length + unfilled.length === 0)) return [];
  const words = SOFFIT_PLAN_WORDS[info.language];
  const paper = largePaper(info.paper);
  const content = contentBox(paper);
  const outline = fill.soffits.flatMap((soffit) => soffit.outline);
  const bounds = boundsOfPlan([...fill.faces.flatMap(({ from, to }) => [from, to]), ...outline]);
  const whole = planScale(bounds, content, BORDER);
  const narrow: Box = { ...content, width: content.width - COLUMN - COLUMN_GAP };
  // A column beside the plan where that costs it no scale.
  const isBeside = planScale(bounds, narrow, BORDER) === whole;
  const area = isBeside ? narrow : content;
  const plan = drawnPlan(source, planView(bounds, whole, area), area);
  const blocks = blocksOf(source, plan, words);
  const side: Column = {
    x: content.x + content.width - COLUMN,
    y: content.y + NORTH,
    width: COLUMN,
    height: content.height - NORTH,
  };
  const pages = flow(blocks, (page) => (page > 0 ? columnsIn(content, COLUMN) : isBeside ? [side] : []));
  return pages.map((texts, index): Sheet => {
    const marks = index === 0 ? [...plan.marks, ...legendMarks(source, words), ...texts] : texts;
    return finished(source, marks, {
      index,
      pages: pages.length,
      scale: index === 0 ? scaleText(whole) : "",
    });
  });
}

interface DrawnPlan {
  readonly marks: readonly Mark[];
  /** By room: "Hall: E5 300 × 600"; first what the brackets mean, where there are any. */
  readonly unplaced: readonly string[];
}

function drawnPlan({ fill, info }: SoffitPlanSource, view: PlanView, area: Box): DrawnPlan {
  const drawings = roomPartsOf(fill).flatMap((parts): readonly SoffitDrawing[] => {
    const bands = bandsOf(parts.soffits, sheetRings(parts.faces, info));
    return parts.soffits.map((soffit, index) => ({
      soffit,
      bands: bands[index] ?? [],
      view,
      info,
      faces: fill.faces,
      claims: new Set<string>(),
    }));
  });
  const paper = soffitPaper(drawings, area);
  const props = propNumbers(fill.soffits);
  // Names of rooms before sizes: a size can be listed, a room must be found.
  const names = drawings.map((drawing) => nameMarks(drawing, paper));
  const labels = drawings.map((drawing) => soffitLabels(drawing, { style: "size", props, paper }));
  const isNameless = labels.some(({ unplaced }) => unplaced.some(({ place }) => place !== null));
  const { inBrackets } = SOFFIT_PLAN_WORDS[info.language];
  return {
    marks: [
      ...concreteMarks(fill.faces, view),
      ...drawings.flatMap(soffitMarks),
      ...labels.flatMap(({ marks }) => marks),
      ...names.flatMap((name) => name ?? []),
    ],
    unplaced: [
      ...(isNameless ? [inBrackets] : []),
      ...drawings.flatMap(({ soffit }, index) => {
        const { unplaced } = labels[index]!;
        return unplaced.length > 0
          ? [`${plainText(soffit.room)}: ${unplacedText(unplaced, info.language)}`]
          : [];
      }),
    ],
  };
}

/** A tag with the name of the room over the connectors at its upper edge, where no panel has its label. */
function nameMarks({ soffit, view }: SoffitDrawing, paper: SoffitPaper): readonly Mark[] | null {
  const box = boxRound(soffit.outline.map(view.at));
  const name = plainText(soffit.room);
  if (name === "" || soffit.outline.length < 3) return null;
  for (const height of [3.5, 2.5] as const satisfies readonly LetterHeight[]) {
    const lettering = { height, weight: 700 } as const;
    const text = cutToWidth(name, box.width - 3, lettering);
    if (text === "" || (text !== name && height > 2.5)) continue;
    const size = { width: textWidth(text, lettering) + 2, height: height * 1.3 + 0.8 };
    const place = freeNear([box.x + box.width / 2, box.y + size.height / 2], size, 25, paper.texts);
    if (place === null) continue;
    for (const grid of [paper.texts, paper.pieces]) grid.take(grown(place, 0.3));
    const at = [place.x + place.width / 2, place.y + 0.5 + height] as const;
    return [
      { kind: "rect", box: place, fill: "paper", stroke: { weight: 0.25, ink: "ink" } },
      { kind: "text", at, text, ...lettering, ink: "ink", anchor: "middle" },
    ];
  }
  return null;
}

function blocksOf(source: SoffitPlanSource, plan: DrawnPlan, words: SoffitPlanWords): readonly Block[] {
  const { fill, unit, isMirrored, info } = source;
  const props = propNumbers(fill.soffits);
  const reading: (place: Position) => Position = readingOf(fill, unit, isMirrored);
  const blocks: readonly (Block | null)[] = [
    staysBlock(fill, props, words),
    openBlock(fill, info.language, words),
    propTable({ ...source, reading }, props, words),
    madeBlock(fill, info.language, words),
    plan.unplaced.length > 0 ? noteBlock(words.notWritten, plan.unplaced) : null,
    noteBlock(words.cautions, words.cautionList),
    noteBlock(words.taken, [words.datum, ...words.assumptions]),
  ];
  return blocks.filter((block) => block !== null);
}

/** The legend on the left of the title block, the north arrow in the upper right corner. */
function legendMarks({ info }: SoffitPlanSource, words: SoffitPlanWords): readonly Mark[] {
  const paper = largePaper(info.paper);
  const content = contentBox(paper);
  const beside = besideBox(paper);
  const north = northMarks(content.x + content.width - 3, content.y + 4);
  const block = noteBlock(words.marks, [words.legend]);
  if (beside === null || block.kind !== "whole") return north;
  return [...north, ...block.make(beside.width).marks(beside.x, beside.y)];
}

function finished(
  { fill, info }: SoffitPlanSource,
  marks: readonly Mark[],
  page: { readonly index: number; readonly pages: number; readonly scale: string },
): Sheet {
  const words = SOFFIT_PLAN_WORDS[info.language];
  const { index, pages, scale } = page;
  const ending = pages > 1 ? [`p${index + 1}`] : [];
  const props = fill.soffits.reduce((sum, soffit) => sum + soffit.props.length, 0);
  const entries = {
    ...unitEntries(info, fill.unit, { kind: "soffit-plan", ending, title: words.title }),
    description: words.describes(plainText(info.unitName), fill.soffits.length, props),
    paper: largePaper(info.paper),
    scale,
    sheet: index + 1,
    sheets: pages,
  };
  return framedSheet(info, entries, marks);
}
