// One field of a form: what is said, or the default that stands for it, with its unit and range. A figure outside the
// range is not taken, and the field says which range that is.

import { useEffect, useId, useState } from "react";
import type { Json } from "../../json/value.ts";
import type { Fallback, Takes } from "./fields.ts";
import { typedFigure } from "./typedFigure.ts";
import { type CheckSpeech, useCheckWords } from "./useCheckWords.ts";

export interface StatedFieldProps {
  readonly name: string;
  readonly takes: Takes;
  readonly fallback: Fallback;
  /** undefined = nothing is said. */
  readonly value: Json | undefined;
  readonly isAsked: boolean;
  readonly onChange: (value: Json | undefined) => void;
}

export function StatedField(props: StatedFieldProps) {
  const { name, takes, value, fallback, isAsked, onChange } = props;
  const id = useId();
  const speech = useCheckWords();
  const { w, called, chosen } = speech;
  const label = called("field", name);
  const isSaid = value !== undefined && value !== null;
  return (
    <div className="stated" data-field={name} data-asked={isAsked}>
      <label htmlFor={id}>{label}</label>
      {takes.kind === "number" ? (
        <Figure {...props} id={id} takes={takes} speech={speech} />
      ) : (
        <select
          id={id}
          value={isSaid ? String(value) : ""}
          onChange={({ target }) => onChange(choiceOf(target.value, takes))}
        >
          <option value="">{fallback === null ? w("unsaid") : sayDefault(name, fallback, speech)}</option>
          {(takes.kind === "truth" ? ["true", "false"] : takes.choices).map((each) => (
            <option key={each} value={each}>
              {takes.kind === "truth" ? w(each === "true" ? "yes" : "no") : chosen(name, each)}
            </option>
          ))}
        </select>
      )}
      {takes.kind === "number" ? (
        <Said {...{ isSaid, fallback, label }} onBack={() => onChange(undefined)} />
      ) : null}
    </div>
  );
}

function choiceOf(text: string, takes: Takes): Json | undefined {
  if (text === "") return undefined;
  return takes.kind === "truth" ? text === "true" : text;
}

function sayDefault(
  name: string,
  fallback: Exclude<Fallback, null>,
  { w, chosen, figure }: CheckSpeech,
): string {
  const text =
    typeof fallback === "boolean"
      ? w(fallback ? "yes" : "no")
      : typeof fallback === "number"
        ? figure(fallback)
        : chosen(name, fallback);
  return `${text} (${w("default")})`;
}

interface SaidProps {
  readonly isSaid: boolean;
  readonly fallback: Fallback;
  readonly label: string;
  readonly onBack: () => void;
}

function Said({ isSaid, fallback, label, onBack }: SaidProps) {
  const { w } = useCheckWords();
  if (!isSaid) return <small className="stated-default">{w(fallback === null ? "unsaid" : "default")}</small>;
  return (
    <button
      type="button"
      className="stated-back"
      title={w("back-to-default", { name: label })}
      aria-label={w("back-to-default", { name: label })}
      onClick={onBack}
    >
      <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
        <path d="M3.5 3.5l7 7M10.5 3.5l-7 7" />
      </svg>
    </button>
  );
}

interface FigureProps extends StatedFieldProps {
  readonly id: string;
  readonly takes: Extract<Takes, { readonly kind: "number" }>;
  readonly speech: CheckSpeech;
}

function Figure({ id, takes, fallback, value, onChange, speech, isAsked }: FigureProps) {
  const { w, figure } = speech;
  const said = typeof value === "number" ? figure(value) : typeof value === "string" ? value : "";
  const [text, setText] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another value has come from elsewhere, as by undo
  useEffect(() => {
    setText(null);
    setFault(null);
  }, [value]);
  const range = rangeText(takes, speech);
  const keep = () => {
    if (text === null) return;
    if (text.trim() === "") {
      setText(null);
      setFault(null);
      if (value !== undefined) onChange(undefined);
      return;
    }
    const typed = typedFigure(text, takes);
    if (typed.status === "no-figure") setFault(w("no-figure", { value: text.trim(), range }));
    else if (typed.status !== "taken") setFault(w(typed.status, { value: figure(typed.value), range }));
    else {
      setText(null);
      setFault(null);
      if (typed.value !== value) onChange(typed.value);
    }
  };
  return (
    <>
      <span className="stated-figure">
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          aria-invalid={fault !== null}
          aria-describedby={`${id}-range`}
          data-asked={isAsked}
          placeholder={typeof fallback === "number" ? figure(fallback) : ""}
          value={text ?? said}
          onChange={({ target }) => setText(target.value)}
          onBlur={keep}
          onKeyDown={(event) => {
            if (event.key === "Enter") keep();
            if (event.key === "Escape" && text !== null) {
              setText(null);
              setFault(null);
              event.stopPropagation();
            }
          }}
        />
        <span>{takes.unit ?? ""}</span>
      </span>
      <small className="stated-range" id={`${id}-range`} role={fault === null ? undefined : "alert"}>
        {fault ?? range}
      </small>
    </>
  );
}

export function rangeText(
  { least, greatest, unit }: { readonly least: number; readonly greatest: number; readonly unit?: string },
  { w, figure }: Pick<CheckSpeech, "w" | "figure">,
): string {
  const ends = { least: figure(least), greatest: figure(greatest) };
  return unit === undefined ? w("range-plain", ends) : w("range", { ...ends, unit });
}
