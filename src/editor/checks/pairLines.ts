// Lines of two figures, as a logger exports them or a person types them: by tab, semicolon, comma or blank.

/** The two columns of a line; null where it has not two. */
export function columnsOf(line: string): readonly [string, string] | null {
  const parts = separated(line.replace(/\s*°\s*C$/, "")).map((part) => part.trim());
  const [time = "", degrees = ""] = parts;
  return parts.length === 2 && time !== "" && degrees !== "" ? [time, degrees] : null;
}

// By tab or semicolon where there is one, else by the only comma unless it is a decimal one, else by the last blank.
function separated(line: string): readonly string[] {
  if (/[\t;]/.test(line)) return line.split(/[\t;]/);
  if (/^[^,]*,[^,]*$/.test(line) && !/\d,\d+\s+[-\d]/.test(line)) return line.split(",");
  const at = line.search(/\s\S+$/);
  return at < 0 ? [line] : [line.slice(0, at), line.slice(at)];
}

/** A figure with either decimal sign, as long as a project writes it, its unit of hours or degrees behind it or not; null where it is none. */
export function figureOf(text: string): number | null {
  const plain = text.replace(/\s*(°\s*C|h)$/, "").replace("\u2212", "-");
  return /^-?\d{1,6}([.,]\d{1,25})?(e-\d{1,2})?$/.test(plain) ? Number(plain.replace(",", ".")) + 0 : null;
}

export type PairsRead =
  | { readonly status: "read"; readonly pairs: readonly (readonly [number, number])[] }
  /** The line that is no pair of figures, from 1. */
  | { readonly status: "refused"; readonly line: number; readonly text: string };

/** Lines of two figures each; empty lines are passed over. */
export function readPairs(text: string): PairsRead {
  const pairs: (readonly [number, number])[] = [];
  for (const [index, line] of text.split(/\r\n|\n|\r/).entries()) {
    if (line.trim() === "") continue;
    const [first, second] = (columnsOf(line.trim()) ?? ["", ""]).map(figureOf);
    if (first == null || second == null)
      return { status: "refused", line: index + 1, text: quotedLine(line) };
    pairs.push([first, second]);
  }
  return { status: "read", pairs };
}

const LONGEST_QUOTE = 60;

/** A line to be shown in a message: not longer than a person reads. */
export function quotedLine(line: string): string {
  return line.trim().slice(0, LONGEST_QUOTE);
}

/** Pairs as a text that reads back. */
export function pairsText(pairs: readonly (readonly [number, number])[]): string {
  return pairs.map(([first, second]) => `${first};${second}`).join("\n");
}
