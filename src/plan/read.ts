// From the text of a project file to the project, or to everything that is wrong with it.

import { emptyReport, fail, type Report, top } from "../json/checker.ts";
import type { Issue } from "../json/issue.ts";
import { parseJson } from "../json/parse.ts";
import { isObject } from "../json/value.ts";
import { MIGRATIONS, type Migration, migrate } from "./migrate.ts";
import type { Project } from "./project.ts";
import { checkReferences } from "./references.ts";
import { projectFile } from "./shape.ts";

/** "invalid": up to 50 issues, in the order of reading. Warnings name members the program keeps but does not know. */
export type ReadResult =
  | { readonly status: "ok"; readonly project: Project; readonly warnings: readonly Issue[] }
  | { readonly status: "invalid"; readonly issues: readonly Issue[] };

/**
 * Reads a project file and fills in every default. Time and memory grow with the length of the text, which is limited
 * to 64 million characters; no text makes it throw.
 */
export function readProject(text: string, migrations: readonly Migration[] = MIGRATIONS): ReadResult {
  const parsed = parseJson(text);
  if (parsed.status === "broken") return { status: "invalid", issues: parsed.issues };
  const report = emptyReport(parsed.issues);
  const place = top(report);
  if (!isObject(parsed.value)) {
    fail(place, "a project (an object)", parsed.value);
    return invalid(report);
  }
  const file = migrate(parsed.value, place, migrations);
  if (file === undefined) return invalid(report);
  const project = projectFile.read(file, place);
  checkReferences(file, place);
  if (project === undefined || report.issues.length > 0) return invalid(report);
  return { status: "ok", project, warnings: report.warnings };
}

function invalid(report: Report): ReadResult {
  return { status: "invalid", issues: report.issues };
}
