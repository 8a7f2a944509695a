// A list of pairs of figures, typed, pasted or read from a file: shown as it is kept, taken when it is without a mistake.

import { useEffect, useId, useState } from "react";
import { useCheckWords } from "./useCheckWords.ts";

export interface PairsBoxProps {
  readonly title: string;
  readonly hint: string;
  /** What is kept, as text and in a sentence. */
  readonly kept: string;
  readonly said: string;
  readonly takeText: string;
  readonly clearText: string;
  /** Takes a text; returns why it cannot, or null. */
  readonly onTake: (text: string) => string | null;
  readonly onClear: () => void;
}

const LARGEST = 1_000_000; // bytes: some hundred times a full log

export function PairsBox(props: PairsBoxProps) {
  const { title, hint, kept, said, takeText, clearText, onTake, onClear } = props;
  const { w } = useCheckWords();
  const id = useId();
  const [text, setText] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is kept has changed, as by undo
  useEffect(() => {
    setText(null);
    setFault(null);
  }, [kept]);
  const take = (typed: string) => setFault(onTake(typed));
  const open = async (file: File | undefined) => {
    if (file === undefined) return;
    if (file.size > LARGEST) {
      setFault(w("log-large"));
      return;
    }
    const found = await file.text();
    setText(found);
    take(found);
  };
  return (
    <fieldset className="stated-set pairs">
      <legend>{title}</legend>
      <p role="status">{said}</p>
      <label htmlFor={id} className="hidden">
        {w("log-text")}
      </label>
      <textarea
        id={id}
        rows={5}
        spellCheck={false}
        aria-describedby={`${id}-hint`}
        aria-invalid={fault !== null}
        value={text ?? kept}
        onChange={({ target }) => setText(target.value)}
      />
      {fault === null ? null : (
        <p className="stated-refusal" role="alert">
          {fault}
        </p>
      )}
      <small id={`${id}-hint`}>{hint}</small>
      <div className="pairs-acts">
        <button
          type="button"
          className="act"
          aria-disabled={text === null || text === kept}
          onClick={() => (text === null || text === kept ? undefined : take(text))}
        >
          {takeText}
        </button>
        <label className="act">
          {w("log-import")}
          <input
            type="file"
            className="hidden"
            accept=".csv,.txt,.tsv,text/*"
            onChange={({ target }) => {
              const [file] = target.files ?? [];
              open(file).catch((reason: unknown) => setFault(String(reason)));
              target.value = "";
            }}
          />
        </label>
        {kept === "" ? null : (
          <button type="button" className="act" onClick={onClear}>
            {clearText}
          </button>
        )}
      </div>
    </fieldset>
  );
}
