// What the set that was found changes: every free interval that is filled otherwise than by itself, before over after, with
// what it would cost to leave that one alone. A click goes to it in plan and elevation.

import { useState } from "react";
import type { IntervalChange, SetChanges } from "../../fill/setChanges.ts";
import type { Kit } from "../../kit/kit.ts";
import { useProblemText } from "../chrome/useProblemText.ts";
import { changeScreen, selectItem } from "../live/actions.ts";
import { useBench, useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import { showUnit } from "../state/editorState.ts";
import type { SetResult } from "./optimiser.ts";
import { unitTitle } from "./pourRows.ts";
import { useAmounts, useSetWords } from "./useSetWords.ts";
import { WidthStrip } from "./WidthStrip.tsx";

const FIRST = 8; // rows; the rest when it is asked for

export interface ChangesSectionProps {
  readonly kit: Kit;
  /** Of the state on the screen. */
  readonly result: SetResult;
  readonly changes: SetChanges;
}

export function ChangesSection({ kit, result, changes }: ChangesSectionProps) {
  const w = useSetWords();
  const tell = useProblemText();
  const [isAll, setAll] = useState(false);
  const { intervals, causes } = changes;
  const shown = isAll ? intervals : intervals.slice(0, FIRST);
  const standard = new Set(
    kit.pieces.flatMap((piece) => (piece.family === "wall-panel" && piece.standard ? [piece.width] : [])),
  );
  return (
    <section className="set-changes" aria-label={w("changes")}>
      <header className="set-head">
        <h3>{w("changes")}</h3>
        <p className="set-counting">{w("changed", { count: intervals.length })}</p>
      </header>
      <ul className="changes">
        {shown.map((each) => (
          <ChangeRow
            key={`${each.faces[0]} ${each.from}`}
            change={each}
            standard={standard}
            result={result}
            currency={kit.currency}
          />
        ))}
      </ul>
      {intervals.length <= FIRST ? null : (
        <button type="button" className="act" aria-expanded={isAll} onClick={() => setAll(!isAll)}>
          {isAll ? w("show-few") : w("show-all", { count: intervals.length })}
        </button>
      )}
      {causes.length === 0 ? null : (
        <>
          <h4>{w("causes")}</h4>
          <ul className="causes">
            {causes.map(({ message, intervals: count }) => (
              <li key={message}>
                {tell(message)} <small>{w("places", { count })}</small>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

interface ChangeRowProps {
  readonly change: IntervalChange;
  readonly standard: ReadonlySet<number>;
  readonly result: SetResult;
  readonly currency: string | null;
}

function ChangeRow({ change, standard, result, currency }: ChangeRowProps) {
  const bench = useBench();
  const w = useSetWords();
  const { speech } = useSpeech();
  const { doc } = useEditorState().history;
  const amount = useAmounts(result.set.countedBy, currency);
  const { unit, wall, faces, from, to, before, after, undone } = change;
  const write = speech.write;
  const goThere = () => {
    bench.editor.set((state) => showUnit(state, unit));
    selectItem(bench, { bucket: "walls", id: wall });
    changeScreen(bench, { over: null, isPaneOpen: true });
    // One wall may have several changes: the hand comes to lie on the interval itself.
    const [face] = faces;
    if (face === undefined) return;
    bench.focus.set(() => ({ unit, face, level: "stretch", x: (from + to) / 2, z: 1 }));
  };
  const text = ({ widths }: IntervalChange["before"]) => widths.map(write).join(" + ");
  return (
    <li>
      <button
        type="button"
        className="change"
        aria-label={`${w("wall-of", { unit: unitTitle(doc, unit), wall })}: ${text(before)} → ${text(after)}`}
        onClick={goThere}
      >
        <span className="change-place">
          <b>{w("wall-of", { unit: unitTitle(doc, unit), wall })}</b>
          <small>
            {write(from)}–{write(to)}
          </small>
        </span>
        <span className="change-strips">
          <WidthStrip sequence={before} standard={standard} write={write} />
          <WidthStrip sequence={after} standard={standard} write={write} />
        </span>
        <small>{undone === null || undone === 0 ? "" : w("undone", { amount: amount(undone, 2) })}</small>
      </button>
    </li>
  );
}
