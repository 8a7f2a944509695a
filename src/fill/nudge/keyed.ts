// What an interval or a face is called before and after a small move, so that the two can be told to be the same: by its
// walls, its room and its turn, then by its place among those that share all of these.

import type { FilledUnit } from "../fillWalls.ts";
import type { SettledFace } from "../settled.ts";
import type { FreeInterval } from "../solve.ts";

/** The free intervals by name. */
export function keyedIntervals(
  { drafts }: FilledUnit,
  free: readonly FreeInterval[],
): ReadonlyMap<string, FreeInterval> {
  return keyed(free, ({ stretch }) => {
    const { settled } = drafts[stretch.face]!;
    const other = stretch.opposite === null ? null : drafts[stretch.opposite]!;
    const across = other === null ? "" : nameOf(other.settled, other.room);
    return [`${nameOf(settled, drafts[stretch.face]!.room)} | ${across}`, stretch.low] as const;
  });
}

/** The faces by name, as indices. */
export function keyedFaces({ drafts }: FilledUnit): ReadonlyMap<string, number> {
  return keyed(
    drafts.map((_, face) => face),
    (face) => {
      const { settled, room } = drafts[face]!;
      return [nameOf(settled, room), settled.low] as const;
    },
  );
}

function nameOf({ formed, isReversed }: SettledFace, room: string | null): string {
  const walls = [...formed.walls].sort((a, b) => (a < b ? -1 : 1)).join(" ");
  return `${room ?? ""} / ${walls} / ${isReversed} ${formed.isFreeEnd} ${formed.exposure}`;
}

function keyed<T>(
  things: readonly T[],
  named: (thing: T) => readonly [name: string, place: number],
): ReadonlyMap<string, T> {
  const groups = new Map<string, { readonly thing: T; readonly place: number }[]>();
  for (const thing of things) {
    const [name, place] = named(thing);
    const known = groups.get(name);
    if (known === undefined) groups.set(name, [{ thing, place }]);
    else known.push({ thing, place });
  }
  const found = new Map<string, T>();
  for (const [name, group] of groups) {
    group.sort((a, b) => a.place - b.place);
    for (const [k, { thing }] of group.entries()) found.set(`${name} ${k}`, thing);
  }
  return found;
}

/** Whether two fills have the same faces and intervals, by name. */
export function isSameKeys(a: ReadonlyMap<string, unknown>, b: ReadonlyMap<string, unknown>): boolean {
  return a.size === b.size && [...a.keys()].every((key) => b.has(key));
}
