// Upright rectangles on paper, and who is in whose way.
//
// Millimetres of paper, y downward: `x`, `y` is the upper left corner.

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A box of the given size about a centre. */
export function boxAround(x: number, y: number, width: number, height: number): Box {
  return { x: x - width / 2, y: y - height / 2, width, height };
}

/** The least box round all of some points. */
export function boxRound(points: readonly (readonly [x: number, y: number])[]): Box {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** The box with `by` added on all four sides; a negative `by` takes away. */
export function grown(box: Box, by: number): Box {
  return { x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by };
}

export function moved(box: Box, dx: number, dy: number): Box {
  return { x: box.x + dx, y: box.y + dy, width: box.width, height: box.height };
}

export function centreOf(box: Box): readonly [x: number, y: number] {
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** Slack for sums of fractions of a millimetre that are equal on paper but not in binary. */
const NOISE = 1e-6;

/** Whether two boxes share area. Boxes that only touch do not. */
export function overlaps(a: Box, b: Box): boolean {
  return (
    a.x < b.x + b.width - NOISE &&
    b.x < a.x + a.width - NOISE &&
    a.y < b.y + b.height - NOISE &&
    b.y < a.y + a.height - NOISE
  );
}

/** Whether `inner` lies wholly in `outer`. */
export function contains(outer: Box, inner: Box): boolean {
  return (
    inner.x >= outer.x - NOISE &&
    inner.y >= outer.y - NOISE &&
    inner.x + inner.width <= outer.x + outer.width + NOISE &&
    inner.y + inner.height <= outer.y + outer.height + NOISE
  );
}

/**
 * The place nearest to `wish` where a box of the given size lies in `area` and meets none of `taken`.
 *
 * Tries a grid of `step` about the wish, nearest first, then upper before lower, then left before right; gives null
 * when nothing within `reach` is free. Cost grows with (reach ÷ step)² times the boxes taken.
 */
export function freePlace(
  size: { readonly width: number; readonly height: number },
  wish: readonly [x: number, y: number],
  room: { readonly area: Box; readonly taken: readonly Box[]; readonly reach: number; readonly step: number },
): Box | null {
  for (const [dx, dy] of nearestFirst(Math.floor(room.reach / room.step))) {
    const box = boxAround(wish[0] + dx * room.step, wish[1] + dy * room.step, size.width, size.height);
    if (contains(room.area, box) && !room.taken.some((other) => overlaps(other, box))) return box;
  }
  return null;
}

/** Offsets by the number of steps: the same few reaches are asked for again and again. */
const known = new Map<number, readonly (readonly [number, number])[]>();

function nearestFirst(steps: number): readonly (readonly [number, number])[] {
  const before = known.get(steps);
  if (before !== undefined) return before;
  const offsets: [number, number][] = [];
  for (let dy = -steps; dy <= steps; dy++) for (let dx = -steps; dx <= steps; dx++) offsets.push([dx, dy]);
  const far = ([dx, dy]: readonly [number, number]) => dx * dx + dy * dy;
  offsets.sort((a, b) => far(a) - far(b) || a[1] - b[1] || a[0] - b[0]);
  known.set(steps, offsets);
  return offsets;
}
