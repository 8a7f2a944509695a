// The settings of the picture under the plan: scale, turn, strength, lock, and which file it is.

import { useId, useRef, useState } from "react";
import { angleBetween } from "../../geom/angle.ts";
import { formatIssue } from "../../json/issue.ts";
import { roundTo } from "../../units.ts";
import { NumberField } from "../chrome/NumberField.tsx";
import { degreesToTurn } from "../degrees.ts";
import { changeScreen, REGION } from "../live/actions.ts";
import { useBench, useSpeech } from "../live/useWorkbench.tsx";
import { words } from "../words/say.ts";
import { LEAST_OPACITY, turnedTo, type Underlay } from "./underlay.ts";
import { beginCalibrating, changeUnderlay, layFile } from "./underlayActions.ts";
import { useUnderlay } from "./useBackdrop.ts";

export function UnderlayPanel() {
  const bench = useBench();
  const { t } = useSpeech();
  const answer = useUnderlay();
  return (
    <section className="underlay" aria-label={t(words("underlay.title"))} {...{ [REGION]: "underlay" }}>
      <header>
        <h2>{t(words("underlay.title"))}</h2>
        <button
          type="button"
          className="close"
          aria-label={t(words("underlay.close"))}
          onClick={() => changeScreen(bench, { isUnderlayOpen: false })}
        >
          <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
            <path d="M3 3l8 8M11 3l-8 8" />
          </svg>
        </button>
      </header>
      {answer.status === "ok" ? <Settings underlay={answer.underlay} /> : null}
      {answer.status === "none" ? <p>{t(words("underlay.empty"))}</p> : null}
      {answer.status === "invalid" ? (
        <p role="alert">
          {t(words("underlay.wrong", { reason: answer.issues.slice(0, 1).map(formatIssue).join(" ") }))}
        </p>
      ) : null}
      <div className="underlay-acts">
        <FileButton />
        {answer.status === "none" ? null : (
          <button type="button" className="act" onClick={() => changeUnderlay(bench, null)}>
            {t(words("underlay.remove"))}
          </button>
        )}
      </div>
    </section>
  );
}

function Settings({ underlay }: { underlay: Underlay }) {
  const bench = useBench();
  const { t } = useSpeech();
  const lock = useId();
  const { turn, width, height, scale, name, locked } = underlay;
  const degrees = roundTo(angleBetween(1, 0, turn.cosine, turn.sine), 2);
  const size = { width: roundTo(width * scale, 0), height: roundTo(height * scale, 0), name };
  return (
    <>
      <p>{t(words("underlay.size", size))}</p>
      <button type="button" className="act" onClick={() => beginCalibrating(bench)}>
        {t(words("underlay.scale"))}
      </button>
      <div className="underlay-row">
        <NumberField
          label={t(words("underlay.turn"))}
          value={degrees}
          onKeep={(typed) => changeUnderlay(bench, turnedTo(underlay, degreesToTurn(typed)))}
        />
        <button
          type="button"
          className="act"
          onClick={() =>
            changeUnderlay(bench, turnedTo(underlay, { cosine: 0 - turn.sine, sine: turn.cosine }))
          }
        >
          {t(words("underlay.turn-left"))}
        </button>
      </div>
      <Strength key={underlay.opacity} underlay={underlay} />
      <div className="underlay-row">
        <input
          id={lock}
          type="checkbox"
          checked={locked}
          onChange={({ target }) => changeUnderlay(bench, { ...underlay, locked: target.checked })}
        />
        <label htmlFor={lock}>{t(words("underlay.lock"))}</label>
      </div>
    </>
  );
}

const PER_CENT = 100;

// One step when the hand lets go, not one for every value on the way.
function Strength({ underlay }: { underlay: Underlay }) {
  const bench = useBench();
  const { t } = useSpeech();
  const id = useId();
  const first = Math.round(underlay.opacity * PER_CENT);
  const [value, setValue] = useState(first);
  const keep = () => {
    if (value !== first) changeUnderlay(bench, { ...underlay, opacity: value / PER_CENT });
  };
  return (
    <div className="underlay-row">
      <label htmlFor={id}>{t(words("underlay.fade"))}</label>
      <input
        id={id}
        type="range"
        min={LEAST_OPACITY * PER_CENT}
        max={PER_CENT}
        step="5"
        value={value}
        onChange={({ target }) => setValue(Number(target.value))}
        onPointerUp={keep}
        onKeyUp={keep}
        onBlur={keep}
      />
      <span>{value} %</span>
    </div>
  );
}

function FileButton() {
  const bench = useBench();
  const { t } = useSpeech();
  const file = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" className="act" onClick={() => file.current?.click()}>
        {t(words("underlay.choose"))}
      </button>
      <input
        ref={file}
        type="file"
        accept="image/png,image/jpeg,application/pdf"
        className="hidden"
        tabIndex={-1}
        aria-label={t(words("underlay.choose"))}
        onChange={({ target }) => {
          const [chosen] = target.files ?? [];
          if (chosen !== undefined) void layFile(bench, chosen);
          target.value = "";
        }}
      />
    </>
  );
}
