// The picture under the drawing: where it lies in the plan, how large, how turned, how pale. Pure.
//
//        v                     plan = at + scale · turn · (u, v)
//        ▲
//        │  picture            `at` is where its lower left corner lies, `scale` counts mm of plan per pixel
//     at ●────────▶ u
//
// It is kept in the project as one record; a file is never trusted: see `readUnderlay`.

import {
  andThen,
  emptyReport,
  failSaying,
  inside,
  number,
  pair,
  text,
  top,
  truth,
} from "../../json/checker.ts";
import type { Issue } from "../../json/issue.ts";
import { object, required } from "../../json/members.ts";
import type { JsonObject } from "../../json/value.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import type { TurnPair } from "../degrees.ts";

/** A place in the picture, pixels from its lower left corner, right and up. */
export type PicturePlace = readonly [u: number, v: number];

export interface Underlay {
  /** Name of the file it came from. */
  readonly name: string;
  /** PNG or JPEG as a data URL: it travels with the project file. */
  readonly image: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  readonly at: Position;
  /** Millimetres of plan per pixel. */
  readonly scale: number;
  readonly turn: TurnPair;
  /** 1 = as it is, less = paler. */
  readonly opacity: number;
  readonly locked: boolean;
}

export type UnderlayAnswer =
  | { readonly status: "none" }
  | { readonly status: "ok"; readonly underlay: Underlay }
  | { readonly status: "invalid"; readonly issues: readonly Issue[] };

/** Longest data URL, characters: nine megabytes of picture. */
export const LONGEST_IMAGE = 12_000_000;
/** Longest side of a picture, px: what a canvas of any browser can hold. */
export const LARGEST_SIDE = 8192;
export const LEAST_OPACITY = 0.1;
const LEAST_SCALE = 0.001;
const GREATEST_SCALE = 100_000;
const UNIT_LENGTH = 1e-6; // how far cosine² + sine² may be from 1

// Only these two: an SVG may hold a script, and nothing else is shown by every browser.
const IMAGE = /^data:image\/(?:png|jpeg);base64,[A-Za-z0-9+/]+={0,2}$/;
const CONTROL = { pattern: /\p{Cc}/u, words: "without control characters" };

// Looking through megabytes takes longer than a frame, and the picture stays the same while it is moved.
let lastSound = "";

const image = andThen(text({ what: "a picture", least: 1, greatest: LONGEST_IMAGE }), (value, place) => {
  if (value !== lastSound && !IMAGE.test(value))
    return failSaying(place, "a PNG or JPEG as a base64 data URL", "something else");
  lastSound = value;
  return value;
});
const side = number({ least: 1, greatest: LARGEST_SIDE, whole: true, unit: "px" });
const coordinate = number({ least: -1e7, greatest: 1e7, unit: "mm" });
const part = number({ least: -1, greatest: 1 });

const turnMembers = object("a turn", { cosine: required(part), sine: required(part) });
const turn = andThen(turnMembers, ({ cosine, sine }, place) => {
  const isTurn = Math.abs(cosine * cosine + sine * sine - 1) <= UNIT_LENGTH;
  return isTurn
    ? { cosine, sine }
    : failSaying(inside(place, "cosine"), "cosine and sine of one angle", "others");
});

const members = object("an underlay", {
  name: required(text({ what: "a name", greatest: 200, not: CONTROL })),
  image: required(image),
  width: required(side),
  height: required(side),
  at: required(pair("a point [x, y]", coordinate, coordinate)),
  scale: required(number({ least: LEAST_SCALE, greatest: GREATEST_SCALE, unit: "mm per pixel" })),
  turn: required(turn),
  opacity: required(number({ least: LEAST_OPACITY, greatest: 1 })),
  locked: required(truth),
});

const remembered = new WeakMap<JsonObject, UnderlayAnswer>();

/** The picture a unit carries. Remembered for each record, which may hold megabytes. */
export function readUnderlay(json: JsonObject | undefined): UnderlayAnswer {
  if (json === undefined) return { status: "none" };
  const known = remembered.get(json);
  if (known !== undefined) return known;
  const report = emptyReport();
  const read = members.read(json, inside(top(report), "underlay"));
  const answer: UnderlayAnswer =
    read === undefined
      ? { status: "invalid", issues: report.issues }
      : { status: "ok", underlay: withoutExtra(read) };
  remembered.set(json, answer);
  return answer;
}

function withoutExtra({ extra: _, ...underlay }: Underlay & { readonly extra?: JsonObject }): Underlay {
  return underlay;
}

/** The record for the project. Reading it gives an equal underlay. */
export function underlayJson(underlay: Underlay): JsonObject {
  const { cosine, sine } = underlay.turn;
  return { ...underlay, at: [...underlay.at], turn: { cosine, sine } };
}

/** Where a place of the picture lies in the plan. */
export function planPlaceOf({ at, scale, turn: { cosine, sine } }: Underlay, [u, v]: PicturePlace): Position {
  return [at[0] + scale * (cosine * u - sine * v), at[1] + scale * (sine * u + cosine * v)];
}

/** Which place of the picture lies at a place in the plan. */
export function picturePlaceOf(
  { at, scale, turn: { cosine, sine } }: Underlay,
  [x, y]: Position,
): PicturePlace {
  const dx = (x - at[0]) / scale;
  const dy = (y - at[1]) / scale;
  return [cosine * dx + sine * dy, cosine * dy - sine * dx];
}

/** Whether a place in the plan lies on the picture. */
export function isOnUnderlay(underlay: Underlay, place: Position): boolean {
  const [u, v] = picturePlaceOf(underlay, place);
  return u >= 0 && u <= underlay.width && v >= 0 && v <= underlay.height;
}

/** A picture just dropped: level, `width` mm wide, its middle at `middle`. */
export function laidUnder(
  picture: Pick<Underlay, "name" | "image" | "width" | "height">,
  { middle, width }: { readonly middle: Position; readonly width: Mm },
): Underlay {
  const scale = width / picture.width;
  const at: Position = [middle[0] - width / 2, middle[1] - (scale * picture.height) / 2];
  return { ...picture, at, scale, turn: { cosine: 1, sine: 0 }, opacity: 0.5, locked: false };
}

/**
 * The picture scaled so that what lies at `from` and at `to` in the plan is `distance` apart. What lies at `from`
 * stays there.
 *
 * @returns null where the two places are one, or the picture would become larger or smaller than any plan
 */
export function calibrated(
  underlay: Underlay,
  { from, to, distance }: { readonly from: Position; readonly to: Position; readonly distance: Mm },
): Underlay | null {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const shown = Math.sqrt(dx * dx + dy * dy);
  if (!(shown > 0) || !(distance > 0)) return null;
  const factor = distance / shown;
  const scale = underlay.scale * factor;
  const { at } = underlay;
  const corner: Position = [from[0] + (at[0] - from[0]) * factor, from[1] + (at[1] - from[1]) * factor];
  const isPossible = scale >= LEAST_SCALE && scale <= GREATEST_SCALE && isInPlan(corner);
  return isPossible ? { ...underlay, scale, at: corner } : null;
}

/** The picture turned to `turn` about its middle. */
export function turnedTo(underlay: Underlay, turn: TurnPair): Underlay {
  const middle: PicturePlace = [underlay.width / 2, underlay.height / 2];
  const stays = planPlaceOf(underlay, middle);
  const turned = { ...underlay, turn };
  const goes = planPlaceOf(turned, middle);
  const { at } = underlay;
  return { ...turned, at: [at[0] + stays[0] - goes[0], at[1] + stays[1] - goes[1]] };
}

/** The picture moved; null where it would leave the plan. */
export function movedBy(underlay: Underlay, dx: Mm, dy: Mm): Underlay | null {
  const at: Position = [underlay.at[0] + dx, underlay.at[1] + dy];
  return isInPlan(at) ? { ...underlay, at } : null;
}

function isInPlan([x, y]: Position): boolean {
  return Math.abs(x) <= 1e7 && Math.abs(y) <= 1e7;
}
