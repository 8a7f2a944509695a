// The real workers behind the counts and the search. The bundler finds their files by the text of the calls.

import type { PoursAdd } from "../../fill/optimise/pourAdds.ts";
import type { StartPlanWorker } from "../workers/planClient.ts";
import { portTo, type StartPort } from "../workers/port.ts";
import type { FromSolver, ToSolver } from "./protocol.ts";

/** @throws {Error} where the browser lets no worker start */
export const startCounter: StartPlanWorker<"count", PoursAdd> = (events) =>
  portTo(new Worker(new URL("./countWorker.ts", import.meta.url), { type: "module", name: "pours" }), events);

/** @throws {Error} where the browser lets no worker start */
export const startSolver: StartPort<ToSolver, FromSolver> = (events) =>
  portTo(new Worker(new URL("./solveWorker.ts", import.meta.url), { type: "module", name: "set" }), events);
