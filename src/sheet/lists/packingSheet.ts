// The packing list: every bundle with its number, what is in it and for which rooms, and boxes to tick out and in.
//
//   ▐12▌ Wall panels 2250          20   584.1 kg      A bundle's number is its place in the order of need; the lorry
//        Kitchen: 12, Hall: 8                           is loaded from the highest number down.
//   ▭ 600 × 2250 W600x2250         19   □ □

import type { Place } from "../../fill/placedPieces.ts";
import type { UnitFill } from "../../fill/result.ts";
import type { Box } from "../box.ts";
import type { SheetInfo } from "../info.ts";
import { textWidth } from "../lettering.ts";
import type { Mark, Sheet } from "../mark.ts";
import { OUTLINE } from "../pieceMark.ts";
import { plainText } from "../plainText.ts";
import { type Boxes, BUNDLE_MASS, type Bundle } from "./bundle.ts";
import { packingOf, STACK_LAYERS } from "./bundles.ts";
import { figure, measure } from "./figures.ts";
import { fewestPages, flowed, type Section, type Strip } from "./flow.ts";
import { isNamedLarge, itemMarks, ROWS, TICK } from "./itemMarks.ts";
import { isCountedApart } from "./listItems.ts";
import { bodyBox, columnsOf, figureStrip, listSheets } from "./listPage.ts";
import {
  LARGE,
  levelRule,
  numberMark,
  numberRoom,
  SMALL,
  SMALL_STRONG,
  STRONG,
  textBlock,
  textLine,
} from "./listText.ts";
import type { ListWords } from "./listWords.ts";
import { LIST_WORDS } from "./words.ts";

const COLUMNS = 3;
const COLUMN_GAP = 5;
const LABELS = 4;
/** Left edges of the two boxes and right end of the number, from the right edge of a column. */
const BOXES = [10.6, 4.4] as const;
const NUMBER_END = 12.6;
/** Number and title of a bundle, and the pitch of the lines of its rooms. */
const TITLE = 8.8;
const LINE = 4;
/** Lines that the rooms of a bundle may take. */
const MOST_LINES = 4;

interface Drawn {
  readonly info: SheetInfo;
  readonly words: ListWords;
  readonly places: readonly Place[];
  readonly columnWidth: number;
  /** Height of a row. */
  readonly row: number;
}

/** The packing list of a unit on as many pages as it takes. */
export function packingSheets(unit: UnitFill, info: SheetInfo): readonly Sheet[] {
  const words = LIST_WORDS[info.language];
  const { places, bundles } = packingOf(unit, info);
  const whole = (value: number) => figure(value, 0, info.language);
  const sum = (some: readonly Bundle[]) => whole(some.reduce((all, { quantity }) => all + quantity, 0));
  const pieces = sum(bundles.filter(({ family }) => !isCountedApart(family)));
  const mass = whole(bundles.reduce((sum, bundle) => sum + bundle.mass, 0));
  const heaviest = bundles.reduce((most, bundle) => Math.max(most, bundle.mass), 0);
  const strip = figureStrip(
    [
      { value: whole(bundles.length), label: words.bundles },
      { value: pieces, label: words.pieces },
      { value: sum(bundles.filter(({ family }) => isCountedApart(family))), label: words.smallParts },
      { value: mass, label: words.kilograms },
      { value: whole(heaviest), label: words.heaviest },
    ],
    info,
  );
  const order = orderMarks(bundles.length, info, words, strip.height);
  const boxes = (page: number) =>
    columnsOf(bodyBox(info, page, strip.height + order.height), COLUMNS, COLUMN_GAP).map((box) => ({
      ...box,
      y: box.y + LABELS,
      height: box.height - LABELS,
    }));
  const columnWidth = boxes(0)[0]!.width;
  // Bundles are torn apart only where that saves a page that lower rows do not.
  const ways = [true, false].flatMap((isWhole) => ROWS.map((row) => ({ isWhole, row })));
  const pages = fewestPages(ways, ({ isWhole, row }) => {
    const drawn = { info, words, places, columnWidth, row };
    const sections = bundles.map((bundle) => ({ ...bundleSection(bundle, drawn), isWhole }));
    return flowed(sections, { boxes, head: (box) => tickLabels(box, words) });
  }).map((marks, page) => (page === 0 ? [...strip.marks, ...order.marks, ...marks] : marks));
  const name = plainText(info.unitName);
  const description = words.packingDescription(name, bundles.length, pieces, mass);
  return listSheets(unit, info, words, { name: "packing", title: words.packing, description, pages });
}

/** The one sentence to remember, and under it the rules of bundles and lifting. */
function orderMarks(
  bundles: number,
  info: SheetInfo,
  words: ListWords,
  taken: number,
): { readonly marks: readonly Mark[]; readonly height: number } {
  const body = bodyBox(info, 0, taken);
  const stack = info.frameDepth === null ? "" : figure(info.frameDepth * STACK_LAYERS, 0, info.language);
  const rule = words.bundleRule(figure(BUNDLE_MASS, 0, info.language), STACK_LAYERS, stack);
  const at = { x: body.x, width: body.width };
  const order = textBlock(words.loadOrder(bundles), STRONG, { ...at, top: body.y });
  const small = textBlock(`${rule} ${words.lifting}`, SMALL, { ...at, top: body.y + order.height + 0.4 });
  return { marks: [...order.marks, ...small.marks], height: order.height + small.height + 2 };
}

function tickLabels(box: Box, words: ListWords): readonly Mark[] {
  const right = box.x + box.width;
  // Over boxes 6 apart the words of some languages are wider than that: the first one ends before the second.
  const end = right - Math.max(BOXES[1] + 1.8, textWidth(words.back, SMALL) + 1.8);
  return [
    ...textLine(words.out, SMALL, { x: end, y: box.y - 1, anchor: "end", ink: "soft" }),
    ...textLine(words.back, SMALL, { x: right, y: box.y - 1, anchor: "end", ink: "soft" }),
  ];
}

function bundleSection(bundle: Bundle, drawn: Drawn): Section {
  const rooms = targetLines(targetsOf(bundle, drawn), drawn.columnWidth);
  const over = bundle.isOver ? drawn.words.overLimit(figure(BUNDLE_MASS, 0, drawn.info.language)) : "";
  const lines = [...(over === "" ? [] : [over]), ...rooms];
  return {
    head: (isContinued) => ({
      height: TITLE + (isContinued ? 0 : lines.length * LINE),
      draw: (box) => [
        ...titleMarks(bundle, box, isContinued, drawn),
        ...(isContinued ? [] : lines).flatMap((line, index) =>
          textLine(line, line === over ? SMALL_STRONG : SMALL, {
            x: box.x,
            y: box.y + TITLE - 1.2 + (index + 1) * LINE - 0.9,
            room: box.width,
          }),
        ),
        levelRule(box.x, box.y + box.height, box.width, 0.35),
      ],
    }),
    rows: rowStrips(bundle, drawn),
  };
}

/** Number in a solid box, family and height, pieces and mass. */
function titleMarks(bundle: Bundle, box: Box, isContinued: boolean, drawn: Drawn): readonly Mark[] {
  const { info, words } = drawn;
  const number = `${bundle.number}`;
  const plate = { x: box.x, y: box.y, width: Math.max(9, textWidth(number, LARGE) + 3), height: 7 };
  const right = box.x + box.width;
  const mass = `${measure(bundle.mass, info.language)} kg`;
  const end = right - (isContinued ? 0 : textWidth(mass, STRONG) + 2);
  const start = plate.x + plate.width + 2;
  const height = bundle.height === null ? "" : ` ${bundle.height}`;
  const name = words.families[bundle.family];
  const varied = bundle.height === null && bundle.rows.length > 1 ? `, ${words.various}` : "";
  const wishes = isContinued ? [`${name}${height}, ${words.continued}`] : [`${name}${height}${varied}`, name];
  const title = wishes.find((text) => textWidth(text, STRONG) <= end - start) ?? wishes.at(-1)!;
  return [
    { kind: "rect", box: plate, fill: "ink" },
    ...textLine(number, LARGE, {
      x: plate.x + plate.width / 2,
      y: plate.y + 6,
      anchor: "middle",
      ink: "paper",
    }),
    ...textLine(title, STRONG, { x: start, y: box.y + 5.2, room: end - start }),
    ...(isContinued ? [] : textLine(mass, STRONG, { x: right, y: box.y + 5.2, anchor: "end" })),
  ];
}

/** Where the bundle goes: "Kitchen: 12", "Hall: 8"; one place alone needs no number. */
function targetsOf(bundle: Bundle, { words, places, info }: Drawn): readonly string[] {
  const shares = places.flatMap((place, index) => {
    const count = bundle.rows.reduce((sum, { byPlace }) => sum + byPlace[index]!, 0);
    return count === 0 ? [] : [{ name: placeName(place, words), count }];
  });
  return shares.length === 1
    ? [shares[0]!.name]
    : shares.map(({ name, count }) => `${name}: ${figure(count, 0, info.language)}`);
}

/** As many on a line as fit, none broken in two; what is left over after the last line is said to be. */
function targetLines(targets: readonly string[], width: number): readonly string[] {
  const lines: string[] = [];
  for (const target of targets) {
    const longer = lines.length === 0 ? target : `${lines.at(-1)}, ${target}`;
    if (lines.length > 0 && textWidth(`${longer},`, SMALL) <= width) lines[lines.length - 1] = longer;
    else {
      if (lines.length > 0) lines.push(`${lines.pop()!},`);
      lines.push(target);
    }
  }
  return lines.length <= MOST_LINES ? lines : [...lines.slice(0, MOST_LINES - 1), "…"];
}

function placeName({ kind, name }: Place, words: ListWords): string {
  if (kind === "outside") return words.outside;
  return kind === "shared" ? words.shared : plainText(name) || words.unnamed;
}

/** The rows of a bundle, all in small letters if one of them needs that. */
function rowStrips(bundle: Bundle, drawn: Drawn): readonly Strip[] {
  const { info, words, columnWidth } = drawn;
  const more = bundle.boxes === null ? [] : boxTexts(bundle.boxes, info, words);
  const rows = bundle.rows.map(({ item, quantity }) => {
    const count = figure(quantity, 0, info.language);
    return { item, count, naming: { room: columnWidth - NUMBER_END - numberRoom(count), more } };
  });
  const isSmall = !rows.every(({ item, naming }) => isNamedLarge(item, naming));
  return rows.map(({ item, count, naming }) => ({
    height: drawn.row,
    draw: (box) => {
      const right = box.x + box.width;
      const middle = box.y + box.height / 2;
      const ticks = BOXES.map((from): Mark => {
        const tick = { x: right - from, y: middle - TICK / 2, width: TICK, height: TICK };
        return { kind: "rect", box: tick, stroke: OUTLINE };
      });
      return [
        ...itemMarks(item, box, { ...naming, isSmall }),
        ...numberMark(count, { x: right - NUMBER_END, y: middle + 1.75, isStrong: true }),
        ...ticks,
        levelRule(box.x, box.y + box.height, box.width, 0.13),
      ];
    },
  }));
}

/** How they lie in boxes, in words and, where there is less paper, as a sum: "8 × 100 + 59". */
function boxTexts({ full, each, rest }: Boxes, info: SheetInfo, words: ListWords): readonly string[] {
  const size = figure(each, 0, info.language);
  const sum = [...(full > 0 ? [`${full} × ${size}`] : []), ...(rest > 0 ? [`${rest}`] : [])];
  return [words.boxes(full, size, rest), sum.join(" + ")];
}
