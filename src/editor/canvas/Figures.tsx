// The figures of the dimensions on the drawing, each where its line is: a button that opens its field, or the field.

import { type KeyboardEvent, useEffect, useRef } from "react";
import { send } from "../live/actions.ts";
import { useBench, useSpeech } from "../live/useWorkbench.tsx";
import type { Figure } from "../scene/figures.ts";
import { NO_MODIFIERS } from "../tools/protocol.ts";
import { formatMm } from "../words/numbers.ts";
import { words } from "../words/say.ts";

export function Figures({ figures }: { figures: readonly Figure[] }) {
  return (
    <div className="figures">
      {figures.map((figure) =>
        figure.isActive ? (
          <FigureField key={figure.key} figure={figure} />
        ) : (
          <FigureText key={figure.key} figure={figure} />
        ),
      )}
    </div>
  );
}

function useFigureText({ value, unit, typed }: Figure): string {
  const { speech } = useSpeech();
  const text = typed === null || typed === "" ? formatMm(value, speech.language) : typed;
  return unit === "degrees" ? `${text}°` : text;
}

function FigureText({ figure }: { figure: Figure }) {
  const bench = useBench();
  const { t } = useSpeech();
  const text = useFigureText(figure);
  const [x, y] = figure.at;
  const place = { left: x, top: y, "--turn": `${figure.turn}rad` } as React.CSSProperties;
  if (!figure.isOpen) {
    return (
      <span className="figure" style={place}>
        {text}
      </span>
    );
  }
  return (
    <button
      type="button"
      className="figure"
      style={place}
      aria-label={`${t({ key: figure.name, values: {} })} ${text}`}
      title={t({ key: figure.name, values: {} })}
      data-figure={figure.key}
      onClick={() => {
        const hit = { kind: "dimension", key: figure.key } as const;
        send(bench, { kind: "press", at: [0, 0], hit, modifiers: NO_MODIFIERS });
        send(bench, { kind: "release", at: [0, 0], hit, modifiers: NO_MODIFIERS });
      }}
    >
      {text}
    </button>
  );
}

const KEYS = ["Escape", "Enter", "Tab"] as const;

function FigureField({ figure }: { figure: Figure }) {
  const bench = useBench();
  const { t, speech } = useSpeech();
  const field = useRef<HTMLInputElement>(null);
  const isTyped = figure.typed !== null;
  useEffect(() => {
    if (isTyped) field.current?.focus();
  }, [isTyped]);
  const [x, y] = figure.at;
  const was = figure.was === null ? null : formatMm(figure.was, speech.language);
  const onKeyDown = (event: KeyboardEvent) => {
    const key = KEYS.find((name) => name === event.key);
    if (key === undefined) return event.stopPropagation();
    event.preventDefault();
    event.stopPropagation();
    send(bench, { kind: "key", key, modifiers: { ...NO_MODIFIERS, shift: event.shiftKey } });
    if (key !== "Tab") document.querySelector<HTMLElement>(".plan-host")?.focus();
  };
  return (
    <div className="figure-field" style={{ left: x, top: y }}>
      <label className={isTyped ? "figure-box typed" : "figure-box"}>
        <span className="hidden">{t({ key: figure.name, values: {} })}</span>
        <input
          ref={field}
          inputMode="decimal"
          autoComplete="off"
          data-figure={figure.key}
          value={figure.typed ?? ""}
          placeholder={formatMm(figure.value, speech.language)}
          style={{
            width: `${Math.max(4, (figure.typed ?? formatMm(figure.value, speech.language)).length + 0.5)}ch`,
          }}
          onChange={(event) => send(bench, { kind: "field", text: event.target.value })}
          onKeyDown={onKeyDown}
        />
        <span className="figure-unit">{figure.unit === "mm" ? "mm" : "°"}</span>
      </label>
      {was === null ? null : (
        <div className="figure-was">
          {t(words("dimension.was", { value: was }))}
          <span>{t(words("hint.keep"))}</span>
        </div>
      )}
    </div>
  );
}
