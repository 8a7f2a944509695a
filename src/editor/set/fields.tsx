// Fields of the tables and forms: kept by Enter or on leaving them, taken back by Escape. What is typed is no step before.

import { type KeyboardEvent, useState } from "react";
import { useSpeech } from "../live/useWorkbench.tsx";
import { formatNumber, parseTyped } from "../words/numbers.ts";

interface FieldProps {
  readonly label: string;
  readonly className?: string;
}

export interface TextFieldProps extends FieldProps {
  readonly value: string;
  readonly placeholder?: string;
  readonly onKeep: (value: string) => void;
}

export function TextField({ label, value, placeholder = "", onKeep, className = "" }: TextFieldProps) {
  const [text, setText] = useState<string | null>(null);
  const keep = () => {
    setText(null);
    if (text !== null && text.trim() !== value) onKeep(text.trim());
  };
  return (
    <input
      className={`set-field ${className}`}
      aria-label={label}
      placeholder={placeholder}
      maxLength={200}
      autoComplete="off"
      value={text ?? value}
      onChange={({ target }) => setText(target.value)}
      onBlur={keep}
      onKeyDown={(event) => onKey(event, keep, text === null ? null : () => setText(null))}
    />
  );
}

export interface FigureFieldProps extends FieldProps {
  /** Null: empty, shown as `placeholder`. */
  readonly value: number | null;
  readonly placeholder?: string;
  /** Null where the field was emptied; only where `mayBeEmpty`. */
  readonly onKeep: (value: number | null) => void;
  readonly mayBeEmpty?: boolean;
  readonly least?: number;
  readonly greatest: number;
  /** Places behind the decimal sign. */
  readonly decimals?: number;
}

/** What is no figure within the limits is put back. */
export function FigureField(props: FigureFieldProps) {
  const { label, value, placeholder = "", onKeep, className = "" } = props;
  const { speech } = useSpeech();
  const [text, setText] = useState<string | null>(null);
  const shown = value === null ? "" : formatNumber(value, speech.language, props.decimals ?? 0);
  const keep = () => {
    setText(null);
    const typed = text === null || text === shown ? undefined : typedFigure(text, props);
    if (typed !== undefined && typed !== value) onKeep(typed);
  };
  return (
    <input
      className={`set-field set-figure ${className}`}
      aria-label={label}
      placeholder={placeholder}
      inputMode={(props.decimals ?? 0) > 0 ? "decimal" : "numeric"}
      autoComplete="off"
      value={text ?? shown}
      onFocus={({ target }) => target.select()}
      onChange={({ target }) => setText(target.value)}
      onBlur={keep}
      onKeyDown={(event) => onKey(event, keep, text === null ? null : () => setText(null))}
    />
  );
}

function typedFigure(
  text: string,
  { mayBeEmpty = false, least = 0, greatest, decimals = 0 }: FigureFieldProps,
): number | null | undefined {
  if (text.trim() === "") return mayBeEmpty ? null : undefined;
  const typed = parseTyped(text);
  if (typed === null || typed < least || typed > greatest) return undefined;
  return decimals === 0 && !Number.isInteger(typed) ? undefined : typed;
}

// `drop` null: nothing was typed that could be dropped, so the field itself is left.
function onKey(event: KeyboardEvent<HTMLInputElement>, keep: () => void, drop: (() => void) | null): void {
  if (event.key === "Enter") {
    keep();
    event.preventDefault();
  }
  if (event.key === "Escape") {
    if (drop === null) event.currentTarget.blur();
    else drop();
    // The view stays: it was the field that was left.
    event.preventDefault();
    event.stopPropagation();
  }
}
