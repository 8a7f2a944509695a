// The one place for HiGHS, a solver of linear and mixed-integer programs compiled to WebAssembly.
//
// A model lives for one question: what is not disposed of stays in the module's memory for good. Calls block, so a page
// asks from a worker.

import type { Highs, ModelData } from "highs";
import type { LinearModel, Solved, SolveLimits, Solver } from "./linear.ts";

/** Loads the library, not before it is asked for. */
export async function loadHighs(): Promise<Solver> {
  const { default: loadLibrary } = await import("highs");
  const library = await loadLibrary();
  return (model, limits = {}) => solve(library, model, limits);
}

function solve(library: Highs, model: LinearModel, limits: SolveLimits): Solved {
  const { modelStatus, callbackType } = library.constants;
  const most = limits.steps ?? Number.POSITIVE_INFINITY;
  let ended: "limit" | "stopped" | null = null;
  return library.withModel(dataOf(library, model), (held): Solved => {
    held.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: limits.gap ?? 1e-6 });
    const run = held.run({
      [callbackType.mipInterrupt](event) {
        if (Number(event.data.mip_total_lp_iterations ?? 0) > most) ended = "limit";
        else if (limits.isStopped?.() === true) ended = "stopped";
        if (ended !== null) event.interrupt();
        return undefined;
      },
    });
    const isSolved = run.modelStatus === modelStatus.optimal;
    const hasValues = isSolved || held.info.get("primal_solution_status") === 2;
    const solution = hasValues ? held.getSolution() : null;
    return {
      status: isSolved
        ? "optimal"
        : run.modelStatus === modelStatus.infeasible
          ? "infeasible"
          : (ended ?? (hasValues || isLimit(run.modelStatus, modelStatus) ? "limit" : "failed")),
      values: solution?.colValue ?? null,
      duals: model.isWhole !== null || !isSolved ? null : (solution?.rowDual ?? null),
    };
  });
}

function isLimit(status: number, known: Highs["constants"]["modelStatus"]): boolean {
  return status === known.iterationLimit || status === known.solutionLimit || status === known.interrupted;
}

function dataOf(library: Highs, model: LinearModel): ModelData {
  const numCols = model.cost.length;
  const numRows = model.rowLower.length;
  return {
    numCols,
    numRows,
    sense: library.constants.objectiveSense.minimize,
    colCost: model.cost,
    colLower: model.lower,
    colUpper: model.upper,
    rowLower: model.rowLower,
    rowUpper: model.rowUpper,
    matrix: {
      format: "csc",
      numRows,
      numCols,
      starts: model.starts,
      indices: model.rows,
      values: model.values,
    },
    ...(model.isWhole !== null && { integrality: model.isWhole }),
  };
}
