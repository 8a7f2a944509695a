// What must hold of a document with a set, counted anew from its units by other means than the program's.

import { expect } from "vitest";
import type { FillDocument } from "../../src/fill/result.ts";
import { partnerOf } from "../../src/kit/handed.ts";
import type { Kit } from "../../src/kit/kit.ts";
import type { Project } from "../../src/plan/project.ts";

/** Holds needs, parts, cost and bound of the set to the pieces that stand in the units. */
export function expectTrueSet(fill: FillDocument, project: Project, kit: Kit): void {
  const { set } = fill;
  if (set === undefined) throw new Error("the document has no set");
  const pieces = new Map(kit.pieces.map((piece) => [piece.code, piece]));
  const pours =
    project.pours.length > 0
      ? project.pours
      : project.units.map(({ id }) => ({ id, unit: id, mirror: false, day: null }));
  const days = new Map<string, Map<string, number>>();
  let handled = 0;
  let closures = 0;
  for (const { id, unit, mirror, day } of pours) {
    const own = fill.units.find(
      (entry) => entry.unit === unit && (entry.pours.length === 0 || entry.pours.includes(id)),
    )!;
    const key = day === null ? `pour ${id}` : `day ${day}`;
    const counts = days.get(key) ?? new Map<string, number>();
    days.set(key, counts);
    for (const { code, quantity } of own.bill) {
      const piece = pieces.get(code);
      const poured = mirror && piece !== undefined ? partnerOf(kit, piece)!.code : code;
      counts.set(poured, (counts.get(poured) ?? 0) + quantity);
    }
    for (const piece of own.faces.flatMap((face) => face.pieces)) {
      if (piece.family === "wall-panel") handled += 1;
      // Upright from the floor to the connector: not the strips of bands.
      if (piece.family === "closure-strip" && piece.z === 0 && piece.height >= 2000)
        closures += project.objective.closure + project.objective.closurePerMm * piece.width;
    }
  }
  let cost = 0;
  let sizes = 0;
  for (const piece of set.pieces) {
    // A piece cut to a length stays as long as the piece it was cut from.
    const stays = (pieces.get(piece.code) ?? pieces.get(piece.code.replace(/\/\d+$/, "")))?.stays ?? 0;
    const byDay = [...days.values()].map((counts) => counts.get(piece.code) ?? 0);
    const standing = byDay.map((_, day) =>
      byDay.filter((_, other) => other <= day && other >= day - stays).reduce((sum, each) => sum + each, 0),
    );
    expect(piece.needed, piece.code).toBe(Math.max(...standing));
    expect(piece.owned).toBe(project.stock[piece.code] ?? 0);
    expect(piece.toBuy).toBe(Math.max(0, piece.needed - piece.owned));
    if (piece.family !== "wall-panel") continue;
    cost += piece.toBuy * piece.price!;
    if (piece.needed > 0) sizes += 1;
  }
  expect(set.parts.set).toBeCloseTo(cost, 4);
  expect(set.parts.handling).toBeCloseTo(handled * project.objective.handling, 4);
  expect(set.parts.closures).toBeCloseTo(closures, 4);
  expect(set.parts.distinctSizes).toBeCloseTo(sizes * project.objective.distinctSize, 4);
  const { set: own, handling, closures: strips, distinctSizes, fillers = 0 } = set.parts;
  expect(fillers).toBeCloseTo(set.chosen.fillers * (project.objective.filler ?? 0), 4);
  expect(set.cost).toBeCloseTo(own + handling + strips + distinctSizes + fillers, 4);
  expect(set.lowerBound).toBeLessThanOrEqual(set.cost + 1e-9);
  if (set.wallByWall !== null) expect(set.cost).toBeLessThanOrEqual(set.wallByWall + 1e-9);
  if (set.status === "optimal") {
    expect(set.lowerBound).toBe(set.cost);
    expect(["certificate", "enumeration"]).toContain(set.proof);
  }
}
