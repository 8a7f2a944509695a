// A room with a soffit made up by hand: two props in it, or the ones a test gives. Walls, ties and bill of the real fill
// are taken away, so that nothing but the props is left to check.

import type { FillDocument, Soffit, SoffitProp, UnitFill } from "../../src/fill/result.ts";
import type { Project, Storey, Unit } from "../../src/plan/project.ts";
import { fillDocument, projectOf } from "./filled.ts";
import { roomPlan } from "./roomPlan.ts";

export interface Propped {
  readonly project: Project;
  readonly fill: FillDocument;
}

/** The code of the demo kit's prop. */
export const DEMO_PROP = "Prop2000-3500";

export const PROPS: readonly SoffitProp[] = [
  { piece: "A/p900", code: DEMO_PROP, at: [1000, 1000], area: 1.44 },
  { piece: "A/p901", code: DEMO_PROP, at: [2200, 1000], area: 0.72 },
];

export interface Given {
  readonly props?: readonly SoffitProp[];
  readonly storey?: Storey;
  readonly drop?: number;
  readonly loads?: Project["loads"];
  /** The room the soffit says it is in. */
  readonly room?: string;
}

export function propped(given: Given = {}): Propped {
  const { props = PROPS, storey = { clearHeight: 2400, slab: 150 }, drop = 0, loads = {} } = given;
  const unit: Unit = roomPlan(drop);
  const project = projectOf(unit, { storey, loads });
  const { units, ...rest } = fillDocument(project);
  const soffit: Soffit = {
    room: given.room ?? unit.rooms[0]!.name,
    along: "x",
    height: storey.clearHeight - drop,
    outline: [],
    holes: [],
    pieces: [],
    unfilled: [],
    props,
    counts: { closures: 0, fillers: 0, panels: 0, strips: 0 },
  };
  const withProps = units.map(
    (entry): UnitFill => ({
      ...entry,
      faces: [],
      corners: [],
      reveals: [],
      ties: [],
      fittings: [],
      accessories: [],
      bill: [],
      soffits: [soffit],
    }),
  );
  return { project, fill: { ...rest, units: withProps } };
}
