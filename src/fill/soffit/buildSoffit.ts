// One soffit from its outline and its legs: plan it, number its pieces, stand it on props, say what cannot be built.

import { type Ring, ringArea, ringBox } from "../../geom/ring.ts";
import { ruleValue } from "../../kit/kit.ts";
import { shoringStripWidths } from "../../kit/strips.ts";
import type { Soffit, SoffitPiece } from "../result.ts";
import { cellRing, cellsInBoth } from "./cells.ts";
import type { SoffitContext, SoffitField } from "./field.ts";
import type { LocalFrame } from "./localFrame.ts";
import { numberPieces, stripOffers } from "./numberPieces.ts";
import { fittingLegs, type OpenPlace, openPlaces, overlaps } from "./openPlaces.ts";
import { type Direction, planSoffit, type SoffitPlan } from "./planSoffit.ts";
import { checkSoffit } from "./soffitChecks.ts";

/** The soffit of one field, its pieces numbered. */
export function buildSoffit(field: SoffitField, context: SoffitContext): Soffit {
  const { frame, outline, columns, legs } = field;
  const { kit } = context;
  const { kept, crossing } = fittingLegs(legs, outline, columns);
  const legRings = legs.map(({ ring }) => ring);
  const holes = [...columns, ...openingHoles(field, [...columns, ...legRings])];
  const missing = missingConnector(field);
  const plan =
    missing === null
      ? planSoffit({
          outline,
          holes,
          legs: legRings,
          kit,
          stripWidths: shoringStripWidths(kit),
          stripLengthsOf: (width) => stripOffers(kit, width).lengths,
          propPitch: ruleValue(kit, "propPitch") ?? null,
          direction: directionOf(field.forced, frame),
          closing: field.closing,
        })
      : null;
  const sheet = plan === null ? null : numberPieces(plan, field, context);
  const connectors = kept.flatMap(({ ring, piece }): readonly SoffitPiece[] => {
    if (piece === null) return [];
    const { piece: id, code, family, madeToMeasure } = piece;
    const own = { piece: id, code, family, outline: facing(ring, 1).map(frame.toPlan) };
    return [madeToMeasure === undefined ? own : { ...own, madeToMeasure }];
  });
  const open = openPlaces({ field, plan, kept, crossing, holes, missing }, context);
  const soffit: Soffit = {
    room: field.room,
    ...(field.isSlab ? { isSlab: true as const } : {}),
    along: plan === null || !isLaid(plan) ? null : alongOf(plan.direction, frame),
    height: field.height,
    outline: facing(outline, 1).map(frame.toPlan),
    holes: holes.map((ring) => facing(ring, -1).map(frame.toPlan)),
    pieces: [...connectors, ...(sheet?.pieces ?? [])],
    unfilled: open.map(({ ring, problem }: OpenPlace) => ({
      outline: facing(ring, 1).map(frame.toPlan),
      problem,
    })),
    props: sheet?.props ?? [],
    counts: {
      closures: plan?.cost.closures ?? 0,
      fillers: plan?.cost.fillers ?? 0,
      panels: plan?.cost.pieces ?? 0,
      strips: plan?.cost.strips ?? 0,
    },
  };
  checkSoffit({ soffit, field, plan }, context);
  return soffit;
}

// Outlines come counter-clockwise, holes clockwise.
function facing(ring: Ring, turn: 1 | -1): Ring {
  return ringArea(ring) * turn < 0 ? [...ring].reverse() : ring;
}

// An opening is boxed out on the forms: where it reaches over a connector the box stands on the connector.
function openingHoles({ outline, openings }: SoffitField, taken: readonly Ring[]): readonly Ring[] {
  const holes: Ring[] = [];
  const box = ringBox(outline);
  for (const ring of openings.filter((opening) => overlaps(ringBox(opening), box)))
    holes.push(...cellsInBoth(outline, ring, [...taken, ...holes]).map(cellRing));
  return holes;
}

/** The problem of a room without connectors: its slab has nothing to lie on. */
function missingConnector({ faces }: SoffitField): number | null {
  return faces.find(({ profile }) => profile.missing !== null)?.profile.missing ?? null;
}

function directionOf(forced: "x" | "y" | null, { isUAlongX }: LocalFrame): Direction | null {
  if (forced === null) return null;
  return (forced === "x") === isUAlongX ? "u" : "v";
}

// A strip may fill a cell alone: it lies across the way panels would.
function isLaid({ tiles, strips }: SoffitPlan): boolean {
  return tiles.length + strips.length > 0;
}

function alongOf(direction: Direction, { isUAlongX }: LocalFrame): "x" | "y" {
  return (direction === "u") === isUAlongX ? "x" : "y";
}
