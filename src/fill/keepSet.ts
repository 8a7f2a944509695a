// A choice that stays: the covers of a fill written into the project as pins, so that every later fill takes them.
//
// One pin an interval, marked as the choice's own: the engineer's pins stand over them, and choosing anew sets them free.

import type { Pinned, Project, Storey, Unit } from "../plan/project.ts";
import { type Casting, castingsOf } from "./castings.ts";
import type { FillTogether } from "./fillProject.ts";
import { type FilledUnit, fillWalls } from "./fillWalls.ts";
import { xOf } from "./onFace.ts";
import { pinOnWall } from "./pinOnWall.ts";
import type { FillDocument, FilledFace, UnitFill } from "./result.ts";
import { withoutSetPins } from "./setPins.ts";
import type { FreeInterval } from "./solve.ts";
import { lowToHigh } from "./stretchPieces.ts";

/**
 * The project with the covers of a fill of it as pins, in place of those of any earlier choice. Filling it gives that fill piece
 * for piece.
 *
 * @param fill - such as `optimiseProject` gives
 * @throws {RangeError} if it is the fill of another project
 */
export function keepSet(input: FillTogether, fill: FillDocument): Project {
  const project = withoutSetPins(input.project);
  const castings = castingsOf(project);
  const pins = new Map<Unit, Pinned[]>(project.units.map((unit) => [unit, []]));
  for (const [k, casting] of castings.entries()) {
    const isOneOfSome = castings.filter(({ unit }) => unit === casting.unit).length > 1;
    for (const pin of pinsOf(casting, { ...input, project }, fill.units[k])) {
      pins.get(casting.unit)!.push(isOneOfSome ? { ...pin, storey: bare(casting.storey) } : pin);
    }
  }
  const units = project.units.map((unit) => ({ ...unit, pinned: [...unit.pinned, ...pins.get(unit)!] }));
  return { ...project, units };
}

const bare = ({ clearHeight, slab }: Storey): Storey => ({ clearHeight, slab });

function pinsOf(
  { unit, storey, prefix }: Casting,
  { project, kit, union }: FillTogether,
  fill: UnitFill | undefined,
): readonly Pinned[] {
  if (fill?.unit !== unit.id) throw new RangeError(`the fill has no unit ${unit.id}`);
  const free: FreeInterval[] = [];
  const { fillers } = project;
  const choose = (interval: FreeInterval) => {
    free.push(interval);
    return interval.cover;
  };
  const filled = fillWalls({ unit, storey, kit, union, prefix, fillers, choose }, null);
  const faces = new Map(fill.faces.map((face) => [face.id, face]));
  return free.flatMap((interval) => {
    const face = faces.get(filled.drafts[interval.stretch.face]!.id);
    const pin = face === undefined ? null : pinOf(interval, face, { filled, unit });
    return pin === null ? [] : [pin];
  });
}

function pinOf(
  { stretch }: FreeInterval,
  face: FilledFace,
  given: { readonly filled: FilledUnit; readonly unit: Unit },
): Pinned | null {
  const { low, high } = stretch;
  const { settled } = given.filled.drafts[stretch.face]!;
  const x = xOf(settled, low, high);
  // The lowest row stands for the column: every row has the same joints.
  const row = face.pieces
    .filter((piece) => piece.z === 0 && piece.x >= x && piece.x + piece.width <= x + high - low)
    .sort((a, b) => a.x - b.x);
  const pieces = lowToHigh(settled, row);
  const widths = pieces.map(({ width }) => width);
  if (widths.reduce((sum, width) => sum + width, 0) !== high - low)
    throw new RangeError(`the fill has other pieces on face ${face.id}`);
  const pin = pinOnWall({ low, high, widths }, stretch, given);
  if (pin === null) return null;
  const strip = pieces.findIndex(({ family }) => family === "closure-strip");
  const isReversed = pin.widths !== widths;
  const closure = isReversed ? widths.length - 1 - strip : strip;
  return { ...pin, by: "set", ...(strip >= 0 && { closure }) };
}
