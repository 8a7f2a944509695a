// What has to be said beside the sheets: places that are not built, sheets that could not be made, nothing to print.

import { changeScreen } from "../live/actions.ts";
import { useBench, useSpeech } from "../live/useWorkbench.tsx";
import { words } from "../words/say.ts";
import { KIT, type Sheets } from "./useSheets.ts";
import { useSheetWords } from "./useSheetWords.ts";

const MOST = 2; // sentences; the list of problems has them all

export function SheetNotice({ sheets: { list, failure } }: { sheets: Sheets }) {
  const bench = useBench();
  const { t } = useSpeech();
  const w = useSheetWords();
  if (failure !== null) {
    const text = failure === KIT ? t(words("problems.kit-broken")) : w("broken", { reason: failure });
    return (
      <p className="sheet-notice" role="alert">
        {text}
      </p>
    );
  }
  if (list === null) return null;
  if (list.sets.every(({ sheets }) => sheets.length === 0))
    return <p className="sheet-notice">{w("nothing")}</p>;
  const { unfilled, faults } = list;
  if (faults.length === 0) return null;
  const more = faults.length - MOST;
  return (
    <div className="sheet-notice" role="note">
      <b>{unfilled > 0 ? w("unfilled", { count: unfilled }) : w("faults", { count: faults.length })}</b>
      {faults.slice(0, MOST).map((fault) => (
        <p key={fault}>{fault}</p>
      ))}
      {more > 0 ? <p>{w("faults-more", { count: more })}</p> : null}
      <button type="button" className="act" onClick={() => changeScreen(bench, { panel: "problems" })}>
        {w("faults-show")}
      </button>
    </div>
  );
}
