// Opens the page on a project: the sample until something else is opened.

import wasmUrl from "clipper2-wasm/dist/es/clipper2z.wasm?url";
import sample from "../../../samples/two-bedroom.json?raw";
import { fillUnit } from "../../fill/fillUnit.ts";
import { loadUnion } from "../../geom/union.ts";
import type { PlanDocument } from "../../plan/document.ts";
import { projectToDocument } from "../../plan/documentProject.ts";
import { readProject } from "../../plan/read.ts";
import { createFillClient } from "../fillWorker/client.ts";
import { fillBeside } from "../fillWorker/fillBeside.ts";
import { startFillWorker } from "../fillWorker/startWorker.ts";
import { changeScreen } from "./actions.ts";
import { createLiveFill, type FillAsk, QUICK_MS } from "./liveFill.ts";
import { firstPaneHeight } from "./screen.ts";
import { createWorkbench, type Workbench } from "./workbench.ts";

/** @param document - what to open; null = the sample */
export async function openWorkbench(document: PlanDocument | null = null): Promise<Workbench> {
  const union = await loadUnion(wasmUrl);
  const fillNow = (ask: FillAsk) => fillUnit({ ...ask, union });
  const fills = createLiveFill({
    fillNow,
    fillBeside: fillBeside(createFillClient(startFillWorker), fillNow),
    clock: () => performance.now(),
    quick: QUICK_MS,
  });
  const bench = createWorkbench(document ?? sampleDocument(), fills);
  changeScreen(bench, { paneHeight: firstPaneHeight(innerHeight) });
  return bench;
}

/** The sample project that comes with the program. */
export function sampleDocument(): PlanDocument {
  const read = readProject(sample);
  if (read.status === "invalid") throw new Error("the sample that comes with the program cannot be read");
  return projectToDocument(read.project);
}
