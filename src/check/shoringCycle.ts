// In which order are storeys cast, stripped and reshored, and what is the most that slab and shores then carry?

import { type Answer, computed, refusalOf } from "./range.ts";
import {
  BARE_GROUND,
  type ShoringState,
  type ShoringStep,
  shoreLoads,
  shoringAfter,
} from "./shoringSteps.ts";

export interface ShoringScheme {
  /** Storeys on shores at once, 1 to 6, and storeys on reshores below them, 0 to 6. */
  readonly shores: number;
  readonly reshores: number;
  /** What comes out first after a pour: the lowest shores, or the lowest reshores. */
  readonly first: "shores" | "reshores";
  /** Storeys cast, 1 to 60. */
  readonly storeys: number;
}

export interface ShoringRecord {
  /** "pour 3", "remove 1", "reshore 1". */
  readonly step: string;
  readonly slabs: readonly number[];
  readonly shores: readonly number[];
}

export interface ShoringCycle {
  readonly records: readonly ShoringRecord[];
  /** Greatest part of a slab carried by one slab, and where. */
  readonly peakSlab: { readonly ratio: number; readonly step: string; readonly level: number };
  readonly peakShore: { readonly ratio: number; readonly step: string; readonly level: number };
}

const SHORES = { input: "number of shored storeys", least: 1, greatest: 6, unit: "" } as const;
const RESHORES = { input: "number of reshored storeys", least: 0, greatest: 6, unit: "" } as const;
const STOREYS = { input: "number of storeys", least: 1, greatest: 60, unit: "" } as const;

/**
 * Storey after storey to the last pour, then down to bare slabs; slab and shore loads after every step, in slabs' own
 * weights.
 *
 * @param scheme - 1 to 6 storeys of shores, 0 to 6 of reshores, 1 to 60 storeys; outside these it is refused
 */
export function shoringCycle(scheme: ShoringScheme): Answer<ShoringCycle> {
  const { shores, reshores, storeys } = scheme;
  const refusal = refusalOf([shores, SHORES], [reshores, RESHORES], [storeys, STOREYS]);
  if (refusal !== null) return refusal;
  let state: ShoringState = BARE_GROUND;
  const records: ShoringRecord[] = [];
  const take = (step: ShoringStep) => {
    state = shoringAfter(state, step);
    records.push({
      step: step.kind === "pour" ? `pour ${state.slabs.length}` : `${step.kind} ${step.level}`,
      slabs: state.slabs,
      shores: shoreLoads(state),
    });
  };
  for (let storey = 1; storey <= storeys; storey++) {
    take({ kind: "pour" });
    if (storey < storeys && countOf(state, "shores") >= shores)
      for (const step of stepsOfStrip(scheme, state)) take(step);
  }
  // The building is not done while shores stand: on few storeys a slab carries most when the first ones come out.
  while (countOf(state, "shores") > 0) for (const step of stepsOfStrip(scheme, state)) take(step);
  while (countOf(state, "reshores") > 0) take({ kind: "remove", level: lowestOf(state, "reshores") });
  const peak = (of: (record: ShoringRecord) => readonly number[]) => peakOf(records, of);
  return computed({
    records,
    peakSlab: peak(({ slabs }) => slabs),
    peakShore: peak((record) => record.shores),
  });
}

/** The lowest shores come out, the slab they left is reshored, and of full sets of reshores the lowest goes. */
function stepsOfStrip({ reshores, first }: ShoringScheme, state: ShoringState): readonly ShoringStep[] {
  const strip = { kind: "remove", level: lowestOf(state, "shores") } as const;
  const takeOut: readonly ShoringStep[] =
    reshores > 0 && countOf(state, "reshores") >= reshores
      ? [{ kind: "remove", level: lowestOf(state, "reshores") }]
      : [];
  const putBack: readonly ShoringStep[] = reshores > 0 ? [{ kind: "reshore", level: strip.level }] : [];
  return first === "shores" ? [strip, ...takeOut, ...putBack] : [...takeOut, strip, ...putBack];
}

function countOf({ supports }: ShoringState, kind: "shores" | "reshores"): number {
  return supports.filter((each) => each === kind).length;
}

function lowestOf({ supports }: ShoringState, kind: "shores" | "reshores"): number {
  return supports.indexOf(kind) + 1;
}

function peakOf(records: readonly ShoringRecord[], of: (record: ShoringRecord) => readonly number[]) {
  let peak = { ratio: 0, step: "", level: 0 };
  for (const record of records) {
    of(record).forEach((ratio, k) => {
      if (ratio > peak.ratio + 1e-12) peak = { ratio, step: record.step, level: k + 1 };
    });
  }
  return peak;
}
