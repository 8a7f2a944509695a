// What several rules say of themselves, folded under their table: range, remarks and source of each.

import { useCheckWords } from "./useCheckWords.ts";

export interface RuleNote {
  readonly rule: string;
  /** Of which part of the work, or of what is measured. */
  readonly of: string;
  readonly notes: readonly string[];
  readonly source: string;
}

export function RuleNotes({ rules }: { readonly rules: readonly RuleNote[] }) {
  const { w, told } = useCheckWords();
  return (
    <details>
      <summary>{w("rule-notes")}</summary>
      <dl>
        {rules.map(({ rule, of, notes, source }) => (
          <div key={`${of} ${rule}`}>
            <dt>
              {told(rule)}, {told(of)}
            </dt>
            {notes.map((note) => (
              <dd key={note}>{told(note)}</dd>
            ))}
            <dd lang="en">{told(source)}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
