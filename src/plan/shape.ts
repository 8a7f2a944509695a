// What each member of a project file may be: its type, its limits and what stands for it where it is left out.
//
// Limits keep out what cannot be meant (a wall of zero length, a coordinate beyond 10 km). What is drawn wrongly but
// can be shown (an opening outside its wall, walls that cross) is no matter of the file: the fill reports it.

import {
  andThen,
  anyObject,
  type Checker,
  failSaying,
  inside,
  list,
  number,
  oneOf,
  type Place,
  pair,
  table,
  text,
  textOr,
  truth,
  warn,
} from "../json/checker.ts";
import { object, optional, required } from "../json/members.ts";
import { bareObject, type Json } from "../json/value.ts";
import type { Mm } from "../units.ts";
import { DEFAULT_CLEARANCE, DEFAULT_OBJECTIVE, usualForming } from "./defaults.ts";
import type {
  ControlLine,
  Limits,
  Objective,
  Opening,
  Pinned,
  Position,
  Pour,
  Project,
  RoomLabel,
  Service,
  SlabOutline,
  Unit,
  Wall,
} from "./project.ts";

/** The most walls in a unit; the most of anything else in one too. */
const MAX_WALLS = 20_000;
const MAX_UNITS = 1_000;
const MAX_POURS = 10_000;
const MAX_POINTS = 10_000;
const MAX_WIDTHS = 1_000;
const MAX_CODES = 10_000;

/** A drawn line is at least as long as the finest thing anyone sets out, and shorter than any building. */
const LEAST_LENGTH: Mm = 1;
const GREATEST_LENGTH: Mm = 1_000_000;

// Ids are joined with "/" in results. Control characters and noncharacters cannot stand in the XML of a sheet.
const NOT_IN_ID = {
  pattern: /[\p{Cc}\p{Zl}\p{Zp}\uFFFE\uFFFF/]/u,
  words: "without / and control characters",
};
const NOT_IN_NAME = { pattern: /[\p{Cc}\p{Zl}\p{Zp}\uFFFE\uFFFF]/u, words: "without control characters" };

const id = text({ what: "an id", least: 1, greatest: 64, not: NOT_IN_ID });
const name = text({ what: "a name", greatest: 200, not: NOT_IN_NAME });
const someName = text({ what: "a name", least: 1, greatest: 200, not: NOT_IN_NAME });

const coordinate = number({ least: -1e7, greatest: 1e7, unit: "mm" });
const position: Checker<Position> = pair("a point [x, y]", coordinate, coordinate);

function millimetres(least: Mm, greatest: Mm): Checker<Mm> {
  return number({ least, greatest, unit: "mm" });
}

function listOf<T>(item: Checker<T>, what: string): Checker<readonly T[]> {
  return list(item, { what, greatest: MAX_WALLS });
}

const storey = object("a storey", {
  clearHeight: required(millimetres(300, 20_000)),
  slab: required(millimetres(0, 2_000)),
});

const wall: Checker<Wall> = andThen(
  object("a wall", {
    id: required(id),
    from: required(position),
    to: required(position),
    thickness: required(millimetres(20, 2_000)),
    justify: optional(oneOf("centre", "left", "right"), "centre"),
  }),
  (read, place) => ofBuildableLength("a wall", read, place),
);

const opening: Checker<Opening> = andThen(
  object("an opening", {
    id: required(id),
    wall: required(id),
    at: required(coordinate),
    width: required(millimetres(1, GREATEST_LENGTH)),
    sill: required(millimetres(0, 100_000)),
    head: required(millimetres(0, 100_000)),
    formed: optional(oneOf("band", "box"), null),
  }),
  (read, place) =>
    read.head > read.sill
      ? { ...read, formed: read.formed ?? usualForming(read) }
      : failSaying(inside(place, "head"), `a head above the sill (${read.sill} mm)`, `${read.head} mm`),
);

const room: Checker<RoomLabel> = andThen(
  object("a room", {
    name: required(someName),
    at: required(position),
    kind: optional(oneOf("room", "open"), null),
    soffitDrop: optional(millimetres(0, 20_000), 0),
    soffitAlong: optional(oneOf("x", "y"), null),
  }),
  ({ soffitAlong, ...label }) => (soffitAlong === null ? label : { ...label, soffitAlong }),
);

const slabOutline: Checker<SlabOutline> = object("an outline in the slab", {
  id: required(id),
  outline: required(
    andThen(list(position, { what: "a list of points [x, y]", least: 3, greatest: MAX_POINTS }), openRing),
  ),
});

const service: Checker<Service> = object("a service", {
  id: required(id),
  path: required(list(position, { what: "a list of points [x, y]", least: 2, greatest: MAX_POINTS })),
  clearance: optional(millimetres(0, 10_000), DEFAULT_CLEARANCE),
});

const controlLine: Checker<ControlLine> = andThen(
  object("a control line", { id: required(id), from: required(position), to: required(position) }),
  (read, place) => ofBuildableLength("a control line", read, place),
);

const pinnedMembers = object("a pinned choice", {
  wall: required(id),
  from: required(coordinate),
  widths: required(
    list(number({ least: 1, greatest: 10_000, whole: true, unit: "mm" }), {
      what: "a list of widths",
      least: 1,
      greatest: MAX_WIDTHS,
    }),
  ),
  by: optional(oneOf("set"), null),
  closure: optional(number({ least: 0, greatest: MAX_WIDTHS - 1, whole: true }), null),
  storey: optional(storey, null),
});

const pinned: Checker<Pinned> = andThen(pinnedMembers, ({ by, closure, storey, ...read }, place) =>
  closure !== null && closure >= read.widths.length
    ? failSaying(inside(place, "closure"), `the place of one of ${read.widths.length} widths`, `${closure}`)
    : {
        ...read,
        ...(by !== null && { by }),
        ...(closure !== null && { closure }),
        ...(storey !== null && { storey }),
      },
);

const unitMembers = object("a unit", {
  id: required(id),
  name: optional(name, ""),
  walls: optional(listOf(wall, "a list of walls"), []),
  openings: optional(listOf(opening, "a list of openings"), []),
  rooms: optional(listOf(room, "a list of rooms"), []),
  slabs: optional(listOf(slabOutline, "a list of slabs"), []),
  slabOpenings: optional(listOf(slabOutline, "a list of openings in the slab"), []),
  services: optional(listOf(service, "a list of services"), []),
  controlLines: optional(listOf(controlLine, "a list of control lines"), []),
  pinned: optional(listOf(pinned, "a list of pinned choices"), []),
  underlay: optional(anyObject, null),
});

const unit: Checker<Unit> = andThen(unitMembers, ({ underlay, ...read }) =>
  underlay === null ? read : { ...read, underlay },
);

const pour: Checker<Pour> = object("a pour", {
  id: required(id),
  name: optional(name, ""),
  unit: required(id),
  mirror: optional(truth, false),
  day: optional(number({ least: 0, greatest: 100_000, whole: true }), null),
  storey: optional(storey, null),
});

const weight = number({ least: 0, greatest: 1e9 });
const pieceCode = text({ what: "a piece code", least: 1, greatest: 200, not: NOT_IN_NAME });
const pieceCount = number({ least: 0, greatest: 1e6, whole: true });

const objectiveMembers = object("an objective", {
  handling: optional(weight, DEFAULT_OBJECTIVE.handling),
  closure: optional(weight, DEFAULT_OBJECTIVE.closure),
  closurePerMm: optional(weight, DEFAULT_OBJECTIVE.closurePerMm),
  distinctSize: optional(weight, DEFAULT_OBJECTIVE.distinctSize),
  filler: optional(weight, 0),
});

const objective: Checker<Objective> = andThen(objectiveMembers, ({ filler, ...read }) =>
  filler === 0 ? read : { ...read, filler },
);

const limits: Checker<Limits> = object("limits", {
  forbidden: optional(list(pieceCode, { what: "a list of piece codes", greatest: MAX_CODES }), []),
  mostWidths: optional(number({ least: 1, greatest: MAX_WIDTHS, whole: true }), null),
  greatestMass: optional(number({ least: 0, greatest: 1e6, unit: "kg" }), null),
});

const file = object("a project", {
  // Their values are settled before anything else is read: see `migrate.ts`.
  format: required(text({ greatest: 64 })),
  version: required(number()),
  name: optional(name, ""),
  revision: optional(name, ""),
  language: optional(oneOf("en", "es", "pt"), "en"),
  storey: required(storey),
  kit: required(textOr(text({ what: "the name of a kit", least: 1, greatest: 200 }), anyObject)),
  units: required(list(unit, { what: "a list of units", least: 1, greatest: MAX_UNITS })),
  pours: optional(list(pour, { what: "a list of pours", greatest: MAX_POURS }), []),
  stock: optional(
    table("a stock (an object of counts by piece code)", pieceCode, pieceCount),
    bareObject<number>(),
  ),
  buy: optional(truth, true),
  fillers: optional(oneOf("corner", "middle", "jamb"), "corner"),
  objective: optional(objective, DEFAULT_OBJECTIVE),
  limits: optional(limits, null),
  concrete: optional(anyObject, bareObject<Json>()),
  loads: optional(anyObject, bareObject<Json>()),
});

/** A project file of this version, every member by itself. How members refer to one another is `references.ts`. */
export const projectFile: Checker<Project> = andThen(file, (read) => {
  const { format: _format, version: _version, limits, extra, ...project } = read;
  return {
    ...project,
    ...(limits !== null && statesLimits(limits) && { limits }),
    extra: extra ?? bareObject(),
  };
});

function statesLimits({ forbidden, mostWidths, greatestMass, extra }: Limits): boolean {
  return forbidden.length > 0 || mostWidths !== null || greatestMass !== null || extra !== undefined;
}

function ofBuildableLength<T extends { readonly from: Position; readonly to: Position }>(
  what: string,
  line: T,
  place: Place,
): T | undefined {
  const dx = line.to[0] - line.from[0];
  const dy = line.to[1] - line.from[1];
  const length = Math.sqrt(dx * dx + dy * dy);
  if (length >= LEAST_LENGTH && length <= GREATEST_LENGTH) return line;
  const expected = `${what} from ${LEAST_LENGTH} to ${GREATEST_LENGTH} mm long`;
  return failSaying(place, expected, `one of ${length} mm from [${line.from}] to [${line.to}]`);
}

/** Drops the last point where it repeats the first, as many programs write rings. */
function openRing(points: readonly Position[], place: Place): readonly Position[] | undefined {
  const first = points[0]!;
  const last = points.at(-1)!;
  const isClosed = first[0] === last[0] && first[1] === last[1];
  if (isClosed) warn(inside(place, points.length - 1), "no second mention of the first point", last);
  const ring = isClosed ? points.slice(0, -1) : points;
  const distinct = new Set(ring.map(([x, y]) => `${x} ${y}`)).size;
  return distinct >= 3 ? ring : failSaying(place, "an outline of at least 3 different points", `${distinct}`);
}
