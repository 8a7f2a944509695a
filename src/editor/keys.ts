// The list of commands: what each is called, which keys call it, and when it can be called. The page's tooltips, the
// command search and the keyboard all read this one list.

import type { Language } from "../plan/project.ts";
import type { ToolName } from "./tools/tool.ts";
import type { WordKey } from "./words/en.ts";
import { type Speech, say } from "./words/say.ts";

/** When a command can be called. */
export type Condition =
  | "always"
  | "something-to-undo"
  | "something-to-redo"
  | "something-selected"
  | "nothing-selected"
  | "one-wall-selected"
  | "walls-selected"
  | "something-copied"
  | "face-shown";

export type CommandId = `tool.${ToolName}` | Extract<WordKey, `command.${string}`>;

export interface Command {
  readonly id: CommandId;
  readonly words: WordKey;
  /** In the order Ctrl, Alt, Shift, key; null = by search and menu only. */
  readonly chord: string | null;
  readonly when: Condition;
}

function tool(name: ToolName, chord: string | null): Command {
  return { id: `tool.${name}`, words: `tool.${name}`, chord, when: "always" };
}

function command(
  id: Extract<WordKey, `command.${string}`>,
  chord: string | null,
  when: Condition = "always",
): Command {
  return { id, words: id, chord, when };
}

/** All commands, in the order they are listed. */
export const COMMANDS: readonly Command[] = [
  tool("select", "V"),
  tool("wall", "W"),
  tool("door", "D"),
  tool("window", "N"),
  tool("column", "C"),
  tool("room", "R"),
  tool("service", "S"),
  tool("control-line", "L"),
  tool("measure", "M"),
  tool("slab", "B"),
  tool("slab-opening", "Shift+B"),
  command("command.underlay", "U"),
  tool("calibrate", null),
  command("command.undo", "Ctrl+Z", "something-to-undo"),
  command("command.redo", "Ctrl+Shift+Z", "something-to-redo"),
  command("command.copy", "Ctrl+C", "something-selected"),
  command("command.cut", "Ctrl+X", "something-selected"),
  command("command.paste", "Ctrl+V", "something-copied"),
  command("command.delete", "Delete", "something-selected"),
  command("command.select-all", "Ctrl+A"),
  command("command.turn-left", "Shift+R", "something-selected"),
  command("command.turn-right", "Ctrl+Shift+R", "something-selected"),
  command("command.mirror-across", "H", "something-selected"),
  command("command.mirror-upright", "Shift+H", "something-selected"),
  command("command.split", "K", "one-wall-selected"),
  command("command.join", "J", "walls-selected"),
  command("command.flip", "Shift+F", "walls-selected"),
  command("command.offset-left", "[", "walls-selected"),
  command("command.offset-right", "]", "walls-selected"),
  command("command.duplicate-unit", null),
  command("command.duplicate-mirrored", null),
  command("command.toggle-ortho", "Shift+L"),
  command("command.toggle-snap", "Shift+G"),
  command("command.other-face", "F", "face-shown"),
  command("command.pin", "P", "face-shown"),
  command("command.swap", "X", "face-shown"),
  command("command.covers", "O", "face-shown"),
  command("command.nudge", "T", "face-shown"),
  command("command.elevation", "E"),
  command("command.because", "Q", "face-shown"),
  command("command.sheets", "Ctrl+P"),
  command("command.set", "Shift+S"),
  command("command.checks", "Shift+C"),
  command("command.kit", "Shift+K"),
  command("command.problems", "Shift+P"),
  command("command.new-unit", null),
  command("command.things", "Shift+T"),
  command("command.all-widths", "Shift+W"),
  command("command.soffit", "G"),
  command("command.theme", "Shift+D"),
  command("command.speak-en", null),
  command("command.speak-es", null),
  command("command.speak-pt", null),
  command("command.fit", "0", "nothing-selected"),
  command("command.zoom-in", "+"),
  command("command.zoom-out", "\u2212"),
  command("command.next-region", "F6"),
  command("command.find", "Ctrl+K"),
  command("command.projects", "Shift+O"),
  command("command.save-file", "Ctrl+S"),
  command("command.open-file", "Ctrl+O"),
];

/** A key as the page reports it. */
export interface KeyStroke {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
}

/** The chord of a key stroke as the list writes it; the command key counts as Ctrl. Signs carry their own Shift. */
export function chordOf(stroke: KeyStroke): string {
  const isLetter = /^\p{L}$/u.test(stroke.key);
  const isSign = stroke.key.length === 1 && !isLetter;
  const key = isLetter ? stroke.key.toUpperCase() : stroke.key === "-" ? "\u2212" : stroke.key;
  const parts = [
    stroke.ctrlKey || stroke.metaKey ? "Ctrl" : null,
    stroke.altKey ? "Alt" : null,
    stroke.shiftKey && !isSign ? "Shift" : null,
    key,
  ];
  return parts.filter((part) => part !== null).join("+");
}

/** The command a chord calls, or null. Backspace deletes as Delete does; Ctrl+Y redoes, too. */
export function commandFor(chord: string): Command | null {
  const written = ALSO[chord] ?? chord;
  return COMMANDS.find((entry) => entry.chord === written) ?? null;
}

const ALSO: Readonly<Partial<Record<string, string>>> = {
  Backspace: "Delete",
  "Ctrl+Y": "Ctrl+Shift+Z",
  "=": "+",
};

/** A chord as a list of keys to print: Ctrl, Z. */
export function chordKeys(chord: string): readonly string[] {
  return chord === "+" ? ["+"] : chord.split("+");
}

/**
 * Commands whose name has every word of `text` at the beginning of one of its own, names that begin with the text
 * first; all commands for an empty text. Accents and case do not matter.
 */
export function searchCommands(text: string, speech: Speech): readonly Command[] {
  const wanted = bare(text, speech.language)
    .split(/\s+/)
    .filter((word) => word !== "");
  const named = COMMANDS.map((entry) => ({
    entry,
    name: bare(say(speech, { key: entry.words, values: {} }), speech.language),
  }));
  const found = named.filter(({ name }) => {
    const own = name.split(/[\s,]+/);
    return wanted.every((word) => own.some((part) => part.startsWith(word)));
  });
  const whole = wanted.join(" ");
  const first = found.filter(({ name }) => name.startsWith(whole));
  const rest = found.filter(({ name }) => !name.startsWith(whole));
  return [...first, ...rest].map(({ entry }) => entry);
}

function bare(text: string, language: Language): string {
  return text.toLocaleLowerCase(language).normalize("NFD").replaceAll(/\p{M}/gu, "");
}
