// The worker that counts pours: loads the union, then answers one ask after the other.

import wasmUrl from "clipper2-wasm/dist/es/clipper2z.wasm?url";
import { loadUnion } from "../../geom/union.ts";
import type { WorkPlan } from "../over/workPlan.ts";
import { createCounter } from "./counter.ts";
import type { Counted } from "./protocol.ts";

const counter = loadUnion(wasmUrl).then(createCounter);

self.onmessage = async ({ data }: MessageEvent<WorkPlan>) => {
  self.postMessage(await answerTo(data));
};

async function answerTo(plan: WorkPlan): Promise<Counted> {
  try {
    return { kind: "counted", needs: (await counter)(plan) };
  } catch (reason) {
    return { kind: "broken", reason: String(reason) };
  }
}
