// The sample files, read and filled with the kit they name.

import { readFileSync } from "node:fs";
import { fillProject } from "../../src/fill/fillProject.ts";
import type { FillDocument } from "../../src/fill/result.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { resolveKit } from "../../src/kit/resolve.ts";
import type { Project } from "../../src/plan/project.ts";
import { readProject } from "../../src/plan/read.ts";

const union = await loadUnion();

export function sampleText(name: string): string {
  return readFileSync(new URL(`../../samples/${name}.json`, import.meta.url), "utf8");
}

/** @throws {Error} if the file is not a project without any warning */
export function sampleProject(name: string): Project {
  const read = readProject(sampleText(name));
  if (read.status !== "ok") throw new Error(JSON.stringify(read.issues));
  if (read.warnings.length > 0) throw new Error(JSON.stringify(read.warnings));
  return read.project;
}

/** @throws {Error} if the project's kit cannot be read */
export function filled(project: Project): FillDocument {
  const answer = resolveKit(project.kit);
  if (answer.status !== "ok") throw new Error(JSON.stringify(answer));
  return fillProject(project, answer.kit, union);
}

const NAMES = ["awkward", "mirrored-pair", "one-room", "row-of-three", "two-bedroom"] as const;

/** Every sample with its fill; all of them name the demo kit. */
export function samples(): readonly { readonly project: Project; readonly fill: FillDocument }[] {
  return NAMES.map((name) => {
    const project = sampleProject(name);
    return { project, fill: filled(project) };
  });
}
