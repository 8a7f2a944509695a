// Which version is a project file, and how does a file of an earlier one become a file of this one?
//
// A migration takes the file from its version to the next; a file is carried through all that follow. It sees the file
// before it is checked, so it must cope with any JSON and leave alone what it does not understand.

import { fail, inside, type Place } from "../json/checker.ts";
import type { JsonObject } from "../json/value.ts";

export const PROJECT_FORMAT = "panelwright-project";

/** Makes a file of version n one of version n + 1; the version number itself is written by {@link migrate}. */
export type Migration = (file: JsonObject) => JsonObject;

/** The step from version 1 to 2 stands first. */
export const MIGRATIONS: readonly Migration[] = [];

/** The version this program reads without a step and writes. */
export const PROJECT_VERSION = MIGRATIONS.length + 1;

/** Brings a file to the last version the migrations lead to, or reports its format or version and gives undefined. */
export function migrate(
  file: JsonObject,
  place: Place,
  migrations: readonly Migration[] = MIGRATIONS,
): JsonObject | undefined {
  const { format, version } = file;
  const last = migrations.length + 1;
  if (format !== PROJECT_FORMAT) {
    return fail(inside(place, "format"), `"${PROJECT_FORMAT}"`, format);
  }
  const at = inside(place, "version");
  if (typeof version !== "number" || !Number.isSafeInteger(version) || version < 1) {
    return fail(at, last === 1 ? "the number 1" : `a whole number from 1 to ${last}`, version);
  }
  if (version > last) {
    return fail(at, `version ${last} or earlier; this file was made by a later program`, version);
  }
  const steps = migrations.slice(version - 1);
  return steps.reduce((older, step, index) => ({ ...step(older), version: version + index + 1 }), file);
}
