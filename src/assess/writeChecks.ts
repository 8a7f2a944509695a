// What do the checks of a project look like as a file?
//
// Every object is built member by member in the order of the types in `checkDocument.ts`, so the bytes do not depend on
// the order in which a check put its members. The layout is that of JSON.stringify with two spaces.

import { roundSignificant, roundTo } from "../units.ts";
import type { Check, CheckDocument } from "./checkDocument.ts";

/**
 * The checks as the text of a "panelwright-check" file: two-space indent, one final newline, values to six significant
 * digits and coordinates to 0.001 mm, half away from zero, no −0.
 *
 * @throws {RangeError} if a number is not finite: JSON has no word for it and `null` would pass for "not checked"
 */
export function writeCheckDocument(document: CheckDocument): string {
  const { loads, totals } = document;
  const file = {
    format: document.format,
    version: document.version,
    project: document.project,
    cautions: document.cautions,
    assumptions: document.assumptions,
    loads: {
      slabModel: loads.slabModel,
      concreteDensity: roundSignificant(loads.concreteDensity),
      formworkLoad: roundSignificant(loads.formworkLoad),
      motorisedCarts: loads.motorisedCarts,
      continuity: roundSignificant(loads.continuity),
      propStrength: loads.propStrength,
    },
    defaults: document.defaults,
    totals: {
      within: totals.within,
      over: totals.over,
      notChecked: totals.notChecked,
      notApplicable: totals.notApplicable,
    },
    checks: document.checks.map(checkEntry),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

function checkEntry(check: Check) {
  const { where } = check;
  return {
    id: check.id,
    where: {
      unit: where.unit,
      room: where.room,
      piece: where.piece,
      code: where.code,
      at: where.at.map((coordinate) => {
        if (!Number.isFinite(coordinate)) throw new RangeError(`no file can hold the number ${coordinate}`);
        return roundTo(coordinate, 3);
      }),
    },
    value: figure(check.value),
    limit: figure(check.limit),
    utilisation: figure(check.utilisation),
    unit: check.unit,
    inputs: check.inputs.map(({ sign, name, value, unit }) => ({
      sign,
      name,
      value: typeof value === "number" ? roundSignificant(value) : value,
      unit,
    })),
    formula: check.formula,
    source: check.source,
    status: check.status,
    ...(check.reason !== undefined && { reason: check.reason }),
  };
}

function figure(value: number | null): number | null {
  return value === null ? null : roundSignificant(value);
}
