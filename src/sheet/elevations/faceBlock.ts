// One face, or a part of a long one, with its corners and labels: the paper it takes across, and where all of it stands.
//
//   DA   A  4500 Hall       AB      tags of the corners, letter of the face
//    │   A8      A9         │       labels over the wall; the stems of the corners run between them
//   ┌──────────────────────┐
//   └──────────────────────┘
//    600  600  [A6] 100             widths, and under them what is too narrow for its name
//
// x runs from the left edge of the block. A block is never narrower than its labels, so that no label of a block ever
// meets one of its neighbour.

import type { SheetCorner } from "../faceOrder.ts";
import { labelWidth, leaderOffset } from "../label.ts";
import { textWidth } from "../lettering.ts";
import type { PlacedRow } from "../rowPlace.ts";
import { gapBefore, gapBehind, LABEL_GAP } from "../rowPlan.ts";
import { spreadOut } from "../spread.ts";
import type { Stretch } from "../stretch.ts";
import { planStretch, type StretchPlan } from "../stretchMarks.ts";
import type { ElevationRoom } from "./rooms.ts";

/** What stands at an end of a block: a corner of the room, the place where a long face was broken, or nothing. */
export type BlockEnd =
  | { readonly kind: "corner"; readonly corner: SheetCorner; readonly isAgain: boolean }
  | { readonly kind: "match"; readonly name: string }
  | { readonly kind: "loose" };

export interface PlacedTag {
  readonly end: BlockEnd;
  /** Middle of the tag. */
  readonly x: number;
  /** Where its stem passes the labels over the wall, and where it meets the wall. */
  readonly stem: number;
  readonly foot: number;
}

export interface FaceBlock {
  readonly room: ElevationRoom;
  readonly plan: StretchPlan;
  /** Of all of it across, mm of paper. */
  readonly width: number;
  /** Left end of the wall. */
  readonly wallX: number;
  readonly ends: readonly [BlockEnd, BlockEnd];
  readonly tags: readonly PlacedTag[];
  readonly letter: { readonly x: number; readonly room: number };
  readonly head: PlacedRow["head"];
  readonly widths: PlacedRow["widths"];
  readonly flags: PlacedRow["flags"];
}

export const TAG = { height: 3.5, weight: 700 } as const;
export const LETTER = { height: 5, weight: 700 } as const;
const TAG_PAD = 0.7;

/** Name in the tag of an end; null where there is none. */
export function tagText(end: BlockEnd): string | null {
  if (end.kind === "loose") return null;
  return end.kind === "corner" ? end.corner.name : end.name;
}

export function tagWidth(end: BlockEnd): number {
  const text = tagText(end);
  return text === null ? 0 : textWidth(text, TAG) + 2 * TAG_PAD;
}

export function faceBlock(
  room: ElevationRoom,
  stretch: Stretch,
  ends: readonly [BlockEnd, BlockEnd],
): FaceBlock {
  const plan = planStretch(stretch, room.context);
  const [before, behind] = [gapBefore(plan), gapBehind(plan)];
  const geometry = before + plan.width + behind;
  const width = Math.max(geometry, labelsWidth(plan, ends));
  const wallX = (width - geometry) / 2 + before;
  const feet: readonly [number, number] = [wallX - before / 2, wallX + plan.width + behind / 2];
  const { stems, head } = placeHead(plan, wallX, { feet, ends, width });
  const { tags, letter } = placeTags(plan, { ends, feet, stems, width });
  return {
    room,
    plan,
    width,
    wallX,
    ends,
    tags,
    letter,
    head,
    widths: plan.labels.tape
      .filter(({ level }) => level === 1)
      .map((label) => ({ label, x: wallX + label.x })),
    flags: placeFlags(plan, wallX, width),
  };
}

/** Paper that the widest line of labels needs. */
function labelsWidth(plan: StretchPlan, ends: readonly BlockEnd[]): number {
  const { labels, stretch } = plan;
  const tags = ends.map(tagWidth).filter((width) => width > 0);
  const letter = textWidth(stretch.sheetFace.letter, LETTER);
  const head = labels.head.map(({ parts }) => labelWidth(parts));
  const flags = labels.tape.filter(({ level }) => level === 2).map(({ parts }) => labelWidth(parts));
  const line = (widths: readonly number[]) => widths.reduce((sum, width) => sum + width + LABEL_GAP, 0);
  return Math.max(line([...tags, letter]), line(head) + 2 * LABEL_GAP * ends.length, line(flags));
}

interface Ends {
  readonly ends: readonly [BlockEnd, BlockEnd];
  readonly feet: readonly [number, number];
  readonly width: number;
}

/** Labels over the wall, and beside them the stems of the two ends. */
function placeHead(plan: StretchPlan, wallX: number, { feet, ends, width }: Ends) {
  const stem = (index: 0 | 1) =>
    ends[index].kind === "loose"
      ? []
      : [{ kind: "stem" as const, index, wish: feet[index], width: 2 * LABEL_GAP }];
  const labels = plan.labels.head.map((label) => ({
    kind: "label" as const,
    label,
    wish: wallX + label.x,
    width: labelWidth(label.parts) + LABEL_GAP,
  }));
  const placed = spreadOut([...stem(0), ...labels, ...stem(1)], -LABEL_GAP, width + LABEL_GAP);
  const stems: [number, number] = [feet[0], feet[1]];
  const head: { label: (typeof labels)[number]["label"]; x: number; wish: number }[] = [];
  for (const [item, x] of placed) {
    if (item.kind === "stem") stems[item.index] = x;
    else head.push({ label: item.label, x, wish: item.wish });
  }
  return { stems, head };
}

/** The tags of the ends and between them the letter of the face, with what paper is left behind it. */
function placeTags(plan: StretchPlan, given: Ends & { readonly stems: readonly [number, number] }) {
  const { ends, feet, stems, width } = given;
  const letterWidth = textWidth(plan.stretch.sheetFace.letter, LETTER);
  const [left, right] = [tagWidth(ends[0]), tagWidth(ends[1])];
  const tag = (index: 0 | 1, wish: number) =>
    ends[index].kind === "loose"
      ? []
      : [{ kind: "tag" as const, index, wish, width: tagWidth(ends[index]) + LABEL_GAP }];
  const items = [
    ...tag(0, Math.max(stems[0], left / 2)),
    {
      kind: "letter" as const,
      wish: stems[0] + left / 2 + 2.4 + letterWidth / 2,
      width: letterWidth + LABEL_GAP,
    },
    ...tag(1, Math.min(stems[1], width - right / 2)),
  ];
  const tags: PlacedTag[] = [];
  let letter = { x: width / 2, room: 0 };
  const placed = spreadOut(items, -LABEL_GAP / 2, width + LABEL_GAP / 2);
  placed.forEach(([item, x], index) => {
    if (item.kind === "tag") {
      tags.push({ end: ends[item.index], x, stem: stems[item.index], foot: feet[item.index] });
      return;
    }
    const next = placed[index + 1];
    const end = next === undefined ? width : next[1] - next[0].width / 2;
    letter = { x, room: end - (x + letterWidth / 2) };
  });
  return { tags, letter };
}

function placeFlags(plan: StretchPlan, wallX: number, width: number): PlacedRow["flags"] {
  const flags = plan.labels.tape
    .filter(({ level }) => level === 2)
    .map((label) => ({
      label,
      foot: wallX + label.x,
      wish: wallX + label.x - leaderOffset(label.parts),
      width: labelWidth(label.parts) + LABEL_GAP,
    }));
  const placed = spreadOut(flags, -LABEL_GAP / 2, width + LABEL_GAP / 2);
  return placed.map(([{ label, foot }, x]) => ({ label, x, wish: foot }));
}
