// Control lines on the plan: long dash and dot from a bubble outside the rows to just past the concrete, their crossings ringed.

import type { Box } from "../box.ts";
import { cutToWidth, textBox, textWidth } from "../lettering.ts";
import type { Mark, Point, Stroke, TextMark } from "../mark.ts";
import { plainText } from "../plainText.ts";
import { spread } from "../spread.ts";
import { clipped } from "./clip.ts";
import type { Control } from "./controls.ts";
import { numberText } from "./numberText.ts";
import { BUBBLE, type PlanPlace } from "./planPlace.ts";
import type { SettingOut } from "./settingOut.ts";

export const CONTROL_LINE: Stroke = { weight: 0.35, ink: "ink", dash: [5, 1.2, 0.6, 1.2] };
const OUTLINE: Stroke = { weight: 0.35, ink: "ink" };
const READING = { height: 3.5, weight: 700 } as const;
/** Past the concrete on the far side, mm of paper. */
const PAST = 4;

export function controlMarks(layout: SettingOut, place: PlanPlace): readonly Mark[] {
  const upright = layout.controls.filter(({ axis }) => axis === "y");
  const level = layout.controls.filter(({ axis }) => axis === "x");
  const aslant = layout.controls.filter(({ axis }) => axis === null);
  return [
    ...uprightMarks(upright, place),
    ...levelMarks(level, place),
    ...aslant.flatMap((control) => aslantMarks(control, place)),
    ...layout.points
      .filter(({ kind }) => kind === "control")
      .map(({ at }) => place.at(at))
      .filter((at) => isWithin(at, place.region))
      .flatMap(crossMarks),
  ];
}

/** Boxes of the lines within the concrete, for texts to keep off. */
export function controlBoxes(layout: SettingOut, place: PlanPlace): readonly Box[] {
  const { concrete } = place;
  return layout.controls.flatMap(({ axis, from }): readonly Box[] => {
    const [x, y] = place.at(from);
    if (axis === "y") return [{ x: x - 0.4, y: concrete.y, width: 0.8, height: concrete.height }];
    return axis === "x" ? [{ x: concrete.x, y: y - 0.4, width: concrete.width, height: 0.8 }] : [];
  });
}

function uprightMarks(lines: readonly Control[], place: PlanPlace): readonly Mark[] {
  const { concrete, rows, region } = place;
  const sorted = [...lines].sort((a, b) => a.from[0] - b.from[0]);
  const foot = concrete.y + concrete.height + rows.bottom.end + 2;
  const readings = sorted.map(({ from }) => numberText(from[0]));
  const widths = readings.map((text) => 2 * BUBBLE + 1.4 + textWidth(text, READING) + 1.5);
  const places = spread(
    sorted.map(({ from }, k) => ({ wish: place.at(from)[0] - BUBBLE + widths[k]! / 2, width: widths[k]! })),
    region.x,
    region.x + region.width,
  );
  return sorted.flatMap(({ id, from }, k): readonly Mark[] => {
    const x = place.at(from)[0];
    const middle = places?.[k];
    if (middle === undefined || !isWithin([x, concrete.y], region)) return [];
    const at: Point = [middle - widths[k]! / 2 + BUBBLE, foot + BUBBLE];
    return [
      ...bentLine([x, concrete.y - PAST], [x, foot - 2], [at[0], foot]),
      ...bubble(id, at),
      text([at[0] + BUBBLE + 1.4, at[1] + 1.75], readings[k]!, "start"),
    ];
  });
}

function levelMarks(lines: readonly Control[], place: PlanPlace): readonly Mark[] {
  const { concrete, rows, region } = place;
  const sorted = [...lines].sort((a, b) => b.from[1] - a.from[1]);
  const right = concrete.x - rows.left.end - 2;
  const height = 2 * BUBBLE + 5.6;
  const places = spread(
    sorted.map(({ from }) => ({ wish: place.at(from)[1] - 2.8, width: height })),
    region.y,
    region.y + region.height,
  );
  return sorted.flatMap(({ id, from }, k): readonly Mark[] => {
    const y = place.at(from)[1];
    const middle = places?.[k];
    if (middle === undefined || !isWithin([concrete.x, y], region)) return [];
    const at: Point = [right - BUBBLE, middle + 2.8];
    return [
      ...bentLine([concrete.x + concrete.width + PAST, y], [right + 2, y], [right, at[1]]),
      ...bubble(id, at),
      text([right, at[1] - BUBBLE - 1.2], numberText(from[1]), "end"),
    ];
  });
}

// From beyond the concrete to the bubble, bent only where bubbles had to give way to one another.
function bentLine(from: Point, bend: Point, to: Point): readonly Mark[] {
  const isStraight = Math.abs(bend[0] - to[0]) < 0.05 || Math.abs(bend[1] - to[1]) < 0.05;
  return [
    isStraight
      ? { kind: "line", from, to, stroke: CONTROL_LINE }
      : { kind: "polyline", points: [from, bend, to], stroke: CONTROL_LINE },
  ];
}

function aslantMarks({ from, to }: Control, place: PlanPlace): readonly Mark[] {
  const { concrete } = place;
  const area = {
    x: concrete.x - 5,
    y: concrete.y - 5,
    width: concrete.width + 10,
    height: concrete.height + 10,
  };
  const part = clipped(place.at(from), place.at(to), area);
  if (part === null) return [];
  return [{ kind: "line", from: part[0], to: part[1], stroke: CONTROL_LINE }];
}

export function crossMarks([x, y]: Point): readonly Mark[] {
  const arm = 2.2;
  return [
    { kind: "circle", centre: [x, y], radius: 1.7, fill: "paper", stroke: OUTLINE },
    { kind: "line", from: [x - arm, y], to: [x + arm, y], stroke: { weight: 0.18, ink: "ink" } },
    { kind: "line", from: [x, y - arm], to: [x, y + arm], stroke: { weight: 0.18, ink: "ink" } },
  ];
}

function bubble(id: string, centre: Point): readonly Mark[] {
  const [x, y] = centre;
  const name = plainText(id);
  const large = { height: 3.5, weight: 600 } as const;
  const small = { height: 2.5, weight: 600 } as const;
  const room = 2 * BUBBLE - 1.6;
  const lettering = textWidth(name, large) <= room ? large : small;
  const shown = cutToWidth(name, room, lettering);
  const circle: Mark = { kind: "circle", centre, radius: BUBBLE, fill: "paper", stroke: OUTLINE };
  if (shown === "") return [circle];
  return [
    circle,
    {
      kind: "text",
      at: [x, y + lettering.height / 2],
      text: shown,
      ...lettering,
      ink: "ink",
      anchor: "middle",
    },
  ];
}

function text(at: Point, reading: string, anchor: TextMark["anchor"]): TextMark {
  return { kind: "text", at, text: reading, ...READING, ink: "ink", anchor };
}

function isWithin([x, y]: Point, { x: left, y: top, width, height }: Box): boolean {
  return x >= left && x <= left + width && y >= top && y <= top + height;
}

/** The texts among some marks, as the paper they cover. */
export function textBoxes(marks: readonly Mark[]): readonly Box[] {
  return marks.flatMap((mark) => (mark.kind === "text" ? [textBox(mark)] : []));
}
