// What a person reads on the screen after a fill: the counts, then what is wrong, errors first.

import { entryNames } from "../fill/entryNames.ts";
import type { FillDocument, Problem } from "../fill/result.ts";
import { roundTo } from "../units.ts";

/** More lines than this say no more on a screen; the result has them all. */
const MOST_PROBLEMS = 40;

interface Placed {
  readonly unit: string;
  readonly problem: Problem;
}

/** One line of counts, one for each problem with its place, errors before warnings, and a closing line. */
export function fillSummary(fill: FillDocument): string {
  const { closures, fillers, zones, panels } = fill.totals;
  const mass = fill.units.flatMap((unit) => unit.bill).reduce((sum, line) => sum + line.mass, 0);
  const counts =
    `closures ${closures}, fillers ${fillers}, zones ${zones}, panels ${panels}, ` +
    `mass of all pieces ${roundTo(mass, 2)} kg`;
  const names = entryNames(fill);
  const all = fill.units.flatMap(({ problems }, index) =>
    problems.map((problem) => ({ unit: names[index]!, problem })),
  );
  const errors = all.filter(({ problem }) => problem.severity === "error");
  const warnings = all.filter(({ problem }) => problem.severity === "warning");
  const shown = [...errors, ...warnings].slice(0, MOST_PROBLEMS).map(problemLine);
  const more = all.length - shown.length;
  return [
    `${fill.project === "" ? "Fill" : fill.project}: ${counts}.`,
    ...shown,
    ...(more > 0 ? [`… and ${more} more, all of them in the result.`] : []),
    ...(all.length > 0 ? [`${plural(errors.length, "error")}, ${plural(warnings.length, "warning")}.`] : []),
    "",
  ].join("\n");
}

function problemLine({ unit, problem }: Placed): string {
  const severity = problem.severity === "error" ? "Error" : "Warning";
  return `${severity} in ${[`unit ${unit}`, ...place(problem.where)].join(", ")}: ${problem.message}`;
}

function place(where: Problem["where"]): readonly string[] {
  const parts: string[] = [];
  if (where.room !== undefined) parts.push(`room ${where.room}`);
  if (where.wall !== undefined) parts.push(`wall ${where.wall}`);
  if (where.face !== undefined) parts.push(`face ${where.face}`);
  if (where.opening !== undefined) parts.push(`opening ${where.opening}`);
  if (where.x !== undefined) parts.push(`at ${roundTo(where.x, 3)} mm along it`);
  if (where.at !== undefined) parts.push(`at (${where.at.map((value) => roundTo(value, 3)).join(", ")}) mm`);
  if (where.code !== undefined) parts.push(`piece ${where.code}`);
  return parts;
}

/** "1 error", "2 errors", "no errors". */
function plural(count: number, noun: string): string {
  return `${count === 0 ? "no" : count} ${noun}${count === 1 ? "" : "s"}`;
}
