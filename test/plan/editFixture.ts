// A small invented plan for the tests of edits, and short ways to apply edits and to look at what came of them.
//
//   4200 ●────────w3────────●─────────●      walls 100 thick, drawn by their centre
//        │                  w5        w2
//        w4                 ├───w6────┤ 2000
//        │                  │         │
//      0 ●──d1──────w1──────●─────────●
//        0                 3600     7200

import { type Entry, find, type PlanDocument, type UnitDocument } from "../../src/plan/document.ts";
import { projectToDocument } from "../../src/plan/documentProject.ts";
import { applyEdit, applyEdits, type Edit } from "../../src/plan/edit.ts";
import type { Opening, Position, Project, Unit, Wall } from "../../src/plan/project.ts";

export function wallOf(id: string, from: Position, to: Position, more: Partial<Wall> = {}): Wall {
  return { id, from, to, thickness: 100, justify: "centre", ...more };
}

export function openingOf(id: string, wall: string, at: number, more: Partial<Opening> = {}): Opening {
  return { id, wall, at, width: 900, sill: 0, head: 2100, formed: "band", ...more };
}

export function unitOf(walls: readonly Wall[], more: Partial<Unit> = {}): Unit {
  return {
    id: "A",
    name: "Type A",
    walls,
    openings: [],
    rooms: [],
    slabs: [],
    slabOpenings: [],
    services: [],
    controlLines: [],
    pinned: [],
    ...more,
  };
}

export function projectOf(units: readonly Unit[], more: Partial<Project> = {}): Project {
  return {
    name: "Fixture",
    revision: "1",
    language: "en",
    storey: { clearHeight: 2400, slab: 100 },
    kit: "demo",
    units,
    pours: [],
    stock: {},
    buy: true,
    fillers: "corner",
    objective: { handling: 0.6, closure: 500, closurePerMm: 0.3, distinctSize: 0 },
    concrete: {},
    loads: {},
    extra: {},
    ...more,
  };
}

/** The plan of the picture above. */
export function twoRooms(): Unit {
  return unitOf(
    [
      wallOf("w1", [0, 0], [7200, 0]),
      wallOf("w2", [7200, 0], [7200, 4200]),
      wallOf("w3", [7200, 4200], [0, 4200]),
      wallOf("w4", [0, 4200], [0, 0]),
      wallOf("w5", [3600, 0], [3600, 4200]),
      wallOf("w6", [3600, 2000], [7200, 2000]),
    ],
    {
      openings: [
        openingOf("d1", "w1", 1200),
        openingOf("d2", "w5", 2500, { width: 800 }),
        openingOf("d3", "w6", 1500, { width: 700, sill: 900 }),
      ],
      rooms: [
        { name: "Hall", at: [1800, 2100], kind: "room", soffitDrop: 0 },
        { name: "Bath", at: [5400, 3000], kind: null, soffitDrop: 50 },
      ],
      slabs: [
        {
          id: "b1",
          outline: [
            [0, 4250],
            [3000, 4250],
            [3000, 5450],
            [0, 5450],
          ],
        },
      ],
      services: [
        {
          id: "s1",
          path: [
            [0, 600],
            [900, 600],
          ],
          clearance: 60,
        },
      ],
      controlLines: [{ id: "X1", from: [500, 0], to: [500, 9000] }],
      pinned: [{ wall: "w3", from: 200, widths: [600, 450] }],
    },
  );
}

export function documentOf(unit: Unit): PlanDocument {
  return projectToDocument(projectOf([unit]));
}

/** The document after the edits. Fails the test if one of them is refused. */
export function edited(document: PlanDocument, ...edits: readonly Edit[]): PlanDocument {
  const draft = structuredClone(document);
  const outcome = applyEdits(draft, edits);
  if (outcome.status === "refused") throw new Error(`refused: ${outcome.reason} ${outcome.item ?? ""}`);
  return draft;
}

/** The reason an edit is refused for, or "done". A refused edit must have left the document as it was. */
export function refusal(document: PlanDocument, edit: Edit): string {
  const draft = structuredClone(document);
  const outcome = applyEdit(draft, edit);
  if (outcome.status === "done") return "done";
  if (JSON.stringify(draft) !== JSON.stringify(document))
    throw new Error("a refused edit has written something");
  return outcome.reason;
}

export function unitA(document: PlanDocument): UnitDocument {
  const unit = find(document.units, "A");
  if (unit === undefined) throw new Error("no unit A");
  return unit;
}

/** The ends of a wall as four numbers. */
export function endsOf(document: PlanDocument, id: string): readonly number[] {
  const wall = find<Entry<Wall>>(unitA(document).walls, id);
  if (wall === undefined) throw new Error(`no wall ${id}`);
  return [...wall.from, ...wall.to];
}

/** Where an opening is: its wall and its place along it. */
export function openingPlace(document: PlanDocument, id: string): readonly [string, number] {
  const opening = find<Entry<Opening>>(unitA(document).openings, id);
  if (opening === undefined) throw new Error(`no opening ${id}`);
  return [opening.wall, opening.at];
}
