// The fields of the title block as the person types them, kept by the browser for the next time.

import { useState } from "react";
import { type Fields, keptFields, readFields } from "./fields.ts";

const STORE = "panelwright.sheets";

/** @param project - name of the project in hand, whose document and date are its own */
export function useFields(project: string): readonly [Fields, (change: Partial<Fields>) => void] {
  const [held, setHeld] = useState(() => ({ project, fields: readFields(kept(), project) }));
  const { fields } = held.project === project ? held : { fields: readFields(kept(), project) };
  const change = (part: Partial<Fields>) => {
    const next = { ...fields, ...part };
    setHeld({ project, fields: next });
    keep(keptFields(kept(), project, next));
  };
  if (held.project !== project) setHeld({ project, fields });
  return [fields, change];
}

// A browser may refuse its store; then the fields last as long as the view.
function kept(): string | null {
  try {
    return localStorage.getItem(STORE);
  } catch {
    return null;
  }
}

function keep(text: string): void {
  try {
    localStorage.setItem(STORE, text);
  } catch {}
}
