// Reads the words after the program's name: which command, on what, with which options.

import { nearest } from "./nearest.ts";
import { COMMANDS, type CommandUsage, synopsis } from "./usage.ts";

export type Arguments =
  | { readonly status: "help"; readonly command: CommandUsage | null }
  | { readonly status: "version" }
  | {
      readonly status: "run";
      readonly command: CommandUsage;
      readonly operands: readonly string[];
      /** By name, without the dashes. */
      readonly options: ReadonlyMap<string, string>;
    }
  | { readonly status: "not-built"; readonly command: CommandUsage }
  | { readonly status: "bad-usage"; readonly message: string };

/**
 * The first word is the command; options may stand anywhere after it, as `--name VALUE` or `--name=VALUE`; after
 * `--` every word is an operand. A lone "-" is an operand.
 */
export function readArguments(argv: readonly string[]): Arguments {
  const [name, ...words] = argv;
  if (name === undefined) return badUsage("No command given.", null);
  if (isHelp(name)) return { status: "help", command: null };
  if (name === "--version") return { status: "version" };
  const command = COMMANDS.find((known) => known.name === name);
  if (command === undefined) return badUsage(unknownCommand(name), null);
  if (asksHelp(words)) return { status: "help", command: command.isBuilt ? command : null };
  if (!command.isBuilt) return { status: "not-built", command };
  return readWords(command, words);
}

function readWords(command: CommandUsage, words: readonly string[]): Arguments {
  const operands: string[] = [];
  const options = new Map<string, string>();
  const rest = [...words];
  while (rest.length > 0) {
    const word = rest.shift()!;
    if (word === "--version") return { status: "version" };
    if (word === "--") operands.push(...rest.splice(0));
    else if (word === "-" || !word.startsWith("-")) operands.push(word);
    else {
      const message = readOption(command, word, rest, options);
      if (message !== null) return badUsage(message, command);
    }
  }
  const missing = command.operands[operands.length];
  if (missing !== undefined) return badUsage(`${command.name} needs a ${missing}.`, command);
  const surplus = operands[command.operands.length];
  if (surplus !== undefined)
    return badUsage(`"${surplus}" is one name too many for ${command.name}.`, command);
  if (operands.includes("")) return badUsage("The name of a file is empty.", command);
  const needed = command.options.find(({ name, isRequired }) => isRequired === true && !options.has(name));
  if (needed !== undefined)
    return badUsage(`${command.name} needs --${needed.name} ${needed.value}.`, command);
  return { status: "run", command, operands, options };
}

/** Takes one option and its value into `options`, off `rest` if need be. Returns what is wrong with it, or null. */
function readOption(
  command: CommandUsage,
  word: string,
  rest: string[],
  options: Map<string, string>,
): string | null {
  const equals = word.indexOf("=");
  const spelled = equals < 0 ? word : word.slice(0, equals);
  const option = command.options.find((known) => `--${known.name}` === spelled);
  if (option === undefined) return unknownOption(command, spelled);
  if (options.has(option.name)) return `${spelled} is given twice.`;
  const isNext = equals < 0 && (rest[0] === "-" || !rest[0]?.startsWith("-"));
  const value = isNext ? rest.shift() : equals < 0 ? undefined : word.slice(equals + 1);
  if (value === undefined || value === "") return `${spelled} needs a ${option.value} after it.`;
  if (value === "-" && option.value === "DIR")
    return `${spelled} needs a ${option.value}; it writes several files, and "-" is none.`;
  if (option.choices?.includes(value) === false)
    return `${spelled} takes ${option.choices.join(", ")}, not "${value}".`;
  if (option.accepts?.(value) === false) return `${spelled} takes ${option.value}, not "${value}".`;
  options.set(option.name, value);
  return null;
}

function unknownCommand(name: string): string {
  const meant = nearest(
    name,
    COMMANDS.map((command) => command.name),
  );
  const hint = meant === null ? "" : ` Did you mean "${meant}"?`;
  return name.startsWith("-") && meant === null
    ? `Unknown option ${name}; the command comes first.`
    : `Unknown command "${name}".${hint}`;
}

function unknownOption(command: CommandUsage, spelled: string): string {
  const known = [...command.options.map((option) => `--${option.name}`), "--help", "--version"];
  const meant = nearest(
    spelled.replace(/^-+/, ""),
    known.map((name) => name.slice(2)),
  );
  return meant === null
    ? `Unknown option ${spelled}; ${command.name} knows ${known.join(", ")}.`
    : `Unknown option ${spelled}; did you mean --${meant}?`;
}

function badUsage(message: string, command: CommandUsage | null): Arguments {
  const usage = command === null ? "COMMAND …" : synopsis(command);
  return { status: "bad-usage", message: `${message}\nUsage: panelwright ${usage}\n` };
}

function asksHelp(words: readonly string[]): boolean {
  const end = words.indexOf("--");
  return words.slice(0, end < 0 ? words.length : end).some(isHelp);
}

const isHelp = (word: string) => word === "--help" || word === "-h";
