// What is written inside the plan: jambs of inner openings, rooms with their diagonals, numbers of points.
//
// Each looks for the nearest free paper, those with the least choice first. A number of a point that finds none is left
// to the list, which has all of them.

import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { type Box, freePlace, grown, overlaps } from "../box.ts";
import { textBox, textWidth } from "../lettering.ts";
import type { Mark, Point, TextMark } from "../mark.ts";
import { controlBoxes } from "./controlMarks.ts";
import type { RoomCheck } from "./diagonals.ts";
import type { Labelling } from "./labelling.ts";
import { numberText } from "./numberText.ts";
import type { OpeningMark } from "./openingMarks.ts";
import { faceBoxes } from "./planMarks.ts";
import type { PlanPlace } from "./planPlace.ts";
import { jambNumbers, sideOf } from "./planRows.ts";
import { roomLabel } from "./roomLabel.ts";
import { openSide } from "./setFace.ts";
import type { SettingOut } from "./settingOut.ts";
import type { StakePoint } from "./stakePoints.ts";
import type { SettingOutWords } from "./words.ts";

const HAIR = { weight: 0.13, ink: "ink" } as const;
const THIN = { weight: 0.18, ink: "ink" } as const;

export interface PlanLabels {
  readonly marks: readonly Mark[];
  /** Rooms in which the diagonals found no place: they are to be listed. */
  readonly unchecked: readonly RoomCheck[];
}

/** Labels of the plan. `taken`: paper that texts already cover. */
export function planLabels(
  layout: SettingOut,
  place: PlanPlace,
  beside: { readonly words: SettingOutWords; readonly clearHeight: Mm; readonly taken: readonly Box[] },
): PlanLabels {
  const labelling: Labelling = {
    layout,
    place,
    area: place.region,
    ...beside,
    taken: [
      ...beside.taken,
      ...layout.faces.flatMap(({ from, to }) => faceBoxes(place.at(from), place.at(to))),
      ...controlBoxes(layout, place),
      ...layout.services.flatMap(({ path }) => pathBoxes(path, place)),
    ],
  };
  const ofKind = (isControl: boolean) =>
    layout.points.filter(({ kind }) => (kind === "control") === isControl);
  const first = [
    ...datumLabel(labelling),
    ...ofKind(true).flatMap((point) => pointLabel(point, labelling)),
    ...layout.openings
      .filter((one) => sideOf(one, layout) === null)
      .flatMap((one) => innerJambs(one, labelling)),
  ];
  const rooms = layout.rooms.map((room) => ({ room, ...roomLabel(room, labelling) }));
  return {
    marks: [
      ...first,
      ...rooms.flatMap(({ marks }) => marks),
      ...ofKind(false).flatMap((point) => pointLabel(point, labelling)),
    ],
    unchecked: rooms.filter(({ isChecked }) => !isChecked).map(({ room }) => room),
  };
}

// What the outer corner reads, from the free paper between the rows that begin at it.
function datumLabel({ layout, place, words, area, taken }: Labelling): readonly Mark[] {
  const [x, y] = place.at(layout.corner);
  const text = `${words.datum} ${layout.corner.map(numberText).join(", ")}`;
  const style = { height: 2.5, weight: 700 } as const;
  const size = { width: textWidth(text, style) + 1, height: style.height + 1.4 };
  const wish: Point = [x - 5 - size.width / 2, y + 11];
  const box = freePlace(size, wish, { area, taken, reach: 10, step: 0.5 });
  if (box === null) return [];
  taken.push(box);
  const foot = box.y + box.height - 0.9;
  return [
    {
      kind: "polyline",
      points: [
        [x - 0.7, y + 0.9],
        [box.x + box.width + 2, foot - 1.2],
        [box.x + box.width, foot - 1.2],
      ],
      stroke: THIN,
    },
    { kind: "text", at: [box.x + 0.5, foot], text, ...style, ink: "ink", anchor: "start" },
  ];
}

function pathBoxes(path: readonly Position[], { at }: PlanPlace): readonly Box[] {
  return path.slice(1).flatMap((to, k) => faceBoxes(at(path[k]!), at(to)));
}

// A line of measure from the jamb into the room with its number along it, on the side of the opening.
function innerJambs(opening: OpeningMark, labelling: Labelling): readonly Mark[] {
  const { axis, near, far } = opening;
  if (axis === null) return [];
  const { place, layout } = labelling;
  const face = layout.faces.find(({ id }) => id === opening.face);
  const across = axis === "x" ? 1 : 0;
  const out = face === undefined ? 1 : openSide(face);
  const sides = [
    { at: near[0][across], out },
    { at: far[0][across], out: -out },
  ];
  const [onNear = 0, onFar = 0] = sides.map((side) => clearBefore(opening, side, labelling));
  // Where the side set first is a corridor its numbers would fill it.
  if (onNear < LEAST_CLEAR && onFar > onNear) sides.reverse();
  for (const side of sides) {
    for (const height of [3.5, 2.5] as const) {
      const made = jambNumbers(opening).map(({ at, open }) => {
        const from = place.at(axis === "x" ? [at, side.at] : [side.at, at]);
        return jambMark(axis, from, { out: side.out, open, reading: at, height });
      });
      const boxes = made.map(({ text }) => grown(textBox(text), 0.2));
      const [one, two] = boxes;
      const isCrowded = one !== undefined && two !== undefined && overlaps(one, two);
      if (isCrowded || boxes.some((box) => labelling.taken.some((other) => overlaps(box, other)))) continue;
      labelling.taken.push(...boxes);
      return made.flatMap(({ line, text }) => [line, text]);
    }
  }
  return [];
}

/** Paper before the jambs of an opening, up to the next face or line of a service. */
const LEAST_CLEAR = 24;

function clearBefore(
  { axis, near }: OpeningMark,
  { at, out }: { readonly at: Mm; readonly out: number },
  { layout, place }: Labelling,
): number {
  const along = axis === "x" ? 0 : 1;
  const across = axis === "x" ? 1 : 0;
  const middle = (near[0][along] + near[1][along]) / 2;
  const found = layout.faces
    .filter((face) => Math.min(face.from[along], face.to[along]) < middle)
    .filter((face) => Math.max(face.from[along], face.to[along]) > middle)
    .map((face) => (face.from[across] - at) * out)
    .filter((clear) => clear > 1);
  return Math.min(...found) / place.scale;
}

function jambMark(
  axis: "x" | "y",
  [x, y]: Point,
  number: {
    readonly out: number;
    readonly open: -1 | 1;
    readonly reading: Mm;
    readonly height: 2.5 | 3.5;
  },
): { readonly line: Mark; readonly text: TextMark } {
  const { out, open, reading, height } = number;
  const text = numberText(reading);
  const far = 2.2 + textWidth(text, { height, weight: 400 });
  const common = { kind: "text", text, height, weight: 400, ink: "ink" } as const;
  if (axis === "x") {
    const baseline = open === 1 ? x + 0.7 + height : x - 0.7;
    return {
      line: { kind: "line", from: [x, y - out * 0.9], to: [x, y - out * far], stroke: HAIR },
      text: {
        ...common,
        at: [baseline, y - out * 1.7],
        anchor: out === 1 ? "start" : "end",
        isUpright: true,
      },
    };
  }
  const baseline = open === 1 ? y - 0.7 : y + 0.7 + height;
  return {
    line: { kind: "line", from: [x + out * 0.9, y], to: [x + out * far, y], stroke: HAIR },
    text: { ...common, at: [x + out * 1.7, baseline], anchor: out === 1 ? "start" : "end" },
  };
}

function pointLabel(point: StakePoint, labelling: Labelling): readonly Mark[] {
  const { place, area, taken } = labelling;
  const [x, y] = place.at(point.at);
  const isControl = point.kind === "control";
  const lettering = isControl
    ? ({ height: 3.5, weight: 600 } as const)
    : ({ height: 2.5, weight: 400 } as const);
  const size = { width: textWidth(point.id, lettering) + 0.8, height: lettering.height + 0.8 };
  const [ox, oy] = isControl ? [1, -1] : point.open;
  const off = isControl ? 4.2 : point.kind === "jamb" ? 2.2 : 4.4;
  const wish: Point = [x + ox * (off + size.width / 4), y - oy * off];
  const box = freePlace(size, wish, { area, taken, reach: isControl ? 8 : 6, step: 0.5 });
  if (box === null) return [];
  taken.push(box);
  const middle: Point = [box.x + box.width / 2, box.y + box.height / 2];
  const { height } = lettering;
  const text: Mark = {
    kind: "text",
    at: [middle[0], middle[1] + height / 2],
    text: point.id,
    ...lettering,
    ink: "ink",
    anchor: "middle",
  };
  return isControl ? [text] : [...leader([x, y], box), text];
}

// From the point to the near edge of its number, where that is far enough away for a line to be seen.
function leader([x, y]: Point, box: Box): readonly Mark[] {
  const near: Point = [
    Math.min(Math.max(x, box.x), box.x + box.width),
    Math.min(Math.max(y, box.y), box.y + box.height),
  ];
  const [dx, dy] = [near[0] - x, near[1] - y];
  const length = Math.sqrt(dx * dx + dy * dy);
  if (length < 2.4) return [];
  const from: Point = [x + (dx * 0.9) / length, y + (dy * 0.9) / length];
  return [{ kind: "line", from, to: near, stroke: HAIR }];
}
