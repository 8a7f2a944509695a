// Fills that no program would make but any file could hold: faces tiled exactly with pieces of any width, hostile
// names, openings of any size, gaps, stacks, long faces. For tests of what must hold on every sheet.

import fc from "fast-check";
import type { FaceOpening, FacePiece, FilledFace, Problem, UnitFill } from "../../src/fill/result.ts";
import type { Position } from "../../src/plan/project.ts";
import { unitEntry } from "./fillDocument.ts";

type Draw = fc.GeneratorValue;

/** Names that break what writes them carelessly. */
export const HOSTILE_NAMES: readonly string[] = [
  "Kitchen",
  "<script>alert(1)</script>",
  `"quoted" & 'single'`,
  "]]> <!-- -->",
  "control \u0000\u0007\u001b characters\n\tand lines",
  "\u202eoverride \u2066isolate\u2069",
  "half \ud800 of a pair",
  "\ufffe\uffff",
  "厨房 Küche السلام",
  "",
  "   ",
  "A very long name of a room that no header and no title block can ever hold in one line of letters",
  "Wwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwww",
];

const WIDTHS = [50, 100, 150, 200, 250, 300, 350, 400, 450, 500, 600, 900, 1200];
const LEG = 150;

interface Making {
  readonly draw: Draw;
  readonly height: number;
  /** Height of the pieces at the head of the wall, 0 = none. */
  readonly head: number;
  readonly name: () => string;
  count: number;
  readonly problems: Problem[];
}

function whole(draw: Draw, min: number, max: number): number {
  return draw(fc.integer, { min, max });
}

function oneOf<T>(draw: Draw, list: readonly T[]): T {
  return list[whole(draw, 0, list.length - 1)]!;
}

function pieceId(making: Making): string {
  making.count += 1;
  return `A/p${making.count}`;
}

/** Cuts a length into parts of the given widths; what is left over is the last part. */
function cut(making: Making, length: number, widths: readonly number[]): readonly number[] {
  const parts: number[] = [];
  let left = length;
  // One width for most of a face, so that few choices make many pieces.
  const usual = oneOf(making.draw, widths);
  while (left > 0) {
    const wish = whole(making.draw, 0, 3) === 0 ? oneOf(making.draw, widths) : usual;
    parts.push(Math.min(wish, left));
    left -= Math.min(wish, left);
  }
  return parts;
}

/** Panels, closures or a gap on a rectangle, one to three high. */
function fillArea(
  making: Making,
  area: { readonly x: number; readonly z: number; readonly width: number; readonly height: number },
  into: { readonly pieces: FacePiece[]; readonly unfilled: FilledFace["unfilled"][number][] },
): void {
  const levels = cut(
    making,
    area.height,
    [area.height, area.height, 300, 1200].filter((h) => h > 0),
  );
  let x = area.x;
  for (const width of cut(making, area.width, WIDTHS)) {
    const kind = whole(making.draw, 0, 9);
    if (kind === 0) {
      into.unfilled.push({ x, z: area.z, width, height: area.height, problem: making.problems.length });
      const message = `${making.name()} cannot be built here: nothing of that width is in the kit.`;
      making.problems.push({ severity: "error", kind: "no-exact-cover", message, where: {} });
    } else {
      let z = area.z;
      levels.slice(0, 8).forEach((level, index, all) => {
        const height = index === all.length - 1 ? area.z + area.height - z : level;
        const family = width < 60 ? ("closure-strip" as const) : ("wall-panel" as const);
        const plain = { piece: pieceId(making), code: oneOf(making.draw, ["P", making.name()]), family };
        const marks = {
          ...(kind === 1 ? { zone: true as const } : {}),
          ...(kind === 2 ? { firstOut: true as const } : {}),
        };
        into.pieces.push({ ...plain, ...marks, x, z, width, height });
        z += height;
      });
    }
    x += width;
  }
}

/** One face: corner legs where it has them, columns and openings between them, head pieces over all. */
function makeFace(
  making: Making,
  ends: { readonly from: Position; readonly to: Position; readonly room: string | null },
  corners: readonly [string | null, string | null],
): FilledFace {
  const { from, to } = ends;
  const length = Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]);
  const [pieces, unfilled, openings]: [FacePiece[], FilledFace["unfilled"][number][], FaceOpening[]] = [
    [],
    [],
    [],
  ];
  const { head } = making;
  const top = making.height - head;
  const start = corners[0] === null ? 0 : LEG;
  const end = length - (corners[1] === null ? 0 : LEG);
  for (const [index, x] of [0, length - LEG].entries()) {
    const piece = corners[index === 0 ? 0 : 1];
    if (piece === null || piece === undefined) continue;
    const leg = { piece, code: "Corner", family: "inside-corner" as const };
    pieces.push({ ...leg, x, z: 0, width: LEG, height: top });
  }
  let x = start;
  while (x < end) {
    const width = Math.min(end - x, whole(making.draw, 200, 9000));
    if (whole(making.draw, 0, 3) === 0 && width < 3000)
      openingAt(making, { x, width, top }, { pieces, unfilled, openings });
    else fillArea(making, { x, z: 0, width, height: top }, { pieces, unfilled });
    x += width;
  }
  let at = 0;
  for (const width of head === 0 ? [] : cut(making, length, [300, 1200, 2400])) {
    const family = ends.room === null ? ("slab-edge-cap" as const) : ("wall-slab-connector" as const);
    pieces.push({ piece: pieceId(making), code: "H", family, x: at, z: top, width, height: head });
    at += width;
  }
  const id = `A/f${pieceId(making)}`;
  const settled = [ends.from, ends.to] as const;
  return { id, walls: ["w"], ...ends, settled, length, height: making.height, openings, pieces, unfilled };
}

function openingAt(
  making: Making,
  { x, width, top }: { readonly x: number; readonly width: number; readonly top: number },
  into: {
    readonly pieces: FacePiece[];
    readonly unfilled: FilledFace["unfilled"][number][];
    readonly openings: FaceOpening[];
  },
): void {
  const head = Math.min(top, oneOf(making.draw, [1000, 2100, 2250]));
  const sill = Math.min(oneOf(making.draw, [0, 0, 150, 900]), head - 50);
  const formed = oneOf(making.draw, ["band", "band", "box"] as const);
  into.openings.push({ id: `d${making.count++}`, x, width, sill, head, formed });
  const areas =
    formed === "box"
      ? [{ x, z: 0, width, height: top }]
      : [
          { x, z: 0, width, height: sill },
          { x, z: head, width, height: top - head },
        ];
  for (const area of areas) if (area.height > 0) fillArea(making, area, into);
}

/** A ring through the points; concrete on the left. Corners that turn right get an inside corner piece. */
function makeRing(making: Making, points: readonly Position[], room: string | null): readonly FilledFace[] {
  const count = points.length;
  const at = (index: number) => points[(index + count) % count]!;
  const long = (index: number) =>
    Math.abs(at(index + 1)[0] - at(index)[0]) + Math.abs(at(index + 1)[1] - at(index)[1]) >= 2 * LEG;
  const corner = points.map((_, index) => {
    const [a, b, c] = [at(index - 1), at(index), at(index + 1)];
    const turn = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
    return turn < 0 && long(index - 1) && long(index) ? pieceId(making) : null;
  });
  return points.map((from, index) =>
    makeFace(making, { from, to: at(index + 1), room }, [corner[index]!, corner[(index + 1) % count]!]),
  );
}

function roomPoints(draw: Draw, x: number): readonly Position[] {
  const [w, h] = [whole(draw, 400, oneOf(draw, [900, 4000, 16_000])), whole(draw, 400, 5000)];
  if (whole(draw, 0, 1) === 0)
    return [
      [x, 0],
      [x, h],
      [x + w, h],
      [x + w, 0],
    ];
  const [a, b] = [whole(draw, 20, w - 20), whole(draw, 20, h - 20)];
  return [
    [x, 0],
    [x, h],
    [x + a, h],
    [x + a, b],
    [x + w, b],
    [x + w, 0],
  ];
}

/** Units of one or two rooms with a column at times, and the outside round them. */
export const sheetFills: fc.Arbitrary<UnitFill> = fc.gen().map((draw) => {
  const name = () => oneOf(draw, HOSTILE_NAMES);
  const [height, head] = [oneOf(draw, [600, 2400, 3000, 9000]), oneOf(draw, [0, 150, 250])];
  const making: Making = { draw, height, head, name, count: 0, problems: [] };
  const rooms: UnitFill["rooms"][number][] = [];
  const faces: FilledFace[] = [];
  let x = 0;
  for (let left = whole(draw, 1, 2); left > 0; left--) {
    const points = roomPoints(draw, x);
    const room = name();
    const [cx, cy] = [x + 100, 100];
    const column: readonly Position[] = [
      [cx, cy],
      [cx + 200, cy],
      [cx + 200, cy + 100],
      [cx, cy + 100],
    ];
    const ring = [
      ...makeRing(making, points, room),
      ...(whole(draw, 0, 2) === 0 ? makeRing(making, column, room) : []),
    ];
    rooms.push({ name: room, kind: "room", area: 1.5, faces: ring.map(({ id }) => id) });
    faces.push(...ring);
    x = Math.max(...points.map(([at]) => at)) + 300;
  }
  faces.push(
    ...makeRing(
      making,
      [
        [-100, -100],
        [x, -100],
        [x, 5100],
        [-100, 5100],
      ],
      null,
    ),
  );
  return unitEntry({ unit: name(), rooms, faces, problems: making.problems });
});
