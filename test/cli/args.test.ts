import { describe, expect, it } from "vitest";
import { readArguments } from "../../src/cli/args.ts";
import { nearest } from "../../src/cli/nearest.ts";

/** What a line of words comes to, in one line. */
function told(line: readonly string[]): string {
  const read = readArguments(line);
  switch (read.status) {
    case "run": {
      const options = [...read.options].map(([name, value]) => `${name}=${value}`).sort();
      return [read.command.name, ...read.operands, ...options].join(" ");
    }
    case "help":
      return `help ${read.command?.name ?? "all"}`;
    case "not-built":
      return `not built: ${read.command.name}`;
    case "version":
      return "version";
    case "bad-usage":
      return read.message.split("\n")[0]!;
  }
}

describe("readArguments", () => {
  it.each([
    { why: "the plain call", line: ["fill", "a.json"], comes: "fill a.json" },
    { why: "standard input", line: ["fill", "-"], comes: "fill -" },
    { why: "options before", line: ["fill", "--out", "o", "a"], comes: "fill a out=o" },
    { why: "options behind", line: ["fill", "a", "--out", "o", "--json", "j"], comes: "fill a json=j out=o" },
    { why: "an equals sign", line: ["fill", "a", "--out=o=1"], comes: "fill a out=o=1" },
    { why: "standard output", line: ["fill", "a", "--json", "-"], comes: "fill a json=-" },
    { why: "a value with a dash", line: ["fill", "a", "--out=-o"], comes: "fill a out=-o" },
    { why: "all names after --", line: ["fill", "--", "--help"], comes: "fill --help" },
    { why: "a name with spaces", line: ["fill", "my house.json"], comes: "fill my house.json" },
    { why: "help", line: ["--help"], comes: "help all" },
    { why: "short help", line: ["-h"], comes: "help all" },
    { why: "help of a command", line: ["fill", "--help"], comes: "help fill" },
    { why: "help wins over a missing name", line: ["fill", "--bogus", "--help"], comes: "help fill" },
    { why: "help of a command to come", line: ["import", "--help"], comes: "help all" },
    { why: "version", line: ["--version"], comes: "version" },
    { why: "version after a command", line: ["fill", "--version"], comes: "version" },
    { why: "to come: its words are not looked at", line: ["import", "--x"], comes: "not built: import" },
    { why: "sheets", line: ["sheets", "a", "--out", "o"], comes: "sheets a out=o" },
    {
      why: "all of its options",
      line: ["sheets", "a", "--out=o", "--format=html", "--paper", "Letter", "--date", "2028-02-29"],
      comes: "sheets a date=2028-02-29 format=html out=o paper=Letter",
    },
    { why: "nowhere to put them", line: ["sheets", "a"], comes: "sheets needs --out DIR." },
    {
      why: "a format that is none",
      line: ["sheets", "a", "--out", "o", "--format", "png"],
      comes: '--format takes pdf, svg, html, not "png".',
    },
    {
      why: "the large paper, which goes with the small one",
      line: ["sheets", "a", "--out", "o", "--paper", "A3"],
      comes: '--paper takes A4, Letter, not "A3".',
    },
    {
      why: "a day that is none",
      line: ["sheets", "a", "--out", "o", "--date", "2026-02-29"],
      comes: '--date takes YYYY-MM-DD, not "2026-02-29".',
    },
    {
      why: "a date in another order",
      line: ["sheets", "a", "--out", "o", "--date", "17.02.2026"],
      comes: '--date takes YYYY-MM-DD, not "17.02.2026".',
    },
    { why: "nothing", line: [], comes: "No command given." },
    { why: "no project", line: ["fill"], comes: "fill needs a PROJECT." },
    { why: "two projects", line: ["fill", "a", "b"], comes: '"b" is one name too many for fill.' },
    { why: "an empty name", line: ["fill", ""], comes: "The name of a file is empty." },
    { why: "no value", line: ["fill", "a", "--out"], comes: "--out needs a DIR after it." },
    { why: "an empty value", line: ["fill", "a", "--out="], comes: "--out needs a DIR after it." },
    {
      why: "an option for a value",
      line: ["fill", "a", "--json", "--out", "o"],
      comes: "--json needs a FILE after it.",
    },
    { why: "twice", line: ["fill", "a", "--out", "o", "--out=p"], comes: "--out is given twice." },
    {
      why: "a slip in an option",
      line: ["fill", "a", "--jsno", "x"],
      comes: "Unknown option --jsno; did you mean --json?",
    },
    {
      why: "a longer word for it",
      line: ["fill", "a", "--output=o"],
      comes: "Unknown option --output; did you mean --out?",
    },
    {
      why: "capitals",
      line: ["fill", "a", "--OUT", "o"],
      comes: "Unknown option --OUT; did you mean --out?",
    },
    {
      why: "nothing like it",
      line: ["fill", "a", "--frobnicate"],
      comes: "Unknown option --frobnicate; fill knows --out, --json, --help, --version.",
    },
    {
      why: "an option of another command",
      line: ["fill", "a", "--time-limit", "3"],
      comes: "Unknown option --time-limit; fill knows --out, --json, --help, --version.",
    },
    { why: "a slip in a command", line: ["fll", "a"], comes: 'Unknown command "fll". Did you mean "fill"?' },
    {
      why: "the other spelling",
      line: ["optimize"],
      comes: 'Unknown command "optimize". Did you mean "optimise"?',
    },
    { why: "no such command", line: ["frobnicate"], comes: 'Unknown command "frobnicate".' },
    { why: "an option first", line: ["--out", "o"], comes: "Unknown option --out; the command comes first." },
  ])("$why", ({ line, comes }) => {
    expect(told(line)).toBe(comes);
  });

  it("ends every refusal with the usage", () => {
    const read = readArguments(["fill"]);
    expect(read.status === "bad-usage" && read.message).toMatch(
      /\nUsage: panelwright fill PROJECT \[--out DIR\] \[--json FILE\]\n$/,
    );
  });
});

it.each([
  { why: "a letter missing", word: "jsn", found: "json" },
  { why: "two letters swapped are one slip", word: "otu", found: "out" },
  { why: "a word that begins it", word: "vers", found: "version" },
  { why: "two slips in a short word are too many only if nothing is left", word: "xyz", found: null },
  { why: "nothing in common", word: "bananas", found: null },
  { why: "an empty word is near nothing longer than two", word: "", found: null },
])("nearest: $why", ({ word, found }) => {
  expect(nearest(word, ["json", "out", "help", "version"])).toBe(found);
});
