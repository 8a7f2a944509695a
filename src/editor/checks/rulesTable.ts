// The striking rules of a unit as a table: one line a rule and part, one column for the rooms in which all figures agree.

import type { StrikingRow } from "../../assess/checkDocument.ts";

export interface RuleLine {
  readonly part: string;
  readonly rule: string;
  readonly source: string;
  /** One a column; for walls the same in each. null: the rule says nothing there. */
  readonly cells: readonly RuleCell[];
  /** Each once, in the order of the rooms. */
  readonly notes: readonly string[];
}

export type RuleCell = { readonly hours: number | null; readonly strength: number | null } | null;

export interface RulesTable {
  /** Rooms of each column. */
  readonly columns: readonly (readonly string[])[];
  readonly lines: readonly RuleLine[];
}

export function rulesTable(rows: readonly StrikingRow[], unit: string): RulesTable {
  const own = rows.filter((row) => row.unit === unit);
  const rooms = [...new Set(own.map(({ room }) => room).filter((room) => room !== ""))];
  const columns = new Map<string, string[]>();
  for (const room of rooms) {
    const key = JSON.stringify(
      own
        .filter((row) => row.room === room)
        .map(({ rule, part, hours, strength }) => [rule, part, hours, strength]),
    );
    columns.set(key, [...(columns.get(key) ?? []), room]);
  }
  const heads = [...columns.values()];
  const keyOf = ({ part, rule }: StrikingRow) => `${part}\n${rule}`;
  const firsts = new Map<string, StrikingRow>();
  for (const row of own) if (!firsts.has(keyOf(row))) firsts.set(keyOf(row), row);
  const lines = [...firsts].map(([key, first]): RuleLine => {
    const same = own.filter((row) => keyOf(row) === key);
    const at = (room: string | undefined) => same.find((row) => row.room === room || row.room === "");
    return {
      part: first.part,
      rule: first.rule,
      source: first.source,
      cells: (heads.length === 0 ? [[""]] : heads).map(([room]) => {
        const row = at(room);
        return row === undefined ? null : { hours: row.hours, strength: row.strength };
      }),
      notes: [...new Set(same.map(({ note }) => note))].filter((note) => note !== ""),
    };
  });
  return { columns: heads, lines };
}
