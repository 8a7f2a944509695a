// A kit as rows of text cells, for a table on the screen and for a spreadsheet: one row for the kit itself, one for
// each piece, one for each rule. Nothing that somebody typed is lost on the way: a cell that cannot be read stays as it
// is and is named.
//
//   record  name          family      mass  …  width  height  …  value  unit  origin
//   kit     Demo                                                         EUR
//   piece   W600x2250     wall-panel  33.1     600    2250
//   rule    tieSpacing                                           600    mm    common practice, no source

import type { Issue } from "../json/issue.ts";
import type { Json, JsonObject } from "../json/value.ts";
import type { Family, Kit } from "./kit.ts";
import { parseKit } from "./parse.ts";
import { RULE_NAMES } from "./ruleChecker.ts";
import { OWN_MEMBERS, serializeKit } from "./serialize.ts";

/** The columns in the order of the table. */
export const COLUMNS = [
  "record",
  "name",
  "family",
  "mass",
  "price",
  "standard",
  "hand",
  "stays",
  "width",
  "height",
  "length",
  "depth",
  "leg_left",
  "leg_right",
  "turn",
  "least",
  "greatest",
  "class",
  "value",
  "unit",
  "origin",
] as const;

export type Column = (typeof COLUMNS)[number];
export type KitRow = { readonly [column in Column]: string };

/** Something wrong in a cell. */
export interface CellIssue {
  readonly row: number;
  readonly column: Column;
  readonly expected: string;
  readonly found: string;
}

export type RowsAnswer =
  | { readonly status: "ok"; readonly kit: Kit; readonly warnings: readonly string[] }
  | { readonly status: "invalid"; readonly issues: readonly CellIssue[] };

const COMMON: readonly Column[] = ["record", "name", "family", "mass", "price", "standard", "hand", "stays"];
/** Columns whose cells are words, not numbers. */
const TEXTS: readonly Column[] = ["family", "hand", "turn", "class"];
const OF_KIT: readonly Column[] = ["record", "name", "unit"];
const OF_RULE: readonly Column[] = ["record", "name", "value", "unit", "origin"];

/** A row with nothing in it but what is given. */
export function rowOf(cells: Partial<KitRow>): KitRow {
  const empty = Object.fromEntries(COLUMNS.map((column) => [column, ""])) as KitRow;
  return { ...empty, ...cells };
}

/** The rows of a kit: itself, its pieces in their order, its rules. */
export function kitToRows(kit: Kit): readonly KitRow[] {
  const json = serializeKit(kit);
  const pieces = (json.pieces as readonly JsonObject[]).map(pieceRow);
  const rules = Object.entries(json.rules as { readonly [name: string]: JsonObject }).map(([name, rule]) =>
    rowOf({
      record: "rule",
      name,
      value: valueText(rule.value ?? null),
      unit: String(rule.unit),
      origin: String(rule.origin),
    }),
  );
  return [rowOf({ record: "kit", name: kit.name, unit: kit.currency ?? "" }), ...pieces, ...rules];
}

/**
 * The kit that rows describe, or every cell that keeps them from being one, by row. Reading the rows of a kit gives an
 * equal kit.
 */
export function rowsToKit(rows: readonly KitRow[]): RowsAnswer {
  const own = rows.flatMap((row, index) => issuesOfRow(row, index));
  const kits = rows.flatMap((row, index) => (row.record === "kit" ? [index] : []));
  const pieces = rows.flatMap((row, index) => (row.record === "piece" ? [index] : []));
  const rules = rows.flatMap((row, index) => (row.record === "rule" ? [index] : []));
  const [first = 0, second] = kits;
  if (kits.length === 0) own.push(issue(0, "record", "a row for the kit itself, with its name", "none"));
  if (second !== undefined) own.push(issue(second, "record", "one row for the kit itself", "another"));
  own.push(...doubledRules(rows, rules));
  const head = rows[first];
  const answer = parseKit({
    name: head?.name ?? "",
    ...(head === undefined || head.unit === "" ? {} : { currency: head.unit }),
    pieces: pieces.map((index) => pieceJson(rows[index]!)),
    rules: Object.fromEntries(rules.map((index) => [rows[index]!.name, ruleJson(rows[index]!)])),
  });
  if (answer.status === "ok" && own.length === 0) return answer;
  const found =
    answer.status === "ok" ? [] : answer.issues.map((each) => placed(each, rows, { first, pieces, rules }));
  return { status: "invalid", issues: byRow([...own, ...found]) };
}

/** Columns that mean something in a row, the ones that say what it is among them. */
export function columnsOf(row: KitRow): readonly Column[] {
  if (row.record === "kit") return OF_KIT;
  if (row.record === "rule") return OF_RULE;
  return [...COMMON, ...(isFamily(row.family) ? OWN_MEMBERS[row.family].flatMap(columnsOfMember) : [])];
}

function columnsOfMember(member: string): readonly Column[] {
  return member === "legs" ? ["leg_left", "leg_right"] : COLUMNS.filter((column) => column === member);
}

function isFamily(word: string): word is Family {
  return Object.hasOwn(OWN_MEMBERS, word);
}

// What no reader of kits would see: words that are no record, rules that are no rule, cells that belong to nothing.
function issuesOfRow(row: KitRow, index: number): CellIssue[] {
  if (!["kit", "piece", "rule"].includes(row.record))
    return [issue(index, "record", "kit, piece or rule", quoted(row.record))];
  if (row.record === "rule" && !RULE_NAMES.some((name) => name === row.name))
    return [issue(index, "name", `a rule, one of ${RULE_NAMES.join(", ")}`, quoted(row.name))];
  if (row.record === "piece" && !isFamily(row.family)) return [];
  const known = columnsOf(row);
  const what = row.record === "piece" ? `a ${row.family}` : `a ${row.record}`;
  return COLUMNS.filter((column) => row[column] !== "" && !known.includes(column)).map((column) =>
    issue(index, column, `nothing: ${what} has none`, quoted(row[column])),
  );
}

function doubledRules(rows: readonly KitRow[], rules: readonly number[]): CellIssue[] {
  const seen = new Set<string>();
  return rules.flatMap((index) => {
    const { name } = rows[index]!;
    if (!seen.has(name)) {
      seen.add(name);
      return [];
    }
    return [issue(index, "name", "a rule that is not given above", quoted(name))];
  });
}

function pieceRow(piece: JsonObject): KitRow {
  const { code, standard, legs, ...members } = piece;
  const [left, right] = Array.isArray(legs) ? legs : [];
  const cells = Object.entries(members).map(([name, value]) => [name, String(value)]);
  return rowOf({
    record: "piece",
    name: String(code),
    ...Object.fromEntries(cells),
    standard: standard === true ? "yes" : "",
    leg_left: left === undefined ? "" : String(left),
    leg_right: right === undefined ? "" : String(right),
  });
}

function pieceJson(row: KitRow): JsonObject {
  const json: { [name: string]: Json } = { code: row.name };
  for (const column of columnsOf(row)) {
    const cell = row[column];
    if (column === "record" || column === "name" || cell === "") continue;
    if (TEXTS.includes(column)) json[column] = cell;
    else if (column === "standard") json.standard = truthOf(cell);
    else if (column === "leg_left" || column === "leg_right")
      json.legs = [numberOf(row.leg_left), numberOf(row.leg_right)];
    else json[column] = numberOf(cell);
  }
  if (row.family === "") json.family = "";
  return json;
}

function ruleJson({ name, value, unit, origin }: KitRow): JsonObject {
  return { value: ruleValueOf(name, value), unit, origin };
}

// Lists and pairs stand in one cell, their numbers apart by a space: 150 450 750.
function valueText(value: Json): string {
  if (Array.isArray(value)) return value.join(" ");
  if (typeof value === "object" && value !== null) return Object.values(value).join(" ");
  return String(value);
}

function ruleValueOf(name: string, text: string): Json {
  const parts = text.split(/\s+/).filter((part) => part !== "");
  if (name === "tieRows") return parts.map(numberOf);
  if (name !== "holes") return numberOf(text);
  const [first = "", pitch = ""] = parts;
  return parts.length === 2 ? { first: numberOf(first), pitch: numberOf(pitch) } : text;
}

// A cell that is no number stays a text, which the reader of kits refuses with its own words.
function numberOf(text: string): Json {
  const trimmed = text.trim();
  return /^-?\d+(\.\d+)?(e[+-]?\d+)?$/i.test(trimmed) ? Number(trimmed) : text;
}

function truthOf(text: string): Json {
  if (/^(yes|true|1)$/i.test(text)) return true;
  return /^(no|false|0)$/i.test(text) ? false : text;
}

interface RowsBySort {
  readonly first: number;
  readonly pieces: readonly number[];
  readonly rules: readonly number[];
}

// From the path of an issue in the kit's JSON to the cell it came from.
function placed({ path, expected, found }: Issue, rows: readonly KitRow[], by: RowsBySort): CellIssue {
  const piece = /^pieces\[(\d+)\](?:\.(\w+))?/.exec(path);
  if (piece !== null) {
    const row = by.pieces[Number(piece[1])] ?? 0;
    const member = piece[2] ?? "family";
    const isRight = /\.legs\[1\]$/.test(path);
    const column = member === "legs" ? (isRight ? "leg_right" : "leg_left") : columnNamed(member);
    return issue(row, column, expected, found);
  }
  const rule = /^rules\.(\w+)(?:\.(\w+))?/.exec(path);
  if (rule !== null) {
    const row = by.rules.find((index) => rows[index]!.name === rule[1]) ?? 0;
    return issue(row, columnNamed(rule[2] ?? "value"), expected, found);
  }
  return issue(by.first, path === "currency" ? "unit" : "name", expected, found);
}

function columnNamed(member: string): Column {
  return COLUMNS.find((column) => column === member) ?? "name";
}

function issue(row: number, column: Column, expected: string, found: string): CellIssue {
  return { row, column, expected, found };
}

function quoted(text: string): string {
  return text === "" ? "nothing" : JSON.stringify(text);
}

function byRow(issues: readonly CellIssue[]): readonly CellIssue[] {
  return [...issues].sort((a, b) => a.row - b.row || COLUMNS.indexOf(a.column) - COLUMNS.indexOf(b.column));
}
