// The figures of the unit in view, each with its change since the last edit.

import { judged, SCORE_NAMES, type ScoreName, scoresOf } from "../live/scores.ts";
import { useBench, useInView, useSpeech } from "../live/useWorkbench.tsx";
import { comparedScores } from "../live/workbench.ts";
import { formatChange, formatNumber } from "../words/numbers.ts";
import { words } from "../words/say.ts";

export function Scoreboard() {
  const bench = useBench();
  const inView = useInView();
  const { t, speech } = useSpeech();
  const compared = comparedScores(bench, inView);
  if (compared === null) return <div className="scores" />;
  // The figure that waits for the soffits stays what it was until they are there.
  const known = inView.whole === null ? null : scoresOf(inView.whole);
  return (
    <dl className="scores" data-stale={inView.isStale}>
      {SCORE_NAMES.map((name) => {
        const now = compared.now[name] ?? known?.[name] ?? null;
        return (
          <div className="score" key={name} data-score={name} data-value={now ?? ""}>
            <dt>{t(words(`score.${name}`))}</dt>
            <dd>
              <b>{now === null ? "\u2026" : formatNumber(now, speech.language)}</b>
              {name === "mass" ? <small>kg</small> : null}
              <Change name={name} now={compared.now[name]} before={compared.before?.[name] ?? null} />
            </dd>
          </div>
        );
      })}
    </dl>
  );
}

function Change({ name, now, before }: { name: ScoreName; now: number | null; before: number | null }) {
  const { t, speech } = useSpeech();
  if (now === null || before === null) return null;
  const change = name === "mass" ? Math.round(now) - Math.round(before) : now - before;
  const text = formatChange(change, speech.language);
  return (
    <span className={`chip ${judged(change)}`} title={t(words("score.change", { change: text }))}>
      {text}
    </span>
  );
}
