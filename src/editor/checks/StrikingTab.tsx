// When may panels come down: strength needed and there, the log of the slab, and what several rules say side by side.

import type { CheckDocument, StrikingPrediction } from "../../assess/checkDocument.ts";
import { ConcreteForm } from "./ConcreteForm.tsx";
import { Curve } from "./Curve.tsx";
import type { CheckList } from "./checkList.ts";
import { STRENGTH_FIELDS } from "./fields.ts";
import { LogForms } from "./LogForms.tsx";
import { MaturityTable } from "./MaturityTable.tsx";
import { OneCheck } from "./OneCheck.tsx";
import type { TabProps } from "./PressureTab.tsx";
import { RulesSideBySide } from "./RulesSideBySide.tsx";
import { UnitChoice } from "./UnitChoice.tsx";
import { useCheckWords } from "./useCheckWords.ts";
import { useStated } from "./useStated.ts";

export function StrikingTab({ checks, list, unit, onUnit, onShow }: TabProps) {
  return (
    <div className="check-domain">
      <div className="check-side">
        <StrengthForm />
        <LogForms />
      </div>
      <div className="check-main">
        {list === null ? null : (
          <>
            <UnitChoice units={list.units} unit={unit} onUnit={onUnit} />
            <Outcome list={list} unit={unit} />
            <RulesSideBySide rows={list.document.striking} unit={unit} />
            <div className="check-cards">
              <OneCheck {...{ checks, list, unit, onShow }} kind="striking-strength" />
            </div>
          </>
        )}
      </div>
    </div>
  );
}

function StrengthForm() {
  const { w } = useCheckWords();
  const form = useStated("concrete");
  return <ConcreteForm title={w("strength-form")} form={form} names={STRENGTH_FIELDS} />;
}

function Outcome({ list, unit }: { list: CheckList; unit: string }) {
  const prediction = list.document.predictions.find((each) => each.unit === unit);
  return (
    <>
      {prediction === undefined ? null : <Prediction prediction={prediction} />}
      <Curves document={list.document} prediction={prediction} />
      <MaturityTable points={list.document.maturity} />
    </>
  );
}

function Prediction({ prediction }: { prediction: StrikingPrediction }) {
  const { w, rough, told } = useCheckWords();
  const { needed, strength, hour, isLogged, margin, note } = prediction;
  const megapascal = (value: number | null) => (value === null ? w("none") : `${rough(value)}\u202fMPa`);
  const isEarly = margin !== null && margin < 0;
  return (
    <section className="predicted">
      <h3>{w("predicted")}</h3>
      <dl>
        <div>
          <dt>{w("predicted-needed")}</dt>
          <dd>{megapascal(needed)}</dd>
        </div>
        <div>
          <dt>{w("predicted-there")}</dt>
          <dd>{megapascal(strength)}</dd>
        </div>
        <div>
          <dt>{w("predicted-hour")}</dt>
          <dd>
            {hour === null ? w("none") : `${rough(hour)}\u202fh`}
            {hour === null ? null : <small>{w(isLogged ? "predicted-logged" : "predicted-beyond")}</small>}
          </dd>
        </div>
        <div className={isEarly ? "early" : undefined}>
          <dt>{w("predicted-margin")}</dt>
          <dd>
            {margin === null
              ? w("none")
              : isEarly
                ? w("predicted-early", { hours: rough(-margin) })
                : `${rough(margin)}\u202fh`}
          </dd>
        </div>
      </dl>
      {note === "" ? null : <p>{told(note)}</p>}
    </section>
  );
}

interface CurvesProps {
  readonly document: Pick<CheckDocument, "maturity" | "concrete">;
  readonly prediction: StrikingPrediction | undefined;
}

function Curves({ document: { maturity, concrete }, prediction }: CurvesProps) {
  const { w, rough } = useCheckWords();
  if (maturity.length === 0) return null;
  const until = concrete.strikeAt ?? 0;
  const struck = concrete.strikeAt === null ? [] : [{ at: concrete.strikeAt, text: w("struck-at") }];
  const strengths = maturity.flatMap(({ hour, strength }) =>
    strength === null ? [] : [[hour, strength] as const],
  );
  const needed = prediction?.needed ?? null;
  const reached = prediction?.hour ?? null;
  return (
    <div className="curves">
      <Curve
        label={w("log-picture")}
        unit="°C"
        points={maturity.map(({ hour, temperature }) => [hour, temperature] as const)}
        until={until}
        hours={struck}
        values={[]}
      />
      {strengths.length === 0 ? null : (
        <Curve
          label={w("strength-picture")}
          unit="MPa"
          points={strengths}
          until={until}
          hours={[...struck, ...(reached === null ? [] : [{ at: reached, text: w("reached-mark") }])]}
          values={
            needed === null ? [] : [{ at: needed, text: w("needed-mark", { strength: rough(needed) }) }]
          }
        />
      )}
    </div>
  );
}
