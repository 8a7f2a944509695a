// The keyboard while a view lies over the plan. The plan's tools and commands are out of reach then: only what concerns the
// whole program goes on to the page.

import { useEffect, useRef } from "react";
import { type CommandId, chordOf, commandFor } from "../keys.ts";

/** Chords as the list of commands writes them, each with what it does here. */
export type OverKeys = readonly (readonly [chord: string, run: () => void])[];

const GOES_ON: ReadonlySet<CommandId> = new Set([
  "command.undo",
  "command.redo",
  "command.sheets",
  "command.set",
  "command.checks",
  "command.kit",
  "command.problems",
  "command.projects",
  "command.theme",
  "command.next-region",
  "command.find",
  "command.save-file",
  "command.open-file",
]);

/** Chords that a field with text keeps to itself. */
const IN_FIELDS: ReadonlySet<string> = new Set(["Ctrl+P"]);

/** Listens behind the parts of the view, which take their own keys first, and before the page. */
export function useOverKeys(keys: OverKeys): void {
  const now = useRef(keys);
  useEffect(() => {
    now.current = keys;
  });
  useEffect(() => {
    const down = (event: KeyboardEvent) => {
      const chord = chordOf(event);
      const isField =
        event.target instanceof HTMLElement &&
        event.target.matches("input:not([type=checkbox]), select, textarea, .finder *");
      const [, own] = now.current.find(([each]) => each === chord) ?? [];
      if (own !== undefined && !event.defaultPrevented && (!isField || IN_FIELDS.has(chord))) {
        own();
        event.preventDefault();
        event.stopPropagation();
        return;
      }
      const command = commandFor(chord);
      if (event.defaultPrevented || command === null || !GOES_ON.has(command.id)) event.stopPropagation();
    };
    document.addEventListener("keydown", down);
    return () => document.removeEventListener("keydown", down);
  }, []);
}
