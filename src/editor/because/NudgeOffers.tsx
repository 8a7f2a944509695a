// The moves that would take a piece away, each with what it gains here and costs elsewhere, and a button that makes it.

import { useEffect, useState } from "react";
import { useBench, useSpeech } from "../live/useWorkbench.tsx";
import { GREATEST_NUDGE, type Nudge, type NudgeCounts, type NudgeTarget } from "../nudge/nudge.ts";
import { nudgesHere, takeNudge } from "../pane/paneActions.ts";
import type { PaneView } from "../pane/usePane.ts";
import { formatChange } from "../words/numbers.ts";
import { type Words, words } from "../words/say.ts";

interface Tried {
  readonly of: PaneView;
  readonly nudges: readonly Nudge[];
}

export function NudgeOffers({ view, target }: { view: PaneView; target: NudgeTarget }) {
  const bench = useBench();
  const { t } = useSpeech();
  const [tried, setTried] = useState<Tried | null>(null);
  // The moves are tried when the card is on the screen, so that it opens at once.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the target is made from the view
  useEffect(() => {
    const timer = setTimeout(() => setTried({ of: view, nudges: nudgesHere(bench, view, target) }), 0);
    return () => clearTimeout(timer);
  }, [bench, view]);
  if (tried === null || tried.of !== view)
    return <p className="nudge-note">{t(words("because.searching"))}</p>;
  if (tried.nudges.length === 0)
    return <p className="nudge-note">{t(words("because.no-nudge", { most: GREATEST_NUDGE }))}</p>;
  return (
    <ol className="nudges">
      {tried.nudges.map((nudge, k) => (
        <Offer key={JSON.stringify(nudge.edits)} nudge={nudge} isFirst={k === 0} />
      ))}
    </ol>
  );
}

const COUNTED = ["errors", "closures", "narrow", "fillers", "sizes"] as const;

function Offer({ nudge, isFirst }: { nudge: Nudge; isFirst: boolean }) {
  const bench = useBench();
  const { speech, t } = useSpeech();
  const { here, elsewhere, after, isGain, from, to } = nudge;
  // Closures, fillers and sizes always; the rest where it changes.
  const shown = COUNTED.filter(
    (name) => !["errors", "narrow"].includes(name) || here[name] !== 0 || elsewhere[name] !== 0,
  );
  return (
    <li className={isGain ? "nudge gain" : "nudge"}>
      <div className="nudge-head">
        <span>
          <b>{t(nudgeWords(nudge))}</b> <small>{t(words("nudge.becomes", { from, to }))}</small>
        </span>
        <button
          type="button"
          className={isFirst && isGain ? "act strong" : "act"}
          onClick={() => takeNudge(bench, nudge)}
        >
          {t(words("nudge.try"))} {isFirst && isGain ? <kbd>T</kbd> : null}
        </button>
      </div>
      <table>
        <thead>
          <tr>
            <td />
            <th scope="col">{t(words("nudge.here"))}</th>
            <th scope="col">{t(words("nudge.elsewhere"))}</th>
            <th scope="col">{t(words("nudge.after"))}</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((name) => (
            <tr key={name}>
              <th scope="row">{t(words(`nudge.${name}`))}</th>
              <Changed value={here[name]} />
              <Changed value={elsewhere[name]} />
              <td>{speech.write(after[name])}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {isGain ? null : <p className="nudge-note">{t(words("nudge.no-gain"))}</p>}
    </li>
  );
}

function Changed({ value }: { value: NudgeCounts["closures"] }) {
  const { speech } = useSpeech();
  const judged = value < 0 ? "chip better" : value > 0 ? "chip worse" : "";
  return (
    <td>
      <span className={judged}>{formatChange(value, speech.language)}</span>
    </td>
  );
}

function nudgeWords({ mover, way, by }: Nudge): Words {
  switch (mover.kind) {
    case "wall":
      return words(`nudge.wall-${way}`, { wall: mover.wall, by });
    case "opening":
      return words(`nudge.opening-${way}`, { opening: mover.opening, by });
    case "free-end":
      return words(`nudge.free-end-${way}`, { wall: mover.wall, by });
    default:
      return mover satisfies never;
  }
}
