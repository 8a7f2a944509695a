// Labels that look for their place on paper that is taken in part: tags of props, flags, rings of problems.

import { type Box, boxAround } from "../box.ts";
import { flagMarks, ringLettering, ringMarks, ringRadius } from "../label.ts";
import { textWidth } from "../lettering.ts";
import type { Mark, Point, TextMark } from "../mark.ts";
import type { Occupied } from "../occupied.ts";

const STEP = 0.5;
const FLAG_HEIGHT = 4.6;

/** On the strip beside the circle, like a tag; else wherever there is paper. */
export function propLabel(
  text: string,
  [x, y]: Point,
  { radius, way }: { readonly radius: number; readonly way: Point },
  taken: Occupied,
): readonly Mark[] | null {
  const lettering = { height: 2.5, weight: 400 } as const;
  const width = textWidth(text, lettering);
  const [dx, dy] = [radius + 0.6 + width / 2, radius + 0.6 + lettering.height / 2];
  const onStrip: readonly Point[] = [
    [x + way[0] * dx, y + way[1] * dy],
    [x - way[0] * dx, y - way[1] * dy],
  ];
  const aside: readonly Point[] = [
    [x + dx, y - dy],
    [x - dx, y - dy],
    [x + dx, y + dy],
    [x - dx, y + dy],
  ];
  const free = [...onStrip, ...aside].find((at) =>
    taken.isFree(boxAround(at[0], at[1], width, lettering.height)),
  );
  if (free === undefined) return null;
  const at: Point = [free[0], free[1] + lettering.height / 2];
  return [
    { kind: "rect", box: boxAround(free[0], free[1], width + 0.3, lettering.height + 0.4), fill: "paper" },
    { kind: "text", at, text, ...lettering, ink: "ink", anchor: "middle" },
  ];
}

export function flagLabel(text: string, at: Point, taken: Occupied): readonly Mark[] | null {
  const width = textWidth(text, { height: 3.5, weight: 700 }) + 1.4;
  const box = freeNear(at, { width, height: FLAG_HEIGHT }, 14, taken);
  return box === null ? null : flagMarks(text, box, at);
}

export function ringAt(box: Box, text: string, taken: Occupied): readonly Mark[] | null {
  const radius = ringRadius({ text });
  const place = freeNear(
    [box.x + box.width / 2, box.y + box.height / 2],
    { width: 2 * radius + 0.8, height: 2 * radius + 0.8 },
    16,
    taken,
  );
  if (place === null) return null;
  const [x, y] = [place.x + place.width / 2, place.y + place.height / 2];
  const lettering = ringLettering({ text });
  const mark: TextMark = {
    kind: "text",
    at: [x, y + lettering.height / 2],
    text,
    ...lettering,
    ink: "ink",
    anchor: "middle",
  };
  taken.take(place);
  return [...ringMarks(x, y, radius), mark];
}

/** The free place nearest to the wish; of equal ones the upper, then the left. */
export function freeNear(
  [x, y]: Point,
  size: Pick<Box, "width" | "height">,
  reach: number,
  taken: Occupied,
): Box | null {
  const steps = Math.floor(reach / STEP);
  for (let ring = 0; ring <= steps; ring++) {
    for (const [dx, dy] of square(ring)) {
      const box = boxAround(x + dx * STEP, y + dy * STEP, size.width, size.height);
      if (taken.isFree(box)) return box;
    }
  }
  return null;
}

/** Squares by their ring: the same few are asked for again and again. */
const known = new Map<number, readonly Point[]>();

/** Offsets on the edge of a square, nearest to its middle first. */
function square(ring: number): readonly Point[] {
  const before = known.get(ring);
  if (before !== undefined) return before;
  const offsets: Point[] = ring === 0 ? [[0, 0]] : [];
  for (let k = -ring; ring > 0 && k <= ring; k++) offsets.push([k, -ring], [k, ring]);
  for (let k = -ring + 1; k < ring; k++) offsets.push([-ring, k], [ring, k]);
  const far = ([x, y]: Point) => x * x + y * y;
  offsets.sort((a, b) => far(a) - far(b) || a[1] - b[1] || a[0] - b[0]);
  known.set(ring, offsets);
  return offsets;
}
