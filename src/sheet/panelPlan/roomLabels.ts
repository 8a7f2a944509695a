// Labels of one room on a plan, or of the outside: widths, section marks, the name of the room.
//
// Widths come first, for they have least choice of place. Where that leaves a small room without its name or a face
// without its mark, these come first and the widths that find no place any more go to the list.

import { isInside } from "../../geom/ring.ts";
import type { Mm } from "../../units.ts";
import { type Box, boxAround } from "../box.ts";
import type { ElevationRoom } from "../elevations/rooms.ts";
import type { SheetFace } from "../faceOrder.ts";
import { textWidth } from "../lettering.ts";
import type { LetterHeight, Mark, Point } from "../mark.ts";
import type { PlanView } from "../planView.ts";
import {
  type FaceOnPlan,
  placeBeside,
  placeOnLeader,
  placeSection,
  shortened,
  type WidthLabel,
  widthLabels,
  withRuns,
} from "./faceLabels.ts";
import { isFree, type PaperTaken } from "./paperTaken.ts";

/** What found no place on the plan: a face with widths or its mark, or a room with its name. */
export interface Unplaced {
  readonly room: string;
  readonly letter: string;
  /** Sheet of its elevation, where the mark of the face found no place. */
  readonly sheet: string | null;
  /** Widths of the whole face, left to right, where one of them found no place. */
  readonly widths: readonly string[] | null;
}

export interface RoomLabels {
  readonly marks: readonly Mark[];
  readonly unplaced: readonly Unplaced[];
  readonly hasName: boolean;
}

export interface RoomOnPlan {
  readonly room: ElevationRoom;
  /** Sheet of the elevation of a face, by the face's id. */
  readonly sheetOf: ReadonlyMap<string, number>;
  readonly depth: Mm;
  /** How an area is written, m². */
  readonly areaText: (squareMetres: number) => string;
  readonly view: PlanView;
  /** Places for the name of the room, the best first. */
  readonly inside: readonly Point[];
  readonly taken: PaperTaken;
}

/** One way to go about the labels of a room. */
interface Way {
  readonly steps: readonly Step[];
  /** Whether section marks are written small from the start. */
  readonly isSmall: boolean;
  /** The face whose section mark is placed first. */
  readonly first: number;
}

type Step = "widths" | "sections" | "name";

/** Tries one way after the other until nothing but widths is missing that could be there; else takes the fullest. */
export function roomLabels(at: RoomOnPlan): RoomLabels {
  const { texts } = at.taken;
  const before = texts.keep();
  const hopeless = hopelessIn(at, before);
  let best: { readonly labels: RoomLabels; readonly lacks: number; readonly put: () => void } | null = null;
  for (const way of waysFor(at.room)) {
    before();
    const labels = attempt(at, way);
    const lacks = lacking(labels);
    if (best === null || lacks < best.lacks) best = { labels, lacks, put: texts.keep() };
    if (lacks < hopeless + MARK_LACKS) break;
  }
  best?.put();
  return best?.labels ?? { marks: [], unplaced: [], hasName: true };
}

/** What has no place even where it stands alone: no way of going about the room can mend that. */
function hopelessIn(at: RoomOnPlan, before: () => void): number {
  let lacks = 0;
  for (const step of ["name", "sections"] as const) {
    for (const face of step === "name" ? [null] : facesOf(at.room)) {
      before();
      const drawn = emptyDrawing();
      if (face === null) placeName(at, drawn);
      else placeSections(at, [face], drawn, true);
      lacks += face === null ? Number(!drawn.hasName) * NAME_LACKS : drawn.noMark.size * MARK_LACKS;
    }
  }
  return lacks;
}

function facesOf({ rings }: ElevationRoom): readonly SheetFace[] {
  return rings.flatMap((ring) => ring.faces);
}

/** A section mark weighs more than all widths of a room, its name more than some marks: the list goes by names. */
const MARK_LACKS = 1000;
const NAME_LACKS = 3 * MARK_LACKS;

function lacking({ hasName, unplaced }: RoomLabels): number {
  const marks = unplaced.filter(({ sheet }) => sheet !== null).length;
  return (
    marks * MARK_LACKS +
    Number(!hasName) * NAME_LACKS +
    unplaced.filter(({ widths }) => widths !== null).length
  );
}

/** Most faces of a room from which the section marks are begun in turn. */
const MOST_TURNS = 4;

function waysFor({ rings }: ElevationRoom): readonly Way[] {
  const faces = rings.reduce((sum, ring) => sum + ring.faces.length, 0);
  const turns = Array.from({ length: Math.min(faces, MOST_TURNS) }, (_, first) => first);
  const orders: readonly (readonly Step[])[] = [
    ["widths", "sections", "name"],
    ["widths", "name", "sections"],
  ];
  const ways = (orders: readonly (readonly Step[])[], isSmall: boolean) =>
    orders.flatMap((steps) => turns.map((first) => ({ steps, isSmall, first })));
  const nameFirst: readonly Step[] = ["name", "sections", "widths"];
  return [...ways(orders, false), ...ways(orders, true), ...ways([nameFirst], true)];
}

interface Drawn {
  readonly marks: Mark[];
  readonly noMark: Set<SheetFace>;
  readonly noWidth: Set<SheetFace>;
  hasName: boolean;
}

function emptyDrawing(): Drawn {
  return { marks: [], noMark: new Set(), noWidth: new Set(), hasName: false };
}

function attempt(at: RoomOnPlan, way: Way): RoomLabels {
  const faces = facesOf(at.room);
  const drawn = emptyDrawing();
  for (const step of way.steps) {
    if (step === "widths") placeWidths(at, faces, drawn);
    else if (step === "name") placeName(at, drawn);
    else placeSections(at, [...faces.slice(way.first), ...faces.slice(0, way.first)], drawn, way.isSmall);
  }
  return {
    marks: drawn.marks,
    hasName: drawn.hasName,
    unplaced: faces
      .filter((face) => drawn.noMark.has(face) || drawn.noWidth.has(face))
      .map((face) => ({
        room: at.room.title,
        letter: face.letter,
        sheet: drawn.noMark.has(face) ? sheetText(at, face) : null,
        widths: drawn.noWidth.has(face) ? widthsOf(face) : null,
      })),
  };
}

function onPlan(at: RoomOnPlan, { face }: SheetFace): FaceOnPlan {
  return { face, depth: at.depth, view: at.view, taken: at.taken };
}

/** All widths that can stand by their blocks, then the others on leaders. */
function placeWidths(at: RoomOnPlan, faces: readonly SheetFace[], drawn: Drawn): void {
  const later: (readonly [SheetFace, WidthLabel])[] = [];
  for (const face of faces) {
    const on = onPlan(at, face);
    for (const label of withRuns(widthLabels(face.face), on)) {
      const marks = placeBeside(label, on);
      if (marks === null) later.push([face, label]);
      else drawn.marks.push(...marks);
    }
  }
  for (const [face, label] of later) {
    const marks = placeOnLeader(label, onPlan(at, face));
    if (marks === null) drawn.noWidth.add(face);
    else drawn.marks.push(...marks);
  }
}

function sheetText(at: RoomOnPlan, { face }: SheetFace): string {
  return `${at.sheetOf.get(face.id) ?? ""}`;
}

function placeSections(at: RoomOnPlan, faces: readonly SheetFace[], drawn: Drawn, isSmall: boolean): void {
  for (const face of faces) {
    const mark = { letter: face.letter, sheet: sheetText(at, face), isSmall };
    const marks = placeSection(mark, onPlan(at, face));
    if (marks === null) drawn.noMark.add(face);
    else drawn.marks.push(...marks);
  }
}

/** Widths of what stands on the floor, corners in brackets, places that stay empty as their problem. */
function widthsOf({ face }: SheetFace): readonly string[] {
  const corners = face.pieces
    .filter((piece) => piece.family === "inside-corner" && piece.z === 0)
    .map(({ x, width }) => ({ x, text: `(${width})` }));
  const others = shortened(widthLabels(face)).map(({ x, width, text, kind }) => ({
    x,
    text: kind === "ring" ? `${width}: ${text}` : text,
  }));
  return [...corners, ...others].sort((a, b) => a.x - b.x).map(({ text }) => text);
}

/** Ways to write the name of a room, the best first. */
const NAME_SIZES: readonly { readonly height: LetterHeight; readonly hasArea: boolean }[] = [
  { height: 5, hasArea: true },
  { height: 3.5, hasArea: true },
  { height: 3.5, hasArea: false },
  { height: 2.5, hasArea: false },
];

/** The name of the room near its middle, its area under it. The outside needs none. */
function placeName(at: RoomOnPlan, drawn: Drawn): void {
  const { parts, rings, title } = at.room;
  const ring = rings[0];
  drawn.hasName = parts.isOutside || ring === undefined;
  if (drawn.hasName || ring === undefined) return;
  const area = parts.area > 0 ? at.areaText(parts.area) : "";
  for (const { height, hasArea } of NAME_SIZES) {
    const second = hasArea && area !== "" ? area : null;
    const width = Math.max(
      textWidth(title, { height, weight: 700 }),
      second === null ? 0 : textWidth(second, { height: 2.5, weight: 400 }),
    );
    const size = { width: width + 0.2, height: height * 1.3 + (second === null ? 0 : 4) + 0.8 };
    const place = placeInside(at.inside, size, at.taken);
    if (place === null) continue;
    at.taken.texts.take(place);
    const x = place.x + place.width / 2;
    const line = { kind: "text", ink: "ink", anchor: "middle" } as const;
    drawn.marks.push({ ...line, at: [x, place.y + 0.4 + height], text: title, height, weight: 700 });
    if (second !== null) {
      drawn.marks.push({
        ...line,
        at: [x, place.y + height * 1.3 + 4],
        text: second,
        height: 2.5,
        weight: 400,
      });
    }
    drawn.hasName = true;
    return;
  }
}

/** The first of the places at which the box is free. */
function placeInside(
  places: readonly Point[],
  size: { readonly width: number; readonly height: number },
  taken: PaperTaken,
): Box | null {
  for (const [x, y] of places) {
    const box = boxAround(x, y, size.width, size.height);
    if (isFree(taken, box)) return box;
  }
  return null;
}

/** Places inside the outline a millimetre apart, the nearest to its middle first. */
export function placesInside(outline: readonly Point[]): readonly Point[] {
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const [left, right, top, foot] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const middle: Point = [(left + right) / 2, (top + foot) / 2];
  const places: { readonly at: Point; readonly far: number }[] = [];
  for (let y = middle[1] - Math.floor(middle[1] - top); y < foot; y++) {
    for (let x = middle[0] - Math.floor(middle[0] - left); x < right; x++) {
      const far = (x - middle[0]) * (x - middle[0]) + (y - middle[1]) * (y - middle[1]);
      if (isInside(outline, [x, y])) places.push({ at: [x, y], far });
    }
  }
  places.sort((a, b) => a.far - b.far || a.at[1] - b.at[1] || a.at[0] - b.at[0]);
  return places.map(({ at }) => at);
}
