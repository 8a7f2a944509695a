// What may be said of a set: how sure it is the cheapest, why, what it saves. Percentages are rounded up, so that "within"
// stays true.

import type { PanelSet } from "../../fill/result.ts";
import { percentUp } from "../../units.ts";
import type { SetWord } from "./setWord.ts";

export interface Claim {
  readonly status: Extract<SetWord, `status.${string}`>;
  readonly why: Extract<SetWord, `why.${string}`>;
  /** What another choice could save at most, of the cost. */
  readonly percent: number;
  readonly gap: number;
}

export function claimOf({ status, proof, cost, lowerBound, missing, lacks }: PanelSet): Claim {
  const gap = Math.max(0, cost - lowerBound);
  return {
    status: status === "infeasible" && missing === undefined ? "status.widths" : `status.${status}`,
    why: `why.${unmet(status, missing !== undefined, lacks) ?? reasonOf(status, proof)}`,
    percent: percentUp(gap, cost),
    gap,
  };
}

// What the choice that is shown does not keep to.
function unmet(status: PanelSet["status"], isShort: boolean, lacks: PanelSet["lacks"]) {
  if (status === "infeasible") return isShort ? null : "widths";
  if (isShort) return "short";
  return lacks === undefined ? null : "widths-yet";
}

function reasonOf(status: PanelSet["status"], proof: PanelSet["proof"]) {
  switch (status) {
    case "optimal":
      return proof === "enumeration" ? "enumeration" : "certificate";
    case "gap":
      return proof === "search" ? "search" : "gap";
    case "stopped":
    case "infeasible":
      return status;
    default:
      return status satisfies never;
  }
}
