// Cuts every face of the unit into blocks that fit the paper: one for most faces, more for one longer than the sheet.
//
// A long face is cut where no panel and no opening is cut with it; both parts carry the same match mark.

import type { SheetRing } from "../faceOrder.ts";
import { cutAt, cutsIn, type Stretch } from "../stretch.ts";
import { type BlockEnd, type FaceBlock, faceBlock } from "./faceBlock.ts";
import type { ElevationRoom } from "./rooms.ts";

/** The blocks of all rooms, no block wider than `widest` mm of paper as far as its labels allow. */
export function faceBlocks(rooms: readonly ElevationRoom[], widest: number): readonly FaceBlock[] {
  let matches = 0;
  const nextMatch = () => `m${++matches}`;
  return rooms.flatMap((room) =>
    room.rings.flatMap((ring) =>
      inLetterOrder(ring).flatMap((index) => blocksOf(room, ring, index, { widest, nextMatch })),
    ),
  );
}

/** A to the last: a ring is listed from its start corner, an elevation is looked up by its letter. */
function inLetterOrder({ faces }: SheetRing): readonly number[] {
  const letters = faces.map(({ letter }, index) => ({ letter, index }));
  return letters
    .sort((a, b) => a.letter.length - b.letter.length || (a.letter < b.letter ? -1 : 1))
    .map(({ index }) => index);
}

function blocksOf(
  room: ElevationRoom,
  ring: SheetRing,
  index: number,
  by: { readonly widest: number; readonly nextMatch: () => string },
): readonly FaceBlock[] {
  const sheetFace = ring.faces[index]!;
  const left = ring.corners[index] ?? null;
  const right = ring.corners[(index + 1) % ring.corners.length] ?? null;
  const blocks: FaceBlock[] = [];
  let rest: Stretch = { sheetFace, start: 0, end: sheetFace.face.length, left, right };
  let start: BlockEnd = left === null ? { kind: "loose" } : { kind: "corner", corner: left, isAgain: false };
  const last: BlockEnd =
    right === null ? { kind: "loose" } : { kind: "corner", corner: right, isAgain: true };
  for (;;) {
    const whole = faceBlock(room, rest, [start, last]);
    const cut = whole.width <= by.widest ? null : longestCut(room, rest, start, by.widest);
    if (cut === null) return [...blocks, whole];
    const match: BlockEnd = { kind: "match", name: by.nextMatch() };
    const [here, behind] = cutAt(rest, cut);
    blocks.push(faceBlock(room, here, [start, match]));
    start = match;
    rest = behind;
  }
}

/** Widest name a match mark may have, for the measuring of a part before it has one. */
const ANY_MATCH: BlockEnd = { kind: "match", name: "m999" };

/** The farthest place at which the beginning of the stretch fits; a joint if there is one in reach. Null: none. */
function longestCut(room: ElevationRoom, stretch: Stretch, start: BlockEnd, widest: number): number | null {
  const fits = (x: number) => faceBlock(room, cutAt(stretch, x)[0], [start, ANY_MATCH]).width <= widest;
  const cuts = cutsIn(stretch);
  // What fits, fits shorter too: the last fitting joint is found by halving.
  let [low, high] = [0, cuts.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (fits(cuts[middle]!)) low = middle + 1;
    else high = middle;
  }
  if (low > 0) return cuts[low - 1]!;
  // No joint in reach: the paper decides, and halves until the labels fit as well.
  let length = Math.min(
    Math.floor(widest * room.context.scale),
    Math.ceil((stretch.end - stretch.start) / 2),
  );
  while (length > room.context.scale && !fits(stretch.start + length)) length = Math.floor(length / 2);
  return length > room.context.scale ? stretch.start + length : null;
}
