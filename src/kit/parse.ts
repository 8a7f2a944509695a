// Is this JSON a kit? Every mistake is named with its place, its piece, what belongs there and what was found.
//
//   pieces[3].width: expected a whole number from 1 to 20000 mm (piece "W600x2250"), found 12.5.

import { andThen, emptyReport, fail, inside, list, type Place, text, top } from "../json/checker.ts";
import { type Issue, quoted } from "../json/issue.ts";
import { object, optional, required } from "../json/members.ts";
import type { Json } from "../json/value.ts";
import type { Kit, Piece } from "./kit.ts";
import { codeOf, orNull, piece, UNSEEN } from "./pieceChecker.ts";
import { rules } from "./ruleChecker.ts";
import { kitWarnings } from "./warnings.ts";

/**
 * A kit ready for use, with sentences on what its owner should know, or everything that keeps it from being one. An issue
 * inside a piece names its code in `expected`.
 */
export type KitAnswer =
  | { readonly status: "ok"; readonly kit: Kit; readonly warnings: readonly string[] }
  | { readonly status: "invalid"; readonly issues: readonly Issue[] };

const MOST_PIECES = 20_000;

const pieces = andThen(
  list(piece, { what: "a list of pieces", greatest: MOST_PIECES }),
  (read: readonly Piece[], place) => (hasDoubles(read, place) ? undefined : read),
);

const fields = object("a kit", {
  name: required(text({ what: "a name", least: 1, greatest: 200, not: UNSEEN })),
  currency: optional(orNull(text({ what: "a currency", least: 1, greatest: 16, not: UNSEEN })), null),
  pieces: required(pieces),
  rules: optional(rules, {}),
});

/**
 * Reads a kit from JSON. Time is linear in its size.
 *
 * @param json - the value of a parsed file; anything else is told apart, never trusted
 * @param member - the member of a larger file in which the kit stands, for the paths of the issues
 */
export function parseKit(json: unknown, member?: string): KitAnswer {
  const report = emptyReport();
  const place = member === undefined ? top(report) : inside(top(report), member);
  const value = json as Json;
  const read = fields.read(value, place);
  if (read === undefined)
    return { status: "invalid", issues: report.issues.map((one) => withCode(one, value)) };
  const { name, currency, pieces: list, rules: given } = read;
  const kit: Kit = { name, currency, pieces: list, rules: given };
  return { status: "ok", kit, warnings: [...unknownMembers(report.warnings), ...kitWarnings(kit)] };
}

function hasDoubles(read: readonly Piece[], place: Place): boolean {
  const seen = new Map<string, number>();
  for (const [index, { code }] of read.entries()) {
    const before = seen.get(code);
    if (before === undefined) seen.set(code, index);
    else fail(inside(inside(place, index), "code"), `a code of its own, not that of pieces[${before}]`, code);
  }
  return seen.size < read.length;
}

function withCode(issue: Issue, json: Json): Issue {
  const index = /(?:^|\.)pieces\[(\d+)\]/.exec(issue.path)?.[1];
  const list = typeof json === "object" && json !== null && "pieces" in json ? json.pieces : null;
  if (index === undefined || !Array.isArray(list)) return issue;
  const code = codeOf(list[Number(index)]);
  return code === null ? issue : { ...issue, expected: `${issue.expected} (piece ${quoted(code)})` };
}

// A member that is not known may be a note of the owner's or a slip of the pen; a rule that is not known is a slip.
function unknownMembers(warnings: readonly Issue[]): readonly string[] {
  const isRule = ({ path }: Issue) => /(?:^|\.)rules\b/.test(path);
  const slips = warnings
    .filter(isRule)
    .map(({ path }) => `${path} is no rule of this version and has no effect.`);
  const notes = warnings.filter((warning) => !isRule(warning));
  if (notes.length === 0) return slips;
  const [first] = notes;
  const rest = notes.length === 1 ? "is" : `and ${notes.length - 1} or more others are`;
  return [...slips, `${first?.path} ${rest} not known to this version and not read.`];
}
