// Pins that the common choice made: they keep one set for every pour until it is chosen anew.

import type { Pinned, Project } from "../plan/project.ts";

/** Whether a pin is the choice's own, not the engineer's. */
export function isBySet({ by }: Pinned): boolean {
  return by === "set";
}

/** The project as its engineer made it: what the common choice pinned is free again. */
export function withoutSetPins(project: Project): Project {
  if (!project.units.some(({ pinned }) => pinned.some(isBySet))) return project;
  const units = project.units.map((unit) => ({
    ...unit,
    pinned: unit.pinned.filter((pin) => !isBySet(pin)),
  }));
  return { ...project, units };
}
