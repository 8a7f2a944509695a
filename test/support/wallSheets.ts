// The sheets of panel plan and elevations with what a test needs to know of them.

import type { UnitFill } from "../../src/fill/result.ts";
import { resolveKit } from "../../src/kit/resolve.ts";
import type { Language } from "../../src/plan/project.ts";
import { elevationsOf } from "../../src/sheet/elevations/sheets.ts";
import { type SheetInfo, sheetInfoOf } from "../../src/sheet/info.ts";
import type { Mark, Sheet } from "../../src/sheet/mark.ts";
import { planAndElevations } from "../../src/sheet/panelPlan/sheets.ts";
import { largePaper, type SmallPaper } from "../../src/sheet/paper.ts";
import { filled, sampleProject } from "./samples.ts";

export interface WallSheets {
  readonly unit: UnitFill;
  readonly info: SheetInfo;
  readonly plan: Sheet;
  /** Drawings and lists of problems. */
  readonly elevations: readonly Sheet[];
  /** What the plan had no paper for. */
  readonly lists: readonly Sheet[];
  readonly all: readonly Sheet[];
  /** Of the elevations. */
  readonly scale: number;
}

export function wallSheets(unit: UnitFill, info: SheetInfo): WallSheets {
  const all = planAndElevations(unit, info);
  const [plan, ...rest] = all;
  return {
    unit,
    info,
    all,
    plan: plan!,
    elevations: rest.filter(({ name }) => name.includes("-elevations-")),
    lists: rest.filter(({ name }) => name.includes("-panel-plan-")),
    scale: elevationsOf(unit, info, largePaper(info.paper)).scale,
  };
}

/** Of every unit of a sample. */
export function sampleWallSheets(
  name: string,
  paper: SmallPaper = "A4",
  language: Language = "en",
): readonly WallSheets[] {
  const project = { ...sampleProject(name), language };
  const answer = resolveKit(project.kit);
  if (answer.status !== "ok") throw new Error(JSON.stringify(answer));
  return filled(project).units.map((unit) => {
    const drawn = project.units.find(({ id }) => id === unit.unit)!;
    return wallSheets(unit, sheetInfoOf({ project, unit: drawn, kit: answer.kit }, unit, { paper }));
  });
}

/** Bars of ties on elevations: solid where put in from this side, open where from the other. */
export function tieBars(sheets: readonly Sheet[]): { readonly own: number; readonly other: number } {
  const bars = sheets
    .flatMap(({ marks }) => marks)
    .filter(
      (mark) =>
        mark.kind === "rect" && near(mark.box.width, 2.4) && near(mark.box.height, 0.8) && !mark.piece,
    );
  const own = bars.filter((mark) => mark.kind === "rect" && mark.fill === "ink").length;
  return { own, other: bars.length - own };
}

/** Dots of ties on a plan, the one of the legend left out, in millimetres of paper. */
export function tieDots({ marks }: Sheet): readonly (readonly [number, number])[] {
  const dots = marks.flatMap((mark) =>
    mark.kind === "circle" && near(mark.radius, 0.55) ? [mark.centre] : [],
  );
  return dots.slice(0, -1);
}

export function textsOf(sheets: readonly Sheet[]): readonly Extract<Mark, { kind: "text" }>[] {
  return sheets.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === "text" ? [mark] : [])));
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < 1e-9;
}
