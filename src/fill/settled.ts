// The faces and openings of a unit on whole millimetres: what every later step counts with.

import type { Position, Unit } from "../plan/project.ts";
import type { Mm } from "../units.ts";
import type { FaceEnd, FormedFace } from "./formedFace.ts";
import {
  type LineOfWall,
  linesOfWall,
  moveToLegEnds,
  type Place,
  type PlaceInput,
  placeOf,
  settlePlaces,
} from "./lines.ts";
import { type PlacedOpening, placeOpenings } from "./placedOpenings.ts";
import { lengthText, type ProblemLog } from "./problems.ts";

/** An opening on its line, jambs settled. */
export interface SettledOpening {
  readonly placed: PlacedOpening;
  readonly low: Mm;
  readonly high: Mm;
}

/** A face on its line of wall. `low` and `high` are places on the line; x on the face runs from its `from`. */
export interface SettledFace {
  readonly formed: FormedFace;
  readonly index: number;
  readonly line: number;
  readonly direction: Position;
  readonly low: Mm;
  readonly high: Mm;
  /** The same two ends as drawn. */
  readonly drawnLow: Mm;
  readonly drawnHigh: Mm;
  readonly length: Mm;
  /** True where x runs against the line. */
  readonly isReversed: boolean;
  readonly lowEnd: FaceEnd;
  readonly highEnd: FaceEnd;
  /** What the two ends are, in words. */
  readonly lowLabel: string;
  readonly highLabel: string;
  /** Both kinds, by place. */
  readonly openings: readonly SettledOpening[];
}

export interface SettleInput {
  readonly faces: readonly FormedFace[];
  readonly unit: Unit;
  readonly clearHeightAt: (face: number) => Mm;
  readonly tolerance: Mm;
  readonly cornerLeg: Mm;
  readonly log: ProblemLog;
}

export interface Settled {
  readonly lines: readonly LineOfWall[];
  readonly faces: readonly SettledFace[];
  readonly openings: readonly SettledOpening[];
}

const REPORTED_MOVE = 0.5; // mm: less is the rounding that everybody expects

/** Settles a unit. Files a warning for every place that moves more than half a millimetre. */
export function settle(input: SettleInput): Settled {
  const lines = linesOfWall(input.faces);
  const lineOfFace = new Array<number>(input.faces.length).fill(0);
  lines.forEach((line, k) => {
    for (const face of line.faces) lineOfFace[face] = k;
  });
  const placed = placeOpenings({ ...input, lines, lineOfFace });
  const byLine = new Map<number, PlacedOpening[]>();
  for (const opening of placed) {
    const list = byLine.get(opening.line);
    if (list === undefined) byLine.set(opening.line, [opening]);
    else list.push(opening);
  }
  const faces = new Array<SettledFace>(input.faces.length);
  const openings: SettledOpening[] = [];
  lines.forEach((line, k) => {
    const settled = settleLine(line, k, byLine.get(k) ?? [], input);
    for (const face of settled.faces) faces[face.index] = face;
    openings.push(...settled.openings);
  });
  return { lines, faces, openings };
}

interface EndPlaces {
  readonly face: FormedFace;
  readonly isReversed: boolean;
  readonly low: Place;
  readonly high: Place;
}

function settleLine(
  line: LineOfWall,
  lineIndex: number,
  placed: readonly PlacedOpening[],
  input: SettleInput,
): { faces: readonly SettledFace[]; openings: readonly SettledOpening[] } {
  const inputs: PlaceInput[] = [];
  for (const index of line.faces) {
    const face = input.faces[index]!;
    inputs.push(endInput(face, "from", line, input.faces), endInput(face, "to", line, input.faces));
  }
  for (const { opening, low, high } of placed) {
    const label = `the jamb of ${opening.id}`;
    inputs.push({ at: low, label, isMovable: true }, { at: high, label, isMovable: true });
  }
  const places = settlePlaces(inputs, input.tolerance);
  const ends = line.faces.map((index, k): EndPlaces => {
    const from = places[2 * k]!;
    const to = places[2 * k + 1]!;
    const isReversed = from.drawn > to.drawn;
    return {
      face: input.faces[index]!,
      isReversed,
      low: isReversed ? to : from,
      high: isReversed ? from : to,
    };
  });
  moveToLegEnds(inputs, places, legEndsOf(ends, input.cornerLeg), input.tolerance);
  reportMoves(places, line, input);

  const firstJamb = 2 * line.faces.length;
  const openings = placed.map(
    (each, k): SettledOpening => ({
      placed: each,
      low: places[firstJamb + 2 * k]!.value,
      high: places[firstJamb + 2 * k + 1]!.value,
    }),
  );
  return { faces: ends.map((end) => settledFace(end, line, lineIndex, openings)), openings };
}

function settledFace(
  { face, isReversed, low, high }: EndPlaces,
  line: LineOfWall,
  lineIndex: number,
  openings: readonly SettledOpening[],
): SettledFace {
  return {
    formed: face,
    index: face.index,
    line: lineIndex,
    direction: line.direction,
    low: low.value,
    high: Math.max(low.value, high.value),
    drawnLow: low.drawn,
    drawnHigh: high.drawn,
    length: Math.max(0, high.value - low.value),
    isReversed,
    lowEnd: isReversed ? face.toEnd : face.fromEnd,
    highEnd: isReversed ? face.fromEnd : face.toEnd,
    lowLabel: low.label,
    highLabel: high.label,
    openings: openings.filter(({ placed }) => placed.faces.includes(face.index)),
  };
}

function endInput(
  face: FormedFace,
  end: "from" | "to",
  line: LineOfWall,
  faces: readonly FormedFace[],
): PlaceInput {
  const neighbour = faces[end === "from" ? face.previous : face.next]!;
  const kind = end === "from" ? face.fromEnd : face.toEnd;
  const at = placeOf(line.direction, end === "from" ? face.from : face.to);
  const walls = neighbour.walls[0] ?? face.walls[0] ?? "";
  if (neighbour.isFreeEnd) return { at, label: `the free end of ${face.walls[0] ?? ""}`, isMovable: true };
  if (kind === "flush") return { at, label: "the edge of the balcony slab", isMovable: false };
  return { at, label: `the corner with ${walls}`, isMovable: false };
}

// Where legs end, for every inside corner on the line, square or not.
function legEndsOf(ends: readonly EndPlaces[], leg: Mm): readonly Mm[] {
  const found: Mm[] = [];
  for (const { face, isReversed, low, high } of ends) {
    const lowEnd = isReversed ? face.toEnd : face.fromEnd;
    const highEnd = isReversed ? face.fromEnd : face.toEnd;
    if (lowEnd.startsWith("inside")) found.push(low.value + leg);
    if (highEnd.startsWith("inside")) found.push(high.value - leg);
  }
  return found;
}

function reportMoves(places: readonly Place[], line: LineOfWall, { faces, log }: SettleInput): void {
  const said = new Set<string>();
  for (const { drawn, label, value } of places) {
    const move = value - drawn;
    if (Math.abs(move) <= REPORTED_MOVE + 1e-6) continue;
    const key = `${label} ${value}`;
    if (said.has(key)) continue;
    said.add(key);
    const walls = faces[line.faces[0]!]!.walls[0] ?? "";
    const message =
      `On the line of wall ${walls}, ${label} is drawn ${lengthText(Math.abs(move))} mm from its settled place: ` +
      `the fill counts with the settled one; correct the drawing if that is not meant.`;
    log.add("warning", "settled", message, { wall: walls });
  }
}
