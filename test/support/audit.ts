// Everything a fill must hold by the definition of the format and of "best", checked without the program's own code: a
// list of violations in words, empty where the fill is right.

import type { UnitFill } from "../../src/fill/result.ts";
import type { Kit } from "../../src/kit/kit.ts";
import type { Storey, Unit } from "../../src/plan/project.ts";
import { billFaults, totalsFaults } from "./audit/counts.ts";
import { bandFaults, coverFaults } from "./audit/covers.ts";
import { edgeFaults } from "./audit/edges.ts";
import { fittingFaults } from "./audit/fittings.ts";
import { jointFaults, tieFaults } from "./audit/joints.ts";
import { idFaults, sizeFaults } from "./audit/pieces.ts";
import { firstOutFaults, lockedFaults, ringFaults } from "./audit/rooms.ts";
import { soffitFaults } from "./audit/soffits.ts";
import { tieSpacingFaults } from "./audit/tieSpacing.ts";
import { tilingFaults } from "./audit/tiling.ts";
import { auditPlan } from "./audit/walls.ts";

export interface Audited {
  readonly unit: Unit;
  readonly storey: Storey;
  readonly kit: Kit;
}

/** What holds for any drawing, fractional and at any angle. */
export function auditAny(fill: UnitFill, { kit }: Audited): string[] {
  return [
    ...fill.faces.flatMap((face) => tilingFaults(face, fill.problems)),
    ...sizeFaults(fill, kit),
    ...idFaults(fill),
    ...billFaults(fill, kit),
    ...soffitFaults(fill, kit),
  ];
}

const SLIVER = 10; // mm: no form is so narrow, and nothing drawn here is
const HAIR_SLACK = 4; // mm: both faces' ends moved by the tie tolerance

/** What holds for walls along the axes drawn a hair off: no slivers, and opposite joints within the tolerance. */
export function auditHair(fill: UnitFill, audited: Audited): string[] {
  const slivers = fill.faces.flatMap(({ id, length, pieces, unfilled }) =>
    [{ width: length }, ...pieces, ...unfilled]
      .filter(({ width }) => width < SLIVER)
      .map(({ width }) => `${id} has something ${width} wide`),
  );
  const plan = auditPlan(fill, audited, HAIR_SLACK);
  const joints = plan === null ? ["a face runs at an angle"] : jointFaults(plan, HAIR_SLACK);
  return [...auditAny(fill, audited), ...slivers, ...joints];
}

/** All that holds for walls along the axes drawn in whole millimetres. */
export function auditSquare(fill: UnitFill, audited: Audited): string[] {
  const plan = auditPlan(fill, audited);
  if (plan === null) return ["a face runs at an angle"];
  return [
    ...auditAny(fill, audited),
    ...ringFaults(plan),
    ...jointFaults(plan),
    ...coverFaults(plan),
    ...bandFaults(plan),
    ...totalsFaults(plan),
    ...tieFaults(plan),
    ...tieSpacingFaults(plan),
    ...edgeFaults(plan),
    ...fittingFaults(plan),
    ...firstOutFaults(plan),
    ...lockedFaults(plan),
  ];
}
