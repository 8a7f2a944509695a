// What a button says when the pointer rests on it: its name and its key.

import { COMMANDS, type CommandId } from "../keys.ts";
import { type Words, words } from "../words/say.ts";

export function chordOfCommand(id: CommandId): string | null {
  return COMMANDS.find((command) => command.id === id)?.chord ?? null;
}

export function commandTip(id: CommandId, t: (said: Words) => string): string {
  const command = COMMANDS.find((entry) => entry.id === id);
  if (command === undefined) return "";
  const name = t({ key: command.words, values: {} });
  return command.chord === null
    ? name
    : t(words("bar.tip", { name, keys: command.chord.replaceAll("+", " ") }));
}
