// Whether what an edit leaves could be read again from its file. The limits are those of `shape.ts`, which reads; here
// they are asked of the few entries that an edit has changed, at every movement of the hand.

import type { Mm } from "../units.ts";
import { BUCKETS, type Entry, find, type PlanDocument, type Records, type UnitDocument } from "./document.ts";
import type {
  ControlLine,
  Limits,
  Opening,
  Pinned,
  Position,
  Pour,
  RoomLabel,
  Service,
  SlabOutline,
  Storey,
  Wall,
} from "./project.ts";

const FAR: Mm = 1e7;
const LONGEST: Mm = 1e6;
const HIGHEST: Mm = 1e5;
const MOST_OF_A_KIND = 20_000;
const MOST_UNITS = 1_000;
const MOST_POURS = 10_000;
const MOST_POINTS = 10_000;
const MOST_WIDTHS = 1_000;
const CONTROL = /[\p{Cc}\p{Zl}\p{Zp}\uFFFE\uFFFF]/u;

/** The first changed thing that a file could not hold, by its id; null where all is within the limits. */
export function beyondLimits(before: PlanDocument, after: PlanDocument): { readonly id: string } | null {
  if (!isWithinSettings(after)) return { id: after.name };
  const pour = changed(before.pours, after.pours).find((entry) => !isPour(entry));
  if (pour !== undefined) return { id: pour.id };
  if (Object.keys(after.pours).length > MOST_POURS || Object.keys(after.units).length > MOST_UNITS) {
    return { id: after.name };
  }
  for (const unit of changed(before.units, after.units)) {
    const beyond = beyondInUnit(find(before.units, unit.id), unit, after);
    if (beyond !== null) return { id: beyond };
  }
  return null;
}

function beyondInUnit(
  before: UnitDocument | undefined,
  unit: UnitDocument,
  document: PlanDocument,
): string | null {
  if (!isText(unit.name, 0, 200) || !isUnitId(unit.id, document)) return unit.id;
  if (BUCKETS.some((bucket) => Object.keys(unit[bucket]).length > MOST_OF_A_KIND)) return unit.id;
  return (
    beyondIn(before?.walls, unit.walls, isWall) ??
    beyondIn(before?.openings, unit.openings, isOpening) ??
    beyondIn(before?.rooms, unit.rooms, isRoom) ??
    beyondIn(before?.slabs, unit.slabs, isOutline) ??
    beyondIn(before?.slabOpenings, unit.slabOpenings, isOutline) ??
    beyondIn(before?.services, unit.services, isService) ??
    beyondIn(before?.controlLines, unit.controlLines, isLine) ??
    beyondIn(before?.pinned, unit.pinned, isPin)
  );
}

function beyondIn<T>(
  before: Records<Entry<T>> | undefined,
  after: Records<Entry<T>>,
  isWithin: (entry: T) => boolean,
): string | null {
  return changed(before, after).find((entry) => !isWithin(entry))?.id ?? null;
}

// Entries that are another object than before. Buckets that no edit has touched are the same object.
function changed<T>(before: Records<T> | undefined, after: Records<T>): readonly T[] {
  if (before === after) return [];
  return Object.entries(after)
    .filter(([key, entry]) => before === undefined || !Object.hasOwn(before, key) || before[key] !== entry)
    .map(([, entry]) => entry);
}

function isWall({ from, to, thickness }: Wall): boolean {
  return isLine({ from, to }) && isIn(thickness, 20, 2_000);
}

function isOpening({ at, width, sill, head }: Opening): boolean {
  return (
    isIn(at, -FAR, FAR) &&
    isIn(width, 1, LONGEST) &&
    isIn(sill, 0, HIGHEST) &&
    isIn(head, 0, HIGHEST) &&
    head > sill
  );
}

// The words of a label come from the page's own lists, but an edit is data as well, and a file would not be read again.
function isRoom({ name, at, kind, soffitDrop, soffitAlong }: RoomLabel): boolean {
  return (
    isText(name, 1, 200) &&
    isPlace(at) &&
    [null, "room", "open"].includes(kind) &&
    isIn(soffitDrop, 0, 20_000) &&
    [undefined, "x", "y"].includes(soffitAlong)
  );
}

// The ring is open: its last point is not its first again.
function isOutline({ outline }: SlabOutline): boolean {
  const distinct = new Set(outline.map(([x, y]) => `${x} ${y}`));
  const [first] = outline;
  const last = outline[outline.length - 1];
  const isClosed = first !== undefined && last !== undefined && first[0] === last[0] && first[1] === last[1];
  return !isClosed && distinct.size >= 3 && outline.length <= MOST_POINTS && outline.every(isPlace);
}

function isService({ path, clearance }: Service): boolean {
  return isIn(path.length, 2, MOST_POINTS) && path.every(isPlace) && isIn(clearance, 0, 10_000);
}

function isLine({ from, to }: Pick<ControlLine, "from" | "to">): boolean {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return isPlace(from) && isPlace(to) && isIn(Math.sqrt(dx * dx + dy * dy), 1, LONGEST);
}

function isPin({ from, widths }: Pinned): boolean {
  const areWidths = widths.every((width) => Number.isSafeInteger(width) && isIn(width, 1, 10_000));
  return isIn(from, -FAR, FAR) && isIn(widths.length, 1, MOST_WIDTHS) && areWidths;
}

function isPour({ name, day, storey }: Pour): boolean {
  const isDay = day === null || (Number.isSafeInteger(day) && isIn(day, 0, 100_000));
  return isText(name, 0, 200) && isDay && (storey === null || isStorey(storey));
}

function isStorey({ clearHeight, slab }: Storey): boolean {
  return isIn(clearHeight, 300, 20_000) && isIn(slab, 0, 2_000);
}

function isWithinSettings({ name, revision, storey, objective, limits, stock }: PlanDocument): boolean {
  const { handling, closure, closurePerMm, distinctSize, filler = 0 } = objective;
  return (
    isText(name, 0, 200) &&
    isText(revision, 0, 200) &&
    isStorey(storey) &&
    [handling, closure, closurePerMm, distinctSize, filler].every((weight) => isIn(weight, 0, 1e9)) &&
    (limits === undefined || isLimits(limits)) &&
    Object.entries(stock).every(
      ([code, count]) => isText(code, 1, 200) && Number.isSafeInteger(count) && isIn(count, 0, 1e6),
    )
  );
}

function isLimits({ forbidden, mostWidths, greatestMass }: Limits): boolean {
  return (
    forbidden.every((code) => isText(code, 1, 200)) &&
    (mostWidths === null || (Number.isSafeInteger(mostWidths) && isIn(mostWidths, 1, 1_000))) &&
    (greatestMass === null || isIn(greatestMass, 0, 1e6))
  );
}

// A second storey of unit A is called "A@2" in results: no unit beside A may be.
function isUnitId(id: string, document: PlanDocument): boolean {
  if (!isText(id, 1, 64) || id.includes("/")) return false;
  const storeyOf = /^(.+)@[0-9]+$/u.exec(id)?.[1];
  return storeyOf === undefined || !Object.values(document.units).some((unit) => unit.id === storeyOf);
}

function isPlace([x, y]: Position): boolean {
  return isIn(x, -FAR, FAR) && isIn(y, -FAR, FAR);
}

// NaN lies in no range.
function isIn(value: number, least: number, greatest: number): boolean {
  return value >= least && value <= greatest;
}

function isText(value: string, least: number, greatest: number): boolean {
  return isIn(value.length, least, greatest) && !CONTROL.test(value);
}
