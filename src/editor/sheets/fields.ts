// What is printed in the title block and stands in no project file: kept by the browser, names and paper for every
// project, document and date for each by its name.

import type { SheetFields } from "../../sheet/info.ts";
import type { SmallPaper } from "../../sheet/paper.ts";

export type Fields = Required<SheetFields>;

export const EMPTY_FIELDS: Fields = {
  paper: "A4",
  document: "",
  date: "",
  madeBy: "",
  checkedBy: "",
  releasedBy: "",
};

/** Letters a field of the title block holds at most. */
export const LONGEST_FIELD = 60;

/** Projects whose document and date are kept. */
const MOST_PROJECTS = 50;

/** The fields as last kept. @param kept - what {@link keptFields} gave, or anything else: then nothing is known */
export function readFields(kept: string | null, project: string): Fields {
  const [members, projects] = parsed(kept);
  const [, document, date] = projects.find(([name]) => name === project) ?? [];
  return {
    paper: members.paper === "Letter" ? "Letter" : "A4",
    document: textOf(document),
    date: isDay(date) ? date : "",
    madeBy: textOf(members.madeBy),
    checkedBy: textOf(members.checkedBy),
    releasedBy: textOf(members.releasedBy),
  };
}

/** What to keep, with the fields of one project put in. */
export function keptFields(kept: string | null, project: string, fields: Fields): string {
  const others = parsed(kept)[1].filter(([name]) => name !== project);
  const { paper, madeBy, checkedBy, releasedBy, document, date } = fields;
  const projects = [[project, document, date], ...others].slice(0, MOST_PROJECTS);
  return JSON.stringify({ paper, madeBy, checkedBy, releasedBy, projects });
}

type Members = { readonly [name: string]: unknown };

function parsed(kept: string | null): readonly [Members, readonly (readonly unknown[])[]] {
  let value: unknown = null;
  try {
    value = JSON.parse(kept ?? "null");
  } catch {}
  if (!isMembers(value)) return [{}, []];
  const { projects } = value;
  return [value, Array.isArray(projects) ? projects.filter((each) => Array.isArray(each)) : []];
}

function isMembers(value: unknown): value is Members {
  return typeof value === "object" && value !== null;
}

function textOf(value: unknown): string {
  return typeof value === "string" ? value.slice(0, LONGEST_FIELD) : "";
}

function isDay(value: unknown): value is string {
  return typeof value === "string" && /^\d{4}-\d{2}-\d{2}$/.test(value);
}

/** The paper by its name; A4 where it is neither. */
export function paperNamed(name: string): SmallPaper {
  return name === "Letter" ? "Letter" : "A4";
}
