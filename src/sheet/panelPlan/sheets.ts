// The panel plan and the wall elevations of a unit, one set of sheets: the plan first, for its marks say on which
// sheet each face is drawn; at the end what the plan had no paper for.

import type { UnitFill } from "../../fill/result.ts";
import { roomPartsOf } from "../../fill/roomParts.ts";
import { comparePoints } from "../../geom/point.ts";
import { type Box, grown } from "../box.ts";
import { type ElevationRoom, elevationRooms } from "../elevations/rooms.ts";
import { type Elevations, elevationCount, elevationSheets, elevationsOf } from "../elevations/sheets.ts";
import { framedSheet, unitEntries } from "../framedSheet.ts";
import type { SheetInfo } from "../info.ts";
import type { Mark, Point, Sheet } from "../mark.ts";
import { type NoteBlock, notesMarks } from "../notes.ts";
import { besideBox, contentBox, largePaper, type PaperSize } from "../paper.ts";
import { placedMark } from "../placeMark.ts";
import { plainText } from "../plainText.ts";
import {
  boundsOfPlan,
  concreteMarks,
  northMarks,
  type PlanBounds,
  type PlanView,
  planScale,
  planView,
} from "../planView.ts";
import { scaleText } from "../scale.ts";
import { WORDS } from "../words.ts";
import { faceMarks, frameDepth, openingMarks, outsideCornerMarks, tieMarks } from "./blocks.ts";
import { paperTaken } from "./paperTaken.ts";
import { besideMarks, unplacedBlocks } from "./planNotes.ts";
import { placesInside, roomLabels, type Unplaced } from "./roomLabels.ts";
import { PANEL_PLAN_WORDS } from "./words.ts";

/** Paper round the plan for widths and marks of the outside faces, mm. */
const BORDER = 16;

/** The column of what found no place, with the paper beside it. */
const LIST = { width: 58, gap: 6 } as const;
const LIST_COLUMNS = 6;

/** Paper that the north arrow takes over the list. */
const NORTH = 12;

/** All sheets of panel plan and elevations, on the large paper that goes with the rest of the set. */
export function planAndElevations(listed: UnitFill, info: SheetInfo): readonly Sheet[] {
  const unit = inOrder(listed);
  const paper = largePaper(info.paper);
  const elevations = elevationsOf(unit, info, paper);
  const plan = planOf(unit, info, { paper, elevations });
  const sheets = 1 + elevationCount(elevations) + plan.lists.length;
  const finish = (drawing: Drawing, index: number, number: number) =>
    finished(unit, info, { drawing, paper, index, number, sheets });
  return [
    finish(plan, 0, 1),
    ...elevationSheets(unit, info, { elevations, paper, from: 2, sheets }),
    ...plan.lists.map((marks, index) =>
      finish({ marks, scale: "" }, index + 1, sheets - plan.lists.length + index + 1),
    ),
  ];
}

/** Faces and ties in an order of their own, so that equal fills give equal sheets. */
function inOrder(unit: UnitFill): UnitFill {
  const faces = roomPartsOf(unit).flatMap((parts) => parts.faces);
  return {
    ...unit,
    faces: faces.sort((a, b) => comparePoints(a.from, b.from) || comparePoints(a.to, b.to)),
    ties: [...unit.ties].sort((a, b) => comparePoints(a.at, b.at)),
  };
}

interface Drawing {
  readonly marks: readonly Mark[];
  readonly scale: string;
}

interface Plan extends Drawing {
  readonly lists: readonly (readonly Mark[])[];
}

function planOf(
  unit: UnitFill,
  info: SheetInfo,
  on: { readonly paper: PaperSize; readonly elevations: Elevations },
): Plan {
  const content = contentBox(on.paper);
  const beside = besideBox(on.paper);
  const bounds = boundsOfPlan(unit.faces.flatMap(({ from, to }) => [from, to]));
  const scale = planScale(bounds, content, BORDER);
  const { marks, unplaced } = drawnPlan(unit, info, {
    area: content,
    scale,
    bounds,
    elevations: on.elevations,
  });
  const north = northMarks(content.x + content.width - 3, content.y + 4);
  const legend = beside === null ? [] : besideMarks(unit, info, beside);
  const plan = (drawing: readonly Mark[]) => [...drawing, ...north, ...legend];
  const drawn = { marks: plan(marks), scale: scaleText(scale), lists: [] };
  if (unplaced.length === 0) return drawn;
  // What found no place is listed at the right of the plan if it stays as large there, else on a sheet of its own.
  const blocks = unplacedBlocks(unplaced, info, LIST.width);
  const listed = LIST.width + LIST.gap;
  const narrow = { ...content, width: content.width - listed };
  if (planScale(bounds, narrow, BORDER) !== scale) return { ...drawn, lists: listPages(blocks, content) };
  const list = notesMarks(blocks, {
    x: content.x + content.width - LIST.width,
    y: content.y + NORTH,
    height: content.height - NORTH,
  });
  const aside = marks.map((mark) => placedMark(mark, -listed / 2, 0));
  return { ...drawn, marks: plan([...aside, ...list.marks]), lists: listPages(list.rest, content) };
}

function drawnPlan(
  unit: UnitFill,
  info: SheetInfo,
  to: {
    readonly area: Box;
    readonly scale: number;
    readonly bounds: PlanBounds;
    readonly elevations: Elevations;
  },
): { readonly marks: readonly Mark[]; readonly unplaced: readonly Unplaced[] } {
  const view = planView(to.bounds, to.scale, to.area);
  const taken = paperTaken(unit, info, view, labelArea(to.bounds, view));
  const sheetOf = sheetsOfFaces(to.elevations);
  const areaText = WORDS[info.language].header.area;
  const labels = elevationRooms(unit, info, to.scale).map((room) => ({
    room,
    ...roomLabels({
      room,
      sheetOf,
      depth: frameDepth(info),
      areaText,
      view,
      inside: room.parts.isOutside ? [] : placesInside(outlineOf(room, view)),
      taken,
    }),
  }));
  const nameless: readonly Unplaced[] = labels
    .filter(({ hasName }) => !hasName)
    .map(({ room }) => ({ room: room.title, letter: "", sheet: null, widths: null }));
  return {
    marks: [
      ...concreteMarks(unit.faces, view),
      ...openingMarks(unit, info, view),
      ...outsideCornerMarks(unit, info, view),
      ...unit.faces.flatMap((face) => faceMarks(face, info, view)),
      ...tieMarks(unit, info, view),
      ...labels.flatMap(({ marks }) => marks),
    ],
    unplaced: [...labels.flatMap(({ unplaced }) => unplaced), ...nameless],
  };
}

function outlineOf({ rings }: ElevationRoom, view: PlanView): readonly Point[] {
  return (rings[0]?.faces ?? []).map(({ face }) => view.at(face.from));
}

/** The plan with its border: labels keep to it wherever on the sheet it lies. */
function labelArea({ left, right, low, high }: PlanBounds, view: PlanView): Box {
  const [x, y] = view.at([left, high]);
  const [toX, toY] = view.at([right, low]);
  return grown({ x, y, width: toX - x, height: toY - y }, BORDER);
}

/** Sheet of the elevation of each face, the plan being sheet 1; the first for a face that was broken. */
function sheetsOfFaces({ pages }: Elevations): ReadonlyMap<string, number> {
  const sheets = new Map<string, number>();
  pages.forEach((page, index) => {
    for (const { block } of page.flatMap(({ blocks }) => blocks)) {
      const { id } = block.plan.stretch.sheetFace.face;
      if (!sheets.has(id)) sheets.set(id, index + 2);
    }
  });
  return sheets;
}

function listPages(blocks: readonly NoteBlock[], content: Box): readonly (readonly Mark[])[] {
  const pages: (readonly Mark[])[] = [];
  let rest = blocks;
  while (rest.length > 0) {
    const marks: Mark[] = [];
    for (let column = 0; column < LIST_COLUMNS && rest.length > 0; column++) {
      const x = content.x + column * (LIST.width + LIST.gap);
      if (x + LIST.width > content.x + content.width) break;
      const noted = notesMarks(rest, { x, y: content.y, height: content.height });
      marks.push(...noted.marks);
      rest = noted.rest;
    }
    pages.push(marks);
  }
  return pages;
}

function finished(
  unit: UnitFill,
  info: SheetInfo,
  made: {
    readonly drawing: Drawing;
    readonly paper: PaperSize;
    readonly index: number;
    readonly number: number;
    readonly sheets: number;
  },
): Sheet {
  const { drawing, paper, index, number, sheets } = made;
  const words = PANEL_PLAN_WORDS[info.language];
  const ending = index === 0 ? [] : [`p${index + 1}`];
  const description = words.describes(plainText(info.unitName), unit.ties.length, unit.faces.length);
  const about = unitEntries(info, unit.unit, { kind: "panel-plan", ending, title: words.title });
  const entries = { ...about, description, paper, scale: drawing.scale, sheet: number, sheets };
  return framedSheet(info, entries, drawing.marks);
}
