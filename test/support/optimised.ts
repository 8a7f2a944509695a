// A project with one set chosen for all pours, by the solver that the program uses.

import { vi } from "vitest";
import { type OptimiseInput, optimiseProject } from "../../src/fill/optimise/optimiseProject.ts";
import type { FillDocument } from "../../src/fill/result.ts";
import { loadUnion } from "../../src/geom/union.ts";
import type { Kit } from "../../src/kit/kit.ts";
import { resolveKit } from "../../src/kit/resolve.ts";
import type { Project } from "../../src/plan/project.ts";
import { loadHighs } from "../../src/solver/highs.ts";

// The machine may be busy with other things.
vi.setConfig({ testTimeout: 180_000 });

export const union = await loadUnion();
export const solver = await loadHighs();

export function kitOf(project: Project): Kit {
  const answer = resolveKit(project.kit);
  if (answer.status !== "ok") throw new Error(JSON.stringify(answer));
  return answer.kit;
}

/** Drives a piece of work to its end. */
export function finished<T>(work: Generator<unknown, T>): T {
  let step = work.next();
  while (step.done !== true) step = work.next();
  return step.value;
}

export function optimised(project: Project, options: Partial<OptimiseInput> = {}): FillDocument {
  return finished(optimiseProject({ project, kit: kitOf(project), union, solver, ...options }));
}
