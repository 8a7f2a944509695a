// A text as a QR code of black rectangles, one for each run of dark modules. The one place that knows the package.

import { encode } from "uqr";
import type { Box } from "./box.ts";
import type { Mark } from "./mark.ts";

/** Dark modules, row by row, without the quiet zone. @see ISO/IEC 18004 */
function modules(text: string): readonly (readonly boolean[])[] {
  // Level M restores about 15 % of a code: sheets get wet and folded.
  return encode(text, { ecc: "M", boostEcc: false, border: 0 }).data;
}

/** Light modules that a reader needs on all sides of a code. */
export const QUIET = 4;

/**
 * The code as large as the box allows. The paper around it must stay free for {@link QUIET} modules.
 *
 * @param text - plain ASCII: readers guess at the encoding of anything else
 */
export function qrMarks(text: string, box: Box): readonly Mark[] {
  const rows = modules(text);
  const module = Math.min(box.width, box.height) / rows.length;
  return rows.flatMap((row, line) =>
    runs(row).map(([from, to]): Mark => {
      const place = { x: box.x + from * module, y: box.y + line * module };
      return { kind: "rect", box: { ...place, width: (to - from) * module, height: module }, fill: "ink" };
    }),
  );
}

/** Where dark modules begin and end. */
function runs(row: readonly boolean[]): readonly (readonly [from: number, to: number])[] {
  const found: [number, number][] = [];
  row.forEach((isDark, index) => {
    const last = found.at(-1);
    if (!isDark) return;
    if (last !== undefined && last[1] === index) last[1] = index + 1;
    else found.push([index, index + 1]);
  });
  return found;
}
