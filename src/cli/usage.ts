// Which commands there are, what each takes, and how that is told. The reader of arguments goes by these tables.

interface OptionUsage {
  readonly name: string;
  /** What stands for its value in the usage, such as "DIR". Every option but help and version takes one. */
  readonly value: string;
  readonly meaning: string;
  /** The command cannot do without it. */
  readonly isRequired?: boolean;
  /** The only values it takes. */
  readonly choices?: readonly string[];
  /** Whether it takes the value, where that cannot be listed; {@link value} says the form. */
  readonly accepts?: (value: string) => boolean;
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
      meaning:
        "also write bill.csv, packing.csv, accessories.csv, shortage.csv, deltas.csv (from pour to pour), stake-out lists and one SVG file per sheet into this folder; it is made if it is missing",
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
  purpose: "fill every unit and check panels, ties, props, lifts and striking against stated limits, as JSON",
  isBuilt: true,
};

export const FORMATS = ["pdf", "svg", "html"] as const;
export const SMALL_PAPERS = ["A4", "Letter"] as const;

const SHEETS: CommandUsage = {
  name: "sheets",
  operands: ["PROJECT"],
  options: [
    {
      name: "out",
      value: "DIR",
      meaning:
        "write the sheets, sheets.csv (their codes) and the lists as CSV into this folder; it is made if missing",
      isRequired: true,
    },
    {
      name: "format",
      value: FORMATS.join("|"),
      meaning: "pdf (if not given) and html: one file for each unit, storey and hand; svg: one file a sheet",
      choices: FORMATS,
    },
    {
      name: "paper",
      value: SMALL_PAPERS.join("|"),
      meaning: "of a person's sheets; plans are on A3 with A4 (if not given), on Tabloid with Letter",
      choices: SMALL_PAPERS,
    },
    {
      name: "date",
      value: "YYYY-MM-DD",
      meaning: "date of issue for the title blocks; left open if not given",
      accepts: isDate,
    },
  ],
  purpose: "every sheet of every unit, to print or to send",
  isBuilt: true,
};

/** A day of the calendar in use since 1582. */
function isDate(text: string): boolean {
  const [, year, month, day] = (/^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined) return false;
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
  return day >= 1 && day <= days;
}

const OPTIMISE: CommandUsage = {
  name: "optimise",
  operands: ["PROJECT"],
  options: [
    { name: "json", value: "FILE", meaning: "write the fill and its set here instead of to standard output" },
    {
      name: "keep",
      value: "FILE",
      meaning:
        "also write the project here with the chosen covers as pins, which fill, sheets and check then take",
    },
    {
      name: "curve",
      value: "FILE",
      meaning:
        "also write here what fewer widths and fewer fillers would cost, a few points of each, as JSON",
    },
    {
      name: "nudges",
      value: "FILE",
      meaning:
        "also look for moves of walls by up to 25 mm that make the set cheaper, and write them here, as JSON",
    },
    {
      name: "time-limit",
      value: "SECONDS",
      meaning:
        "stop then with the best plan so far; not given: after a fixed amount of work, with the same answer on every machine",
      accepts: isSeconds,
    },
  ],
  purpose: "choose the fill of all units together, so that one panel set serves every pour",
  isBuilt: true,
};

function isSeconds(text: string): boolean {
  return /^\d{1,6}(\.\d{1,3})?$/.test(text) && Number(text) > 0;
}

const STOCK: CommandUsage = {
  name: "stock",
  operands: ["PROJECT"],
  options: [
    {
      name: "from",
      value: "FILE",
      meaning: "the list of what is owned, CSV or XLSX: a column of codes and one of counts",
      isRequired: true,
    },
    { name: "out", value: "FILE", meaning: "the project with this stock, written anew", isRequired: true },
    {
      name: "buy",
      value: "true|false",
      meaning: "whether more may be bought; with false, optimise does with what is owned; kept if not given",
      choices: ["true", "false"],
    },
  ],
  purpose: "take what is owned into a project from a list",
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
  OPTIMISE,
  STOCK,
  SHEETS,
  later("import", "read a drawing or a building model into a project file"),
  later("export", "drawings and lists for other programs"),
];

const EXITS = `Exit codes:
  0  done, nothing to report
  1  done, with at least one error in the result or a check over its limit, or a set that
     the pieces there are cannot make
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
  const words = command.options.map((option) => `--${option.name} ${option.value}`);
  const wide = Math.max(12, ...words.map((word) => word.length)) + 2;
  const options = command.options.map((option, k) => `  ${words[k]!.padEnd(wide)}${option.meaning}\n`);
  const files = command.options.some(({ value }) => value === "FILE")
    ? `PROJECT and FILE may be "-": standard input and standard output.`
    : `PROJECT may be "-": standard input.`;
  return `Usage: panelwright ${synopsis(command)}

${capital(command.purpose)}.

Options:
${options.join("")}
${files}
${EXITS}`;
}

/** The command as it is called: "fill PROJECT [--out DIR] [--json FILE]". */
export function synopsis(command: CommandUsage): string {
  const options = command.options.map(({ name, value, isRequired }) =>
    isRequired === true ? `--${name} ${value}` : `[--${name} ${value}]`,
  );
  return [command.name, ...command.operands, ...options].join(" ");
}

const capital = (text: string) => text.slice(0, 1).toUpperCase() + text.slice(1);
