// The room sheet: one room, one page where it fits, everything its assembler needs and nothing else.
//
//   ┌──────────────────────────────────────┐
//   │ Kitchen   Unit A      Start AB … CD   │   header: the sentence to remember
//   │ ┌─────────┬─────────┬───────┬──────┐ │   ribbon: the faces unfolded from the start corner, left to right
//   │ └─────────┴─────────┴───────┴──────┘ │
//   │ key plan │ problems, notes │ list     │   the list is the legend
//   │ title block                           │
//   └──────────────────────────────────────┘
//
// On the back the soffit and the order of striking. What one page cannot hold goes on: first the rows of the ribbon, then
// the list; notes go on on the back.

import type { FacePiece, UnitFill } from "../fill/result.ts";
import { type RoomParts, roomPartsOf } from "../fill/roomParts.ts";
import { type BackPage, backPages } from "./backPages.ts";
import { listMarks } from "./countList.ts";
import { type CountRow, countRows, wallRows } from "./countRows.ts";
import { type SheetRing, sheetRings } from "./faceOrder.ts";
import { framedSheet } from "./framedSheet.ts";
import { headerMarks } from "./header.ts";
import { isAllMirrored, type SheetInfo } from "./info.ts";
import { keyPlanMarks } from "./keyPlan.ts";
import type { Mark, Sheet } from "./mark.ts";
import { type NoteBlock, noteBlocks, notesMarks } from "./notes.ts";
import { LOWER_LEAST, type RoomPage, roomPage } from "./page.ts";
import { OUTLINE } from "./pieceMark.ts";
import { filePart, plainText } from "./plainText.ts";
import { ribbonContext } from "./ribbonContext.ts";
import { problemsOf } from "./roomProblems.ts";
import { rowMarks } from "./rowMarks.ts";
import { type PlacedRow, type PlacedStretch, placeRow } from "./rowPlace.ts";
import { breakRows } from "./rowPlan.ts";
import { scaleText } from "./scale.ts";
import { propNumbers } from "./soffit/bands.ts";
import type { RibbonContext } from "./stretch.ts";
import type { Showing } from "./stretchMarks.ts";
import { WORDS } from "./words.ts";

/** The pages of one room, before they know how many sheets the unit has. */
interface RoomPages {
  readonly parts: RoomParts;
  readonly title: string;
  readonly rings: readonly SheetRing[];
  readonly context: RibbonContext;
  readonly pages: readonly BackPage[];
  readonly pieces: number;
  readonly problems: number;
}

/**
 * The sheets of a unit: its rooms in the order of the fill, then the outside of the building. A room has one sheet,
 * or more when one page cannot hold it. Every face of the unit is on one of them, and every piece on a face is drawn
 * once. The result depends on the arguments only; cost grows with the number of pieces.
 */
export function roomSheets(unit: UnitFill, info: SheetInfo): readonly Sheet[] {
  const all = roomPartsOf(unit);
  const rooms = all.map((parts) => layoutRoom(unit, parts, { all, info }));
  const sheets = rooms.reduce((sum, room) => sum + room.pages.length, 0);
  let number = 0;
  return rooms.flatMap((room, index) =>
    room.pages.map((drawn, page) =>
      finished(room, drawn, { info, unit, index, page, number: ++number, sheets }),
    ),
  );
}

function layoutRoom(
  unit: UnitFill,
  parts: RoomParts,
  given: { readonly all: readonly RoomParts[]; readonly info: SheetInfo },
): RoomPages {
  const { all, info } = given;
  const words = WORDS[info.language];
  const rings = sheetRings(parts.faces, info);
  const context = ribbonContext(unit, parts, rings, info);
  const problems = problemsOf(parts, all, unit);
  const rows = countRows(parts, info);
  const props = propNumbers(unit.soffits);
  const page = roomPage(info.paper);
  const notes = noteBlocks(rings, problems, context, page.notes.width);
  const ribbon = placedRows(rings, context);
  const pages = ribbonPages(ribbon, context, page);
  const rest = lowerPart(pages, { rings, notes, rows: wallRows(parts, info), info, page });
  const scale = scaleText(context.scale);
  return {
    parts,
    title: parts.isOutside ? words.outside : plainText(parts.name) || words.unnamed,
    rings,
    context,
    pages: [
      ...pages.map(({ marks }) => ({ marks, scale })),
      ...backPages({ parts, rings, context, faces: unit.faces, props, rest }),
    ],
    pieces: rows
      .filter(({ family, isOwn }) => isOwn && family !== "tie")
      .reduce((sum, row) => sum + row.quantity, 0),
    problems: problems.length,
  };
}

interface Page {
  readonly marks: Mark[];
  /** Lower edge of what is on it, mm. */
  end: number;
}

function placedRows(rings: readonly SheetRing[], context: RibbonContext): readonly PlacedRow[] {
  const shown = new Set<string>();
  return breakRows(rings, context).map((plan) => {
    const row = placeRow(plan, shown, context.span);
    for (const { corner } of row.corners) shown.add(corner.name);
    return row;
  });
}

function ribbonPages(rows: readonly PlacedRow[], context: RibbonContext, { top, bottom }: RoomPage): Page[] {
  const showing = showingIn(rows);
  const pages: Page[] = [{ marks: [], end: top }];
  for (const row of rows) {
    let page = pages.at(-1)!;
    if (page.marks.length > 0 && page.end + row.heights.whole > bottom) {
      page = { marks: [], end: top };
      pages.push(page);
    }
    page.marks.push(...rowMarks(row, page.end, context, showing));
    page.end += row.heights.whole + 0.6;
  }
  return pages;
}

/** A piece that shows in several stretches is drawn in the first of them, and on in the next one beside it. */
function showingIn(rows: readonly PlacedRow[]): (piece: FacePiece, at: PlacedStretch) => Showing {
  const first = new Map<string, PlacedStretch>();
  const beside = new Map<PlacedStretch, PlacedStretch>();
  for (const row of rows) {
    for (const { previous, next } of row.corners) if (previous && next) beside.set(previous, next);
    for (const at of row.stretches) {
      const { start, end, sheetFace } = at.plan.stretch;
      for (const { piece, x, width } of sheetFace.face.pieces) {
        if (x < end && x + width > start && !first.has(piece)) first.set(piece, at);
      }
    }
  }
  return ({ piece }, at) => {
    const home = first.get(piece)!;
    if (home === at) return "first";
    return beside.get(home) === at ? "also" : "elsewhere";
  };
}

/** Key plan, notes and list under the ribbon, or on pages of their own; gives back the notes they have no paper for. */
function lowerPart(
  pages: Page[],
  parts: {
    readonly rings: readonly SheetRing[];
    readonly notes: readonly NoteBlock[];
    readonly rows: readonly CountRow[];
    readonly info: SheetInfo;
    readonly page: RoomPage;
  },
): readonly NoteBlock[] {
  const { left, right, top, bottom, keyPlan, notes: noteColumn, list } = parts.page;
  let { notes, rows } = parts;
  for (let isFirst = true; isFirst || rows.length > 0; isFirst = false) {
    let page = pages.at(-1)!;
    if (!isFirst || bottom - page.end < LOWER_LEAST) {
      page = { marks: [], end: top };
      pages.push(page);
    }
    const y = page.end + 2.2;
    const height = bottom - y;
    if (page.end > top) {
      page.marks.push({
        kind: "line",
        from: [left, page.end + 1],
        to: [right, page.end + 1],
        stroke: OUTLINE,
      });
    }
    if (isFirst) {
      const area = { ...keyPlan, y, height: Math.min(height, 80) };
      page.marks.push(...keyPlanMarks(parts.rings, area, parts.info));
    }
    const noted = notesMarks(notes, { x: noteColumn.x, y, height });
    const listed = listMarks(rows, { ...list, y, height }, parts.info.language);
    page.marks.push(...noted.marks, ...listed.marks);
    page.end = bottom;
    notes = noted.rest;
    rows = listed.rest;
  }
  return notes;
}

interface Place {
  readonly info: SheetInfo;
  readonly unit: UnitFill;
  readonly index: number;
  readonly page: number;
  readonly number: number;
  readonly sheets: number;
}

function finished(room: RoomPages, { marks, scale }: BackPage, place: Place): Sheet {
  const { info, unit, index, page, number, sheets } = place;
  const { parts, rings, pages, pieces, title } = room;
  const name = [
    filePart(unit.unit) || "unit",
    `${index + 1}`.padStart(2, "0"),
    filePart(title),
    ...(pages.length > 1 ? [`p${page + 1}`] : []),
  ].filter((part) => part !== "");
  const entries = { name: title, isOutside: parts.isOutside, area: parts.area, pieces, ring: rings[0] };
  const shown = [...headerMarks(info, { ...entries, page: page + 1, pages: pages.length }), ...marks];
  const about = {
    name: name.join("-"),
    title: WORDS[info.language].roomSheet(title, isAllMirrored(info)),
    description: description(room, info),
    paper: info.paper,
    scale,
    sheet: number,
    sheets,
  };
  return { ...framedSheet(info, about, shown), room: title };
}

function description(room: RoomPages, info: SheetInfo): string {
  const words = WORDS[info.language].description;
  const faces = room.rings.flatMap(({ faces }) =>
    faces.map(({ letter, face }) => `${letter} ${face.length}`),
  );
  const corners = room.rings[0]?.corners.flatMap((corner) => corner ?? []) ?? [];
  const start = corners.find(({ role }) => role === "start");
  const close = corners.find(({ role }) => role === "close");
  return [
    words.room(room.title, plainText(info.unitName), room.pieces, faces.length),
    words.faces(faces.join(", ")),
    ...(start && close ? [words.corners(start.name, close.name)] : []),
    ...(room.problems > 0 ? [words.problems(room.problems)] : []),
  ].join(" ");
}
