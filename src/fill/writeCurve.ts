// What do the curves of a project look like as a file?

import { roundTo } from "../units.ts";
import type { Curve, CurvePoint } from "./optimise/tradeOff.ts";

/** The text of a "panelwright-curve" file: two-space indent, one final newline, amounts to six decimals. */
export function writeCurve({ format, version, project, countedBy, widths, fillers }: Curve): string {
  const file = {
    format,
    version,
    project,
    countedBy,
    widths: widths.map(pointEntry),
    fillers: fillers.map(pointEntry),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

function pointEntry({ mostWidths, filler, widths, fillers, cost, lowerBound, status, proof }: CurvePoint) {
  return {
    mostWidths,
    filler: roundTo(filler, 6),
    widths,
    fillers,
    cost: roundTo(cost, 6),
    lowerBound: roundTo(lowerBound, 6),
    status,
    proof,
  };
}
