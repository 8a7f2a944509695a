// What do slabs and shores carry while storey after storey is cast? The simplified method of Grundy and Kabaila.
//
//   level 3 ══════  s₃      slabs elastic and alike, shores rigid and close, the lowest on rigid ground, no creep;
//           ││││││          in units of one slab's own weight
//   level 2 ══════  s₂      a shore under level L carries what the slabs from L up do not: Σ (1 − s)
//           ││││││
//   level 1 ══════  s₁
//
// Shores are never let go while their slab is stripped; reshores are put back snug after the slab has come to carry itself.

/** What stands under a slab: shores, reshores, or nothing. */
export type Support = "shores" | "reshores" | "none";

/** Levels upward from 1; index 0 is level 1. */
export interface ShoringState {
  /** Part of one slab's weight each slab carries itself. */
  readonly slabs: readonly number[];
  readonly supports: readonly Support[];
}

export type ShoringStep =
  | { readonly kind: "pour" }
  | { readonly kind: "remove"; readonly level: number }
  | { readonly kind: "reshore"; readonly level: number };

export const SHORING_FORMULA =
  "shore[L] = Σ_{i ≥ L} (1 − s_i); a pour adds 1/(number of slabs from the lowest unpropped one) to each of these; taking out P adds P/(number of slabs above) to each";
export const SHORING_SOURCE =
  "P. Grundy, A. Kabaila, simplified method (1963), as worked in the lecture Slab Reshoring (D. Allen), github.com/damontallen/Construction-Lectures-Fall-2014, Week 10";

export const BARE_GROUND: ShoringState = { slabs: [], supports: [] };

/** What stands under each slab carries, in slabs, level by level; 0 where nothing stands. */
export function shoreLoads({ slabs, supports }: ShoringState): readonly number[] {
  const loads = slabs.map(() => 0);
  let above = 0;
  for (let k = slabs.length - 1; k >= 0; k--) {
    above += 1 - slabs[k]!;
    loads[k] = supports[k] === "none" ? 0 : above;
  }
  return loads;
}

/**
 * The state after a step.
 *
 * @throws {RangeError} where the step cannot be done: nothing stands there to remove, something stands where a reshore is
 *   to go
 */
export function shoringAfter(state: ShoringState, step: ShoringStep): ShoringState {
  switch (step.kind) {
    case "pour":
      return poured(state);
    case "remove":
      return removed(state, step.level);
    case "reshore":
      return reshored(state, step.level);
  }
}

function poured({ slabs, supports }: ShoringState): ShoringState {
  let lowest = 0; // the level from which slabs share: the highest without supports, 0 = the ground
  supports.forEach((support, k) => {
    if (support === "none") lowest = k + 1;
  });
  // With supports down to the ground the ground takes it all; else every slab from the lowest unpropped one its part.
  const share = lowest === 0 ? 0 : 1 / (slabs.length - lowest + 1);
  return {
    slabs: [...slabs.map((carried, k) => (lowest > 0 && k + 1 >= lowest ? carried + share : carried)), 0],
    supports: [...supports, "shores"],
  };
}

function removed(state: ShoringState, level: number): ShoringState {
  const { slabs, supports } = state;
  if ((supports[level - 1] ?? "none") === "none")
    throw new RangeError(`nothing stands under slab ${level} that could be removed`);
  const share = shoreLoads(state)[level - 1]! / (slabs.length - level + 1);
  return {
    // What stood on the slabs below has gone: each carries itself again, as far as nothing above leans on it.
    slabs: slabs.map((carried, k) => (k + 1 >= level ? carried + share : 1)),
    supports: supports.map((support, k) => (k + 1 === level ? "none" : support)),
  };
}

function reshored({ slabs, supports }: ShoringState, level: number): ShoringState {
  if (supports[level - 1] !== "none")
    throw new RangeError(`slab ${level} stands on something already, or is not there`);
  return { slabs, supports: supports.map((support, k) => (k + 1 === level ? "reshores" : support)) };
}
