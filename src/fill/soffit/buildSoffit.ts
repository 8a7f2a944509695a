// One soffit from its outline and its legs: plan it, number its pieces, stand it on props, say what cannot be built.

import type { Point } from "../../geom/point.ts";
import { type Ring, ringArea, ringBox } from "../../geom/ring.ts";
import { closureStripOf } from "../../kit/closures.ts";
import { propOf } from "../../kit/fittings.ts";
import { type Kit, type Prop, ruleValue } from "../../kit/kit.ts";
import { lengthsOf } from "../../kit/pieceLengths.ts";
import { shoringStripWidths } from "../../kit/strips.ts";
import type { Position } from "../../plan/project.ts";
import { type Mm, roundTo } from "../../units.ts";
import { type EdgeOffers, edgeOffers } from "../edgeOffers.ts";
import type { Soffit, SoffitPiece, SoffitProp } from "../result.ts";
import { cellRing, cellsInBoth, type Rect, rectRing } from "./cells.ts";
import type { SoffitContext, SoffitField } from "./field.ts";
import { type LocalFrame, turned, turnedRing } from "./localFrame.ts";
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
          stripLengthsOf: (width) => stripsOf(kit, width).lengths,
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
  for (const { ring } of openings.filter((opening) => overlaps(ringBox(opening.ring), box)))
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

function stripsOf(kit: Kit, width: Mm): EdgeOffers {
  return edgeOffers(kit, `strip ${width}`, () =>
    lengthsOf(kit, "shoring-strip", (strip) => strip.width === width).map((piece) => ({
      piece,
      length: piece.length,
    })),
  );
}

interface Numbered {
  readonly pieces: readonly SoffitPiece[];
  readonly props: readonly SoffitProp[];
}

// Panels in the order of laying, then strips line by line, then the props under them.
function numberPieces(
  plan: SoffitPlan,
  { frame, height, room }: SoffitField,
  context: SoffitContext,
): Numbered {
  const { kit, book } = context;
  const toPlan = (point: Point): Position => frame.toPlan(plan.direction === "u" ? point : turned(point));
  const ringOf = (rect: Rect): readonly Position[] =>
    (plan.direction === "u" ? rectRing(rect) : turnedRing(rectRing(rect))).map(frame.toPlan);
  const pieces: SoffitPiece[] = plan.tiles.map((tile): SoffitPiece => {
    const piece = book.nextId();
    const outline = ringOf(tile);
    if (tile.kind === "panel")
      return {
        piece,
        code: tile.code,
        family: "slab-panel",
        outline,
        ...(tile.standard ? {} : { reason: fillerReason(tile) }),
      };
    return {
      piece,
      code: closureStripOf(kit, tile.width)?.code ?? "",
      family: "closure-strip",
      outline,
      reason: `A closure of ${tile.width} mm: no slab panels of the kit make up the rest.`,
    };
  });
  const prop = plan.strips.length === 0 ? null : propFor(height, room, context);
  const props: SoffitProp[] = [];
  const ends: { readonly strip: number; readonly head: number }[] = [];
  for (const { line, heads, parts } of plan.strips) {
    const width = line.u1 - line.u0;
    const stock = stripsOf(kit, width).pieces;
    (parts ?? []).forEach(({ at, length, isMadeToMeasure }, k) => {
      const whole = stock.find((strip) => strip.length === length);
      const cut = [...stock].reverse().find((strip) => strip.length >= length);
      const code = whole?.piece.code ?? (cut === undefined ? "" : book.cutTo(cut.piece, cut.length, length));
      const first = k === 0 && heads[0] !== undefined && heads[0].v > line.v0;
      const last = k === (parts ?? []).length - 1;
      if (first) ends.push({ strip: pieces.length, head: props.length });
      else if (last) ends.push({ strip: pieces.length, head: props.length + heads.length - 1 });
      const v0 = line.v0 + at;
      pieces.push({
        piece: book.nextId(),
        code,
        family: "shoring-strip",
        outline: ringOf({ ...line, v0, v1: v0 + length }),
        ...(isMadeToMeasure ? { madeToMeasure: true as const } : {}),
      });
    });
    for (const { u, v, area } of heads)
      props.push({ piece: "", code: prop?.code ?? "", at: toPlan([u, v]), area: roundTo(area / 1e6, 4) });
  }
  if (prop === null) return { pieces, props: [] };
  const numbered = props.map((each) => ({ ...each, piece: book.nextId() }));
  for (const { strip, head } of ends) {
    const holder = numbered[head];
    if (holder !== undefined) pieces[strip] = { ...pieces[strip]!, heldBy: holder.piece };
  }
  return { pieces, props: numbered };
}

function fillerReason({ u0, u1, v0, v1 }: Rect): string {
  return `${v1 - v0} × ${u1 - u0}: the standard sizes of the kit do not make up this field alone.`;
}

function propFor(height: Mm, room: string, { kit, log }: SoffitContext): Prop | null {
  const prop = propOf(kit, height);
  if (prop !== null) return prop;
  log.addOnce(`prop ${height}`, {
    severity: "error",
    kind: "missing-piece",
    message: `The kit has no prop that reaches ${height} mm: no soffit at that height stands on anything; add one to the kit.`,
    where: { room },
  });
  return null;
}
