// The worker that looks for the cheapest set: one for each search. The solver is fetched when a search begins. Between two
// steps of the search messages have their turn, so that a stop is heard; within one the worker hears nothing.

import wasmUrl from "clipper2-wasm/dist/es/clipper2z.wasm?url";
import { loadUnion } from "../../geom/union.ts";
import type { FromSolver, ToSolver } from "./protocol.ts";
import { createSolving } from "./solving.ts";

const solving = createSolving({
  loadUnion: () => loadUnion(wasmUrl),
  loadSolver: async () => (await import("../../solver/highs.ts")).loadHighs(),
  tell: (answer: FromSolver) => self.postMessage(answer),
  turn: () => new Promise((resolve) => setTimeout(resolve)),
  now: () => performance.now(),
});

self.onmessage = ({ data }: MessageEvent<ToSolver>) => solving(data);
