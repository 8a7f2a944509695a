// The form of some members of `concrete`: each with its range and its default, each change one step.

import { type ConcreteField, concreteFallback, concreteTakes } from "./fields.ts";
import { StatedFieldset } from "./StatedFieldset.tsx";
import type { StatedForm } from "./useStated.ts";

export interface ConcreteFormProps {
  readonly title: string;
  readonly form: StatedForm;
  readonly names: readonly ConcreteField[];
}

export function ConcreteForm({ title, form, names }: ConcreteFormProps) {
  const fields = names.map((name) => ({
    name,
    takes: concreteTakes(name),
    fallback: concreteFallback(name),
    value: form.values[name],
  }));
  return (
    <StatedFieldset
      title={title}
      form={form}
      fields={fields}
      onChange={(name, value) => form.change({ [name]: value })}
    />
  );
}
