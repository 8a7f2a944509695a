// What do the checks of a project look like as a file?
//
// Every object is built member by member in the order of the types in `checkDocument.ts`, so the bytes do not depend on
// the order in which a check put its members. The layout is that of JSON.stringify with two spaces.

import type { Concrete } from "../plan/concrete.ts";
import type { Shoring } from "../plan/loads.ts";
import { roundSignificant, roundTo } from "../units.ts";
import type { Check, CheckDocument, CheckPlace, StrikingRow } from "./checkDocument.ts";

/**
 * The checks as the text of a "panelwright-check" file: two-space indent, one final newline, values to six significant
 * digits and coordinates to 0.001 mm, half away from zero, no −0.
 *
 * @throws {RangeError} if a number is not finite: JSON has no word for it and `null` would pass for "not checked"
 */
export function writeCheckDocument(document: CheckDocument): string {
  const { loads, totals, concrete } = document;
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
      shoring: loads.shoring === null ? null : shoringEntry(loads.shoring),
    },
    defaults: document.defaults,
    concrete: concreteEntry(concrete),
    concreteDefaults: document.concreteDefaults,
    totals: {
      within: totals.within,
      over: totals.over,
      notChecked: totals.notChecked,
      notApplicable: totals.notApplicable,
    },
    pressure: document.pressure.map(({ unit, model, greatest, points }) => ({
      unit,
      model,
      greatest: roundSignificant(greatest),
      points: points.map(({ z, pressure }) => ({ z: coordinate(z), pressure: roundSignificant(pressure) })),
    })),
    twoPersons: document.twoPersons.map(({ unit, code, mass, quantity }) => ({
      unit,
      code,
      mass: roundSignificant(mass),
      quantity,
    })),
    maturity: document.maturity.map(({ hour, temperature, maturity, age, strength }) => ({
      hour: roundSignificant(hour),
      temperature: roundSignificant(temperature),
      maturity: figure(maturity),
      age: figure(age),
      strength: figure(strength),
    })),
    predictions: document.predictions.map(({ unit, needed, strength, hour, isLogged, margin, note }) => ({
      unit,
      needed: figure(needed),
      strength: figure(strength),
      hour: figure(hour),
      isLogged,
      margin: figure(margin),
      note,
    })),
    striking: document.striking.map(strikingEntry),
    shoring: document.shoring.map(({ step, slabs, shores }) => ({
      step,
      slabs: slabs.map(roundSignificant),
      shores: shores.map(roundSignificant),
    })),
    checks: document.checks.map(checkEntry),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

function concreteEntry(concrete: Concrete) {
  return {
    pressureModel: concrete.pressureModel,
    density: roundSignificant(concrete.density),
    rate: figure(concrete.rate),
    temperature: figure(concrete.temperature),
    cement: concrete.cement,
    retarder: concrete.retarder,
    slump: figure(concrete.slump),
    vibrationDepth: figure(concrete.vibrationDepth),
    consistence: concrete.consistence,
    settingEnd: figure(concrete.settingEnd),
    formStrength: concrete.formStrength,
    bottomTie: concrete.bottomTie,
    cylinderStrength: figure(concrete.cylinderStrength),
    cubeStrength: figure(concrete.cubeStrength),
    cementClass: concrete.cementClass,
    strikeAt: figure(concrete.strikeAt),
    measuredStrength: figure(concrete.measuredStrength),
    log: concrete.log.map((reading) => reading.map(roundSignificant)),
    strengthTests: concrete.strengthTests.map((tested) => tested.map(roundSignificant)),
    datum: figure(concrete.datum),
    strikingLoad: figure(concrete.strikingLoad),
    serviceLoad: figure(concrete.serviceLoad),
  };
}

function shoringEntry({ shores, reshores, first, storeys }: Shoring) {
  return { shores, reshores, first, storeys };
}

function strikingEntry({ unit, room, rule, part, hours, strength, source, note }: StrikingRow) {
  return { unit, room, rule, part, hours: figure(hours), strength: figure(strength), source, note };
}

function coordinate(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`no file can hold the number ${value}`);
  return roundTo(value, 3);
}

function placeEntry(where: CheckPlace) {
  return {
    unit: where.unit,
    room: where.room,
    piece: where.piece,
    code: where.code,
    at: where.at === null ? null : where.at.map(coordinate),
    ...(where.face !== undefined && { face: where.face }),
    ...(where.x !== undefined && { x: coordinate(where.x) }),
    ...(where.z !== undefined && { z: coordinate(where.z) }),
    ...(where.opening !== undefined && { opening: where.opening }),
  };
}

function checkEntry(check: Check) {
  return {
    id: check.id,
    kind: check.kind,
    where: placeEntry(check.where),
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
