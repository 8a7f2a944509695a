// Texts and rules of the lists: one line of text where it stands, and a text wrapped under itself.

import { cutToWidth, type Lettering, textWidth, wrapped } from "../lettering.ts";
import type { Ink, Mark, TextMark } from "../mark.ts";

export const SMALL: Lettering = { height: 2.5, weight: 400 };
export const SMALL_STRONG: Lettering = { height: 2.5, weight: 600 };
export const PLAIN: Lettering = { height: 3.5, weight: 400 };
export const STRONG: Lettering = { height: 3.5, weight: 600 };
export const LARGE: Lettering = { height: 5, weight: 700 };

/** Distance of baselines as a multiple of the height of the letters. */
const LEADING = 1.6;

interface Standing {
  readonly x: number;
  /** Baseline. */
  readonly y: number;
  readonly anchor?: TextMark["anchor"];
  readonly ink?: Ink;
  /** Paper there is, mm; what is longer is cut. */
  readonly room?: number;
}

/** One line; nothing where it is empty or no letter of it fits. */
export function textLine(text: string, lettering: Lettering, standing: Standing): readonly Mark[] {
  const { x, y, anchor = "start", ink = "ink", room } = standing;
  const shown = room === undefined ? text : cutToWidth(text, room, lettering);
  return shown === "" ? [] : [{ kind: "text", at: [x, y], text: shown, ...lettering, ink, anchor }];
}

/** A figure that ends at `x`: never cut, but written smaller where there is less paper than it takes. */
export function numberMark(
  text: string,
  at: { readonly x: number; readonly y: number; readonly room?: number; readonly isStrong?: boolean },
): readonly Mark[] {
  const [large, small] = at.isStrong === true ? [STRONG, SMALL_STRONG] : [PLAIN, SMALL];
  const isTight = at.room !== undefined && textWidth(text, large) > at.room;
  return textLine(text, isTight ? small : large, { x: at.x, y: at.y, anchor: "end" });
}

/** Paper that a figure in strong letters takes with the gap before it. */
export function numberRoom(text: string): number {
  return textWidth(text, STRONG) + 1.7;
}

/** Lines under each other from `top`, no wider than `width`, and the height they take. */
export function textBlock(
  text: string,
  lettering: Lettering,
  at: { readonly x: number; readonly top: number; readonly width: number; readonly ink?: Ink },
): { readonly marks: readonly Mark[]; readonly height: number } {
  const lines = wrapped(text, at.width, lettering);
  const pitch = lettering.height * LEADING;
  const marks = lines.flatMap((line, index) =>
    textLine(line, lettering, {
      x: at.x,
      y: at.top + lettering.height + index * pitch,
      ...(at.ink === undefined ? {} : { ink: at.ink }),
    }),
  );
  return { marks, height: lines.length * pitch };
}

export function levelRule(x: number, y: number, width: number, weight: 0.13 | 0.35 | 0.7): Mark {
  const ink = weight === 0.13 ? "faint" : "ink";
  return { kind: "line", from: [x, y], to: [x + width, y], stroke: { weight, ink } };
}
