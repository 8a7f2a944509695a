// Shoring step by step: a picture of the step in hand, and all steps as a table.

import { useState } from "react";
import type { ShoringRow } from "../../assess/checkDocument.ts";
import { ShoringPicture } from "./ShoringPicture.tsx";
import { levelsAfter, peakOf, stepName, tellingLevels } from "./shoringLevels.ts";
import { type CheckSpeech, useCheckWords } from "./useCheckWords.ts";

const AT_ONCE = 40; // steps

export function ShoringSteps({ rows }: { rows: readonly ShoringRow[] }) {
  const speech = useCheckWords();
  const { w, rough } = speech;
  const peak = peakOf(rows, "slabs");
  const [chosen, setStep] = useState<number | null>(null);
  const step = Math.min(chosen ?? peak?.index ?? 0, rows.length - 1);
  const row = rows[step];
  if (row === undefined) return null;
  const walk = (by: number) => setStep(Math.min(rows.length - 1, Math.max(0, step + by)));
  const said = w("step-of", { number: step + 1, of: rows.length, step: stepText(row.step, speech) });
  return (
    <section className="shoring">
      <div className="shoring-steps">
        <button
          type="button"
          className="step-button"
          aria-label={w("step-previous")}
          title={w("step-previous")}
          aria-disabled={step === 0}
          onClick={() => walk(-1)}
        >
          <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
            <path d="M9 2.5L4.5 7 9 11.5" />
          </svg>
        </button>
        <input
          type="range"
          min={0}
          max={rows.length - 1}
          value={step}
          aria-label={w("step")}
          aria-valuetext={said}
          onChange={({ target }) => setStep(Number(target.value))}
        />
        <button
          type="button"
          className="step-button"
          aria-label={w("step-next")}
          title={w("step-next")}
          aria-disabled={step === rows.length - 1}
          onClick={() => walk(1)}
        >
          <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
            <path d="M5 2.5L9.5 7 5 11.5" />
          </svg>
        </button>
        <b role="status">{said}</b>
      </div>
      <div className="shoring-both">
        <ShoringPicture
          levels={levelsAfter(rows, step)}
          greatest={peak?.ratio ?? 1}
          label={`${w("shoring-picture")}: ${said}`}
        />
        <dl className="shoring-peaks">
          {(["slabs", "shores"] as const).map((of) => {
            const most = peakOf(rows, of);
            if (most === null) return null;
            return (
              <div key={of}>
                <dt>{w(of === "slabs" ? "most-slab" : "most-shore")}</dt>
                <dd>
                  <b>{rough(most.ratio)}</b>
                  <button type="button" className="link" onClick={() => setStep(most.index)}>
                    {w("level", { level: most.level })}, {stepText(rows[most.index]?.step ?? "", speech)}
                  </button>
                </dd>
              </div>
            );
          })}
          <p>{w("in-slabs")}</p>
        </dl>
      </div>
      <StepTable rows={rows} step={step} onStep={setStep} />
    </section>
  );
}

interface StepTableProps {
  readonly rows: readonly ShoringRow[];
  readonly step: number;
  readonly onStep: (step: number) => void;
}

function StepTable({ rows, step, onStep }: StepTableProps) {
  const speech = useCheckWords();
  const { w, rough } = speech;
  const [shown, setShown] = useState(AT_ONCE);
  const more = Math.min(AT_ONCE, rows.length - shown);
  const peaks = { slabs: peakOf(rows, "slabs"), shores: peakOf(rows, "shores") };
  return (
    <>
      <h3>{w("steps")}</h3>
      <div className="rules-scroll">
        <table className="step-table">
          <thead>
            <tr>
              <th scope="col">{w("step")}</th>
              <th scope="col">{w("slabs")}</th>
              <th scope="col">{w("shores")}</th>
            </tr>
          </thead>
          <tbody>
            {rows.slice(0, shown).map((row, index) => {
              const levels = tellingLevels(levelsAfter(rows, index));
              return (
                // biome-ignore lint/suspicious/noArrayIndexKey: a step is told by its place
                <tr key={index} aria-current={index === step ? "step" : undefined}>
                  <th scope="row">
                    <button type="button" className="link" onClick={() => onStep(index)}>
                      {stepText(row.step, speech)}
                    </button>
                  </th>
                  <td>
                    {levels.map(({ level, slab }) => (
                      <Ratio
                        key={level}
                        level={level}
                        text={rough(slab)}
                        isPeak={peaks.slabs?.index === index && peaks.slabs.level === level}
                      />
                    ))}
                  </td>
                  <td>
                    {levels.map(({ level, shore, support }) => (
                      <Ratio
                        key={level}
                        level={level}
                        text={support === "none" ? w("none") : rough(shore)}
                        isPeak={peaks.shores?.index === index && peaks.shores.level === level}
                      />
                    ))}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      {more > 0 ? (
        <button type="button" className="act" onClick={() => setShown(shown + more)}>
          {w("more-steps", { count: more })}
        </button>
      ) : null}
    </>
  );
}

function Ratio({ level, text, isPeak }: { level: number; text: string; isPeak: boolean }) {
  return (
    <span className={isPeak ? "ratio peak" : "ratio"}>
      <small>{level}</small> {text}
    </span>
  );
}

function stepText(step: string, { w }: CheckSpeech): string {
  const name = stepName(step);
  return name === null ? step : w(`step.${name.kind}`, { level: name.level });
}
