// What must hold on every sheet, asked of its marks alone.

import { type Box, grown, overlaps } from "../../src/sheet/box.ts";
import { textBox } from "../../src/sheet/lettering.ts";
import type { Mark, Sheet } from "../../src/sheet/mark.ts";

/** The paper a mark may cover, half its line included. */
export function markBounds(mark: Mark): Box {
  const weight = "stroke" in mark ? (mark.stroke?.weight ?? 0) : 0;
  return grown(inkless(mark), weight / 2);
}

function inkless(mark: Mark): Box {
  switch (mark.kind) {
    case "rect":
    case "hatch":
      return mark.box;
    case "circle": {
      const [x, y] = mark.centre;
      return { x: x - mark.radius, y: y - mark.radius, width: 2 * mark.radius, height: 2 * mark.radius };
    }
    case "text":
      return textBox(mark);
    default: {
      const points = mark.kind === "line" ? [mark.from, mark.to] : mark.points;
      const xs = points.map(([x]) => x);
      const ys = points.map(([, y]) => y);
      const [x, y] = [Math.min(...xs), Math.min(...ys)];
      return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
    }
  }
}

/** Marks that leave the paper, or come nearer to its edge than a printer can print. */
export function outsidePaper(sheet: Sheet, margin: number): readonly Mark[] {
  return sheet.marks.filter((mark) => {
    const box = markBounds(mark);
    const isKnown = [box.x, box.y, box.width, box.height].every(Number.isFinite);
    const isIn =
      box.x >= margin &&
      box.y >= margin &&
      box.x + box.width <= sheet.width - margin &&
      box.y + box.height <= sheet.height - margin;
    return !isKnown || !isIn;
  });
}

/** Pairs of texts that cover each other, as their words. */
export function overlappingTexts(sheet: Sheet): readonly string[] {
  const texts = sheet.marks.filter((mark) => mark.kind === "text");
  const boxes = texts.map(textBox);
  return texts.flatMap((text, index) =>
    texts
      .slice(index + 1)
      .flatMap((other, offset) =>
        overlaps(boxes[index]!, boxes[index + 1 + offset]!) ? [`${text.text} | ${other.text}`] : [],
      ),
  );
}

/** How often the marks of some sheets claim each piece, most often first. */
export function timesDrawn(sheets: readonly Sheet[]): ReadonlyMap<string, number> {
  const times = new Map<string, number>();
  for (const { marks } of sheets) {
    for (const { piece } of marks) if (piece !== undefined) times.set(piece, (times.get(piece) ?? 0) + 1);
  }
  return times;
}

/** What an SVG says beside the tags and entities that its writer makes: nothing in it may look like one. */
export function besideMarkup(svg: string): string {
  return svg
    .replace(/<\/?(svg|title|desc|rect|path|circle|g|text)( [a-zA-Z-]+="[^"<>]*")*\/?>/g, "")
    .replace(/&(amp|lt|gt|quot|#39);/g, "");
}
