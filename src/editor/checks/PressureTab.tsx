// What the concrete presses with: what the project says of it, the pressure over the height, and how fast it may rise.

import { ConcreteForm } from "./ConcreteForm.tsx";
import type { CheckDetail, CheckList } from "./checkList.ts";
import { modelOf, pressureFields } from "./fields.ts";
import { OneCheck } from "./OneCheck.tsx";
import { PressurePicture } from "./PressurePicture.tsx";
import { TryPressure } from "./TryPressure.tsx";
import { UnitChoice } from "./UnitChoice.tsx";
import type { Checks } from "./useChecks.ts";
import { useCheckWords } from "./useCheckWords.ts";
import { useStated } from "./useStated.ts";

export interface TabProps {
  readonly checks: Checks;
  /** null: nothing could be checked. */
  readonly list: CheckList | null;
  /** Name of the entry that is shown. */
  readonly unit: string;
  readonly onUnit: (unit: string) => void;
  readonly onShow: (detail: CheckDetail) => void;
}

export function PressureTab({ checks, list, unit, onUnit, onShow }: TabProps) {
  return (
    <div className="check-domain">
      <div className="check-side">
        <PressureForm />
      </div>
      <div className="check-main">
        {list === null ? null : (
          <>
            <UnitChoice units={list.units} unit={unit} onUnit={onUnit} />
            <Diagram list={list} unit={unit} />
            <div className="check-cards">
              {["panel-pressure", "placing-rate"].map((kind) => (
                <OneCheck key={kind} {...{ checks, list, kind, unit, onShow }} />
              ))}
            </div>
          </>
        )}
      </div>
    </div>
  );
}

function PressureForm() {
  const { w } = useCheckWords();
  const form = useStated("concrete");
  return <ConcreteForm title={w("concrete")} form={form} names={pressureFields(modelOf(form.values))} />;
}

function Diagram({ list, unit }: { list: CheckList; unit: string }) {
  const { w } = useCheckWords();
  const { pressure, concrete } = list.document;
  const table = pressure.find((each) => each.unit === unit);
  if (table === undefined) return <p className="check-none">{w("no-pressure")}</p>;
  const limit = panelLimit(list, unit);
  const height = Math.max(...table.points.map(({ z }) => z));
  return (
    <div className="press">
      <div>
        <PressurePicture table={table} limit={limit} />
        {limit === null ? <small>{w("no-panel-limit")}</small> : null}
      </div>
      <TryPressure key={concrete.pressureModel} concrete={concrete} height={height} limit={limit} />
    </div>
  );
}

/** What panels bear, in the terms of the pressure without a factor; null where the kit does not say. */
function panelLimit({ rows, document }: CheckList, unit: string): number | null {
  const row = rows.find(({ id }) => id === `${unit}/panel-pressure`);
  const table = document.pressure.find((each) => each.unit === unit);
  if (row?.limit == null || row.value === null || table === undefined || row.value === 0) return null;
  return (row.limit * table.greatest) / row.value;
}
