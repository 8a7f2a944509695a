// A small field for a length: kept by Enter or on leaving it, taken back by Escape.

import { useId, useState } from "react";
import { useSpeech } from "../live/useWorkbench.tsx";
import { formatMm, parseTyped } from "../words/numbers.ts";

export interface NumberFieldProps {
  readonly label: string;
  readonly value: number;
  /** Called with a whole, acceptable value other than the one there. */
  readonly onKeep: (value: number) => void;
  readonly least?: number;
}

export function NumberField({ label, value, onKeep, least = 0 }: NumberFieldProps) {
  const id = useId();
  const { speech } = useSpeech();
  const [text, setText] = useState<string | null>(null);
  const keep = () => {
    const typed = text === null ? null : parseTyped(text);
    setText(null);
    if (typed !== null && typed >= least && typed !== value) onKeep(typed);
  };
  return (
    <span className="option">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        inputMode="decimal"
        autoComplete="off"
        value={text ?? formatMm(value, speech.language)}
        onFocus={(event) => event.target.select()}
        onChange={(event) => setText(event.target.value)}
        onBlur={keep}
        onKeyDown={(event) => {
          if (event.key === "Enter") {
            keep();
            document.querySelector<HTMLElement>(".plan-host")?.focus();
          }
          if (event.key === "Escape") setText(null);
        }}
      />
    </span>
  );
}
