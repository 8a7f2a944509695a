// What is poured when: units at their storeys, and the days on which they are cast.

import type { Pour, Project, Storey, Unit } from "../plan/project.ts";

/** One unit at one storey, with the pours that cast it. */
export interface Casting {
  readonly unit: Unit;
  readonly storey: Storey;
  readonly pours: readonly string[];
  /** What the ids of its fill begin with. */
  readonly prefix: string;
  /** True where the storey is not the project's own. */
  readonly saysStorey: boolean;
}

/** The castings of a project: units in the order of the project, storeys in the order of the pours. */
export function castingsOf(project: Project): readonly Casting[] {
  return project.units.flatMap((unit) => castingsOfUnit(unit, project));
}

function castingsOfUnit(unit: Unit, project: Project): readonly Casting[] {
  const own: readonly Pour[] = project.pours.filter((pour) => pour.unit === unit.id);
  const castings: { storey: Storey; pours: string[] }[] = [];
  for (const pour of own) {
    const storey = pour.storey ?? project.storey;
    const known = castings.find((casting) => isSame(casting.storey, storey));
    if (known === undefined) castings.push({ storey, pours: [pour.id] });
    else known.pours.push(pour.id);
  }
  if (castings.length === 0) {
    castings.push({ storey: project.storey, pours: [] });
  }
  return castings.map(({ storey, pours }, k) => ({
    unit,
    storey,
    pours,
    prefix: k === 0 ? unit.id : `${unit.id}@${k + 1}`,
    saysStorey: castings.length > 1 || !isSame(storey, project.storey),
  }));
}

function isSame(a: Storey, b: Storey): boolean {
  return a.clearHeight === b.clearHeight && a.slab === b.slab;
}

/** One pour of a casting. */
export interface Casts {
  /** The place of the casting in the list. */
  readonly casting: number;
  readonly mirror: boolean;
  /** Its id; null in a project without pours. */
  readonly pour: string | null;
}

/**
 * The days of work, each with what is cast on it. Pours of one `day` are one day, at the place of the first of them;
 * without pours every unit is one, in the order listed.
 */
export function pourDays(project: Project, castings: readonly Casting[]): readonly (readonly Casts[])[] {
  if (project.pours.length === 0)
    return castings.map((_, casting) => [{ casting, mirror: false, pour: null }]);
  const days: Casts[][] = [];
  const byDay = new Map<number, Casts[]>();
  for (const { id, mirror, day } of project.pours) {
    const casting = castings.findIndex(({ pours }) => pours.includes(id));
    const known = day === null ? undefined : byDay.get(day);
    const casts = known ?? [];
    if (known === undefined) days.push(casts);
    if (day !== null) byDay.set(day, casts);
    casts.push({ casting, mirror, pour: id });
  }
  return days;
}

/** The names of the pours of each day, in the order of {@link pourDays}; without pours those of the units. */
export function poursByDay(project: Project): readonly (readonly string[])[] {
  const castings = castingsOf(project);
  return pourDays(project, castings).map((casts) =>
    casts.map(({ casting, pour }) => pour ?? castings[casting]!.unit.id),
  );
}
