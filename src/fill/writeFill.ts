// What does the fill of a project look like as a file?
//
// Every object is built member by member in the order of the types in `result.ts`, so the bytes do not depend on
// the order in which the producer put its members. The layout is that of JSON.stringify with two spaces: any
// other program that reads the file and writes it again gives the same bytes.

import type {
  AccessoryCount,
  BillLine,
  Cause,
  EdgePiece,
  FacePiece,
  FillDocument,
  FilledFace,
  Fitting,
  PanelSet,
  Problem,
  Reveal,
  Soffit,
  TieLine,
  Totals,
  UnitFill,
} from "./result.ts";
import { changesEntry, partsEntry } from "./writeChanges.ts";
import { amount, area, count, length, mass, position } from "./writeFigures.ts";

/**
 * The fill as the text of a "panelwright-fill" file: two-space indent, one final newline, coordinates and lengths
 * to 0.001 mm, areas to 0.0001 m², masses to 0.01 kg, half away from zero, no −0, absent members left out.
 *
 * @throws {RangeError} if a number is not finite: JSON has no word for it and `null` would pass for an answer
 */
export function writeFillDocument(fill: FillDocument): string {
  const file = {
    format: fill.format,
    version: fill.version,
    project: fill.project,
    units: fill.units.map(unitEntry),
    totals: totalsEntry(fill.totals),
    ...(fill.set !== undefined && { set: setEntry(fill.set) }),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

function setEntry(set: PanelSet) {
  return {
    status: set.status,
    countedBy: set.countedBy,
    pieces: set.pieces.map((piece) => ({
      code: piece.code,
      family: piece.family,
      needed: count(piece.needed),
      owned: count(piece.owned),
      toBuy: count(piece.toBuy),
      price: piece.price === null ? null : amount(piece.price),
    })),
    cost: amount(set.cost),
    parts: partsEntry(set.parts),
    lowerBound: amount(set.lowerBound),
    proof: set.proof,
    chosen: { widths: count(set.chosen.widths), fillers: count(set.chosen.fillers) },
    ...(set.lacks !== undefined && { lacks: set.lacks }),
    wallByWall: set.wallByWall === null ? null : amount(set.wallByWall),
    ...(set.missing !== undefined && {
      missing: set.missing.map((each) => ({
        code: each.code,
        quantity: count(each.quantity),
        pours: each.pours,
        units: each.units,
      })),
    }),
    ...(set.changes !== undefined && { changes: changesEntry(set.changes) }),
  };
}

function unitEntry(unit: UnitFill) {
  return {
    unit: unit.unit,
    ...(unit.storey !== undefined && {
      storey: { clearHeight: length(unit.storey.clearHeight), slab: length(unit.storey.slab) },
    }),
    pours: unit.pours,
    rooms: unit.rooms.map((room) => ({
      name: room.name,
      kind: room.kind,
      area: area(room.area),
      faces: room.faces,
    })),
    faces: unit.faces.map(faceEntry),
    corners: unit.corners.map(edgePieceEntry),
    reveals: unit.reveals.map(revealEntry),
    soffits: unit.soffits.map(soffitEntry),
    ties: unit.ties.map(tieEntry),
    fittings: unit.fittings.map(fittingEntry),
    accessories: unit.accessories.map(accessoryEntry),
    bill: unit.bill.map(billEntry),
    totals: totalsEntry(unit.totals),
    causes: unit.causes.map(causeEntry),
    problems: unit.problems.map(problemEntry),
  };
}

function faceEntry(face: FilledFace) {
  return {
    id: face.id,
    walls: face.walls,
    room: face.room,
    from: position(face.from),
    to: position(face.to),
    length: length(face.length),
    height: length(face.height),
    openings: face.openings.map((opening) => ({
      id: opening.id,
      x: length(opening.x),
      width: length(opening.width),
      sill: length(opening.sill),
      head: length(opening.head),
      formed: opening.formed,
    })),
    pieces: face.pieces.map(facePieceEntry),
    unfilled: face.unfilled.map((gap) => ({
      x: length(gap.x),
      z: length(gap.z),
      width: length(gap.width),
      height: length(gap.height),
      problem: count(gap.problem),
    })),
  };
}

function facePieceEntry(piece: FacePiece) {
  return {
    piece: piece.piece,
    code: piece.code,
    family: piece.family,
    x: length(piece.x),
    z: length(piece.z),
    width: length(piece.width),
    height: length(piece.height),
    ...(piece.madeToMeasure !== undefined && { madeToMeasure: piece.madeToMeasure }),
    ...(piece.reason !== undefined && { reason: piece.reason }),
    ...(piece.firstOut !== undefined && { firstOut: piece.firstOut }),
    ...(piece.zone !== undefined && { zone: piece.zone }),
  };
}

function edgePieceEntry(piece: EdgePiece) {
  return {
    piece: piece.piece,
    code: piece.code,
    family: piece.family,
    from: piece.from.map(length),
    to: piece.to.map(length),
    ...(piece.madeToMeasure !== undefined && { madeToMeasure: piece.madeToMeasure }),
  };
}

function revealEntry(reveal: Reveal) {
  return {
    opening: reveal.opening,
    side: reveal.side,
    pieces: reveal.pieces.map((piece) => ({
      piece: piece.piece,
      code: piece.code,
      family: piece.family,
      at: length(piece.at),
      length: length(piece.length),
      width: length(piece.width),
      ...(piece.madeToMeasure !== undefined && { madeToMeasure: piece.madeToMeasure }),
    })),
  };
}

function soffitEntry(soffit: Soffit) {
  return {
    room: soffit.room,
    outline: soffit.outline.map(position),
    holes: soffit.holes.map((hole) => hole.map(position)),
    pieces: soffit.pieces.map((piece) => ({
      piece: piece.piece,
      code: piece.code,
      family: piece.family,
      outline: piece.outline.map(position),
      ...(piece.madeToMeasure !== undefined && { madeToMeasure: piece.madeToMeasure }),
      ...(piece.reason !== undefined && { reason: piece.reason }),
      ...(piece.heldBy !== undefined && { heldBy: piece.heldBy }),
    })),
    unfilled: soffit.unfilled.map((gap) => ({
      outline: gap.outline.map(position),
      problem: count(gap.problem),
    })),
    props: soffit.props.map((prop) => ({
      piece: prop.piece,
      code: prop.code,
      at: position(prop.at),
      area: area(prop.area),
    })),
    ...(soffit.isSlab !== undefined && { isSlab: soffit.isSlab }),
    along: soffit.along,
    height: length(soffit.height),
    counts: {
      closures: count(soffit.counts.closures),
      fillers: count(soffit.counts.fillers),
      panels: count(soffit.counts.panels),
      strips: count(soffit.counts.strips),
    },
  };
}

function tieEntry(tie: TieLine) {
  return {
    at: position(tie.at),
    heights: tie.heights.map(length),
    faces: tie.faces,
    length: length(tie.length),
    code: tie.code,
  };
}

function fittingEntry(fitting: Fitting) {
  return {
    piece: fitting.piece,
    code: fitting.code,
    family: fitting.family,
    face: fitting.face,
    x: length(fitting.x),
    z: length(fitting.z),
    ...(fitting.length !== undefined && { length: length(fitting.length) }),
  };
}

function accessoryEntry(line: AccessoryCount) {
  return { code: line.code, family: line.family, quantity: count(line.quantity), rule: line.rule };
}

function billEntry(line: BillLine) {
  return {
    code: line.code,
    family: line.family,
    quantity: count(line.quantity),
    mass: mass(line.mass),
    area: area(line.area),
  };
}

function totalsEntry(totals: Totals) {
  return {
    closures: count(totals.closures),
    narrow: count(totals.narrow),
    fillers: count(totals.fillers),
    zones: count(totals.zones),
    panels: count(totals.panels),
  };
}

function causeEntry(cause: Cause) {
  return {
    message: cause.message,
    closures: count(cause.closures),
    fillers: count(cause.fillers),
    places: count(cause.places),
    widths: cause.widths.map(length),
  };
}

function problemEntry(problem: Problem) {
  const { where } = problem;
  return {
    severity: problem.severity,
    kind: problem.kind,
    message: problem.message,
    where: {
      ...(where.face !== undefined && { face: where.face }),
      ...(where.x !== undefined && { x: length(where.x) }),
      ...(where.room !== undefined && { room: where.room }),
      ...(where.wall !== undefined && { wall: where.wall }),
      ...(where.opening !== undefined && { opening: where.opening }),
      ...(where.at !== undefined && { at: position(where.at) }),
      ...(where.code !== undefined && { code: where.code }),
    },
  };
}
