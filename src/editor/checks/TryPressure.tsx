// Rate and pressure by the project's method, both ways, tried on figures that are kept nowhere.

import { useId, useState } from "react";
import { pourPressure, pourRate } from "../../assess/pourPressure.ts";
import { CONCRETE_RANGES, type Concrete } from "../../plan/concrete.ts";
import type { Mm } from "../../units.ts";
import { parseTyped } from "../words/numbers.ts";
import { useCheckWords } from "./useCheckWords.ts";

export interface TryPressureProps {
  readonly concrete: Concrete;
  /** Of the placing. */
  readonly height: Mm;
  /** What panels bear, to begin with. */
  readonly limit: number | null;
}

export function TryPressure({ concrete, height, limit }: TryPressureProps) {
  const { w, figure, rough } = useCheckWords();
  const [rate, setRate] = useState<string | null>(null);
  const [pressure, setPressure] = useState<string | null>(null);
  const isHead = concrete.pressureModel === "liquid head";
  const byRate = rateAnswer();
  const byPressure = pressureAnswer();
  return (
    <section className="try-pressure">
      <h3>{w("rate-and-pressure")}</h3>
      {isHead ? (
        <p>{w("try-head")}</p>
      ) : (
        <TryLine
          label={w("try-rate")}
          unit="m/h"
          text={rate ?? (concrete.rate === null ? "" : figure(concrete.rate))}
          onType={setRate}
          answer={byRate}
        />
      )}
      <TryLine
        label={w("try-pressure")}
        unit="kPa"
        text={pressure ?? (limit === null ? "" : figure(limit))}
        onType={setPressure}
        answer={byPressure}
      />
      <small>{w("try-note")}</small>
    </section>
  );

  function rateAnswer(): string {
    const typed = rate === null ? concrete.rate : parseTyped(rate);
    const { least, greatest } = CONCRETE_RANGES.rate;
    if (typed === null) return "";
    if (typed < least || typed > greatest) return w("try-refused");
    const found = pourPressure({ ...concrete, rate: typed }, height);
    if (found.status === "refused") return w("try-refused");
    return w("try-rate-gives", { pressure: rough(found.value.envelope.greatest) });
  }

  function pressureAnswer(): string {
    const typed = pressure === null ? limit : parseTyped(pressure);
    if (typed === null) return "";
    const found = pourRate(concrete, height, typed);
    if (found.status === "refused" || typed <= 0) return w("try-refused");
    switch (found.value.kind) {
      case "any":
        return w("try-pressure-any");
      case "none":
        return w("try-pressure-none");
      case "upTo":
        return w("try-pressure-gives", { rate: rough(found.value.rate) });
      default:
        return found.value satisfies never;
    }
  }
}

interface TryLineProps {
  readonly label: string;
  readonly unit: string;
  readonly text: string;
  readonly answer: string;
  readonly onType: (text: string) => void;
}

function TryLine({ label, unit, text, answer, onType }: TryLineProps) {
  const id = useId();
  return (
    <p className="try-line">
      <label htmlFor={id}>{label}</label>
      <span className="stated-figure">
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          value={text}
          onChange={({ target }) => onType(target.value)}
        />
        <span>{unit}</span>
      </span>
      <output htmlFor={id}>{answer}</output>
    </p>
  );
}
