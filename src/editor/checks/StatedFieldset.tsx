// A group of fields of loads or concrete, with what a change that waits still asks for.

import type { ReactNode } from "react";
import type { Json } from "../../json/value.ts";
import type { Fallback, Takes } from "./fields.ts";
import { StatedField } from "./StatedField.tsx";
import { useCheckWords } from "./useCheckWords.ts";
import type { StatedForm } from "./useStated.ts";

export interface FieldOf {
  readonly name: string;
  readonly takes: Takes;
  readonly fallback: Fallback;
  readonly value: Json | undefined;
}

export interface StatedFieldsetProps {
  readonly title: string;
  readonly form: StatedForm;
  readonly fields: readonly FieldOf[];
  readonly onChange: (name: string, value: Json | undefined) => void;
  readonly children?: ReactNode;
}

export function StatedFieldset({ title, form, fields, onChange, children }: StatedFieldsetProps) {
  const { w, called } = useCheckWords();
  const own = fields.map(({ name }) => name);
  const lacks = (form.lacks ?? []).map((path) => path.slice(path.lastIndexOf(".") + 1));
  const asked = lacks.filter((name) => own.includes(name));
  return (
    <fieldset className="stated-set">
      <legend>{title}</legend>
      {fields.map((field) => (
        <StatedField
          key={field.name}
          {...field}
          isAsked={asked.includes(field.name)}
          onChange={(value) => onChange(field.name, value)}
        />
      ))}
      {form.lacks === null ? null : (
        <div className="stated-waits" role="status">
          <p>
            {asked.length === 0
              ? w("lacks-elsewhere")
              : w("lacks", { fields: asked.map((name) => called("field", name)).join(", ") })}
          </p>
          <button type="button" className="act" onClick={form.drop}>
            {w("drop")}
          </button>
        </div>
      )}
      {form.refusal === null ? null : (
        <p className="stated-refusal" role="alert">
          {w("not-taken", { reason: form.refusal })}
        </p>
      )}
      {children}
    </fieldset>
  );
}
