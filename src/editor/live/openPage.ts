// Opens the page: what the fill needs, the project that was open last, and the desk that keeps it.

import wasmUrl from "clipper2-wasm/dist/es/clipper2z.wasm?url";
import { fillWalls } from "../../fill/fillWalls.ts";
import { loadUnion } from "../../geom/union.ts";
import { createFillClient } from "../fillWorker/client.ts";
import { fillBeside } from "../fillWorker/fillBeside.ts";
import { startFillWorker } from "../fillWorker/startWorker.ts";
import { browserDesk, browserFiles } from "../storage/browser.ts";
import { type Desk, openDesk } from "../storage/desk.ts";
import { createFilePort, type FilePort } from "../storage/files.ts";
import { preferredLanguage } from "../words/catalogues.ts";
import { changeScreen } from "./actions.ts";
import { createLiveFill, type FillAsk, QUICK_MS } from "./liveFill.ts";
import { sampleProject } from "./sample.ts";
import { firstPaneHeight } from "./screen.ts";
import { keepSpeaking } from "./speak.ts";
import { createWorkbench, type Workbench } from "./workbench.ts";

const REST_MS = 200; // a hand that has not moved for so long rests

function rest(): Promise<void> {
  return new Promise((done) => {
    setTimeout(done, REST_MS);
  });
}

/** What the page is made of. */
export interface OpenedPage {
  readonly bench: Workbench;
  readonly desk: Desk;
  readonly files: FilePort;
}

export async function openPage(): Promise<OpenedPage> {
  const [union, { desk, document }] = await Promise.all([
    loadUnion(wasmUrl),
    openDesk(browserDesk(), sampleProject(preferredLanguage(navigator.languages))),
  ]);
  // Only where the browser lets no worker start does the page place soffits itself.
  const fillWhole = async (ask: FillAsk) => {
    const { fillUnit } = await import("../../fill/fillUnit.ts");
    return fillUnit({ ...ask, union });
  };
  const fills = createLiveFill({
    fillNow: (ask) => fillWalls({ ...ask, union }, null),
    fillBeside: fillBeside(createFillClient(startFillWorker), fillWhole, rest),
    clock: () => performance.now(),
    quick: QUICK_MS,
  });
  const bench = createWorkbench(document, fills);
  await keepSpeaking(bench, globalThis.document.documentElement);
  changeScreen(bench, { paneHeight: firstPaneHeight(innerHeight) });
  return { bench, desk, files: createFilePort(browserFiles()) };
}
