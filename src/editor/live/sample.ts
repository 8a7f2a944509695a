// The sample project that comes with the program.

import sample from "../../../samples/two-bedroom.json?raw";
import type { Language, Project } from "../../plan/project.ts";
import { readProject } from "../../plan/read.ts";

/**
 * The sample, to be spoken in a language: its own names stay as they are.
 *
 * @throws {Error} if the program was built with a sample that it cannot read
 */
export function sampleProject(language: Language): Project {
  const read = readProject(sample);
  if (read.status === "invalid") throw new Error("the sample that comes with the program cannot be read");
  return { ...read.project, language };
}
