// Fields of the title block and the paper: what is on the sheets and in no project file.

import type { ReactNode } from "react";
import { type Fields, LONGEST_FIELD, paperNamed } from "./fields.ts";
import { useSheetWords } from "./useSheetWords.ts";
import type { SheetsWord } from "./words.ts";

export interface FieldsFormProps {
  readonly fields: Fields;
  readonly onChange: (change: Partial<Fields>) => void;
}

const PAPERS = ["A4", "Letter"] as const;
const NAMES = ["madeBy", "checkedBy", "releasedBy"] as const;

export function FieldsForm({ fields, onChange }: FieldsFormProps) {
  const w = useSheetWords();
  return (
    <details className="sheet-fields" open={matchMedia(ROOMY).matches}>
      <summary>{w("title-block")}</summary>
      <Field name="paper">
        <select value={fields.paper} onChange={({ target }) => onChange({ paper: paperNamed(target.value) })}>
          {PAPERS.map((paper) => (
            <option key={paper} value={paper}>
              {w(`paper.${paper}`)}
            </option>
          ))}
        </select>
      </Field>
      <div className="sheet-date">
        <Field name="date">
          <input
            type="date"
            max="9999-12-31"
            value={fields.date}
            onChange={({ target }) => onChange({ date: target.value })}
          />
        </Field>
        <button type="button" className="act" onClick={() => onChange({ date: today() })}>
          {w("today")}
        </button>
      </div>
      {(["document", ...NAMES] as const).map((name) => (
        <Field key={name} name={name}>
          <input
            value={fields[name]}
            maxLength={LONGEST_FIELD}
            autoComplete="off"
            onChange={({ target }) => onChange({ [name]: target.value })}
          />
        </Field>
      ))}
      <p>{w("title-block-kept")}</p>
    </details>
  );
}

/** Where the list has room enough beside them; elsewhere they open when they are called. */
const ROOMY = "(min-width: 1001px) and (min-height: 760px) and (pointer: fine)";

function Field({ name, children }: { name: SheetsWord; children: ReactNode }) {
  const w = useSheetWords();
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the control is its child
    <label className="sheet-field">
      <span>{w(name)}</span>
      {children}
    </label>
  );
}

/** The day by the clock of the person, YYYY-MM-DD. */
function today(): string {
  const now = new Date();
  const two = (value: number) => `${value}`.padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
