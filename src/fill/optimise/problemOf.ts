// From a project and what its fills ask to the choice of the set, in whole numbers.

import { partnerOf } from "../../kit/handed.ts";
import type { Kit, Piece } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import { squareMetres } from "../../units.ts";
import { compareNaturally } from "../bill.ts";
import type { Casts } from "../castings.ts";
import { ownedOf } from "../dayNeeds.ts";
import type { PanelSet } from "../result.ts";
import type { FreeInterval } from "../solve.ts";
import { type Amounts, amountsOf, greatestDivisor } from "./amounts.ts";
import type { Codes, Demand, IntervalGroup } from "./demand.ts";
import type { Kind, Offer, Plan, Run, SetProblem, Use } from "./setProblem.ts";

export interface GivenSet {
  readonly project: Project;
  readonly kit: Kit;
  /** By casting. */
  readonly demands: readonly Demand[];
  readonly days: readonly (readonly Casts[])[];
  /** Whether pieces may be bought beyond those owned. */
  readonly buy: boolean;
  /** Most distinct widths; null: any number. */
  readonly mostWidths: number | null;
}

/** The intervals of one run of the problem. */
export interface RunIntervals {
  readonly casting: number;
  readonly group: IntervalGroup;
  /** Of its casting. */
  readonly pours: number;
  readonly intervals: readonly FreeInterval[];
}

export interface StatedProblem {
  readonly problem: SetProblem;
  /** Every interval covered as is best for it alone. */
  readonly wallByWall: Plan;
  /** By run. */
  readonly runs: readonly RunIntervals[];
  /** By kind. */
  readonly codes: readonly string[];
  readonly countedBy: PanelSet["countedBy"];
  readonly amounts: Amounts;
  /** Handling and closures that no choice changes, units. */
  readonly constant: { readonly handling: number; readonly closures: number };
}

/** The problem of a project; runs by casting, then by what may cover them, then longest first. */
export function problemOf(given: GivenSet): StatedProblem {
  const { project, kit, demands, days, buy, mostWidths } = given;
  const { handling, closure, closurePerMm, distinctSize, filler = 0 } = project.objective;
  const pieces = new Map(kit.pieces.map((piece) => [piece.code, piece]));
  const codes = codesOf(demands, kit);
  const countedBy = measureOf(codes.map((code) => pieces.get(code)));
  const amounts = amountsOf(
    [
      ...codes.map((code) => amountOf(pieces.get(code), countedBy)),
      handling,
      closure,
      closurePerMm,
      distinctSize,
      filler,
    ],
    timesOf(demands, days),
  );
  const kinds = codes.map((code): Kind => {
    const owned = ownedOf(project, code);
    const price = amounts.whole(amountOf(pieces.get(code), countedBy));
    return { price, owned, most: buy ? Number.POSITIVE_INFINITY : owned };
  });
  const inDays = daysOf({ codes, kit, days, pieces });
  const closureCost = (width: number) => amounts.whole(closure) + amounts.whole(closurePerMm) * width;
  const offers: Offer[] = [];
  const runs: Run[] = [];
  const runIntervals: RunIntervals[] = [];
  demands.forEach(({ groups }, casting) => {
    const pours = inDays.poursOf(casting);
    if (pours === 0) return;
    for (const group of groups) {
      const columns = group.widths.map(({ width, codes: own, pieces: each }) => ({
        width,
        cost:
          (amounts.whole(handling) + (group.table.isStandard(width) ? 0 : amounts.whole(filler))) *
          each *
          pours,
        blemish: blemishOf(width, group),
        uses: inDays.usesOf(casting, own),
      }));
      const closures = closureWidths(group).map((width) => ({ width, cost: 2 * pours * closureCost(width) }));
      for (const [length, intervals] of byLength(group.intervals)) {
        runs.push({ offer: offers.length, length, count: intervals.length });
        runIntervals.push({ casting, group, pours, intervals });
      }
      offers.push({ columns, closures });
    }
  });
  const standing = new Array<number>(days.length * codes.length).fill(0);
  const constant = { handling: 0, closures: 0 };
  demands.forEach((demand, casting) => {
    const pours = inDays.poursOf(casting);
    for (const { day, kind, count } of inDays.usesOf(casting, demand.standing)) {
      standing[day * codes.length + kind]! += count;
    }
    for (const count of demand.standing.values())
      constant.handling += amounts.whole(handling) * count * pours;
    for (const width of demand.closures) constant.closures += closureCost(width) * pours;
  });
  const kindCharge = amounts.whole(distinctSize);
  const costs = offers.flatMap(({ columns, closures }) => [...columns, ...closures].map(({ cost }) => cost));
  const prices = kinds.map(({ price }) => price);
  const step = greatestDivisor([...prices, ...costs, kindCharge, constant.handling, constant.closures]);
  const dearest = [...prices, ...costs].reduce((most, cost) => Math.max(most, cost), 1);
  const problem: SetProblem = {
    kinds,
    days: days.length,
    standing,
    offers,
    runs,
    kindCharge,
    shortage: Math.ceil((100 * dearest) / step) * step,
    constant: constant.handling + constant.closures,
    step,
    ...(mostWidths !== null && { mostWidths }),
  };
  return {
    problem,
    wallByWall: wallByWallPlan(problem, runIntervals),
    runs: runIntervals,
    codes,
    countedBy,
    amounts,
    constant,
  };
}

// As a fill judges an interval by itself: a narrow piece is worse than any filler.
function blemishOf(width: number, { table }: IntervalGroup): number {
  if (width < table.narrowUnder) return 4;
  return table.isStandard(width) ? 0 : 1;
}

function codesOf(demands: readonly Demand[], kit: Kit): readonly string[] {
  const codes = new Set<string>();
  for (const { groups, standing } of demands) {
    for (const code of standing.keys()) codes.add(code);
    for (const { widths } of groups)
      for (const own of widths) for (const code of own.codes.keys()) codes.add(code);
  }
  for (const piece of kit.pieces) {
    const partner = codes.has(piece.code) ? partnerOf(kit, piece) : null;
    if (partner !== null) codes.add(partner.code);
  }
  return [...codes].sort(compareNaturally);
}

function measureOf(panels: readonly (Piece | undefined)[]): PanelSet["countedBy"] {
  if (panels.every((panel) => panel !== undefined && panel.price !== null)) return "price";
  return panels.every((panel) => panel !== undefined && panel.mass > 0) ? "mass" : "area";
}

/** Fillers that a plan places, each counted in every pour. */
export function fillersIn({ problem, runs }: StatedProblem, plan: Plan): number {
  let sum = 0;
  runs.forEach(({ group: { table, widths }, pours }, run) => {
    const { columns } = problem.offers[problem.runs[run]!.offer]!;
    for (const { layout, times } of plan[run]!) {
      layout.counts.forEach((count, column) => {
        if (!table.isStandard(columns[column]!.width)) sum += count * times * widths[column]!.pieces * pours;
      });
    }
  });
  return sum;
}

/** What a panel counts for. */
export function amountOf(piece: Piece | undefined, by: PanelSet["countedBy"]): number {
  if (piece === undefined) return 0;
  if (by === "price") return piece.price ?? 0;
  if (by === "mass") return piece.mass;
  return piece.family === "wall-panel" ? squareMetres(piece.width, piece.height) : 0;
}

/** What stands in a mirrored pour for a piece of this code. */
export function mirroredCode(code: string, kit: Kit, pieces: ReadonlyMap<string, Piece>): string {
  const piece = pieces.get(code);
  return piece === undefined ? code : (partnerOf(kit, piece)?.code ?? code);
}

// More pieces than all pours together can have.
function timesOf(demands: readonly Demand[], days: GivenSet["days"]): number {
  const pours = days.reduce((sum, casts) => sum + casts.length, 0);
  let most = 1;
  for (const { groups, standing, closures } of demands) {
    let own = closures.length;
    for (const count of standing.values()) own += count;
    for (const { widths, intervals } of groups) {
      const narrowest = widths.at(-1)?.width ?? 1;
      const pieces = widths[0]?.pieces ?? 1;
      for (const { stretch } of intervals) own += pieces * ((stretch.high - stretch.low) / narrowest + 1000);
    }
    most = Math.max(most, own);
  }
  return most * pours;
}

interface InDays {
  readonly poursOf: (casting: number) => number;
  /** What pieces of a casting count for, by day and kind. */
  readonly usesOf: (casting: number, codes: Codes) => readonly Use[];
}

// A piece that stays counts on the day of its pour and in the windows of so many days before: the need of a window is what
// stands in it, so a day d here means the days d to d + stays.
function daysOf(given: {
  readonly codes: readonly string[];
  readonly kit: Kit;
  readonly days: GivenSet["days"];
  readonly pieces: ReadonlyMap<string, Piece>;
}): InDays {
  const { codes, kit, days, pieces } = given;
  const kindOf = new Map(codes.map((code, kind) => [code, kind]));
  const casts = days.flatMap((own, day) => own.map(({ casting, mirror }) => ({ casting, mirror, day })));
  return {
    poursOf: (casting) => casts.filter((cast) => cast.casting === casting).length,
    usesOf(casting, own) {
      const counts = new Map<number, number>();
      for (const cast of casts) {
        if (cast.casting !== casting) continue;
        for (const [code, count] of own) {
          const kind = kindOf.get(cast.mirror ? mirroredCode(code, kit, pieces) : code);
          if (kind === undefined || count === 0) continue;
          const stays = pieces.get(code)?.stays ?? 0;
          for (let day = Math.max(0, cast.day - stays); day <= cast.day; day++) {
            const place = day * codes.length + kind;
            counts.set(place, (counts.get(place) ?? 0) + count);
          }
        }
      }
      return [...counts].map(([place, count]) => ({
        day: Math.floor(place / codes.length),
        kind: place % codes.length,
        count,
      }));
    },
  };
}

function closureWidths({ table }: IntervalGroup): readonly number[] {
  const { closure } = table;
  if (closure === null) return [];
  return Array.from({ length: closure.greatest - closure.least + 1 }, (_, k) => closure.least + k);
}

function byLength(
  intervals: readonly FreeInterval[],
): readonly (readonly [number, readonly FreeInterval[]])[] {
  const lengths = new Map<number, FreeInterval[]>();
  for (const interval of intervals) {
    const length = interval.stretch.high - interval.stretch.low;
    const known = lengths.get(length);
    if (known === undefined) lengths.set(length, [interval]);
    else known.push(interval);
  }
  return [...lengths].sort(([a], [b]) => b - a);
}

function wallByWallPlan(problem: SetProblem, runs: readonly RunIntervals[]): Plan {
  return problem.runs.map(({ offer, count }, run) => {
    const { columns, closures } = problem.offers[offer]!;
    const { cover } = runs[run]!.intervals[0]!;
    const counts = columns.map(({ width }) => cover.widths.filter((own) => own === width).length);
    const closure = closures.findIndex(({ width }) => width === cover.closure);
    return [{ layout: { counts, closure }, times: count }];
  });
}
