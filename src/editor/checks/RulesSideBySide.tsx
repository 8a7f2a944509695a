// The striking rules side by side: what each says of each room, and under which conditions.

import type { StrikingRow } from "../../assess/checkDocument.ts";
import { RuleNotes } from "./RuleNotes.tsx";
import { type RuleCell, rulesTable } from "./rulesTable.ts";
import { useCheckWords } from "./useCheckWords.ts";

const HOURS_ALONE = 48; // longer times are told in days, too

export function RulesSideBySide({ rows, unit }: { rows: readonly StrikingRow[]; unit: string }) {
  const { w, told } = useCheckWords();
  const { columns, lines } = rulesTable(rows, unit);
  if (lines.length === 0) return <p className="check-none">{w("no-rules")}</p>;
  return (
    <section className="rules rules-side">
      <h3>{w("rules")}</h3>
      <p>{w("rules-note")}</p>
      <div className="rules-scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">{w("part")}</th>
              <th scope="col">{w("rule")}</th>
              {columns.map((rooms) => (
                <th key={rooms.join()} scope="col">
                  {rooms.join(", ")}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {lines.map(({ part, rule, cells }, index) => {
              const isFirst = lines[index - 1]?.part !== part;
              return (
                <tr key={`${part} ${rule}`} className={isFirst ? "first" : undefined}>
                  <th scope="row">
                    {isFirst ? (
                      <b className="rule-part">{told(part)}</b>
                    ) : (
                      <span className="hidden">{told(part)}</span>
                    )}
                  </th>
                  <td>{told(rule)}</td>
                  {cells.map((cell, column) => (
                    <td key={columns[column]?.join() ?? ""} className="check-figure">
                      <Cell cell={cell} />
                    </td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      <RuleNotes rules={lines.map((line) => ({ ...line, of: line.part }))} />
    </section>
  );
}

function Cell({ cell }: { cell: RuleCell }) {
  const { w, figure } = useCheckWords();
  if (cell?.strength != null) return <>{figure(cell.strength)}&#8239;MPa</>;
  if (cell?.hours == null) return <>{w("none")}</>;
  const { hours } = cell;
  return (
    <>
      {figure(hours)}&#8239;h
      {hours > HOURS_ALONE ? <small> = {figure(hours / 24)}&#8239;d</small> : null}
    </>
  );
}
