// How far may the struck concrete be from the drawing: what several standards say, side by side, each with its source.

import type { ToleranceRow } from "../../assess/checkDocument.ts";
import type { TabProps } from "./PressureTab.tsx";
import { RuleNotes } from "./RuleNotes.tsx";
import { deviationText } from "./tolerance.ts";
import { UnitChoice } from "./UnitChoice.tsx";
import { useCheckWords } from "./useCheckWords.ts";

export function TolerancesTab({ list, unit, onUnit }: Pick<TabProps, "list" | "unit" | "onUnit">) {
  const { w } = useCheckWords();
  if (list === null) return null;
  const rows = list.document.tolerances.filter((row) => row.unit === unit);
  return (
    <div className="check-domain plain">
      <div className="check-main">
        <UnitChoice units={list.units} unit={unit} onUnit={onUnit} />
        <section className="rules rules-side">
          <h3>{w("tolerances")}</h3>
          {rows.length === 0 ? <p>{w("tolerances-none")}</p> : <Rows rows={rows} />}
        </section>
      </div>
    </div>
  );
}

function Rows({ rows }: { rows: readonly ToleranceRow[] }) {
  const { w, told, figure } = useCheckWords();
  return (
    <>
      <p>{w("tolerances-note")}</p>
      <div className="rules-scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">{w("tolerance-of")}</th>
              <th scope="col">{w("rule")}</th>
              <th scope="col">{w("tolerance-by")}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ what, rule, less, more }, index) => {
              const isFirst = rows[index - 1]?.what !== what;
              const deviation = deviationText({ less, more }, figure);
              return (
                <tr key={`${what} ${rule}`} className={isFirst ? "first" : undefined}>
                  <th scope="row">
                    {isFirst ? (
                      <b className="rule-part">{told(what)}</b>
                    ) : (
                      <span className="hidden">{told(what)}</span>
                    )}
                  </th>
                  <td>{told(rule)}</td>
                  <td className="check-figure">
                    {deviation === null ? w("none") : w("tolerance-mm", { deviation })}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      <RuleNotes
        rules={rows.map(({ note, ...row }) => ({ ...row, of: row.what, notes: note === "" ? [] : [note] }))}
      />
    </>
  );
}
