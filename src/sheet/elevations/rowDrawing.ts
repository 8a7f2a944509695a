// Draws one packed row: names of the rooms over their faces, each face with its labels, the heights at the left.

import type { Mm } from "../../units.ts";
import type { Box } from "../box.ts";
import { cutToWidth, textWidth, wholeNames } from "../lettering.ts";
import { type Level, levelScale } from "../levelScale.ts";
import type { Mark, Point } from "../mark.ts";
import { isHeadPiece } from "../pieceKind.ts";
import { FINE, GHOST, THIN } from "../pieceMark.ts";
import { placedMark } from "../placeMark.ts";
import { plainText } from "../plainText.ts";
import { type ShowingIn, wallMarks } from "../rowMarks.ts";
import type { PlacedCorner, PlacedRow, PlacedStretch } from "../rowPlace.ts";
import { type FaceBlock, LETTER, type PlacedTag, TAG, tagText, tagWidth } from "./faceBlock.ts";
import { GUTTER, NAME_FOOT, NAME_RULE, type PackedBlock, type PackedRow } from "./packing.ts";

/** The marks of a row on a page with this content. `showing` tells first drawings of a piece from later ones. */
export function packedRowMarks(row: PackedRow, content: Box, showing: ShowingIn): readonly Mark[] {
  const left = content.x + GUTTER;
  const top = content.y + row.y;
  return [
    ...levelScale(levelsOf(row), {
      left,
      floor: top + row.heights.floor,
      head: top + row.heights.wall,
      scale: row.blocks[0]!.block.room.context.scale,
    }),
    ...roomNames(row, left, top),
    ...row.blocks.flatMap(({ block, x }) =>
      blockMarks(block, row, showing).map((mark) => placedMark(mark, left + x, top)),
    ),
  ];
}

/** The name of each room over its faces in this row, with a rule as long as they are. */
function roomNames(row: PackedRow, left: number, top: number): readonly Mark[] {
  const groups: PackedBlock[][] = [];
  for (const packed of row.blocks) {
    const group = groups.at(-1);
    if (group?.[0]?.block.room === packed.block.room) group.push(packed);
    else groups.push([packed]);
  }
  return groups.flatMap((group): readonly Mark[] => {
    const [first, last] = [group[0]!, group.at(-1)!];
    const [from, to] = [left + first.x, left + last.x + last.block.width];
    const { room } = first.block;
    const lettering = textWidth(room.title, { height: 3.5, weight: 700 }) <= to - from ? 3.5 : 2.5;
    const text = cutToWidth(room.title, to - from, { height: lettering, weight: 700 });
    return [
      ...(text === ""
        ? []
        : [
            {
              kind: "text",
              at: [from, top + NAME_FOOT],
              text,
              height: lettering,
              weight: 700,
              ink: "ink",
              anchor: "start",
            } satisfies Mark,
          ]),
      { kind: "line", from: [from, top + NAME_RULE], to: [to, top + NAME_RULE], stroke: FINE },
    ];
  });
}

/** A block in its own coordinates: x from its left edge, y from the upper edge of the row. */
function blockMarks(block: FaceBlock, row: PackedRow, showing: ShowingIn): readonly Mark[] {
  const placed = asRow(block, row);
  const { floor, wall } = row.heights;
  return [
    ...block.tags.flatMap((tag) => stemMarks(tag, block, row)),
    ...wallMarks(placed, 0, block.room.context, showing),
    ...block.tags.flatMap((tag) => (tag.end.kind === "match" ? [matchLine(tag.foot, wall, floor)] : [])),
    ...block.tags.flatMap((tag) => tagMarks(tag, row.heights.letters)),
    ...letterMarks(block, row.heights.letters),
  ];
}

/** The block as a row of a ribbon that holds one stretch, which the marks of the ribbon draw. */
function asRow(block: FaceBlock, { heights }: PackedRow): PlacedRow {
  const at: PlacedStretch = { plan: block.plan, x: block.wallX };
  const corners = block.tags.flatMap(({ end, foot }, index): readonly PlacedCorner[] => {
    if (end.kind !== "corner") return [];
    const isLeft = index === 0 && end === block.ends[0];
    return [
      {
        corner: end.corner,
        x: foot,
        next: isLeft ? at : null,
        previous: isLeft ? null : at,
        isAgain: end.isAgain,
      },
    ];
  });
  const { head, widths, flags } = block;
  return { stretches: [at], corners, letters: [], cornerHeads: [], head, widths, flags, heights };
}

/** From the tag down between the labels to the end of the wall. */
function stemMarks(tag: PlacedTag, block: FaceBlock, { heights }: PackedRow): readonly Mark[] {
  const wallTop = heights.floor - block.plan.height;
  const points: readonly Point[] = [
    [tag.foot, wallTop],
    [tag.foot, heights.wall - 0.3],
    [tag.stem, heights.head + (heights.wall - heights.head > 3 ? heights.labels : 0)],
    [tag.stem, heights.head],
    [tag.x, heights.letters],
  ];
  return [{ kind: "polyline", points, stroke: isGhost(tag) ? { ...GHOST, weight: 0.18 } : THIN }];
}

function isGhost({ end }: PlacedTag): boolean {
  return end.kind === "corner" && end.isAgain && end.corner.turn === "outside";
}

/** Where a long face was broken it goes on: a chain line from over the wall to under the floor. */
function matchLine(x: number, wall: number, floor: number): Mark {
  const stroke = { weight: 0.35, ink: "ink", dash: [5, 1, 0.6, 1] } as const;
  return { kind: "line", from: [x, wall - 1], to: [x, floor + 3], stroke };
}

function tagMarks(tag: PlacedTag, foot: number): readonly Mark[] {
  const text = tagText(tag.end);
  if (text === null) return [];
  const width = tagWidth(tag.end);
  const isSolid = tag.end.kind === "corner" && tag.end.corner.turn === "inside";
  const box = { x: tag.x - width / 2, y: foot - 4.7, width, height: 4.7 };
  return [
    {
      kind: "rect",
      box,
      fill: isSolid ? "ink" : "paper",
      stroke: isGhost(tag) ? { ...GHOST, weight: 0.18 } : THIN,
    },
    { kind: "text", at: [tag.x, foot - 0.6], text, ...TAG, ink: isSolid ? "paper" : "ink", anchor: "middle" },
  ];
}

const PLAIN = { height: 2.5, weight: 400 } as const;

/** The letter of the face; behind it, as far as there is paper, its length and what lies behind it. */
function letterMarks(block: FaceBlock, foot: number): readonly Mark[] {
  const { face, letter } = block.plan.stretch.sheetFace;
  const { x, room } = block.letter;
  const left = x + textWidth(letter, LETTER) / 2 + 1.5;
  const paper = room - 1.5 - 0.8;
  const marks: Mark[] = [
    { kind: "text", at: [x, foot], text: letter, ...LETTER, ink: "ink", anchor: "middle" },
  ];
  const length = `${face.length}`;
  const strong = { height: 2.5, weight: 600 } as const;
  const lengthWidth = textWidth(length, strong);
  if (paper < lengthWidth) return marks;
  marks.push({ kind: "text", at: [left, foot], text: length, ...strong, ink: "ink", anchor: "start" });
  const names = (block.room.context.behind[face.id] ?? []).map(plainText).filter((name) => name !== "");
  const behind = wholeNames(names, paper - lengthWidth - 5.4, PLAIN);
  if (behind !== "") {
    const at = [left + lengthWidth + 1.6, foot] as const;
    const arrow: Mark = { kind: "text", at, text: "→", ...PLAIN, ink: "soft", anchor: "start" };
    marks.push(arrow, { ...arrow, at: [at[0] + 3.8, foot], text: behind });
  }
  return marks;
}

/** Heights above the floor of all that the faces of a row have: tie rows, sills and heads, the pieces at the head. */
function levelsOf(row: PackedRow): readonly Level[] {
  const ties = new Set<Mm>();
  const others = new Set<Mm>();
  for (const { block } of row.blocks) {
    const { face } = block.plan.stretch.sheetFace;
    const { ownTies, otherTies } = block.room.parts;
    for (const tie of [...ownTies, ...otherTies]) {
      if (tie.faces.includes(face.id)) for (const height of tie.heights) ties.add(height);
    }
    others.add(face.height);
    for (const piece of face.pieces) if (isHeadPiece(piece.family)) others.add(piece.z);
    for (const opening of face.openings) others.add(opening.sill).add(opening.head);
  }
  others.delete(0);
  return [...new Set([...ties, ...others])]
    .sort((a, b) => b - a)
    .map((height) => ({ height, isStrong: ties.has(height) }));
}
