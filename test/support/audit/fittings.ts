// Does every wall have brackets on one side, and every opening with jambs one brace? Common practice, no source.

import { along } from "./planFaces.ts";
import { segmentsOf } from "./segments.ts";
import type { AuditPlan } from "./walls.ts";

/** Free intervals longer than the spacing of brackets without a bracket or with some on both sides; openings unbraced. */
export function fittingFaults(plan: AuditPlan): string[] {
  return [...bracketFaults(plan), ...openingFaults(plan)];
}

function bracketFaults(plan: AuditPlan): string[] {
  const spacing = plan.kit.rules.bracketSpacing?.value ?? Number.POSITIVE_INFINITY;
  const brackets = plan.fill.fittings.filter(({ family }) => family === "wall-bracket");
  const faults: string[] = [];
  for (const face of plan.faces) {
    for (const { low, high, opposite } of segmentsOf(plan, face)) {
      if (opposite === null || high - low <= spacing) continue;
      const sides = [face, opposite].filter((one) =>
        brackets.some(({ face: id, x }) => {
          const at = along(one, x);
          return id === one.face.id && at >= low && at <= high;
        }),
      );
      if (sides.length !== 1)
        faults.push(`${face.face.id} ${low}..${high} has brackets on ${sides.length} sides`);
    }
  }
  return faults;
}

function openingFaults(plan: AuditPlan): string[] {
  const braces = plan.fill.fittings.filter(({ family }) => family === "opening-brace");
  const openings = new Map<string, number>();
  for (const { face } of plan.faces) {
    for (const { id, x, width, formed } of face.openings) {
      if (formed !== "band") continue;
      const own = braces.filter((one) => one.face === face.id && one.x >= x && one.x < x + width);
      openings.set(id, (openings.get(id) ?? 0) + own.length);
    }
  }
  return [...openings]
    .filter(([, count]) => count !== 1)
    .map(([id, count]) => `opening ${id} has ${count} braces`);
}
