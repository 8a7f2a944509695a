// Are the totals and the bill what a recount of the listed pieces gives?

import type { UnitFill } from "../../../src/fill/result.ts";
import type { Kit } from "../../../src/kit/kit.ts";
import { isAtOpening } from "./covers.ts";
import { spanOf } from "./planFaces.ts";
import { segmentsOf } from "./segments.ts";
import type { AuditPlan } from "./walls.ts";

/** Recounts the full-height columns of all faces. */
export function totalsFaults(plan: AuditPlan): string[] {
  const narrowUnder = plan.kit.rules.narrowUnder?.value ?? 0;
  const count = { closures: 0, narrow: 0, fillers: 0, zones: 0, panels: 0 };
  const faults: string[] = [];
  for (const face of plan.faces) {
    const segments = segmentsOf(plan, face);
    for (const piece of face.face.pieces) {
      const { family, x, z, width } = piece;
      if (z !== 0 || isAtOpening(face, x, x + width)) continue;
      if (family === "closure-strip") count.closures++;
      if (family !== "wall-panel") continue;
      count.panels++;
      if (width < narrowUnder) count.narrow++;
      const [low, high] = spanOf(face, x, width);
      const home = segments.find((one) => one.low <= low && one.high >= high);
      // Where the definition leaves open what a stretch is, the fill's own word counts.
      const isZone =
        home === undefined || home.kind === "unclear" ? piece.zone === true : home.kind === "zone";
      if (isZone) count.zones++;
      else if (plan.kit.pieces.find(({ code }) => code === piece.code)?.standard !== true) count.fillers++;
      if (home !== undefined && home.kind !== "unclear" && (home.kind === "zone") !== (piece.zone === true))
        faults.push(
          `${face.face.id} ${piece.piece} at ${x} is ${home.kind === "zone" ? "" : "not "}in a zone`,
        );
    }
  }
  const { totals } = plan.fill;
  for (const name of ["closures", "narrow", "fillers", "zones", "panels"] as const) {
    if (totals[name] !== count[name]) faults.push(`totals: ${name} ${totals[name]}, counted ${count[name]}`);
  }
  return faults;
}

/** The bill against the codes of everything listed, a piece once; masses of pieces that are not made to measure. */
export function billFaults(fill: UnitFill, kit: Kit): string[] {
  const byPiece = new Map<string, string>();
  for (const one of fill.faces.flatMap(({ pieces }) => pieces)) byPiece.set(one.piece, one.code);
  for (const one of fill.corners) byPiece.set(one.piece, one.code);
  for (const one of fill.reveals.flatMap(({ pieces }) => pieces)) byPiece.set(one.piece, one.code);
  for (const soffit of fill.soffits) {
    for (const one of [...soffit.pieces, ...soffit.props]) byPiece.set(one.piece, one.code);
  }
  for (const one of fill.fittings) byPiece.set(one.piece, one.code);
  const count = new Map<string, number>();
  const add = (code: string, quantity: number) => count.set(code, (count.get(code) ?? 0) + quantity);
  for (const code of byPiece.values()) add(code, 1);
  for (const { code, heights } of fill.ties) add(code, heights.length);
  for (const { code, quantity } of fill.accessories) add(code, quantity);
  const faults: string[] = [];
  const billed = new Map(fill.bill.map((line) => [line.code, line]));
  if (billed.size !== fill.bill.length) faults.push("bill: a code stands in two lines");
  for (const code of new Set([...count.keys(), ...billed.keys()])) {
    const line = billed.get(code);
    if ((line?.quantity ?? 0) !== (count.get(code) ?? 0))
      faults.push(`bill: ${line?.quantity ?? 0} of ${code}, listed ${count.get(code) ?? 0}`);
    const piece = kit.pieces.find((one) => one.code === code);
    if (line === undefined || piece === undefined) continue;
    if (line.family !== piece.family) faults.push(`bill: ${code} as ${line.family}`);
    if (Math.abs(line.mass - piece.mass * line.quantity) > 0.006)
      faults.push(`bill: ${code} weighs ${line.mass}`);
  }
  return faults;
}
