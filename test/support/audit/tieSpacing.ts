// Is every stretch of a tie row without restraint, longer than the greatest tie spacing, said to be so?
//
//   row  |tie ───── 620 ───── tie|        600 allowed: a warning on this face or the face across
//
// Restraints: ties, jambs, ends of faces, corner legs, joining walls. A closure counts as one joint, so without its width.

import { type PlanFace, spanOf } from "./planFaces.ts";
import { segmentsOf } from "./segments.ts";
import { type AuditPlan, jambs, legEnds, oppositeAt, stateAt } from "./walls.ts";

/** Long stretches without a warning, and warnings on faces without a long stretch. */
export function tieSpacingFaults(plan: AuditPlan): string[] {
  const most = plan.kit.rules.tieSpacing?.value;
  if (most === undefined) return [];
  const faults: string[] = [];
  const long = new Set<string>();
  const said = new Set(
    plan.fill.problems.filter(({ kind }) => kind === "tie-spacing").map(({ where }) => where.face),
  );
  for (const face of plan.faces) {
    for (const row of plan.kit.rules.tieRows?.value ?? []) {
      for (const { low, length, middle } of gapsOf(plan, face, row, true).filter(
        (gap) => gap.length > most,
      )) {
        const across = oppositeAt(plan, face, middle);
        if (!said.has(face.face.id) && !said.has(across?.face.id))
          faults.push(`${face.face.id}: ${length} between restraints in row ${row} at ${low} goes unsaid`);
      }
      for (const { middle } of gapsOf(plan, face, row, false).filter((gap) => gap.length > most)) {
        long.add(face.face.id);
        const across = oppositeAt(plan, face, middle);
        if (across !== null) long.add(across.face.id);
      }
    }
  }
  for (const { ids, length, isCertain } of staggers(plan)) {
    if (length <= most) continue;
    for (const id of ids) long.add(id);
    if (isCertain && !ids.some((id) => said.has(id)))
      faults.push(`${ids.join(" and ")}: no joint faces a joint for ${length}, which goes unsaid`);
  }
  for (const id of said)
    if (id !== undefined && !long.has(id)) faults.push(`${id} has no long stretch between ties`);
  return faults;
}

interface Stagger {
  readonly ids: readonly string[];
  readonly length: number;
  /** False where one of the two zones is a doubtful stretch. */
  readonly isCertain: boolean;
}

// Joining walls on both sides so near that the zone opposite the one ends at a leg of the other: no joint faces a joint
// from the outer end of the one zone to the outer end of the other.
function staggers(plan: AuditPlan): Stagger[] {
  return plan.faces.flatMap((face) =>
    segmentsOf(plan, face)
      .filter(({ kind, high }) => kind !== "interval" && stateAt(plan, face, high + 0.5) === "leg")
      .flatMap(({ low, high, kind }): Stagger[] => {
        const behind = plan.faces
          .filter((other) => other.axis === face.axis && other.inward !== face.inward)
          .filter((other) => Math.abs(other.line - face.line) <= thickest(plan))
          .flatMap((other) => segmentsOf(plan, other))
          .filter((one) => one.kind !== "interval" && one.low > high)
          .filter((one) => stateAt(plan, one.face, one.low - 0.5) === "leg")
          .sort((a, b) => a.low - b.low)[0];
        if (behind === undefined || behind.low - high >= 2 * plan.leg + thickest(plan)) return [];
        const isCertain = kind === "zone" && behind.kind === "zone";
        return [{ ids: [face.face.id, behind.face.face.id], length: behind.high - low, isCertain }];
      }),
  );
}

interface Gap {
  readonly low: number;
  readonly length: number;
  readonly middle: number;
}

// Stretches of a row that panels cover without a restraint. Kindly read, jambs count in every row and what restrains the
// face across counts as well; strictly, jambs only beside their opening and nothing of the face across.
function gapsOf(plan: AuditPlan, face: PlanFace, row: number, isKind: boolean): Gap[] {
  const { face: filled } = face;
  const axis = face.axis;
  const ties = plan.fill.ties
    .filter(({ faces, heights }) => faces.includes(filled.id) && heights.includes(row))
    .map(({ at }) => at[axis]);
  const beside = filled.openings
    .filter(({ formed, sill, head }) => formed === "band" && sill <= row && head >= row)
    .flatMap(({ x, width }) => spanOf(face, x, width));
  const across = plan.faces.filter(
    (other) =>
      other.axis === axis && other.inward !== face.inward && other.low < face.high && other.high > face.low,
  );
  const near = across.filter((other) => Math.abs(other.line - face.line) <= thickest(plan));
  const ends = (isKind ? [face, ...near] : [face]).flatMap((one) => [
    one.low,
    one.high,
    ...legEnds(plan, one),
  ]);
  const places = [...ties, ...ends, ...(isKind ? jambs(face) : beside)]
    .filter((place) => place >= face.low && place <= face.high)
    .sort((a, b) => a - b);
  return places
    .slice(1)
    .map((high, k) => ({ low: places[k]!, high }))
    .filter(({ low, high }) => isPanelled(face, row, (low + high) / 2))
    .map(({ low, high }) => ({
      low,
      length: high - low - closuresIn(face, row, { low, high }),
      middle: (low + high) / 2,
    }));
}

function closuresIn(
  face: PlanFace,
  row: number,
  { low, high }: { readonly low: number; readonly high: number },
): number {
  return face.face.pieces
    .filter(({ family, z, height }) => family === "closure-strip" && z <= row && z + height >= row)
    .filter(({ x, width }) => spanOf(face, x, width)[0] >= low && spanOf(face, x, width)[1] <= high)
    .reduce((sum, { width }) => sum + width, 0);
}

function thickest(plan: AuditPlan): number {
  return Math.max(...plan.unit.walls.map(({ thickness }) => thickness));
}

function isPanelled(face: PlanFace, row: number, place: number): boolean {
  return face.face.pieces.some(({ family, x, z, width, height }) => {
    const [low, high] = spanOf(face, x, width);
    const isPanel = family === "wall-panel" || family === "closure-strip";
    return isPanel && place >= low && place <= high && z <= row && z + height >= row;
  });
}
