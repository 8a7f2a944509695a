// The sample as the screen sees it: its document, its fill, and scenes at any zoom.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { letteringOf } from "../../../src/editor/live/lettering.ts";
import { createLiveFill, type LiveFill } from "../../../src/editor/live/liveFill.ts";
import { kitOf } from "../../../src/editor/live/workbench.ts";
import { detailAt } from "../../../src/editor/scene/detail.ts";
import { placeProblems } from "../../../src/editor/scene/problemPlaces.ts";
import type { Scene } from "../../../src/editor/scene/scene.ts";
import { readPalette, type Theme } from "../../../src/editor/theme/palette.ts";
import { speechOf } from "../../../src/editor/words/say.ts";
import { fillUnit } from "../../../src/fill/fillUnit.ts";
import { loadUnion } from "../../../src/geom/union.ts";
import { listed, type PlanDocument, type UnitDocument } from "../../../src/plan/document.ts";
import { projectToDocument } from "../../../src/plan/documentProject.ts";
import { readProject } from "../../../src/plan/read.ts";

const ROOT = join(import.meta.dirname, "../../..");
export const CSS = readFileSync(join(ROOT, "src/editor/theme/tokens.css"), "utf8");
const union = await loadUnion();

export function paletteOf(theme: Theme) {
  return readPalette((name) => new RegExp(`${name}:\\s*([^;]+);`).exec(CSS)?.[1] ?? "", theme);
}

export interface Opened {
  readonly document: PlanDocument;
  readonly unit: UnitDocument;
  readonly live: LiveFill;
}

/** A sample of the program, filled. */
export function openSample(name: string): Opened {
  const read = readProject(readFileSync(join(ROOT, "samples", `${name}.json`), "utf8"));
  if (read.status === "invalid") throw new Error(`the sample ${name} cannot be read`);
  return filled(projectToDocument(read.project));
}

export function filled(document: PlanDocument): Opened {
  const [unit] = listed(document.units);
  const kit = kitOf(document);
  if (unit === undefined || kit === null) throw new Error("nothing to fill");
  const fills = createLiveFill({
    fillNow: (ask) => fillUnit({ ...ask, union }),
    fillBeside: null,
    clock: () => 0,
    quick: 8,
  });
  const { live } = fills.inView(document, unit, kit);
  if (live === null) throw new Error("no fill");
  return { document, unit, live };
}

/** A scene with the middle of the plan in the middle of a window of 1440 × 676. */
export function sceneOf(
  { unit, live }: Opened,
  change: Partial<Scene> & { readonly scale?: number } = {},
): Scene {
  const { scale = 0.075, ...rest } = change;
  return {
    viewport: { centre: [5500, 3800], scale, width: 1440, height: 676 },
    detail: detailAt(scale),
    palette: paletteOf("light"),
    theme: "light",
    lettering: letteringOf(speechOf("en", {})),
    unit,
    live,
    isStale: false,
    selectedWalls: new Set(),
    problems: placeProblems(unit, live),
    chosenProblem: null,
    allWidths: false,
    showsSoffit: false,
    ...rest,
  };
}
