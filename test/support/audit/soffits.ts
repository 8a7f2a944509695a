// Everything a soffit of a fill must hold, re-derived from the pieces it lists.

import type { UnitFill } from "../../../src/fill/result.ts";
import type { Kit } from "../../../src/kit/kit.ts";
import { type AuditSoffit, readSoffit } from "./soffitShapes.ts";
import { headFaults, supportFaults, tributaryFaults } from "./soffitShoring.ts";
import { soffitIdFaults, soffitSizeFaults, soffitTilingFaults } from "./soffitTiling.ts";

/** Tiling, sizes, ids, supports, heads and counts of every soffit. */
export function soffitFaults(fill: UnitFill, kit: Kit): string[] {
  const soffits = fill.soffits.map(readSoffit);
  return [
    ...soffitIdFaults(fill),
    ...roomFaults(fill),
    ...soffits.flatMap((read) => [
      ...soffitTilingFaults(read, fill.problems),
      ...soffitSizeFaults(read, kit),
      ...supportFaults(read, fill.problems),
      ...headFaults(read, kit),
      ...tributaryFaults(read),
      ...countFaults(read, kit),
    ]),
  ];
}

// A soffit for each room with a slab over it, and none for a shaft.
function roomFaults({ rooms, soffits }: UnitFill): string[] {
  const due = rooms.filter(({ kind }) => kind !== "open").map(({ name }) => name);
  const found = soffits.filter(({ isSlab }) => isSlab !== true).map(({ room }) => room);
  if (soffits.length === 0 || due.join("|") === found.join("|")) return [];
  return [`soffits of ${found.join(", ")} for the rooms ${due.join(", ")}`];
}

function countFaults({ soffit, panels, closures, lines }: AuditSoffit, kit: Kit): string[] {
  const isStandard = (code: string) => kit.pieces.some((piece) => piece.code === code && piece.standard);
  const count = {
    closures: closures.length,
    fillers: panels.filter(({ one }) => !isStandard(one.code)).length,
    panels: panels.length,
    strips: lines.length,
  };
  const faults: string[] = [];
  for (const name of ["closures", "fillers", "panels", "strips"] as const) {
    if (soffit.counts[name] !== count[name])
      faults.push(`${soffit.room}: ${name} ${soffit.counts[name]}, counted ${count[name]}`);
  }
  const unexplained = panels.filter(({ one }) => !isStandard(one.code) && one.reason === undefined);
  if (unexplained.length > 0) faults.push(`${soffit.room}: a filler without a reason`);
  return faults;
}
