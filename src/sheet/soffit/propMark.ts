// How a prop looks from above: a circle with a cross.

import type { Mark, Point } from "../mark.ts";
import { FINE, OUTLINE } from "../pieceMark.ts";

/** Around `centre`; the first mark carries the id. */
export function propMarks([x, y]: Point, radius: number, piece?: string): readonly Mark[] {
  const reach = radius * 0.7;
  const circle: Mark = { kind: "circle", centre: [x, y], radius, fill: "paper", stroke: OUTLINE };
  return [
    piece === undefined ? circle : { ...circle, piece },
    { kind: "line", from: [x - reach, y - reach], to: [x + reach, y + reach], stroke: FINE },
    { kind: "line", from: [x - reach, y + reach], to: [x + reach, y - reach], stroke: FINE },
  ];
}
