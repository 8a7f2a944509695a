// Does every interval, zone and band carry the proven least sequence in the agreed order, the same on both faces?

import type { FacePiece } from "../../../src/fill/result.ts";
import type { Kit } from "../../../src/kit/kit.ts";
import { type LeastCover, leastCover, leastZone, type Offer } from "./leastCover.ts";
import { type PlanFace, spanOf } from "./planFaces.ts";
import { type Segment, segmentsOf } from "./segments.ts";
import type { AuditPlan } from "./walls.ts";

type Placed = Pick<FacePiece, "family" | "width"> & { readonly low: number; readonly high: number };

/** Faults of all intervals and zones at full height. */
export function coverFaults(plan: AuditPlan): string[] {
  return plan.faces.flatMap((face) =>
    segmentsOf(plan, face).flatMap((segment) =>
      segment.kind === "unclear" ? [] : segmentFaults(plan, segment),
    ),
  );
}

function segmentFaults(plan: AuditPlan, segment: Segment): string[] {
  const { face, low, high, kind } = segment;
  const what = `${face.face.id} ${kind} ${low}..${high}`;
  const rows = rowsOf(plan, face);
  const across = segment.opposite === null ? [] : rowsOf(plan, segment.opposite);
  const offer = offerFor(
    plan.kit,
    [...rows, ...across].map(({ height }) => height),
  );
  const cover = kind === "zone" ? leastZone(high - low, offer) : leastCover(high - low, offer);
  if (rows.length === 0) return [`${what}: no panel stands on the floor anywhere`];
  if (cover === null) return unfilledFaults(plan, segment, what);
  const faults: string[] = [];
  for (const row of rows) {
    const placed = placedIn(face, segment, row.z);
    const due = kind === "zone" ? zoneOrders(cover, segment) : orders(cover, segment, offer);
    faults.push(...sequenceFaults(`${what} at ${row.z}`, placed, segment, due));
  }
  return faults;
}

function sequenceFaults(
  what: string,
  placed: readonly Placed[],
  { low, high }: Pick<Segment, "low" | "high">,
  due: readonly (readonly string[])[],
): string[] {
  const found = placed.map(({ family, width }) => (family === "closure-strip" ? `(${width})` : `${width}`));
  const isExact = placed[0]?.low === low && placed.at(-1)?.high === high;
  if (isExact && due.some((one) => one.join(" ") === found.join(" "))) return [];
  return [
    `${what}: ${found.join(" ") || "nothing"} instead of ${due.map((one) => one.join(" ")).join(" or ")}`,
  ];
}

// Rising along the axis; more than one where the definition leaves the closing end open.
function orders(cover: LeastCover, segment: Pick<Segment, "closing" | "cornerAt">, offer: Offer): string[][] {
  const isStandard = (width: number) => offer.widths.some((one) => one.width === width && one.standard);
  const rising = [...cover.widths].reverse();
  const panels = [...rising.filter((w) => !isStandard(w)), ...rising.filter(isStandard)].map(String);
  const closure = cover.closure === null ? [] : [`(${cover.closure})`];
  const atCorner = [...closure, ...panels];
  const behindFirst = panels.length < 2 ? atCorner : [panels[0]!, ...closure, ...panels.slice(1)];
  if (segment.closing === null) return [atCorner, behindFirst].flatMap((one) => [one, [...one].reverse()]);
  const hasCorner = segment.cornerAt[0] || segment.cornerAt[1];
  const fromClosing = hasCorner ? atCorner : behindFirst;
  return [segment.closing === "low" ? fromClosing : [...fromClosing].reverse()];
}

// One leg end: the closure stands there. Two: at the end of greater x, then y.
function zoneOrders(cover: LeastCover, { cornerAt }: Segment): string[][] {
  const panel = `${cover.widths[0]}`;
  if (cover.closure === null) return [[panel]];
  const closure = `(${cover.closure})`;
  return [cornerAt[0] && !cornerAt[1] ? [closure, panel] : [panel, closure]];
}

function unfilledFaults(plan: AuditPlan, { face, low, high }: Segment, what: string): string[] {
  const whole = face.face.unfilled.find(({ x, z, width }) => {
    const span = spanOf(face, x, width);
    return z === 0 && span[0] <= low && span[1] >= high;
  });
  if (whole !== undefined) return [];
  const { x } = face.face.unfilled[0] ?? { x: "none" };
  return [
    `${what} has no cover and is not unfilled whole (first unfilled at ${x}, ${plan.fill.problems.length} problems)`,
  ];
}

interface Row {
  readonly z: number;
  readonly height: number;
}

/** The panel rows from the floor to connector or cap on a face, or, where it has none, on any other. */
export function rowsOf(plan: AuditPlan, face: PlanFace): Row[] {
  const own = rowsOn(face);
  if (own.length > 0) return own;
  return plan.faces.map(rowsOn).find((rows) => rows.length > 0) ?? [];
}

function rowsOn({ face }: PlanFace): Row[] {
  const columns = face.pieces.filter(
    ({ family, x, width }) => family === "wall-panel" && !isAtOpening({ face }, x, x + width),
  );
  const first = columns.find(({ z }) => z === 0);
  return columns
    .filter(({ x }) => x === first?.x)
    .map(({ z, height }) => ({ z, height }))
    .sort((a, b) => a.z - b.z);
}

/** Whether a stretch lies in the width of a band opening. */
export function isAtOpening({ face }: Pick<PlanFace, "face">, from: number, to: number): boolean {
  return face.openings.some(({ formed, x, width }) => formed === "band" && from < x + width && to > x);
}

function placedIn(face: PlanFace, { low, high }: Pick<Segment, "low" | "high">, z: number): Placed[] {
  return face.face.pieces
    .filter((one) => one.family === "wall-panel" || one.family === "closure-strip")
    .filter((one) => one.z <= z && z < one.z + one.height)
    .map(({ family, width, x }) => ({
      family,
      width,
      low: spanOf(face, x, width)[0],
      high: spanOf(face, x, width)[1],
    }))
    .filter((one) => one.low < high && one.high > low)
    .sort((a, b) => a.low - b.low);
}

/** The widths a kit has at every one of the heights, upright or laid on its side. */
export function offerFor(kit: Kit, heights: readonly number[]): Offer {
  const panels = kit.pieces.filter((piece) => piece.family === "wall-panel");
  const at = (height: number) => {
    const widths = new Map<number, boolean>();
    for (const one of panels) {
      for (const [w, h] of [[one.width, one.height] as const, [one.height, one.width] as const]) {
        if (h === height) widths.set(w, (widths.get(w) ?? false) || one.standard);
      }
    }
    return widths;
  };
  const [first = new Map<number, boolean>(), ...rest] = heights.map(at);
  const strip = kit.pieces.find((piece) => piece.family === "closure-strip");
  return {
    widths: [...first]
      .filter(([width]) => rest.every((one) => one.has(width)))
      .map(([width, standard]) => ({ width, standard })),
    closure: strip === undefined ? null : { least: strip.least, greatest: strip.greatest },
    narrowUnder: kit.rules.narrowUnder?.value ?? 0,
  };
}

/** Faults of bands over and under openings: one row must be the least there is, several must beat every single row. */
export function bandFaults(plan: AuditPlan): string[] {
  const faults: string[] = [];
  for (const face of plan.faces) {
    for (const opening of face.face.openings.filter(({ formed }) => formed === "band")) {
      for (const isBelow of [true, false]) {
        const band = face.face.pieces.filter(
          ({ family, x, z, width }) =>
            (family === "wall-panel" || family === "closure-strip") &&
            z < opening.sill === isBelow &&
            x < opening.x + opening.width &&
            x + width > opening.x,
        );
        if (band.length > 0) faults.push(...oneBandFaults(plan, { face, opening, band }));
      }
    }
  }
  return faults;
}

interface Band {
  readonly face: PlanFace;
  readonly opening: PlanFace["face"]["openings"][number];
  readonly band: readonly FacePiece[];
}

function oneBandFaults(plan: AuditPlan, { face, opening, band }: Band): string[] {
  const what = `${face.face.id} band at ${band[0]!.z} of ${opening.id}`;
  const bottom = Math.min(...band.map(({ z }) => z));
  const top = Math.max(...band.map(({ z, height }) => z + height));
  const [low, high] = spanOf(face, opening.x, opening.width);
  const offer = offerFor(plan.kit, [top - bottom]);
  const cover = leastCover(high - low, offer);
  if (band.some(({ height }) => height !== top - bottom))
    return cover !== null && compare(keyOf(band, plan.kit), keyOfCover(cover, offer)) > 0
      ? [`${what}: one row would be better`]
      : [];
  if (cover === null) return [`${what} stands without a cover`];
  const isCorner = (place: number) =>
    segmentsOf(plan, face).some(
      (one) => (one.low === place && one.cornerAt[0]) || (one.high === place && one.cornerAt[1]),
    );
  // A jamb on a leg end: the definition does not say whether the band closes there.
  const closing = isCorner(low) || isCorner(high) ? null : "high";
  const due = orders(cover, { closing, cornerAt: [false, false] }, offer);
  return sequenceFaults(what, placedIn(face, { low, high }, bottom), { low, high }, due);
}

// Closures, narrow panels, fillers, pieces.
function keyOf(pieces: readonly FacePiece[], kit: Kit): number[] {
  const narrowUnder = kit.rules.narrowUnder?.value ?? 0;
  const panels = pieces.filter(({ family }) => family === "wall-panel");
  const isStandard = (code: string) => kit.pieces.some((one) => one.code === code && one.standard);
  return [
    pieces.length - panels.length,
    panels.filter(({ width }) => width < narrowUnder).length,
    panels.filter(({ code }) => !isStandard(code)).length,
    pieces.length,
  ];
}

function keyOfCover({ widths, closure }: LeastCover, offer: Offer): number[] {
  const isStandard = (width: number) => offer.widths.some((one) => one.width === width && one.standard);
  const closures = closure === null ? 0 : 1;
  return [
    closures,
    widths.filter((width) => width < offer.narrowUnder).length,
    widths.filter((width) => !isStandard(width)).length,
    widths.length + closures,
  ];
}

function compare(a: readonly number[], b: readonly number[]): number {
  const k = a.findIndex((value, index) => value !== b[index]);
  return k < 0 ? 0 : a[k]! - b[k]!;
}
