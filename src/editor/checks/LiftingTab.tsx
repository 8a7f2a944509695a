// Who lifts what: the pieces that two people carry, and the check of the heaviest.

import { OneCheck } from "./OneCheck.tsx";
import type { TabProps } from "./PressureTab.tsx";
import { UnitChoice } from "./UnitChoice.tsx";
import { useCheckWords } from "./useCheckWords.ts";

export function LiftingTab({ checks, list, unit, onUnit, onShow }: TabProps) {
  const { w, figure } = useCheckWords();
  if (list === null) return null;
  const pieces = list.document.twoPersons.filter((each) => each.unit === unit);
  const lifts = list.rows.filter((row) => row.kind === "lift" && row.where.unit === unit);
  const hasLimit = lifts.some(({ limit }) => limit !== null);
  const show = async (code: string) => {
    const row = lifts.find(({ where }) => where.code === code);
    const detail = row === undefined ? null : await checks.client.detail(list.version, row.index);
    if (detail !== null) onShow(detail);
  };
  return (
    <div className="check-domain plain">
      <div className="check-main">
        <UnitChoice units={list.units} unit={unit} onUnit={onUnit} />
        <section className="rules">
          <h3>
            {w("two-persons")}{" "}
            <small>{figure(pieces.reduce((sum, { quantity }) => sum + quantity, 0))}</small>
          </h3>
          {pieces.length === 0 ? (
            <p>{w(hasLimit ? "two-persons-none" : "no-person-limit")}</p>
          ) : (
            <div className="rules-scroll">
              <table>
                <thead>
                  <tr>
                    <th scope="col">{w("piece")}</th>
                    <th scope="col">{w("mass")}</th>
                    <th scope="col">{w("quantity")}</th>
                    <th scope="col">
                      <span className="hidden">{w("show")}</span>
                    </th>
                  </tr>
                </thead>
                <tbody>
                  {pieces.map(({ code, mass, quantity }) => (
                    <tr key={code}>
                      <th scope="row">{code}</th>
                      <td className="check-figure">{w("mass-unit", { mass: figure(mass) })}</td>
                      <td className="check-figure">{figure(quantity)}</td>
                      <td>
                        <button type="button" className="link" onClick={() => show(code).catch(() => {})}>
                          {w("show")}
                        </button>
                      </td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </div>
          )}
        </section>
        <div className="check-cards">
          <OneCheck {...{ checks, list, unit, onShow }} kind="lift" />
        </div>
      </div>
    </div>
  );
}
