// What the common choice weighs against the price of the set, and whether pieces may be bought.

import type { Objective } from "../../plan/project.ts";
import { useEditorState } from "../live/useWorkbench.tsx";
import { kitOf } from "../live/workbench.ts";
import { FigureField } from "./fields.tsx";
import { DeleteSign } from "./icons.tsx";
import { changeLimits, NO_LIMITS, toggleForbidden } from "./limitEdits.ts";
import { useSetWords } from "./useSetWords.ts";
import { useStep } from "./useStep.ts";

const WEIGHTS = ["handling", "closure", "closurePerMm", "distinctSize", "filler"] as const;

export function WeightsForm() {
  const w = useSetWords();
  const { doc } = useEditorState().history;
  const step = useStep();
  const { objective, buy } = doc;
  const currency = kitOf(doc)?.currency ?? "";
  const change = (part: Partial<Objective>) =>
    step("step.set-weights", [{ kind: "change-project", set: { objective: { ...objective, ...part } } }]);
  return (
    <section className="set-weights" aria-label={w("weights")}>
      <h3>{w("weights")}</h3>
      {WEIGHTS.map((name) => (
        <div key={name} className="set-weight">
          <span aria-hidden="true">{w(name)}</span>
          <FigureField
            className="boxed"
            label={w(name)}
            value={objective[name] ?? 0}
            greatest={1e9}
            decimals={4}
            onKeep={(value) => change({ [name]: value ?? 0 })}
          />
          <small>{currency}</small>
        </div>
      ))}
      <label className="set-check">
        <input
          type="checkbox"
          checked={buy}
          onChange={({ target }) =>
            step("step.set-weights", [{ kind: "change-project", set: { buy: target.checked } }])
          }
        />
        {w("buy")}
      </label>
      {buy ? null : <p className="set-why">{w("buy-not")}</p>}
      <LimitFields />
    </section>
  );
}

function LimitFields() {
  const w = useSetWords();
  const { doc } = useEditorState().history;
  const step = useStep();
  const { mostWidths, greatestMass, forbidden } = doc.limits ?? NO_LIMITS;
  const field = (name: "mostWidths" | "greatestMass", value: number | null, unit: string) => (
    <div className="set-weight">
      <span aria-hidden="true">{w(name)}</span>
      <FigureField
        className="boxed"
        label={w(name)}
        value={value}
        placeholder={w("any")}
        mayBeEmpty
        least={name === "mostWidths" ? 1 : 0}
        greatest={name === "mostWidths" ? 1_000 : 1e6}
        decimals={name === "mostWidths" ? 0 : 2}
        onKeep={(figure) => step("step.set-weights", changeLimits(doc, { [name]: figure }))}
      />
      <small>{unit}</small>
    </div>
  );
  return (
    <>
      <h3 className="set-limits">{w("limits")}</h3>
      {field("mostWidths", mostWidths, "")}
      {field("greatestMass", greatestMass, "kg")}
      {forbidden.length === 0 ? null : (
        <p className="set-forbidden">
          {w("forbidden")}:
          {forbidden.map((code) => (
            <button
              key={code}
              type="button"
              className="act"
              aria-label={w("allow", { piece: code })}
              onClick={() => step("step.set-weights", toggleForbidden(doc, code))}
            >
              {code} <DeleteSign />
            </button>
          ))}
        </p>
      )}
    </>
  );
}
