// What the choice changed, told size by size and interval by interval: the fill wall by wall beside the one that was chosen.

import type { Kit } from "../../kit/kit.ts";
import type { Project } from "../../plan/project.ts";
import { compareLines } from "../bill.ts";
import type { Casting } from "../castings.ts";
import type { FilledUnit } from "../fillWalls.ts";
import { codeSwap } from "../mirror.ts";
import { counted } from "../problems.ts";
import type { BillLine, SetPiece } from "../result.ts";
import type { ChangeCause, ChangedSequence, CodeChange, IntervalChange, SetChanges } from "../setChanges.ts";
import { type SeenStretch, stretchesSeen } from "../stretchPieces.ts";
import type { ChangedInterval } from "./changed.ts";
import { coverOf, placeKey } from "./chosen.ts";
import type { StatedProblem } from "./problemOf.ts";

/** One fill of all castings, with the set it takes. */
export interface Side {
  readonly filled: readonly FilledUnit[];
  /** By casting. */
  readonly bills: readonly (readonly BillLine[])[];
  readonly pieces: readonly SetPiece[];
}

export interface ChangesSource {
  readonly project: Project;
  readonly kit: Kit;
  readonly castings: readonly Casting[];
  readonly stated: StatedProblem;
  readonly before: Side;
  readonly beforeParts: SetChanges["before"];
  readonly after: Side;
  readonly changed: readonly ChangedInterval[];
}

export function describeChanges(source: ChangesSource): SetChanges {
  return {
    before: source.beforeParts,
    codes: codeChanges(source),
    intervals: intervalChanges(source),
    causes: changeCauses(source),
  };
}

interface Placed {
  readonly pour: string;
  readonly counts: ReadonlyMap<string, number>;
}

function codeChanges(source: ChangesSource): readonly CodeChange[] {
  const before = placedByPour(source, source.before.bills);
  const after = placedByPour(source, source.after.bills);
  const pieces = [...source.before.pieces, ...source.after.pieces];
  const known = new Map(pieces.map((piece) => [piece.code, piece]));
  const setOf = ({ pieces: own }: Side) => new Map(own.map((piece) => [piece.code, piece]));
  const beforeSet = setOf(source.before);
  const afterSet = setOf(source.after);
  return [...known.values()].sort(compareLines).flatMap(({ code, family, price }): readonly CodeChange[] => {
    const pours = before.map(({ pour, counts }, k) => ({
      pour,
      before: counts.get(code) ?? 0,
      after: after[k]!.counts.get(code) ?? 0,
    }));
    const isListed = family === "wall-panel" || family === "closure-strip";
    if (!isListed && pours.every((each) => each.before === each.after)) return [];
    const sumOf = (side: "before" | "after") => pours.reduce((sum, each) => sum + each[side], 0);
    const costOf = (set: ReadonlyMap<string, SetPiece>) => (set.get(code)?.toBuy ?? 0) * (price ?? 0);
    return [
      {
        code,
        family,
        placed: { before: sumOf("before"), after: sumOf("after") },
        needed: { before: beforeSet.get(code)?.needed ?? 0, after: afterSet.get(code)?.needed ?? 0 },
        cost: price === null ? null : { before: costOf(beforeSet), after: costOf(afterSet) },
        pours: pours.filter((each) => each.before > 0 || each.after > 0),
      },
    ];
  });
}

/** What every pour takes of each code; without pours every unit is one. */
function placedByPour(
  { project, kit, castings }: ChangesSource,
  bills: readonly (readonly BillLine[])[],
): readonly Placed[] {
  const swap = codeSwap(kit);
  const pours =
    project.pours.length === 0
      ? castings.map(({ unit }, casting) => ({ pour: unit.id, casting, mirror: false }))
      : project.pours.map(({ id, mirror }) => ({
          pour: id,
          casting: castings.findIndex((each) => each.pours.includes(id)),
          mirror,
        }));
  return pours.map(({ pour, casting, mirror }) => ({
    pour,
    counts: new Map(
      (bills[casting] ?? []).map(({ code, quantity }) => [mirror ? swap(code) : code, quantity]),
    ),
  }));
}

function intervalChanges({
  castings,
  stated,
  before,
  after,
  changed,
}: ChangesSource): readonly IntervalChange[] {
  const byCasting = castings.map(() => new Map<string, ChangedInterval>());
  for (const each of changed) byCasting[each.casting]!.set(placeKey(each.interval.stretch), each);
  const inMoney = (units: number | null) => (units === null ? null : units / stated.amounts.scale);
  return castings.flatMap(({ unit }, casting) => {
    const own = byCasting[casting]!;
    if (own.size === 0) return [];
    const was = before.filled[casting]!;
    const is = after.filled[casting]!;
    return is.drafts.flatMap((draft, face) => {
      const earlier = stretchesSeen(was, face);
      return stretchesSeen(is, face).flatMap((seen, k): readonly IntervalChange[] => {
        const change = own.get(placeKey(seen.stretch));
        const { opposite } = seen.stretch;
        if (change === undefined || opposite === null) return [];
        return [
          {
            unit: unit.id,
            wall: wallAt(seen, is),
            faces: [draft.id, is.drafts[opposite]!.id],
            from: seen.x,
            to: seen.x + seen.length,
            before: sequenceOf(earlier[k]!),
            after: sequenceOf(seen),
            alone: inMoney(change.alone),
            undone: inMoney(change.undone),
            because: change.because,
          },
        ];
      });
    });
  });
}

function sequenceOf({ pieces }: SeenStretch): ChangedSequence {
  const closure = pieces.findIndex(({ kind }) => kind === "closure");
  return { widths: pieces.map(({ width }) => width), closure: closure < 0 ? null : closure };
}

// The wall under the middle of the stretch.
function wallAt({ stretch, x, length }: SeenStretch, { drafts }: FilledUnit): string {
  const { formed } = drafts[stretch.face]!.settled;
  const { outlineFace, from } = formed;
  const dx = from[0] - outlineFace.from[0];
  const dy = from[1] - outlineFace.from[1];
  const middle = Math.sqrt(dx * dx + dy * dy) + x + length / 2;
  const under = outlineFace.walls.find(
    ({ side, start, end }) => (side === "left" || side === "right") && start <= middle && middle <= end,
  );
  return under?.wall ?? formed.walls[0] ?? "";
}

interface Gathered {
  readonly spared: readonly string[];
  readonly isDearer: boolean;
  intervals: number;
  fillers: number;
  closures: number;
}

// By the codes that the set is spared: what an engineer may buy more of, if these walls are to be as they would be alone.
function changeCauses({ stated, changed }: ChangesSource): readonly ChangeCause[] {
  const gathered = new Map<string, Gathered>();
  for (const { spared, undone, run, layout, interval } of changed) {
    const isDearer = undone === null || undone > 0;
    const key = `${spared.join(" ")} ${isDearer}`;
    const cause = gathered.get(key) ?? { spared, isDearer, intervals: 0, fillers: 0, closures: 0 };
    gathered.set(key, cause);
    const { widths, closure } = coverOf(stated, run, layout);
    cause.intervals += 1;
    cause.fillers += 2 * widths.filter((width) => !interval.table.isStandard(width)).length;
    cause.closures += closure === null ? 0 : 2;
  }
  return [...gathered.values()]
    .map(({ spared, isDearer, ...counts }) => ({
      message: causeMessage(spared, isDearer, counts),
      ...counts,
    }))
    .sort((a, b) => b.intervals - a.intervals);
}

function causeMessage(
  spared: readonly string[],
  isDearer: boolean,
  { intervals, fillers }: Pick<Gathered, "intervals" | "fillers">,
): string {
  const stand = `${fillers} fillers in ${counted(intervals, "interval")}`;
  if (spared.length > 0)
    return `${stand} spare the set ${spared.join(", ")}: filled by themselves, these would take more of them on the day that needs most.`;
  return isDearer
    ? `${stand} spare handling and closures: filled by themselves, these would take no larger set.`
    : `${stand} go together with other changes: filled by themselves one at a time, these would cost no more.`;
}
