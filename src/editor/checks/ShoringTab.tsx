// What slab and props carry: the loads the project states, and storey over storey, step by step, where it says how.

import type { JsonObject } from "../../json/value.ts";
import { isObject } from "../../json/value.ts";
import { LOAD_CHOICES } from "../../plan/loads.ts";
import { ConcreteForm } from "./ConcreteForm.tsx";
import { LOAD_FIELDS, loadFallback, loadTakes, SHORING_FIELDS, shoringTakes, TURN_FIELDS } from "./fields.ts";
import { OneCheck } from "./OneCheck.tsx";
import type { TabProps } from "./PressureTab.tsx";
import { ShoringSteps } from "./ShoringSteps.tsx";
import { type FieldOf, StatedFieldset } from "./StatedFieldset.tsx";
import { UnitChoice } from "./UnitChoice.tsx";
import { useCheckWords } from "./useCheckWords.ts";
import { type StatedForm, useStated } from "./useStated.ts";

export function ShoringTab({ checks, list, unit, onUnit, onShow }: TabProps) {
  const { w } = useCheckWords();
  const rows = list?.document.shoring ?? [];
  return (
    <div className="check-domain">
      <div className="check-side">
        <LoadForms />
        <TurnForm />
      </div>
      <div className="check-main">
        {list === null ? null : (
          <>
            <UnitChoice units={list.units} unit={unit} onUnit={onUnit} />
            {rows.length === 0 ? (
              <p className="check-none">{w("no-shoring")}</p>
            ) : (
              <ShoringSteps rows={rows} />
            )}
            <div className="check-cards">
              {["shoring-slab", "shoring-prop", "prop-load"].map((kind) => (
                <OneCheck key={kind} {...{ checks, list, kind, unit, onShow }} />
              ))}
            </div>
          </>
        )}
      </div>
    </div>
  );
}

function LoadForms() {
  const { w } = useCheckWords();
  const form = useStated("loads");
  const fields = LOAD_FIELDS.map((name) => ({
    name,
    takes: loadTakes(name),
    fallback: loadFallback(name, form.values),
    value: form.values[name],
  }));
  const isShoring = (path: string) => path.startsWith("shoring.");
  const own = form.lacks?.some(isShoring) === true ? { ...form, lacks: null } : form;
  return (
    <>
      <StatedFieldset
        title={w("loads")}
        form={own}
        fields={fields}
        onChange={(name, value) => form.change({ [name]: value })}
      />
      <ShoringForm form={form} />
    </>
  );
}

function TurnForm() {
  const { w } = useCheckWords();
  const form = useStated("concrete");
  return <ConcreteForm title={w("turn-form")} form={form} names={TURN_FIELDS} />;
}

const FIRST: FieldOf["takes"] = { kind: "choice", choices: LOAD_CHOICES.first };

function ShoringForm({ form }: { form: StatedForm }) {
  const { w } = useCheckWords();
  const { shoring } = form.values;
  const scheme = isObject(shoring) ? shoring : null;
  const waits = form.lacks?.some((path) => path.startsWith("shoring.")) === true;
  if (scheme === null)
    return (
      <fieldset className="stated-set">
        <legend>{w("shoring-form")}</legend>
        <p>{w("no-shoring")}</p>
        <button type="button" className="act" onClick={() => form.change({ shoring: {} })}>
          {w("say-shoring")}
        </button>
      </fieldset>
    );
  const fields: readonly FieldOf[] = [
    ...SHORING_FIELDS.map((name) => ({
      name,
      takes: shoringTakes(name),
      fallback: name === "reshores" ? 0 : null,
      value: scheme[name],
    })),
    { name: "first", takes: FIRST, fallback: "shores", value: scheme.first },
  ];
  return (
    <StatedFieldset
      title={w("shoring-form")}
      form={{ ...form, lacks: waits ? form.lacks : null, refusal: null }}
      fields={fields}
      onChange={(name, value) => form.change({ shoring: changed(scheme, name, value) })}
    >
      {waits ? null : (
        <button type="button" className="act" onClick={() => form.change({ shoring: undefined })}>
          {w("drop-shoring")}
        </button>
      )}
    </StatedFieldset>
  );
}

function changed(scheme: JsonObject, name: string, value: FieldOf["value"]): JsonObject {
  const { [name]: _, ...rest } = scheme;
  return value === undefined ? rest : { ...rest, [name]: value };
}
