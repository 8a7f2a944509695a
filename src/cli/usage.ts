// Which commands there are, what each takes, and how that is told. The reader of arguments goes by these tables.

interface OptionUsage {
  readonly name: string;
  /** What stands for its value in the usage, such as "DIR". Every option but help and version takes one. */
  readonly value: string;
  readonly meaning: string;
}

export interface CommandUsage {
  readonly name: string;
  readonly operands: readonly string[];
  readonly options: readonly OptionUsage[];
  readonly purpose: string;
  readonly isBuilt: boolean;
}

const FILL: CommandUsage = {
  name: "fill",
  operands: ["PROJECT"],
  options: [
    {
      name: "out",
      value: "DIR",
      meaning: "also write bill.csv and one SVG file per sheet into this folder; it is made if it is missing",
    },
    { name: "json", value: "FILE", meaning: "write the result here instead of to standard output" },
  ],
  purpose: "tile every wall face of every unit and list what it takes, as JSON",
  isBuilt: true,
};

const CHECK: CommandUsage = {
  name: "check",
  operands: ["PROJECT"],
  options: [{ name: "json", value: "FILE", meaning: "write the checks here instead of to standard output" }],
  purpose: "fill every unit and check every prop under its slab against a stated limit, as JSON",
  isBuilt: true,
};

const later = (name: string, purpose: string): CommandUsage => ({
  name,
  operands: [],
  options: [],
  purpose,
  isBuilt: false,
});

export const COMMANDS: readonly CommandUsage[] = [
  FILL,
  CHECK,
  later("optimise", "choose the fill of all units together, so that one panel set serves every pour"),
  later("sheets", "room sheets, elevations, soffit plan, setting-out sheet, bill and packing list"),
  later("import", "read a drawing or a building model into a project file"),
  later("export", "drawings and lists for other programs"),
];

const EXITS = `Exit codes:
  0  done, nothing to report
  1  done, with at least one error in the result or a check over its limit
  2  cannot be done: bad usage, an unreadable or invalid file, a command not built yet
`;

/** The text of `panelwright --help`. */
export function overview(): string {
  const built = COMMANDS.filter((command) => command.isBuilt);
  const planned = COMMANDS.filter((command) => !command.isBuilt);
  const list = (commands: readonly CommandUsage[]) =>
    commands.map((command) => `  ${command.name.padEnd(10)}${command.purpose}\n`).join("");
  return `Usage: panelwright COMMAND …

Plans hand-set panel formwork for concrete housing from a project file.

Commands:
${list(built)}
Not built yet:
${list(planned)}
Options:
  --help      this text; after a command, what the command takes
  --version   the version

"-" stands for standard input or output. Results go to standard output, messages to standard error.
${EXITS}`;
}

/** The text of `panelwright COMMAND --help`. */
export function commandHelp(command: CommandUsage): string {
  const options = command.options.map(
    (option) => `  ${`--${option.name} ${option.value}`.padEnd(14)}${option.meaning}\n`,
  );
  return `Usage: panelwright ${synopsis(command)}

${capital(command.purpose)}.

Options:
${options.join("")}
PROJECT and FILE may be "-": standard input and standard output.
${EXITS}`;
}

/** The command as it is called: "fill PROJECT [--out DIR] [--json FILE]". */
export function synopsis(command: CommandUsage): string {
  const options = command.options.map((option) => `[--${option.name} ${option.value}]`);
  return [command.name, ...command.operands, ...options].join(" ");
}

const capital = (text: string) => text.slice(0, 1).toUpperCase() + text.slice(1);
