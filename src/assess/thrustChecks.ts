// What pushes jambs apart, lifts sills and boxes, and gets under the feet of the panels? Figures for the list before the
// pour: no kit states what braces, pins and hold-downs bear, so none of these is ever judged.

import { type Envelope, pressureAt, thrustBetween } from "../check/envelope.ts";
import type { Check, CheckInput } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";
import { input, notChecked, placeIn, unjudged } from "./judging.ts";
import { NEAR, type PlacedOpening, placedOpenings } from "./openingPlaces.ts";
import { type PourPressure, pourPressure } from "./pourPressure.ts";
import { surfaceOf } from "./tieChecks.ts";

/** What these figures take for granted. */
export const THRUST_ASSUMPTIONS: readonly string[] = [
  "Figures for jambs, sills, boxes and feet of panels are forces without a load factor, to be held by what the engineer says; no limit is known for them here.",
  "Under the feet of the panels the full pressure is taken to stand over the depth of the frame, as where the seal has failed.",
];

/** The lowest part of a jamb, where spreaders are set first, mm. Common practice, no source. */
const LOWEST = 750;
const STATICS = "statics; what to do about it is common practice, no source";

/** Jambs, sills and boxes opening by opening, then the feet of the panels. */
export function thrustChecks(entry: CheckedEntry): readonly Check[] {
  if (entry.fill.faces.length === 0) return [];
  const pressure = pourPressure(entry.concrete, surfaceOf(entry));
  if (pressure.status === "refused") return []; // said of the panels already
  const openings = placedOpenings(entry.fill);
  return [
    ...openings.flatMap((placed) => [
      ...(placed.opening.formed === "band" ? [jambCheck(entry, pressure.value, placed)] : []),
      ...(placed.opening.sill > 0 ? [upliftCheck(entry, pressure.value, placed)] : []),
    ]),
    ...footCheck(entry, pressure.value),
    sealCheck(entry),
  ];
}

function jambCheck(entry: CheckedEntry, pressure: PourPressure, placed: PlacedOpening): Check {
  const { opening, thickness, cornerLeg } = placed;
  const { envelope } = pressure;
  const surface = surfaceOf(entry);
  const start = startOf(entry, pressure, placed, {
    kind: "jamb-thrust",
    formula: `N = (t + c)·∫ p dz over the height of the jamb; c: leg of an inside corner within ${NEAR} mm`,
  });
  if (thickness === null) return notChecked(start, "only one face of the wall shows this opening");
  const width = (thickness + cornerLeg) / 1000;
  const between = (low: number, high: number) =>
    width * thrustBetween(envelope, surface - high, surface - low);
  const low = Math.min(opening.sill + LOWEST, opening.head);
  const braces = entry.fill.fittings.filter(
    ({ family, face, x }) =>
      family === "opening-brace" && face === placed.face.id && Math.abs(x - opening.x) < 1,
  ).length;
  return notChecked(
    {
      ...start,
      value: between(opening.sill, opening.head),
      inputs: [
        ...start.inputs,
        input("t", "wall thickness", thickness / 1000, "m"),
        input("c", "leg of the inside corner beside it", cornerLeg / 1000, "m"),
        input("", `of it in the lowest ${LOWEST} mm`, between(opening.sill, low), "kN"),
        ...(braces > 0 ? [input("", "braces placed on this face", braces)] : []),
      ],
    },
    "the kit states no load for opening braces: set spreaders as wide as the opening low down, at about 1000 mm and under the lintel, and carry a ledger across",
  );
}

function upliftCheck(entry: CheckedEntry, pressure: PourPressure, placed: PlacedOpening): Check {
  const { opening, thickness } = placed;
  const isBox = opening.formed === "box";
  const start = startOf(entry, pressure, placed, {
    kind: isBox ? "box-uplift" : "sill-uplift",
    formula: isBox ? "U = (p(sill) − p(head))·t·W" : "U = p(sill)·t·W",
  });
  if (thickness === null) return notChecked(start, "only one face of the wall shows this opening");
  const surface = surfaceOf(entry);
  const net = pressureOver(pressure.envelope, surface, opening.sill, isBox ? opening.head : surface);
  return notChecked(
    {
      ...start,
      value: (net * thickness * opening.width) / 1e6,
      inputs: [
        ...start.inputs,
        input("p", "pressure that lifts", net, "kPa"),
        input("t", "wall thickness", thickness / 1000, "m"),
        input("W", "width of the opening", opening.width / 1000, "m"),
      ],
    },
    isBox
      ? "tie the box down: it floats"
      : "close the sill with a plate with vent holes, pinned to the sill panels of both faces and these held down: an open one boils over",
  );
}

function pressureOver(envelope: Envelope, surface: number, sill: number, head: number): number {
  return pressureAt(envelope, surface - sill) - pressureAt(envelope, surface - head);
}

function footCheck(entry: CheckedEntry, pressure: PourPressure): readonly Check[] {
  const depth = entry.kit.rules.frameDepth?.value;
  if (depth === undefined) return [];
  const start = unjudged({
    id: `${entry.name}/base-uplift`,
    kind: "base-uplift",
    where: placeIn(entry.name),
    unit: "kN/m",
    inputs: [...pressure.inputs, input("d", "depth of the frame", depth / 1000, "m")],
    formula: `${pressure.formula}; U = p(floor)·d`,
    source: `pressure: ${pressure.source}; ${STATICS}`,
  });
  const value = (pressure.envelope.greatest * depth) / 1000;
  return [
    notChecked(
      { ...start, value },
      "seal the foot on the side of the concrete and hold the panels down at every second layout pin: paste under the frames lifts them",
    ),
  ];
}

function sealCheck(entry: CheckedEntry): Check {
  const start = unjudged({
    id: `${entry.name}/base-seal`,
    kind: "base-seal",
    where: placeIn(entry.name),
    unit: "m",
    formula: "length of form that stands on the floor, all faces",
    source: "common practice, no source",
  });
  const standing = entry.fill.faces.flatMap(({ pieces }) => pieces.filter(({ z }) => z === 0));
  const length = standing.reduce((sum, { width }) => sum + width, 0) / 1000;
  return notChecked(
    { ...start, value: length },
    "nobody sees the gaps from here: look along every foot before the pour, seal on the side of the concrete, no paste under the frames",
  );
}

function startOf(
  entry: CheckedEntry,
  pressure: PourPressure,
  { opening, face, at }: PlacedOpening,
  { kind, formula }: { readonly kind: string; readonly formula: string },
) {
  const heights: readonly CheckInput[] = [
    input("", "sill", opening.sill / 1000, "m"),
    input("", "head", opening.head / 1000, "m"),
  ];
  return unjudged({
    id: `${entry.name}/${opening.id}/${kind}`,
    kind,
    where: placeIn(entry.name, {
      room: face.room ?? "",
      at,
      face: face.id,
      x: opening.x,
      z: opening.sill,
      opening: opening.id,
    }),
    unit: "kN",
    inputs: [...pressure.inputs, ...heights],
    formula: `${pressure.formula}; ${formula}`,
    source: `pressure: ${pressure.source}; ${STATICS}`,
  });
}
