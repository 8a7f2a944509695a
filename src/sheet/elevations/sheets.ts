// The wall elevations: every face of the unit as the person before it sees it, to scale, packed on as few large
// sheets as hold them in the order of the rooms.

import type { FacePiece, UnitFill } from "../../fill/result.ts";
import { framedSheet, unitEntries } from "../framedSheet.ts";
import type { SheetInfo } from "../info.ts";
import type { Sheet } from "../mark.ts";
import { contentBox, type PaperSize } from "../paper.ts";
import type { PlacedStretch } from "../rowPlace.ts";
import { scaleText } from "../scale.ts";
import type { Showing } from "../stretchMarks.ts";
import { faceBlocks } from "./breakFaces.ts";
import { type ElevationNotes, elevationNotes } from "./notes.ts";
import { GUTTER, type PackedPage, packPages, tallestWall } from "./packing.ts";
import { elevationRooms } from "./rooms.ts";
import { packedRowMarks } from "./rowDrawing.ts";
import { ELEVATION_WORDS } from "./words.ts";

export interface Elevations {
  /** Millimetres of building to one of paper. */
  readonly scale: number;
  readonly pages: readonly PackedPage[];
  readonly notes: ElevationNotes;
}

/** Scales of elevations, the largest first: 1:25 where it needs no more sheets than the next. */
const SCALES = [25, 50, 100, 200, 500, 1000, 2000, 5000, 10000] as const;

/** Settles scale and pages of all faces of a unit. Cost grows with the number of pieces. */
export function elevationsOf(unit: UnitFill, info: SheetInfo, paper: PaperSize): Elevations {
  const content = contentBox(paper);
  const tallest = Math.max(0, ...unit.faces.map(({ height }) => height));
  const fitting = SCALES.filter((scale) => tallest / scale <= tallestWall(content.height));
  const packed = (scale: number) => ({
    scale,
    pages: packPages(faceBlocks(elevationRooms(unit, info, scale), content.width - GUTTER), content),
  });
  const [first, second] = fitting;
  const choose = () => {
    if (first === undefined) return packed(Math.ceil(tallest / tallestWall(content.height)));
    if (first !== SCALES[0] || second === undefined) return packed(first);
    const [large, usual] = [packed(first), packed(second)];
    return large.pages.length <= usual.pages.length ? large : usual;
  };
  const chosen = choose();
  return { ...chosen, notes: elevationNotes(unit, chosen.pages, info, paper) };
}

/** How many sheets the elevations take. */
export function elevationCount({ pages, notes }: Elevations): number {
  return pages.length + notes.lists.length;
}

/** The sheets of the elevations, the first of them being sheet `from` of `sheets`. */
export function elevationSheets(
  unit: UnitFill,
  info: SheetInfo,
  given: {
    readonly elevations: Elevations;
    readonly paper: PaperSize;
    readonly from: number;
    readonly sheets: number;
  },
): readonly Sheet[] {
  const { elevations, paper, from, sheets } = given;
  const { pages, notes } = elevations;
  const content = contentBox(paper);
  const words = ELEVATION_WORDS[info.language];
  const showing = showingIn(pages);
  const drawings = [
    ...pages.map((page, index) => ({
      marks: [...page.flatMap((row) => packedRowMarks(row, content, showing)), ...notes.notes[index]!],
      description: descriptionOf(page, info),
      scale: scaleText(elevations.scale),
    })),
    ...notes.lists.map((marks) => ({ marks, description: `${words.problems}.`, scale: "" })),
  ];
  return drawings.map(({ marks, description, scale }, index) => {
    const ending = [`${index + 1}`.padStart(2, "0")];
    const about = unitEntries(info, unit.unit, { kind: "elevations", ending, title: words.title });
    const entries = { ...about, description, paper, scale, sheet: from + index, sheets };
    return framedSheet(info, entries, marks);
  });
}

function descriptionOf(page: PackedPage, info: SheetInfo): string {
  const blocks = page.flatMap((row) => row.blocks.map(({ block }) => block));
  const rooms = new Set(blocks.map(({ room }) => room.title));
  const faces = new Set(blocks.map(({ plan }) => plan.stretch.sheetFace.face));
  return ELEVATION_WORDS[info.language].describes(faces.size, [...rooms].join(", "));
}

/** A piece that shows in several blocks is drawn in the first of them; it looks the same in the others. */
function showingIn(pages: readonly PackedPage[]): (piece: FacePiece, at: PlacedStretch) => Showing {
  const home = new Map<string, unknown>();
  for (const { block } of pages.flat().flatMap(({ blocks }) => blocks)) {
    const { start, end, sheetFace } = block.plan.stretch;
    for (const { piece, x, width } of sheetFace.face.pieces) {
      if (x < end && x + width > start && !home.has(piece)) home.set(piece, block.plan);
    }
  }
  return ({ piece }, at) => (home.get(piece) === at.plan ? "first" : "also");
}
